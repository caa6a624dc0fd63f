<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>Answers</name>
    <message numerus="yes">
        <source>%n value(s) are out of date: measure them again, or confirm them in the table.</source>
        <translation>
            <numerusform>%n value is out of date: measure it again, or confirm it in the table.</numerusform>
            <numerusform>%n values are out of date: measure them again, or confirm them in the table.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>EvidenceModel</name>
    <message numerus="yes">
        <source>%n measurement(s)</source>
        <translation>
            <numerusform>%n measurement</numerusform>
            <numerusform>%n measurements</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n image(s)</source>
        <translation>
            <numerusform>%n image</numerusform>
            <numerusform>%n images</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>EvidencePanel</name>
    <message numerus="yes">
        <source>%n other file(s) were left out.</source>
        <translation>
            <numerusform>%n other file was left out.</numerusform>
            <numerusform>%n other files were left out.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>LibraryDialog</name>
    <message numerus="yes">
        <source>Present version, and %n edit(s) since</source>
        <translation>
            <numerusform>Present version, and %n edit since</numerusform>
            <numerusform>Present version, and %n edits since</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n thing(s) are wrong with the library: %1 Copy what is whole into a new library.</source>
        <translation>
            <numerusform>%n thing is wrong with the library: %1 Copy what is whole into a new library.</numerusform>
            <numerusform>%n things are wrong with the library: %1 Copy what is whole into a new library.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n case(s) were copied to %1, each with its newest whole version. Choose this file in the settings to work with it.</source>
        <translation>
            <numerusform>%n case was copied to %1, with its newest whole version. Choose this file in the settings to work with it.</numerusform>
            <numerusform>%n cases were copied to %1, each with its newest whole version. Choose this file in the settings to work with it.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>MainWindow</name>
    <message numerus="yes">
        <source>%n of ID, name and date of birth differ(s).</source>
        <translation>
            <numerusform>%n of ID, name and date of birth differs.</numerusform>
            <numerusform>%n of ID, name and date of birth differ.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n image(s) were written to %1.</source>
        <translation>
            <numerusform>%n image was written to %1.</numerusform>
            <numerusform>%n images were written to %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n file(s) were left out, since text of the patient may be in them.</source>
        <translation>
            <numerusform>%n file was left out, since text of the patient may be in it.</numerusform>
            <numerusform>%n files were left out, since text of the patient may be in them.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n file(s) were written to %1.</source>
        <translation>
            <numerusform>%n file was written to %1.</numerusform>
            <numerusform>%n files were written to %1.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ReadReport</name>
    <message numerus="yes">
        <source>%n reading(s) were taken from the %1.</source>
        <translation>
            <numerusform>%n reading was taken from the %1.</numerusform>
            <numerusform>%n readings were taken from the %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) are in the case already.</source>
        <translation>
            <numerusform>%n reading is in the case already.</numerusform>
            <numerusform>%n readings are in the case already.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n number(s) of the report have no place in the comparison table.</source>
        <translation>
            <numerusform>%n number of the report has no place in the comparison table.</numerusform>
            <numerusform>%n numbers of the report have no place in the comparison table.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>SameCutPage</name>
    <message numerus="yes">
        <source>The probe is placed by %n place(s) marked in both; they lie %1 apart after the fit (root mean square).</source>
        <translation>
            <numerusform>The probe is placed by %n place marked in both; it lies %1 apart after the fit (root mean square).</numerusform>
            <numerusform>The probe is placed by %n places marked in both; they lie %1 apart after the fit (root mean square).</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Sizing</name>
    <message numerus="yes">
        <source>It rests on %n reading(s)</source>
        <translation>
            <numerusform>It rests on %n reading</numerusform>
            <numerusform>It rests on %n readings</numerusform>
        </translation>
    </message>
</context>
</TS>
