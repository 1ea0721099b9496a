#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""Prints, as source for lupdate, the texts that lupdate itself does not see.

lupdate sees calls of translate() with a literal. Here stand
- texts handed to a helper: a function with a parameter `const char*` that it hands to translate() or to another helper,
  as in `std::string t(const char* english) { return translate("report", english); }`;
- texts that a condition chooses: `translate("lesson", on ? "Open." : "Shut.")`;
- texts that a variable or another function of the file holds: `const char* step = near ? "In step." : "Out of step.";`.
A helper is known to the file that defines it, and to those that include the header which defines or declares it.
Usage, at the top of the repository: collect.py FOLDER...
"""
import functools
import pathlib
import re
import sys

INCLUDE = re.compile(r'#include "((?:core|app)/[^"]+\.h)"')
SKIPPED = re.compile(r'"(?:[^"\\]|\\.)*"|\'(?:[^\'\\]|\\.)\'|//[^\n]*')
LITERAL = re.compile(r'(?:"(?:[^"\\]|\\.)*"\s*)+')
PARAMETER = re.compile(r"const char\* (\w+)(?: = .*)?", re.S)
FUNCTION = re.compile(r"\b(\w+)(?: = \[[^\]]*\])?\((?=[^(){};]*const char\* \w+)")
OPEN, CLOSE = "([{", ")]}"


@functools.cache
def text_of(path):
    return path.read_text(encoding="utf-8")


def pieces(text, start, separators, end):
    """Splits at the separators outside of brackets and literals, up to the bracket that closes what was open at `start`
    or to one of `end`; and where that is."""
    parts, depth, at, begin = [], 0, start, start
    while at < len(text):
        if skipped := SKIPPED.match(text, at):
            at = skipped.end()
            continue
        c = text[at]
        if depth == 0 and (c in CLOSE or c in end):
            break
        depth += (c in OPEN) - (c in CLOSE)
        if depth == 0 and text[at:at + 2] == "::":
            at += 1
        elif depth == 0 and c in separators:
            parts.append(text[begin:at])
            begin = at + 1
        at += 1
    return [*parts, text[begin:at]], at


def values(argument):
    """What an argument can be: itself, or the branches of its `?:`."""
    argument = re.sub(r"//[^\n]*", "", argument).strip()
    if argument.startswith("(") and pieces(argument, 1, "", "")[1] == len(argument) - 1:
        return values(argument[1:-1])
    branches = pieces(argument, 0, "?:", "")[0]
    return [b.strip() for b in (branches[1:] if len(branches) > 1 else branches)]


def handed_over(text, helpers):
    """For every call of translate(), translatable() or a helper: the context, and what the argument that is a text can be."""
    for call in re.finditer(r"\btranslat(?:e|able)\(\s*\"(\w+)\",", text):
        for value in values(pieces(text, call.end(), ",", "")[0][0]):
            yield call[1], value
    for (name, position), context in helpers.items():
        for call in re.finditer(rf"(?<!std::string )(?<!QString )\b{name}\(", text):
            arguments = pieces(text, call.end(), ",", "")[0]
            for value in values(arguments[position]) if position < len(arguments) else []:
                yield context, value


def functions(text):
    """Every function and named lambda with a text among its parameters: name, their places by name, body."""
    for head in FUNCTION.finditer(text):
        parameters, end = pieces(text, head.end(), ",", "")
        places = {m[1]: i for i, p in enumerate(parameters) if (m := PARAMETER.fullmatch(p.strip()))}
        if body := re.compile(r"\)(?: const)?(?:\s*->\s*[\w:<>]+)?\s*\{").match(text, end):
            yield head[1], places, text[body.end():pieces(text, body.end(), "", "")[1]]


@functools.cache
def helpers_in(path):
    """{(name, place of the text among the parameters): context} of each helper that a file defines."""
    found, before = {}, None
    while found != before:
        before = dict(found)
        for name, places, body in functions(text_of(path)):
            for context, value in handed_over(body, visible(path) | before):
                if value in places:
                    found[name, places[value]] = context
    return found


@functools.cache
def visible(path):
    """Helpers of the headers that a file includes: defined there, or declared there and defined beside."""
    found = {}
    for header in map(pathlib.Path, INCLUDE.findall(text_of(path))):
        beside = header.with_suffix(".cpp")
        if header.exists() and header.with_suffix("") != path.with_suffix(""):
            found |= helpers_in(header)
            if beside.exists():
                found |= {key: context for key, context in helpers_in(beside).items()
                          if re.search(rf"\b{key[0]}\([^;{{]*const char\*", text_of(header))}
        elif header.exists() and path.suffix == ".cpp":
            found |= helpers_in(header)
    return found


def resolved(value, text, depth=3):
    """The literals behind a value: itself, or what a variable or a function of the same file can hold."""
    if LITERAL.fullmatch(value) or not depth:
        return [value]
    behind = []
    if re.fullmatch(r"\w+", value):
        behind = re.findall(rf"const char\* {value} =([^;]*);", text)
    elif call := re.fullmatch(r"(\w+)\(.*\)", value, re.S):
        for head in re.finditer(rf"const char\* {call[1]}\([^)]*\)\s*\{{", text):
            body = text[head.end():pieces(text, head.end(), "", "")[1]]
            behind += re.findall(r"\breturn ([^;]*);", body)
    return [literal for b in behind for v in values(b) for literal in resolved(v, text, depth - 1)]


def collect(path):
    text = text_of(path)
    for context, value in handed_over(text, visible(path) | helpers_in(path)):
        for literal in resolved(value, text):
            if LITERAL.fullmatch(literal):
                yield context, literal


for path in sorted(p for folder in sys.argv[1:] for p in pathlib.Path(folder).rglob("*") if p.suffix in (".cpp", ".h")):
    for context, literal in collect(path):
        if literal != '""':
            print(f'QT_TRANSLATE_NOOP("{context}", {literal})')
