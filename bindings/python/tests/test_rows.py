# SPDX-License-Identifier: MIT
"""Every check value of tests/data through the Python binding."""

import math
import os
import pathlib
import warnings

import freeair
import pytest
import rows

DATA = os.environ.get("FREEAIR_TEST_DATA") or pathlib.Path(__file__).resolve().parents[3] / "tests" / "data"
ROWS = list(rows.read(DATA))


@pytest.mark.parametrize("row", ROWS, ids=[r["place"] + " " + r["id"] for r in ROWS])
def test_row(row):
    try:
        function, keywords = rows.call_of(row)
    except rows.Skip as reason:
        pytest.skip(str(reason))
    code = getattr(freeair, row["status"], None)
    if code is None:
        code = getattr(freeair, row["status"].replace("FREEAIR_", ""))
    if code < 0:
        with pytest.raises(freeair.FreeairError) as raised:
            function(**keywords)
        assert raised.value.status == code
        return
    with warnings.catch_warnings(record=True) as caught:
        warnings.simplefilter("always")
        result = function(**keywords)
    assert bool(caught) == (code > 0)
    for name, got, want, allowed in rows.outputs_of(row, result):
        if allowed is None or math.isinf(want):
            assert got == want, name
        elif math.isnan(want):
            assert math.isnan(got), name
        else:
            assert abs(got - want) <= allowed, f"{name}: {got!r}, wanted {want!r} within {allowed:g}"
