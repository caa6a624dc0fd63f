#!/usr/bin/env python3
"""Keeps the German and French texts of the screen, and the plurals of the English ones, up to date. Run from anywhere:

    translate.py update                 collect the texts of app/ into the .ts files (lupdate of Qt 6)
    translate.py missing de > new.json  what has no German yet, as {context: {English: ""}}
    translate.py merge de new.json      put the filled-in file back; plural texts are lists of both forms

English stands in the sources and is the key; only its plurals ("%n file(s)") have a file of their own.
"""
import json
import pathlib
import re
import subprocess
import sys
import xml.etree.ElementTree as ET

HERE = pathlib.Path(__file__).resolve().parent
ROOT = HERE.parent.parent
LANGUAGES = ("de", "fr", "en")
ONLY_PLURALS = ("en",)
LUPDATE = ("/usr/lib/qt6/bin/lupdate", "lupdate")


def ts_path(language):
    if language not in LANGUAGES:
        sys.exit(f"There is no language {language}; there are: {', '.join(LANGUAGES)}.")
    return HERE / f"ostium-gauge_{language}.ts"


def write(tree, path):
    body = ET.tostring(tree.getroot(), encoding="unicode", short_empty_elements=False)
    path.write_text(f'<?xml version="1.0" encoding="utf-8"?>\n<!DOCTYPE TS>\n{body}\n', encoding="utf-8")


def messages(tree):
    for context in tree.getroot().iter("context"):
        for message in context.iter("message"):
            yield context.findtext("name"), message


def is_unfinished(message):
    translation = message.find("translation")
    return translation is None or translation.get("type") == "unfinished"


def update():
    program = next((p for p in LUPDATE if pathlib.Path(p).exists() or "/" not in p))
    for language in LANGUAGES:
        done = subprocess.run([program, "-locations", "none", "-no-obsolete", "-no-ui-lines", "-source-language", "en",
                               "-target-language", language, *(["-pluralonly"] if language in ONLY_PLURALS else []),
                               str(ROOT / "app"), "-ts", str(ts_path(language))],
                              capture_output=True, text=True)
        problems = re.findall(r"^.*(?:lacks Q_OBJECT|Cannot invoke tr).*$", done.stdout + done.stderr, re.M)
        if done.returncode:
            sys.exit(f"lupdate failed:\n{done.stderr}")
    report()
    if problems:
        sys.exit("These texts are looked for under another name than they are listed under, and stay English:\n" +
                 "\n".join(problems))


def report():
    for language in LANGUAGES:
        all_messages = list(messages(ET.parse(ts_path(language))))
        unfinished = sum(is_unfinished(message) for _, message in all_messages)
        print(f"{language}: {len(all_messages)} texts, {unfinished} without translation")


def missing(language):
    out = {}
    for context, message in messages(ET.parse(ts_path(language))):
        if is_unfinished(message):
            out.setdefault(context, {})[message.findtext("source")] = ["", ""] if message.get("numerus") else ""
    json.dump(out, sys.stdout, ensure_ascii=False, indent=1)
    print()


def merge(language, file):
    texts = json.loads(pathlib.Path(file).read_text(encoding="utf-8"))
    anywhere = {source: text for group in texts.values() for source, text in group.items() if text}
    tree = ET.parse(ts_path(language))
    used = 0
    for context, message in messages(tree):
        source = message.findtext("source")
        text = texts.get(context, {}).get(source) or (anywhere.get(source) if is_unfinished(message) else None)
        if not text or (isinstance(text, list) and not all(text)):
            continue
        translation = message.find("translation")
        translation.attrib.pop("type", None)
        if isinstance(text, list):
            for form in list(translation):
                translation.remove(form)
            for form in text:
                ET.SubElement(translation, "numerusform").text = form
        else:
            translation.text = text
        used += 1
    write(tree, ts_path(language))
    print(f"{used} texts put in")
    report()


def main(arguments):
    if arguments == ["update"]:
        update()
    elif len(arguments) == 2 and arguments[0] == "missing":
        missing(arguments[1])
    elif len(arguments) == 3 and arguments[0] == "merge":
        merge(arguments[1], arguments[2])
    else:
        sys.exit(__doc__)


if __name__ == "__main__":
    main(sys.argv[1:])
