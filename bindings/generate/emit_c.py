# SPDX-License-Identifier: MIT
"""api.json -> the C files in lib/generated and tests/generated, and freeair.h."""

from extract import RUNTIME

NOTICE = "/* SPDX-License-Identifier: MIT */\n/* Written by bindings/generate; do not edit. */\n"

TYPES = {
    "double": "FREEAIR_TYPE_DOUBLE",
    "int32_t": "FREEAIR_TYPE_INT32",
    "uint32_t": "FREEAIR_TYPE_UINT32",
    "size_t": "FREEAIR_TYPE_SIZE",
    "ptrdiff_t": "FREEAIR_TYPE_SIZE",
    "const char *": "FREEAIR_TYPE_TEXT",
}
SIZES = {"double": 8, "int32_t": 4, "uint32_t": 4, "size_t": 8, "ptrdiff_t": 8, "const char *": 8}


def described(api):
    """The functions in the run-time table: those that compute and return a status."""
    inits = {s["init_function"] for s in api["structures"] if not s["plain"]}
    return [f for f in api["functions"]
            if f["kind"] == "call" and f["name"] not in inits and f["topic"] not in RUNTIME]


def quote(text):
    out = []
    for char in text:
        if char in '"\\':
            out.append("\\" + char)
        elif char == "\n":
            out.append("\\n")
        elif ord(char) < 128:
            out.append(char)
        else:
            out.append("".join(f"\\{b:03o}" for b in char.encode("utf-8")))
    return '"' + "".join(out) + '"'


def bound(value, infinite):
    return infinite if value is None else repr(float(value))


def parameter(entry, index_of, output):
    base = entry.get("base", entry["ctype"])
    structure = base not in SIZES
    flags = []
    if output:
        flags.append("FREEAIR_PARAMETER_OUTPUT")
    if "shape" in entry:
        flags.append("FREEAIR_PARAMETER_ARRAY")
    if "default" in entry:
        flags.append("FREEAIR_PARAMETER_OPTIONAL")
    given = entry.get("range")
    if given and given["lower_closed"]:
        flags.append("FREEAIR_PARAMETER_LOWER_CLOSED")
    if given and given["upper_closed"]:
        flags.append("FREEAIR_PARAMETER_UPPER_CLOSED")
    lower = bound(given["lower"], "-INFINITY") if given else "NAN"
    upper = bound(given["upper"], "INFINITY") if given else "NAN"
    values = [
        quote(entry["name"]),
        quote(entry["brief"]),
        quote(entry.get("unit", "1" if not structure and base != "const char *" else "")),
        quote(given["text"] if given else ""),
        quote(entry.get("default", "")),
        quote(entry.get("choice", "")),
        f"&structure_{base}" if structure else "NULL",
        lower,
        upper,
        "FREEAIR_TYPE_STRUCTURE" if structure else TYPES[base],
        " | ".join(flags) or "0",
        f"{entry.get('offset', 0)}u",
        f"sizeof({base})",
        str(index_of.get(entry.get("shape"), -1)),
        str(index_of.get(entry["name"] + "#stride", -1)),
    ]
    return "    {" + ", ".join(values) + "},\n"


def is_output(param):
    return param["direction"] != "in"


def loop(function):
    name, params = function["name"], function["params"]
    lines = [f"static void loop_{name}(size_t n, char **args, const ptrdiff_t *steps, int32_t *status, "
             "size_t *errors)\n{\n", "  if (n == 0) return;\n"]
    for i, _ in enumerate(params):
        lines.append(f"  char *a{i} = args[{i}];\n")
    arguments = []
    for i, p in enumerate(params):
        if p["pointer"]:
            arguments.append(f"({p['ctype']})(void *)a{i}")
        else:
            star = "*" if p["base"].endswith("*") else " *"
            arguments.append(f"*({p['base']}{star})(void *)a{i}")
    lines.append("  for (size_t i = 0;;) {\n")
    lines.append(f"    int32_t s = {name}({', '.join(arguments)});\n")
    lines.append("    if (status != NULL) status[i] = s;\n    *errors += s < 0;\n    if (++i == n) return;\n")
    for i, _ in enumerate(params):
        lines.append(f"    a{i} += steps[{i}];\n")
    lines.append("  }\n}\n\n")
    return "".join(lines)


def tables(api):
    functions = described(api)
    out = [NOTICE, "#include <freeair/freeair.h>\n\n#include <math.h>\n\n#include \"internal/describe.h\"\n\n"]
    for s in api["structures"]:
        if not s["plain"]:
            out.append(f"static const freeair_structure structure_{s['name']};\n")
    out.append("\n")
    structures = [s for s in api["structures"] if not s["plain"]]
    for s in structures:
        out.append(f"static const freeair_parameter fields_{s['name']}[] = {{\n")
        out += [parameter(f, {}, False) for f in s["fields"]]
        out.append("};\n\n")
        out.append(f"static const {s['name']} initial_{s['name']} = {s['init_macro']};\n\n")
        out.append(f"static const freeair_structure structure_{s['name']} = {{\n    {quote(s['name'])}, "
                   f"fields_{s['name']}, &initial_{s['name']}, sizeof({s['name']}), {s['baseline']}u, "
                   f"{len(s['fields'])}u}};\n\n")
    for f in functions:
        index_of = {p["name"]: i for i, p in enumerate(f["params"])}
        for i, p in enumerate(f["params"]):
            if "stride" in p:
                index_of[p["stride"] + "#stride"] = i
        out.append(loop(f))
        out.append(f"static const freeair_parameter parameters_{f['name']}[] = {{\n")
        out += [parameter(p, index_of, is_output(p)) for p in f["params"]]
        out.append("};\n\n")
        codes = ", ".join(r["name"] for r in f["retvals"])
        out.append(f"static const int32_t statuses_{f['name']}[] = {{{codes}}};\n\n")
    out.append("const freeair_function freeair__functions[] = {\n")
    for f in functions:
        cautions = " | ".join(f["cautions"]) or "0"
        out.append(f"    {{{quote(f['name'])}, {quote(f['topic'])}, {quote(f['brief'])}, {quote(f['model'])}, "
                   f"{quote(f['source'])}, parameters_{f['name']}, statuses_{f['name']}, loop_{f['name']}, "
                   f"{len(f['params'])}u, {len(f['retvals'])}u, {cautions}}},\n")
    out.append("};\n\nconst size_t freeair__n_functions = sizeof freeair__functions / sizeof freeair__functions[0];\n\n")
    if structures:
        out.append("const freeair_structure *const freeair__structures[] = {\n")
        out += [f"    &structure_{s['name']},\n" for s in structures]
        out.append("};\n\n")
    else:
        out.append("const freeair_structure *const freeair__structures[] = {NULL};\n\n")
    out.append(f"const size_t freeair__n_structures = {len(structures)};\n\n")
    constants = [(v, e) for e in api["enumerations"] for v in e["values"]]
    out.append("const freeair__constant freeair__constants[] = {\n")
    out += [f"    {{{quote(v['name'])}, {quote(e['name'])}, {quote(v['brief'])}, {v['name']}}},\n"
            for v, e in constants]
    out.append("};\n\nconst size_t freeair__n_constants = sizeof freeair__constants / sizeof freeair__constants[0];\n\n")

    def order(names):
        return ", ".join(str(i) for _, i in sorted((n.encode(), i) for i, n in enumerate(names)))

    out.append(f"const uint16_t freeair__functions_by_name[] = {{{order([f['name'] for f in functions])}}};\n\n")
    out.append(f"const uint16_t freeair__constants_by_name[] = {{{order([v['name'] for v, _ in constants])}}};\n")
    return "".join(out)


def structures(api, by_hand):
    """The init function of every structure, but for those that a source defines itself."""
    out = [NOTICE, "#include <freeair/freeair.h>\n\n#include \"internal/structure.h\"\n"]
    parameter_of = {f["name"]: f["params"][0]["name"] for f in api["functions"] if f["params"]}
    for s in api["structures"]:
        if s["plain"] or s["init_function"] in by_hand:
            continue
        name, caller = s["name"], parameter_of[s["init_function"]]
        out.append(f"\nint32_t {s['init_function']}({name} *{caller}, size_t caller_size)\n{{\n"
                   f"  static const {name} initial = {s['init_macro']};\n"
                   f"  return freeair__structure_init({caller}, caller_size, &initial, sizeof initial,\n"
                   f"                                 {name.upper()}_BASELINE);\n}}\n")
    return "".join(out)


def symbol_map(api):
    releases = {}
    for f in api["functions"]:
        releases.setdefault(f["since"], []).append(f["name"])
    out, previous = ["# Written by bindings/generate; do not edit.\n"], ""
    for release in sorted(releases, key=lambda r: [int(x) for x in r.split(".")]):
        out.append(f"FREEAIR_{release} {{\n  global:\n")
        out += [f"    {name};\n" for name in sorted(releases[release])]
        out.append("  local: *;\n" if not previous else "")
        out.append(f"}}{previous};\n\n")
        previous = f" FREEAIR_{release}"
    return "".join(out)


def declaration(function):
    params = ", ".join(f"{p['ctype']}{'' if p['ctype'].endswith('*') else ' '}{p['name']}"
                       for p in function["params"]) or "void"
    gap = "" if function["returns"]["ctype"].endswith("*") else " "
    return f"{function['returns']['ctype']}{gap}{function['name']}({params});\n"


def redeclare(api):
    """The compiler accepts this file only when api.json and the headers agree."""
    out = [NOTICE, "#include <freeair/freeair.h>\n\n"]
    out += [declaration(f) for f in api["functions"]]
    out.append("\n")
    for e in api["enumerations"]:
        out += [f"_Static_assert({v['name']} == {v['value']}, \"{v['name']}\");\n" for v in e["values"]]
    for name, value in api["macros"].items():
        if not name.startswith("FREEAIR_VERSION_"):
            out.append(f"_Static_assert({name} == {value}, \"{name}\");\n")
    out.append("\n/* The layout of an LP64 or LLP64 machine. */\n#if UINTPTR_MAX == 0xffffffffffffffffu\n")
    for s in api["structures"]:
        out.append(f"_Static_assert(sizeof({s['name']}) == {s['size']}, \"size of {s['name']}\");\n")
        for f in s["fields"]:
            out.append(f"_Static_assert(offsetof({s['name']}, {f['name']}) == {f['offset']}, "
                       f"\"{s['name']}.{f['name']}\");\n")
        if not s["plain"]:
            out.append(f"_Static_assert({s['name'].upper()}_BASELINE <= sizeof({s['name']}), "
                       f"\"baseline of {s['name']}\");\n")
    out.append("#endif\n")
    return "".join(out)


def umbrella(api, template, headers):
    lines = "".join(f"#include <freeair/{h}.h>\n" for h in headers)
    return template.replace("@INCLUDES@", lines.rstrip("\n"))


def version_header(version):
    major, minor, patch = (int(x) for x in version.split("."))
    number = major * 10000 + minor * 100 + patch
    return f"""/* SPDX-License-Identifier: MIT */
/* Written by bindings/generate from configure.ac; do not edit. */
#ifndef FREEAIR_VERSION_H
#define FREEAIR_VERSION_H

#include <freeair/export.h>

#ifdef __cplusplus
extern "C" {{
#endif

/** @defgroup version Version
 * Which release a program was compiled against, and which it runs with.
 * @{{
 */

/** Major number of the release these headers belong to. */
#define FREEAIR_VERSION_MAJOR {major}
/** Minor number of the release these headers belong to. */
#define FREEAIR_VERSION_MINOR {minor}
/** Patch number of the release these headers belong to. */
#define FREEAIR_VERSION_PATCH {patch}
/** The three numbers as one, major x 10000 + minor x 100 + patch, for comparing. */
#define FREEAIR_VERSION_NUMBER {number}

/** Release of the library that is running, as a number.
 *
 * Model: major x 10000 + minor x 100 + patch.
 *
 * @return The number; at least FREEAIR_VERSION_NUMBER when the library is new enough.
 * @source{{definition}}
 * @since 0.1
 */
FREEAIR_API uint32_t freeair_version_number(void);

/** Release of the library that is running, as text.
 *
 * Model: "major.minor.patch".
 *
 * @return Static string.
 * @source{{definition}}
 * @since 0.1
 */
FREEAIR_API const char *freeair_version_text(void);

/** @}} */

#ifdef __cplusplus
}}
#endif

#endif
"""
