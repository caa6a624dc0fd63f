<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>AngleDial</name>
    <message>
        <source>longest diameter</source>
        <translation>längster Durchmesser</translation>
    </message>
    <message>
        <source>shortest diameter</source>
        <translation>kürzester Durchmesser</translation>
    </message>
    <message>
        <source>perimeter-derived diameter</source>
        <translation>umfangsbezogener Durchmesser</translation>
    </message>
    <message>
        <source>area-derived diameter</source>
        <translation>flächenbezogener Durchmesser</translation>
    </message>
    <message>
        <source>probe angle of the longest</source>
        <translation>Sondenwinkel des längsten</translation>
    </message>
    <message>
        <source>largest of the views</source>
        <translation>größte der Ansichten</translation>
    </message>
    <message>
        <source>Dial of the probe angles</source>
        <translation>Zifferblatt der Sondenwinkel</translation>
    </message>
    <message>
        <source>No width is drawn on the echo views of this moment yet. Press M to measure them in one pass.</source>
        <translation>Auf den Echoansichten dieses Zeitpunkts ist noch keine Weite gezeichnet. M misst sie in einem Durchgang.</translation>
    </message>
    <message>
        <source>Landing zone (round ends)</source>
        <translation>Landezone (runde Enden)</translation>
    </message>
    <message>
        <source>Ostium (square ends)</source>
        <translation>Ostium (eckige Enden)</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>greatest of the views</source>
        <translation>größte der Ansichten</translation>
    </message>
    <message>
        <source>Readings of the views</source>
        <translation>Ablesungen der Ansichten</translation>
    </message>
    <message>
        <source>probe angle</source>
        <translation>Sondenwinkel</translation>
    </message>
    <message>
        <source>ostium</source>
        <translation>Ostium</translation>
    </message>
    <message>
        <source>landing zone</source>
        <translation>Landezone</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>unbekannt</translation>
    </message>
</context>
<context>
    <name>Answers</name>
    <message>
        <source>No device chart is loaded: load one typed from the device's current instructions, or a demonstration chart.</source>
        <translation>Keine Größentabelle ist geladen: eine aus der aktuellen Gebrauchsanweisung abgetippte oder eine Übungstabelle laden.</translation>
    </message>
    <message>
        <source>No decision pressure: the chart states none, so say at which left atrial pressure the reading counts.</source>
        <translation>Kein Entscheidungsdruck: die Tabelle nennt keinen, also angeben, bei welchem linken Vorhofdruck die Messung zählt.</translation>
    </message>
    <message>
        <source>No reading yet: mark the atrium and the tip on the CT, measure echo views, or type a reading in.</source>
        <translation>Noch keine Messung: Vorhof und Spitze im CT markieren, Echoansichten messen oder eine Messung eintippen.</translation>
    </message>
    <message>
        <source>The decision has no text yet: write down what was decided.</source>
        <translation>Die Entscheidung hat noch keinen Text: aufschreiben, was entschieden wurde.</translation>
    </message>
    <message>
        <source>No size is chosen: choose one in the list of sizes.</source>
        <translation>Keine Größe ist gewählt: eine in der Liste der Größen wählen.</translation>
    </message>
    <message>
        <source>The chosen size %1 is not in the chart that is loaded: choose again.</source>
        <translation>Die gewählte Größe %1 steht nicht in der geladenen Tabelle: neu wählen.</translation>
    </message>
    <message>
        <source>The plan is stopped: thrombus was seen in the appendage and no later look excludes it.</source>
        <translation>Der Plan ist angehalten: im Vorhofohr wurde ein Thrombus gesehen, und kein späterer Blick schließt ihn aus.</translation>
    </message>
    <message>
        <source>The appendage was not looked at again since the repair: look for smoke, sludge and thrombus, and record it under Stasis.</source>
        <translation>Das Vorhofohr wurde seit der Reparatur nicht mehr angesehen: nach Spontankontrast, Sludge und Thrombus suchen und unter Stase erfassen.</translation>
    </message>
    <message numerus="yes">
        <source>%n value(s) are out of date: measure them again, or confirm them in the table.</source>
        <translation>
            <numerusform>%n Wert ist veraltet: neu messen oder in der Tabelle bestätigen.</numerusform>
            <numerusform>%n Werte sind veraltet: neu messen oder in der Tabelle bestätigen.</numerusform>
        </translation>
    </message>
    <message>
        <source>The sizes are still being judged: wait for the answer.</source>
        <translation>Die Größen werden noch beurteilt: auf die Antwort warten.</translation>
    </message>
</context>
<context>
    <name>AppendagePage</name>
    <message>
        <source>Long section</source>
        <translation>Längsschnitt</translation>
    </message>
    <message>
        <source>Cross-section</source>
        <translation>Querschnitt</translation>
    </message>
</context>
<context>
    <name>CArmSettings</name>
    <message>
        <source>The patient will lie otherwise than at CT; the C-arm has to be turned on by</source>
        <translation>Der Patient wird anders liegen als beim CT; der C-Bogen muss weitergedreht werden um</translation>
    </message>
    <message>
        <source>Unless set: %1, from memory, without a source</source>
        <translation>Wenn nicht eingestellt: %1, aus dem Gedächtnis, ohne Quelle</translation>
    </message>
    <message>
        <source>Unless set: %1, an assumption without a source</source>
        <translation>Wenn nicht eingestellt: %1, eine Annahme ohne Quelle</translation>
    </message>
    <message>
        <source>Reach of the C-arm, degrees</source>
        <translation>Reichweite des C-Bogens, Grad</translation>
    </message>
    <message>
        <source>RAO up to</source>
        <translation>RAO bis</translation>
    </message>
    <message>
        <source>LAO up to</source>
        <translation>LAO bis</translation>
    </message>
    <message>
        <source>CRA up to</source>
        <translation>CRA bis</translation>
    </message>
    <message>
        <source>CAU up to</source>
        <translation>CAU bis</translation>
    </message>
    <message>
        <source>RAO and LAO 60°, CRA and CAU 40° are from memory, without a source: set what your room allows.</source>
        <translation>RAO und LAO 60°, CRA und CAU 40° sind aus dem Gedächtnis, ohne Quelle: Stellen Sie ein, was Ihr Raum erlaubt.</translation>
    </message>
    <message>
        <source>The patient</source>
        <translation>Der Patient</translation>
    </message>
    <message>
        <source>By how much the C-arm has to be turned on to see the same as at CT; 0 and 0: as if on the back</source>
        <translation>Um wie viel der C-Bogen weiterzudrehen ist, um dasselbe zu sehen wie beim CT; 0 und 0: wie auf dem Rücken</translation>
    </message>
    <message>
        <source>LAO + / RAO −</source>
        <translation>LAO + / RAO −</translation>
    </message>
    <message>
        <source>CRA + / CAU −</source>
        <translation>CRA + / CAU −</translation>
    </message>
    <message>
        <source>The C-arm's distances from the source, mm</source>
        <translation>Abstände des C-Bogens von der Quelle, mm</translation>
    </message>
    <message>
        <source>to the isocentre</source>
        <translation>bis zum Isozentrum</translation>
    </message>
    <message>
        <source>to the detector</source>
        <translation>bis zum Detektor</translation>
    </message>
    <message>
        <source>For the simulated radiograph, in every case; X-ray frames that tell their own keep them. Empty: %1 and %2 mm, assumptions without a source.</source>
        <translation>Für das simulierte Röntgenbild, in jedem Fall; Röntgenbilder, die ihre eigenen nennen, behalten sie. Leer: %1 und %2 mm, Annahmen ohne Quelle.</translation>
    </message>
    <message>
        <source>At CT: %1.</source>
        <translation>Beim CT: %1.</translation>
    </message>
</context>
<context>
    <name>CalibratePicture</name>
    <message>
        <source>Calibrate the picture</source>
        <translation>Das Bild eichen</translation>
    </message>
</context>
<context>
    <name>CardPanel</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>Pressure</source>
        <translation>Druck</translation>
    </message>
    <message>
        <source>Width itself</source>
        <translation>Die Weite selbst</translation>
    </message>
    <message>
        <source>2D echo, ellipse</source>
        <translation>2D-Echo, Ellipse</translation>
    </message>
    <message>
        <source>3D echo</source>
        <translation>3D-Echo</translation>
    </message>
    <message>
        <source>Fluoroscopy</source>
        <translation>Durchleuchtung</translation>
    </message>
    <message>
        <source>echo at %1°</source>
        <translation>Echo bei %1°</translation>
    </message>
    <message>
        <source>No reading that may be expected would make another size fit better.</source>
        <translation>Keine zu erwartende Messung ließe eine andere Größe besser passen.</translation>
    </message>
    <message>
        <source>above %1</source>
        <translation>über %1</translation>
    </message>
    <message>
        <source>below %1</source>
        <translation>unter %1</translation>
    </message>
    <message>
        <source>A reading by %1 at %2 %3 overturns the plan: size %4 would then have the greatest fit chance (chance of such a reading: %5).</source>
        <translation>Eine Messung durch %1 bei %2 %3 stößt den Plan um: Größe %4 hätte dann die höchste Passchance (Chance einer solchen Messung: %5).</translation>
    </message>
    <message>
        <source>Card for the room</source>
        <translation>Karte für den Eingriffsraum</translation>
    </message>
    <message>
        <source>Chosen: size %1, fit chance %2.</source>
        <translation>Gewählt: Größe %1, Passchance %2.</translation>
    </message>
    <message>
        <source>No size is chosen yet.</source>
        <translation>Noch ist keine Größe gewählt.</translation>
    </message>
    <message>
        <source>Readings to expect of the %1, with the interval that holds 95 of 100 readings:</source>
        <translation>Zu erwartende Messungen: %1, mit dem Bereich, der 95 von 100 Messungen enthält:</translation>
    </message>
    <message>
        <source>Copy card</source>
        <translation>Karte kopieren</translation>
    </message>
    <message>
        <source>Copy the card as plain text</source>
        <translation>Die Karte als reinen Text kopieren</translation>
    </message>
    <message>
        <source>Card as PDF …</source>
        <translation>Karte als PDF …</translation>
    </message>
    <message>
        <source>Write the card on one page, to print it</source>
        <translation>Die Karte zum Drucken auf eine Seite schreiben</translation>
    </message>
    <message>
        <source>Card for the room as PDF</source>
        <translation>Karte für den Eingriffsraum als PDF</translation>
    </message>
    <message>
        <source>card.pdf</source>
        <translation>karte.pdf</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Large type</source>
        <translation>Große Schrift</translation>
    </message>
    <message>
        <source>Show the card in type to be read across the room</source>
        <translation>Die Karte so groß zeigen, dass sie quer durch den Raum lesbar ist</translation>
    </message>
    <message>
        <source>The card was written to %1.</source>
        <translation>Die Karte wurde nach %1 geschrieben.</translation>
    </message>
    <message>
        <source>The card could not be written to %1: choose a folder that can be written to.</source>
        <translation>Die Karte konnte nicht nach %1 geschrieben werden: einen beschreibbaren Ordner wählen.</translation>
    </message>
</context>
<context>
    <name>CaseLibrary</name>
    <message>
        <source>%1 is editing it. Wait until the case is closed there.</source>
        <translation>%1 bearbeitet ihn gerade. Warten, bis der Fall dort geschlossen ist.</translation>
    </message>
    <message>
        <source>Cannot move the case into the bin</source>
        <translation>Der Fall kann nicht in den Papierkorb gelegt werden</translation>
    </message>
    <message>
        <source>Cannot take the case out of the bin</source>
        <translation>Der Fall kann nicht aus dem Papierkorb geholt werden</translation>
    </message>
    <message>
        <source>Cannot remove the case for good</source>
        <translation>Der Fall kann nicht endgültig entfernt werden</translation>
    </message>
    <message>
        <source>it is not in the bin. Move it there first.</source>
        <translation>er liegt nicht im Papierkorb. Zuerst dorthin legen.</translation>
    </message>
    <message>
        <source>Cannot export the case to %1</source>
        <translation>Der Fall kann nicht nach %1 ausgegeben werden</translation>
    </message>
    <message>
        <source>it is damaged: %1. Rescue what is whole of it first.</source>
        <translation>er ist beschädigt: %1. Zuerst retten, was davon heil ist.</translation>
    </message>
    <message>
        <source>%1. Choose another folder.</source>
        <translation>%1. Einen anderen Ordner wählen.</translation>
    </message>
    <message>
        <source>Cannot import the case from %1: </source>
        <translation>Der Fall kann nicht eingelesen werden aus %1: </translation>
    </message>
    <message>
        <source>the file cannot be read or is larger than 512 MB.</source>
        <translation>die Datei kann nicht gelesen werden oder ist größer als 512 MB.</translation>
    </message>
    <message>
        <source>it is no case exported from a library.</source>
        <translation>es ist kein aus einer Bibliothek ausgegebener Fall.</translation>
    </message>
    <message>
        <source>a newer version of this program wrote it (%1). Use that version.</source>
        <translation>eine neuere Version dieses Programms hat es geschrieben (%1). Diese Version verwenden.</translation>
    </message>
    <message>
        <source>it does not agree with its checksum, so it is damaged. Export it again.</source>
        <translation>es stimmt nicht mit seiner Prüfsumme überein, ist also beschädigt. Erneut ausgeben.</translation>
    </message>
    <message>
        <source>Cannot import the case into the library at %1</source>
        <translation>Der Fall kann nicht in die Bibliothek in %1 eingelesen werden</translation>
    </message>
    <message>
        <source>its present version is missing.</source>
        <translation>seine gegenwärtige Version fehlt.</translation>
    </message>
    <message>
        <source>Cannot save the edits in the library</source>
        <translation>Die Änderungen können nicht in der Bibliothek gesichert werden</translation>
    </message>
    <message>
        <source>the version that they follow is damaged. Save the case as a file.</source>
        <translation>die Version, der sie folgen, ist beschädigt. Den Fall als Datei sichern.</translation>
    </message>
    <message>
        <source>another edit %1 is stored already. Save the case as a file.</source>
        <translation>eine andere Änderung %1 ist schon gespeichert. Den Fall als Datei sichern.</translation>
    </message>
    <message>
        <source>edit %1 does not follow edit %2. Save the case as a file.</source>
        <translation>Änderung %1 folgt nicht auf Änderung %2. Den Fall als Datei sichern.</translation>
    </message>
    <message>
        <source>Cannot begin to edit the case</source>
        <translation>Die Bearbeitung des Falls kann nicht beginnen</translation>
    </message>
    <message>
        <source>it lies in the bin. Take it out first.</source>
        <translation>er liegt im Papierkorb. Zuerst herausholen.</translation>
    </message>
    <message>
        <source>its present version is damaged. Restore an earlier one first.</source>
        <translation>seine gegenwärtige Version ist beschädigt. Zuerst eine frühere wiederherstellen.</translation>
    </message>
    <message>
        <source>Cannot renew the right to edit the case</source>
        <translation>Das Recht zur Bearbeitung des Falls kann nicht erneuert werden</translation>
    </message>
    <message>
        <source>Cannot give back the right to edit the case</source>
        <translation>Das Recht zur Bearbeitung des Falls kann nicht zurückgegeben werden</translation>
    </message>
    <message>
        <source>Cannot open the case library at %1: %2</source>
        <translation>Die Fallbibliothek in %1 kann nicht geöffnet werden: %2</translation>
    </message>
    <message>
        <source>The case library at %1 is damaged. It is read only as far as it is whole, and nothing is written to it. Rescue the whole cases into a new library, or bring back a copy.</source>
        <translation>Die Fallbibliothek in %1 ist beschädigt. Sie wird nur gelesen, soweit sie heil ist, und nichts wird hineingeschrieben. Die heilen Fälle in eine neue Bibliothek retten oder eine Kopie zurückholen.</translation>
    </message>
    <message>
        <source>Cannot list the cases of the library at %1</source>
        <translation>Die Fälle der Bibliothek in %1 können nicht aufgelistet werden</translation>
    </message>
    <message>
        <source>Cannot look the case up in the library at %1</source>
        <translation>Der Fall kann in der Bibliothek in %1 nicht nachgeschlagen werden</translation>
    </message>
    <message>
        <source>Cannot list the tags of the library at %1</source>
        <translation>Die Schlagwörter der Bibliothek in %1 können nicht aufgelistet werden</translation>
    </message>
    <message>
        <source>Cannot list the versions of the case</source>
        <translation>Die Versionen des Falls können nicht aufgelistet werden</translation>
    </message>
    <message>
        <source>Cannot check the library</source>
        <translation>Die Bibliothek kann nicht geprüft werden</translation>
    </message>
    <message>
        <source>The file's pages are damaged.</source>
        <translation>Die Seiten der Datei sind beschädigt.</translation>
    </message>
    <message>
        <source>The list of cases cannot be read.</source>
        <translation>Die Liste der Fälle kann nicht gelesen werden.</translation>
    </message>
    <message>
        <source>Case %1: its notes are damaged.</source>
        <translation>Fall %1: seine Vermerke sind beschädigt.</translation>
    </message>
    <message>
        <source>Case %1: %2</source>
        <translation>Fall %1: %2</translation>
    </message>
    <message>
        <source>Case %1: version %2 is damaged.</source>
        <translation>Fall %1: Version %2 ist beschädigt.</translation>
    </message>
    <message>
        <source>Rescued case %1</source>
        <translation>Geretteter Fall %1</translation>
    </message>
    <message>
        <source>the case is not in the library any more. Look through the list again.</source>
        <translation>der Fall ist nicht mehr in der Bibliothek. Die Liste erneut durchsehen.</translation>
    </message>
    <message>
        <source>what the library notes about this case is damaged: it does not agree with its checksum. %1</source>
        <translation>was die Bibliothek über diesen Fall vermerkt, ist beschädigt: es stimmt nicht mit seiner Prüfsumme überein. %1</translation>
    </message>
    <message>
        <source>No whole version is left; bring back a copy.</source>
        <translation>Keine heile Version ist übrig; eine Kopie zurückholen.</translation>
    </message>
    <message>
        <source>Version %1 is whole: open that one.</source>
        <translation>Version %1 ist heil: diese öffnen.</translation>
    </message>
    <message>
        <source>edit %1 does not agree with its checksum or is missing</source>
        <translation>Änderung %1 stimmt nicht mit ihrer Prüfsumme überein oder fehlt</translation>
    </message>
    <message>
        <source>version %1 is not kept any more.</source>
        <translation>Version %1 wird nicht mehr aufbewahrt.</translation>
    </message>
    <message>
        <source>version %1 does not agree with its checksum</source>
        <translation>Version %1 stimmt nicht mit ihrer Prüfsumme überein</translation>
    </message>
    <message>
        <source>edits after number %1 are missing</source>
        <translation>Änderungen nach Nummer %1 fehlen</translation>
    </message>
    <message>
        <source>Cannot open the case</source>
        <translation>Der Fall kann nicht geöffnet werden</translation>
    </message>
    <message>
        <source>Cannot open version %1 of the case</source>
        <translation>Version %1 des Falls kann nicht geöffnet werden</translation>
    </message>
    <message>
        <source>it is not in the library any more.</source>
        <translation>er ist nicht mehr in der Bibliothek.</translation>
    </message>
    <message>
        <source>it is damaged in the library: %1. %2</source>
        <translation>er ist in der Bibliothek beschädigt: %1. %2</translation>
    </message>
    <message>
        <source>Cannot open what is whole of the case</source>
        <translation>Was vom Fall heil ist, kann nicht geöffnet werden</translation>
    </message>
    <message>
        <source>no whole version of it is left. Bring back a copy of the library.</source>
        <translation>keine heile Version davon ist übrig. Eine Kopie der Bibliothek zurückholen.</translation>
    </message>
    <message>
        <source>what the library notes about the case is damaged, so edits at the end may be missing</source>
        <translation>was die Bibliothek über den Fall vermerkt, ist beschädigt, also können Änderungen am Ende fehlen</translation>
    </message>
    <message>
        <source>version %1 is damaged; this is version %2</source>
        <translation>Version %1 ist beschädigt; dies ist Version %2</translation>
    </message>
    <message>
        <source>Cannot put the case into the library at %1</source>
        <translation>Der Fall kann nicht in die Bibliothek in %1 gelegt werden</translation>
    </message>
    <message>
        <source>Cannot save the case in the library</source>
        <translation>Der Fall kann nicht in der Bibliothek gesichert werden</translation>
    </message>
    <message>
        <source>its text ends at edit %1, but edit %2 was saved already.</source>
        <translation>sein Text endet bei Änderung %1, aber Änderung %2 wurde schon gesichert.</translation>
    </message>
    <message>
        <source>Cannot restore version %1</source>
        <translation>Version %1 kann nicht wiederhergestellt werden</translation>
    </message>
    <message>
        <source>there are edits since the present version. Open the case and save it first, so that they are kept as a version.</source>
        <translation>es gibt Änderungen seit der gegenwärtigen Version. Den Fall zuerst öffnen und sichern, damit sie als Version erhalten bleiben.</translation>
    </message>
    <message>
        <source>it is not kept any more.</source>
        <translation>sie wird nicht mehr aufbewahrt.</translation>
    </message>
    <message>
        <source>it does not agree with its checksum. Choose another.</source>
        <translation>es stimmt nicht mit seiner Prüfsumme überein. Ein anderes wählen.</translation>
    </message>
    <message>
        <source>Cannot forget the refused version %1</source>
        <translation>Die abgewiesene Version %1 kann nicht vergessen werden</translation>
    </message>
    <message>
        <source>there is no refused version of this number.</source>
        <translation>es gibt keine abgewiesene Version mit dieser Nummer.</translation>
    </message>
    <message>
        <source>the library's file itself is damaged</source>
        <translation>die Datei der Bibliothek selbst ist beschädigt</translation>
    </message>
</context>
<context>
    <name>CautionStrip</name>
    <message>
        <source>Understood</source>
        <translation>Verstanden</translation>
    </message>
    <message>
        <source>Hide this strip; the cautions stay under Help</source>
        <translation>Diesen Streifen ausblenden; die Warnhinweise bleiben unter Hilfe</translation>
    </message>
</context>
<context>
    <name>Cautions</name>
    <message>
        <source>Research and teaching software, not a medical device; not for sole use in clinical decisions.</source>
        <translation>Software für Forschung und Lehre, kein Medizinprodukt; nicht als alleinige Grundlage klinischer Entscheidungen.</translation>
    </message>
    <message>
        <source>Measurements must be confirmed by a licensed practitioner; device choice follows the device's current instructions for use, local protocol and law.</source>
        <translation>Messungen muss eine approbierte Fachkraft bestätigen; die Wahl des Implantats folgt seiner aktuellen Gebrauchsanweisung, dem örtlichen Protokoll und dem Recht.</translation>
    </message>
    <message>
        <source>Estimates at another pressure are model predictions: re-measure when haemodynamics have changed.</source>
        <translation>Schätzungen bei einem anderen Druck sind Voraussagen eines Modells: neu messen, wenn sich die Hämodynamik geändert hat.</translation>
    </message>
</context>
<context>
    <name>ChangeBeatPhase</name>
    <message>
        <source>Change the phase</source>
        <translation>Die Phase ändern</translation>
    </message>
</context>
<context>
    <name>ChangeMoment</name>
    <message>
        <source>Change the moment</source>
        <translation>Den Zeitpunkt ändern</translation>
    </message>
</context>
<context>
    <name>ChangeProbeAngle</name>
    <message>
        <source>Change the probe angle</source>
        <translation>Den Sondenwinkel ändern</translation>
    </message>
</context>
<context>
    <name>ChangeStage</name>
    <message>
        <source>Change the stage</source>
        <translation>Das Stadium ändern</translation>
    </message>
</context>
<context>
    <name>Charts</name>
    <message>
        <source>Cannot read the device chart %1: %2.</source>
        <translation>Die Größentabelle %1 kann nicht gelesen werden: %2.</translation>
    </message>
    <message>
        <source>it is longer than 16 MB</source>
        <translation>sie ist länger als 16 MB</translation>
    </message>
    <message>
        <source>Demonstration plug (invented)</source>
        <translation>Übungstabelle Pfropf (erfunden)</translation>
    </message>
    <message>
        <source>Demonstration lobe and disc (invented)</source>
        <translation>Übungstabelle Lappen und Scheibe (erfunden)</translation>
    </message>
</context>
<context>
    <name>CineView</name>
    <message>
        <source>Cine</source>
        <translation>Bildfolge</translation>
    </message>
    <message>
        <source> mm</source>
        <translation> mm</translation>
    </message>
    <message>
        <source>Known length</source>
        <translation>Bekannte Länge</translation>
    </message>
    <message>
        <source>Use it (Enter)</source>
        <translation>Übernehmen (Enter)</translation>
    </message>
    <message>
        <source>Cancel (Esc)</source>
        <translation>Abbrechen (Esc)</translation>
    </message>
    <message>
        <source>Choose evidence in the list on the left.</source>
        <translation>Einen Befund in der Liste links wählen.</translation>
    </message>
    <message>
        <source>This evidence has no frames to show here.</source>
        <translation>Dieser Befund hat hier keine Bilder zu zeigen.</translation>
    </message>
    <message>
        <source>Opening …</source>
        <translation>Wird geöffnet …</translation>
    </message>
    <message>
        <source>X-ray pictures are shown whole: look for burned-in names.</source>
        <translation>Röntgenbilder werden ganz gezeigt: auf eingebrannte Namen achten.</translation>
    </message>
    <message>
        <source>Text outside the calibrated regions is blanked.</source>
        <translation>Text außerhalb der geeichten Bereiche ist ausgeblendet.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1 ms</source>
        <translation>%1 ms</translation>
    </message>
    <message>
        <source>%1 % of R-R</source>
        <translation>%1 % von R-R</translation>
    </message>
    <message>
        <source>speed %1</source>
        <translation>Tempo %1</translation>
    </message>
    <message>
        <source>Click both ends of a known length. Escape leaves.</source>
        <translation>Beide Enden einer bekannten Länge anklicken. Escape bricht ab.</translation>
    </message>
    <message>
        <source>Click both edges of the catheter, square to it. Escape leaves.</source>
        <translation>Beide Ränder des Katheters anklicken, senkrecht zu ihm. Escape bricht ab.</translation>
    </message>
    <message>
        <source>Click two places along the middle of a straight piece of the catheter. Escape leaves.</source>
        <translation>Zwei Stellen auf der Mitte eines geraden Katheterstücks anklicken. Escape bricht ab.</translation>
    </message>
    <message>
        <source>How long is it between the marks?</source>
        <translation>Wie lang ist es zwischen den Marken?</translation>
    </message>
    <message>
        <source>What is the catheter's outer diameter, as printed? (French divided by 3 is only near it.)</source>
        <translation>Wie groß ist der aufgedruckte Außendurchmesser des Katheters? (French durch 3 kommt ihm nur nahe.)</translation>
    </message>
    <message>
        <source>Finish the drawing on this frame first, or leave it with Escape.</source>
        <translation>Erst die Zeichnung auf diesem Bild beenden oder mit Escape verlassen.</translation>
    </message>
</context>
<context>
    <name>Command</name>
    <message>
        <source>Load a device chart</source>
        <translation>Eine Größentabelle laden</translation>
    </message>
    <message>
        <source>Set the pressures to size for</source>
        <translation>Die Drücke angeben, für die bemessen wird</translation>
    </message>
    <message>
        <source>Say why the pressures differ</source>
        <translation>Angeben, warum die Drücke verschieden sind</translation>
    </message>
    <message>
        <source>Give up the chosen size</source>
        <translation>Die gewählte Größe aufgeben</translation>
    </message>
    <message>
        <source>Choose a size</source>
        <translation>Eine Größe wählen</translation>
    </message>
    <message>
        <source>Change the items of the stroke score</source>
        <translation>Angaben zum Schlaganfallscore ändern</translation>
    </message>
    <message>
        <source>Change the items of the bleeding score</source>
        <translation>Angaben zum Blutungsscore ändern</translation>
    </message>
    <message>
        <source>Write the decision</source>
        <translation>Die Entscheidung schreiben</translation>
    </message>
    <message>
        <source>Sign the decision</source>
        <translation>Die Entscheidung unterschreiben</translation>
    </message>
    <message>
        <source>Take the signature off</source>
        <translation>Die Unterschrift zurücknehmen</translation>
    </message>
</context>
<context>
    <name>Commands</name>
    <message>
        <source>Set the plug plane</source>
        <translation>Die Pfropfebene setzen</translation>
    </message>
    <message>
        <source>Move the ostium plane</source>
        <translation>Die Ostiumebene bewegen</translation>
    </message>
    <message>
        <source>Tilt the ostium plane</source>
        <translation>Die Ostiumebene kippen</translation>
    </message>
    <message>
        <source>Tilt the landing plane</source>
        <translation>Landeebene kippen</translation>
    </message>
    <message>
        <source>Set the landing plane square to the axis</source>
        <translation>Landeebene senkrecht zur Achse stellen</translation>
    </message>
    <message>
        <source>Set the second landing plane</source>
        <translation>Die zweite Landeebene setzen</translation>
    </message>
</context>
<context>
    <name>Comparison</name>
    <message>
        <source>Landing zone</source>
        <translation>Landezone</translation>
    </message>
    <message>
        <source>perimeter-derived</source>
        <translation>umfangsbezogen</translation>
    </message>
    <message>
        <source>Perimeter divided by π</source>
        <translation>Umfang geteilt durch π</translation>
    </message>
    <message>
        <source>longest</source>
        <translation>längster</translation>
    </message>
    <message>
        <source>Greatest distance between two points of the contour</source>
        <translation>Größter Abstand zweier Punkte der Kontur</translation>
    </message>
    <message>
        <source>largest of the views</source>
        <translation>größte der Ansichten</translation>
    </message>
    <message>
        <source>Largest width among the views: no contour's diameter</source>
        <translation>Größte Weite unter den Ansichten: kein Durchmesser einer Kontur</translation>
    </message>
    <message>
        <source>single view</source>
        <translation>einzelne Ansicht</translation>
    </message>
    <message>
        <source>Width in one view: no contour's diameter</source>
        <translation>Weite in einer Ansicht: kein Durchmesser einer Kontur</translation>
    </message>
    <message>
        <source>shortest</source>
        <translation>kürzester</translation>
    </message>
    <message>
        <source>Widest extent perpendicular to the longest diameter</source>
        <translation>Größte Ausdehnung senkrecht zum längsten Durchmesser</translation>
    </message>
    <message>
        <source>area-derived</source>
        <translation>flächenbezogen</translation>
    </message>
    <message>
        <source>Diameter of the circle of the same area</source>
        <translation>Durchmesser des flächengleichen Kreises</translation>
    </message>
    <message>
        <source>mean</source>
        <translation>mittlerer</translation>
    </message>
    <message>
        <source>Half the sum of longest and shortest diameter</source>
        <translation>Halbe Summe von längstem und kürzestem Durchmesser</translation>
    </message>
    <message>
        <source>least width</source>
        <translation>geringste Weite</translation>
    </message>
    <message>
        <source>Smallest distance between two parallel lines that hold the contour</source>
        <translation>Kleinster Abstand zweier paralleler Geraden, die die Kontur einschließen</translation>
    </message>
    <message>
        <source>perimeter</source>
        <translation>Umfang</translation>
    </message>
    <message>
        <source>Length of the smooth contour</source>
        <translation>Länge der glatten Kontur</translation>
    </message>
    <message>
        <source>area</source>
        <translation>Fläche</translation>
    </message>
    <message>
        <source>Enclosed area</source>
        <translation>Umschlossene Fläche</translation>
    </message>
    <message>
        <source>eccentricity index</source>
        <translation>Exzentrizitätsindex</translation>
    </message>
    <message>
        <source>1 − shortest / longest: 0 is round</source>
        <translation>1 − kürzester / längster: 0 ist rund</translation>
    </message>
    <message>
        <source>Ostium</source>
        <translation>Ostium</translation>
    </message>
    <message>
        <source>Depth to the tip</source>
        <translation>Tiefe bis zur Spitze</translation>
    </message>
    <message>
        <source>from the ostium</source>
        <translation>ab dem Ostium</translation>
    </message>
    <message>
        <source>Greatest distance from the ostium plane</source>
        <translation>Größter Abstand von der Ostiumebene</translation>
    </message>
    <message>
        <source>from the landing zone</source>
        <translation>ab der Landezone</translation>
    </message>
    <message>
        <source>From the landing zone's centre along the ostium's normal to the opposite wall</source>
        <translation>Von der Mitte der Landezone entlang der Normalen des Ostiums bis zur Gegenwand</translation>
    </message>
    <message>
        <source>along the axis</source>
        <translation>entlang der Achse</translation>
    </message>
    <message>
        <source>From the ostium along the axis to the tip</source>
        <translation>Vom Ostium entlang der Achse bis zur Spitze</translation>
    </message>
    <message>
        <source>Shape</source>
        <translation>Form</translation>
    </message>
    <message>
        <source>volume</source>
        <translation>Volumen</translation>
    </message>
    <message>
        <source>Blood volume beyond the ostium plane</source>
        <translation>Blutvolumen jenseits der Ostiumebene</translation>
    </message>
    <message>
        <source>turn of the axis</source>
        <translation>Biegung der Achse</translation>
    </message>
    <message>
        <source>Angle between the proximal and distal directions; 0 is straight</source>
        <translation>Winkel zwischen Anfangs- und Endrichtung; 0 ist gerade</translation>
    </message>
    <message>
        <source>turns at</source>
        <translation>biegt bei</translation>
    </message>
    <message>
        <source>Distance of the sharpest place from the ostium along the axis</source>
        <translation>Abstand der schärfsten Stelle vom Ostium entlang der Achse</translation>
    </message>
    <message>
        <source>Enhancement</source>
        <translation>Kontrastierung</translation>
    </message>
    <message>
        <source>atrium</source>
        <translation>Vorhof</translation>
    </message>
    <message>
        <source>Mean level at the mark</source>
        <translation>Mittleres Niveau an der Markierung</translation>
    </message>
    <message>
        <source>appendage</source>
        <translation>Vorhofohr</translation>
    </message>
    <message>
        <source>Mean level beyond the ostium</source>
        <translation>Mittleres Niveau jenseits des Ostiums</translation>
    </message>
    <message>
        <source>tip</source>
        <translation>Spitze</translation>
    </message>
    <message>
        <source>Mean level near the tip</source>
        <translation>Mittleres Niveau nahe der Spitze</translation>
    </message>
    <message>
        <source>aorta</source>
        <translation>Aorta</translation>
    </message>
    <message>
        <source>Mean level at the mark; mark the aorta to see it</source>
        <translation>Mittleres Niveau an der Markierung; dazu die Aorta markieren</translation>
    </message>
    <message>
        <source>tip to aorta</source>
        <translation>Spitze zu Aorta</translation>
    </message>
    <message>
        <source>Ratio of the mean levels</source>
        <translation>Verhältnis der mittleren Niveaus</translation>
    </message>
    <message>
        <source>pressure unknown</source>
        <translation>Druck unbekannt</translation>
    </message>
    <message>
        <source>Of the difference from CT, pressure explains %1, the modality %2; %3 is left.</source>
        <translation>Vom Unterschied zum CT erklärt der Druck %1, das Verfahren %2; %3 bleiben.</translation>
    </message>
    <message>
        <source>Plug plane</source>
        <translation>Pfropfebene</translation>
    </message>
    <message>
        <source>Second landing plane</source>
        <translation>Zweite Landeebene</translation>
    </message>
</context>
<context>
    <name>ComparisonModel</name>
    <message>
        <source>%1 from CT; no published limits</source>
        <translation>%1 gegenüber CT; keine veröffentlichten Grenzen</translation>
    </message>
    <message>
        <source>%1 from CT: outside the published limits</source>
        <translation>%1 gegenüber CT: außerhalb der veröffentlichten Grenzen</translation>
    </message>
    <message>
        <source>%1 from CT, within the published limits</source>
        <translation>%1 gegenüber CT, innerhalb der veröffentlichten Grenzen</translation>
    </message>
    <message>
        <source>out of date: being measured again</source>
        <translation>veraltet: wird neu gemessen</translation>
    </message>
    <message>
        <source>out of date: measure again or confirm</source>
        <translation>veraltet: neu messen oder bestätigen</translation>
    </message>
    <message>
        <source>Standard uncertainty: %1</source>
        <translation>Standardunsicherheit: %1</translation>
    </message>
    <message>
        <source>Obtained by: %1</source>
        <translation>Gewonnen durch: %1</translation>
    </message>
    <message>
        <source>Enter or double click shows where it was measured.</source>
        <translation>Enter oder Doppelklick zeigt, wo gemessen wurde.</translation>
    </message>
    <message>
        <source>Typed in, not measured here.</source>
        <translation>Eingetippt, nicht hier gemessen.</translation>
    </message>
    <message>
        <source>Carried from %1 (%2) by pressure alone: %3.</source>
        <translation>Von %1 (%2) allein durch den Druck übertragen: %3.</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>gemessen</translation>
    </message>
    <message>
        <source>assumed</source>
        <translation>angenommen</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Messgröße</translation>
    </message>
    <message>
        <source>%1, typed in</source>
        <translation>%1, eingetippt</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1: carried to the decision pressure</source>
        <translation>%1: auf den Entscheidungsdruck übertragen</translation>
    </message>
    <message>
        <source>%1: against CT</source>
        <translation>%1: gegenüber CT</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>measuring …</source>
        <translation>wird gemessen …</translation>
    </message>
    <message>
        <source>%1, drawn by hand</source>
        <translation>%1, von Hand gezeichnet</translation>
    </message>
</context>
<context>
    <name>ComparisonPanel</name>
    <message>
        <source>Comparison</source>
        <translation>Vergleich</translation>
    </message>
    <message>
        <source>Copy table</source>
        <translation>Tabelle kopieren</translation>
    </message>
    <message>
        <source>Copy the table for a spreadsheet (Ctrl+Shift+C)</source>
        <translation>Die Tabelle für ein Rechenblatt kopieren (Ctrl+Shift+C)</translation>
    </message>
    <message>
        <source>Show where it was measured</source>
        <translation>Zeigen, wo gemessen wurde</translation>
    </message>
    <message>
        <source>Go to the view, frame and plane of the value (Enter in the table)</source>
        <translation>Zu Ansicht, Bild und Ebene des Wertes gehen (Enter in der Tabelle)</translation>
    </message>
    <message>
        <source>Confirm values</source>
        <translation>Werte bestätigen</translation>
    </message>
    <message>
        <source>Say that the values of the column that are out of date still hold (Ctrl+Shift+K)</source>
        <translation>Erklären, dass die veralteten Werte der Spalte noch gelten (Ctrl+Shift+K)</translation>
    </message>
    <message>
        <source>Values ± standard uncertainty appear here, one column for each kind of evidence and moment, once the appendage is measured on CT or echo, or a reading is typed in.</source>
        <translation>Werte ± Standardunsicherheit erscheinen hier, eine Spalte je Art des Befundes und Zeitpunkt, sobald das Vorhofohr im CT oder Echo gemessen oder eine Messung eingetippt ist.</translation>
    </message>
    <message>
        <source>Nothing else to note about the readings.</source>
        <translation>Sonst ist zu den Messungen nichts anzumerken.</translation>
    </message>
</context>
<context>
    <name>ComparisonTable</name>
    <message>
        <source>Quantities</source>
        <translation>Messgrößen</translation>
    </message>
    <message>
        <source>Comparison of the evidence</source>
        <translation>Vergleich der Befunde</translation>
    </message>
</context>
<context>
    <name>ConfirmContour</name>
    <message>
        <source>Confirm a corrected contour on its moved plane</source>
        <translation>Eine korrigierte Kontur auf ihrer bewegten Ebene bestätigen</translation>
    </message>
</context>
<context>
    <name>ConfirmPlaneOf</name>
    <message>
        <source>Confirm a measurement on its moved plane</source>
        <translation>Eine Messung auf ihrer bewegten Ebene bestätigen</translation>
    </message>
</context>
<context>
    <name>CoreSentences</name>
    <message>
        <source>%1 %2; %3 is wanted.</source>
        <translation>%1 %2; gewünscht ist %3.</translation>
    </message>
    <message>
        <source>%1 %2 (%3, %4) became %5 (%6, %7).</source>
        <translation>%1 %2 (%3, %4) wurde %5 (%6, %7).</translation>
    </message>
    <message>
        <source>%1 %2 (%3, %4) became %5 (%6, %7); within the uncertainty of the two readings.</source>
        <translation>%1 %2 (%3, %4) wurde %5 (%6, %7); innerhalb der Unsicherheit der beiden Messwerte.</translation>
    </message>
    <message>
        <source>%1, %2 %3; %4 is wanted.</source>
        <translation>%1, %2 %3; gewünscht ist %4.</translation>
    </message>
    <message>
        <source>%1, %2 %3 (%4, %5) became %6 (%7, %8).</source>
        <translation>%1, %2 %3 (%4, %5) wurde %6 (%7, %8).</translation>
    </message>
    <message>
        <source>%1, %2 %3 (%4, %5) became %6 (%7, %8); within the uncertainty of the two readings.</source>
        <translation>%1, %2 %3 (%4, %5) wurde %6 (%7, %8); innerhalb der Unsicherheit der beiden Messwerte.</translation>
    </message>
    <message>
        <source>%1: %2 %3; %4 is wanted.</source>
        <translation>%1: %2 %3; gewünscht ist %4.</translation>
    </message>
    <message>
        <source>%1: %2 %3 (%4, %5) became %6 (%7, %8).</source>
        <translation>%1: %2 %3 (%4, %5) wurde %6 (%7, %8).</translation>
    </message>
    <message>
        <source>%1: %2 %3 (%4, %5) became %6 (%7, %8); within the uncertainty of the two readings.</source>
        <translation>%1: %2 %3 (%4, %5) wurde %6 (%7, %8); innerhalb der Unsicherheit der beiden Messwerte.</translation>
    </message>
    <message>
        <source>%1: %2, %3 %4; %5 is wanted.</source>
        <translation>%1: %2, %3 %4; gewünscht ist %5.</translation>
    </message>
    <message>
        <source>%1: %2, %3 %4 (%5, %6) became %7 (%8, %9).</source>
        <translation>%1: %2, %3 %4 (%5, %6) wurde %7 (%8, %9).</translation>
    </message>
    <message>
        <source>%1: %2, %3 %4 (%5, %6) became %7 (%8, %9); within the uncertainty of the two readings.</source>
        <translation>%1: %2, %3 %4 (%5, %6) wurde %7 (%8, %9); innerhalb der Unsicherheit der beiden Messwerte.</translation>
    </message>
    <message>
        <source>The reading is uncertain enough for either side of the limit.</source>
        <translation>Der Messwert ist so unsicher, dass beide Seiten der Grenze möglich sind.</translation>
    </message>
    <message>
        <source>Bring the sheath deeper before the inner catheter is withdrawn.</source>
        <translation>Bringen Sie die Schleuse tiefer, bevor der innere Katheter zurückgezogen wird.</translation>
    </message>
    <message>
        <source>The lobe sits too near the ostium.</source>
        <translation>Der Lappen sitzt zu nahe am Ostium.</translation>
    </message>
    <message>
        <source>The lobe does not lie in line with the neck.</source>
        <translation>Der Lappen liegt nicht in einer Linie mit dem Hals.</translation>
    </message>
    <message>
        <source>Disc and lobe are not apart: the lobe may be too shallow or the disc under no tension.</source>
        <translation>Scheibe und Lappen liegen nicht auseinander: Der Lappen kann zu flach sitzen oder die Scheibe ohne Zug sein.</translation>
    </message>
    <message>
        <source>A lobe stays open to the atrium.</source>
        <translation>Ein Lappen des Vorhofohrs bleibt zum Vorhof offen.</translation>
    </message>
    <message>
        <source>Thrombus lies on the implant: the treating team decides on treatment and another look.</source>
        <translation>Auf dem Implantat liegt ein Thrombus: Das Behandlungsteam entscheidet über Behandlung und erneutes Nachsehen.</translation>
    </message>
    <message>
        <source>The seal is not adequate.</source>
        <translation>Die Abdichtung reicht nicht.</translation>
    </message>
    <message>
        <source>The implant or the repair narrows the inflow.</source>
        <translation>Das Implantat oder die Reparatur verengt den Einstrom.</translation>
    </message>
    <message>
        <source>Pulmonary-vein flow is not free.</source>
        <translation>Der Fluss der Lungenvene ist nicht frei.</translation>
    </message>
    <message>
        <source>The implant lies too near a neighbour.</source>
        <translation>Das Implantat liegt zu nahe an einem Nachbarn.</translation>
    </message>
    <message>
        <source>Too little hold: the implant may move or leak, the more so when the atrium fills.</source>
        <translation>Zu wenig Halt: Das Implantat kann sich bewegen oder undicht sein, erst recht, wenn sich der Vorhof füllt.</translation>
    </message>
    <message>
        <source>The implant is squeezed beyond its band.</source>
        <translation>Das Implantat ist über sein Band hinaus gedrückt.</translation>
    </message>
    <message>
        <source>The inner catheter is out already: do not push the bare sheath; bring a catheter back first.</source>
        <translation>Der innere Katheter ist schon draußen: Schieben Sie nicht die leere Schleuse vor; führen Sie erst wieder einen Katheter ein.</translation>
    </message>
    <message>
        <source>A pericardial effusion of %1 was seen by %2: compare it with the view before the puncture.</source>
        <translation>Ein Perikarderguss von %1 wurde gesehen von %2: Vergleichen Sie ihn mit der Ansicht vor der Punktion.</translation>
    </message>
    <message>
        <source>The crossing left a hole of %1 in the septum.</source>
        <translation>Der Durchtritt hinterließ ein Loch von %1 im Septum.</translation>
    </message>
    <message>
        <source>%1: the gap grows from %2 to %3 on the pull: the implant is not stable.</source>
        <translation>%1: Der Spalt wächst beim Zug von %2 auf %3: Das Implantat ist nicht stabil.</translation>
    </message>
    <message>
        <source>%1: the gap on the %2 grows from %3 to %4 on the pull: the implant is not stable.</source>
        <translation>%1: Der Spalt (%2) wächst beim Zug von %3 auf %4: Das Implantat ist nicht stabil.</translation>
    </message>
    <message>
        <source>the gap grows from %1 to %2 on the pull: the implant is not stable.</source>
        <translation>Der Spalt wächst beim Zug von %1 auf %2: Das Implantat ist nicht stabil.</translation>
    </message>
    <message>
        <source>the gap on the %1 grows from %2 to %3 on the pull: the implant is not stable.</source>
        <translation>Der Spalt (%1) wächst beim Zug von %2 auf %3: Das Implantat ist nicht stabil.</translation>
    </message>
    <message>
        <source>Not looked at yet at this stage: %1.</source>
        <translation>In diesem Stadium noch nicht angesehen: %1.</translation>
    </message>
    <message>
        <source>Thrombus in the appendage, %1: the plan stops here.</source>
        <translation>Thrombus im Vorhofohr, %1: Der Plan endet hier.</translation>
    </message>
    <message>
        <source>Nothing enters the appendage; no size can be signed until a later look excludes thrombus.</source>
        <translation>Nichts kommt in das Vorhofohr; keine Größe kann unterschrieben werden, bis ein späteres Nachsehen einen Thrombus ausschließt.</translation>
    </message>
    <message>
        <source>Thrombus was seen %1 and no longer %2: make sure that it dissolved and did not leave.</source>
        <translation>Ein Thrombus wurde gesehen (%1) und später nicht mehr (%2): Vergewissern Sie sich, dass er sich aufgelöst hat und nicht abgegangen ist.</translation>
    </message>
    <message>
        <source>Stasis in the appendage %1: %2.</source>
        <translation>Stase im Vorhofohr (%1): %2.</translation>
    </message>
    <message>
        <source>Exclude thrombus before anything enters it.</source>
        <translation>Schließen Sie einen Thrombus aus, bevor etwas hineinkommt.</translation>
    </message>
    <message>
        <source>The tip of the appendage enhances to %1 of the ascending aorta in a delayed phase %2, below 0.5: exclude thrombus before anything enters it.</source>
        <translation>Die Spitze des Vorhofohrs färbt sich in einer späten Phase (%2) auf %1 der aufsteigenden Aorta an, unter 0.5: Schließen Sie einen Thrombus aus, bevor etwas hineinkommt.</translation>
    </message>
    <message>
        <source>The enhancement ratio %1 %2 was read in an early phase: it gives no verdict on thrombus; only a delayed phase does.</source>
        <translation>Das Anfärbeverhältnis %1 (%2) wurde in einer frühen Phase gelesen: Es erlaubt kein Urteil über einen Thrombus; nur eine späte Phase tut das.</translation>
    </message>
    <message>
        <source>The enhancement ratio %1 %2 was read in a phase that nobody stated: it gives no verdict on thrombus; only a delayed phase does.</source>
        <translation>Das Anfärbeverhältnis %1 (%2) wurde in einer Phase gelesen, die niemand angab: Es erlaubt kein Urteil über einen Thrombus; nur eine späte Phase tut das.</translation>
    </message>
    <message>
        <source>New echo contrast since the repair: grade %1 %2, grade %3 %4.</source>
        <translation>Neuer Echokontrast seit der Reparatur: Grad %1 (%2), Grad %3 (%4).</translation>
    </message>
    <message>
        <source>Denser echo contrast since the repair: grade %1 %2, grade %3 %4.</source>
        <translation>Dichterer Echokontrast seit der Reparatur: Grad %1 (%2), Grad %3 (%4).</translation>
    </message>
    <message>
        <source>Flow in the appendage is slower; exclude thrombus before anything enters it.</source>
        <translation>Der Fluss im Vorhofohr ist langsamer; schließen Sie einen Thrombus aus, bevor etwas hineinkommt.</translation>
    </message>
    <message>
        <source>The appendage was not looked at again since the repair.</source>
        <translation>Das Vorhofohr wurde seit der Reparatur nicht wieder angesehen.</translation>
    </message>
    <message>
        <source>Flow changes with a repair: look for smoke, sludge and thrombus, and record it, before a size can be signed.</source>
        <translation>Mit einer Reparatur ändert sich der Fluss: Suchen Sie nach Echokontrast, Schlick und Thrombus, und halten Sie es fest, bevor eine Größe unterschrieben werden kann.</translation>
    </message>
    <message>
        <source>The stroke and bleeding scores do not know about the repair; their rates are shown as published, not adjusted.</source>
        <translation>Die Punktwerte für Schlaganfall und Blutung wissen nichts von der Reparatur; ihre Raten stehen wie veröffentlicht, nicht angepasst.</translation>
    </message>
    <message>
        <source>A left atrial mean pressure of %1 (%2, state "%3") lies outside %4 to %5.</source>
        <translation>Ein linksatrialer Mitteldruck von %1 (%2, Zustand „%3“) liegt außerhalb von %4 bis %5.</translation>
    </message>
    <message>
        <source>A v wave of %1 (%2, state "%3") lies outside %4 to %5.</source>
        <translation>Eine v-Welle von %1 (%2, Zustand „%3“) liegt außerhalb von %4 bis %5.</translation>
    </message>
    <message>
        <source>A mean mitral gradient of %1 (%2, state "%3") lies outside %4 to %5.</source>
        <translation>Ein mittlerer Mitralgradient von %1 (%2, Zustand „%3“) liegt außerhalb von %4 bis %5.</translation>
    </message>
    <message>
        <source>A heart rate of %1 (%2, state "%3") lies outside %4 to %5.</source>
        <translation>Eine Herzfrequenz von %1 (%2, Zustand „%3“) liegt außerhalb von %4 bis %5.</translation>
    </message>
    <message>
        <source>Look at it again.</source>
        <translation>Sehen Sie noch einmal nach.</translation>
    </message>
    <message>
        <source>The v wave of %1 lies below the mean of %2 (%3, state "%4"); a peak cannot.</source>
        <translation>Die v-Welle von %1 liegt unter dem Mittel von %2 (%3, Zustand „%4“); eine Spitze kann das nicht.</translation>
    </message>
    <message>
        <source>The mean mitral gradient of %1 exceeds the left atrial mean pressure of %2 (%3, state "%4"), which would need a ventricle filling below 0 mmHg.</source>
        <translation>Der mittlere Mitralgradient von %1 übersteigt den linksatrialen Mitteldruck von %2 (%3, Zustand „%4“), was eine Kammerfüllung unter 0 mmHg verlangte.</translation>
    </message>
    <message>
        <source>Systolic flow in the pulmonary veins is reversed but regurgitation is graded %1 (%2, state "%3"); grade it again.</source>
        <translation>Der systolische Fluss der Lungenvenen ist umgekehrt, die Insuffizienz aber als %1 eingestuft (%2, Zustand „%3“); stufen Sie sie noch einmal ein.</translation>
    </message>
    <message>
        <source>Left atrial mean pressure rose from %1 to %2 (%3, state "%4").</source>
        <translation>Der linksatriale Mitteldruck stieg von %1 auf %2 (%3, Zustand „%4“).</translation>
    </message>
    <message>
        <source>Left atrial mean pressure fell from %1 to %2 (%3, state "%4").</source>
        <translation>Der linksatriale Mitteldruck fiel von %1 auf %2 (%3, Zustand „%4“).</translation>
    </message>
    <message>
        <source>Left atrial mean pressure did not fall with the repair: from %1 to %2 (%3, state "%4").</source>
        <translation>Der linksatriale Mitteldruck fiel mit der Reparatur nicht: von %1 auf %2 (%3, Zustand „%4“).</translation>
    </message>
    <message>
        <source>In a large registry it fell in 59 % only.</source>
        <translation>In einem großen Register fiel er nur bei 59 %.</translation>
    </message>
    <message>
        <source>Rhythm changed from %1 to %2 (%3, state "%4").</source>
        <translation>Der Rhythmus wechselte von %1 zu %2 (%3, Zustand „%4“).</translation>
    </message>
    <message>
        <source>Ventilation changed from %1 to %2 (%3, state "%4"): pressures are not alike.</source>
        <translation>Die Beatmung wechselte von %1 zu %2 (%3, Zustand „%4“): Die Drücke sind nicht vergleichbar.</translation>
    </message>
    <message>
        <source>Mitral regurgitation changed from %1 to %2 (%3, state "%4").</source>
        <translation>Die Mitralinsuffizienz änderte sich von %1 zu %2 (%3, Zustand „%4“).</translation>
    </message>
    <message>
        <source>The ostium is a proposal and not confirmed: its place is uncertain by 2 mm and 5 degrees.</source>
        <translation>Das Ostium ist ein Vorschlag und nicht bestätigt: Sein Ort ist um 2 mm und 5 Grad unsicher.</translation>
    </message>
    <message>
        <source>Confirm or move it, or mark the circumflex and ridge points.</source>
        <translation>Bestätigen oder verschieben Sie es, oder markieren Sie die Punkte an Circumflexa und Leiste.</translation>
    </message>
    <message>
        <source>Moved or tilted within the uncertainty of its place, the %1 opens into a neighbouring cavity or leaves the lumen; its stated uncertainty rests on the other side alone.</source>
        <translation>Innerhalb der Unsicherheit ihres Orts verschoben oder gekippt öffnet sich die Ebene (%1) in einen Nachbarraum oder verlässt das Lumen; ihre angegebene Unsicherheit beruht auf der anderen Seite allein.</translation>
    </message>
    <message>
        <source>Check the plane.</source>
        <translation>Prüfen Sie die Ebene.</translation>
    </message>
    <message>
        <source>The voxels are up to %1 long: too coarse for sizing.</source>
        <translation>Die Voxel sind bis zu %1 lang: zu grob für die Größenwahl.</translation>
    </message>
    <message>
        <source>Stated uncertainties hold for voxels up to 1 mm; use a thin-slice reconstruction.</source>
        <translation>Angegebene Unsicherheiten gelten für Voxel bis 1 mm; benutzen Sie eine Rekonstruktion mit dünnen Schichten.</translation>
    </message>
    <message>
        <source>%1 of the profile's sections could not be measured (they open sideways or are too small) and are left out.</source>
        <translation>%1 Schnitte des Profils ließen sich nicht messen (sie öffnen sich seitlich oder sind zu klein) und fehlen.</translation>
    </message>
    <message>
        <source>Beyond the tip the image stays half bright (%1): the end of the appendage seems to be unfilled.</source>
        <translation>Hinter der Spitze bleibt das Bild halb hell (%1): Das Ende des Vorhofohrs scheint nicht gefüllt zu sein.</translation>
    </message>
    <message>
        <source>Depth and volume are lower bounds; exclude thrombus before anything enters it.</source>
        <translation>Tiefe und Volumen sind Untergrenzen; schließen Sie einen Thrombus aus, bevor etwas hineinkommt.</translation>
    </message>
    <message>
        <source>The appendage's tip reads %1 where the atrium reads %2: poor filling by slow flow, or thrombus.</source>
        <translation>Die Spitze des Vorhofohrs misst %1, wo der Vorhof %2 misst: schlechte Füllung durch langsamen Fluss oder ein Thrombus.</translation>
    </message>
    <message>
        <source>Exclude thrombus before anything enters the appendage; contours here are less certain than their stated uncertainty.</source>
        <translation>Schließen Sie einen Thrombus aus, bevor etwas in das Vorhofohr kommt; Konturen sind hier unsicherer als angegeben.</translation>
    </message>
    <message>
        <source>The plain ellipse, %1, is no more oval than the error of reading makes a round neck look: it is reported round, and its direction says nothing.</source>
        <translation>Die einfache Ellipse, %1, ist nicht ovaler, als der Lesefehler einen runden Hals aussehen lässt: Sie wird als rund berichtet, und ihre Richtung sagt nichts.</translation>
    </message>
    <message>
        <source>Part of the ovality of the plain ellipse, %1, is likely error of reading and was taken off.</source>
        <translation>Ein Teil der Ovalität der einfachen Ellipse, %1, ist wohl Lesefehler und wurde abgezogen.</translation>
    </message>
    <message>
        <source>Area- and perimeter-derived diameters are nearly free of this.</source>
        <translation>Durchmesser aus Fläche und Umfang sind davon fast frei.</translation>
    </message>
    <message>
        <source>Three widths leave nothing over to judge their error by, and none was stated: longest and shortest diameter may look more different than they are.</source>
        <translation>Drei Weiten lassen nichts übrig, um ihren Fehler zu beurteilen, und keiner wurde angegeben: Längster und kürzester Durchmesser können verschiedener aussehen, als sie sind.</translation>
    </message>
    <message>
        <source>State the width uncertainty, or read a fourth view.</source>
        <translation>Geben Sie die Unsicherheit der Weiten an, oder lesen Sie eine vierte Ansicht.</translation>
    </message>
    <message>
        <source>No uncertainty of the widths was stated; %1 was taken, an assumption.</source>
        <translation>Keine Unsicherheit der Weiten wurde angegeben; %1 wurden angenommen.</translation>
    </message>
    <message>
        <source>The beam is tilted by %1 to the appendage's axis; the directions of the widths were corrected for it.</source>
        <translation>Der Strahl ist um %1 zur Achse des Vorhofohrs gekippt; die Richtungen der Weiten wurden dafür korrigiert.</translation>
    </message>
    <message>
        <source>With a tilt of more than 45 degrees a width across the appendage is hard to draw: errors of drawing grow beyond what is stated.</source>
        <translation>Bei einer Kippung über 45 Grad ist eine Weite quer zum Vorhofohr schwer zu zeichnen: Zeichenfehler wachsen über das Angegebene hinaus.</translation>
    </message>
    <message>
        <source>The widths lie on no common ellipse within their uncertainty (residual %1); no single view can be blamed.</source>
        <translation>Die Weiten liegen innerhalb ihrer Unsicherheit auf keiner gemeinsamen Ellipse (Rest %1); keine einzelne Ansicht ist schuld.</translation>
    </message>
    <message>
        <source>Each view's agreeing width is given, and the uncertainties were enlarged.</source>
        <translation>Für jede Ansicht steht die Weite, die passen würde, und die Unsicherheiten wurden vergrößert.</translation>
    </message>
    <message>
        <source>The depth was read in one view only; the tip may lie outside it: a lower bound.</source>
        <translation>Die Tiefe wurde nur in einer Ansicht gelesen; die Spitze kann außerhalb liegen: eine Untergrenze.</translation>
    </message>
    <message>
        <source>The depth reads %1 in one view and %2 in another: an implant must fit in the plane where it is short, too.</source>
        <translation>Die Tiefe beträgt %1 in einer Ansicht und %2 in einer anderen: Ein Implantat muss auch in der Ebene passen, wo sie kurz ist.</translation>
    </message>
    <message>
        <source>The widths were read in different phases of the beat; one ellipse through them mixes two sizes.</source>
        <translation>Die Weiten wurden in verschiedenen Phasen des Schlags gelesen; eine Ellipse durch sie mischt zwei Größen.</translation>
    </message>
    <message>
        <source>Read all views in the same phase, best at end-systole.</source>
        <translation>Lesen Sie alle Ansichten in derselben Phase, am besten endsystolisch.</translation>
    </message>
    <message>
        <source>The phase of the beat is unknown for at least one width; the appendage is widest at end-systole.</source>
        <translation>Die Phase des Schlags ist für mindestens eine Weite unbekannt; das Vorhofohr ist endsystolisch am weitesten.</translation>
    </message>
    <message>
        <source>A width of %1 at %2 is unusual for an appendage (4 to 60 mm): check unit and scale.</source>
        <translation>Eine Weite von %1 bei %2 ist für ein Vorhofohr ungewöhnlich (4 bis 60 mm): Prüfen Sie Einheit und Maßstab.</translation>
    </message>
    <message>
        <source>The view "%1" is left out: its probe angle is not known.</source>
        <translation>Die Ansicht „%1“ bleibt weg: Ihr Sondenwinkel ist nicht bekannt.</translation>
    </message>
    <message>
        <source>Read it off the picture and enter it.</source>
        <translation>Lesen Sie ihn vom Bild ab und tragen Sie ihn ein.</translation>
    </message>
    <message>
        <source>The landmarks of echo and CT fit each other no better than %1 (root mean square), more than their uncertainties allow: another filling or phase, or one of them is another structure.</source>
        <translation>Die Landmarken von Echo und CT passen nicht besser als %1 zueinander (quadratisches Mittel), mehr als ihre Unsicherheiten erlauben: andere Füllung oder Phase, oder eine davon ist eine andere Struktur.</translation>
    </message>
    <message>
        <source>The pose's uncertainty was enlarged.</source>
        <translation>Die Unsicherheit der Lage wurde vergrößert.</translation>
    </message>
    <message>
        <source>All landmarks were marked in one view: the turn to the other views rests on the shown probe angles alone.</source>
        <translation>Alle Landmarken wurden in einer Ansicht gesetzt: Die Drehung zu den anderen Ansichten beruht allein auf den angezeigten Sondenwinkeln.</translation>
    </message>
    <message>
        <source>The landmarks lie close to one line (spread across it %1): the turn about it is poorly known.</source>
        <translation>Die Landmarken liegen fast auf einer Geraden (Streuung quer dazu %1): Die Drehung um sie ist schlecht bekannt.</translation>
    </message>
    <message>
        <source>The trace crosses the baseline by %1; those points count as no flow.</source>
        <translation>Die Kurve überschreitet die Grundlinie um %1; diese Punkte zählen als kein Fluss.</translation>
    </message>
    <message>
        <source>Trace one side of the baseline.</source>
        <translation>Zeichnen Sie eine Seite der Grundlinie nach.</translation>
    </message>
    <message>
        <source>The scale marked by hand says %1, the scanner's calibration of the region %2, which differs by %3.</source>
        <translation>Der von Hand markierte Maßstab sagt %1, die Kalibrierung des Bereichs durch das Gerät %2, das weicht um %3 ab.</translation>
    </message>
    <message>
        <source>Check the known length; the picture may have been scaled after it was taken.</source>
        <translation>Prüfen Sie die bekannte Länge; das Bild kann nach der Aufnahme skaliert worden sein.</translation>
    </message>
    <message>
        <source>The scale rests on an object only %1 pixels wide; lengths measured with it are rough.</source>
        <translation>Der Maßstab beruht auf einem nur %1 Pixel breiten Gegenstand; damit gemessene Längen sind grob.</translation>
    </message>
    <message>
        <source>The sheath's outer diameter of %1 is exactly %2 F.</source>
        <translation>Der Außendurchmesser der Schleuse von %1 ist genau %2 F.</translation>
    </message>
    <message>
        <source>A sheath's French is its bore: make sure that this is the outside.</source>
        <translation>Das French einer Schleuse ist ihre Lichte: Vergewissern Sie sich, dass dies außen ist.</translation>
    </message>
    <message>
        <source>Filled with contrast, the object shows its bore and reads 4 to 16 % too small; lengths measured with it come out too long.</source>
        <translation>Mit Kontrastmittel gefüllt zeigt der Gegenstand seine Lichte und liest sich 4 bis 16 % zu klein; damit gemessene Längen werden zu groß.</translation>
    </message>
    <message>
        <source>Flush it, or use another scale.</source>
        <translation>Spülen Sie ihn, oder benutzen Sie einen anderen Maßstab.</translation>
    </message>
    <message>
        <source>No size of "%1" accepts %2 at %3: it is %4 below the nearest band, %5 of size %6.</source>
        <translation>Keine Größe von „%1“ nimmt %2 bei %3 an: Das liegt %4 unter dem nächsten Band, %5 bei Größe %6.</translation>
    </message>
    <message>
        <source>No size of "%1" accepts %2 at %3: it is %4 above the nearest band, %5 of size %6.</source>
        <translation>Keine Größe von „%1“ nimmt %2 bei %3 an: Das liegt %4 über dem nächsten Band, %5 bei Größe %6.</translation>
    </message>
    <message>
        <source>Between two sizes: %1 fits with a chance of %2, %3 with %4; over the living pressures %5 and %6.</source>
        <translation>Zwischen zwei Größen: %1 passt mit einer Chance von %2, %3 mit %4; über die Drücke des Alltags %5 und %6.</translation>
    </message>
    <message>
        <source>No size of "%1" finds its depth: size %2 needs %3, which is %4 more than there is.</source>
        <translation>Keine Größe von „%1“ findet ihre Tiefe: Größe %2 braucht %3, das sind %4 mehr als vorhanden.</translation>
    </message>
    <message>
        <source>The left atrial pressure of the state "%1" (%2) was not measured; the readings leave it at %3, give or take %4.</source>
        <translation>Der linksatriale Druck des Zustands „%1“ (%2) wurde nicht gemessen; nach den Messwerten liegt er bei %3, plus oder minus %4.</translation>
    </message>
    <message>
        <source>A repair does not always lower it: in a registry of 2,629 patients the mean fell in 59 %.</source>
        <translation>Eine Reparatur senkt ihn nicht immer: In einem Register von 2629 Patienten fiel der Mittelwert bei 59 %.</translation>
    </message>
    <message>
        <source>Measure it.</source>
        <translation>Messen Sie ihn.</translation>
    </message>
    <message>
        <source>The fall is said to last, but no reading was taken after the repair: the fall itself is an assumption.</source>
        <translation>Der Abfall soll dauern, doch nach der Reparatur wurde nichts gemessen: Der Abfall selbst ist eine Annahme.</translation>
    </message>
    <message>
        <source>In a registry of 2,629 patients the mean pressure fell in 59 %.</source>
        <translation>In einem Register von 2629 Patienten fiel der mittlere Druck bei 59 %.</translation>
    </message>
    <message>
        <source>The state "%1" was read at %2; the chart wants at least %3.</source>
        <translation>Der Zustand „%1“ wurde bei %2 gemessen; die Tabelle verlangt mindestens %3.</translation>
    </message>
    <message>
        <source>Measure again after filling, if the treating team judges filling safe.</source>
        <translation>Messen Sie nach Auffüllen noch einmal, wenn das Behandlungsteam das Auffüllen für sicher hält.</translation>
    </message>
    <message>
        <source>%1 of the state "%2" (%3) was not read at end-systole, when the appendage is largest and the chart wants it.</source>
        <translation>%1 des Zustands „%2“ (%3) wurde nicht endsystolisch gemessen, wenn das Vorhofohr am größten ist und die Tabelle es verlangt.</translation>
    </message>
    <message>
        <source>%1 of the state "%2" (%3) comes from beats of different length; its widths may belong to different fillings.</source>
        <translation>%1 des Zustands „%2“ (%3) stammt aus verschieden langen Schlägen; die Weiten können zu verschiedenen Füllungen gehören.</translation>
    </message>
    <message>
        <source>%1 (state "%2") and CT (state "%3") differ by %4, both carried to %5; published differences lie from %6.</source>
        <translation>%1 (Zustand „%2“) und CT (Zustand „%3“) unterscheiden sich um %4, beide auf %5 übertragen; veröffentlichte Unterschiede liegen bei %6.</translation>
    </message>
    <message>
        <source>Look at plane, phase and scale of both before choosing.</source>
        <translation>Sehen Sie Ebene, Phase und Maßstab beider an, bevor Sie wählen.</translation>
    </message>
    <message>
        <source>Outside the pressures that loading studies span (%1 to %2): %3.</source>
        <translation>Außerhalb der Drücke, die Belastungsstudien überspannen (%1 bis %2): %3.</translation>
    </message>
    <message>
        <source>The width there is an extrapolation, stated with a larger uncertainty.</source>
        <translation>Die Weite dort ist eine Extrapolation, mit größerer Unsicherheit angegeben.</translation>
    </message>
    <message>
        <source>Strongly oval landing zone: %1 by %2 (eccentricity index %3).</source>
        <translation>Stark ovale Landezone: %1 mal %2 (Exzentrizitätsindex %3).</translation>
    </message>
    <message>
        <source>A round implant is pressed more along the shortest diameter and less along the longest than the percentages say.</source>
        <translation>Ein rundes Implantat wird entlang des kürzesten Durchmessers stärker und entlang des längsten schwächer gedrückt, als die Prozentzahlen sagen.</translation>
    </message>
    <message>
        <source>Sharp bend: the axis turns by %1 degrees after %2 of neck.</source>
        <translation>Scharfer Knick: Die Achse dreht um %1 Grad nach %2 Hals.</translation>
    </message>
    <message>
        <source>Sharp bend: the axis turns by %1 degrees after %2 of neck, %3 wide there.</source>
        <translation>Scharfer Knick: Die Achse dreht um %1 Grad nach %2 Hals, dort %3 weit.</translation>
    </message>
    <message>
        <source>Sharp bend: the axis turns by %1 degrees after %2 of neck, with %3 of depth beyond.</source>
        <translation>Scharfer Knick: Die Achse dreht um %1 Grad nach %2 Hals, mit %3 Tiefe dahinter.</translation>
    </message>
    <message>
        <source>Sharp bend: the axis turns by %1 degrees after %2 of neck, %3 wide there, with %4 of depth beyond.</source>
        <translation>Scharfer Knick: Die Achse dreht um %1 Grad nach %2 Hals, dort %3 weit, mit %4 Tiefe dahinter.</translation>
    </message>
    <message>
        <source>See each size for whether a folded placement can be reached.</source>
        <translation>Bei jeder Größe steht, ob sie sich gefaltet einsetzen lässt.</translation>
    </message>
    <message>
        <source>Undersized at %1, as when the pressure returns: the appendage is then %2 (95 % %3) wide, size %4 compressed by %5; below its least compression of %6 with a chance of %7.</source>
        <translation>Zu klein bei %1, wie wenn der Druck zurückkehrt: Das Vorhofohr ist dann %2 weit (95 % %3), Größe %4 um %5 zusammengedrückt; unter ihrer kleinsten Kompression von %6 mit einer Chance von %7.</translation>
    </message>
    <message>
        <source>Undersized at %1, as when the pressure returns: the appendage is then %2 (95 % %3) wide, size %4 narrower than the appendage by %5; below its least compression of %6 with a chance of %7.</source>
        <translation>Zu klein bei %1, wie wenn der Druck zurückkehrt: Das Vorhofohr ist dann %2 weit (95 % %3), Größe %4 um %5 schmaler als das Vorhofohr; unter ihrer kleinsten Kompression von %6 mit einer Chance von %7.</translation>
    </message>
    <message>
        <source>Over-compressed at %1, as after a lasting fall: the appendage is then %2 (95 % %3) wide, size %4 compressed by %5; above its most of %6 with a chance of %7.</source>
        <translation>Zu stark gedrückt bei %1, wie nach einem dauerhaften Abfall: Das Vorhofohr ist dann %2 weit (95 % %3), Größe %4 um %5 zusammengedrückt; über ihrer größten Kompression von %6 mit einer Chance von %7.</translation>
    </message>
    <message>
        <source>Over-compressed at %1, as after a lasting fall: the appendage is then %2 (95 % %3) wide, size %4 narrower than the appendage by %5; above its most of %6 with a chance of %7.</source>
        <translation>Zu stark gedrückt bei %1, wie nach einem dauerhaften Abfall: Das Vorhofohr ist dann %2 weit (95 % %3), Größe %4 um %5 schmaler als das Vorhofohr; über ihrer größten Kompression von %6 mit einer Chance von %7.</translation>
    </message>
    <message>
        <source>Oversizing is not harmless.</source>
        <translation>Zu groß zu wählen ist nicht harmlos.</translation>
    </message>
    <message>
        <source>The tip was not filled: the depth %1 is at least %2; size %3 needs %4.</source>
        <translation>Die Spitze war nicht gefüllt: Die Tiefe %1 beträgt mindestens %2; Größe %3 braucht %4.</translation>
    </message>
    <message>
        <source>No verdict on depth.</source>
        <translation>Kein Urteil über die Tiefe.</translation>
    </message>
    <message>
        <source>Too shallow: size %1 needs %2 %3; there are %4 (%5), %6 short.</source>
        <translation>Zu flach: Größe %1 braucht %2 %3; vorhanden sind %4 (%5), es fehlen %6.</translation>
    </message>
    <message>
        <source>The disc of size %1 (%2) does not cover the ostium: with an overlap of %3 it is %4 too small for the ostium's longest diameter.</source>
        <translation>Die Scheibe der Größe %1 (%2) deckt das Ostium nicht: Mit einer Überlappung von %3 ist sie um %4 zu klein für den längsten Durchmesser des Ostiums.</translation>
    </message>
    <message>
        <source>Size %1 would lie %2 from the %3; at least %4 is wanted.</source>
        <translation>Größe %1 läge %2 entfernt von: %3; mindestens %4 sind gewünscht.</translation>
    </message>
    <message>
        <source>The neck is %1 long before the bend; for size %2 %3.</source>
        <translation>Der Hals ist vor dem Knick %1 lang; für Größe %2 gilt: %3.</translation>
    </message>
    <message>
        <source>The chart allows folded placement.</source>
        <translation>Die Tabelle erlaubt gefaltetes Einsetzen.</translation>
    </message>
    <message>
        <source>The chart does not allow folded placement.</source>
        <translation>Die Tabelle erlaubt gefaltetes Einsetzen nicht.</translation>
    </message>
    <message>
        <source>The chart is silent about folded placement.</source>
        <translation>Die Tabelle sagt nichts über gefaltetes Einsetzen.</translation>
    </message>
    <message>
        <source>Undersized if the pressure returns (cause: passing): %1; %2.</source>
        <translation>Zu klein, wenn der Druck zurückkehrt (Ursache: vorübergehend): %1; %2.</translation>
    </message>
    <message>
        <source>Too large after a lasting fall (cause: lasting): %1; %2.</source>
        <translation>Zu groß nach einem dauerhaften Abfall (Ursache: dauerhaft): %1; %2.</translation>
    </message>
    <message>
        <source>At %1 the appendage is expected to be %2 wide (95 % %3): size %4 would then be %5 and be too small with a chance of %6.</source>
        <translation>Bei %1 wird das Vorhofohr %2 weit erwartet (95 % %3): Größe %4 wäre dann %5 und mit einer Chance von %6 zu klein.</translation>
    </message>
    <message>
        <source>At %1 the appendage is expected to be %2 wide (95 % %3): size %4 would then be %5, more than its band allows with a chance of %6, and the atrium may shrink further.</source>
        <translation>Bei %1 wird das Vorhofohr %2 weit erwartet (95 % %3): Größe %4 wäre dann %5, mit einer Chance von %6 mehr, als ihr Band erlaubt, und der Vorhof kann weiter schrumpfen.</translation>
    </message>
    <message>
        <source>It is also the size with the greatest fit chance at %1 (%2).</source>
        <translation>Sie ist auch die Größe mit der größten Passchance bei %1 (%2).</translation>
    </message>
    <message>
        <source>All readings together give size %1 the greatest fit chance at %2 (%3, against %4 for size %5).</source>
        <translation>Alle Messwerte zusammen geben Größe %1 die größte Passchance bei %2 (%3, gegen %4 für Größe %5).</translation>
    </message>
    <message>
        <source>The pressures that the implant will live with were not given; %1 to %2 are assumed.</source>
        <translation>Die Drücke, mit denen das Implantat leben wird, wurden nicht angegeben; %1 bis %2 werden angenommen.</translation>
    </message>
    <message>
        <source>The pressures that the implant will live with were not both given; %1 to %2 are assumed.</source>
        <translation>Von den Drücken, mit denen das Implantat leben wird, wurden nicht beide angegeben; %1 bis %2 werden angenommen.</translation>
    </message>
    <message>
        <source>The pressure of the state "%1" (%2) lies above the living range; raise its highest pressure if that may come back.</source>
        <translation>Der Druck des Zustands „%1“ (%2) liegt über dem Alltagsbereich; heben Sie dessen höchsten Druck an, falls das wiederkommen kann.</translation>
    </message>
    <message>
        <source>No reading is the chart's number by three-dimensional imaging; its number by two-dimensional imaging is used: %1 as %2.</source>
        <translation>Kein Messwert ist die Zahl der Tabelle aus dreidimensionaler Bildgebung; ihre Zahl aus zweidimensionaler wird benutzt: %1 als %2.</translation>
    </message>
    <message>
        <source>%1 of the state "%2" (%3, %4, %5) is shown with weight 0:</source>
        <translation>%1 des Zustands „%2“ (%3, %4, %5) wird mit Gewicht 0 gezeigt:</translation>
    </message>
    <message>
        <source>It is the %1, another quantity than the %2 asked for.</source>
        <translation>Gemessen ist: %1; gefragt ist: %2.</translation>
    </message>
    <message>
        <source>It was read with an implant in the appendage (%1): the width is no longer the appendage's own.</source>
        <translation>Gemessen mit einem Implantat im Vorhofohr (%1): Die Weite ist nicht mehr die des Vorhofohrs selbst.</translation>
    </message>
    <message>
        <source>The largest of several views has no counterpart in a contour: it misses the true longest diameter by an unknown amount and is no perimeter- or area-derived value.</source>
        <translation>Die größte Weite mehrerer Ansichten hat kein Gegenstück in einer Kontur: Sie verfehlt den wahren längsten Durchmesser um einen unbekannten Betrag und ist kein Wert aus Umfang oder Fläche.</translation>
    </message>
    <message>
        <source>A width of a single view has no counterpart in a contour unless CT predicts the width of the same view.</source>
        <translation>Die Weite einer einzelnen Ansicht hat kein Gegenstück in einer Kontur, außer das CT sagt die Weite derselben Ansicht voraus.</translation>
    </message>
    <message>
        <source>The chart's reading by two-dimensional imaging is the %1; this one is not.</source>
        <translation>Der Messwert der Tabelle aus zweidimensionaler Bildgebung ist: %1; dieser ist es nicht.</translation>
    </message>
    <message>
        <source>The phase of the reading by %1 in the state "%2" is not known.</source>
        <translation>Die Phase des Messwerts (%1) im Zustand „%2“ ist nicht bekannt.</translation>
    </message>
    <message>
        <source>The depth is not known; no size is judged on it.</source>
        <translation>Die Tiefe ist nicht bekannt; keine Größe wird danach beurteilt.</translation>
    </message>
    <message>
        <source>The chart counts depth from the landing plane; the depth from the ostium less each size's landing offset is used.</source>
        <translation>Die Tabelle zählt die Tiefe ab der Landeebene; benutzt wird die Tiefe ab dem Ostium abzüglich des Landeversatzes jeder Größe.</translation>
    </message>
    <message>
        <source>How much this appendage widens with pressure rests mostly on loading studies and an assumption (share of this patient's own readings: %1).</source>
        <translation>Wie stark sich dieses Vorhofohr mit dem Druck weitet, beruht vor allem auf Belastungsstudien und einer Annahme (Anteil eigener Messwerte dieses Patienten: %1).</translation>
    </message>
    <message>
        <source>Two readings by one method at two measured pressures would make it the patient's own.</source>
        <translation>Zwei Messwerte mit einem Verfahren bei zwei gemessenen Drücken machten ihn dem Patienten eigen.</translation>
    </message>
    <message>
        <source>Why the pressures differ was not said: both a passing and a lasting change are shown, so the range of widths is wider than for either.</source>
        <translation>Warum sich die Drücke unterscheiden, wurde nicht gesagt: Eine vorübergehende und eine dauerhafte Änderung werden gezeigt, der Bereich der Weiten ist daher größer als für jede allein.</translation>
    </message>
    <message>
        <source>The left atrial pressure of the state "%1" was measured directly already; once more would tell little.</source>
        <translation>Der linksatriale Druck des Zustands „%1“ wurde schon direkt gemessen; noch einmal brächte wenig.</translation>
    </message>
    <message>
        <source>Left atrial pressure measured directly today, and taken for the state "%1".</source>
        <translation>Linksatrialer Druck heute direkt gemessen und für den Zustand „%1“ genommen.</translation>
    </message>
    <message>
        <source>Left atrial pressure measured directly in the state "%1".</source>
        <translation>Linksatrialer Druck im Zustand „%1“ direkt gemessen.</translation>
    </message>
    <message>
        <source>One more reading by 2D echo, %1, at %2.</source>
        <translation>Ein weiterer Messwert im 2D-Echo, %1, bei %2.</translation>
    </message>
    <message>
        <source>One more reading by 2D echo, %1, in the state "%2".</source>
        <translation>Ein weiterer Messwert im 2D-Echo, %1, im Zustand „%2“.</translation>
    </message>
    <message>
        <source>A contour by 3D echo at %1.</source>
        <translation>Eine Kontur im 3D-Echo bei %1.</translation>
    </message>
    <message>
        <source>A contour by 3D echo in the state "%1".</source>
        <translation>Eine Kontur im 3D-Echo im Zustand „%1“.</translation>
    </message>
    <message>
        <source>%1 (%2) after filling to %3, if the treating team judges filling safe.</source>
        <translation>%1 (%2) nach Auffüllen auf %3, wenn das Behandlungsteam das Auffüllen für sicher hält.</translation>
    </message>
    <message>
        <source>The chart's sizes %1 and %2 both accept readings from %3 to %4.</source>
        <translation>Die Größen %1 und %2 der Tabelle nehmen beide Messwerte von %3 bis %4 an.</translation>
    </message>
    <message>
        <source>No size of the chart accepts readings between %1 and %2 (between sizes %3 and %4).</source>
        <translation>Keine Größe der Tabelle nimmt Messwerte zwischen %1 und %2 an (zwischen den Größen %3 und %4).</translation>
    </message>
    <message>
        <source>The chart "%1" is invented for demonstration: it describes no device.</source>
        <translation>Die Tabelle „%1“ ist zur Vorführung erfunden: Sie beschreibt kein Gerät.</translation>
    </message>
    <message>
        <source>Size %1 accepts readings at which it would be compressed by %2 to %3, outside its own band of %4 to %5.</source>
        <translation>Größe %1 nimmt Messwerte an, bei denen sie um %2 bis %3 zusammengedrückt wäre, außerhalb ihres eigenen Bands von %4 bis %5.</translation>
    </message>
    <message>
        <source>The %1 by %2 (%3) is left out: what it was measured on has changed since.</source>
        <translation>%1 (%2, %3) bleibt weg: Worauf gemessen wurde, hat sich seither geändert.</translation>
    </message>
    <message>
        <source>Measure it again, or confirm it.</source>
        <translation>Messen Sie noch einmal, oder bestätigen Sie den Wert.</translation>
    </message>
    <message>
        <source>The readings by %1 belong to no moment of the course: their pressure counts as not measured.</source>
        <translation>Die Messwerte (%1) gehören zu keinem Moment des Verlaufs: Ihr Druck gilt als nicht gemessen.</translation>
    </message>
    <message>
        <source>Readings name the moment "%1", which the case does not hold: their pressure counts as not measured.</source>
        <translation>Messwerte nennen den Moment „%1“, den der Fall nicht enthält: Ihr Druck gilt als nicht gemessen.</translation>
    </message>
    <message>
        <source>The CT phase at %1 of the beat counts as %2 (30 to 50 % is taken for end-systole: common practice, no source).</source>
        <translation>Die CT-Phase bei %1 des Schlags gilt als %2 (30 bis 50 % gelten als Endsystole: übliche Praxis, ohne Quelle).</translation>
    </message>
    <message>
        <source>Only the v wave is recorded for state "%1": a mean of %2 is taken from it (%3).</source>
        <translation>Für den Zustand „%1“ ist nur die v-Welle vermerkt: Ein Mittel von %2 wird daraus genommen (%3).</translation>
    </message>
    <message>
        <source>No left atrial pressure is recorded for state "%1": %2 is taken (%3: %4).</source>
        <translation>Für den Zustand „%1“ ist kein linksatrialer Druck vermerkt: %2 wird angenommen (%3: %4).</translation>
    </message>
    <message>
        <source>Measuring it would narrow every answer.</source>
        <translation>Ihn zu messen würde jede Antwort genauer machen.</translation>
    </message>
    <message>
        <source>Nobody said how the pressure of state "%1", %2, was obtained: an uncertainty of %3 is taken.</source>
        <translation>Niemand sagte, wie der Druck des Zustands „%1“, %2, gewonnen wurde: Eine Unsicherheit von %3 wird angenommen.</translation>
    </message>
    <message>
        <source>The v wave of state "%1", %2, lies below its mean, %3; a peak cannot.</source>
        <translation>Die v-Welle des Zustands „%1“, %2, liegt unter ihrem Mittel, %3; eine Spitze kann das nicht.</translation>
    </message>
    <message>
        <source>Look at both again.</source>
        <translation>Sehen Sie beide noch einmal an.</translation>
    </message>
    <message>
        <source>Read at end-systole, when the v wave stretches the appendage, but no v wave is recorded: the mean pressure is taken for %1.</source>
        <translation>Endsystolisch gemessen, wenn die v-Welle das Vorhofohr dehnt, doch keine v-Welle ist vermerkt: Der mittlere Druck wird genommen für %1.</translation>
    </message>
    <message>
        <source>Nobody said at which phase this was read: end-systole, under the v wave of %1, and another are held equally likely for %2.</source>
        <translation>Niemand sagte, in welcher Phase gemessen wurde: Endsystole, unter der v-Welle von %1, und eine andere gelten als gleich wahrscheinlich für %2.</translation>
    </message>
    <message>
        <source>No reading counts as better than %1; stated for %2: %3.</source>
        <translation>Kein Messwert zählt als besser als %1; angegeben für %2: %3.</translation>
    </message>
    <message>
        <source>The decision pressure is %1, outside the %2 that the loading studies span: the uncertainty of the pressure's effect is multiplied by %3 (assumption).</source>
        <translation>Der Entscheidungsdruck ist %1, außerhalb der %2, die Belastungsstudien überspannen: Die Unsicherheit der Druckwirkung wird mit %3 multipliziert (Annahme).</translation>
    </message>
    <message>
        <source>The pressure of %1 is about %2, outside the %3 that the loading studies span: the uncertainty of the pressure's effect is multiplied by %4 (assumption).</source>
        <translation>Der Druck von %1 ist etwa %2, außerhalb der %3, die Belastungsstudien überspannen: Die Unsicherheit der Druckwirkung wird mit %4 multipliziert (Annahme).</translation>
    </message>
    <message>
        <source>The readings differ by more than their uncertainties, the biases and the pressures explain (such a difference has a chance of %1).</source>
        <translation>Die Messwerte unterscheiden sich stärker, als ihre Unsicherheiten, die systematischen Unterschiede und die Drücke erklären (ein solcher Unterschied hat eine Chance von %1).</translation>
    </message>
    <message>
        <source>Furthest above the rest: %1; furthest below: %2.</source>
        <translation>Am weitesten über den anderen: %1; am weitesten darunter: %2.</translation>
    </message>
    <message>
        <source>Look at quantity, plane, calibration and pressure of both before a size is taken.</source>
        <translation>Sehen Sie Größe, Ebene, Kalibrierung und Druck beider an, bevor eine Größe genommen wird.</translation>
    </message>
    <message>
        <source>No CT contour is among the readings: the answer on the CT's scale rests on the assumed bias of the other kinds.</source>
        <translation>Unter den Messwerten ist keine CT-Kontur: Die Antwort auf der Skala des CT beruht auf den angenommenen systematischen Unterschieden der anderen Arten.</translation>
    </message>
    <message>
        <source>How much the appendage widens with pressure, %1 mm per mmHg, is assumed and hardly this patient's own (share %2); %3: %4.</source>
        <translation>Wie stark sich das Vorhofohr mit dem Druck weitet, %1 mm je mmHg, ist angenommen und kaum diesem Patienten eigen (Anteil %2); %3: %4.</translation>
    </message>
    <message>
        <source>%1 differs from %2 by %3; published differences lie between %4 and %5 (%6: %7).</source>
        <translation>%1 weicht von %2 um %3 ab; veröffentlichte Unterschiede liegen zwischen %4 und %5 (%6: %7).</translation>
    </message>
    <message>
        <source>Different pressure, another plane or a misreading; look at both.</source>
        <translation>Anderer Druck, eine andere Ebene oder ein Lesefehler; sehen Sie beide an.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>below %1</source>
        <translation>unter %1</translation>
    </message>
    <message>
        <source>above %1</source>
        <translation>über %1</translation>
    </message>
    <message>
        <source>compressed by %1</source>
        <translation>um %1 zusammengedrückt</translation>
    </message>
    <message>
        <source>narrower than the appendage by %1</source>
        <translation>um %1 schmaler als das Vorhofohr</translation>
    </message>
    <message>
        <source>at least %1 (%2)</source>
        <translation>mindestens %1 (%2)</translation>
    </message>
    <message>
        <source>at most %1 (%2)</source>
        <translation>höchstens %1 (%2)</translation>
    </message>
    <message>
        <source>%1 to %2 (%3)</source>
        <translation>%1 bis %2 (%3)</translation>
    </message>
    <message>
        <source>%1 %2 (state "%3") read %4 at %5</source>
        <translation>%1, %2 (Zustand „%3“), las %4 bei %5</translation>
    </message>
    <message>
        <source>%1 %2 (state "%3") read %4 at a pressure that was not measured (the readings leave it at %5, give or take %6)</source>
        <translation>%1, %2 (Zustand „%3“), las %4 bei einem Druck, der nicht gemessen wurde (nach den Messwerten %5, plus oder minus %6)</translation>
    </message>
    <message>
        <source>from that reading alone size %1 would be chosen</source>
        <translation>nach diesem Messwert allein würde Größe %1 gewählt</translation>
    </message>
    <message>
        <source>no size accepts that reading alone, the nearest is %1</source>
        <translation>keine Größe nimmt diesen Messwert allein an, die nächste ist %1</translation>
    </message>
    <message>
        <source>%1 (%2), %3, state "%4"</source>
        <translation>%1 (%2), %3, Zustand „%4“</translation>
    </message>
    <message>
        <source>%1 (seen by %2)</source>
        <translation>%1 (gesehen von %2)</translation>
    </message>
    <message>
        <source>decision pressure %1</source>
        <translation>Entscheidungsdruck %1</translation>
    </message>
    <message>
        <source>lowest living pressure %1</source>
        <translation>niedrigster Druck des Alltags %1</translation>
    </message>
    <message>
        <source>highest living pressure %1</source>
        <translation>höchster Druck des Alltags %1</translation>
    </message>
    <message>
        <source>echo contrast grade %1</source>
        <translation>Echokontrast Grad %1</translation>
    </message>
    <message>
        <source>emptying velocity %1</source>
        <translation>Entleerungsgeschwindigkeit %1</translation>
    </message>
    <message>
        <source>readings of depth carried to %1</source>
        <translation>Messwerte der Tiefe, auf %1 übertragen</translation>
    </message>
    <message>
        <source>ellipse through %1 echo widths</source>
        <translation>Ellipse durch %1 Echoweiten</translation>
    </message>
    <message>
        <source>ellipse through %1 echo widths, ovality corrected for noise</source>
        <translation>Ellipse durch %1 Echoweiten, Ovalität um Rauschen korrigiert</translation>
    </message>
    <message>
        <source>ellipse through %1 echo widths, reported round: its ovality cannot be told from noise</source>
        <translation>Ellipse durch %1 Echoweiten, als rund berichtet: Ihre Ovalität ist von Rauschen nicht zu unterscheiden</translation>
    </message>
    <message>
        <source>largest of %1 echo views</source>
        <translation>größte von %1 Echoansichten</translation>
    </message>
    <message>
        <source>%1 drawn by hand; %2</source>
        <translation>%1, von Hand gezeichnet; %2</translation>
    </message>
    <message>
        <source>mean of %1 beats</source>
        <translation>Mittel aus %1 Schlägen</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>before the procedure</source>
        <translation>vor dem Eingriff</translation>
    </message>
    <message>
        <source>before the repair</source>
        <translation>vor der Reparatur</translation>
    </message>
    <message>
        <source>after the repair</source>
        <translation>nach der Reparatur</translation>
    </message>
    <message>
        <source>sheath in the appendage</source>
        <translation>Schleuse im Vorhofohr</translation>
    </message>
    <message>
        <source>device partly deployed</source>
        <translation>Gerät teilweise entfaltet</translation>
    </message>
    <message>
        <source>deployed and attached</source>
        <translation>entfaltet und befestigt</translation>
    </message>
    <message>
        <source>after release</source>
        <translation>nach der Freigabe</translation>
    </message>
    <message>
        <source>follow-up</source>
        <translation>Nachsorge</translation>
    </message>
    <message>
        <source>CT</source>
        <translation>CT</translation>
    </message>
    <message>
        <source>2D echo</source>
        <translation>2D-Echo</translation>
    </message>
    <message>
        <source>3D echo</source>
        <translation>3D-Echo</translation>
    </message>
    <message>
        <source>fluoroscopy</source>
        <translation>Durchleuchtung</translation>
    </message>
    <message>
        <source>contour</source>
        <translation>Kontur</translation>
    </message>
    <message>
        <source>ellipse from probe angles</source>
        <translation>Ellipse aus Sondenwinkeln</translation>
    </message>
    <message>
        <source>largest of the views</source>
        <translation>größte der Ansichten</translation>
    </message>
    <message>
        <source>single view</source>
        <translation>einzelne Ansicht</translation>
    </message>
    <message>
        <source>perimeter-derived diameter of the landing zone</source>
        <translation>Durchmesser der Landezone aus dem Umfang</translation>
    </message>
    <message>
        <source>area-derived diameter of the landing zone</source>
        <translation>Durchmesser der Landezone aus der Fläche</translation>
    </message>
    <message>
        <source>longest diameter of the landing zone</source>
        <translation>längster Durchmesser der Landezone</translation>
    </message>
    <message>
        <source>perimeter-derived diameter of the ostium</source>
        <translation>Durchmesser des Ostiums aus dem Umfang</translation>
    </message>
    <message>
        <source>longest diameter of the ostium</source>
        <translation>längster Durchmesser des Ostiums</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>before-procedure</source>
        <translation>vor dem Eingriff</translation>
    </message>
    <message>
        <source>before-repair</source>
        <translation>vor der Reparatur</translation>
    </message>
    <message>
        <source>after-repair</source>
        <translation>nach der Reparatur</translation>
    </message>
    <message>
        <source>sheath-in-appendage</source>
        <translation>Schleuse im Vorhofohr</translation>
    </message>
    <message>
        <source>partly-deployed</source>
        <translation>teilweise entfaltet</translation>
    </message>
    <message>
        <source>deployed-attached</source>
        <translation>entfaltet und befestigt</translation>
    </message>
    <message>
        <source>after-release</source>
        <translation>nach der Freigabe</translation>
    </message>
    <message>
        <source>sheath tip beyond the landing plane</source>
        <translation>Schleusenspitze jenseits der Landeebene</translation>
    </message>
    <message>
        <source>share of the lobe beyond the circumflex artery</source>
        <translation>Anteil des Lappens jenseits der Circumflexa</translation>
    </message>
    <message>
        <source>width of the implant</source>
        <translation>Weite des Implantats</translation>
    </message>
    <message>
        <source>gap before the pull</source>
        <translation>Spalt vor dem Zug</translation>
    </message>
    <message>
        <source>gap after the pull</source>
        <translation>Spalt nach dem Zug</translation>
    </message>
    <message>
        <source>lobe axis to neck axis</source>
        <translation>Lappenachse zur Halsachse</translation>
    </message>
    <message>
        <source>disc apart from the lobe</source>
        <translation>Abstand der Scheibe vom Lappen</translation>
    </message>
    <message>
        <source>uncovered lobes</source>
        <translation>unbedeckte Lappen</translation>
    </message>
    <message>
        <source>jet past the implant</source>
        <translation>Jet am Implantat vorbei</translation>
    </message>
    <message>
        <source>clearance to the circumflex artery</source>
        <translation>Abstand zur Circumflexa</translation>
    </message>
    <message>
        <source>clearance to the pulmonary artery</source>
        <translation>Abstand zur Pulmonalarterie</translation>
    </message>
    <message>
        <source>clearance to the mitral annulus</source>
        <translation>Abstand zum Mitralring</translation>
    </message>
    <message>
        <source>clearance to the ridge</source>
        <translation>Abstand zur Leiste</translation>
    </message>
    <message>
        <source>pericardial effusion</source>
        <translation>Perikarderguss</translation>
    </message>
    <message>
        <source>mean mitral gradient</source>
        <translation>mittlerer Mitralgradient</translation>
    </message>
    <message>
        <source>mitral regurgitation grade</source>
        <translation>Grad der Mitralinsuffizienz</translation>
    </message>
    <message>
        <source>pulmonary-vein flow free</source>
        <translation>Lungenvenenfluss frei</translation>
    </message>
    <message>
        <source>thrombus on the implant</source>
        <translation>Thrombus auf dem Implantat</translation>
    </message>
    <message>
        <source>hole in the septum</source>
        <translation>Loch im Septum</translation>
    </message>
    <message>
        <source>compression</source>
        <translation>Kompression</translation>
    </message>
    <message>
        <source>no jet</source>
        <translation>kein Jet</translation>
    </message>
    <message>
        <source>jet up to 3 mm</source>
        <translation>Jet bis 3 mm</translation>
    </message>
    <message>
        <source>jet of 3 to 5 mm</source>
        <translation>Jet von 3 bis 5 mm</translation>
    </message>
    <message>
        <source>jet over 5 mm</source>
        <translation>Jet über 5 mm</translation>
    </message>
    <message>
        <source>the chart</source>
        <translation>die Tabelle</translation>
    </message>
    <message>
        <source>published</source>
        <translation>veröffentlicht</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>übliche Praxis, ohne Quelle</translation>
    </message>
    <message>
        <source>an assumption</source>
        <translation>eine Annahme</translation>
    </message>
    <message>
        <source>read</source>
        <translation>gelesen</translation>
    </message>
    <message>
        <source>computed</source>
        <translation>berechnet</translation>
    </message>
    <message>
        <source>memory</source>
        <translation>aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>assumption</source>
        <translation>Annahme</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>übliche Praxis</translation>
    </message>
    <message>
        <source>no source</source>
        <translation>ohne Quelle</translation>
    </message>
    <message>
        <source>set here</source>
        <translation>hier eingestellt</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>sludge</source>
        <translation>Schlick</translation>
    </message>
    <message>
        <source>from the ostium</source>
        <translation>ab dem Ostium</translation>
    </message>
    <message>
        <source>from the landing plane</source>
        <translation>ab der Landeebene</translation>
    </message>
    <message>
        <source>as measured</source>
        <translation>wie gemessen</translation>
    </message>
    <message>
        <source>circumflex artery</source>
        <translation>Circumflexa</translation>
    </message>
    <message>
        <source>ridge to the upper left pulmonary vein</source>
        <translation>Leiste zur linken oberen Lungenvene</translation>
    </message>
    <message>
        <source>pulmonary artery</source>
        <translation>Pulmonalarterie</translation>
    </message>
    <message>
        <source>mitral annulus</source>
        <translation>Mitralring</translation>
    </message>
    <message>
        <source>the neck alone offers its depth; no folding is needed</source>
        <translation>der Hals allein bietet die Tiefe; Falten ist nicht nötig</translation>
    </message>
    <message>
        <source>a folded placement can be reached in full</source>
        <translation>gefaltetes Einsetzen gelingt ganz</translation>
    </message>
    <message>
        <source>a folded placement can be reached in part</source>
        <translation>gefaltetes Einsetzen gelingt zum Teil</translation>
    </message>
    <message>
        <source>a folded placement cannot be reached</source>
        <translation>gefaltetes Einsetzen gelingt nicht</translation>
    </message>
    <message>
        <source>whether a folded placement can be reached is not known: width or depth at the bend was not measured</source>
        <translation>ob gefaltetes Einsetzen gelingt, ist nicht bekannt: Weite oder Tiefe am Knick wurde nicht gemessen</translation>
    </message>
    <message>
        <source>end-systole</source>
        <translation>Endsystole</translation>
    </message>
    <message>
        <source>a phase other than end-systole</source>
        <translation>eine andere Phase als Endsystole</translation>
    </message>
    <message>
        <source>ostium plane</source>
        <translation>Ostiumebene</translation>
    </message>
    <message>
        <source>landing plane</source>
        <translation>Landeebene</translation>
    </message>
    <message>
        <source>plug plane</source>
        <translation>Stopfenebene</translation>
    </message>
    <message>
        <source>sinus</source>
        <translation>Sinusrhythmus</translation>
    </message>
    <message>
        <source>atrial-fibrillation</source>
        <translation>Vorhofflimmern</translation>
    </message>
    <message>
        <source>atrial-flutter</source>
        <translation>Vorhofflattern</translation>
    </message>
    <message>
        <source>paced</source>
        <translation>stimuliert</translation>
    </message>
    <message>
        <source>spontaneous</source>
        <translation>spontan</translation>
    </message>
    <message>
        <source>controlled</source>
        <translation>kontrolliert</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>mild</source>
        <translation>leicht</translation>
    </message>
    <message>
        <source>moderate</source>
        <translation>mittel</translation>
    </message>
    <message>
        <source>moderate-to-severe</source>
        <translation>mittel bis schwer</translation>
    </message>
    <message>
        <source>severe</source>
        <translation>schwer</translation>
    </message>
    <message>
        <source>sub-voxel contour at the local half value of blood and wall</source>
        <translation>Kontur unter Voxelgröße beim örtlichen halben Wert von Blut und Wand</translation>
    </message>
    <message>
        <source>contour corrected by hand</source>
        <translation>Kontur von Hand korrigiert</translation>
    </message>
    <message>
        <source>contour drawn by hand</source>
        <translation>Kontur von Hand gezeichnet</translation>
    </message>
    <message>
        <source>straight line from the landing plane's centre along the ostium normal to the opposite wall</source>
        <translation>Gerade von der Mitte der Landeebene entlang der Normalen des Ostiums zur Gegenwand</translation>
    </message>
    <message>
        <source>angle between the axis' directions before and after its sharpest place, each over 6 mm</source>
        <translation>Winkel zwischen den Richtungen der Achse vor und nach ihrer schärfsten Stelle, je über 6 mm</translation>
    </message>
    <message>
        <source>distance along the axis from the ostium</source>
        <translation>Abstand entlang der Achse ab dem Ostium</translation>
    </message>
    <message>
        <source>direction of the longest diameter, as a probe angle</source>
        <translation>Richtung des längsten Durchmessers als Sondenwinkel</translation>
    </message>
    <message>
        <source>greatest depth of the echo views</source>
        <translation>größte Tiefe der Echoansichten</translation>
    </message>
    <message>
        <source>straight line</source>
        <translation>Gerade</translation>
    </message>
    <message>
        <source>smooth line</source>
        <translation>glatte Linie</translation>
    </message>
    <message>
        <source>closed line</source>
        <translation>geschlossene Linie</translation>
    </message>
    <message>
        <source>angle</source>
        <translation>Winkel</translation>
    </message>
    <message>
        <source>ellipse</source>
        <translation>Ellipse</translation>
    </message>
    <message>
        <source>calibration of the ultrasound region</source>
        <translation>Kalibrierung des Ultraschallbereichs</translation>
    </message>
    <message>
        <source>scale marked by hand</source>
        <translation>von Hand markierter Maßstab</translation>
    </message>
    <message>
        <source>detector spacing, reduced to the isocentre</source>
        <translation>Detektorabstand, auf das Isozentrum umgerechnet</translation>
    </message>
    <message>
        <source>outer diameter of a catheter</source>
        <translation>Außendurchmesser eines Katheters</translation>
    </message>
    <message>
        <source>distance between markers</source>
        <translation>Abstand zwischen Marken</translation>
    </message>
    <message>
        <source>calibrated by the device from its geometry</source>
        <translation>vom Gerät aus seiner Geometrie kalibriert</translation>
    </message>
    <message>
        <source>calibrated by the device on an object of known size</source>
        <translation>vom Gerät an einem Gegenstand bekannter Größe kalibriert</translation>
    </message>
    <message>
        <source>pixel spacing of the file, calibration not told</source>
        <translation>Pixelabstand der Datei, Kalibrierung nicht genannt</translation>
    </message>
    <message>
        <source>section through a volume</source>
        <translation>Schnitt durch ein Volumen</translation>
    </message>
    <message>
        <source>shape of the pixels</source>
        <translation>Form der Pixel</translation>
    </message>
    <message>
        <source>degrees</source>
        <translation>Grad</translation>
    </message>
    <message>
        <source>per minute</source>
        <translation>pro Minute</translation>
    </message>
    <message>
        <source>length of the axis from the ostium to the wall at the lobe's far end</source>
        <translation>Länge der Achse vom Ostium bis zur Wand am fernen Ende</translation>
    </message>
    <message>
        <source>greatest distance from the ostium plane to the wall of the appendage</source>
        <translation>größter Abstand von der Ostiumebene zur Wand des Vorhofohrs</translation>
    </message>
    <message>
        <source>caliper</source>
        <translation>Messstrecke</translation>
    </message>
    <message>
        <source>time caliper</source>
        <translation>Zeitmessstrecke</translation>
    </message>
    <message>
        <source>mean level</source>
        <translation>mittleres Niveau</translation>
    </message>
    <message>
        <source>gap</source>
        <translation>Spalt</translation>
    </message>
    <message>
        <source>voxels above the local half value beyond the ostium</source>
        <translation>Voxel über dem örtlichen halben Wert jenseits des Ostiums</translation>
    </message>
    <message>
        <source>At %1 the fluoroscopy reads %2 ± %3, the CT contour predicts %4 ± %5: %6 ± %7, more than the modality explains.</source>
        <translation>Bei %1 liest die Durchleuchtung %2 ± %3, die CT-Kontur sagt %4 ± %5 voraus: %6 ± %7, mehr als die Modalität erklärt.</translation>
    </message>
    <message>
        <source>At %1 the fluoroscopy reads %2 ± %3, the CT contour predicts %4 ± %5: %6 ± %7, as the modality explains.</source>
        <translation>Bei %1 liest die Durchleuchtung %2 ± %3, die CT-Kontur sagt %4 ± %5 voraus: %6 ± %7, wie die Modalität erklärt.</translation>
    </message>
    <message>
        <source>The sizes slide along %1.</source>
        <translation>Die Größen gleiten entlang: %1.</translation>
    </message>
    <message>
        <source>That direction lies %1 degrees off the appendage's axis at the landing zone: the wall is met earlier than along the axis.</source>
        <translation>Diese Richtung weicht an der Landezone um %1 Grad von der Achse des Vorhofohrs ab: Die Wand wird früher erreicht als entlang der Achse.</translation>
    </message>
    <message>
        <source>The tip was not filled: along the sheath the reach is a lower bound.</source>
        <translation>Die Spitze war nicht gefüllt: Entlang der Schleuse ist die Reichweite eine untere Grenze.</translation>
    </message>
    <message>
        <source>The sheath runs from head to foot: no side of the body lies above or below, so no gaps are told.</source>
        <translation>Die Schleuse verläuft vom Kopf zu den Füßen: Keine Seite des Körpers liegt oben oder unten, deshalb werden keine Spalte genannt.</translation>
    </message>
    <message>
        <source>Not marked, and so not judged: %1.</source>
        <translation>Nicht markiert und deshalb nicht beurteilt: %1.</translation>
    </message>
    <message>
        <source>Along the sheath size %1 reaches %2 from the ostium before %3 stops it; the chart asks for %4.</source>
        <translation>Entlang der Schleuse reicht Größe %1 vom Ostium aus %2 weit; dort hält sie auf: %3. Die Tabelle verlangt %4.</translation>
    </message>
    <message>
        <source>Along the sheath size %1 reaches %2 from the landing plane before %3 stops it; the chart asks for %4.</source>
        <translation>Entlang der Schleuse reicht Größe %1 von der Landeebene aus %2 weit; dort hält sie auf: %3. Die Tabelle verlangt %4.</translation>
    </message>
    <message>
        <source>Along the sheath nothing stops size %1 within %2 from the ostium, where the measured images end; the chart asks for %3.</source>
        <translation>Entlang der Schleuse hält Größe %1 innerhalb von %2 vom Ostium, wo die gemessenen Bilder enden, nichts auf; die Tabelle verlangt %3.</translation>
    </message>
    <message>
        <source>Along the sheath nothing stops size %1 within %2 from the landing plane, where the measured images end; the chart asks for %3.</source>
        <translation>Entlang der Schleuse hält Größe %1 innerhalb von %2 von der Landeebene, wo die gemessenen Bilder enden, nichts auf; die Tabelle verlangt %3.</translation>
    </message>
    <message>
        <source>%1 of the body of size %2 lies beyond the circumflex artery.</source>
        <translation>%1 des Körpers der Größe %2 liegen jenseits der Circumflexa.</translation>
    </message>
    <message>
        <source>The disc of size %1 covers %2 of the ostium's area; its least overlap is %3, on the %4 side.</source>
        <translation>Die Scheibe der Größe %1 deckt %2 der Fläche des Ostiums; ihre kleinste Überlappung beträgt %3, Seite: %4.</translation>
    </message>
    <message>
        <source>In place, size %1 lies %2 from the %3; at least %4 is wanted.</source>
        <translation>Am Platz liegt Größe %1 %2 entfernt von: %3; mindestens %4 sind gewünscht.</translation>
    </message>
    <message>
        <source>In place, size %1 lies %2 from the %3; the chart names no least.</source>
        <translation>Am Platz liegt Größe %1 %2 entfernt von: %3; die Tabelle nennt kein Mindestmaß.</translation>
    </message>
    <message>
        <source>Along the sheath size %1 is stopped by %2 %3 before its place, and would stand back by as much.</source>
        <translation>Entlang der Schleuse wird Größe %1 %3 vor ihrem Platz aufgehalten und stünde um so viel zurück. Es hält sie auf: %2.</translation>
    </message>
    <message>
        <source>The disc of size %1 leaves the ostium open on the %2 side, by %3 at most.</source>
        <translation>Die Scheibe der Größe %1 lässt das Ostium um höchstens %3 offen, Seite: %2.</translation>
    </message>
    <message>
        <source>Only %1 of the lobe of size %2 lies beyond the circumflex artery; two thirds are wanted (common practice, no source).</source>
        <translation>Nur %1 des Lappens der Größe %2 liegen jenseits der Circumflexa; zwei Drittel sind gewünscht (übliche Praxis, ohne Quelle).</translation>
    </message>
    <message>
        <source>Planned and seen, %1: %2 planned, %3 seen.</source>
        <translation>Geplant und gesehen, %1: %2 geplant, %3 gesehen.</translation>
    </message>
    <message>
        <source>They differ by more than both uncertainties allow.</source>
        <translation>Sie unterscheiden sich um mehr, als beide Unsicherheiten zulassen.</translation>
    </message>
    <message>
        <source>%1 ± %2</source>
        <translation>%1 ± %2</translation>
    </message>
    <message>
        <source>%1 ± %2 open</source>
        <translation>%1 ± %2 offen</translation>
    </message>
    <message>
        <source>wall pressed out by %1 ± %2</source>
        <translation>Wand um %1 ± %2 hinausgedrückt</translation>
    </message>
    <message>
        <source>the %1 wall</source>
        <translation>die Wand, Seite: %1</translation>
    </message>
    <message>
        <source>the sheath from the chosen crossing</source>
        <translation>die Schleuse durch die gewählte Septumpunktion</translation>
    </message>
    <message>
        <source>the steerable sheath from the chosen crossing</source>
        <translation>die lenkbare Schleuse durch die gewählte Septumpunktion</translation>
    </message>
    <message>
        <source>the appendage's proximal axis, as no crossing is chosen</source>
        <translation>die proximale Achse des Vorhofohrs, da keine Septumpunktion gewählt ist</translation>
    </message>
    <message>
        <source>the ostium's normal, as no crossing is chosen</source>
        <translation>die Normale des Ostiums, da keine Septumpunktion gewählt ist</translation>
    </message>
    <message>
        <source>the wall ahead</source>
        <translation>die Wand voraus</translation>
    </message>
    <message>
        <source>not seen</source>
        <translation>nicht zu sehen</translation>
    </message>
    <message>
        <source>near</source>
        <translation>nahe</translation>
    </message>
    <message>
        <source>superior</source>
        <translation>superior</translation>
    </message>
    <message>
        <source>inferior</source>
        <translation>inferior</translation>
    </message>
    <message>
        <source>anterior</source>
        <translation>vorn</translation>
    </message>
    <message>
        <source>posterior</source>
        <translation>hinten</translation>
    </message>
    <message>
        <source>left</source>
        <translation>links</translation>
    </message>
    <message>
        <source>right</source>
        <translation>rechts</translation>
    </message>
    <message>
        <source>right-anterior</source>
        <translation>rechts-anterior</translation>
    </message>
    <message>
        <source>right-posterior</source>
        <translation>rechts-posterior</translation>
    </message>
    <message>
        <source>right-superior</source>
        <translation>rechts-superior</translation>
    </message>
    <message>
        <source>right-inferior</source>
        <translation>rechts-inferior</translation>
    </message>
    <message>
        <source>left-anterior</source>
        <translation>links-anterior</translation>
    </message>
    <message>
        <source>left-posterior</source>
        <translation>links-posterior</translation>
    </message>
    <message>
        <source>left-superior</source>
        <translation>links-superior</translation>
    </message>
    <message>
        <source>left-inferior</source>
        <translation>links-inferior</translation>
    </message>
    <message>
        <source>anterior-inferior</source>
        <translation>anterior-inferior</translation>
    </message>
    <message>
        <source>anterior-superior</source>
        <translation>anterior-superior</translation>
    </message>
    <message>
        <source>posterior-inferior</source>
        <translation>posterior-inferior</translation>
    </message>
    <message>
        <source>posterior-superior</source>
        <translation>posterior-superior</translation>
    </message>
    <message>
        <source>No view within the reach of the C-arm shows the plane edge-on; the views nearest to edge-on stand instead, and widths are read there all the same across the axis.</source>
        <translation>Keine Ansicht in der Reichweite des C-Bogens zeigt die Ebene von der Kante; dafür stehen die Ansichten, die ihr am nächsten kommen, und Breiten werden dort trotzdem quer zur Achse gelesen.</translation>
    </message>
    <message>
        <source>The axis hardly turns (or is too short to tell): no view in profile of a bend is named.</source>
        <translation>Die Achse biegt sich kaum (oder ist zu kurz, um es zu sagen): eine Ansicht im Profil der Biegung wird nicht genannt.</translation>
    </message>
    <message>
        <source>The bend lies within the plane itself: no edge-on view has it in profile.</source>
        <translation>Die Biegung liegt in der Ebene selbst: keine Kantenansicht zeigt sie im Profil.</translation>
    </message>
    <message>
        <source>There is no surface of atrium and appendage: how they overlap in a view is not told.</source>
        <translation>Es gibt keine Oberfläche von Vorhof und Vorhofohr: wie sie sich in einer Ansicht überdecken, wird nicht gesagt.</translation>
    </message>
    <message>
        <source>Cannot predict angles of the C-arm: the CT does not tell how the patient lay ((0018,5100) PatientPosition is absent or empty).</source>
        <translation>Winkel des C-Bogens lassen sich nicht voraussagen: das CT sagt nicht, wie der Patient lag ((0018,5100) PatientPosition fehlt oder ist leer).</translation>
    </message>
    <message>
        <source>If the patient lay on the back, state it by an offset of 0 degrees.</source>
        <translation>Lag der Patient auf dem Rücken, ist das durch eine Abweichung von 0 Grad anzugeben.</translation>
    </message>
    <message>
        <source>Cannot predict angles of the C-arm: at CT the patient lay %1 ((0018,5100) PatientPosition is "%2"), and the heart lies otherwise than on the back.</source>
        <translation>Winkel des C-Bogens lassen sich nicht voraussagen: beim CT lag der Patient %1 ((0018,5100) PatientPosition ist „%2“), und das Herz liegt dann anders als auf dem Rücken.</translation>
    </message>
    <message>
        <source>State an offset of the patient to predict all the same.</source>
        <translation>Für eine Voraussage trotzdem die Abweichung der Lagerung angeben.</translation>
    </message>
    <message>
        <source>Cannot use the reach of the C-arm: all limits are 0 degrees, which leaves one view only.</source>
        <translation>Die Reichweite des C-Bogens ist so nicht brauchbar: alle Grenzen sind 0 Grad, das lässt nur eine Ansicht.</translation>
    </message>
    <message>
        <source>Set how far the arm can be turned.</source>
        <translation>Angeben, wie weit der Bogen gedreht werden kann.</translation>
    </message>
    <message>
        <source>on the face</source>
        <translation>auf dem Bauch</translation>
    </message>
    <message>
        <source>on the left side</source>
        <translation>auf der linken Seite</translation>
    </message>
    <message>
        <source>on the right side</source>
        <translation>auf der rechten Seite</translation>
    </message>
    <message>
        <source>in an unusual position</source>
        <translation>in ungewöhnlicher Lage</translation>
    </message>
    <message>
        <source>No answer yet: the appendage is not measured, so nothing is known of its ostium and axis.</source>
        <translation>Noch keine Antwort: Das Vorhofohr ist nicht gemessen, Ostium und Achse sind also nicht bekannt.</translation>
    </message>
    <message>
        <source>No answer for the repair yet: the mitral annulus is not marked, so no height is known.</source>
        <translation>Noch keine Antwort für die Reparatur: Der Mitralanulus ist nicht markiert, also ist keine Höhe bekannt.</translation>
    </message>
    <message>
        <source>No answer for the repair yet: no point of coaptation is marked, and the height band counts from there.</source>
        <translation>Noch keine Antwort für die Reparatur: Kein Punkt der Koaptation ist markiert, und von dort zählt der Höhenbereich.</translation>
    </message>
    <message>
        <source>No place of this fossa lies %1 to %2 %3: it reaches from %4 to %5.</source>
        <translation>Kein Ort dieser Fossa liegt %1 bis %2 %3: Sie reicht von %4 bis %5.</translation>
    </message>
    <message>
        <source>Check the marks, the datum and the band before anything is concluded.</source>
        <translation>Marken, Bezug und Bereich sind zu prüfen, bevor etwas gefolgert wird.</translation>
    </message>
    <message>
        <source>No repair of the mitral valve is planned: only the closure counts.</source>
        <translation>Eine Reparatur der Mitralklappe ist nicht geplant: Es zählt nur der Verschluss.</translation>
    </message>
    <message>
        <source>Over %1 of the fossa's area a straight sheath arrives within %2 of the appendage's proximal axis.</source>
        <translation>Auf %1 der Fossafläche trifft eine gerade Schleuse innerhalb von %2 der proximalen Achse des Vorhofohrs ein.</translation>
    </message>
    <message>
        <source>No straight sheath through this fossa arrives within %1 of the appendage's proximal axis; a steerable one does so over %2 of its area, by a bend of radius %3.</source>
        <translation>Keine gerade Schleuse durch diese Fossa trifft innerhalb von %1 der proximalen Achse des Vorhofohrs ein; eine steuerbare tut es auf %2 ihrer Fläche, mit einem Bogen vom Radius %3.</translation>
    </message>
    <message>
        <source>No crossing of this fossa lets the sheath arrive within %1 of the appendage's proximal axis: by a straight one the least is %2.</source>
        <translation>Keine Punktion dieser Fossa lässt die Schleuse innerhalb von %1 der proximalen Achse des Vorhofohrs eintreffen: Gerade sind es mindestens %2.</translation>
    </message>
    <message>
        <source>One crossing can serve both: %1 of the fossa's area lie %2 to %3 %4 and let a straight sheath arrive within %5 of the appendage's proximal axis.</source>
        <translation>Eine Punktion kann beidem dienen: %1 der Fossafläche liegen %2 bis %3 %4 und lassen eine gerade Schleuse innerhalb von %5 der proximalen Achse des Vorhofohrs eintreffen.</translation>
    </message>
    <message>
        <source>One crossing can serve both if the closure uses a steerable sheath: by a straight one no place that lies %1 to %2 %3 arrives within %4 of the appendage's proximal axis.</source>
        <translation>Eine Punktion kann beidem dienen, wenn der Verschluss eine steuerbare Schleuse benutzt: Gerade trifft kein Ort, der %1 bis %2 %3 liegt, innerhalb von %4 der proximalen Achse des Vorhofohrs ein.</translation>
    </message>
    <message>
        <source>By a bend of radius %1 a crossing serves both over %2 of the fossa's area.</source>
        <translation>Mit einem Bogen vom Radius %1 dient eine Punktion auf %2 der Fossafläche beidem.</translation>
    </message>
    <message>
        <source>No single crossing serves both, also not with a steerable sheath.</source>
        <translation>Keine einzelne Punktion dient beidem, auch nicht mit einer steuerbaren Schleuse.</translation>
    </message>
    <message>
        <source>No single crossing serves both with a straight sheath.</source>
        <translation>Keine einzelne Punktion dient mit gerader Schleuse beidem.</translation>
    </message>
    <message>
        <source>The closure asks for a second, lower crossing: places within %1 of the appendage's proximal axis begin at %2, where the repair asks for %3 to %4 %5.</source>
        <translation>Der Verschluss verlangt eine zweite, tiefere Punktion: Orte innerhalb von %1 der proximalen Achse des Vorhofohrs beginnen bei %2, während die Reparatur %3 bis %4 %5 verlangt.</translation>
    </message>
    <message>
        <source>Cross for the repair and close last: plan the closure anew from where the sheath then lies.</source>
        <translation>Für die Reparatur punktieren und zuletzt verschließen: Der Verschluss ist von dort neu zu planen, wo die Schleuse dann liegt.</translation>
    </message>
    <message>
        <source>The place with most room is %1: %2 %3, %4 to the axis by a straight sheath, %5 to where it no longer serves.</source>
        <translation>Der Ort mit dem meisten Raum ist %1: %2 %3, mit gerader Schleuse %4 zur Achse, %5 bis dorthin, wo er nicht mehr dient.</translation>
    </message>
    <message>
        <source>The place with most room is %1: %2 to the axis by a straight sheath, %3 to where it no longer serves.</source>
        <translation>Der Ort mit dem meisten Raum ist %1: mit gerader Schleuse %2 zur Achse, %3 bis dorthin, wo er nicht mehr dient.</translation>
    </message>
    <message>
        <source>This rests on %1 points of the fossa's rim (%2 from their plane, root mean square).</source>
        <translation>Das beruht auf %1 Punkten am Rand der Fossa (%2 von ihrer Ebene, quadratisches Mittel).</translation>
    </message>
    <message>
        <source>This rests on %1 points of the fossa's rim (%2 from their plane, root mean square), %3 of the mitral annulus (%4).</source>
        <translation>Das beruht auf %1 Punkten am Rand der Fossa (%2 von ihrer Ebene, quadratisches Mittel), %3 am Mitralanulus (%4).</translation>
    </message>
    <message>
        <source>This rests on %1 points of the fossa's rim (%2 from their plane, root mean square), %3 of the mitral annulus (%4), %5 of the coaptation.</source>
        <translation>Das beruht auf %1 Punkten am Rand der Fossa (%2 von ihrer Ebene, quadratisches Mittel), %3 am Mitralanulus (%4), %5 der Koaptation.</translation>
    </message>
    <message>
        <source>It is geometry on one phase of the CT; the local protocol and the operator decide.</source>
        <translation>Es ist Geometrie auf einer Phase des CT; das örtliche Protokoll und der Untersucher entscheiden.</translation>
    </message>
    <message>
        <source>With a steerable sheath of radius %1 one crossing would serve both, over %2 of the fossa's area.</source>
        <translation>Mit einer steuerbaren Schleuse vom Radius %1 würde eine Punktion beidem dienen, auf %2 der Fossafläche.</translation>
    </message>
    <message>
        <source>Little room: the best place lies %1 from where a crossing no longer serves, less than a needle is placed to.</source>
        <translation>Wenig Raum: Der beste Ort liegt %1 von dort, wo eine Punktion nicht mehr dient, weniger, als eine Nadel genau gesetzt wird.</translation>
    </message>
    <message>
        <source>The fossa's rim is marked by %1 points only; its outline between them is a guess.</source>
        <translation>Der Rand der Fossa ist nur mit %1 Punkten markiert; sein Verlauf dazwischen ist geraten.</translation>
    </message>
    <message>
        <source>The points of the fossa's rim lie %1 from their plane (root mean square): look at them again.</source>
        <translation>Die Punkte am Rand der Fossa liegen %1 von ihrer Ebene (quadratisches Mittel): noch einmal ansehen.</translation>
    </message>
    <message>
        <source>No aortic root is marked: which side of the fossa is anterior is told by the patient's axes alone.</source>
        <translation>Keine Aortenwurzel ist markiert: Welche Seite der Fossa vorn ist, sagen allein die Achsen des Patienten.</translation>
    </message>
    <message>
        <source>The mitral annulus is marked by %1 points only; its plane rests on little.</source>
        <translation>Der Mitralanulus ist nur mit %1 Punkten markiert; seine Ebene beruht auf wenig.</translation>
    </message>
    <message>
        <source>The points of the mitral annulus lie %1 from their plane (root mean square): look at them again.</source>
        <translation>Die Punkte des Mitralanulus liegen %1 von ihrer Ebene (quadratisches Mittel): noch einmal ansehen.</translation>
    </message>
    <message>
        <source>The leaflets meet %1 below the plane of the annulus: heights over the one and the other are not the same.</source>
        <translation>Die Segel treffen sich %1 unter der Anulusebene: Höhen über dem einen und dem anderen sind nicht dieselben.</translation>
    </message>
    <message>
        <source>Name the datum.</source>
        <translation>Der Bezug ist zu nennen.</translation>
    </message>
    <message>
        <source>The crossing is %1.</source>
        <translation>Die Punktionsstelle ist %1.</translation>
    </message>
    <message>
        <source>It lies %1 %2.</source>
        <translation>Sie liegt %1 %2.</translation>
    </message>
    <message>
        <source>The ostium's centre is %1 away, at %2 to the appendage's proximal axis.</source>
        <translation>Die Mitte des Ostiums ist %1 entfernt, unter %2 zur proximalen Achse des Vorhofohrs.</translation>
    </message>
    <message>
        <source>It serves the repair.</source>
        <translation>Sie dient der Reparatur.</translation>
    </message>
    <message>
        <source>It does not serve the repair.</source>
        <translation>Sie dient der Reparatur nicht.</translation>
    </message>
    <message>
        <source>It serves the closure.</source>
        <translation>Sie dient dem Verschluss.</translation>
    </message>
    <message>
        <source>It serves the closure with a steerable sheath only.</source>
        <translation>Sie dient dem Verschluss nur mit einer steuerbaren Schleuse.</translation>
    </message>
    <message>
        <source>It does not serve the closure.</source>
        <translation>Sie dient dem Verschluss nicht.</translation>
    </message>
    <message>
        <source>It serves repair and closure.</source>
        <translation>Sie dient Reparatur und Verschluss.</translation>
    </message>
    <message>
        <source>It serves the repair, and the closure with a steerable sheath only.</source>
        <translation>Sie dient der Reparatur, dem Verschluss nur mit einer steuerbaren Schleuse.</translation>
    </message>
    <message>
        <source>It serves the repair, not the closure.</source>
        <translation>Sie dient der Reparatur, nicht dem Verschluss.</translation>
    </message>
    <message>
        <source>It serves the closure, not the repair.</source>
        <translation>Sie dient dem Verschluss, nicht der Reparatur.</translation>
    </message>
    <message>
        <source>It serves the closure with a steerable sheath only, and not the repair.</source>
        <translation>Sie dient dem Verschluss nur mit einer steuerbaren Schleuse, und nicht der Reparatur.</translation>
    </message>
    <message>
        <source>It serves neither the repair nor the closure.</source>
        <translation>Sie dient weder der Reparatur noch dem Verschluss.</translation>
    </message>
    <message>
        <source>Cannot cross the septum there: the place lies %1 outside the fossa's outline, towards the %2 (%3).</source>
        <translation>Dort kann das Septum nicht durchquert werden: Der Ort liegt %1 außerhalb des Umrisses der Fossa, Richtung %2 (%3).</translation>
    </message>
    <message>
        <source>Choose a place within the outline, or correct the marks of the rim.</source>
        <translation>Einen Ort innerhalb des Umrisses wählen oder die Marken des Randes berichtigen.</translation>
    </message>
    <message>
        <source>No bend of radius %1 leads from this crossing to the ostium: the line to it leaves the septum at %2 where %3 are allowed, and over %4 no bend makes up for that.</source>
        <translation>Kein Bogen vom Radius %1 führt von dieser Punktionsstelle zum Ostium: Die Linie dorthin verlässt das Septum unter %2, wo %3 erlaubt sind, und über %4 gleicht kein Bogen das aus.</translation>
    </message>
    <message>
        <source>over the plane of the mitral annulus</source>
        <translation>über der Ebene des Mitralanulus</translation>
    </message>
    <message>
        <source>over the level of coaptation, parallel to the septum</source>
        <translation>über der Höhe der Koaptation, parallel zum Septum</translation>
    </message>
    <message>
        <source>inferior-posterior</source>
        <translation>unten hinten</translation>
    </message>
    <message>
        <source>inferior-central</source>
        <translation>unten in der Mitte</translation>
    </message>
    <message>
        <source>inferior-anterior</source>
        <translation>unten vorn</translation>
    </message>
    <message>
        <source>central</source>
        <translation>in der Mitte</translation>
    </message>
    <message>
        <source>superior-posterior</source>
        <translation>oben hinten</translation>
    </message>
    <message>
        <source>superior-central</source>
        <translation>oben in der Mitte</translation>
    </message>
    <message>
        <source>superior-anterior</source>
        <translation>oben vorn</translation>
    </message>
    <message>
        <source>aortic-root side (anterior)</source>
        <translation>Aortenwurzel (vorn)</translation>
    </message>
    <message>
        <source>posterior wall</source>
        <translation>Hinterwand</translation>
    </message>
    <message>
        <source>superior side</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>inferior side</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>told by the marked aortic root</source>
        <translation>nach der markierten Aortenwurzel</translation>
    </message>
    <message>
        <source>told by the patient's axes: no aortic root is marked</source>
        <translation>nach den Achsen des Patienten: keine Aortenwurzel ist markiert</translation>
    </message>
    <message>
        <source>over the level of coaptation, parallel to the septum, by marked points on CT</source>
        <translation>über der Höhe der Koaptation, parallel zum Septum, nach markierten Punkten im CT</translation>
    </message>
    <message>
        <source>over the plane of the mitral annulus, by marked points on CT</source>
        <translation>über der Ebene des Mitralanulus, nach markierten Punkten im CT</translation>
    </message>
    <message>
        <source>from the crossing to the ostium's centre on CT</source>
        <translation>von der Punktionsstelle zur Mitte des Ostiums im CT</translation>
    </message>
    <message>
        <source>line from the crossing to the ostium's centre against the proximal axis on CT</source>
        <translation>Linie von der Punktionsstelle zur Mitte des Ostiums gegen die proximale Achse im CT</translation>
    </message>
    <message>
        <source>arrival of a steerable sheath of the set radius against the proximal axis on CT</source>
        <translation>Eintreffen einer steuerbaren Schleuse des eingestellten Radius gegen die proximale Achse im CT</translation>
    </message>
    <message>
        <source>Size %1 finds no room along the sheath: at the landing zone %2 stands in its way.</source>
        <translation>Größe %1 findet entlang der Schleuse keinen Platz: An der Landezone steht im Weg: %2.</translation>
    </message>
    <message>
        <source>Size %1 finds no room along the sheath: square to it the landing zone leaves %2 by the chart's own measure, and its narrowest width is %3.</source>
        <translation>Größe %1 findet entlang der Schleuse keinen Platz: Senkrecht zu ihr lässt die Landezone nach dem eigenen Maß der Tabelle %2, und die kleinste Weite der Größe ist %3.</translation>
    </message>
    <message>
        <source>The landing plane itself, %1 degrees off that direction, measures %2.</source>
        <translation>Die Landeebene selbst, die um %1 Grad von dieser Richtung abweicht, misst %2.</translation>
    </message>
    <message>
        <source>They land at the plug plane, %1 beyond the ridge.</source>
        <translation>Sie landen an der Pfropfebene, %1 jenseits der Leiste.</translation>
    </message>
    <message>
        <source>At the landing zone, size %1 being %2 wide in place by the chart's own measure: above %3; below %4.</source>
        <translation>An der Landezone, Größe %1 dort nach dem eigenen Maß der Tabelle %2 weit: oben %3; unten %4.</translation>
    </message>
    <message>
        <source>%1 open</source>
        <translation>%1 offen</translation>
    </message>
    <message>
        <source>wall pressed out by %1</source>
        <translation>Wand um %1 nach außen gedrückt</translation>
    </message>
    <message>
        <source>width of the CT contour at %1, parallel rays</source>
        <translation>Breite der CT-Kontur bei %1, parallele Strahlen</translation>
    </message>
    <message>
        <source>the appendage's narrowing below %1</source>
        <translation>das Vorhofohr, das dort enger als %1 wird</translation>
    </message>
    <message>
        <source>a trabecula or fold on the %1 side</source>
        <translation>Trabekel oder Falte, Seite: %1</translation>
    </message>
    <message>
        <source>it touches the wall</source>
        <translation>sie berührt die Wand</translation>
    </message>
    <message>
        <source>angles of the C-arm, best view within its reach for: %1</source>
        <translation>Winkel des C-Bogens, beste Ansicht innerhalb seiner Reichweite für: %1</translation>
    </message>
    <message>
        <source>longest width</source>
        <translation>längste Breite</translation>
    </message>
    <message>
        <source>shortest width</source>
        <translation>kürzeste Breite</translation>
    </message>
    <message>
        <source>bend in profile</source>
        <translation>Biegung im Profil</translation>
    </message>
    <message>
        <source>least overlap with the atrium</source>
        <translation>kleinste Überdeckung durch den Vorhof</translation>
    </message>
    <message>
        <source>all aims in one view</source>
        <translation>alles in einer Ansicht</translation>
    </message>
    <message>
        <source>angles of the C-arm along the plane's normal</source>
        <translation>Winkel des C-Bogens entlang der Normalen der Ebene</translation>
    </message>
    <message>
        <source>angles of the C-arm, chosen by the person</source>
        <translation>Winkel des C-Bogens, von der Person gewählt</translation>
    </message>
    <message>
        <source>Cannot use the distances of the C-arm: from the source %1 to the isocentre and %2 to the detector; they must lie within %3 to %4, and the detector beyond the isocentre.</source>
        <translation>Die Abstände des C-Bogens können nicht verwendet werden: von der Quelle %1 bis zum Isozentrum und %2 bis zum Detektor; sie müssen zwischen %3 und %4 liegen und der Detektor jenseits des Isozentrums.</translation>
    </message>
</context>
<context>
    <name>CorrectContour</name>
    <message>
        <source>Correct a contour</source>
        <translation>Eine Kontur korrigieren</translation>
    </message>
</context>
<context>
    <name>CoursePage</name>
    <message>
        <source>The patient's course</source>
        <translation>Der Verlauf des Patienten</translation>
    </message>
    <message>
        <source>Pressures</source>
        <translation>Drücke</translation>
    </message>
    <message>
        <source>Typed readings</source>
        <translation>Eingetippt</translation>
    </message>
    <message>
        <source>Stasis</source>
        <translation>Stase</translation>
    </message>
    <message>
        <source>Release check</source>
        <translation>Freigabeprüfung</translation>
    </message>
    <message>
        <source>Scores</source>
        <translation>Scores</translation>
    </message>
    <message>
        <source>Decision</source>
        <translation>Entscheidung</translation>
    </message>
    <message>
        <source>Add a moment</source>
        <translation>Zeitpunkt hinzufügen</translation>
    </message>
    <message>
        <source>Add a moment with its pressures to the course</source>
        <translation>Einen Zeitpunkt mit seinen Drücken zum Verlauf hinzufügen</translation>
    </message>
    <message>
        <source>Type a reading in</source>
        <translation>Eine Messung eintippen</translation>
    </message>
    <message>
        <source>A number that was not measured here</source>
        <translation>Eine Zahl, die nicht hier gemessen wurde</translation>
    </message>
    <message>
        <source>Record stasis</source>
        <translation>Stase erfassen</translation>
    </message>
    <message>
        <source>Smoke, sludge, thrombus, emptying velocity at a stage</source>
        <translation>Spontankontrast, Sludge, Thrombus, Entleerungsgeschwindigkeit in einem Stadium</translation>
    </message>
    <message>
        <source>Record a look at the implant</source>
        <translation>Einen Blick auf das Implantat erfassen</translation>
    </message>
    <message>
        <source>The checks before and after release</source>
        <translation>Die Prüfungen vor und nach der Freigabe</translation>
    </message>
</context>
<context>
    <name>CrossSectionChoice</name>
    <message>
        <source>Cross-section at</source>
        <translation>Querschnitt:</translation>
    </message>
    <message>
        <source>Ostium</source>
        <translation>Ostium</translation>
    </message>
    <message>
        <source>Cross-section at the ostium (key O)</source>
        <translation>Querschnitt am Ostium (Taste O)</translation>
    </message>
    <message>
        <source>Landing zone</source>
        <translation>Landezone</translation>
    </message>
    <message>
        <source>Cross-section at the landing zone (key L)</source>
        <translation>Querschnitt in der Landezone (Taste L)</translation>
    </message>
</context>
<context>
    <name>CrossSectionView</name>
    <message>
        <source>Measuring …</source>
        <translation>Es wird gemessen …</translation>
    </message>
    <message>
        <source>The cross-section appears here once the appendage is measured.</source>
        <translation>Der Querschnitt erscheint hier, sobald das Vorhofohr gemessen ist.</translation>
    </message>
    <message>
        <source>%1, contour corrected by hand</source>
        <translation>%1, Kontur von Hand korrigiert</translation>
    </message>
    <message>
        <source>%1, corrected contour stale until confirmed: its plane moved</source>
        <translation>%1, korrigierte Kontur veraltet bis zur Bestätigung: ihre Ebene wurde bewegt</translation>
    </message>
    <message>
        <source>The contours of the ostium and of the landing zone can be corrected: show one of them (key O or L) first.</source>
        <translation>Korrigiert werden können die Konturen von Ostium und Landezone: zuerst eine davon zeigen (Taste O oder L).</translation>
    </message>
    <message>
        <source>Correct the contour by hand, or leave it</source>
        <translation>Die Kontur von Hand korrigieren, oder das beenden</translation>
    </message>
    <message>
        <source>Refit the contour to the image</source>
        <translation>Die Kontur neu an das Bild anpassen</translation>
    </message>
    <message>
        <source>Restore the contour that was found</source>
        <translation>Die gefundene Kontur wiederherstellen</translation>
    </message>
    <message>
        <source>Confirm the corrected contour on its moved plane</source>
        <translation>Die korrigierte Kontur auf ihrer bewegten Ebene bestätigen</translation>
    </message>
    <message>
        <source>%1 (key %2)</source>
        <translation>%1 (Taste %2)</translation>
    </message>
    <message>
        <source>Correct the contour by an ellipse with handles</source>
        <translation>Kontur durch eine Ellipse mit Griffen korrigieren</translation>
    </message>
</context>
<context>
    <name>Database</name>
    <message>
        <source>Cannot open the case library at %1: the database driver %2 is not installed. Install the package %3.</source>
        <translation>Die Fallbibliothek in %1 kann nicht geöffnet werden: der Datenbanktreiber %2 ist nicht installiert. Das Paket %3 installieren.</translation>
    </message>
    <message>
        <source>Cannot open the case library at %1: %2</source>
        <translation>Die Fallbibliothek in %1 kann nicht geöffnet werden: %2</translation>
    </message>
    <message>
        <source>its folder cannot be made. Choose a folder that you may write to.</source>
        <translation>ihr Ordner kann nicht angelegt werden. Einen beschreibbaren Ordner wählen.</translation>
    </message>
    <message>
        <source>its folder is read-only for you, so nothing could be saved. Choose a folder that you may write to.</source>
        <translation>ihr Ordner ist für Sie schreibgeschützt, also ließe sich nichts sichern. Einen beschreibbaren Ordner wählen.</translation>
    </message>
    <message>
        <source>the file is read-only for you, so nothing could be saved. Have its permissions changed, or choose another file.</source>
        <translation>die Datei ist für Sie schreibgeschützt, also ließe sich nichts sichern. Ihre Rechte ändern lassen oder eine andere Datei wählen.</translation>
    </message>
    <message>
        <source>the file cannot be made. Choose a folder that you may write to.</source>
        <translation>die Datei kann nicht angelegt werden. Einen beschreibbaren Ordner wählen.</translation>
    </message>
    <message>
        <source>the file is a database, but not a case library, or its first page is damaged. Nothing was changed in it. Choose another file, or bring back a copy.</source>
        <translation>die Datei ist eine Datenbank, aber keine Fallbibliothek, oder ihre erste Seite ist beschädigt. Nichts wurde darin geändert. Eine andere Datei wählen oder eine Kopie zurückholen.</translation>
    </message>
    <message>
        <source>this file system does not allow a write-ahead log. Keep the file on a local disk; for several computers use PostgreSQL.</source>
        <translation>dieses Dateisystem erlaubt kein vorausschreibendes Protokoll. Die Datei auf einer lokalen Platte halten; für mehrere Rechner PostgreSQL verwenden.</translation>
    </message>
    <message>
        <source>the server does not let us in (%1). Check host, database and user in the settings, and that the password stands in your password file or service file.</source>
        <translation>der Server lässt uns nicht ein (%1). Rechner, Datenbank und Benutzer in den Einstellungen prüfen, und dass das Passwort in Ihrer Passwort- oder Dienstdatei steht.</translation>
    </message>
    <message>
        <source>the disk is full for you, or does not let us write. Free some space, then try again.</source>
        <translation>die Platte ist für Sie voll oder lässt uns nicht schreiben. Platz schaffen, dann erneut versuchen.</translation>
    </message>
    <message>
        <source>another program has held the library for more than 5 s. Try again.</source>
        <translation>ein anderes Programm hält die Bibliothek seit mehr als 5 s. Erneut versuchen.</translation>
    </message>
    <message>
        <source>the library is read-only. Have its permissions changed, then try again.</source>
        <translation>die Bibliothek ist schreibgeschützt. Ihre Rechte ändern lassen, dann erneut versuchen.</translation>
    </message>
    <message>
        <source>the disk does not read or write (SQLite code %1). Check that it is there and has space, then try again.</source>
        <translation>die Platte liest oder schreibt nicht (SQLite-Code %1). Prüfen, ob sie da ist und Platz hat, dann erneut versuchen.</translation>
    </message>
    <message>
        <source>the library's file is damaged (SQLite code %1). Nothing was changed. Rescue the whole cases into a new library, or bring back a copy.</source>
        <translation>die Datei der Bibliothek ist beschädigt (SQLite-Code %1). Nichts wurde geändert. Die heilen Fälle in eine neue Bibliothek retten oder eine Kopie zurückholen.</translation>
    </message>
    <message>
        <source>the disk is full. Free some space, then try again.</source>
        <translation>die Platte ist voll. Platz schaffen, dann erneut versuchen.</translation>
    </message>
    <message>
        <source>the file cannot be opened. Check the folder's permissions.</source>
        <translation>die Datei kann nicht geöffnet werden. Die Rechte des Ordners prüfen.</translation>
    </message>
    <message>
        <source>the database refused the statement (SQLite code %1).</source>
        <translation>die Datenbank wies die Anweisung ab (SQLite-Code %1).</translation>
    </message>
    <message>
        <source>the connection to the server is lost or was ended. Check the network, then open the library again.</source>
        <translation>die Verbindung zum Server ist verloren oder wurde beendet. Das Netz prüfen, dann die Bibliothek erneut öffnen.</translation>
    </message>
    <message>
        <source>the server is out of disk space or memory (code %1).</source>
        <translation>der Server hat keinen Platten- oder Arbeitsspeicher mehr (Code %1).</translation>
    </message>
    <message>
        <source>another person's change held this case too long. Try again.</source>
        <translation>die Änderung einer anderen Person hielt diesen Fall zu lange. Erneut versuchen.</translation>
    </message>
    <message>
        <source>the server found damaged data (code %1). Tell who looks after it.</source>
        <translation>der Server fand beschädigte Daten (Code %1). Denjenigen verständigen, der ihn betreut.</translation>
    </message>
    <message>
        <source>you may not write to this library (code %1).</source>
        <translation>Sie dürfen nicht in diese Bibliothek schreiben (Code %1).</translation>
    </message>
    <message>
        <source>the database refused the statement (code %1).</source>
        <translation>die Datenbank wies die Anweisung ab (Code %1).</translation>
    </message>
</context>
<context>
    <name>DecisionEditor</name>
    <message>
        <source>Decision</source>
        <translation>Entscheidung</translation>
    </message>
    <message>
        <source>What was decided, and why</source>
        <translation>Was entschieden wurde, und warum</translation>
    </message>
    <message>
        <source>Signed by</source>
        <translation>Unterschrieben von</translation>
    </message>
    <message>
        <source>Sign the decision</source>
        <translation>Die Entscheidung unterschreiben</translation>
    </message>
    <message>
        <source>Sign the words and the chosen size as they stand</source>
        <translation>Den Text und die gewählte Größe unterschreiben, wie sie stehen</translation>
    </message>
    <message>
        <source>Take the signature off</source>
        <translation>Die Unterschrift zurücknehmen</translation>
    </message>
    <message>
        <source>Nobody signs: write who signs.</source>
        <translation>Niemand unterschreibt: angeben, wer unterschreibt.</translation>
    </message>
    <message>
        <source>The decision was not signed. %1</source>
        <translation>Die Entscheidung wurde nicht unterschrieben. %1</translation>
    </message>
    <message>
        <source>Signed by %1 on %2 for size %3.</source>
        <translation>Unterschrieben von %1 am %2 für Größe %3.</translation>
    </message>
    <message>
        <source>Size %1 is chosen now: the signature is for another one. Sign again, or choose that size again.</source>
        <translation>Jetzt ist Größe %1 gewählt: die Unterschrift gilt für eine andere. Neu unterschreiben oder jene Größe wieder wählen.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>Draft. No size is chosen.</source>
        <translation>Entwurf. Keine Größe ist gewählt.</translation>
    </message>
    <message>
        <source>Draft, for size %1.</source>
        <translation>Entwurf, für Größe %1.</translation>
    </message>
    <message>
        <source>It cannot be signed yet:</source>
        <translation>Es kann noch nicht unterschrieben werden:</translation>
    </message>
</context>
<context>
    <name>DecisionTabs</name>
    <message>
        <source>Sizes</source>
        <translation>Größen</translation>
    </message>
    <message>
        <source>What next</source>
        <translation>Nächste Schritte</translation>
    </message>
    <message>
        <source>Card for the room</source>
        <translation>Karte für den Saal</translation>
    </message>
    <message>
        <source>Sizes, seat, what next, card for the room</source>
        <translation>Größen, Sitz, wie weiter, Karte für den Saal</translation>
    </message>
    <message>
        <source>Seat</source>
        <translation>Sitz</translation>
    </message>
</context>
<context>
    <name>DecisionWords</name>
    <message>
        <source>below 1 %</source>
        <translation>unter 1 %</translation>
    </message>
    <message>
        <source>above 99 %</source>
        <translation>über 99 %</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 bei %2</translation>
    </message>
    <message>
        <source>narrower than the appendage by %1</source>
        <translation>um %1 schmaler als das Vorhofohr</translation>
    </message>
    <message>
        <source>%1 compression</source>
        <translation>%1 Kompression</translation>
    </message>
    <message>
        <source>end-systole</source>
        <translation>Endsystole</translation>
    </message>
    <message>
        <source>another phase</source>
        <translation>andere Phase</translation>
    </message>
    <message>
        <source>phase not stated</source>
        <translation>Phase nicht angegeben</translation>
    </message>
    <message>
        <source>from the Doppler envelope</source>
        <translation>aus der Doppler-Hüllkurve</translation>
    </message>
    <message>
        <source>typed in</source>
        <translation>eingetippt</translation>
    </message>
    <message>
        <source>early phase</source>
        <translation>frühe Phase</translation>
    </message>
    <message>
        <source>delayed phase</source>
        <translation>späte Phase</translation>
    </message>
    <message>
        <source>passing: fasting, anaesthesia, ventilation, a diuretic</source>
        <translation>vorübergehend: Nüchternheit, Narkose, Beatmung, ein Diuretikum</translation>
    </message>
    <message>
        <source>lasting: regurgitation repaired</source>
        <translation>bleibend: Insuffizienz repariert</translation>
    </message>
    <message>
        <source>not known: both are shown</source>
        <translation>nicht bekannt: beide werden gezeigt</translation>
    </message>
    <message>
        <source>within</source>
        <translation>innerhalb</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>außerhalb</translation>
    </message>
    <message>
        <source>no range</source>
        <translation>kein Bereich</translation>
    </message>
    <message>
        <source>%1 to %2 (%3)</source>
        <translation>%1 bis %2 (%3)</translation>
    </message>
    <message>
        <source>at least %1 (%2)</source>
        <translation>mindestens %1 (%2)</translation>
    </message>
    <message>
        <source>at most %1 (%2)</source>
        <translation>höchstens %1 (%2)</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
</context>
<context>
    <name>DepthReadout</name>
    <message>
        <source>pointer, depth %1</source>
        <translation>Zeiger, Tiefe %1</translation>
    </message>
    <message>
        <source>area</source>
        <translation>Fläche</translation>
    </message>
    <message>
        <source>measuring …</source>
        <translation>wird gemessen …</translation>
    </message>
</context>
<context>
    <name>DepthStrip</name>
    <message>
        <source>Perimeter-derived width and its 95 % interval at</source>
        <translation>Umfangsbezogene Weite und ihr 95-%-Bereich bei</translation>
    </message>
    <message>
        <source>Width against depth along the axis, mm</source>
        <translation>Weite gegen Tiefe entlang der Achse, mm</translation>
    </message>
    <message>
        <source>usable depth %1</source>
        <translation>nutzbare Tiefe %1</translation>
    </message>
    <message>
        <source>size %1</source>
        <translation>Größe %1</translation>
    </message>
    <message>
        <source>perimeter-derived</source>
        <translation>umfangsbezogen</translation>
    </message>
    <message>
        <source>longest</source>
        <translation>längster</translation>
    </message>
    <message>
        <source>shortest</source>
        <translation>kürzester</translation>
    </message>
    <message>
        <source>%1, lowest (beyond the model)</source>
        <translation>%1, niedrigster (außerhalb des Modells)</translation>
    </message>
    <message>
        <source>%1, lowest</source>
        <translation>%1, niedrigster</translation>
    </message>
    <message>
        <source>%1, decision (beyond the model)</source>
        <translation>%1, Entscheidung (außerhalb des Modells)</translation>
    </message>
    <message>
        <source>%1, decision</source>
        <translation>%1, Entscheidung</translation>
    </message>
    <message>
        <source>%1, highest (beyond the model)</source>
        <translation>%1, höchster (außerhalb des Modells)</translation>
    </message>
    <message>
        <source>%1, highest</source>
        <translation>%1, höchster</translation>
    </message>
    <message>
        <source>%1 (%2–%3) mm</source>
        <comment>width and its interval of 95 %</comment>
        <translation>%1 (%2–%3) mm</translation>
    </message>
</context>
<context>
    <name>DepthStripView</name>
    <message>
        <source>Width against depth along the axis</source>
        <translation>Weite gegen Tiefe entlang der Achse</translation>
    </message>
    <message>
        <source>Click or left and right keys show a depth; drag the landing zone's marker, or hold Shift with the keys, to move it.</source>
        <translation>Klick oder Tasten links und rechts zeigen eine Tiefe; den Marker der Landezone ziehen, oder Umschalt mit den Tasten, um sie zu bewegen.</translation>
    </message>
</context>
<context>
    <name>Drawing</name>
    <message>
        <source>perimeter-derived %1</source>
        <translation>umfangsbezogen %1</translation>
    </message>
    <message>
        <source>longest %1</source>
        <translation>längster %1</translation>
    </message>
    <message>
        <source>shortest %1</source>
        <translation>kürzester %1</translation>
    </message>
    <message>
        <source>ostium, proposed</source>
        <translation>Ostium, vorgeschlagen</translation>
    </message>
    <message>
        <source>axial</source>
        <translation>axial</translation>
    </message>
    <message>
        <source>coronal</source>
        <translation>koronar</translation>
    </message>
    <message>
        <source>sagittal</source>
        <translation>sagittal</translation>
    </message>
    <message>
        <source>depth %1</source>
        <translation>Tiefe %1</translation>
    </message>
    <message>
        <source>plug plane, %1 beyond the ridge</source>
        <translation>Pfropfebene, %1 jenseits der Leiste</translation>
    </message>
    <message>
        <source>%1 %2, tilted %3</source>
        <translation>%1 %2, um %3 gekippt</translation>
    </message>
    <message>
        <source>size %1</source>
        <translation>Größe %1</translation>
    </message>
</context>
<context>
    <name>DrawingLayer</name>
    <message>
        <source>Label of the measurement</source>
        <translation>Beschriftung der Messung</translation>
    </message>
    <message>
        <source>Label</source>
        <translation>Beschriftung</translation>
    </message>
    <message>
        <source>not measured: no scale</source>
        <translation>nicht gemessen: kein Maßstab</translation>
    </message>
</context>
<context>
    <name>Drawings</name>
    <message>
        <source>straight line</source>
        <translation>gerade Linie</translation>
    </message>
    <message>
        <source>curved line</source>
        <translation>gekrümmte Linie</translation>
    </message>
    <message>
        <source>angle</source>
        <translation>Winkel</translation>
    </message>
    <message>
        <source>area</source>
        <translation>Fläche</translation>
    </message>
    <message>
        <source>ellipse</source>
        <translation>Ellipse</translation>
    </message>
    <message>
        <source>velocity</source>
        <translation>Geschwindigkeit</translation>
    </message>
    <message>
        <source>interval of time</source>
        <translation>Zeitabschnitt</translation>
    </message>
    <message>
        <source>envelope of velocities</source>
        <translation>Hüllkurve von Geschwindigkeiten</translation>
    </message>
    <message>
        <source>not in the table</source>
        <translation>nicht in der Tabelle</translation>
    </message>
    <message>
        <source>ostium width</source>
        <translation>Weite des Ostiums</translation>
    </message>
    <message>
        <source>landing zone width</source>
        <translation>Weite der Landezone</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>ostium contour</source>
        <translation>Kontur des Ostiums</translation>
    </message>
    <message>
        <source>landing zone contour</source>
        <translation>Kontur der Landezone</translation>
    </message>
    <message>
        <source>mitral inflow</source>
        <translation>Mitraleinstrom</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Its plane has moved: stale until confirmed (Enter)</source>
        <translation>Ihre Ebene wurde bewegt: veraltet bis zur Bestätigung (Enter)</translation>
    </message>
    <message>
        <source>Stale: what it was measured on has changed</source>
        <translation>Veraltet: worauf gemessen wurde, hat sich geändert</translation>
    </message>
</context>
<context>
    <name>EchoPage</name>
    <message>
        <source>%1 (key %2)</source>
        <translation>%1 (Taste %2)</translation>
    </message>
    <message>
        <source>One pass</source>
        <translation>Ein Durchgang</translation>
    </message>
    <message>
        <source>Measure the echo views one after the other</source>
        <translation>Die Echoansichten nacheinander messen</translation>
    </message>
    <message>
        <source>Ostium width</source>
        <translation>Weite des Ostiums</translation>
    </message>
    <message>
        <source>Draw the width of the ostium</source>
        <translation>Die Weite des Ostiums zeichnen</translation>
    </message>
    <message>
        <source>Landing-zone width</source>
        <translation>Weite der Landezone</translation>
    </message>
    <message>
        <source>Draw the width of the landing zone</source>
        <translation>Die Weite der Landezone zeichnen</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>Draw the depth from the ostium to the tip</source>
        <translation>Die Tiefe vom Ostium zur Spitze zeichnen</translation>
    </message>
    <message>
        <source>One view alone</source>
        <translation>Eine Ansicht allein</translation>
    </message>
    <message>
        <source>Show the view in hand alone, or all again</source>
        <translation>Die Ansicht allein zeigen, oder wieder alle</translation>
    </message>
    <message>
        <source>Calibrate</source>
        <translation>Eichen</translation>
    </message>
    <message>
        <source>Give the picture a scale: two clicks and a length</source>
        <translation>Dem Bild einen Maßstab geben: zwei Klicks und eine Länge</translation>
    </message>
    <message>
        <source>Show the echo views of this moment</source>
        <translation>Die Echoansichten dieses Zeitpunkts zeigen</translation>
    </message>
    <message>
        <source>The pass has ended. Undo takes back what was drawn.</source>
        <translation>Der Durchgang ist beendet. Rückgängig nimmt das Gezeichnete zurück.</translation>
    </message>
    <message>
        <source>There are no echo views in this case.</source>
        <translation>In diesem Fall gibt es keine Echoansichten.</translation>
    </message>
    <message>
        <source>%1 (%2 of %3): choose the frame with the comma and full stop keys and draw the %4: arrow keys and Space, or the mouse. S leaves it out, Enter goes to the next view, Escape ends the pass.</source>
        <translation>%1 (%2 von %3): mit Komma und Punkt das Bild wählen und %4 zeichnen, mit Pfeiltasten und Leertaste oder der Maus. S lässt sie aus, Enter geht zur nächsten Ansicht, Escape beendet den Durchgang.</translation>
    </message>
</context>
<context>
    <name>EchoPass</name>
    <message>
        <source>ostium width</source>
        <translation>Weite des Ostiums</translation>
    </message>
    <message>
        <source>landing-zone width</source>
        <translation>Weite der Landezone</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>length of its own</source>
        <translation>eigene Länge</translation>
    </message>
</context>
<context>
    <name>Edit</name>
    <message>
        <source>Move the landing zone</source>
        <translation>Die Landezone bewegen</translation>
    </message>
    <message>
        <source>Move the mark: %1</source>
        <translation>Markierung bewegen: %1</translation>
    </message>
    <message>
        <source>Mark: %1</source>
        <translation>Markierung: %1</translation>
    </message>
    <message>
        <source>Remove the mark: %1</source>
        <translation>Markierung entfernen: %1</translation>
    </message>
    <message>
        <source>Confirm the ostium</source>
        <translation>Das Ostium bestätigen</translation>
    </message>
    <message>
        <source>Release the ostium</source>
        <translation>Das Ostium freigeben</translation>
    </message>
    <message>
        <source>Mark a point: %1</source>
        <translation>Punkt markieren: %1</translation>
    </message>
    <message>
        <source>Move a point: %1</source>
        <translation>Punkt verschieben: %1</translation>
    </message>
    <message>
        <source>Remove a point: %1</source>
        <translation>Punkt entfernen: %1</translation>
    </message>
    <message>
        <source>Remove all points: %1</source>
        <translation>Alle Punkte entfernen: %1</translation>
    </message>
    <message>
        <source>Set the limits of the crossing</source>
        <translation>Grenzen der Punktion festlegen</translation>
    </message>
    <message>
        <source>Choose the septal crossing</source>
        <translation>Septumpunktion wählen</translation>
    </message>
    <message>
        <source>Give the septal crossing up</source>
        <translation>Septumpunktion aufgeben</translation>
    </message>
</context>
<context>
    <name>Evidence</name>
    <message>
        <source>pressure unknown</source>
        <translation>Druck unbekannt</translation>
    </message>
    <message>
        <source>LA mean %1, v wave %2</source>
        <translation>LA-Mitteldruck %1, v-Welle %2</translation>
    </message>
    <message>
        <source>LA mean %1</source>
        <translation>LA-Mitteldruck %1</translation>
    </message>
    <message>
        <source>%1, angle unknown</source>
        <translation>%1, Winkel unbekannt</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 (%2 of %3)</source>
        <translation>%1 (%2 von %3)</translation>
    </message>
    <message>
        <source>CT, pressure unknown</source>
        <translation>CT, Druck unbekannt</translation>
    </message>
    <message>
        <source>Lengths, areas, angles and Hounsfield values can be measured everywhere.</source>
        <translation>Längen, Flächen, Winkel und Hounsfield-Werte können überall gemessen werden.</translation>
    </message>
    <message>
        <source>Lengths, areas and angles can be measured within its calibrated regions; widths at known probe angles enter the ellipse of the views.</source>
        <translation>Längen, Flächen und Winkel können in den kalibrierten Bereichen gemessen werden; Weiten bei bekanntem Sondenwinkel gehen in die Ellipse der Ansichten ein.</translation>
    </message>
    <message>
        <source>Shown slice by slice. Lengths, areas and angles can be measured within a slice; it has no probe angle, so they do not enter the ellipse of the views.</source>
        <translation>Schicht für Schicht gezeigt. Längen, Flächen und Winkel können innerhalb einer Schicht gemessen werden; es gibt keinen Sondenwinkel, daher gehen sie nicht in die Ellipse der Ansichten ein.</translation>
    </message>
    <message>
        <source>Velocities, times and envelopes can be measured on the spectrum; lengths cannot.</source>
        <translation>Geschwindigkeiten, Zeiten und Hüllkurven können im Spektrum gemessen werden, Längen nicht.</translation>
    </message>
    <message>
        <source>Lengths and angles can be measured by the C-arm's geometry, or once a catheter or a known length has given the scale.</source>
        <translation>Längen und Winkel können nach der Geometrie des C-Bogens gemessen werden, oder sobald ein Katheter oder eine bekannte Länge den Maßstab gegeben hat.</translation>
    </message>
    <message>
        <source>Lengths can be measured once the person has given a scale.</source>
        <translation>Längen können gemessen werden, sobald jemand einen Maßstab angegeben hat.</translation>
    </message>
</context>
<context>
    <name>EvidenceModel</name>
    <message>
        <source>Echo</source>
        <translation>Echo</translation>
    </message>
    <message>
        <source>Fluoroscopy</source>
        <translation>Durchleuchtung</translation>
    </message>
    <message>
        <source>Images</source>
        <translation>Bilder</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>nicht gemessen</translation>
    </message>
    <message numerus="yes">
        <source>%n measurement(s)</source>
        <translation>
            <numerusform>%n Messung</numerusform>
            <numerusform>%n Messungen</numerusform>
        </translation>
    </message>
    <message>
        <source>Enter shows it; the context menu changes stage, moment, angle and phase</source>
        <translation>Enter zeigt es; das Kontextmenü ändert Stadium, Zeitpunkt, Winkel und Phase</translation>
    </message>
    <message>
        <source>phase %1</source>
        <translation>Phase %1</translation>
    </message>
    <message>
        <source>Measure this phase (double click or Enter)</source>
        <translation>Diese Phase messen (Doppelklick oder Enter)</translation>
    </message>
    <message>
        <source>Not used</source>
        <translation>Nicht verwendet</translation>
    </message>
    <message>
        <source>cannot be used</source>
        <translation>nicht verwendbar</translation>
    </message>
    <message>
        <source>Patient %1</source>
        <translation>Patient %1</translation>
    </message>
    <message>
        <source>Patient without a name, ID %1</source>
        <translation>Patient ohne Namen, ID %1</translation>
    </message>
    <message>
        <source>%1, ID %2</source>
        <translation>%1, ID %2</translation>
    </message>
    <message numerus="yes">
        <source>%n image(s)</source>
        <translation>
            <numerusform>%n Bild</numerusform>
            <numerusform>%n Bilder</numerusform>
        </translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>EvidencePanel</name>
    <message>
        <source>Evidence</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>Open folder …</source>
        <translation>Ordner öffnen …</translation>
    </message>
    <message>
        <source>Open a folder of DICOM images (Ctrl+O), or drop it on the window</source>
        <translation>Einen Ordner mit DICOM-Bildern öffnen (Ctrl+O), oder ihn auf das Fenster ziehen</translation>
    </message>
    <message>
        <source>Nothing is open. Drop a folder of DICOM images here.</source>
        <translation>Nichts ist geöffnet. Einen Ordner mit DICOM-Bildern hierher ziehen.</translation>
    </message>
    <message>
        <source>… and %1 more</source>
        <translation>… und %1 weitere</translation>
    </message>
    <message>
        <source>%1 (shown)</source>
        <translation>%1 (gezeigt)</translation>
    </message>
    <message>
        <source>Evidence: a stage earlier</source>
        <translation>Befund: ein Stadium früher</translation>
    </message>
    <message>
        <source>Evidence: a stage later</source>
        <translation>Befund: ein Stadium später</translation>
    </message>
    <message>
        <source>Evidence: probe angle …</source>
        <translation>Befund: Sondenwinkel …</translation>
    </message>
    <message numerus="yes">
        <source>%n other file(s) were left out.</source>
        <translation>
            <numerusform>%n andere Datei wurde ausgelassen.</numerusform>
            <numerusform>%n andere Dateien wurden ausgelassen.</numerusform>
        </translation>
    </message>
    <message>
        <source>Change the stage</source>
        <translation>Das Stadium ändern</translation>
    </message>
    <message>
        <source>Change the moment</source>
        <translation>Den Zeitpunkt ändern</translation>
    </message>
    <message>
        <source>Change the probe angle</source>
        <translation>Den Sondenwinkel ändern</translation>
    </message>
    <message>
        <source>Change the phase</source>
        <translation>Die Phase ändern</translation>
    </message>
    <message>
        <source>Probe angle</source>
        <translation>Sondenwinkel</translation>
    </message>
    <message>
        <source>Rotation of the probe's plane as the picture shows it, degrees:</source>
        <translation>Drehung der Sondenebene, wie das Bild sie zeigt, Grad:</translation>
    </message>
    <message>
        <source>Choose evidence in the list first.</source>
        <translation>Zuerst einen Befund in der Liste wählen.</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Stadium</translation>
    </message>
    <message>
        <source>Moment</source>
        <translation>Zeitpunkt</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Keiner</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>Nicht bekannt</translation>
    </message>
    <message>
        <source>Another angle … (Alt+A)</source>
        <translation>Anderer Winkel … (Alt+A)</translation>
    </message>
    <message>
        <source>Phase of the frames that are measured</source>
        <translation>Phase der gemessenen Bilder</translation>
    </message>
</context>
<context>
    <name>FirstPictureView</name>
    <message>
        <source>First picture of the CT that is being loaded</source>
        <translation>Erstes Bild der CT, die geladen wird</translation>
    </message>
    <message>
        <source>slice %1 of %2</source>
        <translation>Schicht %1 von %2</translation>
    </message>
    <message>
        <source>%1 of “%2”</source>
        <translation>%1 aus „%2“</translation>
    </message>
    <message>
        <source>%1, phase %2</source>
        <translation>%1, Phase %2</translation>
    </message>
    <message>
        <source>%1 % loaded. Measuring begins when all slices are here and their places are proved.</source>
        <translation>%1 % geladen. Gemessen wird, sobald alle Schichten da sind und ihre Lage bewiesen ist.</translation>
    </message>
</context>
<context>
    <name>FluoroPage</name>
    <message>
        <source>X-ray run</source>
        <translation>Röntgenlauf</translation>
    </message>
    <message>
        <source>Choose the X-ray run that is shown</source>
        <translation>Den gezeigten Röntgenlauf wählen</translation>
    </message>
    <message>
        <source>%1 (key %2)</source>
        <translation>%1 (Taste %2)</translation>
    </message>
    <message>
        <source>Ostium width</source>
        <translation>Weite des Ostiums</translation>
    </message>
    <message>
        <source>Draw the width of the ostium</source>
        <translation>Die Weite des Ostiums zeichnen</translation>
    </message>
    <message>
        <source>Landing-zone width</source>
        <translation>Weite der Landezone</translation>
    </message>
    <message>
        <source>Draw the width of the landing zone</source>
        <translation>Die Weite der Landezone zeichnen</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>Draw the depth from the ostium to the tip</source>
        <translation>Die Tiefe vom Ostium zur Spitze zeichnen</translation>
    </message>
    <message>
        <source>Known length</source>
        <translation>Bekannte Länge</translation>
    </message>
    <message>
        <source>Calibrate by two ends of a known length</source>
        <translation>Durch die zwei Enden einer bekannten Länge eichen</translation>
    </message>
    <message>
        <source>Catheter edges</source>
        <translation>Katheterränder</translation>
    </message>
    <message>
        <source>Calibrate by a click on either edge of a catheter</source>
        <translation>Durch einen Klick auf jeden Rand eines Katheters eichen</translation>
    </message>
    <message>
        <source>Catheter shadow</source>
        <translation>Katheterschatten</translation>
    </message>
    <message>
        <source>Calibrate by the program's own reading of a catheter's edges along a piece of it</source>
        <translation>Durch die programmeigene Ablesung der Katheterränder entlang eines Stücks eichen</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Drawn here: %1</source>
        <translation>Hier gezeichnet: %1</translation>
    </message>
    <message>
        <source>Not drawn on this run.</source>
        <translation>Auf diesem Lauf nicht gezeichnet.</translation>
    </message>
    <message>
        <source>CT predicts nothing: it is not measured.</source>
        <translation>CT sagt nichts voraus: es ist nicht gemessen.</translation>
    </message>
    <message>
        <source>CT predicts nothing: the file does not tell the C-arm's angles.</source>
        <translation>CT sagt nichts voraus: die Datei nennt die Winkel des C-Bogens nicht.</translation>
    </message>
    <message>
        <source>CT predicts at these angles: %1</source>
        <translation>CT sagt bei diesen Winkeln voraus: %1</translation>
    </message>
    <message>
        <source>The plane is turned by %1 from edge-on; of lengths along the axis %2 is seen.</source>
        <translation>Die Ebene ist um %1 aus der Kantenstellung gedreht; von Längen entlang der Achse ist %2 zu sehen.</translation>
    </message>
    <message>
        <source>There is no X-ray run in this case.</source>
        <translation>In diesem Fall gibt es keinen Röntgenlauf.</translation>
    </message>
    <message>
        <source>Nothing is open.</source>
        <translation>Nichts ist geöffnet.</translation>
    </message>
    <message>
        <source>C-arm: %1</source>
        <translation>C-Bogen: %1</translation>
    </message>
    <message>
        <source>The file does not tell the C-arm's angles for this frame.</source>
        <translation>Die Datei nennt die Winkel des C-Bogens für dieses Bild nicht.</translation>
    </message>
    <message>
        <source>Drawn here: %1. Foreshortening can only make it shorter.</source>
        <translation>Hier gezeichnet: %1. Verkürzung kann es nur kleiner machen.</translation>
    </message>
    <message>
        <source>%1 of CT</source>
        <translation>%1 der CT</translation>
    </message>
    <message>
        <source>Planned size</source>
        <translation>Geplante Größe</translation>
    </message>
    <message>
        <source>The outline of size %1, as it would sit by the CT, is laid over the frame by the line of the landing zone, or else of the ostium, that is drawn on it. A frame after release shows beside it how the implant lies.</source>
        <translation>Der Umriss der Größe %1, wie sie nach dem CT säße, liegt über dem Bild, angelegt an der darauf gezeichneten Linie der Landezone, sonst des Ostiums. Ein Bild nach der Freisetzung zeigt daneben, wie das Implantat liegt.</translation>
    </message>
    <message>
        <source>planned %1</source>
        <translation>geplant: %1</translation>
    </message>
</context>
<context>
    <name>GiveRole</name>
    <message>
        <source>Put a measurement into the table</source>
        <translation>Eine Messung in die Tabelle setzen</translation>
    </message>
</context>
<context>
    <name>Handles</name>
    <message>
        <source>Drag to move the ostium plane along its normal. Keys, while the ostium is shown (O): Alt+Left, Alt+Right; with Shift in finer steps.</source>
        <translation>Ziehen verschiebt die Ostiumebene entlang ihrer Normalen. Tasten, solange das Ostium gezeigt wird (O): Alt+Links, Alt+Rechts; mit Umschalt in feineren Schritten.</translation>
    </message>
    <message>
        <source>Drag to tilt the ostium plane. Keys, while the ostium is shown (O): Alt+Up, Alt+Down in the picture, Alt+Page Up, Alt+Page Down out of it; with Shift in finer steps.</source>
        <translation>Ziehen kippt die Ostiumebene. Tasten, solange das Ostium gezeigt wird (O): Alt+Auf, Alt+Ab im Bild, Alt+Bild auf, Alt+Bild ab aus dem Bild; mit Umschalt in feineren Schritten.</translation>
    </message>
    <message>
        <source>Drag to move the landing plane along the axis. Keys, while the landing zone is shown (L): Alt+Left, Alt+Right; with Shift in finer steps.</source>
        <translation>Ziehen verschiebt die Landeebene entlang der Achse. Tasten, solange die Landezone gezeigt wird (L): Alt+Links, Alt+Rechts; mit Umschalt in feineren Schritten.</translation>
    </message>
    <message>
        <source>Drag to tilt the landing plane. Keys, while the landing zone is shown (L): Alt+Up, Alt+Down in the picture, Alt+Page Up, Alt+Page Down out of it; with Shift in finer steps. Alt+Home sets it square to the axis.</source>
        <translation>Ziehen kippt die Landeebene. Tasten, solange die Landezone gezeigt wird (L): Alt+Auf, Alt+Ab im Bild, Alt+Bild auf, Alt+Bild ab aus dem Bild; mit Umschalt in feineren Schritten. Alt+Pos1 stellt sie senkrecht zur Achse.</translation>
    </message>
</context>
<context>
    <name>ImageView</name>
    <message>
        <source>slab of %1, mean</source>
        <translation>Schicht von %1, Mittelwert</translation>
    </message>
    <message>
        <source>slab of %1, maximum</source>
        <translation>Schicht von %1, Höchstwert</translation>
    </message>
</context>
<context>
    <name>KeyValues</name>
    <message>
        <source>Landing zone, perimeter-derived diameter</source>
        <translation>Landezone, umfangsbezogener Durchmesser</translation>
    </message>
    <message>
        <source>Landing zone, longest diameter</source>
        <translation>Landezone, längster Durchmesser</translation>
    </message>
    <message>
        <source>Landing zone, shortest diameter</source>
        <translation>Landezone, kürzester Durchmesser</translation>
    </message>
    <message>
        <source>Ostium, perimeter-derived diameter</source>
        <translation>Ostium, umfangsbezogener Durchmesser</translation>
    </message>
    <message>
        <source>Depth from the ostium plane</source>
        <translation>Tiefe ab der Ostiumebene</translation>
    </message>
</context>
<context>
    <name>LabelDrawing</name>
    <message>
        <source>Label a measurement</source>
        <translation>Eine Messung beschriften</translation>
    </message>
</context>
<context>
    <name>LandingEditor</name>
    <message>
        <source>Landing zone, mm beyond the ostium</source>
        <translation>Landezone, mm jenseits des Ostiums</translation>
    </message>
    <message>
        <source>Second landing plane, mm beyond the ostium</source>
        <translation>Zweite Landeebene, mm jenseits des Ostiums</translation>
    </message>
    <message>
        <source>Plug plane, mm beyond the ridge</source>
        <translation>Pfropfebene, mm jenseits der Leiste</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Zeigen</translation>
    </message>
    <message>
        <source>Show: %1</source>
        <translation>Zeigen: %1</translation>
    </message>
    <message>
        <source>Show the cross-section there</source>
        <translation>Den Querschnitt dort zeigen</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>Landing zone</source>
        <translation>Landezone</translation>
    </message>
    <message>
        <source>How far beyond the ostium along the axis the implant will hold</source>
        <translation>Wie weit jenseits des Ostiums entlang der Achse das Implantat halten wird</translation>
    </message>
    <message>
        <source>Second plane</source>
        <translation>Zweite Ebene</translation>
    </message>
    <message>
        <source>One more plane along the axis to compare with; empty: none</source>
        <translation>Eine weitere Ebene entlang der Achse zum Vergleich; leer: keine</translation>
    </message>
    <message>
        <source>Plug plane</source>
        <translation>Pfropfebene</translation>
    </message>
    <message>
        <source>Through the circumflex artery and the wall this far beyond the tip of the ridge; empty: none</source>
        <translation>Durch die Circumflexa und die Wand so weit jenseits der Spitze der Leiste; leer: keine</translation>
    </message>
    <message>
        <source>Mark the circumflex artery and the ridge first: the plug plane is placed by them</source>
        <translation>Markieren Sie zuerst die Circumflexa und die Leiste: sie legen die Pfropfebene fest</translation>
    </message>
</context>
<context>
    <name>LibraryDialog</name>
    <message>
        <source>No case matches. Change the words or the tag.</source>
        <translation>Kein Fall passt. Die Wörter oder das Schlagwort ändern.</translation>
    </message>
    <message>
        <source>The bin is empty.</source>
        <translation>Der Papierkorb ist leer.</translation>
    </message>
    <message>
        <source>No cases yet. Save an open case into the library, or import one from a file.</source>
        <translation>Noch keine Fälle. Einen offenen Fall in die Bibliothek sichern oder einen aus einer Datei einlesen.</translation>
    </message>
    <message>
        <source>All tags</source>
        <translation>Alle Schlagwörter</translation>
    </message>
    <message>
        <source>Choose a case to see its versions.</source>
        <translation>Einen Fall wählen, um seine Versionen zu sehen.</translation>
    </message>
    <message>
        <source>In the bin since %1.</source>
        <translation>Im Papierkorb seit %1.</translation>
    </message>
    <message>
        <source>Nobody edits this case.</source>
        <translation>Niemand bearbeitet diesen Fall.</translation>
    </message>
    <message>
        <source>You are editing this case.</source>
        <translation>Sie bearbeiten diesen Fall.</translation>
    </message>
    <message>
        <source>%1 on %2 is editing this case since %3. You can read it.</source>
        <translation>%1 auf %2 bearbeitet diesen Fall seit %3. Sie können ihn lesen.</translation>
    </message>
    <message>
        <source>%1 · %2 · %3</source>
        <translation>%1 · %2 · %3</translation>
    </message>
    <message>
        <source>Damaged: cannot be read</source>
        <translation>Beschädigt: nicht lesbar</translation>
    </message>
    <message>
        <source>Refused save, made from version %1</source>
        <translation>Abgewiesene Sicherung, aus Version %1</translation>
    </message>
    <message numerus="yes">
        <source>Present version, and %n edit(s) since</source>
        <translation>
            <numerusform>Gegenwärtige Version, und %n Änderung seither</numerusform>
            <numerusform>Gegenwärtige Version, und %n Änderungen seither</numerusform>
        </translation>
    </message>
    <message>
        <source>Present version</source>
        <translation>Gegenwärtige Version</translation>
    </message>
    <message>
        <source>&amp;Open for reading</source>
        <translation>Zum &amp;Lesen öffnen</translation>
    </message>
    <message>
        <source>&amp;Open</source>
        <translation>&amp;Öffnen</translation>
    </message>
    <message>
        <source>Take &amp;out of the bin</source>
        <translation>Aus dem Papierkorb &amp;holen</translation>
    </message>
    <message>
        <source>Move to the bi&amp;n</source>
        <translation>In den Papierkor&amp;b</translation>
    </message>
    <message>
        <source>%1 is editing this case.</source>
        <translation>%1 bearbeitet diesen Fall.</translation>
    </message>
    <message>
        <source>Version %1 is now version %2, the present one.</source>
        <translation>Version %1 ist jetzt Version %2, die gegenwärtige.</translation>
    </message>
    <message>
        <source>Forget a refused version</source>
        <translation>Eine abgewiesene Version vergessen</translation>
    </message>
    <message>
        <source>Version %1 was refused because somebody else had saved. Its text is kept nowhere else. Forget it for good?</source>
        <translation>Version %1 wurde abgewiesen, weil jemand anders gesichert hatte. Ihr Text steht sonst nirgends. Endgültig vergessen?</translation>
    </message>
    <message>
        <source>The case is back in the list.</source>
        <translation>Der Fall ist wieder in der Liste.</translation>
    </message>
    <message>
        <source>The case lies in the bin. Nothing is lost.</source>
        <translation>Der Fall liegt im Papierkorb. Nichts ist verloren.</translation>
    </message>
    <message>
        <source>Remove for good</source>
        <translation>Endgültig entfernen</translation>
    </message>
    <message>
        <source>This removes the case with all its versions from the library. It cannot be undone. Remove it?</source>
        <translation>Dies entfernt den Fall mit allen Versionen aus der Bibliothek. Es lässt sich nicht rückgängig machen. Entfernen?</translation>
    </message>
    <message>
        <source>The case was imported with all its versions.</source>
        <translation>Der Fall wurde mit allen Versionen eingelesen.</translation>
    </message>
    <message>
        <source>The case was exported to %1. The file holds the patient's name.</source>
        <translation>Der Fall wurde nach %1 ausgegeben. Die Datei enthält den Namen des Patienten.</translation>
    </message>
    <message>
        <source>Import a case</source>
        <translation>Einen Fall einlesen</translation>
    </message>
    <message>
        <source>Cases of a library (*%1)</source>
        <translation>Fälle einer Bibliothek (*%1)</translation>
    </message>
    <message>
        <source>case-%1</source>
        <translation>fall-%1</translation>
    </message>
    <message>
        <source>Export the case</source>
        <translation>Den Fall ausgeben</translation>
    </message>
    <message>
        <source>Search name, ID, date, title, tag</source>
        <translation>Name, ID, Datum, Titel, Schlagwort suchen</translation>
    </message>
    <message>
        <source>Search</source>
        <translation>Suchen</translation>
    </message>
    <message>
        <source>All words must be found. Key Ctrl+F</source>
        <translation>Alle Wörter müssen vorkommen. Taste Ctrl+F</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Schlagwort</translation>
    </message>
    <message>
        <source>Show the cases with this tag only</source>
        <translation>Nur Fälle mit diesem Schlagwort zeigen</translation>
    </message>
    <message>
        <source>Show the &amp;bin</source>
        <translation>&amp;Papierkorb zeigen</translation>
    </message>
    <message>
        <source>Cases</source>
        <translation>Fälle</translation>
    </message>
    <message>
        <source>Versions</source>
        <translation>Versionen</translation>
    </message>
    <message>
        <source>&amp;Read this version</source>
        <translation>Diese Version &amp;lesen</translation>
    </message>
    <message>
        <source>Ma&amp;ke it the present one</source>
        <translation>Zur &amp;gegenwärtigen machen</translation>
    </message>
    <message>
        <source>For&amp;get the refused version</source>
        <translation>Abgewiesene Version &amp;vergessen</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>Takes the case out of the bin again. Key Ctrl+Z</source>
        <translation>Holt den Fall wieder aus dem Papierkorb. Taste Ctrl+Z</translation>
    </message>
    <message>
        <source>&amp;Import …</source>
        <translation>&amp;Einlesen …</translation>
    </message>
    <message>
        <source>&amp;Export …</source>
        <translation>&amp;Ausgeben …</translation>
    </message>
    <message>
        <source>Remove for &amp;good …</source>
        <translation>&amp;Endgültig entfernen …</translation>
    </message>
    <message>
        <source>Key Enter</source>
        <translation>Taste Enter</translation>
    </message>
    <message>
        <source>Case library</source>
        <translation>Fallbibliothek</translation>
    </message>
    <message>
        <source>Key Alt+B</source>
        <translation>Taste Alt+B</translation>
    </message>
    <message>
        <source>The library was read whole: nothing is wrong with it.</source>
        <translation>Die Bibliothek wurde ganz gelesen: Alles ist in Ordnung.</translation>
    </message>
    <message numerus="yes">
        <source>%n thing(s) are wrong with the library: %1 Copy what is whole into a new library.</source>
        <translation>
            <numerusform>Eine Sache stimmt mit der Bibliothek nicht: %1 Kopieren Sie, was heil ist, in eine neue Bibliothek.</numerusform>
            <numerusform>%n Dinge stimmen mit der Bibliothek nicht: %1 Kopieren Sie, was heil ist, in eine neue Bibliothek.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n case(s) were copied to %1, each with its newest whole version. Choose this file in the settings to work with it.</source>
        <translation>
            <numerusform>Ein Fall wurde nach %1 kopiert, mit seiner neuesten heilen Version. Wählen Sie diese Datei in den Einstellungen, um damit zu arbeiten.</numerusform>
            <numerusform>%n Fälle wurden nach %1 kopiert, jeder mit seiner neuesten heilen Version. Wählen Sie diese Datei in den Einstellungen, um damit zu arbeiten.</numerusform>
        </translation>
    </message>
    <message>
        <source>A new library for what is whole</source>
        <translation>Eine neue Bibliothek für das, was heil ist</translation>
    </message>
    <message>
        <source>rescued.library</source>
        <translation>gerettet.library</translation>
    </message>
    <message>
        <source>Case libraries (*.library)</source>
        <translation>Fallbibliotheken (*.library)</translation>
    </message>
    <message>
        <source>&amp;Check …</source>
        <translation>&amp;Prüfen …</translation>
    </message>
    <message>
        <source>Read everything in the library and say what is wrong with it</source>
        <translation>Alles in der Bibliothek lesen und sagen, was damit nicht stimmt</translation>
    </message>
    <message>
        <source>Copy what is &amp;whole …</source>
        <translation>&amp;Heiles kopieren …</translation>
    </message>
    <message>
        <source>Copy the newest whole version of each case into a new library</source>
        <translation>Die neueste heile Version jedes Falls in eine neue Bibliothek kopieren</translation>
    </message>
</context>
<context>
    <name>LibraryDocument</name>
    <message>
        <source>Cannot open the case: the folder %1 cannot be made.</source>
        <translation>Der Fall kann nicht geöffnet werden: der Ordner %1 kann nicht angelegt werden.</translation>
    </message>
    <message>
        <source>%1 on %2 is editing this case, so it was opened for reading only.</source>
        <translation>%1 auf %2 bearbeitet diesen Fall, also wurde er nur zum Lesen geöffnet.</translation>
    </message>
    <message>
        <source>The case is damaged in the library: %1. This is what is whole of it.</source>
        <translation>Der Fall ist in der Bibliothek beschädigt: %1. Dies ist, was davon heil ist.</translation>
    </message>
    <message>
        <source>Cannot put the case into the library: it is there already.</source>
        <translation>Der Fall kann nicht in die Bibliothek gelegt werden: er ist schon dort.</translation>
    </message>
    <message>
        <source>Cannot save the case in the library: it is open for reading only.</source>
        <translation>Der Fall kann nicht in der Bibliothek gesichert werden: er ist nur zum Lesen geöffnet.</translation>
    </message>
    <message>
        <source>Cannot close the case: the library does not take its last edits. Save it as a file.</source>
        <translation>Der Fall kann nicht geschlossen werden: die Bibliothek nimmt seine letzten Änderungen nicht an. Als Datei sichern.</translation>
    </message>
</context>
<context>
    <name>LibraryModel</name>
    <message>
        <source>Damaged: do not trust</source>
        <translation>Beschädigt: nicht vertrauen</translation>
    </message>
    <message>
        <source>No name</source>
        <translation>Kein Name</translation>
    </message>
    <message>
        <source>You</source>
        <translation>Sie</translation>
    </message>
    <message>
        <source>Edited by %1 on %2 since %3</source>
        <translation>In Bearbeitung von %1 auf %2 seit %3</translation>
    </message>
    <message>
        <source>Patient</source>
        <translation>Patient</translation>
    </message>
    <message>
        <source>Patient ID</source>
        <translation>Patienten-ID</translation>
    </message>
    <message>
        <source>Born</source>
        <translation>Geboren</translation>
    </message>
    <message>
        <source>Studied</source>
        <translation>Untersucht</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Stadium</translation>
    </message>
    <message>
        <source>Tags</source>
        <translation>Schlagwörter</translation>
    </message>
    <message>
        <source>Changed</source>
        <translation>Geändert</translation>
    </message>
    <message>
        <source>Edited by</source>
        <translation>In Bearbeitung von</translation>
    </message>
</context>
<context>
    <name>LibraryPlace</name>
    <message>
        <source>service %1</source>
        <translation>Dienst %1</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation>%1 auf %2</translation>
    </message>
</context>
<context>
    <name>LibrarySettingsPart</name>
    <message>
        <source>A file of your own</source>
        <translation>Eine eigene Datei</translation>
    </message>
    <message>
        <source>A server of the team (PostgreSQL)</source>
        <translation>Ein Server des Teams (PostgreSQL)</translation>
    </message>
    <message>
        <source>&amp;Library</source>
        <translation>&amp;Bibliothek</translation>
    </message>
    <message>
        <source>Another library holds from the next start.</source>
        <translation>Eine andere Bibliothek gilt ab dem nächsten Start.</translation>
    </message>
    <message>
        <source>File of the library</source>
        <translation>Datei der Bibliothek</translation>
    </message>
    <message>
        <source>Choose …</source>
        <translation>Wählen …</translation>
    </message>
    <message>
        <source>Choose the file of the library; it is made where there is none</source>
        <translation>Die Datei der Bibliothek wählen; sie wird angelegt, wo keine ist</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>&amp;Host</source>
        <translation>&amp;Rechner</translation>
    </message>
    <message>
        <source>name or address of the server</source>
        <translation>Name oder Adresse des Servers</translation>
    </message>
    <message>
        <source>P&amp;ort</source>
        <translation>P&amp;ort</translation>
    </message>
    <message>
        <source>&amp;Database</source>
        <translation>&amp;Datenbank</translation>
    </message>
    <message>
        <source>as you are logged in here</source>
        <translation>wie Sie hier angemeldet sind</translation>
    </message>
    <message>
        <source>User na&amp;me</source>
        <translation>Benutzerna&amp;me</translation>
    </message>
    <message>
        <source>Encrypted</source>
        <translation>Verschlüsselt</translation>
    </message>
    <message>
        <source>Encrypted, and the server's certificate is checked</source>
        <translation>Verschlüsselt, und das Zertifikat des Servers wird geprüft</translation>
    </message>
    <message>
        <source>Not encrypted: patient data can be read on the way</source>
        <translation>Nicht verschlüsselt: Patientendaten können unterwegs gelesen werden</translation>
    </message>
    <message>
        <source>&amp;Connection</source>
        <translation>&amp;Verbindung</translation>
    </message>
    <message>
        <source>none: the server is the one above</source>
        <translation>keiner: es gilt der Server oben</translation>
    </message>
    <message>
        <source>A name in the service file of PostgreSQL (~/.pg_service.conf), which then says all the rest</source>
        <translation>Ein Name aus der Dienstdatei von PostgreSQL (~/.pg_service.conf), die dann alles Übrige sagt</translation>
    </message>
    <message>
        <source>&amp;Service file's name</source>
        <translation>Name in der &amp;Dienstdatei</translation>
    </message>
    <message>
        <source>The password is not kept here: PostgreSQL reads it from its own password file (~/.pgpass, readable by you alone), one line host:port:database:user:password.</source>
        <translation>Das Kennwort wird hier nicht aufbewahrt: PostgreSQL liest es aus seiner eigenen Kennwortdatei (~/.pgpass, nur für Sie lesbar), eine Zeile host:port:database:user:password.</translation>
    </message>
    <message>
        <source>&amp;Try the connection</source>
        <translation>Die Verbindung &amp;prüfen</translation>
    </message>
    <message>
        <source>Name the server's host first, or a name of the service file.</source>
        <translation>Nennen Sie zuerst den Rechner des Servers oder einen Namen aus der Dienstdatei.</translation>
    </message>
    <message>
        <source>Trying …</source>
        <translation>Es wird versucht …</translation>
    </message>
    <message>
        <source>The server answers: %1.</source>
        <translation>Der Server antwortet: %1.</translation>
    </message>
</context>
<context>
    <name>LibraryWindow</name>
    <message>
        <source>Case &amp;library …</source>
        <translation>Fall&amp;bibliothek …</translation>
    </message>
    <message>
        <source>&amp;Put the case into the library</source>
        <translation>Den Fall in die Bibliothek &amp;legen</translation>
    </message>
    <message>
        <source>Save a &amp;version in the library</source>
        <translation>Eine &amp;Version in der Bibliothek sichern</translation>
    </message>
    <message>
        <source>The case was opened from the library. Each edit is stored there as you make it.</source>
        <translation>Der Fall wurde aus der Bibliothek geöffnet. Jede Änderung wird dort sofort gespeichert.</translation>
    </message>
    <message>
        <source>The case is in the library. Each edit is stored there as you make it.</source>
        <translation>Der Fall liegt in der Bibliothek. Jede Änderung wird dort sofort gespeichert.</translation>
    </message>
    <message>
        <source>Saved as version %1 in the library.</source>
        <translation>Als Version %1 in der Bibliothek gesichert.</translation>
    </message>
    <message>
        <source>Somebody else</source>
        <translation>Jemand anders</translation>
    </message>
    <message>
        <source>%1 has the case now. Yours is kept as version %2 beside theirs.</source>
        <translation>%1 hat den Fall jetzt. Ihrer ist als Version %2 daneben aufbewahrt.</translation>
    </message>
    <message>
        <source>Two versions</source>
        <translation>Zwei Versionen</translation>
    </message>
    <message>
        <source>Both stay in the case library until you decide there which one is to be the present one.</source>
        <translation>Beide bleiben in der Fallbibliothek, bis Sie dort entscheiden, welche die jetzige sein soll.</translation>
    </message>
    <message>
        <source>Read &amp;theirs</source>
        <translation>&amp;Deren lesen</translation>
    </message>
    <message>
        <source>Read &amp;yours</source>
        <translation>&amp;Ihre lesen</translation>
    </message>
</context>
<context>
    <name>LongSectionView</name>
    <message>
        <source>Measuring the appendage …</source>
        <translation>Das Vorhofohr wird gemessen …</translation>
    </message>
    <message>
        <source>Mark the atrium and the tip of the appendage on the scanner-axis sections (key T): the appendage is then measured and shown along its own axis here.</source>
        <translation>Vorhof und Spitze des Vorhofohrs auf den Schnitten der Scannerachsen markieren (Taste T): dann wird das Vorhofohr gemessen und hier entlang seiner eigenen Achse gezeigt.</translation>
    </message>
    <message>
        <source>long section, turned %1°</source>
        <translation>Längsschnitt, um %1° gedreht</translation>
    </message>
</context>
<context>
    <name>MainWindow</name>
    <message>
        <source>Appendage axis</source>
        <translation>Ohrachse</translation>
    </message>
    <message>
        <source>Long section, cross-section and depth strip</source>
        <translation>Längsschnitt, Querschnitt und Tiefenstreifen</translation>
    </message>
    <message>
        <source>Scanner axes</source>
        <translation>Scannerachsen</translation>
    </message>
    <message>
        <source>Axial, coronal and sagittal sections, for marking</source>
        <translation>Axiale, koronare und sagittale Schnitte, zum Markieren</translation>
    </message>
    <message>
        <source>Open a folder of DICOM images</source>
        <translation>Einen Ordner mit DICOM-Bildern öffnen</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>&amp;Open folder …</source>
        <translation>Ordner &amp;öffnen …</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>Change between appendage axis and scanner axes</source>
        <translation>Zwischen Ohrachse und Scannerachsen wechseln</translation>
    </message>
    <message>
        <source>Cross-section at the ostium</source>
        <translation>Querschnitt am Ostium</translation>
    </message>
    <message>
        <source>Cross-section at the landing zone</source>
        <translation>Querschnitt in der Landezone</translation>
    </message>
    <message>
        <source>&amp;Fit all views</source>
        <translation>Alle Ansichten &amp;einpassen</translation>
    </message>
    <message>
        <source>&amp;Theme</source>
        <translation>&amp;Farben</translation>
    </message>
    <message>
        <source>&amp;Dark, for the reading room</source>
        <translation>&amp;Dunkel, für den Befundraum</translation>
    </message>
    <message>
        <source>&amp;Light, for print and bright rooms</source>
        <translation>&amp;Hell, für Druck und helle Räume</translation>
    </message>
    <message>
        <source>As the &amp;system</source>
        <translation>Wie das &amp;System</translation>
    </message>
    <message>
        <source>Hide &amp;names</source>
        <translation>&amp;Namen verbergen</translation>
    </message>
    <message>
        <source>&amp;Whole screen</source>
        <translation>&amp;Ganzer Schirm</translation>
    </message>
    <message>
        <source>&amp;Measure</source>
        <translation>&amp;Messen</translation>
    </message>
    <message>
        <source>Mark: %1</source>
        <translation>Markierung: %1</translation>
    </message>
    <message>
        <source>Leave marking</source>
        <translation>Markieren verlassen</translation>
    </message>
    <message>
        <source>&amp;Confirm or release the ostium</source>
        <translation>Ostium &amp;bestätigen oder freigeben</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>&amp;Cautions</source>
        <translation>&amp;Warnhinweise</translation>
    </message>
    <message>
        <source>&amp;About and licences</source>
        <translation>&amp;Über das Programm und Lizenzen</translation>
    </message>
    <message>
        <source>Case without names</source>
        <translation>Fall ohne Namen</translation>
    </message>
    <message>
        <source>Ostium Gauge</source>
        <translation>Ostium Gauge</translation>
    </message>
    <message>
        <source>&amp;Settings …</source>
        <translation>&amp;Einstellungen …</translation>
    </message>
    <message>
        <source>&amp;Meeting: large type on the whole screen</source>
        <translation>&amp;Besprechung: große Schrift auf dem ganzen Schirm</translation>
    </message>
    <message>
        <source>Report as P&amp;DF …</source>
        <translation>Bericht als P&amp;DF …</translation>
    </message>
    <message>
        <source>All &amp;files of the report …</source>
        <translation>Alle &amp;Dateien des Berichts …</translation>
    </message>
    <message>
        <source>&amp;Print …</source>
        <translation>&amp;Drucken …</translation>
    </message>
    <message>
        <source>Report as PDF</source>
        <translation>Bericht als PDF</translation>
    </message>
    <message>
        <source>report.pdf</source>
        <translation>bericht.pdf</translation>
    </message>
    <message>
        <source>The report was written to %1.</source>
        <translation>Der Bericht wurde nach %1 geschrieben.</translation>
    </message>
    <message>
        <source>Folder for the files of the report</source>
        <translation>Ordner für die Dateien des Berichts</translation>
    </message>
    <message numerus="yes">
        <source>%n file(s) were written to %1.</source>
        <translation>
            <numerusform>%n Datei wurde nach %1 geschrieben.</numerusform>
            <numerusform>%n Dateien wurden nach %1 geschrieben.</numerusform>
        </translation>
    </message>
    <message>
        <source>The report was sent to the printer %1.</source>
        <translation>Der Bericht ging an den Drucker %1.</translation>
    </message>
    <message>
        <source>&amp;Help on what is under the pointer</source>
        <translation>&amp;Hilfe zu dem, was unter dem Zeiger liegt</translation>
    </message>
    <message>
        <source>&amp;Keys</source>
        <translation>&amp;Tasten</translation>
    </message>
    <message>
        <source>Course</source>
        <translation>Verlauf</translation>
    </message>
    <message>
        <source>Pressures and stasis over time, release check, scores, decision</source>
        <translation>Drücke und Stase im Verlauf, Prüfung vor der Freigabe, Scores, Entscheidung</translation>
    </message>
    <message>
        <source>Open &amp;case …</source>
        <translation>&amp;Fall öffnen …</translation>
    </message>
    <message>
        <source>&amp;Recent cases</source>
        <translation>&amp;Zuletzt geöffnete Fälle</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Sichern</translation>
    </message>
    <message>
        <source>Save &amp;as …</source>
        <translation>Sichern &amp;als …</translation>
    </message>
    <message>
        <source>&amp;Images of the case are in …</source>
        <translation>&amp;Bilder des Falls liegen in …</translation>
    </message>
    <message>
        <source>No case was opened yet</source>
        <translation>Noch wurde kein Fall geöffnet</translation>
    </message>
    <message>
        <source>Open a case</source>
        <translation>Einen Fall öffnen</translation>
    </message>
    <message>
        <source>Cases (*.json);;All files (*)</source>
        <translation>Fälle (*.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Save the case</source>
        <translation>Den Fall sichern</translation>
    </message>
    <message>
        <source>Cases (*.json)</source>
        <translation>Fälle (*.json)</translation>
    </message>
    <message>
        <source>Folder with the images of the case</source>
        <translation>Ordner mit den Bildern des Falls</translation>
    </message>
    <message>
        <source>Echo</source>
        <translation>Echo</translation>
    </message>
    <message>
        <source>Echo views side by side, and the dial of their widths</source>
        <translation>Echoansichten nebeneinander, und das Zifferblatt ihrer Weiten</translation>
    </message>
    <message>
        <source>Same cut</source>
        <translation>Gleicher Schnitt</translation>
    </message>
    <message>
        <source>An echo frame beside the CT cut in its own plane</source>
        <translation>Ein Echobild neben dem CT, in dessen Ebene geschnitten</translation>
    </message>
    <message>
        <source>Fluoroscopy</source>
        <translation>Durchleuchtung</translation>
    </message>
    <message>
        <source>X-ray frames, beside what the CT predicts</source>
        <translation>Röntgenbilder neben dem, was das CT voraussagt</translation>
    </message>
    <message>
        <source>&amp;Picture</source>
        <translation>&amp;Bild</translation>
    </message>
    <message>
        <source>&amp;Draw</source>
        <translation>&amp;Zeichnen</translation>
    </message>
    <message>
        <source>Put into the &amp;table</source>
        <translation>In die &amp;Tabelle setzen</translation>
    </message>
    <message>
        <source>&amp;Planes</source>
        <translation>&amp;Ebenen</translation>
    </message>
    <message>
        <source>C&amp;ontour</source>
        <translation>K&amp;ontur</translation>
    </message>
    <message>
        <source>Picture of the &amp;window, without names …</source>
        <translation>Bild des &amp;Fensters, ohne Namen …</translation>
    </message>
    <message>
        <source>Picture of the window</source>
        <translation>Bild des Fensters</translation>
    </message>
    <message>
        <source>window.png</source>
        <translation>fenster.png</translation>
    </message>
    <message>
        <source>Pictures (*.png)</source>
        <translation>Bilder (*.png)</translation>
    </message>
    <message>
        <source>The picture was written to %1. Look for names that are part of X-ray images.</source>
        <translation>Das Bild wurde nach %1 geschrieben. Achten Sie auf Namen, die Teil von Röntgenbildern sind.</translation>
    </message>
    <message>
        <source>The picture could not be written to %1. Choose a folder that can be written to and has space.</source>
        <translation>Das Bild konnte nicht nach %1 geschrieben werden. Wählen Sie einen Ordner, der beschreibbar ist und Platz hat.</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederholen</translation>
    </message>
    <message>
        <source>&amp;Undo: %1</source>
        <translation>&amp;Rückgängig: %1</translation>
    </message>
    <message>
        <source>&amp;Redo: %1</source>
        <translation>&amp;Wiederholen: %1</translation>
    </message>
    <message>
        <source>The sample case is being made, about 200 MB; it opens by itself when it is ready …</source>
        <translation>Der Beispielfall wird angelegt, etwa 200 MB; er öffnet sich von selbst, wenn er fertig ist …</translation>
    </message>
    <message>
        <source>A case without images: add the moments and type in what was read. Open a folder of images at any time.</source>
        <translation>Ein Fall ohne Bilder: Tragen Sie die Zeitpunkte und das Abgelesene ein. Einen Ordner mit Bildern können Sie jederzeit öffnen.</translation>
    </message>
    <message>
        <source>The size chart of the settings cannot be used. %1</source>
        <translation>Die Größentabelle der Einstellungen ist nicht verwendbar. %1</translation>
    </message>
    <message>
        <source>New case</source>
        <translation>Neuer Fall</translation>
    </message>
    <message>
        <source>%1[*] — Ostium Gauge</source>
        <translation>%1[*] — Ostium Gauge</translation>
    </message>
    <message>
        <source>Unsaved work</source>
        <translation>Ungesicherte Arbeit</translation>
    </message>
    <message>
        <source>This case was never saved, and unsaved work is not kept: the settings say so. Save it now?</source>
        <translation>Dieser Fall wurde nie gesichert, und ungesicherte Arbeit wird nach den Einstellungen nicht aufbewahrt. Jetzt sichern?</translation>
    </message>
    <message>
        <source>Part that scrolls</source>
        <translation>Rollbarer Teil</translation>
    </message>
    <message>
        <source>Read a &amp;report into the table …</source>
        <translation>Be&amp;richt in die Tabelle lesen …</translation>
    </message>
    <message>
        <source>Take readings from a DICOM Structured Report</source>
        <translation>Messwerte aus einem DICOM Structured Report übernehmen</translation>
    </message>
    <message>
        <source>&amp;Values as CSV or JSON …</source>
        <translation>&amp;Werte als CSV oder JSON …</translation>
    </message>
    <message>
        <source>Export wit&amp;hout identity …</source>
        <translation>O&amp;hne Identität exportieren …</translation>
    </message>
    <message>
        <source>Case and images without names, numbers and dates of the patient</source>
        <translation>Fall und Bilder ohne Namen, Nummern und Daten des Patienten</translation>
    </message>
    <message>
        <source>Read a structured report</source>
        <translation>Strukturierten Bericht lesen</translation>
    </message>
    <message>
        <source>DICOM (*.dcm);;All files (*)</source>
        <translation>DICOM (*.dcm);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Another patient</source>
        <translation>Ein anderer Patient</translation>
    </message>
    <message>
        <source>This report seems to be about another patient. Take its readings all the same?</source>
        <translation>Dieser Bericht scheint von einem anderen Patienten zu handeln. Die Messwerte trotzdem übernehmen?</translation>
    </message>
    <message numerus="yes">
        <source>%n of ID, name and date of birth differ(s).</source>
        <translation>
            <numerusform>Eines von Nummer, Name und Geburtsdatum ist verschieden.</numerusform>
            <numerusform>%n von Nummer, Name und Geburtsdatum sind verschieden.</numerusform>
        </translation>
    </message>
    <message>
        <source>Take the readings</source>
        <translation>Messwerte übernehmen</translation>
    </message>
    <message>
        <source>No reading was taken: the report is about another patient.</source>
        <translation>Kein Messwert wurde übernommen: Der Bericht handelt von einem anderen Patienten.</translation>
    </message>
    <message>
        <source>Whether it is the same patient could not be checked.</source>
        <translation>Ob es derselbe Patient ist, ließ sich nicht prüfen.</translation>
    </message>
    <message>
        <source>Table for spreadsheets (*.csv)</source>
        <translation>Tabelle für Tabellenprogramme (*.csv)</translation>
    </message>
    <message>
        <source>JSON for programs (*.json)</source>
        <translation>JSON für Programme (*.json)</translation>
    </message>
    <message>
        <source>Values of the case</source>
        <translation>Werte des Falls</translation>
    </message>
    <message>
        <source>values.csv</source>
        <translation>werte.csv</translation>
    </message>
    <message>
        <source>The values were written to %1.</source>
        <translation>Die Werte wurden nach %1 geschrieben.</translation>
    </message>
    <message>
        <source>Cannot write %1: %2. Choose another folder, or make room.</source>
        <translation>%1 lässt sich nicht schreiben: %2. Wählen Sie einen anderen Ordner, oder schaffen Sie Platz.</translation>
    </message>
    <message>
        <source>Folder with the images to export</source>
        <translation>Ordner mit den Bildern für den Export</translation>
    </message>
    <message>
        <source>Empty folder for images and case without identity</source>
        <translation>Leerer Ordner für Bilder und Fall ohne Identität</translation>
    </message>
    <message>
        <source>Writing images without identity to %1 …</source>
        <translation>Bilder ohne Identität werden nach %1 geschrieben …</translation>
    </message>
    <message numerus="yes">
        <source>%n image(s) were written to %1.</source>
        <translation>
            <numerusform>Ein Bild wurde nach %1 geschrieben.</numerusform>
            <numerusform>%n Bilder wurden nach %1 geschrieben.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n file(s) were left out, since text of the patient may be in them.</source>
        <translation>
            <numerusform>Eine Datei blieb weg, da Text des Patienten darin sein kann.</numerusform>
            <numerusform>%n Dateien blieben weg, da Text des Patienten darin sein kann.</numerusform>
        </translation>
    </message>
    <message>
        <source>Look at the pictures before you pass them on: text within the image is not removed.</source>
        <translation>Sehen Sie die Bilder an, bevor Sie sie weitergeben: Text innerhalb des Bilds wird nicht entfernt.</translation>
    </message>
    <message>
        <source>PDF on A4 (*.pdf)</source>
        <translation>PDF auf A4 (*.pdf)</translation>
    </message>
    <message>
        <source>PDF on Letter (*.pdf)</source>
        <translation>PDF auf Letter (*.pdf)</translation>
    </message>
    <message>
        <source>Septum</source>
        <translation>Septum</translation>
    </message>
    <message>
        <source>Where to cross the septum: height for the repair, angle for the closure</source>
        <translation>Wo das Septum durchquert wird: Höhe für die Reparatur, Winkel für den Verschluss</translation>
    </message>
    <message>
        <source>Projection</source>
        <translation>Projektion</translation>
    </message>
    <message>
        <source>Angles of the C-arm that show ostium and landing zone</source>
        <translation>Winkel des C-Bogens, die Ostium und Landezone zeigen</translation>
    </message>
</context>
<context>
    <name>MarkPoseLandmark</name>
    <message>
        <source>Mark a place on CT and echo</source>
        <translation>Eine Stelle auf CT und Echo markieren</translation>
    </message>
</context>
<context>
    <name>MarksPanel</name>
    <message>
        <source>Anywhere in the blood of the left atrium. Needed.</source>
        <translation>Irgendwo im Blut des linken Vorhofs. Nötig.</translation>
    </message>
    <message>
        <source>Anywhere in the blood of the wanted lobe; the axis runs on to its farthest point. Needed.</source>
        <translation>Irgendwo im Blut des gewünschten Lappens; die Achse läuft bis zu dessen fernstem Punkt. Nötig.</translation>
    </message>
    <message>
        <source>The circumflex artery at the ostium. With the ridge it sets the ostium plane.</source>
        <translation>Die Zirkumflexarterie am Ostium. Mit der Leiste legt sie die Ostiumebene fest.</translation>
    </message>
    <message>
        <source>The tip of the ridge to the upper left pulmonary vein. With the circumflex artery it sets the ostium plane.</source>
        <translation>Die Spitze der Leiste zur linken oberen Lungenvene. Mit der Zirkumflexarterie legt sie die Ostiumebene fest.</translation>
    </message>
    <message>
        <source>In the ascending aorta, for the enhancement ratio.</source>
        <translation>In der aufsteigenden Aorta, für das Kontrastverhältnis.</translation>
    </message>
    <message>
        <source>Marks</source>
        <translation>Markierungen</translation>
    </message>
    <message>
        <source>%1
Key %2, then click on a scanner-axis section.</source>
        <translation>%1
Taste %2, dann auf einen Schnitt der Scannerachsen klicken.</translation>
    </message>
    <message>
        <source>Remove this mark</source>
        <translation>Diese Markierung entfernen</translation>
    </message>
    <message>
        <source>Ostium</source>
        <translation>Ostium</translation>
    </message>
    <message>
        <source>Click on a section to mark: %1. %2 Esc leaves it.</source>
        <translation>Zum Markieren auf einen Schnitt klicken: %1. %2 Esc verlässt es.</translation>
    </message>
    <message>
        <source>placed</source>
        <translation>gesetzt</translation>
    </message>
    <message>
        <source>needed</source>
        <translation>nötig</translation>
    </message>
    <message>
        <source>optional</source>
        <translation>wahlweise</translation>
    </message>
    <message>
        <source>Release the ostium</source>
        <translation>Das Ostium freigeben</translation>
    </message>
    <message>
        <source>Confirm the ostium</source>
        <translation>Das Ostium bestätigen</translation>
    </message>
    <message>
        <source>Let the landmarks or the proposal decide again (key C)</source>
        <translation>Wieder die Landmarken oder den Vorschlag entscheiden lassen (Taste C)</translation>
    </message>
    <message>
        <source>Take the shown plane as your own (key C)</source>
        <translation>Die gezeigte Ebene als eigene übernehmen (Taste C)</translation>
    </message>
    <message>
        <source>Not known yet.</source>
        <translation>Noch nicht bekannt.</translation>
    </message>
    <message>
        <source>Confirmed by you.</source>
        <translation>Von Ihnen bestätigt.</translation>
    </message>
    <message>
        <source>Through your marks of the circumflex artery and the ridge.</source>
        <translation>Durch Ihre Markierungen von Zirkumflexarterie und Leiste.</translation>
    </message>
    <message>
        <source>Proposed from the profile, confidence %1 %. Confirm it, or mark the circumflex artery and the ridge.</source>
        <translation>Aus dem Profil vorgeschlagen, Zuversicht %1 %. Bestätigen, oder Zirkumflexarterie und Leiste markieren.</translation>
    </message>
    <message>
        <source>Proposed from the profile. Confirm it, or mark the circumflex artery and the ridge.</source>
        <translation>Aus dem Profil vorgeschlagen. Bestätigen, oder Zirkumflexarterie und Leiste markieren.</translation>
    </message>
    <message>
        <source>Landing planes</source>
        <translation>Landeebenen</translation>
    </message>
    <message>
        <source>On the wall of the left pulmonary artery or its trunk, where it lies nearest to the appendage. For the distance that the sizes keep from it.</source>
        <translation>Auf der Wand der linken Pulmonalarterie oder ihres Stamms, wo sie dem Vorhofohr am nächsten liegt. Für den Abstand der Größen zu ihr.</translation>
    </message>
</context>
<context>
    <name>MeetingView</name>
    <message>
        <source>CT: long section</source>
        <translation>CT: Längsschnitt</translation>
    </message>
    <message>
        <source>CT: cross-section at the ostium</source>
        <translation>CT: Querschnitt am Ostium</translation>
    </message>
    <message>
        <source>CT: cross-section at the landing zone</source>
        <translation>CT: Querschnitt in der Landezone</translation>
    </message>
    <message>
        <source>Nothing is measured yet.</source>
        <translation>Noch ist nichts gemessen.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>out of date</source>
        <translation>veraltet</translation>
    </message>
    <message>
        <source>Chosen size: %1. Its fit is not known yet.</source>
        <translation>Gewählte Größe: %1. Wie sie passt, ist noch nicht bekannt.</translation>
    </message>
    <message>
        <source>No size is chosen yet.</source>
        <translation>Noch ist keine Größe gewählt.</translation>
    </message>
    <message>
        <source>Chosen size: %1</source>
        <translation>Gewählte Größe: %1</translation>
    </message>
    <message>
        <source>CT: surface of the blood</source>
        <translation>CT: Oberfläche des Blutes</translation>
    </message>
    <message>
        <source>CT, echo and fluoroscopy side by side</source>
        <translation>CT, Echo und Durchleuchtung nebeneinander</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
</context>
<context>
    <name>MessageLine</name>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Stop loading or measuring</source>
        <translation>Laden oder Messen anhalten</translation>
    </message>
    <message>
        <source>Measuring the appendage …</source>
        <translation>Das Vorhofohr wird gemessen …</translation>
    </message>
    <message>
        <source>F1 shows what the mouse and the keys do.</source>
        <translation>F1 zeigt, was Maus und Tasten tun.</translation>
    </message>
    <message>
        <source>Loading</source>
        <translation>Laden</translation>
    </message>
    <message>
        <source>Measuring</source>
        <translation>Messen</translation>
    </message>
</context>
<context>
    <name>MomentsEditor</name>
    <message>
        <source>pressure not measured</source>
        <translation>Druck nicht gemessen</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Moment of the course</source>
        <translation>Zeitpunkt des Verlaufs</translation>
    </message>
    <message>
        <source>Add a moment</source>
        <translation>Zeitpunkt hinzufügen</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>not recorded</source>
        <translation>nicht erfasst</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Stadium</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Left atrial mean pressure, mmHg</source>
        <translation>Mitteldruck im linken Vorhof, mmHg</translation>
    </message>
    <message>
        <source>How it was obtained</source>
        <translation>Wie er gewonnen wurde</translation>
    </message>
    <message>
        <source>Its standard uncertainty, mmHg</source>
        <translation>Seine Standardunsicherheit, mmHg</translation>
    </message>
    <message>
        <source>v wave (peak), mmHg</source>
        <translation>v-Welle (Spitze), mmHg</translation>
    </message>
    <message>
        <source>Mean mitral gradient, mmHg</source>
        <translation>Mittlerer Mitralgradient, mmHg</translation>
    </message>
    <message>
        <source>How the gradient was obtained</source>
        <translation>Wie der Gradient gewonnen wurde</translation>
    </message>
    <message>
        <source>Heart rate, per minute</source>
        <translation>Herzfrequenz, pro Minute</translation>
    </message>
    <message>
        <source>Rhythm</source>
        <translation>Rhythmus</translation>
    </message>
    <message>
        <source>Ventilation</source>
        <translation>Beatmung</translation>
    </message>
    <message>
        <source>Mitral regurgitation</source>
        <translation>Mitralinsuffizienz</translation>
    </message>
    <message>
        <source>Pulmonary-vein flow</source>
        <translation>Pulmonalvenenfluss</translation>
    </message>
    <message>
        <source>Filling</source>
        <translation>Füllung</translation>
    </message>
    <message>
        <source>What an unmeasured pressure is assumed from</source>
        <translation>Woraus ein nicht gemessener Druck angenommen wird</translation>
    </message>
    <message>
        <source>No moment is recorded yet. Add the moments at which images were taken, each with its left atrial pressure: readings are compared at one pressure only.</source>
        <translation>Noch kein Zeitpunkt ist erfasst. Die Zeitpunkte der Aufnahmen hinzufügen, jeden mit seinem linken Vorhofdruck: verglichen wird nur bei einem Druck.</translation>
    </message>
</context>
<context>
    <name>MoveDrawingPoint</name>
    <message>
        <source>Move a point of a measurement</source>
        <translation>Einen Punkt einer Messung bewegen</translation>
    </message>
</context>
<context>
    <name>NumberEdit</name>
    <message>
        <source>%1: %2 to %3; empty: not recorded</source>
        <translation>%1: %2 bis %3; leer: nicht erfasst</translation>
    </message>
    <message>
        <source>“%1” was not taken. %2: %3 to %4; empty: not recorded</source>
        <translation>„%1“ wurde nicht übernommen. %2: %3 bis %4; leer: nicht erfasst</translation>
    </message>
</context>
<context>
    <name>PictureScale</name>
    <message>
        <source>Scale: %1 mm a pixel ± %2 % (%3)</source>
        <translation>Maßstab: %1 mm je Pixel ± %2 % (%3)</translation>
    </message>
    <message>
        <source>No scale: calibrate by hand before measuring (key K).</source>
        <translation>Kein Maßstab: vor dem Messen von Hand eichen (Taste K).</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>3D echo, slice %1 of %2, %3 mm apart; time point %4 of %5. Lengths hold within a slice; left, back and head are not known.</source>
        <translation>3D-Echo, Schicht %1 von %2, Abstand %3 mm; Zeitpunkt %4 von %5. Längen gelten innerhalb einer Schicht; links, hinten und oben sind nicht bekannt.</translation>
    </message>
    <message>
        <source>On the spectrum velocities, times and envelopes are measured (Alt+6, Alt+7, Alt+8), no lengths.</source>
        <translation>Im Spektrum werden Geschwindigkeiten, Zeiten und Hüllkurven gemessen (Alt+6, Alt+7, Alt+8), keine Längen.</translation>
    </message>
</context>
<context>
    <name>Pictures</name>
    <message>
        <source>Landing zone, %1 beyond the ridge, oblique: perimeter-derived %2</source>
        <translation>Landezone, %1 hinter der Leiste, schräg: umfangsbezogen %2</translation>
    </message>
    <message>
        <source>Landing zone, %1 beyond the ostium: perimeter-derived %2</source>
        <translation>Landezone, %1 hinter dem Ostium: umfangsbezogen %2</translation>
    </message>
    <message>
        <source>Ostium, proposed: perimeter-derived %1</source>
        <translation>Ostium, vorgeschlagen: umfangsbezogen %1</translation>
    </message>
    <message>
        <source>Ostium: perimeter-derived %1</source>
        <translation>Ostium: umfangsbezogen %1</translation>
    </message>
    <message>
        <source>Mark: %1 (%2)</source>
        <translation>Markierung: %1 (%2)</translation>
    </message>
    <message>
        <source>Long section through the axis of the appendage</source>
        <translation>Längsschnitt durch die Achse des Vorhofohrs</translation>
    </message>
    <message>
        <source>Depth strip</source>
        <translation>Tiefenstreifen</translation>
    </message>
    <message>
        <source>Landing zone, %1 beyond the ostium, tilted %2 by hand: perimeter-derived %3</source>
        <translation>Landezone, %1 jenseits des Ostiums, von Hand um %2 gekippt: aus dem Umfang %3</translation>
    </message>
</context>
<context>
    <name>Place</name>
    <message>
        <source>left %1</source>
        <translation>links %1</translation>
    </message>
    <message>
        <source>right %1</source>
        <translation>rechts %1</translation>
    </message>
    <message>
        <source>back %1</source>
        <translation>hinten %1</translation>
    </message>
    <message>
        <source>front %1</source>
        <translation>vorn %1</translation>
    </message>
    <message>
        <source>head %1</source>
        <translation>kopfwärts %1</translation>
    </message>
    <message>
        <source>feet %1</source>
        <translation>fußwärts %1</translation>
    </message>
</context>
<context>
    <name>PlaceDrawing</name>
    <message>
        <source>Draw a measurement</source>
        <translation>Eine Messung zeichnen</translation>
    </message>
</context>
<context>
    <name>PressureCourse</name>
    <message>
        <source>mean pressure</source>
        <translation>Mitteldruck</translation>
    </message>
    <message>
        <source>v wave</source>
        <translation>v-Welle</translation>
    </message>
    <message>
        <source>mean mitral gradient</source>
        <translation>mittlerer Mitralgradient</translation>
    </message>
    <message>
        <source>rhythm not recorded</source>
        <translation>Rhythmus nicht erfasst</translation>
    </message>
    <message>
        <source>pressure not measured</source>
        <translation>Druck nicht gemessen</translation>
    </message>
    <message>
        <source>decision pressure, %1</source>
        <translation>Entscheidungsdruck, %1</translation>
    </message>
</context>
<context>
    <name>PressureCourseView</name>
    <message>
        <source>Pressures over time</source>
        <translation>Drücke im Verlauf</translation>
    </message>
    <message>
        <source>Click on a moment to edit it</source>
        <translation>Auf einen Zeitpunkt klicken, um ihn zu bearbeiten</translation>
    </message>
</context>
<context>
    <name>Projection</name>
    <message>
        <source>en face</source>
        <translation>en face</translation>
    </message>
    <message>
        <source>CRA</source>
        <translation>CRA</translation>
    </message>
    <message>
        <source>CAU</source>
        <translation>CAU</translation>
    </message>
    <message>
        <source>RAO</source>
        <translation>RAO</translation>
    </message>
    <message>
        <source>LAO</source>
        <translation>LAO</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>longest width</source>
        <translation>längste Breite</translation>
    </message>
    <message>
        <source>shortest width</source>
        <translation>kürzeste Breite</translation>
    </message>
    <message>
        <source>bend in profile</source>
        <translation>Biegung im Profil</translation>
    </message>
    <message>
        <source>least overlap with the atrium</source>
        <translation>kleinste Überdeckung durch den Vorhof</translation>
    </message>
    <message>
        <source>one view for all</source>
        <translation>eine Ansicht für alles</translation>
    </message>
    <message>
        <source>landing zone</source>
        <translation>Landezone</translation>
    </message>
    <message>
        <source>ostium</source>
        <translation>Ostium</translation>
    </message>
    <message>
        <source>no width</source>
        <translation>keine Breite</translation>
    </message>
    <message>
        <source>%1 (%2 to %3 within 5°)</source>
        <translation>%1 (%2 bis %3 innerhalb von 5°)</translation>
    </message>
    <message>
        <source>%1 of the longest not shown</source>
        <translation>%1 der längsten nicht gezeigt</translation>
    </message>
    <message>
        <source>%1 more than the shortest</source>
        <translation>%1 mehr als die kürzeste</translation>
    </message>
    <message>
        <source>plane %1 from edge-on</source>
        <translation>Ebene %1 aus der Kantenstellung</translation>
    </message>
    <message>
        <source>%1 off the bend's profile</source>
        <translation>%1 neben dem Profil der Biegung</translation>
    </message>
    <message>
        <source>%1 off en face</source>
        <translation>%1 neben en face</translation>
    </message>
    <message>
        <source>%1 more of the appendage behind the atrium than need be</source>
        <translation>%1 mehr des Vorhofohrs hinter dem Vorhof als nötig</translation>
    </message>
    <message>
        <source>%1 of the appendage behind the atrium</source>
        <translation>%1 des Vorhofohrs hinter dem Vorhof</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>not told by the images</source>
        <translation>von den Bildern nicht gesagt</translation>
    </message>
    <message>
        <source>on the back (%1)</source>
        <translation>auf dem Rücken (%1)</translation>
    </message>
    <message>
        <source>on the face (%1)</source>
        <translation>auf dem Bauch (%1)</translation>
    </message>
    <message>
        <source>on the left side (%1)</source>
        <translation>auf der linken Seite (%1)</translation>
    </message>
    <message>
        <source>on the right side (%1)</source>
        <translation>auf der rechten Seite (%1)</translation>
    </message>
    <message>
        <source>in an unusual position (%1)</source>
        <translation>in ungewöhnlicher Lage (%1)</translation>
    </message>
</context>
<context>
    <name>ProjectionChart</name>
    <message>
        <source>Dome of the C-arm's views</source>
        <translation>Kuppel der Ansichten des C-Bogens</translation>
    </message>
    <message>
        <source>Curve of the C-arm's views</source>
        <translation>Kurve der Ansichten des C-Bogens</translation>
    </message>
    <message>
        <source>Click or press Enter to take the view; drag to turn the C-arm. Arrows move by 1°, with Shift by 10°; Home: from the front; E: edge-on; Escape: no view</source>
        <translation>Klick oder Eingabetaste wählt die Ansicht; Ziehen dreht den C-Bogen. Pfeile bewegen um 1°, mit Umschalt um 10°; Pos1: von vorn; E: von der Kante; Esc: keine Ansicht</translation>
    </message>
</context>
<context>
    <name>ProjectionPanel</name>
    <message>
        <source>Views for</source>
        <translation>Ansichten für</translation>
    </message>
    <message>
        <source>The plane that the views are planned for</source>
        <translation>Die Ebene, für die die Ansichten geplant sind</translation>
    </message>
    <message>
        <source>What the view shows</source>
        <translation>Was die Ansicht zeigt</translation>
    </message>
    <message>
        <source>%1 (key %2)</source>
        <translation>%1 (Taste %2)</translation>
    </message>
    <message>
        <source>Take this view</source>
        <translation>Diese Ansicht wählen</translation>
    </message>
    <message>
        <source>Take the view that is pointed at, or the row of the table, as a working view</source>
        <translation>Die Ansicht unter dem Zeiger oder die Zeile der Tabelle als Arbeitsansicht wählen</translation>
    </message>
    <message>
        <source>Give up a view</source>
        <translation>Ansicht aufgeben</translation>
    </message>
    <message>
        <source>Give up the chosen view in the row of the table</source>
        <translation>Die gewählte Ansicht in der Zeile der Tabelle aufgeben</translation>
    </message>
    <message>
        <source>View</source>
        <translation>Ansicht</translation>
    </message>
    <message>
        <source>C-arm</source>
        <translation>C-Bogen</translation>
    </message>
    <message>
        <source>Width seen</source>
        <translation>Gesehene Breite</translation>
    </message>
    <message>
        <source>What is lost</source>
        <translation>Was verloren geht</translation>
    </message>
    <message>
        <source>Working views</source>
        <translation>Arbeitsansichten</translation>
    </message>
    <message>
        <source>Enter or a double click takes the view of the row</source>
        <translation>Eingabetaste oder Doppelklick wählt die Ansicht der Zeile</translation>
    </message>
    <message>
        <source>The views are being planned …</source>
        <translation>Die Ansichten werden geplant …</translation>
    </message>
    <message>
        <source>this run</source>
        <translation>dieser Lauf</translation>
    </message>
    <message>
        <source>the ideal, %1, is out of reach</source>
        <translation>die ideale, %1, ist außer Reichweite</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>picked by hand</source>
        <translation>von Hand gewählt</translation>
    </message>
    <message>
        <source>chosen before the plane moved: choose again</source>
        <translation>gewählt, bevor sich die Ebene bewegt hat: neu wählen</translation>
    </message>
    <message>
        <source>%1 of the longest not shown</source>
        <translation>%1 der längsten nicht gezeigt</translation>
    </message>
    <message>
        <source>beyond the reach</source>
        <translation>außerhalb der Reichweite</translation>
    </message>
    <message>
        <source>%1 · chosen: %2, %3</source>
        <translation>%1 · gewählt: %2, %3</translation>
    </message>
    <message>
        <source>%1 · beyond the reach of the C-arm</source>
        <translation>%1 · außerhalb der Reichweite des C-Bogens</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 off the bend's profile</source>
        <translation>%1 neben dem Profil der Biegung</translation>
    </message>
    <message>
        <source>%1 of the appendage behind the atrium</source>
        <translation>%1 des Vorhofohrs hinter dem Vorhof</translation>
    </message>
    <message>
        <source>Working views, C-arm and patient</source>
        <translation>Arbeitsansichten, C-Bogen und Patient</translation>
    </message>
    <message>
        <source>C-arm and patient</source>
        <translation>C-Bogen und Patient</translation>
    </message>
    <message>
        <source>Double ring: the simulated radiograph; drag turns it. Squares and circles: en face. Letters: working views of the table. Numbers: chosen views.</source>
        <translation>Doppelring: das simulierte Röntgenbild; Ziehen dreht es. Quadrate und Kreise: von vorn auf die Ebene. Buchstaben: Arbeitsansichten der Tabelle. Zahlen: gewählte Ansichten.</translation>
    </message>
    <message>
        <source>Point at a view to see what it shows; click or press Enter to take it. Squares and circles: en face. Letters: working views. Numbers: chosen views.</source>
        <translation>Zeigen Sie auf eine Ansicht, um zu lesen, was sie zeigt; Klick oder Eingabetaste wählt sie. Quadrate und Kreise: von vorn auf die Ebene. Buchstaben: Arbeitsansichten. Zahlen: gewählte Ansichten.</translation>
    </message>
</context>
<context>
    <name>QObject</name>
    <message>
        <source>Help</source>
        <translation>Hilfe</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Warnhinweise</translation>
    </message>
    <message>
        <source>About Ostium Gauge</source>
        <translation>Über Ostium Gauge</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>Sizing of left atrial appendage closure from CT, echo and fluoroscopy. Sources under the Apache License 2.0.</source>
        <translation>Bemessung des Verschlusses des linken Vorhofohrs aus CT, Echo und Durchleuchtung. Quelltext unter der Apache-Lizenz 2.0.</translation>
    </message>
    <message>
        <source>Licences of the libraries in use</source>
        <translation>Lizenzen der verwendeten Bibliotheken</translation>
    </message>
    <message>
        <source>On their pages</source>
        <translation>Auf ihren Seiten</translation>
    </message>
</context>
<context>
    <name>Quantity</name>
    <message>
        <source>not measured</source>
        <translation>nicht gemessen</translation>
    </message>
    <message>
        <source>edge</source>
        <translation>Rand</translation>
    </message>
    <message>
        <source>plane</source>
        <translation>Ebene</translation>
    </message>
    <message>
        <source>observer</source>
        <translation>Beobachter</translation>
    </message>
    <message>
        <source>scale</source>
        <translation>Maßstab</translation>
    </message>
</context>
<context>
    <name>RadiographView</name>
    <message>
        <source>Simulated radiograph from CT</source>
        <translation>Aus dem CT simuliertes Röntgenbild</translation>
    </message>
    <message>
        <source>Simulated from CT. Drag turns the heart, arrow keys move the C-arm by 1° (Shift: 10°), A types the angles, Home comes back, F changes what is filled with contrast medium, right drag changes the window, W finds it again, + and − change the field of view.</source>
        <translation>Aus dem CT simuliert. Ziehen dreht das Herz, Pfeiltasten bewegen den C-Bogen um 1° (Umschalt: 10°), A nimmt Winkel an, Pos1 kehrt zurück, F ändert, was mit Kontrastmittel gefüllt ist, Ziehen mit rechts ändert das Fenster, W findet es neu, + und − ändern das Bildfeld.</translation>
    </message>
    <message>
        <source>Angles of the C-arm</source>
        <translation>Winkel des C-Bogens</translation>
    </message>
    <message>
        <source>RAO 30 CAUD 12</source>
        <translation>RAO 30 CAUD 12</translation>
    </message>
    <message>
        <source>Simulated radiograph: type the angles</source>
        <translation>Simuliertes Röntgenbild: Winkel eingeben</translation>
    </message>
    <message>
        <source>Simulated radiograph: back to its angles</source>
        <translation>Simuliertes Röntgenbild: zurück zu seinen Winkeln</translation>
    </message>
    <message>
        <source>Simulated radiograph: fill another chamber</source>
        <translation>Simuliertes Röntgenbild: eine andere Höhle füllen</translation>
    </message>
    <message>
        <source>Simulated from CT · %1</source>
        <translation>Aus dem CT simuliert · %1</translation>
    </message>
    <message>
        <source>nothing filled: no appendage is measured</source>
        <translation>nichts gefüllt: kein Vorhofohr ist gemessen</translation>
    </message>
    <message>
        <source>as CT has it</source>
        <translation>wie im CT</translation>
    </message>
    <message>
        <source>appendage filled with contrast medium</source>
        <translation>Vorhofohr mit Kontrastmittel gefüllt</translation>
    </message>
    <message>
        <source>atrium and appendage filled with contrast medium</source>
        <translation>Vorhof und Vorhofohr mit Kontrastmittel gefüllt</translation>
    </message>
    <message>
        <source>appendage alone</source>
        <translation>Vorhofohr allein</translation>
    </message>
    <message>
        <source>atrium and appendage alone</source>
        <translation>Vorhof und Vorhofohr allein</translation>
    </message>
    <message>
        <source>Distances from the file: source to isocentre %1, to detector %2.</source>
        <translation>Abstände aus der Datei: Quelle zu Isozentrum %1, zu Detektor %2.</translation>
    </message>
    <message>
        <source>Distances assumed: source to isocentre %1, to detector %2.</source>
        <translation>Angenommene Abstände: Quelle zu Isozentrum %1, zu Detektor %2.</translation>
    </message>
    <message>
        <source>The landing zone is put where it was drawn on the frame.</source>
        <translation>Die Landezone liegt dort, wo sie auf dem Bild gezeichnet wurde.</translation>
    </message>
    <message>
        <source>No file tells where the isocentre lies in the CT: the landing zone is put in the middle.</source>
        <translation>Keine Datei sagt, wo das Isozentrum im CT liegt: Die Landezone liegt in der Mitte.</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>This case has no CT: there is nothing to simulate a radiograph from.</source>
        <translation>Dieser Fall hat kein CT: Es gibt nichts, woraus ein Röntgenbild simuliert werden könnte.</translation>
    </message>
    <message>
        <source>Nothing is open.</source>
        <translation>Nichts ist geöffnet.</translation>
    </message>
    <message>
        <source>Simulating the radiograph …</source>
        <translation>Röntgenbild wird simuliert …</translation>
    </message>
    <message>
        <source>appendage filled</source>
        <translation>Vorhofohr gefüllt</translation>
    </message>
    <message>
        <source>atrium and appendage filled</source>
        <translation>Vorhof und Vorhofohr gefüllt</translation>
    </message>
    <message>
        <source>What is filled with contrast medium</source>
        <translation>Was mit Kontrastmittel gefüllt ist</translation>
    </message>
    <message>
        <source>What the simulated radiograph shows filled with contrast medium, or alone (key F)</source>
        <translation>Was das simulierte Röntgenbild mit Kontrastmittel gefüllt oder allein zeigt (Taste F)</translation>
    </message>
    <message>
        <source>Distances as you set them: source to isocentre %1, to detector %2.</source>
        <translation>Abstände wie von Ihnen eingestellt: Quelle bis Isozentrum %1, bis Detektor %2.</translation>
    </message>
    <message>
        <source>The patient lies turned against the CT: %1.</source>
        <translation>Der Patient liegt gegenüber dem CT gedreht: %1.</translation>
    </message>
    <message>
        <source>%1 The place for it is on the page Projection, under C-arm and patient.</source>
        <translation>%1 Der Ort dafür ist auf der Seite Projektion, unter C-Bogen und Patient.</translation>
    </message>
</context>
<context>
    <name>ReadReport</name>
    <message>
        <source>The patient's ID is “%1” in the case and “%2” in the report.</source>
        <translation>Die Nummer des Patienten ist „%1“ im Fall und „%2“ im Bericht.</translation>
    </message>
    <message>
        <source>The patient's name is “%1” in the case and “%2” in the report.</source>
        <translation>Der Name des Patienten ist „%1“ im Fall und „%2“ im Bericht.</translation>
    </message>
    <message>
        <source>The date of birth is %1 in the case and %2 in the report.</source>
        <translation>Das Geburtsdatum ist %1 im Fall und %2 im Bericht.</translation>
    </message>
    <message>
        <source>report without a date</source>
        <translation>Bericht ohne Datum</translation>
    </message>
    <message>
        <source>report of %1</source>
        <translation>Bericht vom %1</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>stage not stated: taken as before the procedure</source>
        <translation>Stadium nicht genannt: als vor dem Eingriff genommen</translation>
    </message>
    <message>
        <source>way of reading not stated in full: assumed</source>
        <translation>Art der Messung nicht ganz genannt: angenommen</translation>
    </message>
    <message>
        <source>computed from a perimeter or an area</source>
        <translation>aus einem Umfang oder einer Fläche berechnet</translation>
    </message>
    <message>
        <source>Take readings from a report</source>
        <translation>Messwerte aus einem Bericht übernehmen</translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) were taken from the %1.</source>
        <translation>
            <numerusform>Ein Messwert wurde übernommen: %1.</numerusform>
            <numerusform>%n Messwerte wurden übernommen: %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) are in the case already.</source>
        <translation>
            <numerusform>Ein Messwert ist schon im Fall.</numerusform>
            <numerusform>%n Messwerte sind schon im Fall.</numerusform>
        </translation>
    </message>
    <message>
        <source>the comparison table has no row for it</source>
        <translation>die Vergleichstabelle hat keine Zeile dafür</translation>
    </message>
    <message>
        <source>it does not say whether it is the ostium's or the landing zone's</source>
        <translation>es fehlt, ob Ostium oder Landezone gemeint ist</translation>
    </message>
    <message>
        <source>it does not say on which kind of images it was read</source>
        <translation>es fehlt, auf welcher Art von Bildern gemessen wurde</translation>
    </message>
    <message>
        <source>its unit is not known here</source>
        <translation>die Einheit ist hier nicht bekannt</translation>
    </message>
    <message>
        <source>it lies outside 1 to 120 mm</source>
        <translation>liegt außerhalb von 1 bis 120 mm</translation>
    </message>
    <message>
        <source>the diameter that follows from it is in the report too</source>
        <translation>der Durchmesser, der daraus folgt, steht auch im Bericht</translation>
    </message>
    <message>
        <source>%1%2, %3 %4: %5</source>
        <translation>%1%2, %3 %4: %5</translation>
    </message>
    <message numerus="yes">
        <source>%n number(s) of the report have no place in the comparison table.</source>
        <translation>
            <numerusform>%n Zahl des Berichts hat keinen Platz in der Vergleichstabelle.</numerusform>
            <numerusform>%n Zahlen des Berichts haben keinen Platz in der Vergleichstabelle.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ReadingsEditor</name>
    <message>
        <source>Typed reading</source>
        <translation>Eingetippte Messung</translation>
    </message>
    <message>
        <source>Type a reading in</source>
        <translation>Eine Messung eintippen</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Durch</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Wie</translation>
    </message>
    <message>
        <source>Moment</source>
        <translation>Zeitpunkt</translation>
    </message>
    <message>
        <source>Phase</source>
        <translation>Phase</translation>
    </message>
    <message>
        <source>Value, mm</source>
        <translation>Wert, mm</translation>
    </message>
    <message>
        <source>Standard uncertainty, mm</source>
        <translation>Standardunsicherheit, mm</translation>
    </message>
    <message>
        <source>Read over beats of different length</source>
        <translation>Über Schläge verschiedener Länge gelesen</translation>
    </message>
    <message>
        <source>Where it came from</source>
        <translation>Woher sie stammt</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>Numbers from elsewhere (a report, another machine) can be typed in; they are marked as such wherever they are shown.</source>
        <translation>Zahlen von anderswo (ein Bericht, ein anderes Gerät) können eingetippt werden; sie sind überall als solche gekennzeichnet.</translation>
    </message>
    <message>
        <source>Typed in, not measured here.</source>
        <translation>Eingetippt, nicht hier gemessen.</translation>
    </message>
    <message>
        <source>none: pressure unknown</source>
        <translation>keiner: Druck unbekannt</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>pressure not measured</source>
        <translation>Druck nicht gemessen</translation>
    </message>
</context>
<context>
    <name>RecentCases</name>
    <message>
        <source>The file is no longer there.</source>
        <translation>Die Datei ist nicht mehr da.</translation>
    </message>
    <message>
        <source>The file cannot be read.</source>
        <translation>Die Datei ist nicht lesbar.</translation>
    </message>
    <message>
        <source>Never saved</source>
        <translation>Nie gesichert</translation>
    </message>
    <message>
        <source>Case without names</source>
        <translation>Fall ohne Namen</translation>
    </message>
</context>
<context>
    <name>ReleaseEditor</name>
    <message>
        <source>%1 (± %2)</source>
        <translation>%1 (± %2)</translation>
    </message>
    <message>
        <source>wider than its nominal size by %1</source>
        <translation>um %1 weiter als sein Nennmaß</translation>
    </message>
    <message>
        <source>Look at the implant</source>
        <translation>Blick auf das Implantat</translation>
    </message>
    <message>
        <source>Add a look</source>
        <translation>Blick hinzufügen</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Findings of this look by view</source>
        <translation>Befunde dieses Blicks nach Ansicht</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Befund</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>Bereich</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>Seen by</source>
        <translation>Gesehen von</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Stadium</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>The inner catheter has been taken out</source>
        <translation>Der innere Katheter ist herausgezogen</translation>
    </message>
    <message>
        <source>Add a finding</source>
        <translation>Befund hinzufügen</translation>
    </message>
    <message>
        <source>What was seen</source>
        <translation>Was gesehen wurde</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Value; yes is 1, no is 0</source>
        <translation>Wert; ja ist 1, nein ist 0</translation>
    </message>
    <message>
        <source>Standard uncertainty</source>
        <translation>Standardunsicherheit</translation>
    </message>
    <message>
        <source>45 degrees, RAO 30 CAU 20 …</source>
        <translation>45 Grad, RAO 30 CAU 20 …</translation>
    </message>
    <message>
        <source>circumflex side, ridge side …</source>
        <translation>Zirkumflexseite, Leistenseite …</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Value (yes is 1, no is 0)</source>
        <translation>Wert (ja ist 1, nein ist 0)</translation>
    </message>
    <message>
        <source>View</source>
        <translation>Ansicht</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>Add finding</source>
        <translation>Hinzufügen</translation>
    </message>
    <message>
        <source>The finding was not added: give its value first.</source>
        <translation>Der Befund wurde nicht hinzugefügt: zuerst seinen Wert angeben.</translation>
    </message>
    <message>
        <source>Remove selected finding</source>
        <translation>Markierten Befund entfernen</translation>
    </message>
    <message>
        <source>No view</source>
        <translation>Keine Ansicht</translation>
    </message>
    <message>
        <source>%1, near the limit</source>
        <translation>%1, nahe der Grenze</translation>
    </message>
    <message>
        <source>Worse: %1</source>
        <translation>Schlechter: %1</translation>
    </message>
    <message>
        <source>No size is chosen: compression and the chart's own clearances cannot be judged.</source>
        <translation>Keine Größe ist gewählt: Kompression und die Abstände der Tabelle können nicht beurteilt werden.</translation>
    </message>
</context>
<context>
    <name>RemoveCalibration</name>
    <message>
        <source>Remove the scale given by hand</source>
        <translation>Den von Hand gegebenen Maßstab entfernen</translation>
    </message>
</context>
<context>
    <name>RemoveDrawing</name>
    <message>
        <source>Remove a measurement</source>
        <translation>Eine Messung entfernen</translation>
    </message>
</context>
<context>
    <name>RemovePoseLandmark</name>
    <message>
        <source>Remove a place on CT and echo</source>
        <translation>Eine Stelle auf CT und Echo entfernen</translation>
    </message>
</context>
<context>
    <name>Report</name>
    <message>
        <source>Patient</source>
        <translation>Patient</translation>
    </message>
    <message>
        <source>names are hidden</source>
        <translation>Namen sind verborgen</translation>
    </message>
    <message>
        <source>Patient ID</source>
        <translation>Patienten-ID</translation>
    </message>
    <message>
        <source>Born</source>
        <translation>Geboren</translation>
    </message>
    <message>
        <source>Sex</source>
        <translation>Geschlecht</translation>
    </message>
    <message>
        <source>Case</source>
        <translation>Fall</translation>
    </message>
    <message>
        <source>CT phase</source>
        <translation>CT-Phase</translation>
    </message>
    <message>
        <source>Device chart</source>
        <translation>Größentabelle</translation>
    </message>
    <message>
        <source>%1, version %2</source>
        <translation>%1, Version %2</translation>
    </message>
    <message>
        <source>Program</source>
        <translation>Programm</translation>
    </message>
    <message>
        <source>Report made</source>
        <translation>Bericht erstellt</translation>
    </message>
    <message>
        <source>Closure of the left atrial appendage</source>
        <translation>Verschluss des linken Vorhofohrs</translation>
    </message>
    <message>
        <source>Moment</source>
        <translation>Zeitpunkt</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Stadium</translation>
    </message>
    <message>
        <source>LA mean pressure</source>
        <translation>LA-Mitteldruck</translation>
    </message>
    <message>
        <source>v wave</source>
        <translation>v-Welle</translation>
    </message>
    <message>
        <source>How known</source>
        <translation>Woher bekannt</translation>
    </message>
    <message>
        <source>Mitral gradient</source>
        <translation>Mitralgradient</translation>
    </message>
    <message>
        <source>Rhythm</source>
        <translation>Rhythmus</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>%1 to %2%3</source>
        <translation>%1 bis %2%3</translation>
    </message>
    <message>
        <source>at least %1%2</source>
        <translation>mindestens %1%2</translation>
    </message>
    <message>
        <source>at most %1%2</source>
        <translation>höchstens %1%2</translation>
    </message>
    <message>
        <source>within, near its limit</source>
        <translation>innerhalb, nahe der Grenze</translation>
    </message>
    <message>
        <source>within</source>
        <translation>innerhalb</translation>
    </message>
    <message>
        <source>outside, near its limit</source>
        <translation>außerhalb, nahe der Grenze</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>außerhalb</translation>
    </message>
    <message>
        <source>no range</source>
        <translation>kein Bereich</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Gesehen</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>Bereich</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>Seen by</source>
        <translation>Gesehen von</translation>
    </message>
    <message>
        <source>Without a view</source>
        <translation>Ohne Ansicht</translation>
    </message>
    <message>
        <source>Pressures and stasis</source>
        <translation>Drücke und Stase</translation>
    </message>
    <message>
        <source>Near 12 mmHg the width grows by %1 mm per mmHg (standard deviation %2); %3 % of that is this patient's own, the rest is assumed.</source>
        <translation>Nahe 12 mmHg wächst die Weite um %1 mm je mmHg (Standardabweichung %2); %3 % davon sind diesem Patienten eigen, der Rest ist angenommen.</translation>
    </message>
    <message>
        <source>Looks at the implant</source>
        <translation>Blicke auf das Implantat</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>No decision has been written yet.</source>
        <translation>Es ist noch keine Entscheidung geschrieben.</translation>
    </message>
    <message>
        <source>Draft, not signed: %1</source>
        <translation>Entwurf, nicht unterschrieben: %1</translation>
    </message>
    <message>
        <source>Signed by %1 on %2: %3</source>
        <translation>Unterschrieben von %1 am %2: %3</translation>
    </message>
    <message>
        <source>No size has been chosen.</source>
        <translation>Keine Größe ist gewählt.</translation>
    </message>
    <message>
        <source>Chosen size: %1. Its fit chance at %2 is %3; over the pressures to live with, %4 to %5, its compression stays inside its band with a chance of %6.</source>
        <translation>Gewählte Größe: %1. Ihre Passchance bei %2 ist %3; bei den künftigen Drücken, %4 bis %5, bleibt ihre Kompression mit einer Chance von %6 in ihrem Bereich.</translation>
    </message>
    <message>
        <source>Width that the chart asks for, at %1: %2, with a chance of 95 % from %3.</source>
        <translation>Weite, nach der die Tabelle fragt, bei %1: %2, mit einer Chance von 95 % von %3.</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>enough</source>
        <translation>genug</translation>
    </message>
    <message>
        <source>short</source>
        <translation>zu kurz</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>Compression</source>
        <translation>Kompression</translation>
    </message>
    <message>
        <source>Fit chance</source>
        <translation>Passchance</translation>
    </message>
    <message>
        <source>Lasting fit</source>
        <translation>Bleibend passend</translation>
    </message>
    <message>
        <source>Too small</source>
        <translation>Zu klein</translation>
    </message>
    <message>
        <source>Too tight</source>
        <translation>Zu eng</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>%1 (chosen)</source>
        <translation>%1 (gewählt)</translation>
    </message>
    <message>
        <source>Decision</source>
        <translation>Entscheidung</translation>
    </message>
    <message>
        <source>Since it was signed, this stands against it:</source>
        <translation>Seit der Unterschrift spricht dagegen:</translation>
    </message>
    <message>
        <source>It cannot be signed as things stand:</source>
        <translation>So, wie es steht, kann nicht unterschrieben werden:</translation>
    </message>
    <message>
        <source>Readings side by side</source>
        <translation>Messungen nebeneinander</translation>
    </message>
    <message>
        <source>Each value with its standard uncertainty (twice as much holds the truth with a chance of about 95 %). Values carried to another pressure are predictions of a model.</source>
        <translation>Jeder Wert mit seiner Standardunsicherheit (das Doppelte enthält die Wahrheit mit einer Chance von etwa 95 %). Auf einen anderen Druck übertragene Werte sind Voraussagen eines Modells.</translation>
    </message>
    <message>
        <source>Sizes of the chart</source>
        <translation>Größen der Tabelle</translation>
    </message>
    <message>
        <source>Chart: %1, version %2, %3. %4</source>
        <translation>Tabelle: %1, Version %2, %3. %4</translation>
    </message>
    <message>
        <source>Compression = 100 (nominal − width) / nominal at the decision pressure; below 0 the implant is narrower than the appendage. Too small at the highest, too tight at the lowest pressure to live with.</source>
        <translation>Kompression = 100 (Nennmaß − Weite) / Nennmaß beim Entscheidungsdruck; unter 0 ist das Implantat schmaler als das Vorhofohr. Zu klein beim höchsten, zu eng beim niedrigsten künftigen Druck.</translation>
    </message>
    <message>
        <source>Chance to change the size %1: %2</source>
        <translation>Chance, die Größe %1 zu ändern: %2</translation>
    </message>
    <message>
        <source>What would change it</source>
        <translation>Was es ändern würde</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Messgröße</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Uncertainty from</source>
        <translation>Unsicherheit durch</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Wie</translation>
    </message>
    <message>
        <source> (stale: its plane or mark has moved since)</source>
        <translation> (veraltet: Ebene oder Markierung wurde seither bewegt)</translation>
    </message>
    <message>
        <source>Pictures</source>
        <translation>Bilder</translation>
    </message>
    <message>
        <source>How it was measured</source>
        <translation>Wie gemessen wurde</translation>
    </message>
    <message>
        <source>What was assumed</source>
        <translation>Was angenommen wurde</translation>
    </message>
    <message>
        <source>All values</source>
        <translation>Alle Werte</translation>
    </message>
    <message>
        <source>Images, by Series Instance UID: %1</source>
        <translation>Bilder, nach Series Instance UID: %1</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Warnhinweise</translation>
    </message>
    <message>
        <source>Read and decided by</source>
        <translation>Gelesen und entschieden von</translation>
    </message>
    <message>
        <source>Date and time</source>
        <translation>Datum und Uhrzeit</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>Unterschrift</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>Measurement %1</source>
        <translation>Messung %1</translation>
    </message>
    <message>
        <source>Measurement %1: %2</source>
        <translation>Messung %1: %2</translation>
    </message>
    <message>
        <source>2D echo, %1</source>
        <translation>2D-Echo, %1</translation>
    </message>
    <message>
        <source>3D echo, %1</source>
        <translation>3D-Echo, %1</translation>
    </message>
    <message>
        <source>Fluoroscopy, %1</source>
        <translation>Durchleuchtung, %1</translation>
    </message>
    <message>
        <source>How the sizes would sit</source>
        <translation>Wie die Größen säßen</translation>
    </message>
    <message>
        <source>Septal crossing</source>
        <translation>Septumpunktion</translation>
    </message>
    <message>
        <source> (stale)</source>
        <translation> (veraltet)</translation>
    </message>
    <message>
        <source>Septal face seen from the left atrium. %1</source>
        <translation>Septumfläche vom linken Vorhof gesehen. %1</translation>
    </message>
    <message>
        <source>picked by hand</source>
        <translation>von Hand gewählt</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>%1 (the plane has moved since)</source>
        <translation>%1 (die Ebene hat sich seither bewegt)</translation>
    </message>
    <message>
        <source>View</source>
        <translation>Ansicht</translation>
    </message>
    <message>
        <source>Plane</source>
        <translation>Ebene</translation>
    </message>
    <message>
        <source>C-arm</source>
        <translation>C-Bogen</translation>
    </message>
    <message>
        <source>Width by CT</source>
        <translation>Breite nach CT</translation>
    </message>
    <message>
        <source>Chosen</source>
        <translation>Gewählt</translation>
    </message>
    <message>
        <source>Named by the program</source>
        <translation>Vom Programm genannt</translation>
    </message>
    <message>
        <source>Within a reach of RAO %1, LAO %2, CRA %3, CAU %4.</source>
        <translation>In einer Reichweite von RAO %1, LAO %2, CRA %3, CAU %4.</translation>
    </message>
    <message>
        <source>At CT the patient lay: %1.</source>
        <translation>Beim CT lag der Patient: %1.</translation>
    </message>
    <message>
        <source>Turned against the CT by LAO %1, CRA %2, as stated.</source>
        <translation>Gegen das CT gedreht um LAO %1, CRA %2, wie angegeben.</translation>
    </message>
    <message>
        <source>Working projections</source>
        <translation>Arbeitsprojektionen</translation>
    </message>
    <message>
        <source>Angles are predicted from CT: confirm each view on the screen before anything rests on it.</source>
        <translation>Die Winkel sind aus dem CT vorausgesagt: jede Ansicht am Bildschirm bestätigen, bevor etwas auf ihr ruht.</translation>
    </message>
    <message>
        <source>Views of the C-arm, as its detector sees the patient from the front</source>
        <translation>Ansichten des C-Bogens, wie sein Detektor den Patienten von vorn sieht</translation>
    </message>
    <message>
        <source>Edge-on views by their angles</source>
        <translation>Kantenansichten nach ihren Winkeln</translation>
    </message>
    <message>
        <source>Simulated from CT · %1</source>
        <translation>Aus dem CT simuliert · %1</translation>
    </message>
    <message>
        <source>the appendage as if filled with contrast medium</source>
        <translation>das Vorhofohr wie mit Kontrastmittel gefüllt</translation>
    </message>
    <message>
        <source>nothing filled with contrast medium</source>
        <translation>nichts mit Kontrastmittel gefüllt</translation>
    </message>
    <message>
        <source>Simulated radiograph at %1, %2. Not a fluoroscopy: distances of the C-arm are assumed, and the landing zone is put in the middle.</source>
        <translation>Simuliertes Röntgenbild bei %1, %2. Keine Durchleuchtung: Die Abstände des C-Bogens sind angenommen, und die Landezone ist in die Mitte gelegt.</translation>
    </message>
    <message>
        <source>A model of geometry: a straight body with the chart's dimensions slides into the blood that was measured and takes the form of its wall, as far as the chart's compression allows by the chart's own measure. It knows no force and no turning on the way.</source>
        <translation>Ein Modell der Geometrie: Ein gerader Körper mit den Maßen der Tabelle gleitet in das gemessene Blut und nimmt die Form seiner Wand an, so weit es die Kompression der Tabelle nach ihrem eigenen Maß erlaubt. Es kennt keine Kraft und keine Drehung auf dem Weg.</translation>
    </message>
    <message>
        <source>From the crossing to the ostium: the straight line and, where a steerable sheath can make the way, its bend, on CT in the plane of crossing, ostium and axis.</source>
        <translation>Von der Punktion zum Ostium: die gerade Linie und, wo eine steuerbare Schleuse den Weg nehmen kann, ihr Bogen, auf dem CT in der Ebene von Punktion, Ostium und Achse.</translation>
    </message>
</context>
<context>
    <name>RestoreContour</name>
    <message>
        <source>Restore the contour that was found</source>
        <translation>Die gefundene Kontur wiederherstellen</translation>
    </message>
</context>
<context>
    <name>Role</name>
    <message>
        <source>ostium</source>
        <translation>Ostium</translation>
    </message>
    <message>
        <source>landing zone</source>
        <translation>Landezone</translation>
    </message>
    <message>
        <source>axis</source>
        <translation>Achse</translation>
    </message>
    <message>
        <source>atrium</source>
        <translation>Vorhof</translation>
    </message>
    <message>
        <source>tip</source>
        <translation>Spitze</translation>
    </message>
    <message>
        <source>circumflex artery</source>
        <translation>Zirkumflexarterie</translation>
    </message>
    <message>
        <source>ridge</source>
        <translation>Leiste</translation>
    </message>
    <message>
        <source>aorta</source>
        <translation>Aorta</translation>
    </message>
    <message>
        <source>cross-section</source>
        <translation>Querschnitt</translation>
    </message>
    <message>
        <source>septal crossing</source>
        <translation>Septumdurchtritt</translation>
    </message>
    <message>
        <source>device</source>
        <translation>Implantat</translation>
    </message>
    <message>
        <source>measurement</source>
        <translation>Messung</translation>
    </message>
    <message>
        <source>pulmonary artery</source>
        <translation>Pulmonalarterie</translation>
    </message>
</context>
<context>
    <name>SameCutPage</name>
    <message>
        <source>plane</source>
        <translation>Ebene</translation>
    </message>
    <message>
        <source>phase</source>
        <translation>Phase</translation>
    </message>
    <message>
        <source>pressure</source>
        <translation>Druck</translation>
    </message>
    <message>
        <source>modality</source>
        <translation>Verfahren</translation>
    </message>
    <message>
        <source>unexplained</source>
        <translation>ungeklärt</translation>
    </message>
    <message>
        <source>CT in the plane of the echo frame</source>
        <translation>CT in der Ebene des Echobilds</translation>
    </message>
    <message>
        <source>Mark at least three places in both CT and echo: then CT is cut in this plane.</source>
        <translation>Mindestens drei Stellen in CT und Echo markieren: dann wird das CT in dieser Ebene geschnitten.</translation>
    </message>
    <message>
        <source>There is no CT to cut.</source>
        <translation>Es gibt kein CT zum Schneiden.</translation>
    </message>
    <message>
        <source>CT in this plane</source>
        <translation>CT in dieser Ebene</translation>
    </message>
    <message>
        <source>Echo view</source>
        <translation>Echoansicht</translation>
    </message>
    <message>
        <source>Place in CT</source>
        <translation>Stelle im CT</translation>
    </message>
    <message>
        <source>The place in CT that you mark on the echo frame next</source>
        <translation>Die Stelle im CT, die Sie als nächste auf dem Echobild markieren</translation>
    </message>
    <message>
        <source>Mark it on echo</source>
        <translation>Auf dem Echo markieren</translation>
    </message>
    <message>
        <source>Click the same place on the echo frame (key Shift+P)</source>
        <translation>Dieselbe Stelle auf dem Echobild anklicken (Taste Shift+P)</translation>
    </message>
    <message>
        <source>Remove the last</source>
        <translation>Letzte entfernen</translation>
    </message>
    <message>
        <source>Remove the place that was marked last</source>
        <translation>Die zuletzt markierte Stelle entfernen</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Click the same place on the echo frame: %1. Escape leaves.</source>
        <translation>Dieselbe Stelle auf dem Echobild anklicken: %1. Escape bricht ab.</translation>
    </message>
    <message>
        <source>Why CT and echo differ can be told once the landing zone is measured on CT and on the echo views of this moment.</source>
        <translation>Warum CT und Echo verschieden sind, lässt sich sagen, sobald die Landezone im CT und auf den Echoansichten dieses Zeitpunkts gemessen ist.</translation>
    </message>
    <message>
        <source>Area-derived diameter of the landing zone, CT less echo: %1. Of this:</source>
        <translation>Flächenbezogener Durchmesser der Landezone, CT minus Echo: %1. Davon:</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Crossing of the scanner-axis sections</source>
        <translation>Kreuzung der Schnitte der Scannerachsen</translation>
    </message>
    <message>
        <source>There are no echo views in this case.</source>
        <translation>In diesem Fall gibt es keine Echoansichten.</translation>
    </message>
    <message numerus="yes">
        <source>The probe is placed by %n place(s) marked in both; they lie %1 apart after the fit (root mean square).</source>
        <translation>
            <numerusform>Die Sonde ist durch %n in beiden markierte Stelle eingepasst; der Abstand danach ist %1 (quadratisches Mittel).</numerusform>
            <numerusform>Die Sonde ist durch %n in beiden markierte Stellen eingepasst; der Abstand danach ist %1 (quadratisches Mittel).</numerusform>
        </translation>
    </message>
    <message>
        <source>The landing zone as CT reads it in this view: %1</source>
        <translation>Die Landezone, wie das CT sie in dieser Ansicht liest: %1</translation>
    </message>
    <message>
        <source>The file does not tell where the tip of the sector lies: the middle of the region's upper edge stands for it.</source>
        <translation>Die Datei sagt nicht, wo die Spitze des Sektors liegt: die Mitte des oberen Randes des Bereichs steht dafür.</translation>
    </message>
    <message>
        <source>The echo view whose plane CT is cut in</source>
        <translation>Die Echoansicht, in deren Ebene das CT geschnitten wird</translation>
    </message>
    <message>
        <source>The widths on echo lie %1 beyond the landing zone of CT, towards the tip (a negative number: nearer to the atrium).</source>
        <translation>Die Weiten im Echo liegen %1 hinter der Landezone des CT, zur Spitze hin (negative Zahl: näher am Vorhof).</translation>
    </message>
    <message>
        <source>The plane's part is not told: it needs the probe's place, from places marked in both.</source>
        <translation>Der Anteil der Ebene ist nicht bekannt: Dazu muss der Ort der Sonde bekannt sein, aus Stellen, die in beiden markiert sind.</translation>
    </message>
    <message>
        <source>CT was read at %1, echo at %2: what the phase changes beyond its pressure lies in the unexplained part.</source>
        <translation>Das CT wurde bei %1 gelesen, das Echo bei %2: Was die Phase über ihren Druck hinaus ändert, liegt im ungeklärten Teil.</translation>
    </message>
    <message>
        <source>planned %1</source>
        <translation>geplant: %1</translation>
    </message>
</context>
<context>
    <name>ScannerPage</name>
    <message>
        <source>Axial section</source>
        <translation>Axialer Schnitt</translation>
    </message>
    <message>
        <source>Coronal section</source>
        <translation>Koronarer Schnitt</translation>
    </message>
    <message>
        <source>Sagittal section</source>
        <translation>Sagittaler Schnitt</translation>
    </message>
</context>
<context>
    <name>ScannerSectionView</name>
    <message>
        <source>Marks must lie on the images: click inside the picture.</source>
        <translation>Markierungen müssen auf den Bildern liegen: in das Bild klicken.</translation>
    </message>
</context>
<context>
    <name>ScoresEditor</name>
    <message>
        <source>%1: %2 per 100 patient-years as published (%3; %4).</source>
        <translation>%1: %2 je 100 Patientenjahre, wie veröffentlicht (%3; %4).</translation>
    </message>
    <message>
        <source>No item counts.</source>
        <translation>Keine Angabe zählt.</translation>
    </message>
    <message>
        <source>Counted: %1.</source>
        <translation>Gezählt: %1.</translation>
    </message>
    <message>
        <source>No item is recorded.</source>
        <translation>Keine Angabe ist erfasst.</translation>
    </message>
    <message>
        <source>CHA₂DS₂-VASc %1 of %2. %3</source>
        <translation>CHA₂DS₂-VASc %1 von %2. %3</translation>
    </message>
    <message>
        <source>CHA₂DS₂-VA (without sex) %1 of %2; no rates are published for it.</source>
        <translation>CHA₂DS₂-VA (ohne Geschlecht) %1 von %2; dafür sind keine Raten veröffentlicht.</translation>
    </message>
    <message>
        <source>HAS-BLED %1 of 9: high. %2</source>
        <translation>HAS-BLED %1 von 9: hoch. %2</translation>
    </message>
    <message>
        <source>HAS-BLED %1 of 9. %2</source>
        <translation>HAS-BLED %1 von 9. %2</translation>
    </message>
    <message>
        <source>No rate is published for so high a score: too few patients.</source>
        <translation>Für einen so hohen Wert ist keine Rate veröffentlicht: zu wenige Patienten.</translation>
    </message>
    <message>
        <source>Stroke risk</source>
        <translation>Schlaganfallrisiko</translation>
    </message>
    <message>
        <source>Bleeding risk under anticoagulation</source>
        <translation>Blutungsrisiko unter Antikoagulation</translation>
    </message>
    <message>
        <source>The scores know nothing of a mitral repair or a closed appendage; no adjusted rate is made up.</source>
        <translation>Die Scores wissen nichts von einer Mitralreparatur oder einem verschlossenen Vorhofohr; keine angepasste Rate wird erfunden.</translation>
    </message>
    <message>
        <source>Age, years</source>
        <translation>Alter, Jahre</translation>
    </message>
    <message>
        <source>Sex</source>
        <translation>Geschlecht</translation>
    </message>
    <message>
        <source>female</source>
        <translation>weiblich</translation>
    </message>
    <message>
        <source>male</source>
        <translation>männlich</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>Heart failure or left ventricular dysfunction</source>
        <translation>Herzinsuffizienz oder linksventrikuläre Dysfunktion</translation>
    </message>
    <message>
        <source>Hypertension</source>
        <translation>Hypertonie</translation>
    </message>
    <message>
        <source>Diabetes</source>
        <translation>Diabetes</translation>
    </message>
    <message>
        <source>Stroke, transient attack or embolism</source>
        <translation>Schlaganfall, TIA oder Embolie</translation>
    </message>
    <message>
        <source>Vascular disease</source>
        <translation>Gefäßerkrankung</translation>
    </message>
    <message>
        <source>Age for the bleeding score, years</source>
        <translation>Alter für den Blutungsscore, Jahre</translation>
    </message>
    <message>
        <source>Systolic pressure, mmHg</source>
        <translation>Systolischer Druck, mmHg</translation>
    </message>
    <message>
        <source>Drinks a week</source>
        <translation>Alkoholische Getränke pro Woche</translation>
    </message>
    <message>
        <source>Uncontrolled hypertension (above 160 mmHg systolic)</source>
        <translation>Unkontrollierte Hypertonie (über 160 mmHg systolisch)</translation>
    </message>
    <message>
        <source>Abnormal renal function</source>
        <translation>Gestörte Nierenfunktion</translation>
    </message>
    <message>
        <source>Abnormal liver function</source>
        <translation>Gestörte Leberfunktion</translation>
    </message>
    <message>
        <source>Stroke</source>
        <translation>Schlaganfall</translation>
    </message>
    <message>
        <source>Bleeding or predisposition</source>
        <translation>Blutung oder Neigung dazu</translation>
    </message>
    <message>
        <source>Takes a vitamin K antagonist</source>
        <translation>Nimmt einen Vitamin-K-Antagonisten</translation>
    </message>
    <message>
        <source>Labile INR</source>
        <translation>Schwankende INR</translation>
    </message>
    <message>
        <source>Antiplatelet drug or NSAID</source>
        <translation>Plättchenhemmer oder NSAR</translation>
    </message>
    <message>
        <source>Alcohol, eight drinks a week or more</source>
        <translation>Alkohol, acht Getränke pro Woche oder mehr</translation>
    </message>
</context>
<context>
    <name>SeatModel</name>
    <message>
        <source>not seen</source>
        <translation>nicht zu sehen</translation>
    </message>
    <message>
        <source>pressed out %1</source>
        <translation>%1 hinausgedrückt</translation>
    </message>
    <message>
        <source>no body to seat</source>
        <translation>kein Körper zu setzen</translation>
    </message>
    <message>
        <source>%1 needed</source>
        <translation>%1 nötig</translation>
    </message>
    <message>
        <source>no room</source>
        <translation>kein Platz</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>mindestens %1</translation>
    </message>
    <message>
        <source>not marked</source>
        <translation>nicht markiert</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>overlap %1</source>
        <translation>Überlappung %1</translation>
    </message>
    <message>
        <source>above: %1</source>
        <translation>oben: %1</translation>
    </message>
    <message>
        <source>below: %1</source>
        <translation>unten: %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>nothing marked</source>
        <translation>nichts markiert</translation>
    </message>
    <message>
        <source>Size %1, %2: %3</source>
        <translation>Größe %1, %2: %3</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>Reach from the ostium</source>
        <translation>Reichweite ab Ostium</translation>
    </message>
    <message>
        <source>Reach from the landing plane</source>
        <translation>Reichweite ab Landeebene</translation>
    </message>
    <message>
        <source>Beyond the artery</source>
        <translation>Jenseits der Arterie</translation>
    </message>
    <message>
        <source>Disc over the ostium</source>
        <translation>Scheibe über dem Ostium</translation>
    </message>
    <message>
        <source>Gaps</source>
        <translation>Spalte</translation>
    </message>
    <message>
        <source>Clearances</source>
        <translation>Abstände</translation>
    </message>
    <message>
        <source>touches the wall</source>
        <translation>berührt die Wand</translation>
    </message>
</context>
<context>
    <name>SeatPanel</name>
    <message>
        <source>Copy the seats as a table</source>
        <translation>Sitze als Tabelle kopieren</translation>
    </message>
    <message>
        <source>Copy reach, cover, gaps and clearances of all sizes for a spreadsheet</source>
        <translation>Reichweite, Deckung, Spalte und Abstände aller Größen für eine Tabellenkalkulation kopieren</translation>
    </message>
    <message>
        <source>Size %1, chosen</source>
        <translation>Größe %1, gewählt</translation>
    </message>
    <message>
        <source>Size %1, greatest fit chance</source>
        <translation>Größe %1, höchste Passchance</translation>
    </message>
    <message>
        <source>All sizes</source>
        <translation>Alle Größen</translation>
    </message>
    <message>
        <source>What this rests on</source>
        <translation>Worauf das beruht</translation>
    </message>
    <message>
        <source>At the decision pressure the wall is taken to lie farther out than on the CT: diameters are %1 larger.</source>
        <translation>Beim Entscheidungsdruck wird die Wand weiter außen angenommen als im CT: Durchmesser sind um %1 größer.</translation>
    </message>
    <message>
        <source>At the decision pressure the wall is taken to lie farther in than on the CT: diameters are %1 smaller.</source>
        <translation>Beim Entscheidungsdruck wird die Wand weiter innen angenommen als im CT: Durchmesser sind um %1 kleiner.</translation>
    </message>
    <message>
        <source>The sizes are being seated …</source>
        <translation>Die Größen werden gesetzt …</translation>
    </message>
    <message>
        <source>A model of geometry: a straight body with the chart's dimensions slides into the blood that was measured and takes the form of its wall, as far as the chart's compression allows by the chart's own measure. It knows no force and no turning on the way.</source>
        <translation>Ein Modell der Geometrie: Ein gerader Körper mit den Maßen der Tabelle gleitet in das gemessene Blut und nimmt die Form seiner Wand an, so weit es die Kompression der Tabelle nach ihrem eigenen Maß erlaubt. Es kennt keine Kraft und keine Drehung auf dem Weg.</translation>
    </message>
</context>
<context>
    <name>Seats</name>
    <message>
        <source>How the sizes would sit is told once the appendage is measured on CT.</source>
        <translation>Wie die Größen säßen, wird gesagt, sobald das Vorhofohr im CT gemessen ist.</translation>
    </message>
</context>
<context>
    <name>SeptalFaceView</name>
    <message>
        <source>Septal face with the map of crossing height and angle</source>
        <translation>Septumfläche mit der Karte von Punktionshöhe und Winkel</translation>
    </message>
    <message>
        <source>Drag the crossing, or move it with the arrow keys (Shift: larger steps).</source>
        <translation>Die Punktionsstelle ziehen oder mit den Pfeiltasten bewegen (Umschalt: größere Schritte).</translation>
    </message>
    <message>
        <source>Nothing is marked on the septum yet.

Mark on the scanner-axis sections, with the buttons above:
1. the rim of the fossa ovalis, at least four points,
2. the mitral annulus, at least three points,
3. where the leaflets meet in systole,
4. the middle of the aortic root.

The angle to the appendage follows from its marks (atrium and tip).</source>
        <translation>Am Septum ist noch nichts markiert.

Auf den Schnitten der Scannerachsen markieren, mit den Knöpfen oben:
1. den Rand der Fossa ovalis, mindestens vier Punkte,
2. den Mitralanulus, mindestens drei Punkte,
3. wo sich die Segel in der Systole treffen,
4. die Mitte der Aortenwurzel.

Der Winkel zum Vorhofohr folgt aus dessen Marken (Vorhof und Spitze).</translation>
    </message>
    <message>
        <source>The rim of the fossa ovalis is not marked yet.

Mark at least four points around it on the scanner-axis sections, with the button above.</source>
        <translation>Der Rand der Fossa ovalis ist noch nicht markiert.

Mindestens vier Punkte rundum auf den Schnitten der Scannerachsen markieren, mit dem Knopf oben.</translation>
    </message>
</context>
<context>
    <name>SeptumDrawing</name>
    <message>
        <source>limit %1</source>
        <translation>Grenze %1</translation>
    </message>
    <message>
        <source>serves repair and closure</source>
        <translation>dient Reparatur und Verschluss</translation>
    </message>
    <message>
        <source>serves both with a steerable sheath</source>
        <translation>dient beidem mit steuerbarer Schleuse</translation>
    </message>
    <message>
        <source>serves the closure with a steerable sheath</source>
        <translation>dient dem Verschluss mit steuerbarer Schleuse</translation>
    </message>
    <message>
        <source>serves the closure</source>
        <translation>dient dem Verschluss</translation>
    </message>
    <message>
        <source>most room</source>
        <translation>meister Raum</translation>
    </message>
    <message>
        <source>aortic root</source>
        <translation>Aortenwurzel</translation>
    </message>
    <message>
        <source>front (aortic root)</source>
        <translation>vorn (Aortenwurzel)</translation>
    </message>
    <message>
        <source>posterior wall</source>
        <translation>Hinterwand</translation>
    </message>
    <message>
        <source>superior</source>
        <translation>oben</translation>
    </message>
    <message>
        <source>inferior</source>
        <translation>unten</translation>
    </message>
    <message>
        <source>outside the fossa</source>
        <translation>außerhalb der Fossa</translation>
    </message>
    <message>
        <source>Solid lines: height over the plane of the mitral annulus.</source>
        <translation>Durchgezogene Linien: Höhe über der Ebene des Mitralanulus.</translation>
    </message>
    <message>
        <source>Solid lines: height over the level of coaptation, parallel to the septum.</source>
        <translation>Durchgezogene Linien: Höhe über der Koaptation, parallel zum Septum.</translation>
    </message>
    <message>
        <source>Fill and dotted lines: angle of a straight sheath to the appendage's proximal axis; the limit is dashed.</source>
        <translation>Füllung und gepunktete Linien: Winkel einer geraden Schleuse zur proximalen Achse des Vorhofohrs; die Grenze ist gestrichelt.</translation>
    </message>
    <message>
        <source>%1 over the annulus</source>
        <translation>%1 über dem Anulus</translation>
    </message>
    <message>
        <source>%1 over the coaptation</source>
        <translation>%1 über der Koaptation</translation>
    </message>
    <message>
        <source>%1 to the axis, straight</source>
        <translation>%1 zur Achse, gerade</translation>
    </message>
    <message>
        <source>%1 to the axis, steerable</source>
        <translation>%1 zur Achse, steuerbar</translation>
    </message>
    <message>
        <source>%1 to the ostium</source>
        <translation>%1 zum Ostium</translation>
    </message>
    <message>
        <source>bend, radius %1: arrives at %2</source>
        <translation>Bogen, Radius %1: trifft ein unter %2</translation>
    </message>
    <message>
        <source>straight: %1, arrives at %2</source>
        <translation>gerade: %1, trifft ein unter %2</translation>
    </message>
</context>
<context>
    <name>SeptumMarkBar</name>
    <message>
        <source>Remove these points</source>
        <translation>Diese Punkte entfernen</translation>
    </message>
    <message>
        <source>%1
Key %2; drag moves a point, Delete removes the one under the pointer, Escape ends.</source>
        <translation>%1
Taste %2; Ziehen verschiebt einen Punkt, Entf löscht den unter dem Zeiger, Escape beendet.</translation>
    </message>
    <message>
        <source>Remove all points of the kind that is being marked</source>
        <translation>Alle Punkte der Art entfernen, die gerade markiert wird</translation>
    </message>
    <message>
        <source>%1 Escape ends.</source>
        <translation>%1 Escape beendet.</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
</context>
<context>
    <name>SeptumMarking</name>
    <message>
        <source>Marks must lie on the images: click inside the picture.</source>
        <translation>Marken müssen auf den Bildern liegen: in das Bild klicken.</translation>
    </message>
</context>
<context>
    <name>SeptumPage</name>
    <message>
        <source>Same crossing</source>
        <translation>Dieselbe Punktion</translation>
    </message>
    <message>
        <source>Same crossing, with a steerable sheath</source>
        <translation>Dieselbe Punktion, mit steuerbarer Schleuse</translation>
    </message>
    <message>
        <source>Second, lower crossing</source>
        <translation>Zweite, tiefere Punktion</translation>
    </message>
    <message>
        <source>Closure last</source>
        <translation>Verschluss zuletzt</translation>
    </message>
    <message>
        <source>Closure alone</source>
        <translation>Nur der Verschluss</translation>
    </message>
    <message>
        <source>No answer yet</source>
        <translation>Noch keine Antwort</translation>
    </message>
    <message>
        <source>The same session repairs the mitral valve</source>
        <translation>Dieselbe Sitzung repariert die Mitralklappe</translation>
    </message>
    <message>
        <source>A steerable sheath is at hand</source>
        <translation>Eine steuerbare Schleuse ist zur Hand</translation>
    </message>
    <message>
        <source>Seen from the left atrium</source>
        <translation>Vom linken Vorhof gesehen</translation>
    </message>
    <message>
        <source>Seen from the right atrium</source>
        <translation>Vom rechten Vorhof gesehen</translation>
    </message>
    <message>
        <source>Side from which the septum is seen</source>
        <translation>Seite, von der das Septum gesehen wird</translation>
    </message>
    <message>
        <source>Cross where there is most room</source>
        <translation>Punktieren, wo der meiste Raum ist</translation>
    </message>
    <message>
        <source>Choose the middle of the hatched region as the crossing (key Shift+M)</source>
        <translation>Die Mitte des schraffierten Bereichs als Punktionsstelle wählen (Taste Umschalt+M)</translation>
    </message>
    <message>
        <source>Give the crossing up</source>
        <translation>Punktionsstelle aufgeben</translation>
    </message>
    <message>
        <source>Take the chosen crossing away</source>
        <translation>Die gewählte Punktionsstelle wegnehmen</translation>
    </message>
    <message>
        <source>Look from the other atrium</source>
        <translation>Vom anderen Vorhof sehen</translation>
    </message>
    <message>
        <source>See the septum from the left or from the right atrium (key Shift+X)</source>
        <translation>Das Septum vom linken oder vom rechten Vorhof sehen (Taste Umschalt+X)</translation>
    </message>
    <message>
        <source>Datum of the height</source>
        <translation>Bezug der Höhe</translation>
    </message>
    <message>
        <source>From where the height band of the repair counts. Published heights count from the annulus; DICOM's own height (131130) counts from the leaflets, parallel to the septum.</source>
        <translation>Von wo der Höhenbereich der Reparatur zählt. Veröffentlichte Höhen zählen vom Anulus; die Höhe von DICOM (131130) zählt von den Segeln, parallel zum Septum.</translation>
    </message>
    <message>
        <source>Height counts</source>
        <translation>Höhe zählt</translation>
    </message>
    <message>
        <source>Height from, mm</source>
        <translation>Höhe von, mm</translation>
    </message>
    <message>
        <source>Height to, mm</source>
        <translation>Höhe bis, mm</translation>
    </message>
    <message>
        <source>Angle at most, degrees</source>
        <translation>Winkel höchstens, Grad</translation>
    </message>
    <message>
        <source>Radius of its bend, mm</source>
        <translation>Radius ihres Bogens, mm</translation>
    </message>
    <message>
        <source>Leaves the septum within, degrees</source>
        <translation>Verlässt das Septum innerhalb von, Grad</translation>
    </message>
    <message>
        <source>Defaults: 40 mm and more over the annulus was read, the range 35 to 45 mm is from memory; 30 degrees was read. Radius and departure of the sheath are assumptions: enter those of the sheath in use.</source>
        <translation>Vorgaben: 40 mm und mehr über dem Anulus wurden gelesen, der Bereich 35 bis 45 mm ist aus dem Gedächtnis; 30 Grad wurden gelesen. Radius und Abgang der Schleuse sind Annahmen: die der verwendeten Schleuse eintragen.</translation>
    </message>
    <message>
        <source>No crossing is chosen: click on the face, or take the place with most room.</source>
        <translation>Keine Punktionsstelle ist gewählt: auf die Fläche klicken oder den Ort mit dem meisten Raum nehmen.</translation>
    </message>
    <message>
        <source>The chosen crossing</source>
        <translation>Die gewählte Punktionsstelle</translation>
    </message>
    <message>
        <source> (being computed again)</source>
        <translation> (wird neu berechnet)</translation>
    </message>
    <message>
        <source>over the annulus</source>
        <translation>über dem Anulus</translation>
    </message>
    <message>
        <source>over the coaptation</source>
        <translation>über der Koaptation</translation>
    </message>
</context>
<context>
    <name>SeptumPoint</name>
    <message>
        <source>mitral annulus</source>
        <translation>Mitralanulus</translation>
    </message>
    <message>
        <source>coaptation of the leaflets</source>
        <translation>Koaptation der Segel</translation>
    </message>
    <message>
        <source>rim of the fossa</source>
        <translation>Rand der Fossa</translation>
    </message>
    <message>
        <source>aortic root</source>
        <translation>Aortenwurzel</translation>
    </message>
    <message>
        <source>Click points around the mitral annulus, at least three, better eight.</source>
        <translation>Punkte rund um den Mitralanulus anklicken, mindestens drei, besser acht.</translation>
    </message>
    <message>
        <source>Click where the mitral leaflets meet in systole, one point or several along the line.</source>
        <translation>Anklicken, wo sich die Mitralsegel in der Systole treffen, einen Punkt oder mehrere entlang der Linie.</translation>
    </message>
    <message>
        <source>Click points around the rim of the fossa ovalis on the septum, at least four, better eight.</source>
        <translation>Punkte rund um den Rand der Fossa ovalis am Septum anklicken, mindestens vier, besser acht.</translation>
    </message>
    <message>
        <source>Click the middle of the aortic root beside the septum: it tells the side that must not be crossed.</source>
        <translation>Die Mitte der Aortenwurzel neben dem Septum anklicken: Sie sagt, welche Seite nicht durchquert werden darf.</translation>
    </message>
</context>
<context>
    <name>Session</name>
    <message>
        <source>Looking through %1 …</source>
        <translation>%1 wird durchsucht …</translation>
    </message>
    <message>
        <source>Loading was cancelled.</source>
        <translation>Das Laden wurde abgebrochen.</translation>
    </message>
    <message>
        <source>Loaded %1.</source>
        <translation>%1 geladen.</translation>
    </message>
    <message>
        <source>Loaded %1. Mark the atrium and the tip of the appendage: then it is measured.</source>
        <translation>%1 geladen. Vorhof und Spitze des Vorhofohrs markieren: dann wird es gemessen.</translation>
    </message>
    <message>
        <source>Place the marks of the teaching case</source>
        <translation>Die Markierungen des Lehrfalls setzen</translation>
    </message>
    <message>
        <source>This is the invented teaching case: its marks were placed for you. Undo takes them back, so that you can mark it yourself.</source>
        <translation>Dies ist der erfundene Lehrfall: seine Markierungen wurden für Sie gesetzt. Rückgängig nimmt sie zurück, damit Sie selbst markieren können.</translation>
    </message>
    <message>
        <source>Choose another series</source>
        <translation>Eine andere Serie wählen</translation>
    </message>
    <message>
        <source>Loading %1 …</source>
        <translation>%1 wird geladen …</translation>
    </message>
    <message>
        <source>Measuring was cancelled. Move a mark to measure again.</source>
        <translation>Das Messen wurde abgebrochen. Eine Markierung bewegen, um neu zu messen.</translation>
    </message>
    <message>
        <source>the series</source>
        <translation>die Serie</translation>
    </message>
    <message>
        <source>“%1”</source>
        <translation>„%1“</translation>
    </message>
    <message>
        <source>%1, phase %2</source>
        <translation>%1, Phase %2</translation>
    </message>
    <message>
        <source>Nothing was changed: %1 Save the case under another name to go on with it.</source>
        <translation>Nichts wurde geändert: %1 Den Fall unter einem anderen Namen sichern, um damit weiterzuarbeiten.</translation>
    </message>
    <message>
        <source>The last edits are not on disk yet. %1 They stay in this window and are tried again every second.</source>
        <translation>Die letzten Änderungen sind noch nicht auf der Platte. %1 Sie bleiben in diesem Fenster und werden jede Sekunde erneut versucht.</translation>
    </message>
    <message>
        <source>Looking for the images of the case in %1 …</source>
        <translation>Die Bilder des Falls werden in %1 gesucht …</translation>
    </message>
    <message>
        <source>Looking for the images was cancelled; the case is open without them.</source>
        <translation>Die Suche nach den Bildern wurde abgebrochen; der Fall ist ohne sie geöffnet.</translation>
    </message>
    <message>
        <source>Opened the case and loaded %1.</source>
        <translation>Fall geöffnet und %1 geladen.</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>Gesichert als %1.</translation>
    </message>
    <message>
        <source>%1 Choose one in the evidence list: double click, or Enter.</source>
        <translation>%1 Eine in der Befundliste wählen: Doppelklick oder Enter.</translation>
    </message>
    <message>
        <source>There is no CT to measure in this folder. Echo views and X-ray runs can be measured; what compares them with CT stays empty.</source>
        <translation>In diesem Ordner ist kein CT zum Messen. Echoansichten und Röntgenläufe können gemessen werden; was sie mit CT vergleicht, bleibt leer.</translation>
    </message>
    <message>
        <source>The case is open. It names no images; open a folder of images to measure.</source>
        <translation>Der Fall ist geöffnet. Er nennt keine Bilder; zum Messen einen Ordner mit Bildern öffnen.</translation>
    </message>
    <message>
        <source>Opened the case and its pictures. It has no CT: what compares them with CT stays empty.</source>
        <translation>Der Fall und seine Bilder sind geöffnet. Er hat kein CT: Was sie mit dem CT vergleicht, bleibt leer.</translation>
    </message>
</context>
<context>
    <name>SettingsDialog</name>
    <message>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>As the system</source>
        <translation>Wie das System</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>&amp;Sprache</translation>
    </message>
    <message>
        <source>Dark, for the reading room</source>
        <translation>Dunkel, für den Befundraum</translation>
    </message>
    <message>
        <source>Light, for print and bright rooms</source>
        <translation>Hell, für Druck und helle Räume</translation>
    </message>
    <message>
        <source>&amp;Theme</source>
        <translation>&amp;Farben</translation>
    </message>
    <message>
        <source>&amp;Hide names on screen and in pictures from the start</source>
        <translation>Namen auf dem Schirm und in Bildern von Anfang an &amp;verbergen</translation>
    </message>
    <message>
        <source>Written into the case's journal and its reports</source>
        <translation>Steht im Protokoll des Falls und in seinen Berichten</translation>
    </message>
    <message>
        <source>Your &amp;name</source>
        <translation>Ihr &amp;Name</translation>
    </message>
    <message>
        <source>Choose the size chart that a new case begins with</source>
        <translation>Die Größentabelle wählen, mit der ein neuer Fall beginnt</translation>
    </message>
    <message>
        <source>Choose a size chart</source>
        <translation>Eine Größentabelle wählen</translation>
    </message>
    <message>
        <source>Size charts (*.json)</source>
        <translation>Größentabellen (*.json)</translation>
    </message>
    <message>
        <source>Size &amp;chart</source>
        <translation>&amp;Größentabelle</translation>
    </message>
    <message>
        <source> dots per inch</source>
        <translation> Punkte pro Zoll</translation>
    </message>
    <message>
        <source>&amp;Pictures</source>
        <translation>B&amp;ilder</translation>
    </message>
    <message>
        <source>&amp;Keep unsaved work</source>
        <translation>Ungesicherte Arbeit &amp;aufbewahren</translation>
    </message>
    <message>
        <source>It is offered again when the program ended without saving</source>
        <translation>Sie wird wieder angeboten, wenn das Programm ohne Sichern endete</translation>
    </message>
    <message>
        <source>Parts of the settings</source>
        <translation>Teile der Einstellungen</translation>
    </message>
    <message>
        <source>Screen</source>
        <translation>Bildschirm</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Person</translation>
    </message>
    <message>
        <source>Cases</source>
        <translation>Fälle</translation>
    </message>
    <message>
        <source>Reports</source>
        <translation>Berichte</translation>
    </message>
    <message>
        <source>Another language holds from the next start.</source>
        <translation>Eine andere Sprache gilt ab dem nächsten Start.</translation>
    </message>
    <message>
        <source>Usual</source>
        <translation>Üblich</translation>
    </message>
    <message>
        <source>Larger</source>
        <translation>Größer</translation>
    </message>
    <message>
        <source>Largest</source>
        <translation>Am größten</translation>
    </message>
    <message>
        <source>Si&amp;ze of letters</source>
        <translation>Schrift&amp;größe</translation>
    </message>
    <message>
        <source>Lengths are in mm, areas in mm², volumes in mL, pressures in mmHg: always, so that one figure looks alike on every screen.</source>
        <translation>Längen in mm, Flächen in mm², Volumen in mL, Drücke in mmHg: immer, damit eine Zahl auf jedem Bildschirm gleich aussieht.</translation>
    </message>
    <message>
        <source>for example: imaging cardiologist</source>
        <translation>zum Beispiel: Kardiologin, Bildgebung</translation>
    </message>
    <message>
        <source>Put behind your name where you sign a decision</source>
        <translation>Steht hinter Ihrem Namen, wo Sie eine Entscheidung unterschreiben</translation>
    </message>
    <message>
        <source>Your &amp;role</source>
        <translation>Ihre &amp;Rolle</translation>
    </message>
    <message>
        <source>Name and role are offered where a decision is signed. They are no proof of who sat here.</source>
        <translation>Name und Rolle werden angeboten, wo unterschrieben wird. Sie beweisen nicht, wer hier saß.</translation>
    </message>
    <message>
        <source>&amp;Unsaved work in</source>
        <translation>&amp;Ungesichertes in</translation>
    </message>
    <message>
        <source>Choose the folder in which unsaved work is kept</source>
        <translation>Den Ordner wählen, in dem ungesicherte Arbeit aufbewahrt wird</translation>
    </message>
    <message>
        <source>Folder for unsaved work</source>
        <translation>Ordner für ungesicherte Arbeit</translation>
    </message>
    <message>
        <source>your own data folder</source>
        <translation>Ihr eigener Datenordner</translation>
    </message>
    <message>
        <source>none: chosen in each case</source>
        <translation>keine: in jedem Fall gewählt</translation>
    </message>
    <message>
        <source>Of pictures of the window that are copied or saved.</source>
        <translation>Für Bilder des Fensters, die gesichert werden.</translation>
    </message>
    <message>
        <source>Choose …</source>
        <translation>Wählen …</translation>
    </message>
</context>
<context>
    <name>SheathView</name>
    <message>
        <source>Way of the sheath from the crossing to the ostium</source>
        <translation>Weg der Schleuse von der Punktionsstelle zum Ostium</translation>
    </message>
    <message>
        <source>The way of the sheath is shown once the fossa is marked and the appendage is measured.</source>
        <translation>Der Weg der Schleuse wird gezeigt, sobald die Fossa markiert und das Vorhofohr gemessen ist.</translation>
    </message>
</context>
<context>
    <name>SizesModel</name>
    <message>
        <source>chosen; greatest fit chance</source>
        <translation>gewählt; höchste Passchance</translation>
    </message>
    <message>
        <source>chosen</source>
        <translation>gewählt</translation>
    </message>
    <message>
        <source>greatest fit chance</source>
        <translation>höchste Passchance</translation>
    </message>
    <message>
        <source>living range: %1</source>
        <translation>künftiger Bereich: %1</translation>
    </message>
    <message>
        <source>Size %1: compression allowed by the chart %2 to %3 of the nominal size.</source>
        <translation>Größe %1: die Tabelle erlaubt eine Kompression von %2 bis %3 des Nennmaßes.</translation>
    </message>
    <message>
        <source>Oversizing, percent of the appendage: %1. The two percentages are different numbers.</source>
        <translation>Übergröße, Prozent des Vorhofohrs: %1. Die beiden Prozentzahlen sind verschiedene Größen.</translation>
    </message>
    <message>
        <source>Too small at the highest pressure: %1; too tight at the lowest: %2.</source>
        <translation>Zu klein beim höchsten Druck: %1; zu eng beim niedrigsten: %2.</translation>
    </message>
    <message>
        <source>Size %1, %2: %3</source>
        <translation>Größe %1, %2: %3</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>Fit chance</source>
        <translation>Passchance</translation>
    </message>
    <message>
        <source>Living range</source>
        <translation>Künftiger Bereich</translation>
    </message>
    <message>
        <source>Compression</source>
        <translation>Kompression</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>Chance that the size's band holds the width at the decision pressure</source>
        <translation>Chance, dass der Bereich der Größe die Weite beim Entscheidungsdruck enthält</translation>
    </message>
    <message>
        <source>Chance that the compression stays inside its band at every pressure of the living range</source>
        <translation>Chance, dass die Kompression bei jedem künftigen Druck in ihrem Bereich bleibt</translation>
    </message>
    <message>
        <source>100 (nominal size − width) / nominal size, at the decision pressure</source>
        <translation>100 (Nenngröße − Weite) / Nenngröße, beim Entscheidungsdruck</translation>
    </message>
    <message>
        <source>Depth that there is, against the least depth that the chart asks for</source>
        <translation>Vorhandene Tiefe gegen die kleinste Tiefe, die die Tabelle verlangt</translation>
    </message>
</context>
<context>
    <name>SizesPanel</name>
    <message>
        <source>Load a device chart …</source>
        <translation>Eine Größentabelle laden …</translation>
    </message>
    <message>
        <source>Load a chart typed from the device's current instructions</source>
        <translation>Eine Tabelle laden, die aus der aktuellen Gebrauchsanweisung des Implantats abgetippt ist</translation>
    </message>
    <message>
        <source>Choose this size</source>
        <translation>Diese Größe wählen</translation>
    </message>
    <message>
        <source>Choose the selected size (Enter in the list)</source>
        <translation>Die markierte Größe wählen (Enter in der Liste)</translation>
    </message>
    <message>
        <source>Give up the chosen size</source>
        <translation>Die gewählte Größe aufgeben</translation>
    </message>
    <message>
        <source>Chart …</source>
        <translation>Tabelle …</translation>
    </message>
    <message>
        <source>Load a device chart from a file, or an invented one</source>
        <translation>Eine Größentabelle aus einer Datei laden, oder eine erfundene</translation>
    </message>
    <message>
        <source>Decision pressure, mmHg</source>
        <translation>Entscheidungsdruck, mmHg</translation>
    </message>
    <message>
        <source>Decision pressure in mmHg</source>
        <translation>Entscheidungsdruck in mmHg</translation>
    </message>
    <message>
        <source>Lowest to live with, mmHg</source>
        <translation>Niedrigster künftiger, mmHg</translation>
    </message>
    <message>
        <source>Lowest pressure to live with in mmHg</source>
        <translation>Niedrigster künftiger Druck in mmHg</translation>
    </message>
    <message>
        <source>Highest to live with, mmHg</source>
        <translation>Höchster künftiger, mmHg</translation>
    </message>
    <message>
        <source>Highest pressure to live with in mmHg</source>
        <translation>Höchster künftiger Druck in mmHg</translation>
    </message>
    <message>
        <source>Why the pressures differ</source>
        <translation>Warum die Drücke verschieden sind</translation>
    </message>
    <message>
        <source>Regurgitation may come back</source>
        <translation>Die Insuffizienz kann wiederkehren</translation>
    </message>
    <message>
        <source>Then the pressures before the repair stay among those to live with</source>
        <translation>Dann bleiben die Drücke vor der Reparatur unter den künftigen</translation>
    </message>
    <message>
        <source>Load a device chart</source>
        <translation>Eine Größentabelle laden</translation>
    </message>
    <message>
        <source>Device charts (*.json);;All files (*)</source>
        <translation>Größentabellen (*.json);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>%1, version %2 of %3. %4</source>
        <translation>%1, Version %2 vom %3. %4</translation>
    </message>
    <message>
        <source>No device chart is loaded.</source>
        <translation>Keine Größentabelle ist geladen.</translation>
    </message>
    <message>
        <source>The sizes are being judged again …</source>
        <translation>Die Größen werden neu beurteilt …</translation>
    </message>
    <message>
        <source>Warnings</source>
        <translation>Warnungen</translation>
    </message>
    <message>
        <source>Against size %1</source>
        <translation>Gegen Größe %1</translation>
    </message>
    <message>
        <source>About the chart</source>
        <translation>Zur Größentabelle</translation>
    </message>
    <message>
        <source>What was assumed</source>
        <translation>Was angenommen wurde</translation>
    </message>
    <message>
        <source>Device choice follows the device's current instructions for use, local protocol and law.</source>
        <translation>Die Wahl des Implantats folgt seiner aktuellen Gebrauchsanweisung, dem örtlichen Protokoll und dem Recht.</translation>
    </message>
</context>
<context>
    <name>SizesTable</name>
    <message>
        <source>Sizes of the chart</source>
        <translation>Größen der Tabelle</translation>
    </message>
</context>
<context>
    <name>Sizing</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message numerus="yes">
        <source>It rests on %n reading(s)</source>
        <translation>
            <numerusform>Es beruht auf %n Messung</numerusform>
            <numerusform>Es beruht auf %n Messungen</numerusform>
        </translation>
    </message>
    <message>
        <source>above %1</source>
        <translation>über %1</translation>
    </message>
    <message>
        <source>below %1</source>
        <translation>unter %1</translation>
    </message>
    <message>
        <source>%1 and would change with a reading by %2 at %3 %4.</source>
        <translation>%1 und würde sich ändern mit einer Messung durch %2 bei %3 %4.</translation>
    </message>
    <message>
        <source> or </source>
        <translation> oder </translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>The %1 at %2 is %3, with a chance of 95 % from %4.</source>
        <translation>%1 bei %2: %3, mit einer Chance von 95 % von %4.</translation>
    </message>
    <message>
        <source>Near 12 mmHg it widens by %1 mm per mmHg (± %2; %3 % of that is this patient's own, the rest is assumed).</source>
        <translation>Nahe 12 mmHg wird es um %1 mm je mmHg weiter (± %2; %3 % davon sind diesem Patienten eigen, der Rest ist angenommen).</translation>
    </message>
    <message>
        <source>if the change of pressure passes (%1): %2</source>
        <translation>wenn die Druckänderung vorübergeht (%1): %2</translation>
    </message>
    <message>
        <source>if it lasts (%1): %2</source>
        <translation>wenn sie bleibt (%1): %2</translation>
    </message>
    <message>
        <source>Widths to live with (95 %), %1.</source>
        <translation>Künftige Weiten (95 %), %1.</translation>
    </message>
    <message>
        <source>No size of the chart has any chance to fit.</source>
        <translation>Keine Größe der Tabelle hat eine Chance zu passen.</translation>
    </message>
    <message>
        <source>Size %1 has the greatest fit chance, %2, at %3; over the living range of %4 its compression stays inside its band with a chance of %5. %6</source>
        <translation>Größe %1 hat die höchste Passchance, %2, bei %3; im künftigen Bereich von %4 bleibt ihre Kompression mit einer Chance von %5 in ihrem Bereich. %6</translation>
    </message>
    <message>
        <source>at least %1, no verdict</source>
        <translation>mindestens %1, kein Urteil</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>enough: %1, needs %2</source>
        <translation>genug: %1, nötig %2</translation>
    </message>
    <message>
        <source>%1 short: %2, needs %3</source>
        <translation>%1 zu kurz: %2, nötig %3</translation>
    </message>
    <message>
        <source>up to %1; at most %2 too narrow</source>
        <translation>bis %1; höchstens %2 zu schmal</translation>
    </message>
    <message>
        <source>%1 to %2 too narrow</source>
        <translation>%1 bis %2 zu schmal</translation>
    </message>
    <message>
        <source>Measure the left atrial pressure</source>
        <translation>Den linken Vorhofdruck messen</translation>
    </message>
    <message>
        <source>One more set of echo angles</source>
        <translation>Noch ein Satz Echowinkel</translation>
    </message>
    <message>
        <source>Measure by 3D echo</source>
        <translation>Mit 3D-Echo messen</translation>
    </message>
    <message>
        <source>Measure again after filling</source>
        <translation>Nach Füllung neu messen</translation>
    </message>
</context>
<context>
    <name>StartPage</name>
    <message>
        <source>Ostium Gauge</source>
        <translation>Ostium Gauge</translation>
    </message>
    <message>
        <source>Open a folder of DICOM images …</source>
        <translation>Einen Ordner mit DICOM-Bildern öffnen …</translation>
    </message>
    <message>
        <source>Ctrl+O</source>
        <translation>Ctrl+O</translation>
    </message>
    <message>
        <source>or drop the folder on this window, or a case. Then mark the atrium and the tip of the appendage with two clicks.</source>
        <translation>oder den Ordner oder einen Fall auf dieses Fenster ziehen. Dann Vorhof und Spitze des Herzohrs mit zwei Klicks markieren.</translation>
    </message>
    <message>
        <source>Open a case …</source>
        <translation>Fall öffnen …</translation>
    </message>
    <message>
        <source>A case file that was saved before (Ctrl+Shift+O)</source>
        <translation>Eine früher gesicherte Falldatei (Strg+Umschalt+O)</translation>
    </message>
    <message>
        <source>Case library …</source>
        <translation>Fallbibliothek …</translation>
    </message>
    <message>
        <source>Cases kept in the library of a person or a team</source>
        <translation>Fälle in der Bibliothek einer Person oder eines Teams</translation>
    </message>
    <message>
        <source>Try the sample case</source>
        <translation>Beispielfall ansehen</translation>
    </message>
    <message>
        <source>An invented patient with CT, echo and fluoroscopy, marked and measured</source>
        <translation>Eine erfundene Patientin mit CT, Echo und Durchleuchtung, markiert und gemessen</translation>
    </message>
    <message>
        <source>Begin without images</source>
        <translation>Ohne Bilder beginnen</translation>
    </message>
    <message>
        <source>Type in readings and pressures, and judge the sizes of a chart</source>
        <translation>Messwerte und Drücke eintippen und die Größen einer Tabelle beurteilen</translation>
    </message>
    <message>
        <source>How wide is the left atrial appendage at which depth, under which pressure, and which size fits then: every value with its uncertainty.</source>
        <translation>Wie weit ist das linke Herzohr in welcher Tiefe, bei welchem Druck, und welche Größe passt dann: jeder Wert mit seiner Unsicherheit.</translation>
    </message>
    <message>
        <source>Recent cases</source>
        <translation>Letzte Fälle</translation>
    </message>
    <message>
        <source>Cases that you open or save are listed here.</source>
        <translation>Fälle, die Sie öffnen oder sichern, stehen hier.</translation>
    </message>
    <message>
        <source>Take it off the list</source>
        <translation>Von der Liste nehmen</translation>
    </message>
    <message>
        <source>The file of the case stays</source>
        <translation>Die Falldatei bleibt</translation>
    </message>
    <message>
        <source>Open it</source>
        <translation>Öffnen</translation>
    </message>
    <message>
        <source>Open the chosen case (Enter, or a double click)</source>
        <translation>Den gewählten Fall öffnen (Eingabetaste oder Doppelklick)</translation>
    </message>
</context>
<context>
    <name>StasisEditor</name>
    <message>
        <source>Finding of stasis</source>
        <translation>Stasebefund</translation>
    </message>
    <message>
        <source>Add a finding</source>
        <translation>Befund hinzufügen</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Stadium</translation>
    </message>
    <message>
        <source>0, none</source>
        <translation>0, keiner</translation>
    </message>
    <message>
        <source>4, severe</source>
        <translation>4, schwer</translation>
    </message>
    <message>
        <source>Spontaneous echo contrast (smoke), grade</source>
        <translation>Spontaner Echokontrast, Grad</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>Sludge</source>
        <translation>Sludge</translation>
    </message>
    <message>
        <source>Thrombus</source>
        <translation>Thrombus</translation>
    </message>
    <message>
        <source>Emptying velocity, cm/s</source>
        <translation>Entleerungsgeschwindigkeit, cm/s</translation>
    </message>
    <message>
        <source>Enhancement of the tip over the aorta (ratio)</source>
        <translation>Kontrastierung der Spitze zur Aorta (Verhältnis)</translation>
    </message>
    <message>
        <source>Phase of the enhancement</source>
        <translation>Phase der Kontrastierung</translation>
    </message>
    <message>
        <source>The appendage was looked at on purpose</source>
        <translation>Das Vorhofohr wurde gezielt angesehen</translation>
    </message>
    <message>
        <source>Seen by</source>
        <translation>Gesehen von</translation>
    </message>
    <message>
        <source>%1, seen by %2</source>
        <translation>%1, gesehen von %2</translation>
    </message>
    <message>
        <source>The plan is stopped: nothing may enter the appendage.</source>
        <translation>Der Plan ist angehalten: nichts darf in das Vorhofohr.</translation>
    </message>
    <message>
        <source>No size can be signed yet.</source>
        <translation>Noch kann keine Größe unterschrieben werden.</translation>
    </message>
    <message>
        <source>Nothing is recorded about stasis.</source>
        <translation>Über Stase ist nichts erfasst.</translation>
    </message>
    <message>
        <source>Stasis does not forbid to sign a size.</source>
        <translation>Stase verbietet nicht, eine Größe zu unterschreiben.</translation>
    </message>
</context>
<context>
    <name>Surface</name>
    <message>
        <source>atrium</source>
        <translation>Vorhof</translation>
    </message>
    <message>
        <source>appendage</source>
        <translation>Vorhofohr</translation>
    </message>
    <message>
        <source>ostium, proposed</source>
        <translation>Ostium, vorgeschlagen</translation>
    </message>
    <message>
        <source>depth %1</source>
        <translation>Tiefe %1</translation>
    </message>
</context>
<context>
    <name>SurfaceView</name>
    <message>
        <source>Surface: turn back to the long section</source>
        <translation>Oberfläche: zum Längsschnitt zurückdrehen</translation>
    </message>
    <message>
        <source>Surface: cut open</source>
        <translation>Oberfläche: aufschneiden</translation>
    </message>
    <message>
        <source>Surface of the blood in atrium and appendage</source>
        <translation>Oberfläche des Blutes in Vorhof und Vorhofohr</translation>
    </message>
    <message>
        <source>Drag or arrow keys turn (Shift: finely), Ctrl and wheel or + and − zoom, C cuts it open, Home turns it back to the long section.</source>
        <translation>Ziehen oder Pfeiltasten drehen (Umschalt: fein), Ctrl und Rad oder + und − vergrößern, C schneidet auf, Pos1 dreht zum Längsschnitt zurück.</translation>
    </message>
    <message>
        <source>surface, coarser while it moves</source>
        <translation>Oberfläche, gröber während der Bewegung</translation>
    </message>
    <message>
        <source>surface, cut along the long section</source>
        <translation>Oberfläche, am Längsschnitt geschnitten</translation>
    </message>
    <message>
        <source>surface, cut along the cross-section</source>
        <translation>Oberfläche, am Querschnitt geschnitten</translation>
    </message>
    <message>
        <source>surface of the blood</source>
        <translation>Oberfläche des Blutes</translation>
    </message>
    <message>
        <source>Measuring …</source>
        <translation>Es wird gemessen …</translation>
    </message>
    <message>
        <source>The surface appears here once the appendage is measured.</source>
        <translation>Die Oberfläche erscheint hier, sobald das Vorhofohr gemessen ist.</translation>
    </message>
    <message>
        <source>Making the surface … %1 %</source>
        <translation>Die Oberfläche entsteht … %1 %</translation>
    </message>
</context>
<context>
    <name>Tables</name>
    <message>
        <source>Cannot open the case library at %1: a newer version of this program wrote it (its tables are at step %2, this version knows %3). Nothing was changed. Use the newer version.</source>
        <translation>Die Fallbibliothek in %1 kann nicht geöffnet werden: eine neuere Version dieses Programms hat sie geschrieben (ihre Tabellen stehen auf Stufe %2, diese Version kennt %3). Nichts wurde geändert. Die neuere Version verwenden.</translation>
    </message>
    <message>
        <source>Cannot bring the case library at %1 to step %2 of its tables: %3</source>
        <translation>Die Fallbibliothek in %1 kann nicht auf Stufe %2 ihrer Tabellen gebracht werden: %3</translation>
    </message>
</context>
<context>
    <name>Terms</name>
    <message>
        <source>area</source>
        <translation>Fläche</translation>
    </message>
    <message>
        <source>perimeter</source>
        <translation>Umfang</translation>
    </message>
    <message>
        <source>longest diameter</source>
        <translation>längster Durchmesser</translation>
    </message>
    <message>
        <source>shortest diameter</source>
        <translation>kürzester Durchmesser</translation>
    </message>
    <message>
        <source>least width</source>
        <translation>geringste Weite</translation>
    </message>
    <message>
        <source>mean diameter</source>
        <translation>mittlerer Durchmesser</translation>
    </message>
    <message>
        <source>perimeter-derived diameter</source>
        <translation>umfangsbezogener Durchmesser</translation>
    </message>
    <message>
        <source>area-derived diameter</source>
        <translation>flächenbezogener Durchmesser</translation>
    </message>
    <message>
        <source>eccentricity index</source>
        <translation>Exzentrizitätsindex</translation>
    </message>
    <message>
        <source>straight depth</source>
        <translation>gerade Tiefe</translation>
    </message>
    <message>
        <source>depth along the axis</source>
        <translation>Tiefe entlang der Achse</translation>
    </message>
    <message>
        <source>depth from the ostium plane</source>
        <translation>Tiefe ab der Ostiumebene</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>volume</source>
        <translation>Volumen</translation>
    </message>
    <message>
        <source>turn of the axis</source>
        <translation>Biegung der Achse</translation>
    </message>
    <message>
        <source>place of the turn</source>
        <translation>Stelle der Biegung</translation>
    </message>
    <message>
        <source>largest of the views</source>
        <translation>größte der Ansichten</translation>
    </message>
    <message>
        <source>width in one view</source>
        <translation>Weite in einer Ansicht</translation>
    </message>
    <message>
        <source>width</source>
        <translation>Weite</translation>
    </message>
    <message>
        <source>length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>enhancement of the atrium</source>
        <translation>Kontrastierung des Vorhofs</translation>
    </message>
    <message>
        <source>enhancement of the appendage</source>
        <translation>Kontrastierung des Vorhofohrs</translation>
    </message>
    <message>
        <source>enhancement of the tip</source>
        <translation>Kontrastierung der Spitze</translation>
    </message>
    <message>
        <source>enhancement of the aorta</source>
        <translation>Kontrastierung der Aorta</translation>
    </message>
    <message>
        <source>enhancement, tip to aorta</source>
        <translation>Kontrastierung, Spitze zu Aorta</translation>
    </message>
    <message>
        <source>before the procedure</source>
        <translation>vor dem Eingriff</translation>
    </message>
    <message>
        <source>before the repair</source>
        <translation>vor der Reparatur</translation>
    </message>
    <message>
        <source>after the repair</source>
        <translation>nach der Reparatur</translation>
    </message>
    <message>
        <source>sheath in the appendage</source>
        <translation>Schleuse im Vorhofohr</translation>
    </message>
    <message>
        <source>device partly deployed</source>
        <translation>Gerät teilweise entfaltet</translation>
    </message>
    <message>
        <source>deployed and attached</source>
        <translation>entfaltet und befestigt</translation>
    </message>
    <message>
        <source>after release</source>
        <translation>nach der Freigabe</translation>
    </message>
    <message>
        <source>follow-up</source>
        <translation>Nachsorge</translation>
    </message>
    <message>
        <source>CT</source>
        <translation>CT</translation>
    </message>
    <message>
        <source>2D echo</source>
        <translation>2D-Echo</translation>
    </message>
    <message>
        <source>3D echo</source>
        <translation>3D-Echo</translation>
    </message>
    <message>
        <source>fluoroscopy</source>
        <translation>Durchleuchtung</translation>
    </message>
    <message>
        <source>contour</source>
        <translation>Kontur</translation>
    </message>
    <message>
        <source>ellipse from probe angles</source>
        <translation>Ellipse aus Sondenwinkeln</translation>
    </message>
    <message>
        <source>single view</source>
        <translation>einzelne Ansicht</translation>
    </message>
    <message>
        <source>perimeter-derived diameter of the landing zone</source>
        <translation>Durchmesser der Landezone aus dem Umfang</translation>
    </message>
    <message>
        <source>area-derived diameter of the landing zone</source>
        <translation>Durchmesser der Landezone aus der Fläche</translation>
    </message>
    <message>
        <source>longest diameter of the landing zone</source>
        <translation>längster Durchmesser der Landezone</translation>
    </message>
    <message>
        <source>perimeter-derived diameter of the ostium</source>
        <translation>Durchmesser des Ostiums aus dem Umfang</translation>
    </message>
    <message>
        <source>longest diameter of the ostium</source>
        <translation>längster Durchmesser des Ostiums</translation>
    </message>
    <message>
        <source>echo view</source>
        <translation>Echoansicht</translation>
    </message>
    <message>
        <source>spectral Doppler</source>
        <translation>Spektraldoppler</translation>
    </message>
    <message>
        <source>other images</source>
        <translation>andere Bilder</translation>
    </message>
    <message>
        <source>end-systole</source>
        <translation>Endsystole</translation>
    </message>
    <message>
        <source>end-diastole</source>
        <translation>Enddiastole</translation>
    </message>
    <message>
        <source>another phase</source>
        <translation>andere Phase</translation>
    </message>
    <message>
        <source>unknown phase</source>
        <translation>unbekannte Phase</translation>
    </message>
    <message>
        <source>mitral regurgitation not yet treated</source>
        <translation>Mitralinsuffizienz noch nicht behandelt</translation>
    </message>
    <message>
        <source>filled on purpose</source>
        <translation>absichtlich aufgefüllt</translation>
    </message>
    <message>
        <source>as usual</source>
        <translation>wie gewöhnlich</translation>
    </message>
    <message>
        <source>sinus rhythm</source>
        <translation>Sinusrhythmus</translation>
    </message>
    <message>
        <source>atrial fibrillation</source>
        <translation>Vorhofflimmern</translation>
    </message>
    <message>
        <source>atrial flutter</source>
        <translation>Vorhofflattern</translation>
    </message>
    <message>
        <source>paced</source>
        <translation>stimuliert</translation>
    </message>
    <message>
        <source>breathing spontaneously</source>
        <translation>spontan atmend</translation>
    </message>
    <message>
        <source>controlled ventilation</source>
        <translation>kontrollierte Beatmung</translation>
    </message>
    <message>
        <source>none or trace</source>
        <translation>keine oder Spur</translation>
    </message>
    <message>
        <source>mild (1+)</source>
        <translation>leicht (1+)</translation>
    </message>
    <message>
        <source>moderate (2+)</source>
        <translation>mittel (2+)</translation>
    </message>
    <message>
        <source>moderate to severe (3+)</source>
        <translation>mittel bis schwer (3+)</translation>
    </message>
    <message>
        <source>severe (4+)</source>
        <translation>schwer (4+)</translation>
    </message>
    <message>
        <source>systolic wave dominant</source>
        <translation>systolische Welle überwiegt</translation>
    </message>
    <message>
        <source>systolic wave blunted</source>
        <translation>systolische Welle abgeflacht</translation>
    </message>
    <message>
        <source>systolic wave reversed</source>
        <translation>systolische Welle umgekehrt</translation>
    </message>
    <message>
        <source>measured directly</source>
        <translation>direkt gemessen</translation>
    </message>
    <message>
        <source>wedge pressure</source>
        <translation>Verschlussdruck</translation>
    </message>
    <message>
        <source>estimated by echo</source>
        <translation>im Echo geschätzt</translation>
    </message>
    <message>
        <source>measured at the start of the procedure</source>
        <translation>zu Beginn des Eingriffs gemessen</translation>
    </message>
    <message>
        <source>sheath tip beyond the landing plane</source>
        <translation>Schleusenspitze jenseits der Landeebene</translation>
    </message>
    <message>
        <source>share of the lobe beyond the circumflex artery</source>
        <translation>Anteil des Lappens jenseits der Circumflexa</translation>
    </message>
    <message>
        <source>width of the implant</source>
        <translation>Weite des Implantats</translation>
    </message>
    <message>
        <source>gap to the wall before the pull</source>
        <translation>Spalt zur Wand vor dem Zug</translation>
    </message>
    <message>
        <source>gap to the wall after the pull</source>
        <translation>Spalt zur Wand nach dem Zug</translation>
    </message>
    <message>
        <source>angle of the lobe to the neck</source>
        <translation>Winkel des Lappens zum Hals</translation>
    </message>
    <message>
        <source>separation of disc and lobe</source>
        <translation>Abstand von Scheibe und Lappen</translation>
    </message>
    <message>
        <source>lobes left uncovered</source>
        <translation>unbedeckt gebliebene Lappen</translation>
    </message>
    <message>
        <source>width of the jet past the implant</source>
        <translation>Weite des Jets am Implantat vorbei</translation>
    </message>
    <message>
        <source>clearance to the circumflex artery</source>
        <translation>Abstand zur Circumflexa</translation>
    </message>
    <message>
        <source>clearance to the pulmonary artery</source>
        <translation>Abstand zur Pulmonalarterie</translation>
    </message>
    <message>
        <source>clearance to the mitral annulus</source>
        <translation>Abstand zum Mitralring</translation>
    </message>
    <message>
        <source>clearance to the ridge</source>
        <translation>Abstand zur Leiste</translation>
    </message>
    <message>
        <source>pericardial effusion</source>
        <translation>Perikarderguss</translation>
    </message>
    <message>
        <source>mean mitral gradient</source>
        <translation>mittlerer Mitralgradient</translation>
    </message>
    <message>
        <source>grade of mitral regurgitation</source>
        <translation>Grad der Mitralinsuffizienz</translation>
    </message>
    <message>
        <source>pulmonary vein flow free</source>
        <translation>Lungenvenenfluss frei</translation>
    </message>
    <message>
        <source>thrombus on the device</source>
        <translation>Thrombus auf dem Gerät</translation>
    </message>
    <message>
        <source>hole left in the septum</source>
        <translation>verbliebenes Loch im Septum</translation>
    </message>
    <message>
        <source>direction of the longest diameter</source>
        <translation>Richtung des längsten Durchmessers</translation>
    </message>
    <message>
        <source>ostium</source>
        <translation>Ostium</translation>
    </message>
    <message>
        <source>landing zone</source>
        <translation>Landezone</translation>
    </message>
    <message>
        <source>landing zone %1</source>
        <translation>Landezone %1</translation>
    </message>
    <message>
        <source>appendage</source>
        <translation>Vorhofohr</translation>
    </message>
    <message>
        <source>height over the plane of the mitral annulus</source>
        <translation>Höhe über der Ebene des Mitralanulus</translation>
    </message>
    <message>
        <source>height over the level of coaptation, parallel to the septum</source>
        <translation>Höhe über der Koaptation, parallel zum Septum</translation>
    </message>
    <message>
        <source>distance to the ostium's centre</source>
        <translation>Abstand zur Mitte des Ostiums</translation>
    </message>
    <message>
        <source>angle of a straight sheath to the proximal axis</source>
        <translation>Winkel einer geraden Schleuse zur proximalen Achse</translation>
    </message>
    <message>
        <source>angle of a steerable sheath to the proximal axis</source>
        <translation>Winkel einer steuerbaren Schleuse zur proximalen Achse</translation>
    </message>
    <message>
        <source>septal crossing</source>
        <translation>Septumpunktion</translation>
    </message>
    <message>
        <source>C-arm, LAO above 0°</source>
        <translation>C-Bogen, LAO über 0°</translation>
    </message>
    <message>
        <source>C-arm, cranial above 0°</source>
        <translation>C-Bogen, kranial über 0°</translation>
    </message>
</context>
<context>
    <name>Tools</name>
    <message>
        <source>Draw a straight line</source>
        <translation>Eine gerade Linie zeichnen</translation>
    </message>
    <message>
        <source>Draw a curved line</source>
        <translation>Eine gekrümmte Linie zeichnen</translation>
    </message>
    <message>
        <source>Draw an angle</source>
        <translation>Einen Winkel zeichnen</translation>
    </message>
    <message>
        <source>Draw an area</source>
        <translation>Eine Fläche zeichnen</translation>
    </message>
    <message>
        <source>Draw an ellipse</source>
        <translation>Eine Ellipse zeichnen</translation>
    </message>
    <message>
        <source>Mark a velocity</source>
        <translation>Eine Geschwindigkeit markieren</translation>
    </message>
    <message>
        <source>Draw an interval of time</source>
        <translation>Einen Zeitabschnitt zeichnen</translation>
    </message>
    <message>
        <source>Draw an envelope of velocities</source>
        <translation>Eine Hüllkurve von Geschwindigkeiten zeichnen</translation>
    </message>
    <message>
        <source>Window: filled blood</source>
        <translation>Fenster: gefülltes Blut</translation>
    </message>
    <message>
        <source>Window: soft tissue</source>
        <translation>Fenster: Weichteile</translation>
    </message>
    <message>
        <source>Window: thrombus and slow filling</source>
        <translation>Fenster: Thrombus und langsame Füllung</translation>
    </message>
    <message>
        <source>Window: bone, calcium and metal</source>
        <translation>Fenster: Knochen, Kalk und Metall</translation>
    </message>
    <message>
        <source>Window: lung</source>
        <translation>Fenster: Lunge</translation>
    </message>
    <message>
        <source>%1 (key %2)</source>
        <translation>%1 (Taste %2)</translation>
    </message>
    <message>
        <source>Take the measurement out of the table</source>
        <translation>Die Messung aus der Tabelle nehmen</translation>
    </message>
    <message>
        <source>Put the measurement into the table as %1</source>
        <translation>Die Messung als %1 in die Tabelle setzen</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Thicker slab</source>
        <translation>Dickere Schicht</translation>
    </message>
    <message>
        <source>Thinner slab</source>
        <translation>Dünnere Schicht</translation>
    </message>
    <message>
        <source>Slab: mean or maximum</source>
        <translation>Schichtdicke: Mittel oder Maximum</translation>
    </message>
    <message>
        <source>The plug plane needs the marks of the circumflex artery and the ridge.</source>
        <translation>Die Pfropfebene braucht die Markierungen von Zirkumflexarterie und Leiste.</translation>
    </message>
    <message>
        <source>Plug plane on or off</source>
        <translation>Pfropfebene ein oder aus</translation>
    </message>
    <message>
        <source>Plug plane 0.5 mm further</source>
        <translation>Pfropfebene 0.5 mm weiter</translation>
    </message>
    <message>
        <source>Plug plane 0.5 mm nearer</source>
        <translation>Pfropfebene 0.5 mm näher</translation>
    </message>
    <message>
        <source>Shown plane 0.5 mm towards the tip</source>
        <translation>Gezeigte Ebene 0.5 mm zur Spitze</translation>
    </message>
    <message>
        <source>Shown plane 0.5 mm towards the atrium</source>
        <translation>Gezeigte Ebene 0.5 mm zum Vorhof</translation>
    </message>
    <message>
        <source>Shown plane 0.1 mm towards the tip</source>
        <translation>Gezeigte Ebene 0.1 mm zur Spitze</translation>
    </message>
    <message>
        <source>Shown plane 0.1 mm towards the atrium</source>
        <translation>Gezeigte Ebene 0.1 mm zum Vorhof</translation>
    </message>
    <message>
        <source>Tilt the shown plane 1° clockwise</source>
        <translation>Gezeigte Ebene 1° im Uhrzeigersinn kippen</translation>
    </message>
    <message>
        <source>Tilt the shown plane 1° anticlockwise</source>
        <translation>Gezeigte Ebene 1° gegen den Uhrzeigersinn kippen</translation>
    </message>
    <message>
        <source>Tilt the shown plane 0.2° clockwise</source>
        <translation>Gezeigte Ebene 0.2° im Uhrzeigersinn kippen</translation>
    </message>
    <message>
        <source>Tilt the shown plane 0.2° anticlockwise</source>
        <translation>Gezeigte Ebene 0.2° gegen den Uhrzeigersinn kippen</translation>
    </message>
    <message>
        <source>Turn the shown plane 1° out of the picture</source>
        <translation>Gezeigte Ebene 1° aus dem Bild drehen</translation>
    </message>
    <message>
        <source>Turn the shown plane 1° into the picture</source>
        <translation>Gezeigte Ebene 1° ins Bild drehen</translation>
    </message>
    <message>
        <source>Turn the shown plane 0.2° out of the picture</source>
        <translation>Gezeigte Ebene 0.2° aus dem Bild drehen</translation>
    </message>
    <message>
        <source>Turn the shown plane 0.2° into the picture</source>
        <translation>Gezeigte Ebene 0.2° ins Bild drehen</translation>
    </message>
    <message>
        <source>Landing plane square to the axis</source>
        <translation>Landeebene senkrecht zur Achse</translation>
    </message>
</context>
<context>
    <name>ViewPlanner</name>
    <message>
        <source>The appendage is not measured on CT: there is nothing to plan views for. Mark atrium and tip on the scanner axes.</source>
        <translation>Das Vorhofohr ist im CT nicht gemessen: es gibt nichts, wofür Ansichten zu planen wären. Vorhof und Spitze auf den Scannerachsen markieren.</translation>
    </message>
</context>
<context>
    <name>Views</name>
    <message>
        <source>ostium, being moved</source>
        <translation>Ostium, wird bewegt</translation>
    </message>
</context>
<context>
    <name>WhatNextPanel</name>
    <message>
        <source>Chance to change the size</source>
        <translation>Chance, die Größe zu ändern</translation>
    </message>
    <message>
        <source>changes the size: %1</source>
        <translation>ändert die Größe: %1</translation>
    </message>
    <message>
        <source>The acts are being simulated …</source>
        <translation>Die Handlungen werden simuliert …</translation>
    </message>
    <message>
        <source>The acts were not simulated: the work was cancelled.</source>
        <translation>Die Handlungen wurden nicht simuliert: die Arbeit wurde abgebrochen.</translation>
    </message>
    <message>
        <source>No size has a chance to fit, so there is none that a further reading could change.</source>
        <translation>Keine Größe hat eine Chance zu passen, also gibt es keine, die eine weitere Messung ändern könnte.</translation>
    </message>
    <message>
        <source>For each act, readings that it may give were drawn from what is known, and the sizes judged again with each. A chance is right to about 4 in a hundred.</source>
        <translation>Für jede Handlung wurden mögliche Messungen aus dem Bekannten gezogen und die Größen damit neu beurteilt. Eine Chance stimmt auf etwa 4 von hundert.</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>Change a moment of the course</source>
        <translation>Einen Zeitpunkt des Verlaufs ändern</translation>
    </message>
    <message>
        <source>Add a moment to the course</source>
        <translation>Zeitpunkt zum Verlauf hinzufügen</translation>
    </message>
    <message>
        <source>Remove a moment of the course</source>
        <translation>Einen Zeitpunkt des Verlaufs entfernen</translation>
    </message>
    <message>
        <source>Type a reading in</source>
        <translation>Eine Messung eintippen</translation>
    </message>
    <message>
        <source>Remove a typed reading</source>
        <translation>Eine eingetippte Messung entfernen</translation>
    </message>
    <message>
        <source>Record stasis</source>
        <translation>Stase erfassen</translation>
    </message>
    <message>
        <source>Remove a finding of stasis</source>
        <translation>Einen Stasebefund entfernen</translation>
    </message>
    <message>
        <source>Record a look at the implant</source>
        <translation>Einen Blick auf das Implantat erfassen</translation>
    </message>
    <message>
        <source>Remove a look at the implant</source>
        <translation>Einen Blick auf das Implantat entfernen</translation>
    </message>
    <message>
        <source>Confirm a value</source>
        <translation>Einen Wert bestätigen</translation>
    </message>
    <message>
        <source>Set the reach of the C-arm</source>
        <translation>Reichweite des C-Bogens setzen</translation>
    </message>
    <message>
        <source>Say how the patient will lie</source>
        <translation>Lagerung des Patienten angeben</translation>
    </message>
    <message>
        <source>Choose a working view</source>
        <translation>Arbeitsansicht wählen</translation>
    </message>
    <message>
        <source>Give up a working view</source>
        <translation>Arbeitsansicht aufgeben</translation>
    </message>
</context>
</TS>
