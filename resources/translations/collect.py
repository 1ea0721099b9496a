#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Prints, as source for lupdate, the texts that files hand to a short helper around translate().

A helper looks like `std::string t(const char* english) { return translate("report", english); }`, or calls such a one,
and stands in the file itself or in a header that it includes; lupdate sees only direct calls.
Usage, at the top of the repository: collect.py FOLDER...
"""
import functools
import pathlib
import re
import sys

HELPER = re.compile(r'(\w+)\(const char\* (\w+)[^)]*\)\s*\{([^}]*)\}')
DIRECT = r'\btranslate\("(\w+)", {}\)'
THROUGH = r'\b(\w+)\({}\)'
INCLUDE = re.compile(r'#include "((?:core|app)/[^"]+\.h)"')
LITERALS = r'\s*((?:"(?:[^"\\]|\\.)*"\s*)+)'


@functools.cache
def helpers_in(path):
    """Name and context of each helper that a file defines."""
    found = {}
    for name, argument, body in HELPER.findall(path.read_text(encoding="utf-8")):
        if direct := re.search(DIRECT.format(argument), body):
            found[name] = direct[1]
        elif (through := re.search(THROUGH.format(argument), body)) and through[1] in found:
            found[name] = found[through[1]]
    return found


def helpers_for(path, text):
    """Those that the file can call: its own and those of the headers it includes."""
    found = {}
    for header in map(pathlib.Path, INCLUDE.findall(text)):
        if header.exists():
            found |= helpers_in(header)
    return found | helpers_in(path)


for path in sorted(p for folder in sys.argv[1:] for p in pathlib.Path(folder).rglob("*.cpp")):
    text = path.read_text(encoding="utf-8")
    for name, context in sorted(helpers_for(path, text).items()):
        for call in re.finditer(r"(?<![\w.])" + name + r"\(" + LITERALS, text):
            print(f'QT_TRANSLATE_NOOP("{context}", {call[1].strip()})')
