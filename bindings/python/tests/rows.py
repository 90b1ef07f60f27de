# SPDX-License-Identifier: MIT
"""The check values of tests/data, for the Python binding: one row, one call."""

import pathlib
import re

import freeair
from freeair import _runtime

COLUMNS = "id function inputs outputs tolerance status kind source".split()


def read(folder):
    for path in sorted(pathlib.Path(folder).glob("*.tsv")):
        for number, line in enumerate(path.read_text(encoding="utf-8").splitlines(), 1):
            if line and not line.startswith("#") and not line.startswith("id\t"):
                yield dict(zip(COLUMNS, line.split("\t")), place=f"{path.name}:{number}")


def items(text):
    for item in re.findall(r'(?:[^;"]|"[^"]*")+', text):
        if item.strip():
            name, _, value = item.strip().partition("=")
            yield name.strip(), value.strip()


def number(text, unit, difference=False):
    """"12.5 bar", "nan" or the name of a constant, in the unit of the argument."""
    text = text.strip()
    if text.startswith("FREEAIR_"):
        return getattr(freeair, text[len("FREEAIR_"):])
    value, _, symbol = text.partition(" ")
    value, symbol = (float.fromhex(value) if "x" in value else float(value)), symbol.strip()
    if not symbol or unit == "any":
        return value
    if difference:
        return freeair.units_convert_difference(value=value, from_=symbol, to=unit)
    return freeair.units_si_from(value=value, symbol=symbol)


def read_value(text, argument):
    if argument.type == _runtime.TEXT:
        return text.strip('"')
    if text.startswith("["):
        inside, _, unit = text[1:].rpartition("]")
        return [as_kind(number(f"{part} {unit}".strip(), argument.unit), argument) for part in inside.split(",")]
    return as_kind(number(text, argument.unit), argument)


def as_kind(value, argument):
    return value if argument.type == _runtime.DOUBLE else int(value)


class Skip(Exception):
    """The row speaks of something that a Python caller cannot do."""


def call_of(row):
    """(function, keyword arguments) of a row."""
    entry = _runtime.call(row["function"])
    by_name = {a.name: (i, a) for i, a in enumerate(entry.arguments)}
    values = {}
    for name, text in items(row["inputs"]):
        match = re.match(r"^(\w+)(?:\[(\d+)\])?(?:\.(\w+))?$", name)
        base, element, field = match[1], match[2], match[3]
        i, argument = by_name[base]
        if i not in entry.inputs:
            if i in entry.strides:
                raise Skip("strides are not a Python caller's business")
            if i in entry.fed and int(number(text, "1")) != len(next(
                    (v for k, v in values.items() if by_name[k][1].length == i), ())):
                raise Skip("the length is that of the list")
            continue
        if field in ("struct_size", "flags"):
            raise Skip("sizes and flags are not a Python caller's business")
        if field is None:
            values[base] = read_value(text, argument)
            continue
        layout = _runtime._layout(argument.structure)
        cls = _runtime.STRUCTURES[argument.structure]
        if element is not None:
            listed = values.setdefault(base, [])
            while len(listed) <= int(element):
                listed.append(cls())
            target = listed[int(element)]
        else:
            target = values.setdefault(base, cls())
        setattr(target, field, read_value(text, layout.fields[field]))
    for i in entry.inputs:
        argument = entry.arguments[i]
        if argument.structure and not argument.flags & (_runtime.ARRAY | _runtime.OPTIONAL):
            values.setdefault(argument.name, _runtime.STRUCTURES[argument.structure]())
        if argument.flags & _runtime.OPTIONAL:
            values.setdefault(argument.name, None)
    name = row["function"][len("freeair_"):]
    keywords = {(n + "_" if n in ("from", "is", "in", "lambda") else n): v for n, v in values.items()}
    return getattr(freeair, name), keywords


def outputs_of(row, result):
    """(what, got, want, allowed) for every output the row lists."""
    entry = _runtime.call(row["function"])
    names = [entry.arguments[i].name for i in entry.outputs if i not in entry.found.values()]
    arguments = {a.name: a for a in entry.arguments}
    by_name = dict(zip(names, result if len(names) > 1 else [result]))
    for name, text in items(row["outputs"]):
        match = re.match(r"^(\w+)(?:\[(\d+)\])?(?:\.(\w+))?$", name)
        argument = arguments[match[1]]
        if match[1] not in by_name and row["status"] == "WARN_TRUNCATED":
            continue  # the list is as long as there was room, the count is not given
        if match[1] not in by_name:  # a count that cut an array
            array = next(k for k, v in entry.found.items() if v is not None
                         and entry.arguments[v].name == match[1])
            got = len(by_name[entry.arguments[array].name])
        else:
            got = by_name[match[1]]
        if match[2] is not None:
            got = got[int(match[2])]
        if match[3] is not None:
            argument = _runtime._layout(argument.structure).fields[match[3]]
            got = getattr(got, match[3])
        value, _, own = text.partition("@")
        tolerance = own or row["tolerance"]
        if value.startswith("["):
            inside, _, unit = value[1:].rpartition("]")
            parts = [f"{part} {unit}".strip() for part in inside.split(",")]
            for k, part in enumerate(parts):
                yield compare(f"{name}[{k}]", got[k], part, tolerance, argument)
        elif argument.type == _runtime.TEXT:
            yield name, got, value.strip('"'), None
        else:
            yield compare(name, got, value, tolerance, argument)


def compare(name, got, text, tolerance, argument):
    want = number(text, argument.unit)
    kind, _, size = tolerance.partition(":")
    if argument.type != _runtime.DOUBLE:
        allowed = 0.0
    elif kind == "rel":
        allowed = float(size) * abs(want)
    else:
        allowed = abs(number(size, argument.unit, difference=True))
    return name, got, want, allowed
