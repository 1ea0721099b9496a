#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Prints, as source for lupdate, the texts that files hand to a short helper of their own around translate().

A helper looks like `std::string t(const char* english) { return translate("report", english); }`; lupdate sees only
direct calls. Usage: collect.py FOLDER...
"""
import pathlib
import re
import sys

HELPER = re.compile(r'(\w+)\(const char\* (\w+)[^)]*\)\s*\{[^}]*?translate\("(\w+)", \2\)')
LITERALS = r'\s*((?:"(?:[^"\\]|\\.)*"\s*)+)'

for path in sorted(p for folder in sys.argv[1:] for p in pathlib.Path(folder).rglob("*.cpp")):
    text = path.read_text(encoding="utf-8")
    for name, context in sorted({(m[1], m[3]) for m in HELPER.finditer(text)}):
        for call in re.finditer(r"(?<![\w:.])" + name + r"\(" + LITERALS, text):
            print(f'QT_TRANSLATE_NOOP("{context}", {call[1].strip()})')
