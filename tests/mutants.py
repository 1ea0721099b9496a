#!/usr/bin/env python3
# SPDX-License-Identifier: GPL-3.0-or-later
"""How many small mistakes in core/ the tests notice: one operator at a time is turned round, in a tree of its own.

python3 tests/mutants.py [COUNT] [SEED]      of the last commit; 200 and 1 if not given. By hand, before a release: hours.

A mistake that does not compile does not count; one with which a test fails, crashes or takes five times the time of all
is noticed. clang-format puts spaces about two-sided operators and about nothing else: they can be found without a parser.
"""
import pathlib
import random
import re
import subprocess
import sys
import time

ROOT = pathlib.Path(__file__).resolve().parent.parent
TREE = ROOT / "build" / "mutants"
BUILD = TREE / "build" / "mutants"
TESTS = "^(core_|agreement|published)"

TURNED = {
    " + ": " - ", " - ": " + ", " * ": " / ", " / ": " * ", " += ": " -= ", " -= ": " += ", " *= ": " /= ",
    " < ": " >= ", " > ": " <= ", " <= ": " > ", " >= ": " < ", " == ": " != ", " != ": " == ",
    " && ": " || ", " || ": " && ", "return true;": "return false;", "return false;": "return true;",
    "std::min(": "std::max(", "std::max(": "std::min(",
}
OPERATOR = re.compile("|".join(re.escape(one) for one in sorted(TURNED, key=len, reverse=True)))


def code_of(text):
    """The line with strings and comments blanked; nothing of lines that only the compiler reads."""
    if re.match(r"\s*(#|//|template|static_assert)", text):
        return ""
    text = re.sub(r'"(\\.|[^"\\])*"', lambda found: "_" * len(found.group()), text)
    return re.sub(r"//.*", "", text)


def sites():
    """Every place where an operator can be turned: file, line (from 0), column, operator."""
    for file in sorted((TREE / "core").rglob("*.cpp")):
        for row, text in enumerate(file.read_text().split("\n")):
            for found in OPERATOR.finditer(code_of(text)):
                yield file, row, found.start(), found.group()


def run(*words):
    return subprocess.run(words, cwd=TREE, stdout=subprocess.PIPE, stderr=subprocess.STDOUT, text=True)


def must(*words):
    result = run(*words)
    if result.returncode:
        sys.exit(f"mutants: {' '.join(words)} failed:\n{result.stdout[-3000:]}")


def tests_pass(pattern, patience_s):
    return run("ctest", "--test-dir", str(BUILD), "-j2", "-R", pattern, "--no-tests=ignore", "--stop-on-failure",
               "--timeout", str(patience_s)).returncode == 0


def prepare():
    """A tree of the last commit, built without batches and as a shared library, so that a mistake costs one file. Returns
    how long all tests take in s."""
    if not TREE.exists():
        subprocess.run(["git", "worktree", "add", "--detach", TREE], cwd=ROOT, check=True)
    head = subprocess.run(["git", "rev-parse", "HEAD"], cwd=ROOT, check=True, capture_output=True, text=True)
    must("git", "checkout", "--force", "--detach", head.stdout.strip())
    must("cmake", "-S", ".", "-B", str(BUILD), "-G", "Ninja", "-DCMAKE_BUILD_TYPE=Release", "-DHOWLMAP_APP=OFF",
         "-DHOWLMAP_UNITY=OFF", "-DBUILD_SHARED_LIBS=ON", "-DCMAKE_LINK_DEPENDS_NO_SHARED=ON",
         "-DCMAKE_CXX_FLAGS_RELEASE=-O1")
    must("ninja", "-C", str(BUILD))
    started = time.monotonic()
    if not tests_pass(TESTS, 3600):
        sys.exit("mutants: the tests fail before anything is changed")
    return time.monotonic() - started


def fate(file, row, column, operator, patience_s):
    """What becomes of one mistake: noticed, missed or no program."""
    whole = file.read_text()
    lines = whole.split("\n")
    lines[row] = lines[row][:column] + TURNED[operator] + lines[row][column + len(operator):]
    file.write_text("\n".join(lines))
    try:
        if run("ninja", "-C", str(BUILD)).returncode:
            return "no program"
        room = file.relative_to(TREE / "core").parts[0]
        passed = tests_pass(f"^core_{room}", patience_s) and tests_pass(TESTS, patience_s)
        return "missed" if passed else "noticed"
    finally:
        file.write_text(whole)


def main():
    count = int(sys.argv[1]) if len(sys.argv) > 1 else 200
    seed = int(sys.argv[2]) if len(sys.argv) > 2 else 1
    patience_s = 30 + 5 * prepare()
    everywhere = list(sites())
    random.Random(seed).shuffle(everywhere)
    print(f"{len(everywhere)} places, seed {seed}, {patience_s:.0f} s a test at most", flush=True)
    tally = {"noticed": 0, "missed": 0, "no program": 0}
    for file, row, column, operator in everywhere:
        if tally["noticed"] + tally["missed"] >= count:
            break
        what = fate(file, row, column, operator, patience_s)
        tally[what] += 1
        text = file.read_text().split("\n")[row].strip()
        print(f"{what}: {file.relative_to(TREE)}:{row + 1}: '{operator.strip()}' turned in: {text}", flush=True)
    counted = tally["noticed"] + tally["missed"]
    print(f"{tally['noticed']} of {counted} noticed ({100 * tally['noticed'] / max(1, counted):.0f} %)")


main()
