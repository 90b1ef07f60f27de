# SPDX-License-Identifier: MIT
"""The binding is complete, and behaves as a Python programmer expects."""

import copy
import inspect
import json
import math
import os
import pathlib
import pickle
import subprocess
import sys
import warnings

import freeair
import pytest
from freeair import _runtime

TREE = pathlib.Path(__file__).resolve().parents[3]
API = json.loads(pathlib.Path(os.environ.get("FREEAIR_API_JSON") or TREE / "bindings" / "api.json").read_text(
    encoding="utf-8"))
INITS = {s.get("init_function") for s in API["structures"]}
CALLS = [f for f in API["functions"]
         if f["kind"] == "call" and f["topic"] not in ("describe", "catalogue") and f["name"] not in INITS]


def python_name(name):
    return name[len("freeair_"):]


@pytest.mark.parametrize("entry", CALLS, ids=lambda f: f["name"])
def test_function_is_present(entry):
    function = getattr(freeair, python_name(entry["name"]))
    assert python_name(entry["name"]) in freeair.__all__ if hasattr(freeair, "__all__") else True
    parameters = inspect.signature(function).parameters
    assert all(p.kind is inspect.Parameter.KEYWORD_ONLY for p in parameters.values())
    assert entry["brief"] in function.__doc__
    call = _runtime.call(entry["name"])
    assert [a.name for a in call.arguments] == [p["name"] for p in entry["params"]]
    assert [call.arguments[i].name for i in call.inputs] == [p.rstrip("_") for p in parameters]
    for argument, param in zip(call.arguments, entry["params"]):
        if "unit" in param:
            assert argument.unit == param["unit"]


def test_queries_are_present():
    skipped = ("describe", "catalogue")
    for entry in API["functions"]:
        if entry["kind"] == "query" and entry["topic"] not in skipped and not any(p["pointer"] for p in
                                                                                  entry["params"]):
            assert callable(getattr(freeair, python_name(entry["name"])))


def test_constants_are_present():
    for enumeration in API["enumerations"]:
        for value in enumeration["values"]:
            assert getattr(freeair, value["name"][len("FREEAIR_"):]) == value["value"]


@pytest.mark.parametrize("entry", [s for s in API["structures"] if not s["plain"]], ids=lambda s: s["name"])
def test_structure_is_present(entry):
    cls = _runtime.STRUCTURES[entry["name"]]
    instance = cls()
    for field in entry["fields"][2:]:
        assert hasattr(instance, field["name"])
        assert field["name"] in cls.__doc__
        setattr(instance, field["name"], 1)
        assert getattr(instance, field["name"]) == 1
    assert set(instance.as_dict()) == {f["name"] for f in entry["fields"][2:]}
    assert copy.deepcopy(instance) == instance
    assert pickle.loads(pickle.dumps(instance)) == instance
    with pytest.raises(AttributeError):
        instance.no_such_field = 1
    with pytest.raises(AttributeError):
        cls(no_such_field=1)


def test_scalar_in_float_out():
    assert type(freeair.atmosphere_pressure_from_altitude(altitude_m=100)) is float


def test_error_names_the_argument():
    with pytest.raises(freeair.DomainError) as raised:
        freeair.atmosphere_pressure_from_altitude(altitude_m=99999)
    error = raised.value
    assert (error.argument, error.value, error.range) == ("altitude_m", 99999.0, "[-5000;11000]")
    assert error.status == freeair.ERR_DOMAIN
    assert "altitude_m" in str(error) and "[-5000;11000]" in str(error) and " m " in str(error)
    assert isinstance(error, ValueError)


def test_missing_and_unknown_arguments():
    with pytest.raises(TypeError):
        freeair.atmosphere_pressure_from_altitude()
    with pytest.raises(TypeError):
        freeair.atmosphere_pressure_from_altitude(1500)
    with pytest.raises(TypeError):
        freeair.atmosphere_pressure_from_altitude(altitude_ft=1500)
    with pytest.raises(TypeError):
        freeair.atmosphere_pressure_from_altitude(altitude_m="high")


def test_arrays_broadcast():
    numpy = pytest.importorskip("numpy")
    heights = numpy.linspace(0, 4000, 12)
    got = freeair.atmosphere_pressure_from_altitude(altitude_m=heights.reshape(3, 4))
    assert got.shape == (3, 4)
    want = [freeair.atmosphere_pressure_from_altitude(altitude_m=h) for h in heights]
    assert got.reshape(-1).tolist() == want
    strided = freeair.atmosphere_pressure_from_altitude(altitude_m=heights[::-2])
    assert strided.tolist() == want[::-2]
    probability = freeair.verdict_probability(
        value=heights[:, None], uncertainty=numpy.array([100.0, 200.0]), lower=-math.inf, upper=2000)
    assert probability.shape == (12, 2)
    assert probability[3, 1] == freeair.verdict_probability(value=heights[3], uncertainty=200, lower=-math.inf,
                                                            upper=2000)


def test_array_errors_are_nan_and_told():
    pytest.importorskip("numpy")
    with pytest.warns(freeair.FreeairWarning, match="1 of 3 elements: the first, at 1: .*altitude_m"):
        got = freeair.atmosphere_pressure_from_altitude(altitude_m=[0, 1e9, 100])
    assert math.isnan(got[1]) and not math.isnan(got[2])
    with warnings.catch_warnings():
        warnings.simplefilter("error")
        _, status = freeair.map_status(freeair.atmosphere_pressure_from_altitude, altitude_m=[0, 1e9, 100])
    assert status.tolist() == [0, freeair.ERR_DOMAIN, 0]


def run(code, **environment):
    path = str(pathlib.Path(freeair.__file__).parent.parent)
    return subprocess.run([sys.executable, "-c", code], text=True, capture_output=True, check=False,
                          env={**os.environ, "PYTHONPATH": path, **environment})


def test_rows_are_as_many_as_there_are(monkeypatch):
    found = freeair.EvidenceReadings(t_empty_to_cutout_s=640.0)
    expected = freeair.EvidenceReadings(t_empty_to_cutout_s=420.0)
    subject = freeair.DiagnosisSubject()
    at_once = freeair.diagnosis_rank(subject=subject, expected=expected, found=found)
    assert len(at_once.causes) > 10 and len(at_once.findings) == 1
    monkeypatch.setattr(_runtime, "FIRST_ROOM", 1)
    assert freeair.diagnosis_rank(subject=subject, expected=expected, found=found) == at_once
    with pytest.warns(freeair.FreeairWarning):
        few = freeair.diagnosis_rank(subject=subject, expected=expected, found=found, causes_capacity=3)
    assert list(few.causes) == list(at_once.causes)[:3]


def test_a_structure_of_defaults_may_be_left_out():
    machine = freeair.Machine(lp_bore_m=0.1, lp_stroke_m=0.08, speed_rev_s=15.0)
    assert freeair.cycle_point(machine=machine, receiver_pa=5e5) == freeair.cycle_point(
        machine=machine, site=freeair.MachineSite(), receiver_pa=5e5)
    with pytest.raises(TypeError):
        freeair.cycle_point(site=freeair.MachineSite(), receiver_pa=5e5)
    with pytest.raises(TypeError):
        freeair.cycle_point(machine=None, receiver_pa=5e5)


def test_works_without_numpy():
    done = run("import sys; sys.modules['numpy'] = None\nimport freeair\n"
               "print(freeair.atmosphere_pressure_from_altitude(altitude_m=0))\n"
               "try: freeair.atmosphere_pressure_from_altitude(altitude_m=[0])\n"
               "except TypeError as e: print(e)\n")
    assert done.returncode == 0, done.stderr
    assert done.stdout.startswith("101325.0") and "NumPy" in done.stdout


def test_a_missing_library_is_said_plainly():
    done = run("import freeair", FREEAIR_LIBRARY="/nowhere/libfreeair.so")
    assert done.returncode != 0 and "cannot load libfreeair" in done.stderr and "FREEAIR_LIBRARY" in done.stderr


def test_stub_agrees():
    """The stub is valid Python and names what the module holds."""
    import ast

    stub = (pathlib.Path(freeair.__file__).parent / "_generated.pyi").read_text(encoding="utf-8")
    names = set()
    for node in ast.parse(stub).body:
        if isinstance(node, (ast.FunctionDef, ast.ClassDef)):
            names.add(node.name)
        elif isinstance(node, ast.AnnAssign):
            names.add(node.target.id)
    assert set(freeair._generated.__all__) <= names
