# SPDX-License-Identifier: MIT
"""Doxygen XML of the public headers -> description of the API.

Nothing is guessed: what this module does not understand is an error with the
place in the header where it stands.
"""

import pathlib
import re
import subprocess
import tempfile
import xml.etree.ElementTree as ElementTree

from units import unit_of

SCALARS = {"double": 8, "int32_t": 4, "uint32_t": 4, "size_t": 8, "ptrdiff_t": 8, "const char *": 8}
# The topics about the library itself: no equation, no published source.
RUNTIME = ("describe", "catalogue")
RANGE = re.compile(r"^([\[(])\s*([^;\s]+)\s*;\s*([^;\s]+)\s*([\])])$")


class Problems:
    def __init__(self):
        self.found = []

    def add(self, place, text):
        self.found.append(f"{place}: {text}")


def run_doxygen(srcdir, xmldir):
    settings = (srcdir / "doc" / "Doxyfile.common").read_text(encoding="utf-8")
    settings += f"""
INPUT = "{srcdir / 'include' / 'freeair'}"
FILE_PATTERNS = *.h
STRIP_FROM_PATH = "{srcdir}"
STRIP_FROM_INC_PATH = "{srcdir / 'include'}"
GENERATE_HTML = NO
GENERATE_XML = YES
XML_PROGRAMLISTING = NO
XML_OUTPUT = "{xmldir}"
EXTRACT_ALL = YES
WARN_AS_ERROR = FAIL_ON_WARNINGS
WARN_FORMAT = "$file:$line: $text"
"""
    done = subprocess.run(["doxygen", "-"], input=settings, text=True, capture_output=True, check=False)
    if done.returncode != 0:
        raise SystemExit("doxygen found the headers wanting:\n" + (done.stderr or done.stdout))


def squash(text):
    return " ".join(text.split())


def plain(element, skip=("api", "parameterlist", "simplesect")):
    """Text of an element without our own tags."""
    if element is None:
        return ""
    parts = [element.text or ""]
    for child in element:
        if child.tag == "linebreak":
            parts.append("\v")
        elif child.tag not in skip:
            parts.append(plain(child, skip))
        parts.append(child.tail or "")
    return "".join(parts)


def prose(element):
    """Readable text of a description, less what the aliases add for HTML."""
    text = plain(element)
    first, *rest = text.split("\v")
    added = re.compile(r"^\s*(Range:|One of |Default:|Array of \S+ elements|Bytes from one element)")
    lines = [first] + [line for line in rest if not added.match(line)]
    return squash(" ".join(lines))


def tags(element):
    found = {}
    if element is not None:
        for api in element.iter("api"):
            found.setdefault(api.get("key"), []).append(squash("".join(api.itertext())))
    return found


def number(text):
    text = text.strip()
    if text in ("inf", "-inf"):
        return None
    return float(text)


def parse_range(text, place, problems):
    match = RANGE.match(text)
    if not match:
        problems.add(place, f"cannot read the range {text!r}; write for example (0;1e8]")
        return None
    try:
        lower, upper = number(match[2]), number(match[3])
    except ValueError:
        problems.add(place, f"cannot read a number in the range {text!r}")
        return None
    return {
        "text": text,
        "lower": lower,
        "upper": upper,
        "lower_closed": match[1] == "[",
        "upper_closed": match[4] == "]",
    }


def c_type(element):
    text = squash("".join(element.itertext()))
    text = re.sub(r"\s*\*\s*", " *", text).replace("* *", "**")
    return re.sub(r"\bstruct\s+", "", text).strip()


def split_type(ctype):
    """'const double *' -> ('double', True, True): base, is it a pointer, is it read-only."""
    if ctype == "const char *":
        return "const char *", False, True
    if ctype in ("const char **", "const char * *", "const char *const *"):
        return "const char *", True, "const *" in ctype
    if ctype.endswith("*"):
        base = ctype[:-1].strip()
        readonly = base.startswith("const ")
        return (base[6:] if readonly else base).strip(), True, readonly
    return ctype, False, False


class Extractor:
    def __init__(self, srcdir):
        self.srcdir = srcdir
        self.problems = Problems()
        self.enums, self.structs, self.functions, self.macros, self.topics = {}, {}, {}, {}, {}
        self.opaque = set()

    def place(self, member):
        location = member.find("location")
        if location is None:
            return member.findtext("name") or "?"
        return f"{location.get('file')}:{location.get('line')}: {member.findtext('name') or ''}"

    @staticmethod
    def topic_of(member):
        return pathlib.PurePath(member.find("location").get("file")).stem

    def read(self, xmldir):
        files = sorted(pathlib.Path(xmldir).glob("*.xml"))
        roots = [ElementTree.parse(f).getroot() for f in files if f.name not in ("index.xml", "Doxyfile.xml")]
        members = {}
        for root in roots:
            for compound in root.iter("compounddef"):
                kind = compound.get("kind")
                if kind == "group":
                    self.topics[compound.findtext("compoundname")] = {
                        "name": compound.findtext("compoundname"),
                        "title": compound.findtext("title"),
                        "brief": prose(compound.find("briefdescription")),
                        "text": prose(compound.find("detaileddescription")),
                    }
                if kind in ("group", "file"):
                    for member in compound.iter("memberdef"):
                        members[member.get("id")] = member
                if kind == "struct":
                    self.struct(compound)
        for member in members.values():
            kind = member.get("kind")
            if kind == "enum":
                self.enum(member)
            elif kind == "define":
                self.macros[member.findtext("name")] = squash("".join((member.find("initializer") if
                                                              member.find("initializer") is not None else
                                                              ElementTree.Element("x")).itertext()))
            elif kind == "typedef":
                self.typedef(member)
        for member in members.values():
            if member.get("kind") == "function":
                self.function(member)
            elif member.get("kind") not in ("enum", "define", "typedef"):
                self.problems.add(self.place(member), f"a {member.get('kind')} has no place in the contract")
        self.finish()

    def typedef(self, member):
        target = squash("".join(member.find("type").itertext()))
        if target.startswith("struct"):
            self.opaque.add(member.findtext("name"))

    def since(self, element, place):
        text = ""
        if element is not None:
            for sect in element.iter("simplesect"):
                if sect.get("kind") == "since":
                    text = squash("".join(sect.itertext()))
        if not text:
            self.problems.add(place, "no @since")
        return text

    def enum(self, member):
        name, place = member.findtext("name"), self.place(member)
        if not name.startswith("freeair_"):
            self.problems.add(place, "an enumeration needs a name that starts with freeair_")
        values = []
        for value in member.findall("enumvalue"):
            initializer = squash("".join(value.find("initializer").itertext())) if value.find(
                "initializer") is not None else ""
            match = re.match(r"^=\s*(-?(?:0x[0-9a-fA-F]+|\d+))$", initializer)
            text = prose(value.find("briefdescription")) + " " + prose(value.find("detaileddescription"))
            if not match:
                self.problems.add(place, f"{value.findtext('name')} is not explicitly numbered")
                continue
            if not text.strip():
                self.problems.add(place, f"{value.findtext('name')} is not documented")
            values.append({"name": value.findtext("name"), "value": int(match[1], 0), "brief": text.strip()})
        self.enums[name] = {
            "name": name,
            "topic": self.topic_of(member),
            "brief": prose(member.find("briefdescription")),
            "since": self.since(member.find("detaileddescription"), place),
            "values": values,
        }

    def field(self, member, place):
        detailed = ElementTree.Element("both")
        for part in ("briefdescription", "detaileddescription"):
            if member.find(part) is not None:
                detailed.append(member.find(part))
        found = tags(detailed)
        name, ctype = member.findtext("name"), c_type(member.find("type"))
        text = prose(detailed)
        if not text:
            self.problems.add(place, f"field {name} is not documented")
        entry = {"name": name, "ctype": ctype, "brief": text}
        self.quantity(entry, found, place, ctype)
        return entry

    def quantity(self, entry, found, place, base):
        """Unit, range, choice and default of a parameter or field."""
        name = entry["name"]
        for key in found:
            if len(found[key]) > 1:
                self.problems.add(place, f"{name} has @{key} twice")
        if base == "double":
            unit = found["unit"][0] if "unit" in found else unit_of(name)
            if unit is None:
                self.problems.add(place, f"{name} names a dimensional quantity but carries no unit suffix")
            entry["unit"] = unit or "1"
        for key in ("choice", "default", "shape", "stride"):
            if key in found:
                entry[key] = found[key][0]
        if "range" in found:
            entry["range"] = parse_range(found["range"][0], f"{place} {name}", self.problems)

    def struct(self, compound):
        name = compound.findtext("compoundname")
        place = compound.find("location").get("file") + ": " + name
        fields, offset, align = [], 0, 1
        for member in compound.iter("memberdef"):
            if member.get("kind") != "variable":
                self.problems.add(place, f"cannot use the member {member.findtext('name')}")
                continue
            entry = self.field(member, place)
            base, pointer, _ = split_type(entry["ctype"])
            size = 8 if pointer else SCALARS.get(base)
            if size is None:
                self.problems.add(place, f"field {entry['name']} has the type {entry['ctype']}")
                continue
            offset = -(-offset // size) * size
            align = max(align, size)
            entry["offset"] = offset
            offset += size
            fields.append(entry)
        self.structs[name] = {
            "name": name,
            "topic": pathlib.PurePath(compound.find("location").get("file")).stem,
            "brief": prose(compound.find("briefdescription")),
            "text": prose(compound.find("detaileddescription")),
            "since": self.since(compound.find("detaileddescription"), place),
            "size": -(-offset // align) * align,
            "fields": fields,
        }

    def function(self, member):
        name, place = member.findtext("name"), self.place(member)
        detailed = member.find("detaileddescription")
        found = tags(detailed)
        returns = c_type(member.find("type"))
        described, retvals, returned = {}, [], ""
        for plist in detailed.iter("parameterlist"):
            for item in plist.findall("parameteritem"):
                description = item.find("parameterdescription")
                for pname in item.iter("parametername"):
                    key = squash("".join(pname.itertext()))
                    if plist.get("kind") == "param":
                        described[key] = (pname.get("direction"), description)
                    elif plist.get("kind") == "retval":
                        retvals.append({"name": key, "text": prose(description)})
        for sect in detailed.iter("simplesect"):
            if sect.get("kind") == "return":
                returned = squash(plain(sect, skip=("api",)))
        params = []
        for param in member.findall("param"):
            pname = param.findtext("declname")
            if pname is None:
                if squash("".join(param.find("type").itertext())) == "void":
                    continue
                self.problems.add(place, "a parameter has no name")
                continue
            if param.find("array") is not None:
                self.problems.add(place, f"{pname}: write a pointer, not an array")
            params.append(self.parameter(pname, c_type(param.find("type")), described.get(pname), place))
        paragraphs = [prose(p) for p in detailed.findall("para")]
        model = next((p[6:].strip() for p in paragraphs if p.startswith("Model:")), "")
        notes = [p for p in paragraphs if p and not p.startswith("Model:") and p not in found.get("source", [])]
        entry = {
            "name": name,
            "topic": self.topic_of(member),
            "kind": "call" if returns == "int32_t" and retvals else "query",
            "brief": prose(member.find("briefdescription")),
            "model": model,
            "notes": notes,
            "returns": {"ctype": returns, "text": returned},
            "params": params,
            "retvals": retvals,
            "source": found.get("source", [""])[0],
            "cautions": found.get("caution", []),
            "since": self.since(detailed, place),
        }
        if entry["topic"] not in RUNTIME:
            if not model:
                self.problems.add(place, "no paragraph that starts with Model:")
            if not entry["source"]:
                self.problems.add(place, "no @source")
        if not entry["brief"]:
            self.problems.add(place, "no brief sentence")
        if entry["kind"] == "query" and not returned:
            self.problems.add(place, "neither @retval nor @return")
        self.functions[name] = entry

    def parameter(self, name, ctype, described, place):
        base, pointer, readonly = split_type(ctype)
        entry = {"name": name, "ctype": ctype, "base": base, "pointer": pointer, "brief": ""}
        if described is None:
            self.problems.add(place, f"{name} is not documented")
            return entry
        direction, description = described
        entry["direction"] = direction or ""
        entry["brief"] = prose(description)
        found = tags(description)
        self.quantity(entry, found, place, base)
        if direction not in ("in", "out", "in,out", "inout"):
            self.problems.add(place, f"{name}: say @param[in] or @param[out]")
        if pointer and direction == "in" and not readonly:
            self.problems.add(place, f"{name}: a pointer that is only read must be const")
        if base == "double" and direction == "in" and not pointer and "range" not in entry:
            self.problems.add(place, f"{name}: no @range")
        if base in ("int32_t", "uint32_t") and direction == "in" and not pointer and not (
                "range" in entry or "choice" in entry):
            self.problems.add(place, f"{name}: neither @range nor @choice")
        if base not in SCALARS and not pointer:
            self.problems.add(place, f"{name}: the type {ctype} has no place in the ABI")
        return entry

    def finish(self):
        codes = {v["name"] for v in self.enums.get("freeair_status", {"values": []})["values"]}
        caution = {v["name"] for v in self.enums.get("freeair_caution", {"values": []})["values"]}
        for name, struct in self.structs.items():
            upper = name.upper()
            if [f["name"] for f in struct["fields"][:2]] != ["struct_size", "flags"]:
                struct["plain"] = True
                continue
            struct["plain"] = False
            struct["init_macro"], struct["init_function"] = upper + "_INIT", name + "_init"
            if struct["init_macro"] not in self.macros:
                self.problems.add(name, f"no documented macro {struct['init_macro']}")
            if struct["init_function"] not in self.functions:
                self.problems.add(name, f"no function {struct['init_function']}")
            baseline = self.macros.get(upper + "_BASELINE", "")
            if not re.match(r"^\d+u?$", baseline):
                self.problems.add(name, f"no documented macro {upper}_BASELINE that is a plain number")
            else:
                struct["baseline"] = int(baseline.rstrip("u"))
        for function in self.functions.values():
            place = function["name"]
            for retval in function["retvals"]:
                if retval["name"] not in codes:
                    self.problems.add(place, f"@retval {retval['name']} is not a status code")
            for name in function["cautions"]:
                if name not in caution:
                    self.problems.add(place, f"@caution {name} is not a caution")
            names = [p["name"] for p in function["params"]]
            for param in function["params"]:
                for key in ("shape", "stride"):
                    if key in param and param[key] not in names and not param[key].isdigit():
                        self.problems.add(place, f"{param['name']}: @{key} names no parameter: {param[key]}")
                if "choice" in param and param["choice"] not in self.enums:
                    self.problems.add(place, f"{param['name']}: no enumeration {param['choice']}")
                if param["base"] not in SCALARS and param["base"] not in self.structs and \
                        param["base"] not in self.opaque and param["base"] not in ("void", "char", "char *"):
                    self.problems.add(place, f"{param['name']}: unknown type {param['ctype']}")
        for struct in self.structs.values():
            for field in struct["fields"]:
                if "choice" in field and field["choice"] not in self.enums:
                    self.problems.add(struct["name"], f"{field['name']}: no enumeration {field['choice']}")


def topics_in_order(srcdir):
    """(floor, topic) in the order of the lists FLOOR_0, FLOOR_1, ... of Makefile.am."""
    text = (srcdir / "Makefile.am").read_text(encoding="utf-8").replace("\\\n", " ")
    found = []
    for floor, names in re.findall(r"^FLOOR_(\d+) =(.*)$", text, re.MULTILINE):
        found += [(int(floor), name) for name in names.split() if name != "$(NULL)"]
    return found


def extract(srcdir):
    srcdir = pathlib.Path(srcdir).resolve()
    extractor = Extractor(srcdir)
    with tempfile.TemporaryDirectory() as xmldir:
        run_doxygen(srcdir, xmldir)
        extractor.read(xmldir)
    if extractor.problems.found:
        raise SystemExit("The headers do not keep the contract:\n  " + "\n  ".join(extractor.problems.found))

    floors = dict((topic, floor) for floor, topic in topics_in_order(srcdir))
    headers = sorted(p.stem for p in (srcdir / "include" / "freeair").glob("*.h"))
    missing = [h for h in headers if h not in floors and h not in ("export", "freeair")]
    if missing:
        raise SystemExit("Makefile.am lists no floor for: " + " ".join(missing))

    def line_of(entry):
        text = (srcdir / "include" / "freeair" / (entry["topic"] + ".h")).read_text(encoding="utf-8")
        where = re.search(r"\b" + re.escape(entry["name"]) + r"\b\s*[({;]|enum " + re.escape(entry["name"]), text)
        return where.start() if where else 0

    order = {topic: i for i, (_, topic) in enumerate(topics_in_order(srcdir))}

    def key(entry):
        return (order.get(entry["topic"], 999), line_of(entry))

    version = read_version(srcdir)
    return {
        "name": "freeair",
        "version": version,
        "topics": [extractor.topics[t] for _, t in topics_in_order(srcdir) if t in extractor.topics],
        "enumerations": sorted(extractor.enums.values(), key=key),
        "structures": sorted(extractor.structs.values(), key=key),
        "macros": dict(sorted((k, v) for k, v in extractor.macros.items()
                              if k.startswith("FREEAIR_") and re.match(r"^\d+u?$", v))),
        "functions": sorted(extractor.functions.values(), key=key),
    }


def defined_by_hand(srcdir):
    """The functions of the interface that the sources of the topics define."""
    sources = sorted((srcdir / "lib").glob("*.c"))
    return {name for path in sources
            for name in re.findall(r"^[a-z][\w *]*?\b(freeair_\w+)\(", path.read_text(encoding="utf-8"), re.MULTILINE)}


def read_version(srcdir):
    text = (srcdir / "configure.ac").read_text(encoding="utf-8")
    parts = dict(re.findall(r"^m4_define\(\[freeair_(major|minor|patch)\], \[(\d+)\]\)", text, re.MULTILINE))
    if len(parts) != 3:
        raise SystemExit("configure.ac: cannot find freeair_major, freeair_minor and freeair_patch")
    return "{major}.{minor}.{patch}".format(**parts)
