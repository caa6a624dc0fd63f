<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="fr" sourcelanguage="en">
<context>
    <name>AngleDial</name>
    <message>
        <source>longest diameter</source>
        <translation>plus long diamètre</translation>
    </message>
    <message>
        <source>shortest diameter</source>
        <translation>plus court diamètre</translation>
    </message>
    <message>
        <source>perimeter-derived diameter</source>
        <translation>diamètre dérivé du périmètre</translation>
    </message>
    <message>
        <source>area-derived diameter</source>
        <translation>diamètre dérivé de l’aire</translation>
    </message>
    <message>
        <source>probe angle of the longest</source>
        <translation>angle de sonde du plus long</translation>
    </message>
    <message>
        <source>largest of the views</source>
        <translation>la plus grande des vues</translation>
    </message>
    <message>
        <source>Dial of the probe angles</source>
        <translation>Cadran des angles de la sonde</translation>
    </message>
    <message>
        <source>No width is drawn on the echo views of this moment yet. Press M to measure them in one pass.</source>
        <translation>Aucune largeur n’est encore tracée sur les vues d’écho de ce moment. M les mesure en un passage.</translation>
    </message>
    <message>
        <source>Landing zone (round ends)</source>
        <translation>Zone d’ancrage (bouts ronds)</translation>
    </message>
    <message>
        <source>Ostium (square ends)</source>
        <translation>Ostium (bouts carrés)</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Profondeur</translation>
    </message>
    <message>
        <source>greatest of the views</source>
        <translation>la plus grande des vues</translation>
    </message>
    <message>
        <source>Readings of the views</source>
        <translation>Lectures des vues</translation>
    </message>
    <message>
        <source>probe angle</source>
        <translation>angle de sonde</translation>
    </message>
    <message>
        <source>ostium</source>
        <translation>ostium</translation>
    </message>
    <message>
        <source>landing zone</source>
        <translation>zone d’ancrage</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>profondeur</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>inconnu</translation>
    </message>
</context>
<context>
    <name>Answers</name>
    <message>
        <source>No device chart is loaded: load one typed from the device&apos;s current instructions, or a demonstration chart.</source>
        <translation>Aucune table de tailles n’est chargée : en charger une saisie d’après la notice actuelle, ou une table de démonstration.</translation>
    </message>
    <message>
        <source>No decision pressure: the chart states none, so say at which left atrial pressure the reading counts.</source>
        <translation>Pas de pression de décision : la table n’en donne pas ; dire à quelle pression de l’oreillette gauche la lecture compte.</translation>
    </message>
    <message>
        <source>No reading yet: mark the atrium and the tip on the CT, measure echo views, or type a reading in.</source>
        <translation>Pas encore de lecture : marquer l’oreillette et la pointe au CT, mesurer des vues d’écho, ou saisir une lecture.</translation>
    </message>
    <message>
        <source>The decision has no text yet: write down what was decided.</source>
        <translation>La décision n’a pas encore de texte : écrire ce qui a été décidé.</translation>
    </message>
    <message>
        <source>No size is chosen: choose one in the list of sizes.</source>
        <translation>Aucune taille n’est choisie : en choisir une dans la liste des tailles.</translation>
    </message>
    <message>
        <source>The chosen size %1 is not in the chart that is loaded: choose again.</source>
        <translation>La taille choisie %1 n’est pas dans la table chargée : choisir de nouveau.</translation>
    </message>
    <message>
        <source>The plan is stopped: thrombus was seen in the appendage and no later look excludes it.</source>
        <translation>Le plan est arrêté : un thrombus a été vu dans l’auricule et aucun examen ultérieur ne l’exclut.</translation>
    </message>
    <message>
        <source>The appendage was not looked at again since the repair: look for smoke, sludge and thrombus, and record it under Stasis.</source>
        <translation>L’auricule n’a pas été revue depuis la réparation : chercher contraste spontané, boue et thrombus, et le noter sous Stase.</translation>
    </message>
    <message numerus="yes">
        <source>%n value(s) are out of date: measure them again, or confirm them in the table.</source>
        <translation>
            <numerusform>%n valeur est périmée : la mesurer de nouveau ou la confirmer dans le tableau.</numerusform>
            <numerusform>%n valeurs sont périmées : les mesurer de nouveau ou les confirmer dans le tableau.</numerusform>
        </translation>
    </message>
    <message>
        <source>The sizes are still being judged: wait for the answer.</source>
        <translation>Les tailles sont encore en cours de jugement : attendre la réponse.</translation>
    </message>
</context>
<context>
    <name>AppendagePage</name>
    <message>
        <source>Long section</source>
        <translation>Coupe longitudinale</translation>
    </message>
    <message>
        <source>Cross-section</source>
        <translation>Coupe transversale</translation>
    </message>
</context>
<context>
    <name>CalibratePicture</name>
    <message>
        <source>Calibrate the picture</source>
        <translation>Étalonner l’image</translation>
    </message>
</context>
<context>
    <name>CardPanel</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>Pressure</source>
        <translation>Pression</translation>
    </message>
    <message>
        <source>Width itself</source>
        <translation>La largeur elle-même</translation>
    </message>
    <message>
        <source>2D echo, ellipse</source>
        <translation>Écho 2D, ellipse</translation>
    </message>
    <message>
        <source>3D echo</source>
        <translation>Écho 3D</translation>
    </message>
    <message>
        <source>Fluoroscopy</source>
        <translation>Fluoroscopie</translation>
    </message>
    <message>
        <source>echo at %1°</source>
        <translation>écho à %1°</translation>
    </message>
    <message>
        <source>No reading that may be expected would make another size fit better.</source>
        <translation>Aucune lecture vraisemblable ne ferait mieux convenir une autre taille.</translation>
    </message>
    <message>
        <source>above %1</source>
        <translation>au-dessus de %1</translation>
    </message>
    <message>
        <source>below %1</source>
        <translation>au-dessous de %1</translation>
    </message>
    <message>
        <source>A reading by %1 at %2 %3 overturns the plan: size %4 would then have the greatest fit chance (chance of such a reading: %5).</source>
        <translation>Une lecture par %1 à %2 %3 renverse le plan : la taille %4 aurait alors la plus grande chance d’ajustement (chance d’une telle lecture : %5).</translation>
    </message>
    <message>
        <source>Card for the room</source>
        <translation>Fiche pour la salle</translation>
    </message>
    <message>
        <source>Chosen: size %1, fit chance %2.</source>
        <translation>Choisie : taille %1, chance d’ajustement %2.</translation>
    </message>
    <message>
        <source>No size is chosen yet.</source>
        <translation>Aucune taille n’est encore choisie.</translation>
    </message>
    <message>
        <source>Readings to expect of the %1, with the interval that holds 95 of 100 readings:</source>
        <translation>Lectures attendues : %1, avec l’intervalle qui contient 95 lectures sur 100 :</translation>
    </message>
    <message>
        <source>Copy card</source>
        <translation>Copier la fiche</translation>
    </message>
    <message>
        <source>Copy the card as plain text</source>
        <translation>Copier la fiche en texte simple</translation>
    </message>
    <message>
        <source>Card as PDF …</source>
        <translation>Fiche en PDF …</translation>
    </message>
    <message>
        <source>Write the card on one page, to print it</source>
        <translation>Écrire la fiche sur une page, pour l’imprimer</translation>
    </message>
    <message>
        <source>Card for the room as PDF</source>
        <translation>Fiche pour la salle en PDF</translation>
    </message>
    <message>
        <source>card.pdf</source>
        <translation>fiche.pdf</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Large type</source>
        <translation>Grands caractères</translation>
    </message>
    <message>
        <source>Show the card in type to be read across the room</source>
        <translation>Montrer la fiche en caractères lisibles à travers la salle</translation>
    </message>
    <message>
        <source>The card was written to %1.</source>
        <translation>La fiche a été écrite dans %1.</translation>
    </message>
    <message>
        <source>The card could not be written to %1: choose a folder that can be written to.</source>
        <translation>La fiche n’a pas pu être écrite dans %1 : choisir un dossier accessible en écriture.</translation>
    </message>
</context>
<context>
    <name>CaseLibrary</name>
    <message>
        <source>%1 is editing it. Wait until the case is closed there.</source>
        <translation>%1 est en train de le modifier. Attendre que le cas y soit fermé.</translation>
    </message>
    <message>
        <source>Cannot move the case into the bin</source>
        <translation>Impossible de mettre le cas à la corbeille</translation>
    </message>
    <message>
        <source>Cannot take the case out of the bin</source>
        <translation>Impossible de sortir le cas de la corbeille</translation>
    </message>
    <message>
        <source>Cannot remove the case for good</source>
        <translation>Impossible de supprimer définitivement le cas</translation>
    </message>
    <message>
        <source>it is not in the bin. Move it there first.</source>
        <translation>il n’est pas dans la corbeille. L’y mettre d’abord.</translation>
    </message>
    <message>
        <source>Cannot export the case to %1</source>
        <translation>Impossible d’exporter le cas vers %1</translation>
    </message>
    <message>
        <source>it is damaged: %1. Rescue what is whole of it first.</source>
        <translation>il est endommagé : %1. Récupérer d’abord ce qui est intact.</translation>
    </message>
    <message>
        <source>%1. Choose another folder.</source>
        <translation>%1. Choisir un autre dossier.</translation>
    </message>
    <message>
        <source>Cannot import the case from %1: </source>
        <translation>Impossible d’importer le cas de %1 : </translation>
    </message>
    <message>
        <source>the file cannot be read or is larger than 512 MB.</source>
        <translation>le fichier ne peut pas être lu ou dépasse 512 Mo.</translation>
    </message>
    <message>
        <source>it is no case exported from a library.</source>
        <translation>ce n’est pas un cas exporté d’une bibliothèque.</translation>
    </message>
    <message>
        <source>a newer version of this program wrote it (%1). Use that version.</source>
        <translation>une version plus récente de ce programme l’a écrit (%1). Utiliser cette version.</translation>
    </message>
    <message>
        <source>it does not agree with its checksum, so it is damaged. Export it again.</source>
        <translation>il ne correspond pas à sa somme de contrôle, il est donc endommagé. L’exporter de nouveau.</translation>
    </message>
    <message>
        <source>Cannot import the case into the library at %1</source>
        <translation>Impossible d’importer le cas dans la bibliothèque de %1</translation>
    </message>
    <message>
        <source>its present version is missing.</source>
        <translation>sa version actuelle manque.</translation>
    </message>
    <message>
        <source>Cannot save the edits in the library</source>
        <translation>Impossible d’enregistrer les modifications dans la bibliothèque</translation>
    </message>
    <message>
        <source>the version that they follow is damaged. Save the case as a file.</source>
        <translation>la version qu’elles suivent est endommagée. Enregistrer le cas comme fichier.</translation>
    </message>
    <message>
        <source>another edit %1 is stored already. Save the case as a file.</source>
        <translation>une autre modification %1 est déjà enregistrée. Enregistrer le cas comme fichier.</translation>
    </message>
    <message>
        <source>edit %1 does not follow edit %2. Save the case as a file.</source>
        <translation>la modification %1 ne suit pas la modification %2. Enregistrer le cas comme fichier.</translation>
    </message>
    <message>
        <source>Cannot begin to edit the case</source>
        <translation>Impossible de commencer à modifier le cas</translation>
    </message>
    <message>
        <source>it lies in the bin. Take it out first.</source>
        <translation>il est dans la corbeille. L’en sortir d’abord.</translation>
    </message>
    <message>
        <source>its present version is damaged. Restore an earlier one first.</source>
        <translation>sa version actuelle est endommagée. En rétablir d’abord une antérieure.</translation>
    </message>
    <message>
        <source>Cannot renew the right to edit the case</source>
        <translation>Impossible de renouveler le droit de modifier le cas</translation>
    </message>
    <message>
        <source>Cannot give back the right to edit the case</source>
        <translation>Impossible de rendre le droit de modifier le cas</translation>
    </message>
    <message>
        <source>Cannot open the case library at %1: %2</source>
        <translation>Impossible d’ouvrir la bibliothèque de cas de %1 : %2</translation>
    </message>
    <message>
        <source>The case library at %1 is damaged. It is read only as far as it is whole, and nothing is written to it. Rescue the whole cases into a new library, or bring back a copy.</source>
        <translation>La bibliothèque de cas de %1 est endommagée. Elle n’est lue que là où elle est intacte, et rien n’y est écrit. Récupérer les cas intacts dans une nouvelle bibliothèque, ou rapporter une copie.</translation>
    </message>
    <message>
        <source>Cannot list the cases of the library at %1</source>
        <translation>Impossible de lister les cas de la bibliothèque de %1</translation>
    </message>
    <message>
        <source>Cannot look the case up in the library at %1</source>
        <translation>Impossible de chercher le cas dans la bibliothèque de %1</translation>
    </message>
    <message>
        <source>Cannot list the tags of the library at %1</source>
        <translation>Impossible de lister les étiquettes de la bibliothèque de %1</translation>
    </message>
    <message>
        <source>Cannot list the versions of the case</source>
        <translation>Impossible de lister les versions du cas</translation>
    </message>
    <message>
        <source>Cannot check the library</source>
        <translation>Impossible de vérifier la bibliothèque</translation>
    </message>
    <message>
        <source>The file&apos;s pages are damaged.</source>
        <translation>Les pages du fichier sont endommagées.</translation>
    </message>
    <message>
        <source>The list of cases cannot be read.</source>
        <translation>La liste des cas ne peut pas être lue.</translation>
    </message>
    <message>
        <source>Case %1: its notes are damaged.</source>
        <translation>Cas %1 : ses notes sont endommagées.</translation>
    </message>
    <message>
        <source>Case %1: %2</source>
        <translation>Cas %1 : %2</translation>
    </message>
    <message>
        <source>Case %1: version %2 is damaged.</source>
        <translation>Cas %1 : la version %2 est endommagée.</translation>
    </message>
    <message>
        <source>Rescued case %1</source>
        <translation>Cas récupéré %1</translation>
    </message>
    <message>
        <source>the case is not in the library any more. Look through the list again.</source>
        <translation>le cas n’est plus dans la bibliothèque. Parcourir de nouveau la liste.</translation>
    </message>
    <message>
        <source>what the library notes about this case is damaged: it does not agree with its checksum. %1</source>
        <translation>ce que la bibliothèque note de ce cas est endommagé : cela ne correspond pas à sa somme de contrôle. %1</translation>
    </message>
    <message>
        <source>No whole version is left; bring back a copy.</source>
        <translation>Il ne reste aucune version intacte ; rapporter une copie.</translation>
    </message>
    <message>
        <source>Version %1 is whole: open that one.</source>
        <translation>La version %1 est intacte : l’ouvrir.</translation>
    </message>
    <message>
        <source>edit %1 does not agree with its checksum or is missing</source>
        <translation>la modification %1 ne correspond pas à sa somme de contrôle ou manque</translation>
    </message>
    <message>
        <source>version %1 is not kept any more.</source>
        <translation>la version %1 n’est plus conservée.</translation>
    </message>
    <message>
        <source>version %1 does not agree with its checksum</source>
        <translation>la version %1 ne correspond pas à sa somme de contrôle</translation>
    </message>
    <message>
        <source>edits after number %1 are missing</source>
        <translation>il manque les modifications après le numéro %1</translation>
    </message>
    <message>
        <source>Cannot open the case</source>
        <translation>Impossible d’ouvrir le cas</translation>
    </message>
    <message>
        <source>Cannot open version %1 of the case</source>
        <translation>Impossible d’ouvrir la version %1 du cas</translation>
    </message>
    <message>
        <source>it is not in the library any more.</source>
        <translation>il n’est plus dans la bibliothèque.</translation>
    </message>
    <message>
        <source>it is damaged in the library: %1. %2</source>
        <translation>il est endommagé dans la bibliothèque : %1. %2</translation>
    </message>
    <message>
        <source>Cannot open what is whole of the case</source>
        <translation>Impossible d’ouvrir ce qui est intact du cas</translation>
    </message>
    <message>
        <source>no whole version of it is left. Bring back a copy of the library.</source>
        <translation>il n’en reste aucune version intacte. Rapporter une copie de la bibliothèque.</translation>
    </message>
    <message>
        <source>what the library notes about the case is damaged, so edits at the end may be missing</source>
        <translation>ce que la bibliothèque note du cas est endommagé, des modifications à la fin peuvent donc manquer</translation>
    </message>
    <message>
        <source>version %1 is damaged; this is version %2</source>
        <translation>la version %1 est endommagée ; ceci est la version %2</translation>
    </message>
    <message>
        <source>Cannot put the case into the library at %1</source>
        <translation>Impossible de mettre le cas dans la bibliothèque de %1</translation>
    </message>
    <message>
        <source>Cannot save the case in the library</source>
        <translation>Impossible d’enregistrer le cas dans la bibliothèque</translation>
    </message>
    <message>
        <source>its text ends at edit %1, but edit %2 was saved already.</source>
        <translation>son texte s’arrête à la modification %1, mais la modification %2 est déjà enregistrée.</translation>
    </message>
    <message>
        <source>Cannot restore version %1</source>
        <translation>Impossible de rétablir la version %1</translation>
    </message>
    <message>
        <source>there are edits since the present version. Open the case and save it first, so that they are kept as a version.</source>
        <translation>il y a des modifications depuis la version actuelle. Ouvrir et enregistrer d’abord le cas, pour qu’elles soient gardées comme version.</translation>
    </message>
    <message>
        <source>it is not kept any more.</source>
        <translation>elle n’est plus conservée.</translation>
    </message>
    <message>
        <source>it does not agree with its checksum. Choose another.</source>
        <translation>il ne correspond pas à sa somme de contrôle. En choisir un autre.</translation>
    </message>
    <message>
        <source>Cannot forget the refused version %1</source>
        <translation>Impossible d’oublier la version refusée %1</translation>
    </message>
    <message>
        <source>there is no refused version of this number.</source>
        <translation>il n’y a pas de version refusée de ce numéro.</translation>
    </message>
    <message>
        <source>the library&apos;s file itself is damaged</source>
        <translation>le fichier même de la bibliothèque est endommagé</translation>
    </message>
</context>
<context>
    <name>CautionStrip</name>
    <message>
        <source>Understood</source>
        <translation>Compris</translation>
    </message>
    <message>
        <source>Hide this strip; the cautions stay under Help</source>
        <translation>Masquer ce bandeau ; les mises en garde restent sous Aide</translation>
    </message>
</context>
<context>
    <name>Cautions</name>
    <message>
        <source>Research and teaching software, not a medical device; not for sole use in clinical decisions.</source>
        <translation>Logiciel de recherche et d’enseignement, pas un dispositif médical ; ne pas s’en servir seul pour des décisions cliniques.</translation>
    </message>
    <message>
        <source>Measurements must be confirmed by a licensed practitioner; device choice follows the device&apos;s current instructions for use, local protocol and law.</source>
        <translation>Les mesures doivent être confirmées par un praticien habilité ; le choix de l’implant suit sa notice actuelle, le protocole local et la loi.</translation>
    </message>
    <message>
        <source>Estimates at another pressure are model predictions: re-measure when haemodynamics have changed.</source>
        <translation>Les estimations à une autre pression sont des prédictions d’un modèle : mesurer de nouveau quand l’hémodynamique a changé.</translation>
    </message>
</context>
<context>
    <name>ChangeBeatPhase</name>
    <message>
        <source>Change the phase</source>
        <translation>Changer la phase</translation>
    </message>
</context>
<context>
    <name>ChangeMoment</name>
    <message>
        <source>Change the moment</source>
        <translation>Changer le moment</translation>
    </message>
</context>
<context>
    <name>ChangeProbeAngle</name>
    <message>
        <source>Change the probe angle</source>
        <translation>Changer l’angle de la sonde</translation>
    </message>
</context>
<context>
    <name>ChangeStage</name>
    <message>
        <source>Change the stage</source>
        <translation>Changer l’étape</translation>
    </message>
</context>
<context>
    <name>Charts</name>
    <message>
        <source>Cannot read the device chart %1: %2.</source>
        <translation>Impossible de lire la table de tailles %1 : %2.</translation>
    </message>
    <message>
        <source>it is longer than 16 MB</source>
        <translation>elle dépasse 16 Mo</translation>
    </message>
    <message>
        <source>Demonstration plug (invented)</source>
        <translation>Démonstration bouchon (inventée)</translation>
    </message>
    <message>
        <source>Demonstration lobe and disc (invented)</source>
        <translation>Démonstration lobe et disque (inventée)</translation>
    </message>
</context>
<context>
    <name>CineView</name>
    <message>
        <source>Cine</source>
        <translation>Séquence</translation>
    </message>
    <message>
        <source> mm</source>
        <translation> mm</translation>
    </message>
    <message>
        <source>Known length</source>
        <translation>Longueur connue</translation>
    </message>
    <message>
        <source>Use it (Enter)</source>
        <translation>Utiliser (Entrée)</translation>
    </message>
    <message>
        <source>Cancel (Esc)</source>
        <translation>Annuler (Échap)</translation>
    </message>
    <message>
        <source>Choose evidence in the list on the left.</source>
        <translation>Choisir un élément dans la liste à gauche.</translation>
    </message>
    <message>
        <source>This evidence has no frames to show here.</source>
        <translation>Cet élément n’a pas d’images à montrer ici.</translation>
    </message>
    <message>
        <source>Opening …</source>
        <translation>Ouverture …</translation>
    </message>
    <message>
        <source>X-ray pictures are shown whole: look for burned-in names.</source>
        <translation>Les images de scopie sont montrées entières : chercher des noms incrustés.</translation>
    </message>
    <message>
        <source>Text outside the calibrated regions is blanked.</source>
        <translation>Le texte hors des zones étalonnées est masqué.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>%1 ms</source>
        <translation>%1 ms</translation>
    </message>
    <message>
        <source>%1 % of R-R</source>
        <translation>%1 % du R-R</translation>
    </message>
    <message>
        <source>speed %1</source>
        <translation>vitesse %1</translation>
    </message>
    <message>
        <source>Click both ends of a known length. Escape leaves.</source>
        <translation>Cliquer sur les deux bouts d’une longueur connue. Échap quitte.</translation>
    </message>
    <message>
        <source>Click both edges of the catheter, square to it. Escape leaves.</source>
        <translation>Cliquer sur les deux bords du cathéter, perpendiculairement. Échap quitte.</translation>
    </message>
    <message>
        <source>Click two places along the middle of a straight piece of the catheter. Escape leaves.</source>
        <translation>Cliquer à deux endroits au milieu d’un segment droit du cathéter. Échap quitte.</translation>
    </message>
    <message>
        <source>How long is it between the marks?</source>
        <translation>Quelle est la longueur entre les marques ?</translation>
    </message>
    <message>
        <source>What is the catheter&apos;s outer diameter, as printed? (French divided by 3 is only near it.)</source>
        <translation>Quel est le diamètre extérieur du cathéter, tel qu’imprimé ? (French divisé par 3 n’en est que proche.)</translation>
    </message>
    <message>
        <source>Finish the drawing on this frame first, or leave it with Escape.</source>
        <translation>Terminer d’abord le tracé sur cette image, ou le quitter avec Échap.</translation>
    </message>
</context>
<context>
    <name>Command</name>
    <message>
        <source>Load a device chart</source>
        <translation>Charger une table de tailles</translation>
    </message>
    <message>
        <source>Set the pressures to size for</source>
        <translation>Fixer les pressions pour lesquelles dimensionner</translation>
    </message>
    <message>
        <source>Say why the pressures differ</source>
        <translation>Dire pourquoi les pressions diffèrent</translation>
    </message>
    <message>
        <source>Give up the chosen size</source>
        <translation>Renoncer à la taille choisie</translation>
    </message>
    <message>
        <source>Choose a size</source>
        <translation>Choisir une taille</translation>
    </message>
    <message>
        <source>Change the items of the stroke score</source>
        <translation>Modifier les critères du score d’AVC</translation>
    </message>
    <message>
        <source>Change the items of the bleeding score</source>
        <translation>Modifier les critères du score hémorragique</translation>
    </message>
    <message>
        <source>Write the decision</source>
        <translation>Écrire la décision</translation>
    </message>
    <message>
        <source>Sign the decision</source>
        <translation>Signer la décision</translation>
    </message>
    <message>
        <source>Take the signature off</source>
        <translation>Retirer la signature</translation>
    </message>
</context>
<context>
    <name>Commands</name>
    <message>
        <source>Set the plug plane</source>
        <translation>Placer le plan du bouchon</translation>
    </message>
    <message>
        <source>Move the ostium plane</source>
        <translation>Déplacer le plan de l’ostium</translation>
    </message>
    <message>
        <source>Tilt the ostium plane</source>
        <translation>Incliner le plan de l’ostium</translation>
    </message>
    <message>
        <source>Tilt the landing plane</source>
        <translation>Incliner le plan d’ancrage</translation>
    </message>
    <message>
        <source>Set the landing plane square to the axis</source>
        <translation>Remettre le plan d’ancrage perpendiculaire à l’axe</translation>
    </message>
</context>
<context>
    <name>Comparison</name>
    <message>
        <source>Landing zone</source>
        <translation>Zone d’ancrage</translation>
    </message>
    <message>
        <source>perimeter-derived</source>
        <translation>dérivé du périmètre</translation>
    </message>
    <message>
        <source>Perimeter divided by π</source>
        <translation>Périmètre divisé par π</translation>
    </message>
    <message>
        <source>longest</source>
        <translation>le plus long</translation>
    </message>
    <message>
        <source>Greatest distance between two points of the contour</source>
        <translation>Plus grande distance entre deux points du contour</translation>
    </message>
    <message>
        <source>largest of the views</source>
        <translation>la plus grande des vues</translation>
    </message>
    <message>
        <source>Largest width among the views: no contour&apos;s diameter</source>
        <translation>Plus grande largeur parmi les vues : pas un diamètre de contour</translation>
    </message>
    <message>
        <source>single view</source>
        <translation>vue unique</translation>
    </message>
    <message>
        <source>Width in one view: no contour&apos;s diameter</source>
        <translation>Largeur dans une vue : pas un diamètre de contour</translation>
    </message>
    <message>
        <source>shortest</source>
        <translation>le plus court</translation>
    </message>
    <message>
        <source>Widest extent perpendicular to the longest diameter</source>
        <translation>Plus grande étendue perpendiculaire au plus long diamètre</translation>
    </message>
    <message>
        <source>area-derived</source>
        <translation>dérivé de l’aire</translation>
    </message>
    <message>
        <source>Diameter of the circle of the same area</source>
        <translation>Diamètre du cercle de même aire</translation>
    </message>
    <message>
        <source>mean</source>
        <translation>moyen</translation>
    </message>
    <message>
        <source>Half the sum of longest and shortest diameter</source>
        <translation>Demi-somme du plus long et du plus court diamètre</translation>
    </message>
    <message>
        <source>least width</source>
        <translation>moindre largeur</translation>
    </message>
    <message>
        <source>Smallest distance between two parallel lines that hold the contour</source>
        <translation>Plus petite distance entre deux droites parallèles qui enserrent le contour</translation>
    </message>
    <message>
        <source>perimeter</source>
        <translation>périmètre</translation>
    </message>
    <message>
        <source>Length of the smooth contour</source>
        <translation>Longueur du contour lisse</translation>
    </message>
    <message>
        <source>area</source>
        <translation>aire</translation>
    </message>
    <message>
        <source>Enclosed area</source>
        <translation>Aire enclose</translation>
    </message>
    <message>
        <source>eccentricity index</source>
        <translation>indice d’excentricité</translation>
    </message>
    <message>
        <source>1 − shortest / longest: 0 is round</source>
        <translation>1 − le plus court / le plus long : 0 est rond</translation>
    </message>
    <message>
        <source>Ostium</source>
        <translation>Ostium</translation>
    </message>
    <message>
        <source>Depth to the tip</source>
        <translation>Profondeur jusqu’à la pointe</translation>
    </message>
    <message>
        <source>from the ostium</source>
        <translation>depuis l’ostium</translation>
    </message>
    <message>
        <source>Greatest distance from the ostium plane</source>
        <translation>Plus grande distance du plan de l’ostium</translation>
    </message>
    <message>
        <source>from the landing zone</source>
        <translation>depuis la zone d’ancrage</translation>
    </message>
    <message>
        <source>From the landing zone&apos;s centre along the ostium&apos;s normal to the opposite wall</source>
        <translation>Du centre de la zone d’ancrage, le long de la normale de l’ostium, jusqu’à la paroi opposée</translation>
    </message>
    <message>
        <source>along the axis</source>
        <translation>le long de l’axe</translation>
    </message>
    <message>
        <source>From the ostium along the axis to the tip</source>
        <translation>De l’ostium à la pointe le long de l’axe</translation>
    </message>
    <message>
        <source>Shape</source>
        <translation>Forme</translation>
    </message>
    <message>
        <source>volume</source>
        <translation>volume</translation>
    </message>
    <message>
        <source>Blood volume beyond the ostium plane</source>
        <translation>Volume de sang au-delà du plan de l’ostium</translation>
    </message>
    <message>
        <source>turn of the axis</source>
        <translation>coude de l’axe</translation>
    </message>
    <message>
        <source>Angle between the proximal and distal directions; 0 is straight</source>
        <translation>Angle entre les directions proximale et distale ; 0 est droit</translation>
    </message>
    <message>
        <source>turns at</source>
        <translation>coude à</translation>
    </message>
    <message>
        <source>Distance of the sharpest place from the ostium along the axis</source>
        <translation>Distance de l’endroit le plus coudé à l’ostium le long de l’axe</translation>
    </message>
    <message>
        <source>Enhancement</source>
        <translation>Rehaussement</translation>
    </message>
    <message>
        <source>atrium</source>
        <translation>oreillette</translation>
    </message>
    <message>
        <source>Mean level at the mark</source>
        <translation>Niveau moyen au repère</translation>
    </message>
    <message>
        <source>appendage</source>
        <translation>auricule</translation>
    </message>
    <message>
        <source>Mean level beyond the ostium</source>
        <translation>Niveau moyen au-delà de l’ostium</translation>
    </message>
    <message>
        <source>tip</source>
        <translation>pointe</translation>
    </message>
    <message>
        <source>Mean level near the tip</source>
        <translation>Niveau moyen près de la pointe</translation>
    </message>
    <message>
        <source>aorta</source>
        <translation>aorte</translation>
    </message>
    <message>
        <source>Mean level at the mark; mark the aorta to see it</source>
        <translation>Niveau moyen au repère ; marquer l’aorte pour le voir</translation>
    </message>
    <message>
        <source>tip to aorta</source>
        <translation>pointe sur aorte</translation>
    </message>
    <message>
        <source>Ratio of the mean levels</source>
        <translation>Rapport des niveaux moyens</translation>
    </message>
    <message>
        <source>pressure unknown</source>
        <translation>pression inconnue</translation>
    </message>
    <message>
        <source>Of the difference from CT, pressure explains %1, the modality %2; %3 is left.</source>
        <translation>De l’écart au CT, la pression explique %1, la modalité %2 ; il reste %3.</translation>
    </message>
</context>
<context>
    <name>ComparisonModel</name>
    <message>
        <source>%1 from CT; no published limits</source>
        <translation>%1 par rapport au CT ; pas de limites publiées</translation>
    </message>
    <message>
        <source>%1 from CT: outside the published limits</source>
        <translation>%1 par rapport au CT : hors des limites publiées</translation>
    </message>
    <message>
        <source>%1 from CT, within the published limits</source>
        <translation>%1 par rapport au CT, dans les limites publiées</translation>
    </message>
    <message>
        <source>out of date: being measured again</source>
        <translation>périmé : nouvelle mesure en cours</translation>
    </message>
    <message>
        <source>out of date: measure again or confirm</source>
        <translation>périmé : mesurer de nouveau ou confirmer</translation>
    </message>
    <message>
        <source>Standard uncertainty: %1</source>
        <translation>Incertitude type : %1</translation>
    </message>
    <message>
        <source>Obtained by: %1</source>
        <translation>Obtenu par : %1</translation>
    </message>
    <message>
        <source>Enter or double click shows where it was measured.</source>
        <translation>Entrée ou double clic montre où la valeur a été mesurée.</translation>
    </message>
    <message>
        <source>Typed in, not measured here.</source>
        <translation>Saisi, pas mesuré ici.</translation>
    </message>
    <message>
        <source>Carried from %1 (%2) by pressure alone: %3.</source>
        <translation>Ramené de %1 (%2) par la seule pression : %3.</translation>
    </message>
    <message>
        <source>measured</source>
        <translation>mesuré</translation>
    </message>
    <message>
        <source>assumed</source>
        <translation>supposé</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Grandeur</translation>
    </message>
    <message>
        <source>%1, typed in</source>
        <translation>%1, saisi</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1: carried to the decision pressure</source>
        <translation>%1 : ramené à la pression de décision</translation>
    </message>
    <message>
        <source>%1: against CT</source>
        <translation>%1 : par rapport au CT</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
</context>
<context>
    <name>ComparisonPanel</name>
    <message>
        <source>Comparison</source>
        <translation>Comparaison</translation>
    </message>
    <message>
        <source>Copy table</source>
        <translation>Copier le tableau</translation>
    </message>
    <message>
        <source>Copy the table for a spreadsheet (Ctrl+Shift+C)</source>
        <translation>Copier le tableau pour un tableur (Ctrl+Shift+C)</translation>
    </message>
    <message>
        <source>Show where it was measured</source>
        <translation>Montrer où la valeur a été mesurée</translation>
    </message>
    <message>
        <source>Go to the view, frame and plane of the value (Enter in the table)</source>
        <translation>Aller à la vue, à l’image et au plan de la valeur (Entrée dans le tableau)</translation>
    </message>
    <message>
        <source>Confirm values</source>
        <translation>Confirmer les valeurs</translation>
    </message>
    <message>
        <source>Say that the values of the column that are out of date still hold (Ctrl+Shift+K)</source>
        <translation>Déclarer que les valeurs périmées de la colonne tiennent encore (Ctrl+Shift+K)</translation>
    </message>
    <message>
        <source>Values ± standard uncertainty appear here, one column for each kind of evidence and moment, once the appendage is measured on CT or echo, or a reading is typed in.</source>
        <translation>Les valeurs ± incertitude type apparaissent ici, une colonne par sorte d’élément et par moment, dès que l’auricule est mesurée au CT ou à l’écho, ou qu’une lecture est saisie.</translation>
    </message>
    <message>
        <source>Nothing else to note about the readings.</source>
        <translation>Rien d’autre à noter sur les lectures.</translation>
    </message>
</context>
<context>
    <name>ComparisonTable</name>
    <message>
        <source>Quantities</source>
        <translation>Grandeurs</translation>
    </message>
    <message>
        <source>Comparison of the evidence</source>
        <translation>Comparaison des éléments</translation>
    </message>
</context>
<context>
    <name>ConfirmContour</name>
    <message>
        <source>Confirm a corrected contour on its moved plane</source>
        <translation>Confirmer un contour corrigé sur son plan déplacé</translation>
    </message>
</context>
<context>
    <name>ConfirmPlaneOf</name>
    <message>
        <source>Confirm a measurement on its moved plane</source>
        <translation>Confirmer une mesure sur son plan déplacé</translation>
    </message>
</context>
<context>
    <name>CorrectContour</name>
    <message>
        <source>Correct a contour</source>
        <translation>Corriger un contour</translation>
    </message>
</context>
<context>
    <name>CoursePage</name>
    <message>
        <source>The patient&apos;s course</source>
        <translation>Le parcours du patient</translation>
    </message>
    <message>
        <source>Pressures</source>
        <translation>Pressions</translation>
    </message>
    <message>
        <source>Typed readings</source>
        <translation>Lectures saisies</translation>
    </message>
    <message>
        <source>Stasis</source>
        <translation>Stase</translation>
    </message>
    <message>
        <source>Release check</source>
        <translation>Contrôle avant largage</translation>
    </message>
    <message>
        <source>Scores</source>
        <translation>Scores</translation>
    </message>
    <message>
        <source>Decision</source>
        <translation>Décision</translation>
    </message>
    <message>
        <source>Add a moment</source>
        <translation>Ajouter un moment</translation>
    </message>
    <message>
        <source>Add a moment with its pressures to the course</source>
        <translation>Ajouter au parcours un moment avec ses pressions</translation>
    </message>
    <message>
        <source>Type a reading in</source>
        <translation>Saisir une lecture</translation>
    </message>
    <message>
        <source>A number that was not measured here</source>
        <translation>Un nombre qui n’a pas été mesuré ici</translation>
    </message>
    <message>
        <source>Record stasis</source>
        <translation>Noter une stase</translation>
    </message>
    <message>
        <source>Smoke, sludge, thrombus, emptying velocity at a stage</source>
        <translation>Contraste spontané, boue, thrombus, vitesse de vidange à une étape</translation>
    </message>
    <message>
        <source>Record a look at the implant</source>
        <translation>Noter un contrôle de l’implant</translation>
    </message>
    <message>
        <source>The checks before and after release</source>
        <translation>Les contrôles avant et après le largage</translation>
    </message>
</context>
<context>
    <name>CrossSectionChoice</name>
    <message>
        <source>Cross-section at</source>
        <translation>Coupe transversale :</translation>
    </message>
    <message>
        <source>Ostium</source>
        <translation>Ostium</translation>
    </message>
    <message>
        <source>Cross-section at the ostium (key O)</source>
        <translation>Coupe transversale à l’ostium (touche O)</translation>
    </message>
    <message>
        <source>Landing zone</source>
        <translation>Zone d’ancrage</translation>
    </message>
    <message>
        <source>Cross-section at the landing zone (key L)</source>
        <translation>Coupe transversale à la zone d’ancrage (touche L)</translation>
    </message>
</context>
<context>
    <name>CrossSectionView</name>
    <message>
        <source>Measuring …</source>
        <translation>Mesure en cours …</translation>
    </message>
    <message>
        <source>The cross-section appears here once the appendage is measured.</source>
        <translation>La coupe transversale apparaît ici dès que l’auricule est mesurée.</translation>
    </message>
    <message>
        <source>%1, contour corrected by hand</source>
        <translation>%1, contour corrigé à la main</translation>
    </message>
    <message>
        <source>%1, corrected contour stale until confirmed: its plane moved</source>
        <translation>%1, contour corrigé périmé jusqu’à confirmation : son plan a bougé</translation>
    </message>
    <message>
        <source>The contours of the ostium and of the landing zone can be corrected: show one of them (key O or L) first.</source>
        <translation>On peut corriger les contours de l’ostium et de la zone d’ancrage : en afficher d’abord un (touche O ou L).</translation>
    </message>
    <message>
        <source>Correct the contour by hand, or leave it</source>
        <translation>Corriger le contour à la main, ou le quitter</translation>
    </message>
    <message>
        <source>Refit the contour to the image</source>
        <translation>Réajuster le contour à l’image</translation>
    </message>
    <message>
        <source>Restore the contour that was found</source>
        <translation>Rétablir le contour trouvé</translation>
    </message>
    <message>
        <source>Confirm the corrected contour on its moved plane</source>
        <translation>Confirmer le contour corrigé sur son plan déplacé</translation>
    </message>
    <message>
        <source>%1 (key %2)</source>
        <translation>%1 (touche %2)</translation>
    </message>
    <message>
        <source>Correct the contour by an ellipse with handles</source>
        <translation>Corriger le contour par une ellipse à poignées</translation>
    </message>
</context>
<context>
    <name>Database</name>
    <message>
        <source>Cannot open the case library at %1: the database driver %2 is not installed. Install the package %3.</source>
        <translation>Impossible d’ouvrir la bibliothèque de cas de %1 : le pilote de base de données %2 n’est pas installé. Installer le paquet %3.</translation>
    </message>
    <message>
        <source>Cannot open the case library at %1: %2</source>
        <translation>Impossible d’ouvrir la bibliothèque de cas de %1 : %2</translation>
    </message>
    <message>
        <source>its folder cannot be made. Choose a folder that you may write to.</source>
        <translation>son dossier ne peut pas être créé. Choisir un dossier accessible en écriture.</translation>
    </message>
    <message>
        <source>its folder is read-only for you, so nothing could be saved. Choose a folder that you may write to.</source>
        <translation>son dossier est en lecture seule pour vous, donc rien ne pourrait être enregistré. Choisir un dossier accessible en écriture.</translation>
    </message>
    <message>
        <source>the file is read-only for you, so nothing could be saved. Have its permissions changed, or choose another file.</source>
        <translation>le fichier est en lecture seule pour vous, donc rien ne pourrait être enregistré. Faire changer ses droits, ou choisir un autre fichier.</translation>
    </message>
    <message>
        <source>the file cannot be made. Choose a folder that you may write to.</source>
        <translation>le fichier ne peut pas être créé. Choisir un dossier accessible en écriture.</translation>
    </message>
    <message>
        <source>the file is a database, but not a case library, or its first page is damaged. Nothing was changed in it. Choose another file, or bring back a copy.</source>
        <translation>le fichier est une base de données, mais pas une bibliothèque de cas, ou sa première page est endommagée. Rien n’y a été modifié. Choisir un autre fichier, ou rapporter une copie.</translation>
    </message>
    <message>
        <source>this file system does not allow a write-ahead log. Keep the file on a local disk; for several computers use PostgreSQL.</source>
        <translation>ce système de fichiers n’admet pas de journal d’écriture anticipée. Garder le fichier sur un disque local ; pour plusieurs ordinateurs, utiliser PostgreSQL.</translation>
    </message>
    <message>
        <source>the server does not let us in (%1). Check host, database and user in the settings, and that the password stands in your password file or service file.</source>
        <translation>le serveur ne nous laisse pas entrer (%1). Vérifier hôte, base et utilisateur dans les réglages, et que le mot de passe est dans votre fichier de mots de passe ou de services.</translation>
    </message>
    <message>
        <source>the disk is full for you, or does not let us write. Free some space, then try again.</source>
        <translation>le disque est plein pour vous, ou ne nous laisse pas écrire. Libérer de la place, puis réessayer.</translation>
    </message>
    <message>
        <source>another program has held the library for more than 5 s. Try again.</source>
        <translation>un autre programme retient la bibliothèque depuis plus de 5 s. Réessayer.</translation>
    </message>
    <message>
        <source>the library is read-only. Have its permissions changed, then try again.</source>
        <translation>la bibliothèque est en lecture seule. Faire changer ses droits, puis réessayer.</translation>
    </message>
    <message>
        <source>the disk does not read or write (SQLite code %1). Check that it is there and has space, then try again.</source>
        <translation>le disque ne lit ou n’écrit pas (code SQLite %1). Vérifier qu’il est là et a de la place, puis réessayer.</translation>
    </message>
    <message>
        <source>the library&apos;s file is damaged (SQLite code %1). Nothing was changed. Rescue the whole cases into a new library, or bring back a copy.</source>
        <translation>le fichier de la bibliothèque est endommagé (code SQLite %1). Rien n’a été modifié. Récupérer les cas intacts dans une nouvelle bibliothèque, ou rapporter une copie.</translation>
    </message>
    <message>
        <source>the disk is full. Free some space, then try again.</source>
        <translation>le disque est plein. Libérer de la place, puis réessayer.</translation>
    </message>
    <message>
        <source>the file cannot be opened. Check the folder&apos;s permissions.</source>
        <translation>le fichier ne peut pas être ouvert. Vérifier les droits du dossier.</translation>
    </message>
    <message>
        <source>the database refused the statement (SQLite code %1).</source>
        <translation>la base de données a refusé l’instruction (code SQLite %1).</translation>
    </message>
    <message>
        <source>the connection to the server is lost or was ended. Check the network, then open the library again.</source>
        <translation>la connexion au serveur est perdue ou a été coupée. Vérifier le réseau, puis rouvrir la bibliothèque.</translation>
    </message>
    <message>
        <source>the server is out of disk space or memory (code %1).</source>
        <translation>le serveur n’a plus de place sur disque ou en mémoire (code %1).</translation>
    </message>
    <message>
        <source>another person&apos;s change held this case too long. Try again.</source>
        <translation>la modification d’une autre personne a retenu ce cas trop longtemps. Réessayer.</translation>
    </message>
    <message>
        <source>the server found damaged data (code %1). Tell who looks after it.</source>
        <translation>le serveur a trouvé des données endommagées (code %1). Prévenir qui s’en occupe.</translation>
    </message>
    <message>
        <source>you may not write to this library (code %1).</source>
        <translation>vous ne pouvez pas écrire dans cette bibliothèque (code %1).</translation>
    </message>
    <message>
        <source>the database refused the statement (code %1).</source>
        <translation>la base de données a refusé l’instruction (code %1).</translation>
    </message>
</context>
<context>
    <name>DecisionEditor</name>
    <message>
        <source>Decision</source>
        <translation>Décision</translation>
    </message>
    <message>
        <source>What was decided, and why</source>
        <translation>Ce qui a été décidé, et pourquoi</translation>
    </message>
    <message>
        <source>Signed by</source>
        <translation>Signé par</translation>
    </message>
    <message>
        <source>Sign the decision</source>
        <translation>Signer la décision</translation>
    </message>
    <message>
        <source>Sign the words and the chosen size as they stand</source>
        <translation>Signer le texte et la taille choisie en l’état</translation>
    </message>
    <message>
        <source>Take the signature off</source>
        <translation>Retirer la signature</translation>
    </message>
    <message>
        <source>Nobody signs: write who signs.</source>
        <translation>Personne ne signe : écrire qui signe.</translation>
    </message>
    <message>
        <source>The decision was not signed. %1</source>
        <translation>La décision n’a pas été signée. %1</translation>
    </message>
    <message>
        <source>Signed by %1 on %2 for size %3.</source>
        <translation>Signé par %1 le %2 pour la taille %3.</translation>
    </message>
    <message>
        <source>Size %1 is chosen now: the signature is for another one. Sign again, or choose that size again.</source>
        <translation>La taille %1 est choisie maintenant : la signature vaut pour une autre. Signer de nouveau, ou reprendre cette taille.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucune</translation>
    </message>
    <message>
        <source>Draft. No size is chosen.</source>
        <translation>Brouillon. Aucune taille n’est choisie.</translation>
    </message>
    <message>
        <source>Draft, for size %1.</source>
        <translation>Brouillon, pour la taille %1.</translation>
    </message>
    <message>
        <source>It cannot be signed yet:</source>
        <translation>La signature n’est pas encore possible :</translation>
    </message>
</context>
<context>
    <name>DecisionTabs</name>
    <message>
        <source>Sizes, what next, card for the room</source>
        <translation>Tailles, suite, fiche pour la salle</translation>
    </message>
    <message>
        <source>Sizes</source>
        <translation>Tailles</translation>
    </message>
    <message>
        <source>What next</source>
        <translation>Et ensuite</translation>
    </message>
    <message>
        <source>Card for the room</source>
        <translation>Fiche pour la salle</translation>
    </message>
</context>
<context>
    <name>DecisionWords</name>
    <message>
        <source>below 1 %</source>
        <translation>moins de 1 %</translation>
    </message>
    <message>
        <source>above 99 %</source>
        <translation>plus de 99 %</translation>
    </message>
    <message>
        <source>%1 at %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>narrower than the appendage by %1</source>
        <translation>plus étroit que l’auricule de %1</translation>
    </message>
    <message>
        <source>%1 compression</source>
        <translation>%1 de compression</translation>
    </message>
    <message>
        <source>end-systole</source>
        <translation>télésystole</translation>
    </message>
    <message>
        <source>another phase</source>
        <translation>autre phase</translation>
    </message>
    <message>
        <source>phase not stated</source>
        <translation>phase non indiquée</translation>
    </message>
    <message>
        <source>from the Doppler envelope</source>
        <translation>d’après l’enveloppe Doppler</translation>
    </message>
    <message>
        <source>typed in</source>
        <translation>saisi</translation>
    </message>
    <message>
        <source>early phase</source>
        <translation>phase précoce</translation>
    </message>
    <message>
        <source>delayed phase</source>
        <translation>phase tardive</translation>
    </message>
    <message>
        <source>passing: fasting, anaesthesia, ventilation, a diuretic</source>
        <translation>passager : jeûne, anesthésie, ventilation, diurétique</translation>
    </message>
    <message>
        <source>lasting: regurgitation repaired</source>
        <translation>durable : insuffisance réparée</translation>
    </message>
    <message>
        <source>not known: both are shown</source>
        <translation>inconnu : les deux sont montrés</translation>
    </message>
    <message>
        <source>within</source>
        <translation>dans la plage</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>hors plage</translation>
    </message>
    <message>
        <source>no range</source>
        <translation>pas de plage</translation>
    </message>
    <message>
        <source>%1 to %2 (%3)</source>
        <translation>%1 à %2 (%3)</translation>
    </message>
    <message>
        <source>at least %1 (%2)</source>
        <translation>au moins %1 (%2)</translation>
    </message>
    <message>
        <source>at most %1 (%2)</source>
        <translation>au plus %1 (%2)</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
</context>
<context>
    <name>DepthReadout</name>
    <message>
        <source>pointer, depth %1</source>
        <translation>pointeur, profondeur %1</translation>
    </message>
    <message>
        <source>area</source>
        <translation>aire</translation>
    </message>
</context>
<context>
    <name>DepthStrip</name>
    <message>
        <source>Perimeter-derived width and its 95 % interval at</source>
        <translation>Largeur dérivée du périmètre et son intervalle à 95 % à</translation>
    </message>
    <message>
        <source>Width against depth along the axis, mm</source>
        <translation>Largeur selon la profondeur le long de l’axe, mm</translation>
    </message>
    <message>
        <source>usable depth %1</source>
        <translation>profondeur utile %1</translation>
    </message>
    <message>
        <source>size %1</source>
        <translation>taille %1</translation>
    </message>
    <message>
        <source>perimeter-derived</source>
        <translation>dérivé du périmètre</translation>
    </message>
    <message>
        <source>longest</source>
        <translation>le plus long</translation>
    </message>
    <message>
        <source>shortest</source>
        <translation>le plus court</translation>
    </message>
    <message>
        <source>%1, lowest (beyond the model)</source>
        <translation>%1, la plus basse (hors du modèle)</translation>
    </message>
    <message>
        <source>%1, lowest</source>
        <translation>%1, la plus basse</translation>
    </message>
    <message>
        <source>%1, decision (beyond the model)</source>
        <translation>%1, décision (hors du modèle)</translation>
    </message>
    <message>
        <source>%1, decision</source>
        <translation>%1, décision</translation>
    </message>
    <message>
        <source>%1, highest (beyond the model)</source>
        <translation>%1, la plus haute (hors du modèle)</translation>
    </message>
    <message>
        <source>%1, highest</source>
        <translation>%1, la plus haute</translation>
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
        <translation>Largeur selon la profondeur le long de l’axe</translation>
    </message>
    <message>
        <source>Click or left and right keys show a depth; drag the landing zone&apos;s marker, or hold Shift with the keys, to move it.</source>
        <translation>Clic ou touches gauche et droite montrent une profondeur ; glisser le marqueur de la zone d’ancrage, ou Maj avec les touches, pour la déplacer.</translation>
    </message>
</context>
<context>
    <name>Drawing</name>
    <message>
        <source>perimeter-derived %1</source>
        <translation>dérivé du périmètre %1</translation>
    </message>
    <message>
        <source>longest %1</source>
        <translation>le plus long %1</translation>
    </message>
    <message>
        <source>shortest %1</source>
        <translation>le plus court %1</translation>
    </message>
    <message>
        <source>ostium, proposed</source>
        <translation>ostium, proposé</translation>
    </message>
    <message>
        <source>axial</source>
        <translation>axiale</translation>
    </message>
    <message>
        <source>coronal</source>
        <translation>coronale</translation>
    </message>
    <message>
        <source>sagittal</source>
        <translation>sagittale</translation>
    </message>
    <message>
        <source>depth %1</source>
        <translation>profondeur %1</translation>
    </message>
    <message>
        <source>plug plane, %1 beyond the ridge</source>
        <translation>plan du bouchon, %1 au-delà de la crête</translation>
    </message>
    <message>
        <source>%1 %2, tilted %3</source>
        <translation>%1 %2, inclinée de %3</translation>
    </message>
</context>
<context>
    <name>DrawingLayer</name>
    <message>
        <source>Label of the measurement</source>
        <translation>Libellé de la mesure</translation>
    </message>
    <message>
        <source>Label</source>
        <translation>Libellé</translation>
    </message>
    <message>
        <source>not measured: no scale</source>
        <translation>non mesuré : pas d’échelle</translation>
    </message>
</context>
<context>
    <name>Drawings</name>
    <message>
        <source>straight line</source>
        <translation>ligne droite</translation>
    </message>
    <message>
        <source>curved line</source>
        <translation>ligne courbe</translation>
    </message>
    <message>
        <source>angle</source>
        <translation>angle</translation>
    </message>
    <message>
        <source>area</source>
        <translation>aire</translation>
    </message>
    <message>
        <source>ellipse</source>
        <translation>ellipse</translation>
    </message>
    <message>
        <source>velocity</source>
        <translation>vitesse</translation>
    </message>
    <message>
        <source>interval of time</source>
        <translation>intervalle de temps</translation>
    </message>
    <message>
        <source>envelope of velocities</source>
        <translation>enveloppe de vitesses</translation>
    </message>
    <message>
        <source>not in the table</source>
        <translation>pas dans le tableau</translation>
    </message>
    <message>
        <source>ostium width</source>
        <translation>largeur de l’ostium</translation>
    </message>
    <message>
        <source>landing zone width</source>
        <translation>largeur de la zone d’ancrage</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>profondeur</translation>
    </message>
    <message>
        <source>ostium contour</source>
        <translation>contour de l’ostium</translation>
    </message>
    <message>
        <source>landing zone contour</source>
        <translation>contour de la zone d’ancrage</translation>
    </message>
    <message>
        <source>mitral inflow</source>
        <translation>flux mitral</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>Its plane has moved: stale until confirmed (Enter)</source>
        <translation>Son plan a bougé : périmé jusqu’à confirmation (Entrée)</translation>
    </message>
    <message>
        <source>Stale: what it was measured on has changed</source>
        <translation>Périmé : ce sur quoi on a mesuré a changé</translation>
    </message>
</context>
<context>
    <name>EchoPage</name>
    <message>
        <source>%1 (key %2)</source>
        <translation>%1 (touche %2)</translation>
    </message>
    <message>
        <source>One pass</source>
        <translation>Un passage</translation>
    </message>
    <message>
        <source>Measure the echo views one after the other</source>
        <translation>Mesurer les vues d’écho l’une après l’autre</translation>
    </message>
    <message>
        <source>Ostium width</source>
        <translation>Largeur de l’ostium</translation>
    </message>
    <message>
        <source>Draw the width of the ostium</source>
        <translation>Tracer la largeur de l’ostium</translation>
    </message>
    <message>
        <source>Landing-zone width</source>
        <translation>Largeur de la zone d’ancrage</translation>
    </message>
    <message>
        <source>Draw the width of the landing zone</source>
        <translation>Tracer la largeur de la zone d’ancrage</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Profondeur</translation>
    </message>
    <message>
        <source>Draw the depth from the ostium to the tip</source>
        <translation>Tracer la profondeur de l’ostium à la pointe</translation>
    </message>
    <message>
        <source>One view alone</source>
        <translation>Une vue seule</translation>
    </message>
    <message>
        <source>Show the view in hand alone, or all again</source>
        <translation>Montrer la vue en cours seule, ou de nouveau toutes</translation>
    </message>
    <message>
        <source>Calibrate</source>
        <translation>Étalonner</translation>
    </message>
    <message>
        <source>Give the picture a scale: two clicks and a length</source>
        <translation>Donner une échelle à l’image : deux clics et une longueur</translation>
    </message>
    <message>
        <source>Show the echo views of this moment</source>
        <translation>Montrer les vues d’écho de ce moment</translation>
    </message>
    <message>
        <source>The pass has ended. Undo takes back what was drawn.</source>
        <translation>Le passage est terminé. Annuler retire ce qui a été tracé.</translation>
    </message>
    <message>
        <source>There are no echo views in this case.</source>
        <translation>Ce cas n’a pas de vues d’écho.</translation>
    </message>
    <message>
        <source>%1 (%2 of %3): choose the frame with the comma and full stop keys and draw the %4: arrow keys and Space, or the mouse. S leaves it out, Enter goes to the next view, Escape ends the pass.</source>
        <translation>%1 (%2 sur %3) : choisir l’image avec les touches virgule et point et tracer %4, avec les flèches et Espace ou la souris. S la saute, Entrée passe à la vue suivante, Échap termine le passage.</translation>
    </message>
</context>
<context>
    <name>EchoPass</name>
    <message>
        <source>ostium width</source>
        <translation>largeur de l’ostium</translation>
    </message>
    <message>
        <source>landing-zone width</source>
        <translation>largeur de la zone d’ancrage</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>profondeur</translation>
    </message>
    <message>
        <source>length of its own</source>
        <translation>longueur propre</translation>
    </message>
</context>
<context>
    <name>Edit</name>
    <message>
        <source>Move the landing zone</source>
        <translation>Déplacer la zone d’ancrage</translation>
    </message>
    <message>
        <source>Move the mark: %1</source>
        <translation>Déplacer le repère : %1</translation>
    </message>
    <message>
        <source>Mark: %1</source>
        <translation>Repère : %1</translation>
    </message>
    <message>
        <source>Remove the mark: %1</source>
        <translation>Supprimer le repère : %1</translation>
    </message>
    <message>
        <source>Confirm the ostium</source>
        <translation>Confirmer l’ostium</translation>
    </message>
    <message>
        <source>Release the ostium</source>
        <translation>Libérer l’ostium</translation>
    </message>
</context>
<context>
    <name>Evidence</name>
    <message>
        <source>pressure unknown</source>
        <translation>pression inconnue</translation>
    </message>
    <message>
        <source>LA mean %1, v wave %2</source>
        <translation>OG moyenne %1, onde v %2</translation>
    </message>
    <message>
        <source>LA mean %1</source>
        <translation>OG moyenne %1</translation>
    </message>
    <message>
        <source>%1, angle unknown</source>
        <translation>%1, angle inconnu</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>%1 (%2 of %3)</source>
        <translation>%1 (%2 sur %3)</translation>
    </message>
    <message>
        <source>CT, pressure unknown</source>
        <translation>TDM, pression inconnue</translation>
    </message>
    <message>
        <source>Lengths, areas, angles and Hounsfield values can be measured everywhere.</source>
        <translation>Longueurs, aires, angles et valeurs Hounsfield se mesurent partout.</translation>
    </message>
    <message>
        <source>Lengths, areas and angles can be measured within its calibrated regions; widths at known probe angles enter the ellipse of the views.</source>
        <translation>Longueurs, aires et angles se mesurent dans les régions étalonnées ; les largeurs à un angle de sonde connu entrent dans l’ellipse des vues.</translation>
    </message>
    <message>
        <source>Shown slice by slice. Lengths, areas and angles can be measured within a slice; it has no probe angle, so they do not enter the ellipse of the views.</source>
        <translation>Montré coupe par coupe. Longueurs, aires et angles se mesurent dans une coupe ; sans angle de sonde, ils n’entrent pas dans l’ellipse des vues.</translation>
    </message>
    <message>
        <source>Velocities, times and envelopes can be measured on the spectrum; lengths cannot.</source>
        <translation>Vitesses, temps et enveloppes se mesurent sur le spectre ; les longueurs non.</translation>
    </message>
    <message>
        <source>Lengths and angles can be measured by the C-arm's geometry, or once a catheter or a known length has given the scale.</source>
        <translation>Longueurs et angles se mesurent selon la géométrie de l’arceau, ou dès qu’un cathéter ou une longueur connue a donné l’échelle.</translation>
    </message>
    <message>
        <source>Lengths can be measured once the person has given a scale.</source>
        <translation>Les longueurs se mesurent dès que la personne a donné une échelle.</translation>
    </message>
</context>
<context>
    <name>EvidenceModel</name>
    <message>
        <source>Echo</source>
        <translation>Écho</translation>
    </message>
    <message>
        <source>Fluoroscopy</source>
        <translation>Fluoroscopie</translation>
    </message>
    <message>
        <source>Images</source>
        <translation>Images</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>not measured</source>
        <translation>non mesuré</translation>
    </message>
    <message numerus="yes">
        <source>%n measurement(s)</source>
        <translation>
            <numerusform>%n mesure</numerusform>
            <numerusform>%n mesures</numerusform>
        </translation>
    </message>
    <message>
        <source>Enter shows it; the context menu changes stage, moment, angle and phase</source>
        <translation>Entrée l’affiche ; le menu contextuel change étape, moment, angle et phase</translation>
    </message>
    <message>
        <source>phase %1</source>
        <translation>phase %1</translation>
    </message>
    <message>
        <source>Measure this phase (double click or Enter)</source>
        <translation>Mesurer cette phase (double clic ou Entrée)</translation>
    </message>
    <message>
        <source>Not used</source>
        <translation>Non utilisé</translation>
    </message>
    <message>
        <source>cannot be used</source>
        <translation>inutilisable</translation>
    </message>
    <message>
        <source>Patient %1</source>
        <translation>Patient %1</translation>
    </message>
    <message>
        <source>Patient without a name, ID %1</source>
        <translation>Patient sans nom, ID %1</translation>
    </message>
    <message>
        <source>%1, ID %2</source>
        <translation>%1, ID %2</translation>
    </message>
    <message numerus="yes">
        <source>%n image(s)</source>
        <translation>
            <numerusform>%n image</numerusform>
            <numerusform>%n images</numerusform>
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
        <translation>Éléments</translation>
    </message>
    <message>
        <source>Open folder …</source>
        <translation>Ouvrir un dossier …</translation>
    </message>
    <message>
        <source>Open a folder of DICOM images (Ctrl+O), or drop it on the window</source>
        <translation>Ouvrir un dossier d’images DICOM (Ctrl+O), ou le déposer sur la fenêtre</translation>
    </message>
    <message>
        <source>Nothing is open. Drop a folder of DICOM images here.</source>
        <translation>Rien n’est ouvert. Déposer ici un dossier d’images DICOM.</translation>
    </message>
    <message>
        <source>… and %1 more</source>
        <translation>… et %1 de plus</translation>
    </message>
    <message>
        <source>%1 (shown)</source>
        <translation>%1 (affiché)</translation>
    </message>
    <message>
        <source>Evidence: a stage earlier</source>
        <translation>Élément : une étape plus tôt</translation>
    </message>
    <message>
        <source>Evidence: a stage later</source>
        <translation>Élément : une étape plus tard</translation>
    </message>
    <message>
        <source>Evidence: probe angle …</source>
        <translation>Élément : angle de la sonde …</translation>
    </message>
    <message numerus="yes">
        <source>%n other file(s) were left out.</source>
        <translation>
            <numerusform>%n autre fichier a été laissé de côté.</numerusform>
            <numerusform>%n autres fichiers ont été laissés de côté.</numerusform>
        </translation>
    </message>
    <message>
        <source>Change the stage</source>
        <translation>Changer l’étape</translation>
    </message>
    <message>
        <source>Change the moment</source>
        <translation>Changer le moment</translation>
    </message>
    <message>
        <source>Change the probe angle</source>
        <translation>Changer l’angle de la sonde</translation>
    </message>
    <message>
        <source>Change the phase</source>
        <translation>Changer la phase</translation>
    </message>
    <message>
        <source>Probe angle</source>
        <translation>Angle de la sonde</translation>
    </message>
    <message>
        <source>Rotation of the probe&apos;s plane as the picture shows it, degrees:</source>
        <translation>Rotation du plan de la sonde, comme l’image la montre, degrés :</translation>
    </message>
    <message>
        <source>Choose evidence in the list first.</source>
        <translation>Choisir d’abord un élément dans la liste.</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Étape</translation>
    </message>
    <message>
        <source>Moment</source>
        <translation>Moment</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Aucun</translation>
    </message>
    <message>
        <source>Not known</source>
        <translation>Inconnu</translation>
    </message>
    <message>
        <source>Another angle … (Alt+A)</source>
        <translation>Autre angle … (Alt+A)</translation>
    </message>
    <message>
        <source>Phase of the frames that are measured</source>
        <translation>Phase des images mesurées</translation>
    </message>
</context>
<context>
    <name>FluoroPage</name>
    <message>
        <source>X-ray run</source>
        <translation>Séquence de scopie</translation>
    </message>
    <message>
        <source>Choose the X-ray run that is shown</source>
        <translation>Choisir la séquence de scopie affichée</translation>
    </message>
    <message>
        <source>%1 (key %2)</source>
        <translation>%1 (touche %2)</translation>
    </message>
    <message>
        <source>Ostium width</source>
        <translation>Largeur de l’ostium</translation>
    </message>
    <message>
        <source>Draw the width of the ostium</source>
        <translation>Tracer la largeur de l’ostium</translation>
    </message>
    <message>
        <source>Landing-zone width</source>
        <translation>Largeur de la zone d’ancrage</translation>
    </message>
    <message>
        <source>Draw the width of the landing zone</source>
        <translation>Tracer la largeur de la zone d’ancrage</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Profondeur</translation>
    </message>
    <message>
        <source>Draw the depth from the ostium to the tip</source>
        <translation>Tracer la profondeur de l’ostium à la pointe</translation>
    </message>
    <message>
        <source>Known length</source>
        <translation>Longueur connue</translation>
    </message>
    <message>
        <source>Calibrate by two ends of a known length</source>
        <translation>Étalonner par les deux bouts d’une longueur connue</translation>
    </message>
    <message>
        <source>Catheter edges</source>
        <translation>Bords du cathéter</translation>
    </message>
    <message>
        <source>Calibrate by a click on either edge of a catheter</source>
        <translation>Étalonner par un clic sur chaque bord d’un cathéter</translation>
    </message>
    <message>
        <source>Catheter shadow</source>
        <translation>Ombre du cathéter</translation>
    </message>
    <message>
        <source>Calibrate by the program&apos;s own reading of a catheter&apos;s edges along a piece of it</source>
        <translation>Étalonner par la lecture que fait le programme des bords d’un cathéter sur un segment</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Drawn here: %1</source>
        <translation>Tracé ici : %1</translation>
    </message>
    <message>
        <source>Not drawn on this run.</source>
        <translation>Pas tracé sur cette séquence.</translation>
    </message>
    <message>
        <source>CT predicts nothing: it is not measured.</source>
        <translation>Le CT ne prédit rien : il n’est pas mesuré.</translation>
    </message>
    <message>
        <source>CT predicts nothing: the file does not tell the C-arm&apos;s angles.</source>
        <translation>Le CT ne prédit rien : le fichier ne donne pas les angles de l’arceau.</translation>
    </message>
    <message>
        <source>CT predicts at these angles: %1</source>
        <translation>Le CT prédit à ces angles : %1</translation>
    </message>
    <message>
        <source>The plane is turned by %1 from edge-on; of lengths along the axis %2 is seen.</source>
        <translation>Le plan est tourné de %1 par rapport à la vue de profil ; des longueurs le long de l’axe on voit %2.</translation>
    </message>
    <message>
        <source>There is no X-ray run in this case.</source>
        <translation>Ce cas n’a pas de séquence de scopie.</translation>
    </message>
    <message>
        <source>Nothing is open.</source>
        <translation>Rien n’est ouvert.</translation>
    </message>
    <message>
        <source>C-arm: %1</source>
        <translation>Arceau : %1</translation>
    </message>
    <message>
        <source>The file does not tell the C-arm&apos;s angles for this frame.</source>
        <translation>Le fichier ne donne pas les angles de l’arceau pour cette image.</translation>
    </message>
    <message>
        <source>Drawn here: %1. Foreshortening can only make it shorter.</source>
        <translation>Tracé ici : %1. Le raccourci ne peut que le réduire.</translation>
    </message>
    <message>
        <source>%1 of CT</source>
        <translation>%1 du CT</translation>
    </message>
</context>
<context>
    <name>GiveRole</name>
    <message>
        <source>Put a measurement into the table</source>
        <translation>Mettre une mesure dans le tableau</translation>
    </message>
</context>
<context>
    <name>Handles</name>
    <message>
        <source>Drag to move the ostium plane along its normal. Keys, while the ostium is shown (O): Alt+Left, Alt+Right; with Shift in finer steps.</source>
        <translation>Glisser pour déplacer le plan de l’ostium le long de sa normale. Touches, tant que l’ostium est affiché (O) : Alt+Gauche, Alt+Droite ; avec Maj par pas plus fins.</translation>
    </message>
    <message>
        <source>Drag to tilt the ostium plane. Keys, while the ostium is shown (O): Alt+Up, Alt+Down in the picture, Alt+Page Up, Alt+Page Down out of it; with Shift in finer steps.</source>
        <translation>Glisser pour incliner le plan de l’ostium. Touches, tant que l’ostium est affiché (O) : Alt+Haut, Alt+Bas dans l’image, Alt+Page préc., Alt+Page suiv. hors de l’image ; avec Maj par pas plus fins.</translation>
    </message>
    <message>
        <source>Drag to move the landing plane along the axis. Keys, while the landing zone is shown (L): Alt+Left, Alt+Right; with Shift in finer steps.</source>
        <translation>Glisser pour déplacer le plan d’ancrage le long de l’axe. Touches, tant que la zone d’ancrage est affichée (L) : Alt+Gauche, Alt+Droite ; avec Maj par pas plus fins.</translation>
    </message>
    <message>
        <source>Drag to tilt the landing plane. Keys, while the landing zone is shown (L): Alt+Up, Alt+Down in the picture, Alt+Page Up, Alt+Page Down out of it; with Shift in finer steps. Alt+Home sets it square to the axis.</source>
        <translation>Glisser pour incliner le plan d’ancrage. Touches, tant que la zone d’ancrage est affichée (L) : Alt+Haut, Alt+Bas dans l’image, Alt+Page préc., Alt+Page suiv. hors de l’image ; avec Maj par pas plus fins. Alt+Origine le remet perpendiculaire à l’axe.</translation>
    </message>
</context>
<context>
    <name>KeyValues</name>
    <message>
        <source>Landing zone, perimeter-derived diameter</source>
        <translation>Zone d’ancrage, diamètre dérivé du périmètre</translation>
    </message>
    <message>
        <source>Landing zone, longest diameter</source>
        <translation>Zone d’ancrage, plus long diamètre</translation>
    </message>
    <message>
        <source>Landing zone, shortest diameter</source>
        <translation>Zone d’ancrage, plus court diamètre</translation>
    </message>
    <message>
        <source>Ostium, perimeter-derived diameter</source>
        <translation>Ostium, diamètre dérivé du périmètre</translation>
    </message>
    <message>
        <source>Depth from the ostium plane</source>
        <translation>Profondeur depuis le plan de l’ostium</translation>
    </message>
</context>
<context>
    <name>LabelDrawing</name>
    <message>
        <source>Label a measurement</source>
        <translation>Libeller une mesure</translation>
    </message>
</context>
<context>
    <name>LibraryDialog</name>
    <message>
        <source>No case matches. Change the words or the tag.</source>
        <translation>Aucun cas ne correspond. Changer les mots ou l’étiquette.</translation>
    </message>
    <message>
        <source>The bin is empty.</source>
        <translation>La corbeille est vide.</translation>
    </message>
    <message>
        <source>No cases yet. Save an open case into the library, or import one from a file.</source>
        <translation>Pas encore de cas. Enregistrer un cas ouvert dans la bibliothèque, ou en importer un d’un fichier.</translation>
    </message>
    <message>
        <source>All tags</source>
        <translation>Toutes les étiquettes</translation>
    </message>
    <message>
        <source>Choose a case to see its versions.</source>
        <translation>Choisir un cas pour voir ses versions.</translation>
    </message>
    <message>
        <source>In the bin since %1.</source>
        <translation>Dans la corbeille depuis %1.</translation>
    </message>
    <message>
        <source>Nobody edits this case.</source>
        <translation>Personne ne modifie ce cas.</translation>
    </message>
    <message>
        <source>You are editing this case.</source>
        <translation>Vous modifiez ce cas.</translation>
    </message>
    <message>
        <source>%1 on %2 is editing this case since %3. You can read it.</source>
        <translation>%1 sur %2 modifie ce cas depuis %3. Vous pouvez le lire.</translation>
    </message>
    <message>
        <source>%1 · %2 · %3</source>
        <translation>%1 · %2 · %3</translation>
    </message>
    <message>
        <source>Damaged: cannot be read</source>
        <translation>Endommagé : illisible</translation>
    </message>
    <message>
        <source>Refused save, made from version %1</source>
        <translation>Enregistrement refusé, fait d’après la version %1</translation>
    </message>
    <message numerus="yes">
        <source>Present version, and %n edit(s) since</source>
        <translation>
            <numerusform>Version actuelle, et %n modification depuis</numerusform>
            <numerusform>Version actuelle, et %n modifications depuis</numerusform>
        </translation>
    </message>
    <message>
        <source>Present version</source>
        <translation>Version actuelle</translation>
    </message>
    <message>
        <source>&amp;Open for reading</source>
        <translation>&amp;Ouvrir en lecture</translation>
    </message>
    <message>
        <source>&amp;Open</source>
        <translation>&amp;Ouvrir</translation>
    </message>
    <message>
        <source>Take &amp;out of the bin</source>
        <translation>S&amp;ortir de la corbeille</translation>
    </message>
    <message>
        <source>Move to the bi&amp;n</source>
        <translation>Mettre à la corbei&amp;lle</translation>
    </message>
    <message>
        <source>%1 is editing this case.</source>
        <translation>%1 modifie ce cas.</translation>
    </message>
    <message>
        <source>Version %1 is now version %2, the present one.</source>
        <translation>La version %1 est maintenant la version %2, l’actuelle.</translation>
    </message>
    <message>
        <source>Forget a refused version</source>
        <translation>Oublier une version refusée</translation>
    </message>
    <message>
        <source>Version %1 was refused because somebody else had saved. Its text is kept nowhere else. Forget it for good?</source>
        <translation>La version %1 a été refusée parce que quelqu’un d’autre avait enregistré. Son texte n’est gardé nulle part ailleurs. L’oublier définitivement ?</translation>
    </message>
    <message>
        <source>The case is back in the list.</source>
        <translation>Le cas est de retour dans la liste.</translation>
    </message>
    <message>
        <source>The case lies in the bin. Nothing is lost.</source>
        <translation>Le cas est dans la corbeille. Rien n’est perdu.</translation>
    </message>
    <message>
        <source>Remove for good</source>
        <translation>Supprimer définitivement</translation>
    </message>
    <message>
        <source>This removes the case with all its versions from the library. It cannot be undone. Remove it?</source>
        <translation>Ceci supprime de la bibliothèque le cas et toutes ses versions. C’est irréversible. Le supprimer ?</translation>
    </message>
    <message>
        <source>The case was imported with all its versions.</source>
        <translation>Le cas a été importé avec toutes ses versions.</translation>
    </message>
    <message>
        <source>The case was exported to %1. The file holds the patient&apos;s name.</source>
        <translation>Le cas a été exporté vers %1. Le fichier contient le nom du patient.</translation>
    </message>
    <message>
        <source>Import a case</source>
        <translation>Importer un cas</translation>
    </message>
    <message>
        <source>Cases of a library (*%1)</source>
        <translation>Cas d’une bibliothèque (*%1)</translation>
    </message>
    <message>
        <source>case-%1</source>
        <translation>cas-%1</translation>
    </message>
    <message>
        <source>Export the case</source>
        <translation>Exporter le cas</translation>
    </message>
    <message>
        <source>Search name, ID, date, title, tag</source>
        <translation>Chercher nom, identifiant, date, titre, étiquette</translation>
    </message>
    <message>
        <source>Search</source>
        <translation>Chercher</translation>
    </message>
    <message>
        <source>All words must be found. Key Ctrl+F</source>
        <translation>Tous les mots doivent s’y trouver. Touche Ctrl+F</translation>
    </message>
    <message>
        <source>Tag</source>
        <translation>Étiquette</translation>
    </message>
    <message>
        <source>Show the cases with this tag only</source>
        <translation>Ne montrer que les cas portant cette étiquette</translation>
    </message>
    <message>
        <source>Show the &amp;bin</source>
        <translation>Montrer la cor&amp;beille</translation>
    </message>
    <message>
        <source>Cases</source>
        <translation>Cas</translation>
    </message>
    <message>
        <source>Versions</source>
        <translation>Versions</translation>
    </message>
    <message>
        <source>&amp;Read this version</source>
        <translation>Li&amp;re cette version</translation>
    </message>
    <message>
        <source>Ma&amp;ke it the present one</source>
        <translation>En faire l’a&amp;ctuelle</translation>
    </message>
    <message>
        <source>For&amp;get the refused version</source>
        <translation>Ou&amp;blier la version refusée</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Annuler</translation>
    </message>
    <message>
        <source>Takes the case out of the bin again. Key Ctrl+Z</source>
        <translation>Ressort le cas de la corbeille. Touche Ctrl+Z</translation>
    </message>
    <message>
        <source>&amp;Import …</source>
        <translation>&amp;Importer …</translation>
    </message>
    <message>
        <source>&amp;Export …</source>
        <translation>&amp;Exporter …</translation>
    </message>
    <message>
        <source>Remove for &amp;good …</source>
        <translation>Supprimer &amp;définitivement …</translation>
    </message>
    <message>
        <source>Key Enter</source>
        <translation>Touche Entrée</translation>
    </message>
    <message>
        <source>Case library</source>
        <translation>Bibliothèque de cas</translation>
    </message>
    <message>
        <source>Key Alt+B</source>
        <translation>Touche Alt+B</translation>
    </message>
</context>
<context>
    <name>LibraryDocument</name>
    <message>
        <source>Cannot open the case: the folder %1 cannot be made.</source>
        <translation>Impossible d’ouvrir le cas : le dossier %1 ne peut pas être créé.</translation>
    </message>
    <message>
        <source>%1 on %2 is editing this case, so it was opened for reading only.</source>
        <translation>%1 sur %2 modifie ce cas, il a donc été ouvert en lecture seule.</translation>
    </message>
    <message>
        <source>The case is damaged in the library: %1. This is what is whole of it.</source>
        <translation>Le cas est endommagé dans la bibliothèque : %1. Voici ce qui en est intact.</translation>
    </message>
    <message>
        <source>Cannot put the case into the library: it is there already.</source>
        <translation>Impossible de mettre le cas dans la bibliothèque : il y est déjà.</translation>
    </message>
    <message>
        <source>Cannot save the case in the library: it is open for reading only.</source>
        <translation>Impossible d’enregistrer le cas dans la bibliothèque : il est ouvert en lecture seule.</translation>
    </message>
    <message>
        <source>Cannot close the case: the library does not take its last edits. Save it as a file.</source>
        <translation>Impossible de fermer le cas : la bibliothèque ne prend pas ses dernières modifications. L’enregistrer comme fichier.</translation>
    </message>
</context>
<context>
    <name>LibraryModel</name>
    <message>
        <source>Damaged: do not trust</source>
        <translation>Endommagé : ne pas s’y fier</translation>
    </message>
    <message>
        <source>No name</source>
        <translation>Sans nom</translation>
    </message>
    <message>
        <source>You</source>
        <translation>Vous</translation>
    </message>
    <message>
        <source>Edited by %1 on %2 since %3</source>
        <translation>Modifié par %1 sur %2 depuis %3</translation>
    </message>
    <message>
        <source>Patient</source>
        <translation>Patient</translation>
    </message>
    <message>
        <source>Patient ID</source>
        <translation>Identifiant du patient</translation>
    </message>
    <message>
        <source>Born</source>
        <translation>Né(e) le</translation>
    </message>
    <message>
        <source>Studied</source>
        <translation>Examen</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titre</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Étape</translation>
    </message>
    <message>
        <source>Tags</source>
        <translation>Étiquettes</translation>
    </message>
    <message>
        <source>Changed</source>
        <translation>Modifié</translation>
    </message>
    <message>
        <source>Edited by</source>
        <translation>Modifié par</translation>
    </message>
</context>
<context>
    <name>LibraryPlace</name>
    <message>
        <source>service %1</source>
        <translation>service %1</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation>%1 sur %2</translation>
    </message>
</context>
<context>
    <name>LibrarySettings</name>
    <message>
        <source>Server</source>
        <translation>Serveur</translation>
    </message>
    <message>
        <source>File of the library</source>
        <translation>Fichier de la bibliothèque</translation>
    </message>
    <message>
        <source>Choose …</source>
        <translation>Choisir …</translation>
    </message>
    <message>
        <source>Choose the file of the library; it is made where there is none</source>
        <translation>Choisir le fichier de la bibliothèque ; il est créé s&apos;il n&apos;existe pas</translation>
    </message>
    <message>
        <source>&amp;Library</source>
        <translation>&amp;Bibliothèque</translation>
    </message>
    <message>
        <source>Another file holds from the next start.</source>
        <translation>Un autre fichier vaut dès le prochain démarrage.</translation>
    </message>
</context>
<context>
    <name>LibraryWindow</name>
    <message>
        <source>Case &amp;library …</source>
        <translation>&amp;Bibliothèque de cas …</translation>
    </message>
    <message>
        <source>&amp;Put the case into the library</source>
        <translation>&amp;Mettre le cas dans la bibliothèque</translation>
    </message>
    <message>
        <source>Save a &amp;version in the library</source>
        <translation>Enregistrer une &amp;version dans la bibliothèque</translation>
    </message>
    <message>
        <source>The case was opened from the library. Each edit is stored there as you make it.</source>
        <translation>Le cas a été ouvert de la bibliothèque. Chaque modification y est enregistrée à mesure.</translation>
    </message>
    <message>
        <source>The case is in the library. Each edit is stored there as you make it.</source>
        <translation>Le cas est dans la bibliothèque. Chaque modification y est enregistrée à mesure.</translation>
    </message>
    <message>
        <source>Saved as version %1 in the library.</source>
        <translation>Enregistré comme version %1 dans la bibliothèque.</translation>
    </message>
    <message>
        <source>Somebody else</source>
        <translation>Quelqu’un d’autre</translation>
    </message>
    <message>
        <source>%1 has the case now. Yours is kept as version %2 beside theirs: look at both in the case library.</source>
        <translation>%1 a le cas maintenant. Le vôtre est gardé comme version %2 à côté du sien : regarder les deux dans la bibliothèque de cas.</translation>
    </message>
    <message>
        <source>%1 has the case now, and nothing more of yours is stored in it. Save a version: it is kept beside theirs.</source>
        <translation>%1 a le cas maintenant, et plus rien de vous n’y est enregistré. Enregistrer une version : elle est gardée à côté de la sienne.</translation>
    </message>
</context>
<context>
    <name>LongSectionView</name>
    <message>
        <source>Measuring the appendage …</source>
        <translation>Mesure de l’auricule …</translation>
    </message>
    <message>
        <source>Mark the atrium and the tip of the appendage on the scanner-axis sections (key T): the appendage is then measured and shown along its own axis here.</source>
        <translation>Marquer l’oreillette et la pointe de l’auricule sur les coupes des axes du scanner (touche T) : l’auricule est alors mesurée et montrée ici le long de son propre axe.</translation>
    </message>
    <message>
        <source>long section, turned %1°</source>
        <translation>coupe longitudinale, tournée de %1°</translation>
    </message>
</context>
<context>
    <name>MainWindow</name>
    <message>
        <source>Appendage axis</source>
        <translation>Axe de l’auricule</translation>
    </message>
    <message>
        <source>Long section, cross-section and depth strip</source>
        <translation>Coupe longitudinale, coupe transversale et bande de profondeur</translation>
    </message>
    <message>
        <source>Scanner axes</source>
        <translation>Axes du scanner</translation>
    </message>
    <message>
        <source>Axial, coronal and sagittal sections, for marking</source>
        <translation>Coupes axiale, coronale et sagittale, pour poser les repères</translation>
    </message>
    <message>
        <source>Open a folder of DICOM images</source>
        <translation>Ouvrir un dossier d’images DICOM</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Fichier</translation>
    </message>
    <message>
        <source>&amp;Open folder …</source>
        <translation>&amp;Ouvrir un dossier …</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Quitter</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Édition</translation>
    </message>
    <message>
        <source>&amp;Settings …</source>
        <translation>&amp;Réglages …</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Affichage</translation>
    </message>
    <message>
        <source>Change between appendage axis and scanner axes</source>
        <translation>Passer de l’axe de l’auricule aux axes du scanner</translation>
    </message>
    <message>
        <source>Cross-section at the ostium</source>
        <translation>Coupe transversale à l’ostium</translation>
    </message>
    <message>
        <source>Cross-section at the landing zone</source>
        <translation>Coupe transversale à la zone d’ancrage</translation>
    </message>
    <message>
        <source>&amp;Fit all views</source>
        <translation>&amp;Ajuster toutes les vues</translation>
    </message>
    <message>
        <source>&amp;Theme</source>
        <translation>&amp;Thème</translation>
    </message>
    <message>
        <source>&amp;Dark, for the reading room</source>
        <translation>&amp;Sombre, pour la salle de lecture</translation>
    </message>
    <message>
        <source>&amp;Light, for print and bright rooms</source>
        <translation>&amp;Clair, pour l’impression et les pièces claires</translation>
    </message>
    <message>
        <source>As the &amp;system</source>
        <translation>Comme le &amp;système</translation>
    </message>
    <message>
        <source>Hide &amp;names</source>
        <translation>Masquer les &amp;noms</translation>
    </message>
    <message>
        <source>&amp;Meeting: large type on the whole screen</source>
        <translation>&amp;Réunion : grands caractères sur tout l’écran</translation>
    </message>
    <message>
        <source>&amp;Whole screen</source>
        <translation>Tout l’&amp;écran</translation>
    </message>
    <message>
        <source>&amp;Measure</source>
        <translation>&amp;Mesurer</translation>
    </message>
    <message>
        <source>Mark: %1</source>
        <translation>Repère : %1</translation>
    </message>
    <message>
        <source>Leave marking</source>
        <translation>Quitter le marquage</translation>
    </message>
    <message>
        <source>&amp;Confirm or release the ostium</source>
        <translation>&amp;Confirmer ou libérer l’ostium</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Aide</translation>
    </message>
    <message>
        <source>&amp;Cautions</source>
        <translation>&amp;Mises en garde</translation>
    </message>
    <message>
        <source>&amp;About and licences</source>
        <translation>À &amp;propos et licences</translation>
    </message>
    <message>
        <source>Case without names</source>
        <translation>Cas sans noms</translation>
    </message>
    <message>
        <source>Ostium Gauge</source>
        <translation>Ostium Gauge</translation>
    </message>
    <message>
        <source>Report as P&amp;DF …</source>
        <translation>Rapport en P&amp;DF …</translation>
    </message>
    <message>
        <source>All &amp;files of the report …</source>
        <translation>Tous les &amp;fichiers du rapport …</translation>
    </message>
    <message>
        <source>&amp;Print …</source>
        <translation>&amp;Imprimer …</translation>
    </message>
    <message>
        <source>Report as PDF</source>
        <translation>Rapport en PDF</translation>
    </message>
    <message>
        <source>report.pdf</source>
        <translation>rapport.pdf</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>The report was written to %1.</source>
        <translation>Le rapport a été écrit dans %1.</translation>
    </message>
    <message>
        <source>Folder for the files of the report</source>
        <translation>Dossier pour les fichiers du rapport</translation>
    </message>
    <message numerus="yes">
        <source>%n file(s) were written to %1.</source>
        <translation>
            <numerusform>%n fichier a été écrit dans %1.</numerusform>
            <numerusform>%n fichiers ont été écrits dans %1.</numerusform>
        </translation>
    </message>
    <message>
        <source>The report was sent to the printer %1.</source>
        <translation>Le rapport a été envoyé à l’imprimante %1.</translation>
    </message>
    <message>
        <source>&amp;Help on what is under the pointer</source>
        <translation>&amp;Aide sur ce qui est sous le pointeur</translation>
    </message>
    <message>
        <source>&amp;Keys</source>
        <translation>&amp;Touches</translation>
    </message>
    <message>
        <source>Course</source>
        <translation>Parcours</translation>
    </message>
    <message>
        <source>Pressures and stasis over time, release check, scores, decision</source>
        <translation>Pressions et stase au fil du temps, contrôle avant largage, scores, décision</translation>
    </message>
    <message>
        <source>Open &amp;case …</source>
        <translation>Ouvrir un &amp;cas …</translation>
    </message>
    <message>
        <source>&amp;Recent cases</source>
        <translation>Cas &amp;récents</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Enregistrer</translation>
    </message>
    <message>
        <source>Save &amp;as …</source>
        <translation>Enregistrer &amp;sous …</translation>
    </message>
    <message>
        <source>&amp;Images of the case are in …</source>
        <translation>Les &amp;images du cas sont dans …</translation>
    </message>
    <message>
        <source>No case was opened yet</source>
        <translation>Aucun cas n’a encore été ouvert</translation>
    </message>
    <message>
        <source>Open a case</source>
        <translation>Ouvrir un cas</translation>
    </message>
    <message>
        <source>Cases (*.json);;All files (*)</source>
        <translation>Cas (*.json);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>Save the case</source>
        <translation>Enregistrer le cas</translation>
    </message>
    <message>
        <source>Cases (*.json)</source>
        <translation>Cas (*.json)</translation>
    </message>
    <message>
        <source>Folder with the images of the case</source>
        <translation>Dossier des images du cas</translation>
    </message>
    <message>
        <source>Echo</source>
        <translation>Écho</translation>
    </message>
    <message>
        <source>Echo views side by side, and the dial of their widths</source>
        <translation>Vues d’écho côte à côte, et le cadran de leurs largeurs</translation>
    </message>
    <message>
        <source>Same cut</source>
        <translation>Même coupe</translation>
    </message>
    <message>
        <source>An echo frame beside the CT cut in its own plane</source>
        <translation>Une image d’écho à côté du CT coupé dans son plan</translation>
    </message>
    <message>
        <source>Fluoroscopy</source>
        <translation>Fluoroscopie</translation>
    </message>
    <message>
        <source>X-ray frames, beside what the CT predicts</source>
        <translation>Images de scopie, à côté de ce que le CT prédit</translation>
    </message>
    <message>
        <source>&amp;Picture</source>
        <translation>&amp;Image</translation>
    </message>
    <message>
        <source>&amp;Draw</source>
        <translation>&amp;Tracer</translation>
    </message>
    <message>
        <source>Put into the &amp;table</source>
        <translation>Mettre au &amp;tableau</translation>
    </message>
    <message>
        <source>&amp;Planes</source>
        <translation>&amp;Plans</translation>
    </message>
    <message>
        <source>C&amp;ontour</source>
        <translation>C&amp;ontour</translation>
    </message>
    <message>
        <source>Picture of the &amp;window, without names …</source>
        <translation>Image de la &amp;fenêtre, sans noms …</translation>
    </message>
    <message>
        <source>Picture of the window</source>
        <translation>Image de la fenêtre</translation>
    </message>
    <message>
        <source>window.png</source>
        <translation>fenetre.png</translation>
    </message>
    <message>
        <source>Pictures (*.png)</source>
        <translation>Images (*.png)</translation>
    </message>
    <message>
        <source>The picture was written to %1. Look for names that are part of X-ray images.</source>
        <translation>L&apos;image a été écrite dans %1. Cherchez les noms qui font partie des images de radioscopie.</translation>
    </message>
    <message>
        <source>The picture could not be written to %1. Choose a folder that can be written to and has space.</source>
        <translation>L&apos;image n&apos;a pas pu être écrite dans %1. Choisissez un dossier accessible en écriture où il reste de la place.</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Annuler</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Rétablir</translation>
    </message>
    <message>
        <source>&amp;Undo: %1</source>
        <translation>&amp;Annuler : %1</translation>
    </message>
    <message>
        <source>&amp;Redo: %1</source>
        <translation>&amp;Rétablir : %1</translation>
    </message>
    <message>
        <source>The sample case is being made, about 200 MB; it opens by itself when it is ready …</source>
        <translation>Le cas d&apos;exemple est en cours de création, environ 200 Mo ; il s&apos;ouvre de lui-même quand il est prêt …</translation>
    </message>
    <message>
        <source>A case without images: add the moments and type in what was read. Open a folder of images at any time.</source>
        <translation>Un cas sans images : ajoutez les moments et saisissez ce qui a été lu. Ouvrez un dossier d&apos;images à tout moment.</translation>
    </message>
    <message>
        <source>The size chart of the settings cannot be used. %1</source>
        <translation>Le tableau de tailles des réglages ne peut pas être utilisé. %1</translation>
    </message>
    <message>
        <source>New case</source>
        <translation>Nouveau cas</translation>
    </message>
    <message>
        <source>%1[*] — Ostium Gauge</source>
        <translation>%1[*] — Ostium Gauge</translation>
    </message>
    <message>
        <source>Unsaved work</source>
        <translation>Travail non enregistré</translation>
    </message>
    <message>
        <source>This case was never saved, and unsaved work is not kept: the settings say so. Save it now?</source>
        <translation>Ce cas n&apos;a jamais été enregistré, et selon les réglages le travail non enregistré n&apos;est pas conservé. L&apos;enregistrer maintenant ?</translation>
    </message>
    <message>
        <source>Part that scrolls</source>
        <translation>Partie qui défile</translation>
    </message>
</context>
<context>
    <name>MarkPoseLandmark</name>
    <message>
        <source>Mark a place on CT and echo</source>
        <translation>Marquer un endroit sur CT et écho</translation>
    </message>
</context>
<context>
    <name>MarksPanel</name>
    <message>
        <source>Anywhere in the blood of the left atrium. Needed.</source>
        <translation>N’importe où dans le sang de l’oreillette gauche. Nécessaire.</translation>
    </message>
    <message>
        <source>Anywhere in the blood of the wanted lobe; the axis runs on to its farthest point. Needed.</source>
        <translation>N’importe où dans le sang du lobe voulu ; l’axe continue jusqu’à son point le plus éloigné. Nécessaire.</translation>
    </message>
    <message>
        <source>The circumflex artery at the ostium. With the ridge it sets the ostium plane.</source>
        <translation>L’artère circonflexe à l’ostium. Avec la crête elle fixe le plan de l’ostium.</translation>
    </message>
    <message>
        <source>The tip of the ridge to the upper left pulmonary vein. With the circumflex artery it sets the ostium plane.</source>
        <translation>La pointe de la crête vers la veine pulmonaire supérieure gauche. Avec l’artère circonflexe elle fixe le plan de l’ostium.</translation>
    </message>
    <message>
        <source>In the ascending aorta, for the enhancement ratio.</source>
        <translation>Dans l’aorte ascendante, pour le rapport de rehaussement.</translation>
    </message>
    <message>
        <source>Marks</source>
        <translation>Repères</translation>
    </message>
    <message>
        <source>%1
Key %2, then click on a scanner-axis section.</source>
        <translation>%1
Touche %2, puis cliquer sur une coupe des axes du scanner.</translation>
    </message>
    <message>
        <source>Remove this mark</source>
        <translation>Supprimer ce repère</translation>
    </message>
    <message>
        <source>Ostium</source>
        <translation>Ostium</translation>
    </message>
    <message>
        <source>Click on a section to mark: %1. %2 Esc leaves it.</source>
        <translation>Cliquer sur une coupe pour poser : %1. %2 Échap quitte.</translation>
    </message>
    <message>
        <source>placed</source>
        <translation>posé</translation>
    </message>
    <message>
        <source>needed</source>
        <translation>nécessaire</translation>
    </message>
    <message>
        <source>optional</source>
        <translation>facultatif</translation>
    </message>
    <message>
        <source>Release the ostium</source>
        <translation>Libérer l’ostium</translation>
    </message>
    <message>
        <source>Confirm the ostium</source>
        <translation>Confirmer l’ostium</translation>
    </message>
    <message>
        <source>Let the landmarks or the proposal decide again (key C)</source>
        <translation>Laisser de nouveau décider les repères ou la proposition (touche C)</translation>
    </message>
    <message>
        <source>Take the shown plane as your own (key C)</source>
        <translation>Prendre le plan affiché pour sien (touche C)</translation>
    </message>
    <message>
        <source>Not known yet.</source>
        <translation>Pas encore connu.</translation>
    </message>
    <message>
        <source>Confirmed by you.</source>
        <translation>Confirmé par vous.</translation>
    </message>
    <message>
        <source>Through your marks of the circumflex artery and the ridge.</source>
        <translation>Par vos repères de l’artère circonflexe et de la crête.</translation>
    </message>
    <message>
        <source>Proposed from the profile, confidence %1 %. Confirm it, or mark the circumflex artery and the ridge.</source>
        <translation>Proposé d’après le profil, confiance %1 %. Le confirmer, ou marquer l’artère circonflexe et la crête.</translation>
    </message>
    <message>
        <source>Proposed from the profile. Confirm it, or mark the circumflex artery and the ridge.</source>
        <translation>Proposé d’après le profil. Le confirmer, ou marquer l’artère circonflexe et la crête.</translation>
    </message>
</context>
<context>
    <name>MeetingView</name>
    <message>
        <source>CT: long section</source>
        <translation>CT : coupe longitudinale</translation>
    </message>
    <message>
        <source>CT: cross-section at the ostium</source>
        <translation>CT : coupe transversale à l’ostium</translation>
    </message>
    <message>
        <source>CT: cross-section at the landing zone</source>
        <translation>CT : coupe transversale à la zone d’ancrage</translation>
    </message>
    <message>
        <source>Nothing is measured yet.</source>
        <translation>Rien n’est encore mesuré.</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 sur %2</translation>
    </message>
    <message>
        <source>out of date</source>
        <translation>périmé</translation>
    </message>
    <message>
        <source>Chosen size: %1. Its fit is not known yet.</source>
        <translation>Taille choisie : %1. Son ajustement n’est pas encore connu.</translation>
    </message>
    <message>
        <source>No size is chosen yet.</source>
        <translation>Aucune taille n’est encore choisie.</translation>
    </message>
    <message>
        <source>Chosen size: %1</source>
        <translation>Taille choisie : %1</translation>
    </message>
    <message>
        <source>CT: surface of the blood</source>
        <translation>CT : surface du sang</translation>
    </message>
    <message>
        <source>CT, echo and fluoroscopy side by side</source>
        <translation>TDM, écho et radioscopie côte à côte</translation>
    </message>
</context>
<context>
    <name>MessageLine</name>
    <message>
        <source>Cancel</source>
        <translation>Annuler</translation>
    </message>
    <message>
        <source>Stop loading or measuring</source>
        <translation>Arrêter le chargement ou la mesure</translation>
    </message>
    <message>
        <source>Measuring the appendage …</source>
        <translation>Mesure de l’auricule …</translation>
    </message>
    <message>
        <source>F1 shows what the mouse and the keys do.</source>
        <translation>F1 montre ce que font la souris et les touches.</translation>
    </message>
    <message>
        <source>Loading</source>
        <translation>Chargement</translation>
    </message>
    <message>
        <source>Measuring</source>
        <translation>Mesure</translation>
    </message>
</context>
<context>
    <name>MomentsEditor</name>
    <message>
        <source>pressure not measured</source>
        <translation>pression non mesurée</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Moment of the course</source>
        <translation>Moment du parcours</translation>
    </message>
    <message>
        <source>Add a moment</source>
        <translation>Ajouter un moment</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Supprimer</translation>
    </message>
    <message>
        <source>not recorded</source>
        <translation>non renseigné</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Étape</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Temps</translation>
    </message>
    <message>
        <source>Left atrial mean pressure, mmHg</source>
        <translation>Pression moyenne de l’oreillette gauche, mmHg</translation>
    </message>
    <message>
        <source>How it was obtained</source>
        <translation>Comment elle a été obtenue</translation>
    </message>
    <message>
        <source>Its standard uncertainty, mmHg</source>
        <translation>Son incertitude type, mmHg</translation>
    </message>
    <message>
        <source>v wave (peak), mmHg</source>
        <translation>onde v (pic), mmHg</translation>
    </message>
    <message>
        <source>Mean mitral gradient, mmHg</source>
        <translation>Gradient mitral moyen, mmHg</translation>
    </message>
    <message>
        <source>How the gradient was obtained</source>
        <translation>Comment le gradient a été obtenu</translation>
    </message>
    <message>
        <source>Heart rate, per minute</source>
        <translation>Fréquence cardiaque, par minute</translation>
    </message>
    <message>
        <source>Rhythm</source>
        <translation>Rythme</translation>
    </message>
    <message>
        <source>Ventilation</source>
        <translation>Ventilation</translation>
    </message>
    <message>
        <source>Mitral regurgitation</source>
        <translation>Insuffisance mitrale</translation>
    </message>
    <message>
        <source>Pulmonary-vein flow</source>
        <translation>Flux veineux pulmonaire</translation>
    </message>
    <message>
        <source>Filling</source>
        <translation>Remplissage</translation>
    </message>
    <message>
        <source>What an unmeasured pressure is assumed from</source>
        <translation>D’où une pression non mesurée est supposée</translation>
    </message>
    <message>
        <source>No moment is recorded yet. Add the moments at which images were taken, each with its left atrial pressure: readings are compared at one pressure only.</source>
        <translation>Aucun moment n’est encore renseigné. Ajouter les moments des prises de vue, chacun avec sa pression de l’oreillette gauche : on ne compare qu’à une même pression.</translation>
    </message>
</context>
<context>
    <name>MoveDrawingPoint</name>
    <message>
        <source>Move a point of a measurement</source>
        <translation>Déplacer un point d’une mesure</translation>
    </message>
</context>
<context>
    <name>NumberEdit</name>
    <message>
        <source>%1: %2 to %3; empty: not recorded</source>
        <translation>%1 : %2 à %3 ; vide : non renseigné</translation>
    </message>
    <message>
        <source>“%1” was not taken. %2: %3 to %4; empty: not recorded</source>
        <translation>« %1 » n’a pas été pris. %2 : %3 à %4 ; vide : non renseigné</translation>
    </message>
</context>
<context>
    <name>PictureScale</name>
    <message>
        <source>Scale: %1&#xa0;mm a pixel ±&#xa0;%2&#xa0;% (%3)</source>
        <translation>Échelle : %1 mm par pixel ± %2 % (%3)</translation>
    </message>
    <message>
        <source>No scale: calibrate by hand before measuring (key K).</source>
        <translation>Pas d’échelle : étalonner à la main avant de mesurer (touche K).</translation>
    </message>
    <message>
        <source>%1 %2</source>
        <translation>%1 %2</translation>
    </message>
    <message>
        <source>3D echo, slice %1 of %2, %3 mm apart; time point %4 of %5. Lengths hold within a slice; left, back and head are not known.</source>
        <translation>Écho 3D, coupe %1 sur %2, écart de %3 mm ; instant %4 sur %5. Les longueurs valent dans une coupe ; gauche, arrière et tête ne sont pas connus.</translation>
    </message>
    <message>
        <source>On the spectrum velocities, times and envelopes are measured (Alt+6, Alt+7, Alt+8), no lengths.</source>
        <translation>Sur le spectre se mesurent vitesses, temps et enveloppes (Alt+6, Alt+7, Alt+8), pas de longueurs.</translation>
    </message>
</context>
<context>
    <name>Pictures</name>
    <message>
        <source>Landing zone, %1 beyond the ridge, oblique: perimeter-derived %2</source>
        <translation>Zone d’ancrage, %1 au-delà de la crête, oblique : dérivé du périmètre %2</translation>
    </message>
    <message>
        <source>Landing zone, %1 beyond the ostium: perimeter-derived %2</source>
        <translation>Zone d’ancrage, %1 au-delà de l’ostium : dérivé du périmètre %2</translation>
    </message>
    <message>
        <source>Ostium, proposed: perimeter-derived %1</source>
        <translation>Ostium, proposé : dérivé du périmètre %1</translation>
    </message>
    <message>
        <source>Ostium: perimeter-derived %1</source>
        <translation>Ostium : dérivé du périmètre %1</translation>
    </message>
    <message>
        <source>Mark: %1 (%2)</source>
        <translation>Repère : %1 (%2)</translation>
    </message>
    <message>
        <source>Long section through the axis of the appendage</source>
        <translation>Coupe longitudinale par l’axe de l’auricule</translation>
    </message>
    <message>
        <source>Depth strip</source>
        <translation>Bande de profondeur</translation>
    </message>
    <message>
        <source>Landing zone, %1 beyond the ostium, tilted %2 by hand: perimeter-derived %3</source>
        <translation>Zone d’ancrage, %1 au-delà de l’ostium, inclinée de %2 à la main : d’après le périmètre %3</translation>
    </message>
</context>
<context>
    <name>Place</name>
    <message>
        <source>left %1</source>
        <translation>gauche %1</translation>
    </message>
    <message>
        <source>right %1</source>
        <translation>droite %1</translation>
    </message>
    <message>
        <source>back %1</source>
        <translation>arrière %1</translation>
    </message>
    <message>
        <source>front %1</source>
        <translation>avant %1</translation>
    </message>
    <message>
        <source>head %1</source>
        <translation>tête %1</translation>
    </message>
    <message>
        <source>feet %1</source>
        <translation>pieds %1</translation>
    </message>
</context>
<context>
    <name>PlaceDrawing</name>
    <message>
        <source>Draw a measurement</source>
        <translation>Tracer une mesure</translation>
    </message>
</context>
<context>
    <name>PressureCourse</name>
    <message>
        <source>mean pressure</source>
        <translation>pression moyenne</translation>
    </message>
    <message>
        <source>v wave</source>
        <translation>onde v</translation>
    </message>
    <message>
        <source>mean mitral gradient</source>
        <translation>gradient mitral moyen</translation>
    </message>
    <message>
        <source>rhythm not recorded</source>
        <translation>rythme non renseigné</translation>
    </message>
    <message>
        <source>pressure not measured</source>
        <translation>pression non mesurée</translation>
    </message>
    <message>
        <source>decision pressure, %1</source>
        <translation>pression de décision, %1</translation>
    </message>
</context>
<context>
    <name>PressureCourseView</name>
    <message>
        <source>Pressures over time</source>
        <translation>Pressions au fil du temps</translation>
    </message>
    <message>
        <source>Click on a moment to edit it</source>
        <translation>Cliquer sur un moment pour le modifier</translation>
    </message>
</context>
<context>
    <name>QObject</name>
    <message>
        <source>Help</source>
        <translation>Aide</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Mises en garde</translation>
    </message>
    <message>
        <source>About Ostium Gauge</source>
        <translation>À propos d’Ostium Gauge</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Touches</translation>
    </message>
    <message>
        <source>Sizing of left atrial appendage closure from CT, echo and fluoroscopy. Sources under the Apache License 2.0.</source>
        <translation>Dimensionnement de la fermeture de l’auricule gauche d’après CT, écho et fluoroscopie. Sources sous licence Apache 2.0.</translation>
    </message>
    <message>
        <source>Licences of the libraries in use</source>
        <translation>Licences des bibliothèques utilisées</translation>
    </message>
    <message>
        <source>On their pages</source>
        <translation>Sur leurs pages</translation>
    </message>
</context>
<context>
    <name>Quantity</name>
    <message>
        <source>not measured</source>
        <translation>non mesuré</translation>
    </message>
    <message>
        <source>edge</source>
        <translation>bord</translation>
    </message>
    <message>
        <source>plane</source>
        <translation>plan</translation>
    </message>
    <message>
        <source>observer</source>
        <translation>observateur</translation>
    </message>
    <message>
        <source>scale</source>
        <translation>échelle</translation>
    </message>
</context>
<context>
    <name>ReadingsEditor</name>
    <message>
        <source>Typed reading</source>
        <translation>Lecture saisie</translation>
    </message>
    <message>
        <source>Type a reading in</source>
        <translation>Saisir une lecture</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Supprimer</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Par</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Comment</translation>
    </message>
    <message>
        <source>Moment</source>
        <translation>Moment</translation>
    </message>
    <message>
        <source>Phase</source>
        <translation>Phase</translation>
    </message>
    <message>
        <source>Value, mm</source>
        <translation>Valeur, mm</translation>
    </message>
    <message>
        <source>Standard uncertainty, mm</source>
        <translation>Incertitude type, mm</translation>
    </message>
    <message>
        <source>Read over beats of different length</source>
        <translation>Lu sur des battements de longueurs différentes</translation>
    </message>
    <message>
        <source>Where it came from</source>
        <translation>D’où elle vient</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2 : %3</translation>
    </message>
    <message>
        <source>Numbers from elsewhere (a report, another machine) can be typed in; they are marked as such wherever they are shown.</source>
        <translation>Des nombres venus d’ailleurs (un rapport, un autre appareil) peuvent être saisis ; ils sont signalés partout comme tels.</translation>
    </message>
    <message>
        <source>Typed in, not measured here.</source>
        <translation>Saisi, pas mesuré ici.</translation>
    </message>
    <message>
        <source>none: pressure unknown</source>
        <translation>aucun : pression inconnue</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>pressure not measured</source>
        <translation>pression non mesurée</translation>
    </message>
</context>
<context>
    <name>RecentCases</name>
    <message>
        <source>The file is no longer there.</source>
        <translation>Le fichier n&apos;est plus là.</translation>
    </message>
    <message>
        <source>The file cannot be read.</source>
        <translation>Le fichier est illisible.</translation>
    </message>
    <message>
        <source>Never saved</source>
        <translation>Jamais enregistré</translation>
    </message>
    <message>
        <source>Case without names</source>
        <translation>Cas sans noms</translation>
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
        <translation>plus large que sa taille nominale de %1</translation>
    </message>
    <message>
        <source>Look at the implant</source>
        <translation>Contrôle de l’implant</translation>
    </message>
    <message>
        <source>Add a look</source>
        <translation>Ajouter un contrôle</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Supprimer</translation>
    </message>
    <message>
        <source>Findings of this look by view</source>
        <translation>Constats de ce contrôle par vue</translation>
    </message>
    <message>
        <source>Finding</source>
        <translation>Constat</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valeur</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>Plage</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Verdict</translation>
    </message>
    <message>
        <source>Seen by</source>
        <translation>Vu par</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Étape</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Temps</translation>
    </message>
    <message>
        <source>The inner catheter has been taken out</source>
        <translation>Le cathéter interne a été retiré</translation>
    </message>
    <message>
        <source>Add a finding</source>
        <translation>Ajouter un constat</translation>
    </message>
    <message>
        <source>What was seen</source>
        <translation>Ce qui a été vu</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Value; yes is 1, no is 0</source>
        <translation>Valeur ; oui est 1, non est 0</translation>
    </message>
    <message>
        <source>Standard uncertainty</source>
        <translation>Incertitude type</translation>
    </message>
    <message>
        <source>45 degrees, RAO 30 CAU 20 …</source>
        <translation>45 degrés, RAO 30 CAU 20 …</translation>
    </message>
    <message>
        <source>circumflex side, ridge side …</source>
        <translation>côté circonflexe, côté crête …</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>Value (yes is 1, no is 0)</source>
        <translation>Valeur (oui est 1, non est 0)</translation>
    </message>
    <message>
        <source>View</source>
        <translation>Vue</translation>
    </message>
    <message>
        <source>Side</source>
        <translation>Côté</translation>
    </message>
    <message>
        <source>Add finding</source>
        <translation>Ajouter</translation>
    </message>
    <message>
        <source>The finding was not added: give its value first.</source>
        <translation>Le constat n’a pas été ajouté : donner d’abord sa valeur.</translation>
    </message>
    <message>
        <source>Remove selected finding</source>
        <translation>Supprimer le constat sélectionné</translation>
    </message>
    <message>
        <source>No view</source>
        <translation>Aucune vue</translation>
    </message>
    <message>
        <source>%1, near the limit</source>
        <translation>%1, près de la limite</translation>
    </message>
    <message>
        <source>Worse: %1</source>
        <translation>Pire : %1</translation>
    </message>
    <message>
        <source>No size is chosen: compression and the chart&apos;s own clearances cannot be judged.</source>
        <translation>Aucune taille n’est choisie : la compression et les distances propres à la table ne peuvent être jugées.</translation>
    </message>
</context>
<context>
    <name>RemoveCalibration</name>
    <message>
        <source>Remove the scale given by hand</source>
        <translation>Supprimer l’échelle donnée à la main</translation>
    </message>
</context>
<context>
    <name>RemoveDrawing</name>
    <message>
        <source>Remove a measurement</source>
        <translation>Supprimer une mesure</translation>
    </message>
</context>
<context>
    <name>RemovePoseLandmark</name>
    <message>
        <source>Remove a place on CT and echo</source>
        <translation>Supprimer un endroit sur CT et écho</translation>
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
        <translation>les noms sont masqués</translation>
    </message>
    <message>
        <source>Patient ID</source>
        <translation>Identifiant du patient</translation>
    </message>
    <message>
        <source>Born</source>
        <translation>Né(e) le</translation>
    </message>
    <message>
        <source>Sex</source>
        <translation>Sexe</translation>
    </message>
    <message>
        <source>Case</source>
        <translation>Cas</translation>
    </message>
    <message>
        <source>CT phase</source>
        <translation>Phase du CT</translation>
    </message>
    <message>
        <source>Device chart</source>
        <translation>Table de tailles</translation>
    </message>
    <message>
        <source>%1, version %2</source>
        <translation>%1, version %2</translation>
    </message>
    <message>
        <source>Program</source>
        <translation>Programme</translation>
    </message>
    <message>
        <source>Report made</source>
        <translation>Rapport établi</translation>
    </message>
    <message>
        <source>Closure of the left atrial appendage</source>
        <translation>Fermeture de l’auricule gauche</translation>
    </message>
    <message>
        <source>Moment</source>
        <translation>Moment</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Étape</translation>
    </message>
    <message>
        <source>LA mean pressure</source>
        <translation>Pression moyenne OG</translation>
    </message>
    <message>
        <source>v wave</source>
        <translation>onde v</translation>
    </message>
    <message>
        <source>How known</source>
        <translation>Comment connu</translation>
    </message>
    <message>
        <source>Mitral gradient</source>
        <translation>Gradient mitral</translation>
    </message>
    <message>
        <source>Rhythm</source>
        <translation>Rythme</translation>
    </message>
    <message>
        <source>unknown</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>%1 to %2%3</source>
        <translation>%1 à %2%3</translation>
    </message>
    <message>
        <source>at least %1%2</source>
        <translation>au moins %1%2</translation>
    </message>
    <message>
        <source>at most %1%2</source>
        <translation>au plus %1%2</translation>
    </message>
    <message>
        <source>within, near its limit</source>
        <translation>dans la plage, près de la limite</translation>
    </message>
    <message>
        <source>within</source>
        <translation>dans la plage</translation>
    </message>
    <message>
        <source>outside, near its limit</source>
        <translation>hors plage, près de la limite</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>hors plage</translation>
    </message>
    <message>
        <source>no range</source>
        <translation>pas de plage</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Quoi</translation>
    </message>
    <message>
        <source>Seen</source>
        <translation>Vu</translation>
    </message>
    <message>
        <source>Range</source>
        <translation>Plage</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Verdict</translation>
    </message>
    <message>
        <source>Seen by</source>
        <translation>Vu par</translation>
    </message>
    <message>
        <source>Without a view</source>
        <translation>Sans vue</translation>
    </message>
    <message>
        <source>Pressures and stasis</source>
        <translation>Pressions et stase</translation>
    </message>
    <message>
        <source>Near 12 mmHg the width grows by %1 mm per mmHg (standard deviation %2); %3 % of that is this patient&apos;s own, the rest is assumed.</source>
        <translation>Près de 12 mmHg la largeur croît de %1 mm par mmHg (écart type %2) ; %3 % en sont propres à ce patient, le reste est supposé.</translation>
    </message>
    <message>
        <source>Looks at the implant</source>
        <translation>Contrôles de l’implant</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>No decision has been written yet.</source>
        <translation>Aucune décision n’est encore écrite.</translation>
    </message>
    <message>
        <source>Draft, not signed: %1</source>
        <translation>Brouillon, non signé : %1</translation>
    </message>
    <message>
        <source>Signed by %1 on %2: %3</source>
        <translation>Signé par %1 le %2 : %3</translation>
    </message>
    <message>
        <source>No size has been chosen.</source>
        <translation>Aucune taille n’a été choisie.</translation>
    </message>
    <message>
        <source>Chosen size: %1. Its fit chance at %2 is %3; over the pressures to live with, %4 to %5, its compression stays inside its band with a chance of %6.</source>
        <translation>Taille choisie : %1. Sa chance d’ajustement à %2 est de %3 ; aux pressions à venir, %4 à %5, sa compression reste dans sa plage avec une chance de %6.</translation>
    </message>
    <message>
        <source>Width that the chart asks for, at %1: %2, with a chance of 95 % from %3.</source>
        <translation>Largeur que la table demande, à %1 : %2, avec une chance de 95 % de %3.</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>enough</source>
        <translation>assez</translation>
    </message>
    <message>
        <source>short</source>
        <translation>trop court</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Taille</translation>
    </message>
    <message>
        <source>Compression</source>
        <translation>Compression</translation>
    </message>
    <message>
        <source>Fit chance</source>
        <translation>Chance d’ajustement</translation>
    </message>
    <message>
        <source>Lasting fit</source>
        <translation>Ajustement durable</translation>
    </message>
    <message>
        <source>Too small</source>
        <translation>Trop petit</translation>
    </message>
    <message>
        <source>Too tight</source>
        <translation>Trop serré</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Profondeur</translation>
    </message>
    <message>
        <source>%1 (chosen)</source>
        <translation>%1 (choisi)</translation>
    </message>
    <message>
        <source>Decision</source>
        <translation>Décision</translation>
    </message>
    <message>
        <source>Since it was signed, this stands against it:</source>
        <translation>Depuis la signature, ceci s’y oppose :</translation>
    </message>
    <message>
        <source>It cannot be signed as things stand:</source>
        <translation>En l’état, la signature n’est pas possible :</translation>
    </message>
    <message>
        <source>Readings side by side</source>
        <translation>Lectures côte à côte</translation>
    </message>
    <message>
        <source>Each value with its standard uncertainty (twice as much holds the truth with a chance of about 95 %). Values carried to another pressure are predictions of a model.</source>
        <translation>Chaque valeur avec son incertitude type (le double contient la vérité avec une chance d’environ 95 %). Les valeurs ramenées à une autre pression sont des prédictions d’un modèle.</translation>
    </message>
    <message>
        <source>Sizes of the chart</source>
        <translation>Tailles de la table</translation>
    </message>
    <message>
        <source>Chart: %1, version %2, %3. %4</source>
        <translation>Table : %1, version %2, %3. %4</translation>
    </message>
    <message>
        <source>Compression = 100 (nominal − width) / nominal at the decision pressure; below 0 the implant is narrower than the appendage. Too small at the highest, too tight at the lowest pressure to live with.</source>
        <translation>Compression = 100 (nominal − largeur) / nominal à la pression de décision ; au-dessous de 0 l’implant est plus étroit que l’auricule. Trop petit à la plus haute, trop serré à la plus basse pression à venir.</translation>
    </message>
    <message>
        <source>Chance to change the size %1: %2</source>
        <translation>Chance de changer la taille %1 : %2</translation>
    </message>
    <message>
        <source>What would change it</source>
        <translation>Ce qui le changerait</translation>
    </message>
    <message>
        <source>Quantity</source>
        <translation>Grandeur</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Valeur</translation>
    </message>
    <message>
        <source>Uncertainty from</source>
        <translation>Incertitude due à</translation>
    </message>
    <message>
        <source>How</source>
        <translation>Comment</translation>
    </message>
    <message>
        <source> (stale: its plane or mark has moved since)</source>
        <translation> (périmé : le plan ou le repère a bougé depuis)</translation>
    </message>
    <message>
        <source>Pictures</source>
        <translation>Images</translation>
    </message>
    <message>
        <source>How it was measured</source>
        <translation>Comment on a mesuré</translation>
    </message>
    <message>
        <source>What was assumed</source>
        <translation>Ce qui a été supposé</translation>
    </message>
    <message>
        <source>All values</source>
        <translation>Toutes les valeurs</translation>
    </message>
    <message>
        <source>Images, by Series Instance UID: %1</source>
        <translation>Images, par Series Instance UID : %1</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Mises en garde</translation>
    </message>
    <message>
        <source>Read and decided by</source>
        <translation>Lu et décidé par</translation>
    </message>
    <message>
        <source>Date and time</source>
        <translation>Date et heure</translation>
    </message>
    <message>
        <source>Signature</source>
        <translation>Signature</translation>
    </message>
    <message>
        <source>Page %1 of %2</source>
        <translation>Page %1 sur %2</translation>
    </message>
    <message>
        <source>Measurement %1</source>
        <translation>Mesure %1</translation>
    </message>
    <message>
        <source>Measurement %1: %2</source>
        <translation>Mesure %1 : %2</translation>
    </message>
    <message>
        <source>2D echo, %1</source>
        <translation>Écho 2D, %1</translation>
    </message>
    <message>
        <source>3D echo, %1</source>
        <translation>Écho 3D, %1</translation>
    </message>
    <message>
        <source>Fluoroscopy, %1</source>
        <translation>Radioscopie, %1</translation>
    </message>
</context>
<context>
    <name>RestoreContour</name>
    <message>
        <source>Restore the contour that was found</source>
        <translation>Rétablir le contour trouvé</translation>
    </message>
</context>
<context>
    <name>Role</name>
    <message>
        <source>ostium</source>
        <translation>ostium</translation>
    </message>
    <message>
        <source>landing zone</source>
        <translation>zone d’ancrage</translation>
    </message>
    <message>
        <source>axis</source>
        <translation>axe</translation>
    </message>
    <message>
        <source>atrium</source>
        <translation>oreillette</translation>
    </message>
    <message>
        <source>tip</source>
        <translation>pointe</translation>
    </message>
    <message>
        <source>circumflex artery</source>
        <translation>artère circonflexe</translation>
    </message>
    <message>
        <source>ridge</source>
        <translation>crête</translation>
    </message>
    <message>
        <source>aorta</source>
        <translation>aorte</translation>
    </message>
    <message>
        <source>cross-section</source>
        <translation>coupe transversale</translation>
    </message>
    <message>
        <source>septal crossing</source>
        <translation>traversée septale</translation>
    </message>
    <message>
        <source>device</source>
        <translation>implant</translation>
    </message>
    <message>
        <source>measurement</source>
        <translation>mesure</translation>
    </message>
</context>
<context>
    <name>SameCutPage</name>
    <message>
        <source>plane</source>
        <translation>plan</translation>
    </message>
    <message>
        <source>phase</source>
        <translation>phase</translation>
    </message>
    <message>
        <source>pressure</source>
        <translation>pression</translation>
    </message>
    <message>
        <source>modality</source>
        <translation>modalité</translation>
    </message>
    <message>
        <source>unexplained</source>
        <translation>inexpliqué</translation>
    </message>
    <message>
        <source>CT in the plane of the echo frame</source>
        <translation>CT dans le plan de l’image d’écho</translation>
    </message>
    <message>
        <source>Mark at least three places in both CT and echo: then CT is cut in this plane.</source>
        <translation>Marquer au moins trois endroits au CT et à l’écho : le CT est alors coupé dans ce plan.</translation>
    </message>
    <message>
        <source>There is no CT to cut.</source>
        <translation>Il n’y a pas de CT à couper.</translation>
    </message>
    <message>
        <source>CT in this plane</source>
        <translation>CT dans ce plan</translation>
    </message>
    <message>
        <source>Echo view</source>
        <translation>Vue d’écho</translation>
    </message>
    <message>
        <source>Place in CT</source>
        <translation>Endroit au CT</translation>
    </message>
    <message>
        <source>The place in CT that you mark on the echo frame next</source>
        <translation>L’endroit au CT que vous marquez ensuite sur l’image d’écho</translation>
    </message>
    <message>
        <source>Mark it on echo</source>
        <translation>Le marquer sur l’écho</translation>
    </message>
    <message>
        <source>Click the same place on the echo frame (key Shift+P)</source>
        <translation>Cliquer le même endroit sur l’image d’écho (touche Shift+P)</translation>
    </message>
    <message>
        <source>Remove the last</source>
        <translation>Supprimer le dernier</translation>
    </message>
    <message>
        <source>Remove the place that was marked last</source>
        <translation>Supprimer l’endroit marqué en dernier</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Click the same place on the echo frame: %1. Escape leaves.</source>
        <translation>Cliquer le même endroit sur l’image d’écho : %1. Échap quitte.</translation>
    </message>
    <message>
        <source>Why CT and echo differ can be told once the landing zone is measured on CT and on the echo views of this moment.</source>
        <translation>Pourquoi CT et écho diffèrent se dira dès que la zone d’ancrage est mesurée au CT et sur les vues d’écho de ce moment.</translation>
    </message>
    <message>
        <source>Area-derived diameter of the landing zone, CT less echo: %1. Of this:</source>
        <translation>Diamètre dérivé de l’aire de la zone d’ancrage, CT moins écho : %1. Dont :</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>Crossing of the scanner-axis sections</source>
        <translation>Croisement des coupes des axes du scanner</translation>
    </message>
    <message>
        <source>There are no echo views in this case.</source>
        <translation>Ce cas n’a pas de vues d’écho.</translation>
    </message>
    <message numerus="yes">
        <source>The probe is placed by %n place(s) marked in both; they lie %1 apart after the fit (root mean square).</source>
        <translation>
            <numerusform>La sonde est placée par %n endroit marqué des deux côtés ; l’écart après ajustement est de %1 (moyenne quadratique).</numerusform>
            <numerusform>La sonde est placée par %n endroits marqués des deux côtés ; l’écart après ajustement est de %1 (moyenne quadratique).</numerusform>
        </translation>
    </message>
    <message>
        <source>The landing zone as CT reads it in this view: %1</source>
        <translation>La zone d’ancrage telle que le CT la lit dans cette vue : %1</translation>
    </message>
    <message>
        <source>The file does not tell where the tip of the sector lies: the middle of the region&apos;s upper edge stands for it.</source>
        <translation>Le fichier ne dit pas où est la pointe du secteur : le milieu du bord supérieur de la région en tient lieu.</translation>
    </message>
    <message>
        <source>The echo view whose plane CT is cut in</source>
        <translation>La vue d’écho dans le plan de laquelle le CT est coupé</translation>
    </message>
    <message>
        <source>The widths on echo lie %1 beyond the landing zone of CT, towards the tip (a negative number: nearer to the atrium).</source>
        <translation>Les largeurs en écho sont situées %1 au-delà de la zone d’ancrage du CT, vers la pointe (nombre négatif : plus près de l’oreillette).</translation>
    </message>
    <message>
        <source>The plane's part is not told: it needs the probe's place, from places marked in both.</source>
        <translation>La part du plan n’est pas donnée : il faut la place de la sonde, d’après des points marqués dans les deux.</translation>
    </message>
    <message>
        <source>CT was read at %1, echo at %2: what the phase changes beyond its pressure lies in the unexplained part.</source>
        <translation>Le CT a été lu à %1, l’écho à %2 : ce que la phase change au-delà de sa pression est dans la part inexpliquée.</translation>
    </message>
</context>
<context>
    <name>ScannerPage</name>
    <message>
        <source>Axial section</source>
        <translation>Coupe axiale</translation>
    </message>
    <message>
        <source>Coronal section</source>
        <translation>Coupe coronale</translation>
    </message>
    <message>
        <source>Sagittal section</source>
        <translation>Coupe sagittale</translation>
    </message>
</context>
<context>
    <name>ScannerSectionView</name>
    <message>
        <source>Marks must lie on the images: click inside the picture.</source>
        <translation>Les repères doivent être sur les images : cliquer dans l’image.</translation>
    </message>
</context>
<context>
    <name>ScoresEditor</name>
    <message>
        <source>%1: %2 per 100 patient-years as published (%3; %4).</source>
        <translation>%1 : %2 pour 100 patients-années, tel que publié (%3 ; %4).</translation>
    </message>
    <message>
        <source>No item counts.</source>
        <translation>Aucun critère ne compte.</translation>
    </message>
    <message>
        <source>Counted: %1.</source>
        <translation>Compté : %1.</translation>
    </message>
    <message>
        <source>No item is recorded.</source>
        <translation>Aucun critère n’est renseigné.</translation>
    </message>
    <message>
        <source>CHA₂DS₂-VASc %1 of %2. %3</source>
        <translation>CHA₂DS₂-VASc %1 sur %2. %3</translation>
    </message>
    <message>
        <source>CHA₂DS₂-VA (without sex) %1 of %2; no rates are published for it.</source>
        <translation>CHA₂DS₂-VA (sans le sexe) %1 sur %2 ; aucun taux n’est publié pour lui.</translation>
    </message>
    <message>
        <source>HAS-BLED %1 of 9: high. %2</source>
        <translation>HAS-BLED %1 sur 9 : élevé. %2</translation>
    </message>
    <message>
        <source>HAS-BLED %1 of 9. %2</source>
        <translation>HAS-BLED %1 sur 9. %2</translation>
    </message>
    <message>
        <source>No rate is published for so high a score: too few patients.</source>
        <translation>Aucun taux n’est publié pour un score si élevé : trop peu de patients.</translation>
    </message>
    <message>
        <source>Stroke risk</source>
        <translation>Risque d’AVC</translation>
    </message>
    <message>
        <source>Bleeding risk under anticoagulation</source>
        <translation>Risque hémorragique sous anticoagulation</translation>
    </message>
    <message>
        <source>The scores know nothing of a mitral repair or a closed appendage; no adjusted rate is made up.</source>
        <translation>Les scores ignorent une réparation mitrale ou une auricule fermée ; aucun taux ajusté n’est inventé.</translation>
    </message>
    <message>
        <source>Age, years</source>
        <translation>Âge, ans</translation>
    </message>
    <message>
        <source>Sex</source>
        <translation>Sexe</translation>
    </message>
    <message>
        <source>female</source>
        <translation>féminin</translation>
    </message>
    <message>
        <source>male</source>
        <translation>masculin</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>non indiqué</translation>
    </message>
    <message>
        <source>Heart failure or left ventricular dysfunction</source>
        <translation>Insuffisance cardiaque ou dysfonction ventriculaire gauche</translation>
    </message>
    <message>
        <source>Hypertension</source>
        <translation>Hypertension</translation>
    </message>
    <message>
        <source>Diabetes</source>
        <translation>Diabète</translation>
    </message>
    <message>
        <source>Stroke, transient attack or embolism</source>
        <translation>AVC, accident transitoire ou embolie</translation>
    </message>
    <message>
        <source>Vascular disease</source>
        <translation>Maladie vasculaire</translation>
    </message>
    <message>
        <source>Age for the bleeding score, years</source>
        <translation>Âge pour le score hémorragique, ans</translation>
    </message>
    <message>
        <source>Systolic pressure, mmHg</source>
        <translation>Pression systolique, mmHg</translation>
    </message>
    <message>
        <source>Drinks a week</source>
        <translation>Verres d’alcool par semaine</translation>
    </message>
    <message>
        <source>Uncontrolled hypertension (above 160 mmHg systolic)</source>
        <translation>Hypertension non contrôlée (plus de 160 mmHg systolique)</translation>
    </message>
    <message>
        <source>Abnormal renal function</source>
        <translation>Fonction rénale anormale</translation>
    </message>
    <message>
        <source>Abnormal liver function</source>
        <translation>Fonction hépatique anormale</translation>
    </message>
    <message>
        <source>Stroke</source>
        <translation>AVC</translation>
    </message>
    <message>
        <source>Bleeding or predisposition</source>
        <translation>Saignement ou prédisposition</translation>
    </message>
    <message>
        <source>Takes a vitamin K antagonist</source>
        <translation>Prend un antivitamine K</translation>
    </message>
    <message>
        <source>Labile INR</source>
        <translation>INR labile</translation>
    </message>
    <message>
        <source>Antiplatelet drug or NSAID</source>
        <translation>Antiagrégant ou AINS</translation>
    </message>
    <message>
        <source>Alcohol, eight drinks a week or more</source>
        <translation>Alcool, huit verres par semaine ou plus</translation>
    </message>
</context>
<context>
    <name>Session</name>
    <message>
        <source>Looking through %1 …</source>
        <translation>Recherche dans %1 …</translation>
    </message>
    <message>
        <source>Loading was cancelled.</source>
        <translation>Le chargement a été annulé.</translation>
    </message>
    <message>
        <source>Loaded %1.</source>
        <translation>%1 chargé.</translation>
    </message>
    <message>
        <source>Loaded %1. Mark the atrium and the tip of the appendage: then it is measured.</source>
        <translation>%1 chargé. Marquer l’oreillette et la pointe de l’auricule : elle est alors mesurée.</translation>
    </message>
    <message>
        <source>Place the marks of the teaching case</source>
        <translation>Placer les repères du cas d’enseignement</translation>
    </message>
    <message>
        <source>This is the invented teaching case: its marks were placed for you. Undo takes them back, so that you can mark it yourself.</source>
        <translation>Voici le cas d’enseignement inventé : ses repères ont été placés pour vous. Annuler les retire, pour que vous puissiez les poser vous-même.</translation>
    </message>
    <message>
        <source>Choose another series</source>
        <translation>Choisir une autre série</translation>
    </message>
    <message>
        <source>Loading %1 …</source>
        <translation>Chargement de %1 …</translation>
    </message>
    <message>
        <source>Measuring was cancelled. Move a mark to measure again.</source>
        <translation>La mesure a été annulée. Déplacer un repère pour mesurer de nouveau.</translation>
    </message>
    <message>
        <source>the series</source>
        <translation>la série</translation>
    </message>
    <message>
        <source>“%1”</source>
        <translation>« %1 »</translation>
    </message>
    <message>
        <source>%1, phase %2</source>
        <translation>%1, phase %2</translation>
    </message>
    <message>
        <source>Nothing was changed: %1 Save the case under another name to go on with it.</source>
        <translation>Rien n’a été modifié : %1 Enregistrer le cas sous un autre nom pour continuer.</translation>
    </message>
    <message>
        <source>The last edits are not on disk yet. %1 They stay in this window and are tried again every second.</source>
        <translation>Les dernières modifications ne sont pas encore sur le disque. %1 Elles restent dans cette fenêtre et sont réessayées chaque seconde.</translation>
    </message>
    <message>
        <source>Looking for the images of the case in %1 …</source>
        <translation>Recherche des images du cas dans %1 …</translation>
    </message>
    <message>
        <source>Looking for the images was cancelled; the case is open without them.</source>
        <translation>La recherche des images a été annulée ; le cas est ouvert sans elles.</translation>
    </message>
    <message>
        <source>Opened the case and loaded %1.</source>
        <translation>Cas ouvert et %1 chargé.</translation>
    </message>
    <message>
        <source>Saved as %1.</source>
        <translation>Enregistré sous %1.</translation>
    </message>
    <message>
        <source>%1 Choose one in the evidence list: double click, or Enter.</source>
        <translation>%1 Choisir dans la liste des éléments : double clic ou Entrée.</translation>
    </message>
    <message>
        <source>There is no CT to measure in this folder. Echo views and X-ray runs can be measured; what compares them with CT stays empty.</source>
        <translation>Ce dossier n’a pas de CT à mesurer. Les vues d’écho et séquences de scopie peuvent être mesurées ; ce qui les compare au CT reste vide.</translation>
    </message>
    <message>
        <source>The case is open. It names no images; open a folder of images to measure.</source>
        <translation>Le cas est ouvert. Il ne nomme aucune image ; ouvrir un dossier d’images pour mesurer.</translation>
    </message>
    <message>
        <source>Opened the case and its pictures. It has no CT: what compares them with CT stays empty.</source>
        <translation>Le cas et ses images sont ouverts. Il n’a pas de CT : ce qui les compare au CT reste vide.</translation>
    </message>
</context>
<context>
    <name>SettingsDialog</name>
    <message>
        <source>Settings</source>
        <translation>Réglages</translation>
    </message>
    <message>
        <source>As the system</source>
        <translation>Comme le système</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>&amp;Langue</translation>
    </message>
    <message>
        <source>Dark, for the reading room</source>
        <translation>Sombre, pour la salle de lecture</translation>
    </message>
    <message>
        <source>Light, for print and bright rooms</source>
        <translation>Clair, pour l’impression et les pièces claires</translation>
    </message>
    <message>
        <source>&amp;Theme</source>
        <translation>&amp;Thème</translation>
    </message>
    <message>
        <source>&amp;Hide names on screen and in pictures from the start</source>
        <translation>&amp;Masquer les noms dès le départ</translation>
    </message>
    <message>
        <source>Written into the case&apos;s journal and its reports</source>
        <translation>Inscrit dans le journal du cas et ses rapports</translation>
    </message>
    <message>
        <source>Your &amp;name</source>
        <translation>Votre &amp;nom</translation>
    </message>
    <message>
        <source>Choose the size chart that a new case begins with</source>
        <translation>Choisir la table de tailles avec laquelle commence un nouveau cas</translation>
    </message>
    <message>
        <source>Choose a size chart</source>
        <translation>Choisir une table de tailles</translation>
    </message>
    <message>
        <source>Size charts (*.json)</source>
        <translation>Tables de tailles (*.json)</translation>
    </message>
    <message>
        <source>Size &amp;chart</source>
        <translation>&amp;Table de tailles</translation>
    </message>
    <message>
        <source> dots per inch</source>
        <translation> points par pouce</translation>
    </message>
    <message>
        <source>&amp;Pictures</source>
        <translation>&amp;Images</translation>
    </message>
    <message>
        <source>&amp;Keep unsaved work</source>
        <translation>&amp;Conserver le travail non enregistré</translation>
    </message>
    <message>
        <source>It is offered again when the program ended without saving</source>
        <translation>Il est proposé de nouveau quand le programme s’est arrêté sans enregistrer</translation>
    </message>
    <message>
        <source>Parts of the settings</source>
        <translation>Parties des réglages</translation>
    </message>
    <message>
        <source>Screen</source>
        <translation>Écran</translation>
    </message>
    <message>
        <source>Person</source>
        <translation>Personne</translation>
    </message>
    <message>
        <source>Cases</source>
        <translation>Cas</translation>
    </message>
    <message>
        <source>Reports</source>
        <translation>Rapports</translation>
    </message>
    <message>
        <source>Another language holds from the next start.</source>
        <translation>Une autre langue vaut dès le prochain démarrage.</translation>
    </message>
    <message>
        <source>Usual</source>
        <translation>Habituelle</translation>
    </message>
    <message>
        <source>Larger</source>
        <translation>Plus grande</translation>
    </message>
    <message>
        <source>Largest</source>
        <translation>La plus grande</translation>
    </message>
    <message>
        <source>Si&amp;ze of letters</source>
        <translation>&amp;Taille des lettres</translation>
    </message>
    <message>
        <source>Lengths are in mm, areas in mm², volumes in mL, pressures in mmHg: always, so that one figure looks alike on every screen.</source>
        <translation>Longueurs en mm, aires en mm², volumes en mL, pressions en mmHg : toujours, pour qu&apos;un chiffre se lise de même sur chaque écran.</translation>
    </message>
    <message>
        <source>for example: imaging cardiologist</source>
        <translation>par exemple : cardiologue, imagerie</translation>
    </message>
    <message>
        <source>Put behind your name where you sign a decision</source>
        <translation>Ajouté à votre nom là où vous signez une décision</translation>
    </message>
    <message>
        <source>Your &amp;role</source>
        <translation>Votre &amp;fonction</translation>
    </message>
    <message>
        <source>Name and role are offered where a decision is signed. They are no proof of who sat here.</source>
        <translation>Nom et fonction sont proposés là où une décision est signée. Ils ne prouvent pas qui était assis ici.</translation>
    </message>
    <message>
        <source>&amp;Unsaved work in</source>
        <translation>&amp;Non enregistré dans</translation>
    </message>
    <message>
        <source>Choose the folder in which unsaved work is kept</source>
        <translation>Choisir le dossier où le travail non enregistré est conservé</translation>
    </message>
    <message>
        <source>Folder for unsaved work</source>
        <translation>Dossier du travail non enregistré</translation>
    </message>
    <message>
        <source>your own data folder</source>
        <translation>votre dossier de données</translation>
    </message>
    <message>
        <source>none: chosen in each case</source>
        <translation>aucun : choisi dans chaque cas</translation>
    </message>
    <message>
        <source>Of pictures of the window that are copied or saved.</source>
        <translation>Pour les images de la fenêtre qui sont enregistrées.</translation>
    </message>
    <message>
        <source>Choose …</source>
        <translation>Choisir …</translation>
    </message>
</context>
<context>
    <name>SizesModel</name>
    <message>
        <source>chosen; greatest fit chance</source>
        <translation>choisie ; plus grande chance d’ajustement</translation>
    </message>
    <message>
        <source>chosen</source>
        <translation>choisie</translation>
    </message>
    <message>
        <source>greatest fit chance</source>
        <translation>plus grande chance d’ajustement</translation>
    </message>
    <message>
        <source>living range: %1</source>
        <translation>plage à venir : %1</translation>
    </message>
    <message>
        <source>Size %1: compression allowed by the chart %2 to %3 of the nominal size.</source>
        <translation>Taille %1 : la table admet une compression de %2 à %3 de la taille nominale.</translation>
    </message>
    <message>
        <source>Oversizing, percent of the appendage: %1. The two percentages are different numbers.</source>
        <translation>Surdimensionnement, pour cent de l’auricule : %1. Les deux pourcentages sont des nombres différents.</translation>
    </message>
    <message>
        <source>Too small at the highest pressure: %1; too tight at the lowest: %2.</source>
        <translation>Trop petit à la plus haute pression : %1 ; trop serré à la plus basse : %2.</translation>
    </message>
    <message>
        <source>Size %1, %2: %3</source>
        <translation>Taille %1, %2 : %3</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Taille</translation>
    </message>
    <message>
        <source>Fit chance</source>
        <translation>Chance d’ajustement</translation>
    </message>
    <message>
        <source>Living range</source>
        <translation>Plage à venir</translation>
    </message>
    <message>
        <source>Compression</source>
        <translation>Compression</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Profondeur</translation>
    </message>
    <message>
        <source>Chance that the size&apos;s band holds the width at the decision pressure</source>
        <translation>Chance que la plage de la taille contienne la largeur à la pression de décision</translation>
    </message>
    <message>
        <source>Chance that the compression stays inside its band at every pressure of the living range</source>
        <translation>Chance que la compression reste dans sa plage à chaque pression à venir</translation>
    </message>
    <message>
        <source>100 (nominal size − width) / nominal size, at the decision pressure</source>
        <translation>100 (taille nominale − largeur) / taille nominale, à la pression de décision</translation>
    </message>
    <message>
        <source>Depth that there is, against the least depth that the chart asks for</source>
        <translation>Profondeur disponible, comparée à la moindre profondeur que la table demande</translation>
    </message>
</context>
<context>
    <name>SizesPanel</name>
    <message>
        <source>Load a device chart …</source>
        <translation>Charger une table de tailles …</translation>
    </message>
    <message>
        <source>Load a chart typed from the device&apos;s current instructions</source>
        <translation>Charger une table saisie d’après la notice actuelle de l’implant</translation>
    </message>
    <message>
        <source>Choose this size</source>
        <translation>Choisir cette taille</translation>
    </message>
    <message>
        <source>Choose the selected size (Enter in the list)</source>
        <translation>Choisir la taille sélectionnée (Entrée dans la liste)</translation>
    </message>
    <message>
        <source>Give up the chosen size</source>
        <translation>Renoncer à la taille choisie</translation>
    </message>
    <message>
        <source>Chart …</source>
        <translation>Table …</translation>
    </message>
    <message>
        <source>Load a device chart from a file, or an invented one</source>
        <translation>Charger une table de tailles d’un fichier, ou une inventée</translation>
    </message>
    <message>
        <source>Decision pressure, mmHg</source>
        <translation>Pression de décision, mmHg</translation>
    </message>
    <message>
        <source>Decision pressure in mmHg</source>
        <translation>Pression de décision en mmHg</translation>
    </message>
    <message>
        <source>Lowest to live with, mmHg</source>
        <translation>Plus basse à venir, mmHg</translation>
    </message>
    <message>
        <source>Lowest pressure to live with in mmHg</source>
        <translation>Plus basse pression à venir en mmHg</translation>
    </message>
    <message>
        <source>Highest to live with, mmHg</source>
        <translation>Plus haute à venir, mmHg</translation>
    </message>
    <message>
        <source>Highest pressure to live with in mmHg</source>
        <translation>Plus haute pression à venir en mmHg</translation>
    </message>
    <message>
        <source>Why the pressures differ</source>
        <translation>Pourquoi les pressions diffèrent</translation>
    </message>
    <message>
        <source>Regurgitation may come back</source>
        <translation>L’insuffisance peut revenir</translation>
    </message>
    <message>
        <source>Then the pressures before the repair stay among those to live with</source>
        <translation>Alors les pressions d’avant la réparation restent parmi celles à venir</translation>
    </message>
    <message>
        <source>Load a device chart</source>
        <translation>Charger une table de tailles</translation>
    </message>
    <message>
        <source>Device charts (*.json);;All files (*)</source>
        <translation>Tables de tailles (*.json);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>%1, version %2 of %3. %4</source>
        <translation>%1, version %2 du %3. %4</translation>
    </message>
    <message>
        <source>No device chart is loaded.</source>
        <translation>Aucune table de tailles n’est chargée.</translation>
    </message>
    <message>
        <source>The sizes are being judged again …</source>
        <translation>Les tailles sont de nouveau jugées …</translation>
    </message>
    <message>
        <source>Warnings</source>
        <translation>Avertissements</translation>
    </message>
    <message>
        <source>Against size %1</source>
        <translation>Contre la taille %1</translation>
    </message>
    <message>
        <source>About the chart</source>
        <translation>À propos de la table</translation>
    </message>
    <message>
        <source>What was assumed</source>
        <translation>Ce qui a été supposé</translation>
    </message>
    <message>
        <source>Device choice follows the device&apos;s current instructions for use, local protocol and law.</source>
        <translation>Le choix de l’implant suit sa notice actuelle, le protocole local et la loi.</translation>
    </message>
</context>
<context>
    <name>SizesTable</name>
    <message>
        <source>Sizes of the chart</source>
        <translation>Tailles de la table</translation>
    </message>
</context>
<context>
    <name>Sizing</name>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message numerus="yes">
        <source>It rests on %n reading(s)</source>
        <translation>
            <numerusform>Cela repose sur %n lecture</numerusform>
            <numerusform>Cela repose sur %n lectures</numerusform>
        </translation>
    </message>
    <message>
        <source>above %1</source>
        <translation>au-dessus de %1</translation>
    </message>
    <message>
        <source>below %1</source>
        <translation>au-dessous de %1</translation>
    </message>
    <message>
        <source>%1 and would change with a reading by %2 at %3 %4.</source>
        <translation>%1 et changerait avec une lecture par %2 à %3 %4.</translation>
    </message>
    <message>
        <source> or </source>
        <translation> ou </translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>The %1 at %2 is %3, with a chance of 95 % from %4.</source>
        <translation>%1 à %2 : %3, avec une chance de 95 % de %4.</translation>
    </message>
    <message>
        <source>Near 12 mmHg it widens by %1 mm per mmHg (± %2; %3 % of that is this patient&apos;s own, the rest is assumed).</source>
        <translation>Près de 12 mmHg elle s’élargit de %1 mm par mmHg (± %2 ; %3 % en sont propres à ce patient, le reste est supposé).</translation>
    </message>
    <message>
        <source>if the change of pressure passes (%1): %2</source>
        <translation>si le changement de pression passe (%1) : %2</translation>
    </message>
    <message>
        <source>if it lasts (%1): %2</source>
        <translation>s’il dure (%1) : %2</translation>
    </message>
    <message>
        <source>Widths to live with (95 %), %1.</source>
        <translation>Largeurs à venir (95 %), %1.</translation>
    </message>
    <message>
        <source>No size of the chart has any chance to fit.</source>
        <translation>Aucune taille de la table n’a de chance de convenir.</translation>
    </message>
    <message>
        <source>Size %1 has the greatest fit chance, %2, at %3; over the living range of %4 its compression stays inside its band with a chance of %5. %6</source>
        <translation>La taille %1 a la plus grande chance d’ajustement, %2, à %3 ; sur la plage à venir de %4 sa compression reste dans sa plage avec une chance de %5. %6</translation>
    </message>
    <message>
        <source>at least %1, no verdict</source>
        <translation>au moins %1, pas de verdict</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>enough: %1, needs %2</source>
        <translation>assez : %1, il faut %2</translation>
    </message>
    <message>
        <source>%1 short: %2, needs %3</source>
        <translation>manque %1 : %2, il faut %3</translation>
    </message>
    <message>
        <source>up to %1; at most %2 too narrow</source>
        <translation>jusqu’à %1 ; au plus %2 trop étroit</translation>
    </message>
    <message>
        <source>%1 to %2 too narrow</source>
        <translation>%1 à %2 trop étroit</translation>
    </message>
    <message>
        <source>Measure the left atrial pressure</source>
        <translation>Mesurer la pression de l’oreillette gauche</translation>
    </message>
    <message>
        <source>One more set of echo angles</source>
        <translation>Une série d’angles d’écho de plus</translation>
    </message>
    <message>
        <source>Measure by 3D echo</source>
        <translation>Mesurer par écho 3D</translation>
    </message>
    <message>
        <source>Measure again after filling</source>
        <translation>Mesurer de nouveau après remplissage</translation>
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
        <translation>Ouvrir un dossier d’images DICOM …</translation>
    </message>
    <message>
        <source>Ctrl+O</source>
        <translation>Ctrl+O</translation>
    </message>
    <message>
        <source>or drop the folder on this window, or a case. Then mark the atrium and the tip of the appendage with two clicks.</source>
        <translation>ou déposez le dossier ou un cas sur cette fenêtre. Puis marquez l&apos;oreillette et la pointe de l&apos;auricule en deux clics.</translation>
    </message>
    <message>
        <source>Open a case …</source>
        <translation>Ouvrir un cas …</translation>
    </message>
    <message>
        <source>A case file that was saved before (Ctrl+Shift+O)</source>
        <translation>Un fichier de cas déjà enregistré (Ctrl+Maj+O)</translation>
    </message>
    <message>
        <source>Case library …</source>
        <translation>Bibliothèque de cas …</translation>
    </message>
    <message>
        <source>Cases kept in the library of a person or a team</source>
        <translation>Cas gardés dans la bibliothèque d&apos;une personne ou d&apos;une équipe</translation>
    </message>
    <message>
        <source>Try the sample case</source>
        <translation>Voir le cas d&apos;exemple</translation>
    </message>
    <message>
        <source>An invented patient with CT, echo and fluoroscopy, marked and measured</source>
        <translation>Une patiente inventée avec TDM, écho et radioscopie, marquée et mesurée</translation>
    </message>
    <message>
        <source>Begin without images</source>
        <translation>Commencer sans images</translation>
    </message>
    <message>
        <source>Type in readings and pressures, and judge the sizes of a chart</source>
        <translation>Saisir mesures et pressions, et juger les tailles d&apos;un tableau</translation>
    </message>
    <message>
        <source>How wide is the left atrial appendage at which depth, under which pressure, and which size fits then: every value with its uncertainty.</source>
        <translation>Quelle largeur a l&apos;auricule gauche à quelle profondeur, sous quelle pression, et quelle taille convient alors : chaque valeur avec son incertitude.</translation>
    </message>
    <message>
        <source>Recent cases</source>
        <translation>Cas récents</translation>
    </message>
    <message>
        <source>Cases that you open or save are listed here.</source>
        <translation>Les cas que vous ouvrez ou enregistrez sont listés ici.</translation>
    </message>
    <message>
        <source>Take it off the list</source>
        <translation>Retirer de la liste</translation>
    </message>
    <message>
        <source>The file of the case stays</source>
        <translation>Le fichier du cas reste</translation>
    </message>
    <message>
        <source>Open it</source>
        <translation>Ouvrir</translation>
    </message>
    <message>
        <source>Open the chosen case (Enter, or a double click)</source>
        <translation>Ouvrir le cas choisi (Entrée ou double clic)</translation>
    </message>
</context>
<context>
    <name>StasisEditor</name>
    <message>
        <source>Finding of stasis</source>
        <translation>Constat de stase</translation>
    </message>
    <message>
        <source>Add a finding</source>
        <translation>Ajouter un constat</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Supprimer</translation>
    </message>
    <message>
        <source>not stated</source>
        <translation>non indiqué</translation>
    </message>
    <message>
        <source>Stage</source>
        <translation>Étape</translation>
    </message>
    <message>
        <source>0, none</source>
        <translation>0, aucun</translation>
    </message>
    <message>
        <source>4, severe</source>
        <translation>4, sévère</translation>
    </message>
    <message>
        <source>Spontaneous echo contrast (smoke), grade</source>
        <translation>Contraste spontané, grade</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>Sludge</source>
        <translation>Boue</translation>
    </message>
    <message>
        <source>Thrombus</source>
        <translation>Thrombus</translation>
    </message>
    <message>
        <source>Emptying velocity, cm/s</source>
        <translation>Vitesse de vidange, cm/s</translation>
    </message>
    <message>
        <source>Enhancement of the tip over the aorta (ratio)</source>
        <translation>Rehaussement de la pointe sur l’aorte (rapport)</translation>
    </message>
    <message>
        <source>Phase of the enhancement</source>
        <translation>Phase du rehaussement</translation>
    </message>
    <message>
        <source>The appendage was looked at on purpose</source>
        <translation>L’auricule a été regardée exprès</translation>
    </message>
    <message>
        <source>Seen by</source>
        <translation>Vu par</translation>
    </message>
    <message>
        <source>%1, seen by %2</source>
        <translation>%1, vu par %2</translation>
    </message>
    <message>
        <source>The plan is stopped: nothing may enter the appendage.</source>
        <translation>Le plan est arrêté : rien ne doit entrer dans l’auricule.</translation>
    </message>
    <message>
        <source>No size can be signed yet.</source>
        <translation>Aucune taille ne peut encore être signée.</translation>
    </message>
    <message>
        <source>Nothing is recorded about stasis.</source>
        <translation>Rien n’est noté sur la stase.</translation>
    </message>
    <message>
        <source>Stasis does not forbid to sign a size.</source>
        <translation>La stase n’interdit pas de signer une taille.</translation>
    </message>
</context>
<context>
    <name>Surface</name>
    <message>
        <source>atrium</source>
        <translation>oreillette</translation>
    </message>
    <message>
        <source>appendage</source>
        <translation>auricule</translation>
    </message>
    <message>
        <source>ostium, proposed</source>
        <translation>ostium, proposé</translation>
    </message>
    <message>
        <source>depth %1</source>
        <translation>profondeur %1</translation>
    </message>
</context>
<context>
    <name>SurfaceView</name>
    <message>
        <source>Surface: turn back to the long section</source>
        <translation>Surface : revenir à la coupe longitudinale</translation>
    </message>
    <message>
        <source>Surface: cut open</source>
        <translation>Surface : ouvrir</translation>
    </message>
    <message>
        <source>Surface of the blood in atrium and appendage</source>
        <translation>Surface du sang dans l’oreillette et l’auricule</translation>
    </message>
    <message>
        <source>Drag or arrow keys turn (Shift: finely), Ctrl and wheel or + and − zoom, C cuts it open, Home turns it back to the long section.</source>
        <translation>Glisser ou flèches pour tourner (Maj : finement), Ctrl et molette ou + et − pour agrandir, C pour ouvrir, Origine pour revenir à la coupe longitudinale.</translation>
    </message>
    <message>
        <source>surface, coarser while it moves</source>
        <translation>surface, plus grossière pendant le mouvement</translation>
    </message>
    <message>
        <source>surface, cut along the long section</source>
        <translation>surface, coupée selon la coupe longitudinale</translation>
    </message>
    <message>
        <source>surface, cut along the cross-section</source>
        <translation>surface, coupée selon la coupe transversale</translation>
    </message>
    <message>
        <source>surface of the blood</source>
        <translation>surface du sang</translation>
    </message>
    <message>
        <source>Measuring …</source>
        <translation>Mesure en cours …</translation>
    </message>
    <message>
        <source>The surface appears here once the appendage is measured.</source>
        <translation>La surface apparaît ici dès que l’auricule est mesurée.</translation>
    </message>
    <message>
        <source>Making the surface … %1 %</source>
        <translation>La surface se construit … %1 %</translation>
    </message>
</context>
<context>
    <name>Tables</name>
    <message>
        <source>Cannot open the case library at %1: a newer version of this program wrote it (its tables are at step %2, this version knows %3). Nothing was changed. Use the newer version.</source>
        <translation>Impossible d’ouvrir la bibliothèque de cas de %1 : une version plus récente de ce programme l’a écrite (ses tables sont à l’étape %2, cette version connaît %3). Rien n’a été modifié. Utiliser la version plus récente.</translation>
    </message>
    <message>
        <source>Cannot bring the case library at %1 to step %2 of its tables: %3</source>
        <translation>Impossible d’amener la bibliothèque de cas de %1 à l’étape %2 de ses tables : %3</translation>
    </message>
</context>
<context>
    <name>Terms</name>
    <message>
        <source>area</source>
        <translation>aire</translation>
    </message>
    <message>
        <source>perimeter</source>
        <translation>périmètre</translation>
    </message>
    <message>
        <source>longest diameter</source>
        <translation>plus long diamètre</translation>
    </message>
    <message>
        <source>shortest diameter</source>
        <translation>plus court diamètre</translation>
    </message>
    <message>
        <source>least width</source>
        <translation>moindre largeur</translation>
    </message>
    <message>
        <source>mean diameter</source>
        <translation>diamètre moyen</translation>
    </message>
    <message>
        <source>perimeter-derived diameter</source>
        <translation>diamètre dérivé du périmètre</translation>
    </message>
    <message>
        <source>area-derived diameter</source>
        <translation>diamètre dérivé de l’aire</translation>
    </message>
    <message>
        <source>eccentricity index</source>
        <translation>indice d’excentricité</translation>
    </message>
    <message>
        <source>straight depth</source>
        <translation>profondeur droite</translation>
    </message>
    <message>
        <source>depth along the axis</source>
        <translation>profondeur le long de l’axe</translation>
    </message>
    <message>
        <source>depth from the ostium plane</source>
        <translation>profondeur depuis le plan de l’ostium</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>profondeur</translation>
    </message>
    <message>
        <source>volume</source>
        <translation>volume</translation>
    </message>
    <message>
        <source>turn of the axis</source>
        <translation>coude de l’axe</translation>
    </message>
    <message>
        <source>place of the turn</source>
        <translation>endroit du coude</translation>
    </message>
    <message>
        <source>largest of the views</source>
        <translation>la plus grande des vues</translation>
    </message>
    <message>
        <source>width in one view</source>
        <translation>largeur dans une vue</translation>
    </message>
    <message>
        <source>width</source>
        <translation>largeur</translation>
    </message>
    <message>
        <source>length</source>
        <translation>longueur</translation>
    </message>
    <message>
        <source>enhancement of the atrium</source>
        <translation>rehaussement de l’oreillette</translation>
    </message>
    <message>
        <source>enhancement of the appendage</source>
        <translation>rehaussement de l’auricule</translation>
    </message>
    <message>
        <source>enhancement of the tip</source>
        <translation>rehaussement de la pointe</translation>
    </message>
    <message>
        <source>enhancement of the aorta</source>
        <translation>rehaussement de l’aorte</translation>
    </message>
    <message>
        <source>enhancement, tip to aorta</source>
        <translation>rehaussement, pointe sur aorte</translation>
    </message>
</context>
<context>
    <name>Tools</name>
    <message>
        <source>Draw a straight line</source>
        <translation>Tracer une ligne droite</translation>
    </message>
    <message>
        <source>Draw a curved line</source>
        <translation>Tracer une ligne courbe</translation>
    </message>
    <message>
        <source>Draw an angle</source>
        <translation>Tracer un angle</translation>
    </message>
    <message>
        <source>Draw an area</source>
        <translation>Tracer une aire</translation>
    </message>
    <message>
        <source>Draw an ellipse</source>
        <translation>Tracer une ellipse</translation>
    </message>
    <message>
        <source>Mark a velocity</source>
        <translation>Marquer une vitesse</translation>
    </message>
    <message>
        <source>Draw an interval of time</source>
        <translation>Tracer un intervalle de temps</translation>
    </message>
    <message>
        <source>Draw an envelope of velocities</source>
        <translation>Tracer une enveloppe de vitesses</translation>
    </message>
    <message>
        <source>Window: filled blood</source>
        <translation>Fenêtre : sang opacifié</translation>
    </message>
    <message>
        <source>Window: soft tissue</source>
        <translation>Fenêtre : tissus mous</translation>
    </message>
    <message>
        <source>Window: thrombus and slow filling</source>
        <translation>Fenêtre : thrombus et remplissage lent</translation>
    </message>
    <message>
        <source>Window: bone, calcium and metal</source>
        <translation>Fenêtre : os, calcium et métal</translation>
    </message>
    <message>
        <source>Window: lung</source>
        <translation>Fenêtre : poumon</translation>
    </message>
    <message>
        <source>%1 (key %2)</source>
        <translation>%1 (touche %2)</translation>
    </message>
    <message>
        <source>Take the measurement out of the table</source>
        <translation>Retirer la mesure du tableau</translation>
    </message>
    <message>
        <source>Put the measurement into the table as %1</source>
        <translation>Mettre la mesure dans le tableau comme %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>Thicker slab</source>
        <translation>Tranche plus épaisse</translation>
    </message>
    <message>
        <source>Thinner slab</source>
        <translation>Tranche plus fine</translation>
    </message>
    <message>
        <source>Slab: mean or maximum</source>
        <translation>Tranche : moyenne ou maximum</translation>
    </message>
    <message>
        <source>The plug plane needs the marks of the circumflex artery and the ridge.</source>
        <translation>Le plan du bouchon demande les repères de l’artère circonflexe et de la crête.</translation>
    </message>
    <message>
        <source>Plug plane on or off</source>
        <translation>Plan du bouchon oui ou non</translation>
    </message>
    <message>
        <source>Plug plane 0.5 mm further</source>
        <translation>Plan du bouchon 0.5 mm plus loin</translation>
    </message>
    <message>
        <source>Plug plane 0.5 mm nearer</source>
        <translation>Plan du bouchon 0.5 mm plus près</translation>
    </message>
    <message>
        <source>Shown plane 0.5 mm towards the tip</source>
        <translation>Plan affiché de 0.5 mm vers la pointe</translation>
    </message>
    <message>
        <source>Shown plane 0.5 mm towards the atrium</source>
        <translation>Plan affiché de 0.5 mm vers l’oreillette</translation>
    </message>
    <message>
        <source>Shown plane 0.1 mm towards the tip</source>
        <translation>Plan affiché de 0.1 mm vers la pointe</translation>
    </message>
    <message>
        <source>Shown plane 0.1 mm towards the atrium</source>
        <translation>Plan affiché de 0.1 mm vers l’oreillette</translation>
    </message>
    <message>
        <source>Tilt the shown plane 1° clockwise</source>
        <translation>Incliner le plan affiché de 1° dans le sens horaire</translation>
    </message>
    <message>
        <source>Tilt the shown plane 1° anticlockwise</source>
        <translation>Incliner le plan affiché de 1° dans le sens antihoraire</translation>
    </message>
    <message>
        <source>Tilt the shown plane 0.2° clockwise</source>
        <translation>Incliner le plan affiché de 0.2° dans le sens horaire</translation>
    </message>
    <message>
        <source>Tilt the shown plane 0.2° anticlockwise</source>
        <translation>Incliner le plan affiché de 0.2° dans le sens antihoraire</translation>
    </message>
    <message>
        <source>Turn the shown plane 1° out of the picture</source>
        <translation>Tourner le plan affiché de 1° hors de l’image</translation>
    </message>
    <message>
        <source>Turn the shown plane 1° into the picture</source>
        <translation>Tourner le plan affiché de 1° dans l’image</translation>
    </message>
    <message>
        <source>Turn the shown plane 0.2° out of the picture</source>
        <translation>Tourner le plan affiché de 0.2° hors de l’image</translation>
    </message>
    <message>
        <source>Turn the shown plane 0.2° into the picture</source>
        <translation>Tourner le plan affiché de 0.2° dans l’image</translation>
    </message>
    <message>
        <source>Landing plane square to the axis</source>
        <translation>Plan d’ancrage perpendiculaire à l’axe</translation>
    </message>
</context>
<context>
    <name>Views</name>
    <message>
        <source>ostium, being moved</source>
        <translation>ostium, en déplacement</translation>
    </message>
</context>
<context>
    <name>WhatNextPanel</name>
    <message>
        <source>Chance to change the size</source>
        <translation>Chance de changer la taille</translation>
    </message>
    <message>
        <source>changes the size: %1</source>
        <translation>change la taille : %1</translation>
    </message>
    <message>
        <source>The acts are being simulated …</source>
        <translation>Les actes sont en cours de simulation …</translation>
    </message>
    <message>
        <source>The acts were not simulated: the work was cancelled.</source>
        <translation>Les actes n’ont pas été simulés : le travail a été annulé.</translation>
    </message>
    <message>
        <source>No size has a chance to fit, so there is none that a further reading could change.</source>
        <translation>Aucune taille n’a de chance de convenir ; une lecture de plus n’en changerait donc aucune.</translation>
    </message>
    <message>
        <source>For each act, readings that it may give were drawn from what is known, and the sizes judged again with each. A chance is right to about 4 in a hundred.</source>
        <translation>Pour chaque acte, des lectures possibles ont été tirées de ce qui est connu, et les tailles jugées de nouveau avec chacune. Une chance est juste à environ 4 pour cent près.</translation>
    </message>
</context>
<context>
    <name>Words</name>
    <message>
        <source>Change a moment of the course</source>
        <translation>Modifier un moment du parcours</translation>
    </message>
    <message>
        <source>Add a moment to the course</source>
        <translation>Ajouter un moment au parcours</translation>
    </message>
    <message>
        <source>Remove a moment of the course</source>
        <translation>Supprimer un moment du parcours</translation>
    </message>
    <message>
        <source>Type a reading in</source>
        <translation>Saisir une lecture</translation>
    </message>
    <message>
        <source>Remove a typed reading</source>
        <translation>Supprimer une lecture saisie</translation>
    </message>
    <message>
        <source>Record stasis</source>
        <translation>Noter une stase</translation>
    </message>
    <message>
        <source>Remove a finding of stasis</source>
        <translation>Supprimer un constat de stase</translation>
    </message>
    <message>
        <source>Record a look at the implant</source>
        <translation>Noter un contrôle de l’implant</translation>
    </message>
    <message>
        <source>Remove a look at the implant</source>
        <translation>Supprimer un contrôle de l’implant</translation>
    </message>
    <message>
        <source>Confirm a value</source>
        <translation>Confirmer une valeur</translation>
    </message>
</context>
</TS>
