# SPDX-License-Identifier: MIT
"""api.json -> the generated modules of the Python binding."""

import keyword
import textwrap

from emit_c import described

NOTICE = "# SPDX-License-Identifier: MIT\n# Written by bindings/generate; do not edit.\n"
CTYPES = {"double": "_c.c_double", "int32_t": "_c.c_int32", "uint32_t": "_c.c_uint32", "size_t": "_c.c_size_t",
          "const char *": "_c.c_char_p", "ptrdiff_t": "_c.c_ssize_t"}
PLAIN = {"double": "float", "int32_t": "int", "uint32_t": "int", "size_t": "int", "const char *": "str"}


EXCEPTIONS = {"DOMAIN": "DomainError", "NO_SOLUTION": "NoSolutionError", "NO_CONVERGENCE": "NoConvergenceError",
              "OVERFLOW": "ResultOverflowError", "VERSION": "StructureVersionError", "DATA": "DataError",
              "NOT_FOUND": "NotFoundError", "DIMENSION": "DimensionError", "UNSUPPORTED": "UnsupportedError"}


def no_keyword(name):
    return name + "_" if keyword.iskeyword(name) else name


def python_name(c_name):
    return no_keyword(c_name[len("freeair_"):])


def class_name(c_name):
    return "".join(part.capitalize() for part in c_name[len("freeair_"):].split("_"))


def inputs_of(function):
    """Parameters that a Python caller passes: as Call in _runtime.py decides."""
    params = function["params"]
    strides = {p["name"] for p in params if "stride" in p}
    fed = {p["shape"] for p in params if "shape" in p and p["direction"] == "in"}
    return [p for p in params if p["direction"] == "in" and p["name"] not in strides | fed]


def counted(function):
    """Output arrays of which a count says how much is filled: {name of the length: names of the count}."""
    params = function["params"]
    fed = {p["shape"] for p in params if "shape" in p and p["direction"] == "in"}
    outputs = [p for p in params if p["direction"] != "in"]
    counts = {p["name"] for p in outputs if p["base"] == "size_t" and "shape" not in p}
    found = {}
    for p in outputs:
        if "shape" in p and p["shape"] not in fed and counts:
            named = {p["shape"] + "_found", "n_" + p["name"]} & counts
            found[p["shape"]] = named or (counts if len(counts) == 1 else set())
    return {length: names for length, names in found.items() if names}


def results_of(function):
    """Outputs that a Python caller gets: counts that cut an array are left out."""
    cutting = set().union(*counted(function).values())
    return [p for p in function["params"] if p["direction"] != "in" and p["name"] not in cutting]


def left_out(api, function):
    """Inputs that a Python caller may leave out, and what is then taken for them."""
    blank = {s["name"]: f"{class_name(s['name'])}()" for s in api["structures"]
             if not s["plain"] and all("default" in f for f in s["fields"][2:])}
    may = {p["name"]: p["default"] for p in function["params"] if "default" in p}
    may.update((p["name"], blank[p["base"]]) for p in inputs_of(function)
               if p["base"] in blank and "shape" not in p and "default" not in p)
    may.update((length, "as many as there are") for length in counted(function))
    return may


def kind(param, scalar):
    """Type annotation of a parameter."""
    base = PLAIN.get(param["base"]) or class_name(param["base"])
    if "shape" in param:
        return f"_Sequence[{base}]"
    if scalar or base not in ("float", "int"):
        return base
    return "_Array"


def describe(param, default=None):
    unit = param.get("unit", "")
    bits = [param["brief"]]
    if unit not in ("", "1"):
        bits.append(f"[{unit}]" if unit != "any" else "[the caller's unit]")
    if param.get("range"):
        bits.append(f"Range {param['range']['text']}.")
    if "choice" in param:
        bits.append(f"One of {param['choice'][len('freeair_'):].upper()}_* (enumeration {param['choice']}).")
    default = default or param.get("default")
    if default:
        bits.append(f"Default: {default}.")
    return " ".join(bits)


def wrap(text, indent, hang=""):
    return textwrap.fill(text, 100, initial_indent=indent, subsequent_indent=indent + hang,
                         break_long_words=False).replace("\\", "\\\\") + "\n"


def docstring(function, cautions, may, indent="    "):
    out = [f'{indent}"""' + function["brief"].replace("\\", "\\\\") + "\n"]
    if function["model"]:
        out.append("\n" + wrap("Model: " + function["model"], indent))
    for note in function["notes"]:
        out.append("\n" + wrap(note, indent))
    if inputs_of(function):
        out.append(f"\n{indent}Arguments:\n")
        out += [wrap(f"{no_keyword(p['name'])}: {describe(p, may.get(p['name']))}", indent + "    ", "    ")
                for p in inputs_of(function)]
    if function["kind"] == "call":
        out.append(f"\n{indent}Returns:\n")
        out += [wrap(f"{p['name']}: {describe(p)}", indent + "    ", "    ") for p in results_of(function)]
        fails = [r for r in function["retvals"] if r["name"].startswith("FREEAIR_ERR") and r["name"] !=
                 "FREEAIR_ERR_NULL"]
        if fails:
            out.append(f"\n{indent}Raises:\n")
            out += [wrap(f"{EXCEPTIONS[r['name'][12:]]}: {r['text']}", indent + "    ", "    ") for r in fails]
    elif function["returns"]["text"]:
        out.append("\n" + wrap("Returns: " + function["returns"]["text"], indent))
    for name in function["cautions"]:
        out.append("\n" + wrap("Caution: " + cautions[name], indent))
    if function["source"]:
        out.append("\n" + wrap("Source: " + function["source"], indent))
    out.append(f'{indent}"""\n')
    return "".join(out)


def wrapped_queries(api):
    """Functions that return a value: all but those of the run-time description, which the binding uses itself."""
    return [f for f in api["functions"]
            if f["kind"] == "query" and f["topic"] not in ("describe", "catalogue")
            and all(not p["pointer"] for p in f["params"])]


def module(api):
    cautions = {v["name"]: v["brief"] for e in api["enumerations"] if e["name"] == "freeair_caution"
                for v in e["values"]}
    out = [NOTICE, '"""The functions, structures and constants of the library."""\n\n',
           "import collections as _collections\nimport ctypes as _c\n\nfrom . import _runtime\n"]
    public = []
    out.append("\n# Constants: the C names less the prefix.\n")
    for e in api["enumerations"]:
        for v in e["values"]:
            public.append(v["name"][8:])
            out.append(f"{v['name'][8:]} = {v['value']}\n")
    for s in api["structures"]:
        if s["plain"]:
            continue
        name = class_name(s["name"])
        public.append(name)
        out.append(f"\n\nclass {name}(_runtime.Structure):\n")
        out.append(f'    """{s["brief"]}\n\n')
        if s["text"]:
            out.append(wrap(s["text"], "    ") + "\n")
        out.append("    Fields:\n")
        for f in s["fields"][2:]:
            out.append(wrap(f"{f['name']}: {describe(f)}", "        ", "    "))
        out.append(f'    """\n\n    _c_name = "{s["name"]}"\n    __slots__ = ("_memory",)\n')
    out.append("\n\n")
    for s in api["structures"]:
        if not s["plain"]:
            out.append(f'_runtime.STRUCTURES["{s["name"]}"] = {class_name(s["name"])}\n')
    for f in described(api):
        name = python_name(f["name"])
        public.append(name)
        results = results_of(f)
        if len(results) > 1:
            public.append(class_name(f["name"]) + "Result")
            out.append(f"\n\n{class_name(f['name'])}Result = _collections.namedtuple(\n    "
                       f"\"{class_name(f['name'])}Result\", {[p['name'] for p in results]!r})\n")
        inputs, may = inputs_of(f), left_out(api, f)
        names = ", ".join(no_keyword(p["name"]) + ("=None" if p["name"] in may else "") for p in inputs)
        out.append(f"\n\ndef {name}({'*, ' + names if names else ''}):\n{docstring(f, cautions, may)}")
        values = "".join(no_keyword(p["name"]) + ", " for p in inputs).strip()
        result = f", {class_name(f['name'])}Result" if len(results) > 1 else ""
        out.append(f"    return _runtime.call(\"{f['name']}\")(({values}){result})\n")
    for f in wrapped_queries(api):
        name = python_name(f["name"])
        public.append(name)
        names = ", ".join(no_keyword(p["name"]) for p in f["params"])
        types = ", ".join(CTYPES[p["base"]] for p in f["params"])
        values = "".join(no_keyword(p["name"]) + ", " for p in f["params"]).strip()
        result = CTYPES.get(f["returns"]["ctype"], "None")
        out.append(f"\n\ndef {name}({'*, ' + names if names else ''}):\n{docstring(f, cautions, {})}")
        out.append(f"    return _runtime.query(\"{f['name']}\", {result}, [{types}], ({values}))\n")
    out.append("\n\n__all__ = [\n" + "".join(f'    "{n}",\n' for n in sorted(public)) + "]\n")
    return "".join(out)


def stub(api):
    out = [NOTICE, "from typing import Any, NamedTuple, Sequence as _Sequence, Union, overload\n\n"
           "from ._runtime import Structure\n\n"
           "_Array = Any  # anything NumPy makes an array of\n\n"]
    for e in api["enumerations"]:
        out += [f"{v['name'][8:]}: int\n" for v in e["values"]]
    for s in api["structures"]:
        if s["plain"]:
            continue
        fields = s["fields"][2:]
        out.append(f"\nclass {class_name(s['name'])}(Structure):\n")
        out += [f"    {f['name']}: {PLAIN[f['ctype']]}\n" for f in fields]
        out.append("    def __init__(self, *, " + ", ".join(
            f"{f['name']}: {PLAIN[f['ctype']]} | None = ..." for f in fields) + ") -> None: ...\n")
    for f in described(api):
        results, inputs, may = results_of(f), inputs_of(f), left_out(api, f)
        name = python_name(f["name"])
        if len(results) > 1:
            out.append(f"\nclass {class_name(f['name'])}Result(NamedTuple):\n")
            out += [f"    {p['name']}: {kind(p, True)}\n" for p in results]
        returned = kind(results[0], True) if len(results) == 1 else class_name(f["name"]) + "Result"
        can_map = not any("shape" in p for p in f["params"])

        def signature(scalar, result):
            args = ", ".join(f"{no_keyword(p['name'])}: {kind(p, scalar)}" + (" | None = ..." if p["name"] in may else "")
                             for p in inputs)
            return f"def {name}({'*, ' + args if args else ''}) -> {result}: ...\n"

        if can_map and any(kind(p, False) == "_Array" for p in inputs):
            out.append("\n@overload\n" + signature(True, returned) + "@overload\n" + signature(False, "Any"))
        else:
            out.append("\n" + signature(True, returned))
    for f in wrapped_queries(api):
        args = ", ".join(f"{no_keyword(p['name'])}: {PLAIN[p['base']]}" for p in f["params"])
        out.append(f"\ndef {python_name(f['name'])}({'*, ' + args if args else ''}) -> "
                   f"{PLAIN.get(f['returns']['ctype'], 'Any')}: ...\n")
    return "".join(out)


def version(api):
    major, minor, patch = (int(x) for x in api["version"].split("."))
    return NOTICE + f'VERSION = "{api["version"]}"\nVERSION_NUMBER = {major * 10000 + minor * 100 + patch}\n'
