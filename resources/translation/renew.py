#!/usr/bin/env python3
"""Bring resources/translation/*.ts up to date with the texts of ui, app and core; with --check, only tell what is amiss.

Those of core, and some of app, are the patterns of phrases; they are listed in patterns.txt besides, by which the window reads back
what was kept in English, such as a journal.

Every text stands once, in one context: a word means the same wherever it is shown. Where it does not, its tr() or
say() has a second argument that tells the two apart, and so it stands there twice.
"""
import collections
import pathlib
import re
import shutil
import subprocess
import sys
import tempfile
import xml.etree.ElementTree as tree
from xml.sax.saxutils import escape

HERE = pathlib.Path(__file__).resolve().parent
ROOT = HERE.parent.parent
FOLDERS = ["ui", "app"]
PATTERN = re.compile(r'\b(?:phrase|pattern)\(\s*((?:"(?:[^"\\]|\\.)*"\s*)+)')
# English words that no other language of ours has.
ENGLISH = set("""the of and is are to with from by for this that there when where which day days cutting cuttings batch
batches slot slots bench house zone stock target strike struck root rooted nothing planned until their they it""".split())


def phrase_patterns():
    """The patterns of phrases, as their C++ reads."""
    found = set()
    for source in sorted(one for folder in ("core", "app", "ui") for one in (ROOT / folder).rglob("*.*")):
        if source.suffix in (".cpp", ".h"):
            for words in PATTERN.findall(source.read_text(encoding="utf-8")):
                whole = "".join(re.findall(r'"((?:[^"\\]|\\.)*)"', words))
                found.add(whole.replace('\\"', '"'))
    # What has no letter says nothing.
    return sorted(one for one in found if re.search("[A-Za-z]{2}", re.sub(r"%\d", "", one)))


def found_texts():
    """(text, comment) of every tr() and say(), as lupdate reads them."""
    lupdate = shutil.which("lupdate", path="/usr/lib/qt6/bin") or shutil.which("lupdate") or "lupdate"
    with tempfile.TemporaryDirectory() as folder:
        ts = pathlib.Path(folder) / "found.ts"
        told = subprocess.run([lupdate, "-silent", "-locations", "none", "-extensions", "cpp,h", "-I", ".",
                               "-tr-function-alias", "tr+=say", *FOLDERS, "-ts", str(ts)],
                              cwd=ROOT, capture_output=True, text=True)
        if told.returncode != 0:
            sys.exit(told.stderr)
        return {key: None for key in [*read(ts), *((one, "") for one in phrase_patterns())]}


def read(ts):
    """Of a file of texts: (text, comment) -> translation, or None where it is unfinished."""
    texts = {}
    for message in tree.parse(ts).getroot().iter("message"):
        translation = message.find("translation")
        finished = translation is not None and translation.get("type") is None and translation.text
        texts[message.findtext("source"), message.findtext("comment") or ""] = translation.text if finished else None
    return texts


def written(language, texts):
    lines = ['<?xml version="1.0" encoding="utf-8"?>', "<!DOCTYPE TS>",
             f'<TS version="2.1" language="{language}" sourcelanguage="en">', "<context>", "    <name>Warmbench</name>"]
    for (source, comment), translation in sorted(texts.items()):
        lines += ["    <message>", f"        <source>{escape(source)}</source>"]
        if comment:
            lines.append(f"        <comment>{escape(comment)}</comment>")
        lines.append(f"        <translation>{escape(translation)}</translation>" if translation
                     else '        <translation type="unfinished"></translation>')
        lines.append("    </message>")
    return "\n".join(lines + ["</context>", "</TS>", ""])


def amiss(source, translation):
    """What a translation has lost of its text."""
    for what, pattern in [("places %1, %2", r"%\d|%n"), ("markup", r"</?\w+>"), ("an access key &", r"&(?=\w)"),
                          ("line breaks", r"\n"), ("spaces at an end", r"^\s+|\s+$"), ("dots at the end", r"…$"),
                          ("file names", r"\*\.\w+")]:
        if collections.Counter(re.findall(pattern, source)) != collections.Counter(re.findall(pattern, translation)):
            yield f"differs in {what}"
    left = ENGLISH & set(re.findall(r"[^\W\d_]+", re.sub(r"<[^>]*>|\w*_\w*", " ", translation)))
    if left:
        yield "has English left: " + ", ".join(sorted(left))


def main():
    check = sys.argv[1:] == ["--check"]
    found = found_texts()
    bad = 0
    patterns = HERE / "patterns.txt"
    listed = "\n".join(phrase_patterns()) + "\n"
    if not check:
        patterns.write_text(listed, encoding="utf-8")
    elif listed != patterns.read_text(encoding="utf-8"):
        bad += 1
        print("patterns.txt is not what python3 resources/translation/renew.py makes of the phrases as they are now")
    for ts in sorted(HERE.glob("*.ts")):
        kept = read(ts)
        texts = {key: kept.get(key) for key in found}
        text = written(ts.stem.split("_")[1], texts)
        if check and text != ts.read_text(encoding="utf-8"):
            bad += 1
            print(f"{ts.name} is not what python3 resources/translation/renew.py makes of the texts as they are now")
        for (source, comment), translation in sorted(texts.items()):
            problems = amiss(source, translation) if translation else ["has no translation"]
            for problem in problems:
                bad += 1
                print(f"{ts.name}: {source!r} {comment and repr(comment)} {problem}")
        if not check:
            ts.write_text(text, encoding="utf-8")
            print(f"{ts.name}: {len(texts)} texts, {sum(one is None for one in texts.values())} to be translated")
    return 1 if check and bad else 0


sys.exit(main())
