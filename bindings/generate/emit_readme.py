# SPDX-License-Identifier: MIT
"""api.json and the examples -> the table of topics in README.md."""

import re

BEGIN, END = "<!-- topics: written by bindings/generate -->\n", "<!-- end of topics -->\n"


def examples_by_topic(srcdir, api):
    """Which example programs call a function of which topic."""
    topic_of = {f["name"]: f["topic"] for f in api["functions"]}
    used = {}
    sources = sorted((srcdir / "examples").glob("*/*.c")) + sorted((srcdir / "examples").glob("*/problems/*.json"))
    sources += sorted((srcdir / "examples").glob("*/*.py"))
    for source in sources:
        program = source.relative_to(srcdir / "examples").parts[0]
        if program == "common":
            continue
        text = re.sub(r"\bfa\.", "freeair_", source.read_text(encoding="utf-8"))  # as Python's examples call it
        for name in re.findall(r"\bfreeair_\w+", text):
            if name in topic_of:
                used.setdefault(topic_of[name], []).append(program)
    return used


def readme(srcdir, api):
    text = (srcdir / "README.md").read_text(encoding="utf-8")
    before, rest = text.split(BEGIN, 1)
    _, after = rest.split(END, 1)
    used = examples_by_topic(srcdir, api)
    lines = ["| topic | header | example |\n", "|---|---|---|\n"]
    for topic in api["topics"]:
        name = topic["name"]
        programs = [p for p in dict.fromkeys(used.get(name, [])) if p != "calc" or name in ("describe", "catalogue")]
        programs = ", ".join(f"`examples/{p}`" for p in programs[:2]) or "`examples/calc`"
        lines.append(f"| {topic['title']} | `<freeair/{name}.h>` | {programs} |\n")
    return before + BEGIN + "".join(lines) + END + after
