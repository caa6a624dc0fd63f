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
        <source>No device chart is loaded: load one typed from the device's current instructions, or a demonstration chart.</source>
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
    <name>CArmSettings</name>
    <message>
        <source>The patient will lie otherwise than at CT; the C-arm has to be turned on by</source>
        <translation>Le patient sera couché autrement qu’au CT ; l’arceau doit être tourné en plus de</translation>
    </message>
    <message>
        <source>Unless set: %1, from memory, without a source</source>
        <translation>Sans réglage : %1, de mémoire, sans source</translation>
    </message>
    <message>
        <source>Unless set: %1, an assumption without a source</source>
        <translation>Sans réglage : %1, une hypothèse sans source</translation>
    </message>
    <message>
        <source>Reach of the C-arm, degrees</source>
        <translation>Portée de l’arceau, degrés</translation>
    </message>
    <message>
        <source>RAO up to</source>
        <translation>RAO jusqu’à</translation>
    </message>
    <message>
        <source>LAO up to</source>
        <translation>LAO jusqu’à</translation>
    </message>
    <message>
        <source>CRA up to</source>
        <translation>CRA jusqu’à</translation>
    </message>
    <message>
        <source>CAU up to</source>
        <translation>CAU jusqu’à</translation>
    </message>
    <message>
        <source>RAO and LAO 60°, CRA and CAU 40° are from memory, without a source: set what your room allows.</source>
        <translation>RAO et LAO 60°, CRA et CAU 40° sont donnés de mémoire, sans source : réglez ce que permet votre salle.</translation>
    </message>
    <message>
        <source>The patient</source>
        <translation>Le patient</translation>
    </message>
    <message>
        <source>By how much the C-arm has to be turned on to see the same as at CT; 0 and 0: as if on the back</source>
        <translation>De combien l’arceau doit être tourné en plus pour voir la même chose qu’au CT ; 0 et 0 : comme sur le dos</translation>
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
        <translation>Distances de l’arceau depuis la source, mm</translation>
    </message>
    <message>
        <source>to the isocentre</source>
        <translation>à l’isocentre</translation>
    </message>
    <message>
        <source>to the detector</source>
        <translation>au détecteur</translation>
    </message>
    <message>
        <source>For the simulated radiograph, in every case; X-ray frames that tell their own keep them. Empty: %1 and %2 mm, assumptions without a source.</source>
        <translation>Pour la radiographie simulée, dans tous les cas ; les images radiologiques qui indiquent les leurs les gardent. Vide : %1 et %2 mm, hypothèses sans source.</translation>
    </message>
    <message>
        <source>At CT: %1.</source>
        <translation>Au CT : %1.</translation>
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
        <source>The file's pages are damaged.</source>
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
        <source>the library's file itself is damaged</source>
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
        <source>Measurements must be confirmed by a licensed practitioner; device choice follows the device's current instructions for use, local protocol and law.</source>
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
        <source>What is the catheter's outer diameter, as printed? (French divided by 3 is only near it.)</source>
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
    <message>
        <source>Set the second landing plane</source>
        <translation>Placer le second plan d’ancrage</translation>
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
        <source>Largest width among the views: no contour's diameter</source>
        <translation>Plus grande largeur parmi les vues : pas un diamètre de contour</translation>
    </message>
    <message>
        <source>single view</source>
        <translation>vue unique</translation>
    </message>
    <message>
        <source>Width in one view: no contour's diameter</source>
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
        <source>From the landing zone's centre along the ostium's normal to the opposite wall</source>
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
    <message>
        <source>Plug plane</source>
        <translation>Plan du bouchon</translation>
    </message>
    <message>
        <source>Second landing plane</source>
        <translation>Second plan d’ancrage</translation>
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
    <message>
        <source>measuring …</source>
        <translation>mesure en cours …</translation>
    </message>
    <message>
        <source>%1, drawn by hand</source>
        <translation>%1, dessiné à la main</translation>
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
    <name>CoreSentences</name>
    <message>
        <source>%1 %2; %3 is wanted.</source>
        <translation>%1 %2 ; souhaité : %3.</translation>
    </message>
    <message>
        <source>%1 %2 (%3, %4) became %5 (%6, %7).</source>
        <translation>%1 %2 (%3, %4) est devenu %5 (%6, %7).</translation>
    </message>
    <message>
        <source>%1 %2 (%3, %4) became %5 (%6, %7); within the uncertainty of the two readings.</source>
        <translation>%1 %2 (%3, %4) est devenu %5 (%6, %7) ; dans l’incertitude des deux lectures.</translation>
    </message>
    <message>
        <source>%1, %2 %3; %4 is wanted.</source>
        <translation>%1, %2 %3 ; souhaité : %4.</translation>
    </message>
    <message>
        <source>%1, %2 %3 (%4, %5) became %6 (%7, %8).</source>
        <translation>%1, %2 %3 (%4, %5) est devenu %6 (%7, %8).</translation>
    </message>
    <message>
        <source>%1, %2 %3 (%4, %5) became %6 (%7, %8); within the uncertainty of the two readings.</source>
        <translation>%1, %2 %3 (%4, %5) est devenu %6 (%7, %8) ; dans l’incertitude des deux lectures.</translation>
    </message>
    <message>
        <source>%1: %2 %3; %4 is wanted.</source>
        <translation>%1 : %2 %3 ; souhaité : %4.</translation>
    </message>
    <message>
        <source>%1: %2 %3 (%4, %5) became %6 (%7, %8).</source>
        <translation>%1 : %2 %3 (%4, %5) est devenu %6 (%7, %8).</translation>
    </message>
    <message>
        <source>%1: %2 %3 (%4, %5) became %6 (%7, %8); within the uncertainty of the two readings.</source>
        <translation>%1 : %2 %3 (%4, %5) est devenu %6 (%7, %8) ; dans l’incertitude des deux lectures.</translation>
    </message>
    <message>
        <source>%1: %2, %3 %4; %5 is wanted.</source>
        <translation>%1 : %2, %3 %4 ; souhaité : %5.</translation>
    </message>
    <message>
        <source>%1: %2, %3 %4 (%5, %6) became %7 (%8, %9).</source>
        <translation>%1 : %2, %3 %4 (%5, %6) est devenu %7 (%8, %9).</translation>
    </message>
    <message>
        <source>%1: %2, %3 %4 (%5, %6) became %7 (%8, %9); within the uncertainty of the two readings.</source>
        <translation>%1 : %2, %3 %4 (%5, %6) est devenu %7 (%8, %9) ; dans l’incertitude des deux lectures.</translation>
    </message>
    <message>
        <source>The reading is uncertain enough for either side of the limit.</source>
        <translation>La lecture est assez incertaine pour être d’un côté ou de l’autre de la limite.</translation>
    </message>
    <message>
        <source>Bring the sheath deeper before the inner catheter is withdrawn.</source>
        <translation>Avancez la gaine avant de retirer le cathéter interne.</translation>
    </message>
    <message>
        <source>The lobe sits too near the ostium.</source>
        <translation>Le lobe est trop près de l’ostium.</translation>
    </message>
    <message>
        <source>The lobe does not lie in line with the neck.</source>
        <translation>Le lobe n’est pas dans l’axe du col.</translation>
    </message>
    <message>
        <source>Disc and lobe are not apart: the lobe may be too shallow or the disc under no tension.</source>
        <translation>Disque et lobe ne sont pas séparés : le lobe est peut-être trop superficiel ou le disque sans tension.</translation>
    </message>
    <message>
        <source>A lobe stays open to the atrium.</source>
        <translation>Un lobe reste ouvert sur l’oreillette.</translation>
    </message>
    <message>
        <source>Thrombus lies on the implant: the treating team decides on treatment and another look.</source>
        <translation>Un thrombus est sur l’implant : l’équipe soignante décide du traitement et d’un nouveau contrôle.</translation>
    </message>
    <message>
        <source>The seal is not adequate.</source>
        <translation>L’étanchéité n’est pas suffisante.</translation>
    </message>
    <message>
        <source>The implant or the repair narrows the inflow.</source>
        <translation>L’implant ou la réparation rétrécit le remplissage.</translation>
    </message>
    <message>
        <source>Pulmonary-vein flow is not free.</source>
        <translation>Le flux de la veine pulmonaire n’est pas libre.</translation>
    </message>
    <message>
        <source>The implant lies too near a neighbour.</source>
        <translation>L’implant est trop près d’une structure voisine.</translation>
    </message>
    <message>
        <source>Too little hold: the implant may move or leak, the more so when the atrium fills.</source>
        <translation>Tenue insuffisante : l’implant peut bouger ou fuir, d’autant plus quand l’oreillette se remplit.</translation>
    </message>
    <message>
        <source>The implant is squeezed beyond its band.</source>
        <translation>L’implant est comprimé au-delà de sa bande.</translation>
    </message>
    <message>
        <source>The inner catheter is out already: do not push the bare sheath; bring a catheter back first.</source>
        <translation>Le cathéter interne est déjà retiré : ne poussez pas la gaine nue ; remettez d’abord un cathéter.</translation>
    </message>
    <message>
        <source>A pericardial effusion of %1 was seen by %2: compare it with the view before the puncture.</source>
        <translation>Un épanchement péricardique de %1 a été vu par %2 : comparez-le à la vue avant la ponction.</translation>
    </message>
    <message>
        <source>The crossing left a hole of %1 in the septum.</source>
        <translation>Le passage a laissé un trou de %1 dans le septum.</translation>
    </message>
    <message>
        <source>%1: the gap grows from %2 to %3 on the pull: the implant is not stable.</source>
        <translation>%1 : l’espace passe de %2 à %3 à la traction : l’implant n’est pas stable.</translation>
    </message>
    <message>
        <source>%1: the gap on the %2 grows from %3 to %4 on the pull: the implant is not stable.</source>
        <translation>%1 : l’espace (%2) passe de %3 à %4 à la traction : l’implant n’est pas stable.</translation>
    </message>
    <message>
        <source>the gap grows from %1 to %2 on the pull: the implant is not stable.</source>
        <translation>l’espace passe de %1 à %2 à la traction : l’implant n’est pas stable.</translation>
    </message>
    <message>
        <source>the gap on the %1 grows from %2 to %3 on the pull: the implant is not stable.</source>
        <translation>l’espace (%1) passe de %2 à %3 à la traction : l’implant n’est pas stable.</translation>
    </message>
    <message>
        <source>Not looked at yet at this stage: %1.</source>
        <translation>Pas encore examiné à ce stade : %1.</translation>
    </message>
    <message>
        <source>Thrombus in the appendage, %1: the plan stops here.</source>
        <translation>Thrombus dans l’auricule, %1 : le plan s’arrête ici.</translation>
    </message>
    <message>
        <source>Nothing enters the appendage; no size can be signed until a later look excludes thrombus.</source>
        <translation>Rien n’entre dans l’auricule ; aucune taille ne peut être signée avant qu’un contrôle ultérieur exclue un thrombus.</translation>
    </message>
    <message>
        <source>Thrombus was seen %1 and no longer %2: make sure that it dissolved and did not leave.</source>
        <translation>Un thrombus a été vu (%1), puis plus (%2) : assurez-vous qu’il s’est dissous et n’est pas parti.</translation>
    </message>
    <message>
        <source>Stasis in the appendage %1: %2.</source>
        <translation>Stase dans l’auricule (%1) : %2.</translation>
    </message>
    <message>
        <source>Exclude thrombus before anything enters it.</source>
        <translation>Excluez un thrombus avant que quoi que ce soit n’y entre.</translation>
    </message>
    <message>
        <source>The tip of the appendage enhances to %1 of the ascending aorta in a delayed phase %2, below 0.5: exclude thrombus before anything enters it.</source>
        <translation>La pointe de l’auricule se rehausse à %1 de l’aorte ascendante en phase tardive (%2), au-dessous de 0.5 : excluez un thrombus avant que quoi que ce soit n’y entre.</translation>
    </message>
    <message>
        <source>The enhancement ratio %1 %2 was read in an early phase: it gives no verdict on thrombus; only a delayed phase does.</source>
        <translation>Le rapport de rehaussement %1 (%2) a été lu en phase précoce : il ne permet pas de verdict sur un thrombus ; seule une phase tardive le permet.</translation>
    </message>
    <message>
        <source>The enhancement ratio %1 %2 was read in a phase that nobody stated: it gives no verdict on thrombus; only a delayed phase does.</source>
        <translation>Le rapport de rehaussement %1 (%2) a été lu dans une phase non précisée : il ne permet pas de verdict sur un thrombus ; seule une phase tardive le permet.</translation>
    </message>
    <message>
        <source>New echo contrast since the repair: grade %1 %2, grade %3 %4.</source>
        <translation>Contraste échographique nouveau depuis la réparation : grade %1 (%2), grade %3 (%4).</translation>
    </message>
    <message>
        <source>Denser echo contrast since the repair: grade %1 %2, grade %3 %4.</source>
        <translation>Contraste échographique plus dense depuis la réparation : grade %1 (%2), grade %3 (%4).</translation>
    </message>
    <message>
        <source>Flow in the appendage is slower; exclude thrombus before anything enters it.</source>
        <translation>Le flux dans l’auricule est plus lent ; excluez un thrombus avant que quoi que ce soit n’y entre.</translation>
    </message>
    <message>
        <source>The appendage was not looked at again since the repair.</source>
        <translation>L’auricule n’a pas été réexaminé depuis la réparation.</translation>
    </message>
    <message>
        <source>Flow changes with a repair: look for smoke, sludge and thrombus, and record it, before a size can be signed.</source>
        <translation>Le flux change avec une réparation : cherchez contraste spontané, boue et thrombus, et notez-le, avant qu’une taille puisse être signée.</translation>
    </message>
    <message>
        <source>The stroke and bleeding scores do not know about the repair; their rates are shown as published, not adjusted.</source>
        <translation>Les scores d’AVC et de saignement ignorent la réparation ; leurs taux sont ceux publiés, non ajustés.</translation>
    </message>
    <message>
        <source>A left atrial mean pressure of %1 (%2, state "%3") lies outside %4 to %5.</source>
        <translation>Une pression auriculaire gauche moyenne de %1 (%2, état « %3 ») est hors de %4 à %5.</translation>
    </message>
    <message>
        <source>A v wave of %1 (%2, state "%3") lies outside %4 to %5.</source>
        <translation>Une onde v de %1 (%2, état « %3 ») est hors de %4 à %5.</translation>
    </message>
    <message>
        <source>A mean mitral gradient of %1 (%2, state "%3") lies outside %4 to %5.</source>
        <translation>Un gradient mitral moyen de %1 (%2, état « %3 ») est hors de %4 à %5.</translation>
    </message>
    <message>
        <source>A heart rate of %1 (%2, state "%3") lies outside %4 to %5.</source>
        <translation>Une fréquence cardiaque de %1 (%2, état « %3 ») est hors de %4 à %5.</translation>
    </message>
    <message>
        <source>Look at it again.</source>
        <translation>Vérifiez.</translation>
    </message>
    <message>
        <source>The v wave of %1 lies below the mean of %2 (%3, state "%4"); a peak cannot.</source>
        <translation>L’onde v de %1 est sous la moyenne de %2 (%3, état « %4 ») ; un pic ne le peut pas.</translation>
    </message>
    <message>
        <source>The mean mitral gradient of %1 exceeds the left atrial mean pressure of %2 (%3, state "%4"), which would need a ventricle filling below 0 mmHg.</source>
        <translation>Le gradient mitral moyen de %1 dépasse la pression auriculaire gauche moyenne de %2 (%3, état « %4 »), ce qui demanderait un remplissage ventriculaire au-dessous de 0 mmHg.</translation>
    </message>
    <message>
        <source>Systolic flow in the pulmonary veins is reversed but regurgitation is graded %1 (%2, state "%3"); grade it again.</source>
        <translation>Le flux systolique des veines pulmonaires est inversé mais la régurgitation est cotée %1 (%2, état « %3 ») ; cotez-la de nouveau.</translation>
    </message>
    <message>
        <source>Left atrial mean pressure rose from %1 to %2 (%3, state "%4").</source>
        <translation>La pression auriculaire gauche moyenne est montée de %1 à %2 (%3, état « %4 »).</translation>
    </message>
    <message>
        <source>Left atrial mean pressure fell from %1 to %2 (%3, state "%4").</source>
        <translation>La pression auriculaire gauche moyenne a baissé de %1 à %2 (%3, état « %4 »).</translation>
    </message>
    <message>
        <source>Left atrial mean pressure did not fall with the repair: from %1 to %2 (%3, state "%4").</source>
        <translation>La pression auriculaire gauche moyenne n’a pas baissé avec la réparation : de %1 à %2 (%3, état « %4 »).</translation>
    </message>
    <message>
        <source>In a large registry it fell in 59 % only.</source>
        <translation>Dans un grand registre, elle n’a baissé que chez 59 %.</translation>
    </message>
    <message>
        <source>Rhythm changed from %1 to %2 (%3, state "%4").</source>
        <translation>Le rythme est passé de %1 à %2 (%3, état « %4 »).</translation>
    </message>
    <message>
        <source>Ventilation changed from %1 to %2 (%3, state "%4"): pressures are not alike.</source>
        <translation>La ventilation est passée de %1 à %2 (%3, état « %4 ») : les pressions ne sont pas comparables.</translation>
    </message>
    <message>
        <source>Mitral regurgitation changed from %1 to %2 (%3, state "%4").</source>
        <translation>La régurgitation mitrale est passée de %1 à %2 (%3, état « %4 »).</translation>
    </message>
    <message>
        <source>The ostium is a proposal and not confirmed: its place is uncertain by 2 mm and 5 degrees.</source>
        <translation>L’ostium est une proposition non confirmée : sa place est incertaine de 2 mm et 5 degrés.</translation>
    </message>
    <message>
        <source>Confirm or move it, or mark the circumflex and ridge points.</source>
        <translation>Confirmez-le ou déplacez-le, ou marquez les points de la circonflexe et de la crête.</translation>
    </message>
    <message>
        <source>Moved or tilted within the uncertainty of its place, the %1 opens into a neighbouring cavity or leaves the lumen; its stated uncertainty rests on the other side alone.</source>
        <translation>Déplacé ou incliné dans l’incertitude de sa place, le plan (%1) s’ouvre dans une cavité voisine ou quitte la lumière ; son incertitude repose sur l’autre côté seul.</translation>
    </message>
    <message>
        <source>Check the plane.</source>
        <translation>Vérifiez le plan.</translation>
    </message>
    <message>
        <source>The voxels are up to %1 long: too coarse for sizing.</source>
        <translation>Les voxels mesurent jusqu’à %1 : trop grossier pour choisir une taille.</translation>
    </message>
    <message>
        <source>Stated uncertainties hold for voxels up to 1 mm; use a thin-slice reconstruction.</source>
        <translation>Les incertitudes indiquées valent pour des voxels jusqu’à 1 mm ; utilisez une reconstruction en coupes fines.</translation>
    </message>
    <message>
        <source>%1 of the profile's sections could not be measured (they open sideways or are too small) and are left out.</source>
        <translation>%1 coupes du profil n’ont pas pu être mesurées (elles s’ouvrent sur le côté ou sont trop petites) et manquent.</translation>
    </message>
    <message>
        <source>Beyond the tip the image stays half bright (%1): the end of the appendage seems to be unfilled.</source>
        <translation>Au-delà de la pointe, l’image reste à demi claire (%1) : la fin de l’auricule semble non remplie.</translation>
    </message>
    <message>
        <source>Depth and volume are lower bounds; exclude thrombus before anything enters it.</source>
        <translation>Profondeur et volume sont des minima ; excluez un thrombus avant que quoi que ce soit n’y entre.</translation>
    </message>
    <message>
        <source>The appendage's tip reads %1 where the atrium reads %2: poor filling by slow flow, or thrombus.</source>
        <translation>La pointe de l’auricule mesure %1 quand l’oreillette mesure %2 : remplissage faible par flux lent, ou thrombus.</translation>
    </message>
    <message>
        <source>Exclude thrombus before anything enters the appendage; contours here are less certain than their stated uncertainty.</source>
        <translation>Excluez un thrombus avant que quoi que ce soit n’entre dans l’auricule ; les contours y sont moins sûrs qu’indiqué.</translation>
    </message>
    <message>
        <source>The plain ellipse, %1, is no more oval than the error of reading makes a round neck look: it is reported round, and its direction says nothing.</source>
        <translation>L’ellipse simple, %1, n’est pas plus ovale que ce que l’erreur de lecture fait paraître un col rond : elle est rapportée ronde et sa direction ne dit rien.</translation>
    </message>
    <message>
        <source>Part of the ovality of the plain ellipse, %1, is likely error of reading and was taken off.</source>
        <translation>Une part de l’ovalité de l’ellipse simple, %1, est sans doute une erreur de lecture et a été retirée.</translation>
    </message>
    <message>
        <source>Area- and perimeter-derived diameters are nearly free of this.</source>
        <translation>Les diamètres dérivés de l’aire et du périmètre en sont presque exempts.</translation>
    </message>
    <message>
        <source>Three widths leave nothing over to judge their error by, and none was stated: longest and shortest diameter may look more different than they are.</source>
        <translation>Trois largeurs ne laissent rien pour juger de leur erreur, et aucune n’a été indiquée : le plus long et le plus court diamètre peuvent paraître plus différents qu’ils ne sont.</translation>
    </message>
    <message>
        <source>State the width uncertainty, or read a fourth view.</source>
        <translation>Indiquez l’incertitude des largeurs, ou lisez une quatrième vue.</translation>
    </message>
    <message>
        <source>No uncertainty of the widths was stated; %1 was taken, an assumption.</source>
        <translation>Aucune incertitude des largeurs n’a été indiquée ; %1 ont été supposés.</translation>
    </message>
    <message>
        <source>The beam is tilted by %1 to the appendage's axis; the directions of the widths were corrected for it.</source>
        <translation>Le faisceau est incliné de %1 sur l’axe de l’auricule ; les directions des largeurs en ont été corrigées.</translation>
    </message>
    <message>
        <source>With a tilt of more than 45 degrees a width across the appendage is hard to draw: errors of drawing grow beyond what is stated.</source>
        <translation>Au-delà de 45 degrés d’inclinaison, une largeur en travers de l’auricule est difficile à tracer : les erreurs dépassent ce qui est indiqué.</translation>
    </message>
    <message>
        <source>The widths lie on no common ellipse within their uncertainty (residual %1); no single view can be blamed.</source>
        <translation>Les largeurs ne sont sur aucune ellipse commune dans leur incertitude (résidu %1) ; aucune vue seule n’est en cause.</translation>
    </message>
    <message>
        <source>Each view's agreeing width is given, and the uncertainties were enlarged.</source>
        <translation>La largeur concordante de chaque vue est donnée, et les incertitudes ont été agrandies.</translation>
    </message>
    <message>
        <source>The depth was read in one view only; the tip may lie outside it: a lower bound.</source>
        <translation>La profondeur n’a été lue que dans une vue ; la pointe peut être en dehors : un minimum.</translation>
    </message>
    <message>
        <source>The depth reads %1 in one view and %2 in another: an implant must fit in the plane where it is short, too.</source>
        <translation>La profondeur est de %1 dans une vue et de %2 dans une autre : un implant doit aussi tenir dans le plan où elle est courte.</translation>
    </message>
    <message>
        <source>The widths were read in different phases of the beat; one ellipse through them mixes two sizes.</source>
        <translation>Les largeurs ont été lues à des phases différentes du battement ; une ellipse mélange deux tailles.</translation>
    </message>
    <message>
        <source>Read all views in the same phase, best at end-systole.</source>
        <translation>Lisez toutes les vues à la même phase, de préférence en télésystole.</translation>
    </message>
    <message>
        <source>The phase of the beat is unknown for at least one width; the appendage is widest at end-systole.</source>
        <translation>La phase du battement est inconnue pour au moins une largeur ; l’auricule est le plus large en télésystole.</translation>
    </message>
    <message>
        <source>A width of %1 at %2 is unusual for an appendage (4 to 60 mm): check unit and scale.</source>
        <translation>Une largeur de %1 à %2 est inhabituelle pour un auricule (4 à 60 mm) : vérifiez l’unité et l’échelle.</translation>
    </message>
    <message>
        <source>The view "%1" is left out: its probe angle is not known.</source>
        <translation>La vue « %1 » est laissée de côté : son angle de sonde n’est pas connu.</translation>
    </message>
    <message>
        <source>Read it off the picture and enter it.</source>
        <translation>Lisez-le sur l’image et saisissez-le.</translation>
    </message>
    <message>
        <source>The landmarks of echo and CT fit each other no better than %1 (root mean square), more than their uncertainties allow: another filling or phase, or one of them is another structure.</source>
        <translation>Les repères d’écho et de CT ne concordent pas mieux que %1 (moyenne quadratique), plus que leurs incertitudes ne le permettent : autre remplissage ou phase, ou l’un d’eux est une autre structure.</translation>
    </message>
    <message>
        <source>The pose's uncertainty was enlarged.</source>
        <translation>L’incertitude de la pose a été agrandie.</translation>
    </message>
    <message>
        <source>All landmarks were marked in one view: the turn to the other views rests on the shown probe angles alone.</source>
        <translation>Tous les repères ont été marqués dans une seule vue : la rotation vers les autres vues repose sur les angles affichés seuls.</translation>
    </message>
    <message>
        <source>The landmarks lie close to one line (spread across it %1): the turn about it is poorly known.</source>
        <translation>Les repères sont presque alignés (dispersion transversale %1) : la rotation autour de cette ligne est mal connue.</translation>
    </message>
    <message>
        <source>The trace crosses the baseline by %1; those points count as no flow.</source>
        <translation>Le tracé dépasse la ligne de base de %1 ; ces points comptent comme absence de flux.</translation>
    </message>
    <message>
        <source>Trace one side of the baseline.</source>
        <translation>Tracez un seul côté de la ligne de base.</translation>
    </message>
    <message>
        <source>The scale marked by hand says %1, the scanner's calibration of the region %2, which differs by %3.</source>
        <translation>L’échelle marquée à la main dit %1, le calibrage de la région par l’appareil %2, soit un écart de %3.</translation>
    </message>
    <message>
        <source>Check the known length; the picture may have been scaled after it was taken.</source>
        <translation>Vérifiez la longueur connue ; l’image a pu être redimensionnée après la prise.</translation>
    </message>
    <message>
        <source>The scale rests on an object only %1 pixels wide; lengths measured with it are rough.</source>
        <translation>L’échelle repose sur un objet large de seulement %1 pixels ; les longueurs mesurées sont approximatives.</translation>
    </message>
    <message>
        <source>The sheath's outer diameter of %1 is exactly %2 F.</source>
        <translation>Le diamètre extérieur de la gaine de %1 est exactement %2 F.</translation>
    </message>
    <message>
        <source>A sheath's French is its bore: make sure that this is the outside.</source>
        <translation>Le French d’une gaine est son calibre interne : assurez-vous que c’est bien l’extérieur.</translation>
    </message>
    <message>
        <source>Filled with contrast, the object shows its bore and reads 4 to 16 % too small; lengths measured with it come out too long.</source>
        <translation>Rempli de contraste, l’objet montre son calibre interne et se lit 4 à 16 % trop petit ; les longueurs mesurées sont trop grandes.</translation>
    </message>
    <message>
        <source>Flush it, or use another scale.</source>
        <translation>Rincez-le, ou utilisez une autre échelle.</translation>
    </message>
    <message>
        <source>No size of "%1" accepts %2 at %3: it is %4 below the nearest band, %5 of size %6.</source>
        <translation>Aucune taille de « %1 » n’accepte %2 à %3 : c’est %4 au-dessous de la bande la plus proche, %5 pour la taille %6.</translation>
    </message>
    <message>
        <source>No size of "%1" accepts %2 at %3: it is %4 above the nearest band, %5 of size %6.</source>
        <translation>Aucune taille de « %1 » n’accepte %2 à %3 : c’est %4 au-dessus de la bande la plus proche, %5 pour la taille %6.</translation>
    </message>
    <message>
        <source>Between two sizes: %1 fits with a chance of %2, %3 with %4; over the living pressures %5 and %6.</source>
        <translation>Entre deux tailles : %1 convient avec une probabilité de %2, %3 avec %4 ; sur les pressions de la vie courante %5 et %6.</translation>
    </message>
    <message>
        <source>No size of "%1" finds its depth: size %2 needs %3, which is %4 more than there is.</source>
        <translation>Aucune taille de « %1 » ne trouve sa profondeur : la taille %2 demande %3, soit %4 de plus que ce qu’il y a.</translation>
    </message>
    <message>
        <source>The left atrial pressure of the state "%1" (%2) was not measured; the readings leave it at %3, give or take %4.</source>
        <translation>La pression auriculaire gauche de l’état « %1 » (%2) n’a pas été mesurée ; les lectures la situent à %3, à %4 près.</translation>
    </message>
    <message>
        <source>A repair does not always lower it: in a registry of 2,629 patients the mean fell in 59 %.</source>
        <translation>Une réparation ne l’abaisse pas toujours : dans un registre de 2629 patients, la moyenne a baissé chez 59 %.</translation>
    </message>
    <message>
        <source>Measure it.</source>
        <translation>Mesurez-la.</translation>
    </message>
    <message>
        <source>The fall is said to last, but no reading was taken after the repair: the fall itself is an assumption.</source>
        <translation>La baisse est dite durable, mais aucune lecture n’a été faite après la réparation : la baisse elle-même est une hypothèse.</translation>
    </message>
    <message>
        <source>In a registry of 2,629 patients the mean pressure fell in 59 %.</source>
        <translation>Dans un registre de 2629 patients, la pression moyenne a baissé chez 59 %.</translation>
    </message>
    <message>
        <source>The state "%1" was read at %2; the chart wants at least %3.</source>
        <translation>L’état « %1 » a été lu à %2 ; le tableau demande au moins %3.</translation>
    </message>
    <message>
        <source>Measure again after filling, if the treating team judges filling safe.</source>
        <translation>Mesurez de nouveau après remplissage, si l’équipe soignante juge le remplissage sûr.</translation>
    </message>
    <message>
        <source>%1 of the state "%2" (%3) was not read at end-systole, when the appendage is largest and the chart wants it.</source>
        <translation>%1 de l’état « %2 » (%3) : lecture non télésystolique, alors que l’auricule est alors le plus grand et que le tableau le demande.</translation>
    </message>
    <message>
        <source>%1 of the state "%2" (%3) comes from beats of different length; its widths may belong to different fillings.</source>
        <translation>%1 de l’état « %2 » (%3) provient de battements de durées différentes ; ses largeurs peuvent appartenir à des remplissages différents.</translation>
    </message>
    <message>
        <source>%1 (state "%2") and CT (state "%3") differ by %4, both carried to %5; published differences lie from %6.</source>
        <translation>%1 (état « %2 ») et CT (état « %3 ») diffèrent de %4, tous deux ramenés à %5 ; les différences publiées vont de %6.</translation>
    </message>
    <message>
        <source>Look at plane, phase and scale of both before choosing.</source>
        <translation>Vérifiez le plan, la phase et l’échelle des deux avant de choisir.</translation>
    </message>
    <message>
        <source>Outside the pressures that loading studies span (%1 to %2): %3.</source>
        <translation>Hors des pressions couvertes par les études de remplissage (%1 à %2) : %3.</translation>
    </message>
    <message>
        <source>The width there is an extrapolation, stated with a larger uncertainty.</source>
        <translation>La largeur y est une extrapolation, donnée avec une incertitude plus grande.</translation>
    </message>
    <message>
        <source>Strongly oval landing zone: %1 by %2 (eccentricity index %3).</source>
        <translation>Zone d’atterrissage très ovale : %1 sur %2 (indice d’excentricité %3).</translation>
    </message>
    <message>
        <source>A round implant is pressed more along the shortest diameter and less along the longest than the percentages say.</source>
        <translation>Un implant rond est plus comprimé selon le diamètre le plus court et moins selon le plus long que ne le disent les pourcentages.</translation>
    </message>
    <message>
        <source>Sharp bend: the axis turns by %1 degrees after %2 of neck.</source>
        <translation>Coude marqué : l’axe tourne de %1 degrés après %2 de col.</translation>
    </message>
    <message>
        <source>Sharp bend: the axis turns by %1 degrees after %2 of neck, %3 wide there.</source>
        <translation>Coude marqué : l’axe tourne de %1 degrés après %2 de col, large de %3 à cet endroit.</translation>
    </message>
    <message>
        <source>Sharp bend: the axis turns by %1 degrees after %2 of neck, with %3 of depth beyond.</source>
        <translation>Coude marqué : l’axe tourne de %1 degrés après %2 de col, avec %3 de profondeur au-delà.</translation>
    </message>
    <message>
        <source>Sharp bend: the axis turns by %1 degrees after %2 of neck, %3 wide there, with %4 of depth beyond.</source>
        <translation>Coude marqué : l’axe tourne de %1 degrés après %2 de col, large de %3 à cet endroit, avec %4 de profondeur au-delà.</translation>
    </message>
    <message>
        <source>See each size for whether a folded placement can be reached.</source>
        <translation>Voir pour chaque taille si une pose repliée est possible.</translation>
    </message>
    <message>
        <source>Undersized at %1, as when the pressure returns: the appendage is then %2 (95 % %3) wide, size %4 compressed by %5; below its least compression of %6 with a chance of %7.</source>
        <translation>Trop petit à %1, comme si la pression revenait : l’auricule est alors large de %2 (95 % %3), la taille %4 comprimée de %5 ; au-dessous de sa compression minimale de %6 avec une probabilité de %7.</translation>
    </message>
    <message>
        <source>Undersized at %1, as when the pressure returns: the appendage is then %2 (95 % %3) wide, size %4 narrower than the appendage by %5; below its least compression of %6 with a chance of %7.</source>
        <translation>Trop petit à %1, comme si la pression revenait : l’auricule est alors large de %2 (95 % %3), la taille %4 plus étroite que l’auricule de %5 ; au-dessous de sa compression minimale de %6 avec une probabilité de %7.</translation>
    </message>
    <message>
        <source>Over-compressed at %1, as after a lasting fall: the appendage is then %2 (95 % %3) wide, size %4 compressed by %5; above its most of %6 with a chance of %7.</source>
        <translation>Trop comprimé à %1, comme après une baisse durable : l’auricule est alors large de %2 (95 % %3), la taille %4 comprimée de %5 ; au-dessus de son maximum de %6 avec une probabilité de %7.</translation>
    </message>
    <message>
        <source>Over-compressed at %1, as after a lasting fall: the appendage is then %2 (95 % %3) wide, size %4 narrower than the appendage by %5; above its most of %6 with a chance of %7.</source>
        <translation>Trop comprimé à %1, comme après une baisse durable : l’auricule est alors large de %2 (95 % %3), la taille %4 plus étroite que l’auricule de %5 ; au-dessus de son maximum de %6 avec une probabilité de %7.</translation>
    </message>
    <message>
        <source>Oversizing is not harmless.</source>
        <translation>Surdimensionner n’est pas anodin.</translation>
    </message>
    <message>
        <source>The tip was not filled: the depth %1 is at least %2; size %3 needs %4.</source>
        <translation>La pointe n’était pas remplie : la profondeur %1 est d’au moins %2 ; la taille %3 demande %4.</translation>
    </message>
    <message>
        <source>No verdict on depth.</source>
        <translation>Pas de verdict sur la profondeur.</translation>
    </message>
    <message>
        <source>Too shallow: size %1 needs %2 %3; there are %4 (%5), %6 short.</source>
        <translation>Pas assez profond : la taille %1 demande %2 %3 ; il y a %4 (%5), il manque %6.</translation>
    </message>
    <message>
        <source>The disc of size %1 (%2) does not cover the ostium: with an overlap of %3 it is %4 too small for the ostium's longest diameter.</source>
        <translation>Le disque de la taille %1 (%2) ne couvre pas l’ostium : avec un débord de %3, il est de %4 trop petit pour le plus long diamètre de l’ostium.</translation>
    </message>
    <message>
        <source>Size %1 would lie %2 from the %3; at least %4 is wanted.</source>
        <translation>La taille %1 serait à %2 de : %3 ; au moins %4 sont souhaités.</translation>
    </message>
    <message>
        <source>The neck is %1 long before the bend; for size %2 %3.</source>
        <translation>Le col mesure %1 avant le coude ; pour la taille %2 : %3.</translation>
    </message>
    <message>
        <source>The chart allows folded placement.</source>
        <translation>Le tableau autorise la pose repliée.</translation>
    </message>
    <message>
        <source>The chart does not allow folded placement.</source>
        <translation>Le tableau n’autorise pas la pose repliée.</translation>
    </message>
    <message>
        <source>The chart is silent about folded placement.</source>
        <translation>Le tableau ne dit rien de la pose repliée.</translation>
    </message>
    <message>
        <source>Undersized if the pressure returns (cause: passing): %1; %2.</source>
        <translation>Trop petit si la pression revient (cause : passagère) : %1 ; %2.</translation>
    </message>
    <message>
        <source>Too large after a lasting fall (cause: lasting): %1; %2.</source>
        <translation>Trop grand après une baisse durable (cause : durable) : %1 ; %2.</translation>
    </message>
    <message>
        <source>At %1 the appendage is expected to be %2 wide (95 % %3): size %4 would then be %5 and be too small with a chance of %6.</source>
        <translation>À %1, l’auricule est attendu large de %2 (95 % %3) : la taille %4 serait alors %5 et trop petite avec une probabilité de %6.</translation>
    </message>
    <message>
        <source>At %1 the appendage is expected to be %2 wide (95 % %3): size %4 would then be %5, more than its band allows with a chance of %6, and the atrium may shrink further.</source>
        <translation>À %1, l’auricule est attendu large de %2 (95 % %3) : la taille %4 serait alors %5, plus que sa bande ne le permet avec une probabilité de %6, et l’oreillette peut rétrécir encore.</translation>
    </message>
    <message>
        <source>It is also the size with the greatest fit chance at %1 (%2).</source>
        <translation>C’est aussi la taille la plus probable à %1 (%2).</translation>
    </message>
    <message>
        <source>All readings together give size %1 the greatest fit chance at %2 (%3, against %4 for size %5).</source>
        <translation>Toutes les lectures ensemble donnent à la taille %1 la plus grande probabilité à %2 (%3, contre %4 pour la taille %5).</translation>
    </message>
    <message>
        <source>The pressures that the implant will live with were not given; %1 to %2 are assumed.</source>
        <translation>Les pressions avec lesquelles l’implant vivra n’ont pas été données ; %1 à %2 sont supposées.</translation>
    </message>
    <message>
        <source>The pressures that the implant will live with were not both given; %1 to %2 are assumed.</source>
        <translation>Les pressions avec lesquelles l’implant vivra n’ont pas été données toutes les deux ; %1 à %2 sont supposées.</translation>
    </message>
    <message>
        <source>The pressure of the state "%1" (%2) lies above the living range; raise its highest pressure if that may come back.</source>
        <translation>La pression de l’état « %1 » (%2) dépasse la plage de la vie courante ; relevez la pression maximale si cela peut revenir.</translation>
    </message>
    <message>
        <source>No reading is the chart's number by three-dimensional imaging; its number by two-dimensional imaging is used: %1 as %2.</source>
        <translation>Aucune lecture n’est le chiffre du tableau en imagerie tridimensionnelle ; son chiffre en imagerie bidimensionnelle est utilisé : %1, %2.</translation>
    </message>
    <message>
        <source>%1 of the state "%2" (%3, %4, %5) is shown with weight 0:</source>
        <translation>%1 de l’état « %2 » (%3, %4, %5) est montré avec un poids de 0 :</translation>
    </message>
    <message>
        <source>It is the %1, another quantity than the %2 asked for.</source>
        <translation>La lecture est : %1 ; la grandeur demandée est : %2.</translation>
    </message>
    <message>
        <source>It was read with an implant in the appendage (%1): the width is no longer the appendage's own.</source>
        <translation>Lecture avec un implant dans l’auricule (%1) : la largeur n’est plus celle de l’auricule lui-même.</translation>
    </message>
    <message>
        <source>The largest of several views has no counterpart in a contour: it misses the true longest diameter by an unknown amount and is no perimeter- or area-derived value.</source>
        <translation>La plus grande de plusieurs vues n’a pas d’équivalent dans un contour : elle manque le vrai plus long diamètre d’un écart inconnu et n’est pas une valeur dérivée du périmètre ou de l’aire.</translation>
    </message>
    <message>
        <source>A width of a single view has no counterpart in a contour unless CT predicts the width of the same view.</source>
        <translation>La largeur d’une seule vue n’a pas d’équivalent dans un contour, sauf si le CT prédit la largeur de la même vue.</translation>
    </message>
    <message>
        <source>The chart's reading by two-dimensional imaging is the %1; this one is not.</source>
        <translation>La lecture du tableau en imagerie bidimensionnelle est : %1 ; celle-ci ne l’est pas.</translation>
    </message>
    <message>
        <source>The phase of the reading by %1 in the state "%2" is not known.</source>
        <translation>La phase de la lecture (%1) dans l’état « %2 » n’est pas connue.</translation>
    </message>
    <message>
        <source>The depth is not known; no size is judged on it.</source>
        <translation>La profondeur n’est pas connue ; aucune taille n’est jugée sur elle.</translation>
    </message>
    <message>
        <source>The chart counts depth from the landing plane; the depth from the ostium less each size's landing offset is used.</source>
        <translation>Le tableau compte la profondeur depuis le plan d’atterrissage ; la profondeur depuis l’ostium moins le décalage de chaque taille est utilisée.</translation>
    </message>
    <message>
        <source>How much this appendage widens with pressure rests mostly on loading studies and an assumption (share of this patient's own readings: %1).</source>
        <translation>L’élargissement de cet auricule avec la pression repose surtout sur des études de remplissage et une hypothèse (part des lectures propres à ce patient : %1).</translation>
    </message>
    <message>
        <source>Two readings by one method at two measured pressures would make it the patient's own.</source>
        <translation>Deux lectures par une même méthode à deux pressions mesurées le rendraient propre au patient.</translation>
    </message>
    <message>
        <source>Why the pressures differ was not said: both a passing and a lasting change are shown, so the range of widths is wider than for either.</source>
        <translation>La raison de la différence de pression n’a pas été dite : un changement passager et un changement durable sont montrés, la plage des largeurs est donc plus grande que pour chacun.</translation>
    </message>
    <message>
        <source>The left atrial pressure of the state "%1" was measured directly already; once more would tell little.</source>
        <translation>La pression auriculaire gauche de l’état « %1 » a déjà été mesurée directement ; une fois de plus apprendrait peu.</translation>
    </message>
    <message>
        <source>Left atrial pressure measured directly today, and taken for the state "%1".</source>
        <translation>Pression auriculaire gauche mesurée directement aujourd’hui et prise pour l’état « %1 ».</translation>
    </message>
    <message>
        <source>Left atrial pressure measured directly in the state "%1".</source>
        <translation>Pression auriculaire gauche mesurée directement dans l’état « %1 ».</translation>
    </message>
    <message>
        <source>One more reading by 2D echo, %1, at %2.</source>
        <translation>Une lecture de plus en écho 2D, %1, à %2.</translation>
    </message>
    <message>
        <source>One more reading by 2D echo, %1, in the state "%2".</source>
        <translation>Une lecture de plus en écho 2D, %1, dans l’état « %2 ».</translation>
    </message>
    <message>
        <source>A contour by 3D echo at %1.</source>
        <translation>Un contour en écho 3D à %1.</translation>
    </message>
    <message>
        <source>A contour by 3D echo in the state "%1".</source>
        <translation>Un contour en écho 3D dans l’état « %1 ».</translation>
    </message>
    <message>
        <source>%1 (%2) after filling to %3, if the treating team judges filling safe.</source>
        <translation>%1 (%2) après remplissage à %3, si l’équipe soignante juge le remplissage sûr.</translation>
    </message>
    <message>
        <source>The chart's sizes %1 and %2 both accept readings from %3 to %4.</source>
        <translation>Les tailles %1 et %2 du tableau acceptent toutes deux les lectures de %3 à %4.</translation>
    </message>
    <message>
        <source>No size of the chart accepts readings between %1 and %2 (between sizes %3 and %4).</source>
        <translation>Aucune taille du tableau n’accepte les lectures entre %1 et %2 (entre les tailles %3 et %4).</translation>
    </message>
    <message>
        <source>The chart "%1" is invented for demonstration: it describes no device.</source>
        <translation>Le tableau « %1 » est inventé pour la démonstration : il ne décrit aucun dispositif.</translation>
    </message>
    <message>
        <source>Size %1 accepts readings at which it would be compressed by %2 to %3, outside its own band of %4 to %5.</source>
        <translation>La taille %1 accepte des lectures où elle serait comprimée de %2 à %3, hors de sa propre bande de %4 à %5.</translation>
    </message>
    <message>
        <source>The %1 by %2 (%3) is left out: what it was measured on has changed since.</source>
        <translation>%1 (%2, %3) est laissé de côté : ce sur quoi il a été mesuré a changé depuis.</translation>
    </message>
    <message>
        <source>Measure it again, or confirm it.</source>
        <translation>Mesurez de nouveau, ou confirmez la valeur.</translation>
    </message>
    <message>
        <source>The readings by %1 belong to no moment of the course: their pressure counts as not measured.</source>
        <translation>Les lectures (%1) n’appartiennent à aucun moment de l’évolution : leur pression compte comme non mesurée.</translation>
    </message>
    <message>
        <source>Readings name the moment "%1", which the case does not hold: their pressure counts as not measured.</source>
        <translation>Des lectures nomment le moment « %1 », que le cas ne contient pas : leur pression compte comme non mesurée.</translation>
    </message>
    <message>
        <source>The CT phase at %1 of the beat counts as %2 (30 to 50 % is taken for end-systole: common practice, no source).</source>
        <translation>La phase CT à %1 du battement compte comme %2 (30 à 50 % est pris pour la télésystole : pratique courante, sans source).</translation>
    </message>
    <message>
        <source>Only the v wave is recorded for state "%1": a mean of %2 is taken from it (%3).</source>
        <translation>Seule l’onde v est notée pour l’état « %1 » : une moyenne de %2 en est tirée (%3).</translation>
    </message>
    <message>
        <source>No left atrial pressure is recorded for state "%1": %2 is taken (%3: %4).</source>
        <translation>Aucune pression auriculaire gauche n’est notée pour l’état « %1 » : %2 est pris (%3 : %4).</translation>
    </message>
    <message>
        <source>Measuring it would narrow every answer.</source>
        <translation>La mesurer préciserait chaque réponse.</translation>
    </message>
    <message>
        <source>Nobody said how the pressure of state "%1", %2, was obtained: an uncertainty of %3 is taken.</source>
        <translation>Personne n’a dit comment la pression de l’état « %1 », %2, a été obtenue : une incertitude de %3 est prise.</translation>
    </message>
    <message>
        <source>The v wave of state "%1", %2, lies below its mean, %3; a peak cannot.</source>
        <translation>L’onde v de l’état « %1 », %2, est sous sa moyenne, %3 ; un pic ne le peut pas.</translation>
    </message>
    <message>
        <source>Look at both again.</source>
        <translation>Vérifiez les deux.</translation>
    </message>
    <message>
        <source>Read at end-systole, when the v wave stretches the appendage, but no v wave is recorded: the mean pressure is taken for %1.</source>
        <translation>Lecture télésystolique, quand l’onde v étire l’auricule, mais aucune onde v n’est notée : la pression moyenne est prise pour %1.</translation>
    </message>
    <message>
        <source>Nobody said at which phase this was read: end-systole, under the v wave of %1, and another are held equally likely for %2.</source>
        <translation>Personne n’a dit à quelle phase la lecture a été faite : télésystole, sous l’onde v de %1, et une autre sont tenues pour également probables pour %2.</translation>
    </message>
    <message>
        <source>No reading counts as better than %1; stated for %2: %3.</source>
        <translation>Aucune lecture ne compte comme meilleure que %1 ; indiqué pour %2 : %3.</translation>
    </message>
    <message>
        <source>The decision pressure is %1, outside the %2 that the loading studies span: the uncertainty of the pressure's effect is multiplied by %3 (assumption).</source>
        <translation>La pression de décision est de %1, hors des %2 couverts par les études de remplissage : l’incertitude de l’effet de la pression est multipliée par %3 (hypothèse).</translation>
    </message>
    <message>
        <source>The pressure of %1 is about %2, outside the %3 that the loading studies span: the uncertainty of the pressure's effect is multiplied by %4 (assumption).</source>
        <translation>La pression de %1 est d’environ %2, hors des %3 couverts par les études de remplissage : l’incertitude de l’effet de la pression est multipliée par %4 (hypothèse).</translation>
    </message>
    <message>
        <source>The readings differ by more than their uncertainties, the biases and the pressures explain (such a difference has a chance of %1).</source>
        <translation>Les lectures diffèrent plus que leurs incertitudes, les biais et les pressions ne l’expliquent (une telle différence a une probabilité de %1).</translation>
    </message>
    <message>
        <source>Furthest above the rest: %1; furthest below: %2.</source>
        <translation>Le plus au-dessus des autres : %1 ; le plus au-dessous : %2.</translation>
    </message>
    <message>
        <source>Look at quantity, plane, calibration and pressure of both before a size is taken.</source>
        <translation>Vérifiez grandeur, plan, calibrage et pression des deux avant de prendre une taille.</translation>
    </message>
    <message>
        <source>No CT contour is among the readings: the answer on the CT's scale rests on the assumed bias of the other kinds.</source>
        <translation>Aucun contour CT parmi les lectures : la réponse à l’échelle du CT repose sur le biais supposé des autres types.</translation>
    </message>
    <message>
        <source>How much the appendage widens with pressure, %1 mm per mmHg, is assumed and hardly this patient's own (share %2); %3: %4.</source>
        <translation>L’élargissement de l’auricule avec la pression, %1 mm par mmHg, est supposé et à peine propre à ce patient (part %2) ; %3 : %4.</translation>
    </message>
    <message>
        <source>%1 differs from %2 by %3; published differences lie between %4 and %5 (%6: %7).</source>
        <translation>%1 diffère de %2 de %3 ; les différences publiées se situent entre %4 et %5 (%6 : %7).</translation>
    </message>
    <message>
        <source>Different pressure, another plane or a misreading; look at both.</source>
        <translation>Autre pression, autre plan ou erreur de lecture ; vérifiez les deux.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 à %2</translation>
    </message>
    <message>
        <source>below %1</source>
        <translation>moins de %1</translation>
    </message>
    <message>
        <source>above %1</source>
        <translation>plus de %1</translation>
    </message>
    <message>
        <source>compressed by %1</source>
        <translation>comprimée de %1</translation>
    </message>
    <message>
        <source>narrower than the appendage by %1</source>
        <translation>plus étroite que l’auricule de %1</translation>
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
        <source>%1 to %2 (%3)</source>
        <translation>%1 à %2 (%3)</translation>
    </message>
    <message>
        <source>%1 %2 (state "%3") read %4 at %5</source>
        <translation>%1, %2 (état « %3 »), a lu %4 à %5</translation>
    </message>
    <message>
        <source>%1 %2 (state "%3") read %4 at a pressure that was not measured (the readings leave it at %5, give or take %6)</source>
        <translation>%1, %2 (état « %3 »), a lu %4 à une pression non mesurée (les lectures la situent à %5, à %6 près)</translation>
    </message>
    <message>
        <source>from that reading alone size %1 would be chosen</source>
        <translation>sur cette seule lecture, la taille %1 serait choisie</translation>
    </message>
    <message>
        <source>no size accepts that reading alone, the nearest is %1</source>
        <translation>aucune taille n’accepte cette seule lecture, la plus proche est %1</translation>
    </message>
    <message>
        <source>%1 (%2), %3, state "%4"</source>
        <translation>%1 (%2), %3, état « %4 »</translation>
    </message>
    <message>
        <source>%1 (seen by %2)</source>
        <translation>%1 (vu par %2)</translation>
    </message>
    <message>
        <source>decision pressure %1</source>
        <translation>pression de décision %1</translation>
    </message>
    <message>
        <source>lowest living pressure %1</source>
        <translation>pression minimale de la vie courante %1</translation>
    </message>
    <message>
        <source>highest living pressure %1</source>
        <translation>pression maximale de la vie courante %1</translation>
    </message>
    <message>
        <source>echo contrast grade %1</source>
        <translation>contraste échographique de grade %1</translation>
    </message>
    <message>
        <source>emptying velocity %1</source>
        <translation>vitesse de vidange %1</translation>
    </message>
    <message>
        <source>readings of depth carried to %1</source>
        <translation>lectures de profondeur ramenées à %1</translation>
    </message>
    <message>
        <source>ellipse through %1 echo widths</source>
        <translation>ellipse par %1 largeurs d’écho</translation>
    </message>
    <message>
        <source>ellipse through %1 echo widths, ovality corrected for noise</source>
        <translation>ellipse par %1 largeurs d’écho, ovalité corrigée du bruit</translation>
    </message>
    <message>
        <source>ellipse through %1 echo widths, reported round: its ovality cannot be told from noise</source>
        <translation>ellipse par %1 largeurs d’écho, rapportée ronde : son ovalité ne se distingue pas du bruit</translation>
    </message>
    <message>
        <source>largest of %1 echo views</source>
        <translation>la plus grande de %1 vues d’écho</translation>
    </message>
    <message>
        <source>%1 drawn by hand; %2</source>
        <translation>%1, tracé à la main ; %2</translation>
    </message>
    <message>
        <source>mean of %1 beats</source>
        <translation>moyenne de %1 battements</translation>
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
        <translation>avant la procédure</translation>
    </message>
    <message>
        <source>before the repair</source>
        <translation>avant la réparation</translation>
    </message>
    <message>
        <source>after the repair</source>
        <translation>après la réparation</translation>
    </message>
    <message>
        <source>sheath in the appendage</source>
        <translation>gaine dans l’auricule</translation>
    </message>
    <message>
        <source>device partly deployed</source>
        <translation>dispositif partiellement déployé</translation>
    </message>
    <message>
        <source>deployed and attached</source>
        <translation>déployé et attaché</translation>
    </message>
    <message>
        <source>after release</source>
        <translation>après le largage</translation>
    </message>
    <message>
        <source>follow-up</source>
        <translation>suivi</translation>
    </message>
    <message>
        <source>CT</source>
        <translation>CT</translation>
    </message>
    <message>
        <source>2D echo</source>
        <translation>écho 2D</translation>
    </message>
    <message>
        <source>3D echo</source>
        <translation>écho 3D</translation>
    </message>
    <message>
        <source>fluoroscopy</source>
        <translation>radioscopie</translation>
    </message>
    <message>
        <source>contour</source>
        <translation>contour</translation>
    </message>
    <message>
        <source>ellipse from probe angles</source>
        <translation>ellipse par angles de sonde</translation>
    </message>
    <message>
        <source>largest of the views</source>
        <translation>la plus grande des vues</translation>
    </message>
    <message>
        <source>single view</source>
        <translation>vue unique</translation>
    </message>
    <message>
        <source>perimeter-derived diameter of the landing zone</source>
        <translation>diamètre de la zone d’atterrissage dérivé du périmètre</translation>
    </message>
    <message>
        <source>area-derived diameter of the landing zone</source>
        <translation>diamètre de la zone d’atterrissage dérivé de l’aire</translation>
    </message>
    <message>
        <source>longest diameter of the landing zone</source>
        <translation>plus long diamètre de la zone d’atterrissage</translation>
    </message>
    <message>
        <source>perimeter-derived diameter of the ostium</source>
        <translation>diamètre de l’ostium dérivé du périmètre</translation>
    </message>
    <message>
        <source>longest diameter of the ostium</source>
        <translation>plus long diamètre de l’ostium</translation>
    </message>
    <message>
        <source>depth</source>
        <translation>profondeur</translation>
    </message>
    <message>
        <source>before-procedure</source>
        <translation>avant la procédure</translation>
    </message>
    <message>
        <source>before-repair</source>
        <translation>avant la réparation</translation>
    </message>
    <message>
        <source>after-repair</source>
        <translation>après la réparation</translation>
    </message>
    <message>
        <source>sheath-in-appendage</source>
        <translation>gaine dans l’auricule</translation>
    </message>
    <message>
        <source>partly-deployed</source>
        <translation>partiellement déployé</translation>
    </message>
    <message>
        <source>deployed-attached</source>
        <translation>déployé et attaché</translation>
    </message>
    <message>
        <source>after-release</source>
        <translation>après le largage</translation>
    </message>
    <message>
        <source>sheath tip beyond the landing plane</source>
        <translation>pointe de la gaine au-delà du plan d’atterrissage</translation>
    </message>
    <message>
        <source>share of the lobe beyond the circumflex artery</source>
        <translation>part du lobe au-delà de l’artère circonflexe</translation>
    </message>
    <message>
        <source>width of the implant</source>
        <translation>largeur de l’implant</translation>
    </message>
    <message>
        <source>gap before the pull</source>
        <translation>espace avant la traction</translation>
    </message>
    <message>
        <source>gap after the pull</source>
        <translation>espace après la traction</translation>
    </message>
    <message>
        <source>lobe axis to neck axis</source>
        <translation>axe du lobe sur axe du col</translation>
    </message>
    <message>
        <source>disc apart from the lobe</source>
        <translation>écart du disque au lobe</translation>
    </message>
    <message>
        <source>uncovered lobes</source>
        <translation>lobes non couverts</translation>
    </message>
    <message>
        <source>jet past the implant</source>
        <translation>jet le long de l’implant</translation>
    </message>
    <message>
        <source>clearance to the circumflex artery</source>
        <translation>distance à l’artère circonflexe</translation>
    </message>
    <message>
        <source>clearance to the pulmonary artery</source>
        <translation>distance à l’artère pulmonaire</translation>
    </message>
    <message>
        <source>clearance to the mitral annulus</source>
        <translation>distance à l’anneau mitral</translation>
    </message>
    <message>
        <source>clearance to the ridge</source>
        <translation>distance à la crête</translation>
    </message>
    <message>
        <source>pericardial effusion</source>
        <translation>épanchement péricardique</translation>
    </message>
    <message>
        <source>mean mitral gradient</source>
        <translation>gradient mitral moyen</translation>
    </message>
    <message>
        <source>mitral regurgitation grade</source>
        <translation>grade de régurgitation mitrale</translation>
    </message>
    <message>
        <source>pulmonary-vein flow free</source>
        <translation>flux de la veine pulmonaire libre</translation>
    </message>
    <message>
        <source>thrombus on the implant</source>
        <translation>thrombus sur l’implant</translation>
    </message>
    <message>
        <source>hole in the septum</source>
        <translation>trou dans le septum</translation>
    </message>
    <message>
        <source>compression</source>
        <translation>compression</translation>
    </message>
    <message>
        <source>no jet</source>
        <translation>pas de jet</translation>
    </message>
    <message>
        <source>jet up to 3 mm</source>
        <translation>jet jusqu’à 3 mm</translation>
    </message>
    <message>
        <source>jet of 3 to 5 mm</source>
        <translation>jet de 3 à 5 mm</translation>
    </message>
    <message>
        <source>jet over 5 mm</source>
        <translation>jet de plus de 5 mm</translation>
    </message>
    <message>
        <source>the chart</source>
        <translation>le tableau</translation>
    </message>
    <message>
        <source>published</source>
        <translation>publié</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>pratique courante, sans source</translation>
    </message>
    <message>
        <source>an assumption</source>
        <translation>une hypothèse</translation>
    </message>
    <message>
        <source>read</source>
        <translation>lu</translation>
    </message>
    <message>
        <source>computed</source>
        <translation>calculé</translation>
    </message>
    <message>
        <source>memory</source>
        <translation>de mémoire</translation>
    </message>
    <message>
        <source>assumption</source>
        <translation>hypothèse</translation>
    </message>
    <message>
        <source>common practice</source>
        <translation>pratique courante</translation>
    </message>
    <message>
        <source>no source</source>
        <translation>sans source</translation>
    </message>
    <message>
        <source>set here</source>
        <translation>réglé ici</translation>
    </message>
    <message>
        <source>yes</source>
        <translation>oui</translation>
    </message>
    <message>
        <source>no</source>
        <translation>non</translation>
    </message>
    <message>
        <source>sludge</source>
        <translation>boue</translation>
    </message>
    <message>
        <source>from the ostium</source>
        <translation>depuis l’ostium</translation>
    </message>
    <message>
        <source>from the landing plane</source>
        <translation>depuis le plan d’atterrissage</translation>
    </message>
    <message>
        <source>as measured</source>
        <translation>telle que mesurée</translation>
    </message>
    <message>
        <source>circumflex artery</source>
        <translation>artère circonflexe</translation>
    </message>
    <message>
        <source>ridge to the upper left pulmonary vein</source>
        <translation>crête de la veine pulmonaire supérieure gauche</translation>
    </message>
    <message>
        <source>pulmonary artery</source>
        <translation>artère pulmonaire</translation>
    </message>
    <message>
        <source>mitral annulus</source>
        <translation>anneau mitral</translation>
    </message>
    <message>
        <source>the neck alone offers its depth; no folding is needed</source>
        <translation>le col seul offre la profondeur ; aucun pli n’est nécessaire</translation>
    </message>
    <message>
        <source>a folded placement can be reached in full</source>
        <translation>une pose repliée est entièrement possible</translation>
    </message>
    <message>
        <source>a folded placement can be reached in part</source>
        <translation>une pose repliée est possible en partie</translation>
    </message>
    <message>
        <source>a folded placement cannot be reached</source>
        <translation>une pose repliée n’est pas possible</translation>
    </message>
    <message>
        <source>whether a folded placement can be reached is not known: width or depth at the bend was not measured</source>
        <translation>on ne sait pas si une pose repliée est possible : largeur ou profondeur au coude non mesurée</translation>
    </message>
    <message>
        <source>end-systole</source>
        <translation>télésystole</translation>
    </message>
    <message>
        <source>a phase other than end-systole</source>
        <translation>une autre phase que la télésystole</translation>
    </message>
    <message>
        <source>ostium plane</source>
        <translation>plan de l’ostium</translation>
    </message>
    <message>
        <source>landing plane</source>
        <translation>plan d’atterrissage</translation>
    </message>
    <message>
        <source>plug plane</source>
        <translation>plan du bouchon</translation>
    </message>
    <message>
        <source>sinus</source>
        <translation>rythme sinusal</translation>
    </message>
    <message>
        <source>atrial-fibrillation</source>
        <translation>fibrillation auriculaire</translation>
    </message>
    <message>
        <source>atrial-flutter</source>
        <translation>flutter auriculaire</translation>
    </message>
    <message>
        <source>paced</source>
        <translation>stimulé</translation>
    </message>
    <message>
        <source>spontaneous</source>
        <translation>spontanée</translation>
    </message>
    <message>
        <source>controlled</source>
        <translation>contrôlée</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucune</translation>
    </message>
    <message>
        <source>mild</source>
        <translation>légère</translation>
    </message>
    <message>
        <source>moderate</source>
        <translation>modérée</translation>
    </message>
    <message>
        <source>moderate-to-severe</source>
        <translation>modérée à sévère</translation>
    </message>
    <message>
        <source>severe</source>
        <translation>sévère</translation>
    </message>
    <message>
        <source>sub-voxel contour at the local half value of blood and wall</source>
        <translation>contour sous-voxel à la demi-valeur locale du sang et de la paroi</translation>
    </message>
    <message>
        <source>contour corrected by hand</source>
        <translation>contour corrigé à la main</translation>
    </message>
    <message>
        <source>contour drawn by hand</source>
        <translation>contour tracé à la main</translation>
    </message>
    <message>
        <source>straight line from the landing plane's centre along the ostium normal to the opposite wall</source>
        <translation>droite du centre du plan d’atterrissage selon la normale de l’ostium jusqu’à la paroi opposée</translation>
    </message>
    <message>
        <source>angle between the axis' directions before and after its sharpest place, each over 6 mm</source>
        <translation>angle entre les directions de l’axe avant et après son point le plus courbe, chacune sur 6 mm</translation>
    </message>
    <message>
        <source>distance along the axis from the ostium</source>
        <translation>distance le long de l’axe depuis l’ostium</translation>
    </message>
    <message>
        <source>direction of the longest diameter, as a probe angle</source>
        <translation>direction du plus long diamètre, en angle de sonde</translation>
    </message>
    <message>
        <source>greatest depth of the echo views</source>
        <translation>plus grande profondeur des vues d’écho</translation>
    </message>
    <message>
        <source>straight line</source>
        <translation>droite</translation>
    </message>
    <message>
        <source>smooth line</source>
        <translation>ligne lissée</translation>
    </message>
    <message>
        <source>closed line</source>
        <translation>ligne fermée</translation>
    </message>
    <message>
        <source>angle</source>
        <translation>angle</translation>
    </message>
    <message>
        <source>ellipse</source>
        <translation>ellipse</translation>
    </message>
    <message>
        <source>calibration of the ultrasound region</source>
        <translation>calibrage de la région ultrasonore</translation>
    </message>
    <message>
        <source>scale marked by hand</source>
        <translation>échelle marquée à la main</translation>
    </message>
    <message>
        <source>detector spacing, reduced to the isocentre</source>
        <translation>pas du détecteur, ramené à l’isocentre</translation>
    </message>
    <message>
        <source>outer diameter of a catheter</source>
        <translation>diamètre extérieur d’un cathéter</translation>
    </message>
    <message>
        <source>distance between markers</source>
        <translation>distance entre repères</translation>
    </message>
    <message>
        <source>calibrated by the device from its geometry</source>
        <translation>calibré par l’appareil d’après sa géométrie</translation>
    </message>
    <message>
        <source>calibrated by the device on an object of known size</source>
        <translation>calibré par l’appareil sur un objet de taille connue</translation>
    </message>
    <message>
        <source>pixel spacing of the file, calibration not told</source>
        <translation>pas de pixel du fichier, calibrage non précisé</translation>
    </message>
    <message>
        <source>section through a volume</source>
        <translation>coupe d’un volume</translation>
    </message>
    <message>
        <source>shape of the pixels</source>
        <translation>forme des pixels</translation>
    </message>
    <message>
        <source>degrees</source>
        <translation>degrés</translation>
    </message>
    <message>
        <source>per minute</source>
        <translation>par minute</translation>
    </message>
    <message>
        <source>length of the axis from the ostium to the wall at the lobe's far end</source>
        <translation>longueur de l’axe de l’ostium à la paroi au bout du lobe</translation>
    </message>
    <message>
        <source>greatest distance from the ostium plane to the wall of the appendage</source>
        <translation>plus grande distance du plan de l’ostium à la paroi de l’auricule</translation>
    </message>
    <message>
        <source>caliper</source>
        <translation>mesure</translation>
    </message>
    <message>
        <source>time caliper</source>
        <translation>mesure de temps</translation>
    </message>
    <message>
        <source>mean level</source>
        <translation>niveau moyen</translation>
    </message>
    <message>
        <source>gap</source>
        <translation>espace</translation>
    </message>
    <message>
        <source>voxels above the local half value beyond the ostium</source>
        <translation>voxels au-dessus de la demi-valeur locale au-delà de l’ostium</translation>
    </message>
    <message>
        <source>At %1 the fluoroscopy reads %2 ± %3, the CT contour predicts %4 ± %5: %6 ± %7, more than the modality explains.</source>
        <translation>À %1 la radioscopie lit %2 ± %3, le contour du CT prédit %4 ± %5 : %6 ± %7, plus que n’explique la modalité.</translation>
    </message>
    <message>
        <source>At %1 the fluoroscopy reads %2 ± %3, the CT contour predicts %4 ± %5: %6 ± %7, as the modality explains.</source>
        <translation>À %1 la radioscopie lit %2 ± %3, le contour du CT prédit %4 ± %5 : %6 ± %7, comme l’explique la modalité.</translation>
    </message>
    <message>
        <source>The sizes slide along %1.</source>
        <translation>Les tailles glissent le long de : %1.</translation>
    </message>
    <message>
        <source>That direction lies %1 degrees off the appendage's axis at the landing zone: the wall is met earlier than along the axis.</source>
        <translation>Cette direction s’écarte de %1 degrés de l’axe de l’auricule à la zone d’ancrage : la paroi est rencontrée plus tôt que le long de l’axe.</translation>
    </message>
    <message>
        <source>The tip was not filled: along the sheath the reach is a lower bound.</source>
        <translation>La pointe n’était pas remplie : le long de la gaine, la portée est une borne inférieure.</translation>
    </message>
    <message>
        <source>The sheath runs from head to foot: no side of the body lies above or below, so no gaps are told.</source>
        <translation>La gaine va de la tête aux pieds : aucun côté du corps n’est au-dessus ou au-dessous, aucun espace n’est donc indiqué.</translation>
    </message>
    <message>
        <source>Not marked, and so not judged: %1.</source>
        <translation>Non marqués, donc non jugés : %1.</translation>
    </message>
    <message>
        <source>Along the sheath size %1 reaches %2 from the ostium before %3 stops it; the chart asks for %4.</source>
        <translation>Le long de la gaine, la taille %1 va à %2 de l’ostium ; là, elle est arrêtée par : %3. Le tableau demande %4.</translation>
    </message>
    <message>
        <source>Along the sheath size %1 reaches %2 from the landing plane before %3 stops it; the chart asks for %4.</source>
        <translation>Le long de la gaine, la taille %1 va à %2 du plan d’atterrissage ; là, elle est arrêtée par : %3. Le tableau demande %4.</translation>
    </message>
    <message>
        <source>Along the sheath nothing stops size %1 within %2 from the ostium, where the measured images end; the chart asks for %3.</source>
        <translation>Le long de la gaine, rien n’arrête la taille %1 jusqu’à %2 de l’ostium, où finissent les images mesurées ; le tableau demande %3.</translation>
    </message>
    <message>
        <source>Along the sheath nothing stops size %1 within %2 from the landing plane, where the measured images end; the chart asks for %3.</source>
        <translation>Le long de la gaine, rien n’arrête la taille %1 jusqu’à %2 du plan d’atterrissage, où finissent les images mesurées ; le tableau demande %3.</translation>
    </message>
    <message>
        <source>%1 of the body of size %2 lies beyond the circumflex artery.</source>
        <translation>%1 du corps de la taille %2 se trouvent au-delà de l’artère circonflexe.</translation>
    </message>
    <message>
        <source>The disc of size %1 covers %2 of the ostium's area; its least overlap is %3, on the %4 side.</source>
        <translation>Le disque de la taille %1 couvre %2 de l’aire de l’ostium ; son plus petit débord est de %3, côté : %4.</translation>
    </message>
    <message>
        <source>In place, size %1 lies %2 from the %3; at least %4 is wanted.</source>
        <translation>En place, la taille %1 est à %2 de : %3 ; au moins %4 sont souhaités.</translation>
    </message>
    <message>
        <source>In place, size %1 lies %2 from the %3; the chart names no least.</source>
        <translation>En place, la taille %1 est à %2 de : %3 ; le tableau ne donne pas de minimum.</translation>
    </message>
    <message>
        <source>Along the sheath size %1 is stopped by %2 %3 before its place, and would stand back by as much.</source>
        <translation>Le long de la gaine, la taille %1 est arrêtée %3 avant sa place et resterait d’autant en retrait. Elle est arrêtée par : %2.</translation>
    </message>
    <message>
        <source>The disc of size %1 leaves the ostium open on the %2 side, by %3 at most.</source>
        <translation>Le disque de la taille %1 laisse l’ostium ouvert de %3 au plus, côté : %2.</translation>
    </message>
    <message>
        <source>Only %1 of the lobe of size %2 lies beyond the circumflex artery; two thirds are wanted (common practice, no source).</source>
        <translation>Seulement %1 du lobe de la taille %2 se trouvent au-delà de l’artère circonflexe ; deux tiers sont souhaités (pratique courante, sans source).</translation>
    </message>
    <message>
        <source>Planned and seen, %1: %2 planned, %3 seen.</source>
        <translation>Prévu et vu, %1 : %2 prévu, %3 vu.</translation>
    </message>
    <message>
        <source>They differ by more than both uncertainties allow.</source>
        <translation>Ils diffèrent de plus que les deux incertitudes ne le permettent.</translation>
    </message>
    <message>
        <source>%1 ± %2</source>
        <translation>%1 ± %2</translation>
    </message>
    <message>
        <source>%1 ± %2 open</source>
        <translation>%1 ± %2 d’espace</translation>
    </message>
    <message>
        <source>wall pressed out by %1 ± %2</source>
        <translation>paroi repoussée de %1 ± %2</translation>
    </message>
    <message>
        <source>the %1 wall</source>
        <translation>la paroi, côté : %1</translation>
    </message>
    <message>
        <source>the sheath from the chosen crossing</source>
        <translation>la gaine venant de la ponction choisie</translation>
    </message>
    <message>
        <source>the steerable sheath from the chosen crossing</source>
        <translation>la gaine orientable venant de la ponction choisie</translation>
    </message>
    <message>
        <source>the appendage's proximal axis, as no crossing is chosen</source>
        <translation>l’axe proximal de l’auricule, aucune ponction n’étant choisie</translation>
    </message>
    <message>
        <source>the ostium's normal, as no crossing is chosen</source>
        <translation>la normale de l’ostium, aucune ponction n’étant choisie</translation>
    </message>
    <message>
        <source>the wall ahead</source>
        <translation>la paroi en face</translation>
    </message>
    <message>
        <source>not seen</source>
        <translation>non vu</translation>
    </message>
    <message>
        <source>near</source>
        <translation>proche</translation>
    </message>
    <message>
        <source>superior</source>
        <translation>supérieur</translation>
    </message>
    <message>
        <source>inferior</source>
        <translation>inférieur</translation>
    </message>
    <message>
        <source>anterior</source>
        <translation>antérieur</translation>
    </message>
    <message>
        <source>posterior</source>
        <translation>postérieur</translation>
    </message>
    <message>
        <source>left</source>
        <translation>gauche</translation>
    </message>
    <message>
        <source>right</source>
        <translation>droit</translation>
    </message>
    <message>
        <source>right-anterior</source>
        <translation>droit-antérieur</translation>
    </message>
    <message>
        <source>right-posterior</source>
        <translation>droit-postérieur</translation>
    </message>
    <message>
        <source>right-superior</source>
        <translation>droit-supérieur</translation>
    </message>
    <message>
        <source>right-inferior</source>
        <translation>droit-inférieur</translation>
    </message>
    <message>
        <source>left-anterior</source>
        <translation>gauche-antérieur</translation>
    </message>
    <message>
        <source>left-posterior</source>
        <translation>gauche-postérieur</translation>
    </message>
    <message>
        <source>left-superior</source>
        <translation>gauche-supérieur</translation>
    </message>
    <message>
        <source>left-inferior</source>
        <translation>gauche-inférieur</translation>
    </message>
    <message>
        <source>anterior-inferior</source>
        <translation>antérieur-inférieur</translation>
    </message>
    <message>
        <source>anterior-superior</source>
        <translation>antérieur-supérieur</translation>
    </message>
    <message>
        <source>posterior-inferior</source>
        <translation>postérieur-inférieur</translation>
    </message>
    <message>
        <source>posterior-superior</source>
        <translation>postérieur-supérieur</translation>
    </message>
    <message>
        <source>No view within the reach of the C-arm shows the plane edge-on; the views nearest to edge-on stand instead, and widths are read there all the same across the axis.</source>
        <translation>Aucune incidence à la portée de l’arceau ne montre le plan par la tranche ; les plus proches en tiennent lieu, et les largeurs y sont lues malgré tout en travers de l’axe.</translation>
    </message>
    <message>
        <source>The axis hardly turns (or is too short to tell): no view in profile of a bend is named.</source>
        <translation>L’axe tourne à peine (ou est trop court pour le dire) : aucune incidence de profil d’un coude n’est nommée.</translation>
    </message>
    <message>
        <source>The bend lies within the plane itself: no edge-on view has it in profile.</source>
        <translation>Le coude est dans le plan même : aucune incidence par la tranche ne le montre de profil.</translation>
    </message>
    <message>
        <source>There is no surface of atrium and appendage: how they overlap in a view is not told.</source>
        <translation>Il n’y a pas de surface de l’oreillette et de l’auricule : leur recouvrement dans une incidence n’est pas dit.</translation>
    </message>
    <message>
        <source>Cannot predict angles of the C-arm: the CT does not tell how the patient lay ((0018,5100) PatientPosition is absent or empty).</source>
        <translation>Les angles de l’arceau ne peuvent être prédits : le CT ne dit pas comment le patient était couché ((0018,5100) PatientPosition manque ou est vide).</translation>
    </message>
    <message>
        <source>If the patient lay on the back, state it by an offset of 0 degrees.</source>
        <translation>Si le patient était sur le dos, le déclarer par un décalage de 0 degré.</translation>
    </message>
    <message>
        <source>Cannot predict angles of the C-arm: at CT the patient lay %1 ((0018,5100) PatientPosition is "%2"), and the heart lies otherwise than on the back.</source>
        <translation>Les angles de l’arceau ne peuvent être prédits : au CT le patient était couché %1 ((0018,5100) PatientPosition est « %2 »), et le cœur est placé autrement que sur le dos.</translation>
    </message>
    <message>
        <source>State an offset of the patient to predict all the same.</source>
        <translation>Indiquer un décalage du patient pour prédire malgré tout.</translation>
    </message>
    <message>
        <source>Cannot use the reach of the C-arm: all limits are 0 degrees, which leaves one view only.</source>
        <translation>La portée de l’arceau est inutilisable : toutes les limites sont de 0 degré, ce qui ne laisse qu’une incidence.</translation>
    </message>
    <message>
        <source>Set how far the arm can be turned.</source>
        <translation>Indiquer jusqu’où l’arceau peut tourner.</translation>
    </message>
    <message>
        <source>on the face</source>
        <translation>sur le ventre</translation>
    </message>
    <message>
        <source>on the left side</source>
        <translation>sur le côté gauche</translation>
    </message>
    <message>
        <source>on the right side</source>
        <translation>sur le côté droit</translation>
    </message>
    <message>
        <source>in an unusual position</source>
        <translation>dans une position inhabituelle</translation>
    </message>
    <message>
        <source>No answer yet: the appendage is not measured, so nothing is known of its ostium and axis.</source>
        <translation>Pas encore de réponse : l'auricule n'est pas mesurée, son ostium et son axe ne sont donc pas connus.</translation>
    </message>
    <message>
        <source>No answer for the repair yet: the mitral annulus is not marked, so no height is known.</source>
        <translation>Pas encore de réponse pour la réparation : l'anneau mitral n'est pas marqué, aucune hauteur n'est donc connue.</translation>
    </message>
    <message>
        <source>No answer for the repair yet: no point of coaptation is marked, and the height band counts from there.</source>
        <translation>Pas encore de réponse pour la réparation : aucun point de coaptation n'est marqué, et la plage de hauteur se compte de là.</translation>
    </message>
    <message>
        <source>No place of this fossa lies %1 to %2 %3: it reaches from %4 to %5.</source>
        <translation>Aucun lieu de cette fosse ne se trouve %1 à %2 %3 : elle va de %4 à %5.</translation>
    </message>
    <message>
        <source>Check the marks, the datum and the band before anything is concluded.</source>
        <translation>Vérifier les marques, la référence et la plage avant toute conclusion.</translation>
    </message>
    <message>
        <source>No repair of the mitral valve is planned: only the closure counts.</source>
        <translation>Aucune réparation de la valve mitrale n'est prévue : seule la fermeture compte.</translation>
    </message>
    <message>
        <source>Over %1 of the fossa's area a straight sheath arrives within %2 of the appendage's proximal axis.</source>
        <translation>Sur %1 de la surface de la fosse, une gaine droite arrive à moins de %2 de l'axe proximal de l'auricule.</translation>
    </message>
    <message>
        <source>No straight sheath through this fossa arrives within %1 of the appendage's proximal axis; a steerable one does so over %2 of its area, by a bend of radius %3.</source>
        <translation>Aucune gaine droite par cette fosse n'arrive à moins de %1 de l'axe proximal de l'auricule ; une gaine orientable y arrive sur %2 de sa surface, par une courbure de rayon %3.</translation>
    </message>
    <message>
        <source>No crossing of this fossa lets the sheath arrive within %1 of the appendage's proximal axis: by a straight one the least is %2.</source>
        <translation>Aucune traversée de cette fosse ne laisse la gaine arriver à moins de %1 de l'axe proximal de l'auricule : droite, le minimum est %2.</translation>
    </message>
    <message>
        <source>One crossing can serve both: %1 of the fossa's area lie %2 to %3 %4 and let a straight sheath arrive within %5 of the appendage's proximal axis.</source>
        <translation>Une seule traversée peut servir aux deux : %1 de la surface de la fosse se trouvent %2 à %3 %4 et laissent une gaine droite arriver à moins de %5 de l'axe proximal de l'auricule.</translation>
    </message>
    <message>
        <source>One crossing can serve both if the closure uses a steerable sheath: by a straight one no place that lies %1 to %2 %3 arrives within %4 of the appendage's proximal axis.</source>
        <translation>Une seule traversée peut servir aux deux si la fermeture emploie une gaine orientable : droite, aucun lieu situé %1 à %2 %3 n'arrive à moins de %4 de l'axe proximal de l'auricule.</translation>
    </message>
    <message>
        <source>By a bend of radius %1 a crossing serves both over %2 of the fossa's area.</source>
        <translation>Par une courbure de rayon %1, une traversée sert aux deux sur %2 de la surface de la fosse.</translation>
    </message>
    <message>
        <source>No single crossing serves both, also not with a steerable sheath.</source>
        <translation>Aucune traversée unique ne sert aux deux, pas même avec une gaine orientable.</translation>
    </message>
    <message>
        <source>No single crossing serves both with a straight sheath.</source>
        <translation>Aucune traversée unique ne sert aux deux avec une gaine droite.</translation>
    </message>
    <message>
        <source>The closure asks for a second, lower crossing: places within %1 of the appendage's proximal axis begin at %2, where the repair asks for %3 to %4 %5.</source>
        <translation>La fermeture demande une seconde traversée, plus basse : les lieux à moins de %1 de l'axe proximal de l'auricule commencent à %2, alors que la réparation demande %3 à %4 %5.</translation>
    </message>
    <message>
        <source>Cross for the repair and close last: plan the closure anew from where the sheath then lies.</source>
        <translation>Traverser pour la réparation et fermer en dernier : planifier la fermeture de nouveau à partir de la position de la gaine.</translation>
    </message>
    <message>
        <source>The place with most room is %1: %2 %3, %4 to the axis by a straight sheath, %5 to where it no longer serves.</source>
        <translation>Le lieu qui a le plus de place est %1 : %2 %3, %4 de l'axe par une gaine droite, %5 jusqu'où il ne sert plus.</translation>
    </message>
    <message>
        <source>The place with most room is %1: %2 to the axis by a straight sheath, %3 to where it no longer serves.</source>
        <translation>Le lieu qui a le plus de place est %1 : %2 de l'axe par une gaine droite, %3 jusqu'où il ne sert plus.</translation>
    </message>
    <message>
        <source>This rests on %1 points of the fossa's rim (%2 from their plane, root mean square).</source>
        <translation>Cela repose sur %1 points du bord de la fosse (%2 de leur plan, moyenne quadratique).</translation>
    </message>
    <message>
        <source>This rests on %1 points of the fossa's rim (%2 from their plane, root mean square), %3 of the mitral annulus (%4).</source>
        <translation>Cela repose sur %1 points du bord de la fosse (%2 de leur plan, moyenne quadratique), %3 de l'anneau mitral (%4).</translation>
    </message>
    <message>
        <source>This rests on %1 points of the fossa's rim (%2 from their plane, root mean square), %3 of the mitral annulus (%4), %5 of the coaptation.</source>
        <translation>Cela repose sur %1 points du bord de la fosse (%2 de leur plan, moyenne quadratique), %3 de l'anneau mitral (%4), %5 de la coaptation.</translation>
    </message>
    <message>
        <source>It is geometry on one phase of the CT; the local protocol and the operator decide.</source>
        <translation>C'est de la géométrie sur une phase du CT ; le protocole local et l'opérateur décident.</translation>
    </message>
    <message>
        <source>With a steerable sheath of radius %1 one crossing would serve both, over %2 of the fossa's area.</source>
        <translation>Avec une gaine orientable de rayon %1, une seule traversée servirait aux deux, sur %2 de la surface de la fosse.</translation>
    </message>
    <message>
        <source>Little room: the best place lies %1 from where a crossing no longer serves, less than a needle is placed to.</source>
        <translation>Peu de place : le meilleur lieu est à %1 de l'endroit où une traversée ne sert plus, moins que la précision d'une aiguille.</translation>
    </message>
    <message>
        <source>The fossa's rim is marked by %1 points only; its outline between them is a guess.</source>
        <translation>Le bord de la fosse n'est marqué que par %1 points ; son contour entre eux est supposé.</translation>
    </message>
    <message>
        <source>The points of the fossa's rim lie %1 from their plane (root mean square): look at them again.</source>
        <translation>Les points du bord de la fosse sont à %1 de leur plan (moyenne quadratique) : les revoir.</translation>
    </message>
    <message>
        <source>No aortic root is marked: which side of the fossa is anterior is told by the patient's axes alone.</source>
        <translation>Aucune racine aortique n'est marquée : seuls les axes du patient disent quel côté de la fosse est antérieur.</translation>
    </message>
    <message>
        <source>The mitral annulus is marked by %1 points only; its plane rests on little.</source>
        <translation>L'anneau mitral n'est marqué que par %1 points ; son plan repose sur peu.</translation>
    </message>
    <message>
        <source>The points of the mitral annulus lie %1 from their plane (root mean square): look at them again.</source>
        <translation>Les points de l'anneau mitral sont à %1 de leur plan (moyenne quadratique) : les revoir.</translation>
    </message>
    <message>
        <source>The leaflets meet %1 below the plane of the annulus: heights over the one and the other are not the same.</source>
        <translation>Les feuillets se rejoignent %1 sous le plan de l'anneau : les hauteurs au-dessus de l'un et de l'autre ne sont pas les mêmes.</translation>
    </message>
    <message>
        <source>Name the datum.</source>
        <translation>Nommer la référence.</translation>
    </message>
    <message>
        <source>The crossing is %1.</source>
        <translation>Le point de traversée est %1.</translation>
    </message>
    <message>
        <source>It lies %1 %2.</source>
        <translation>Il se trouve %1 %2.</translation>
    </message>
    <message>
        <source>The ostium's centre is %1 away, at %2 to the appendage's proximal axis.</source>
        <translation>Le centre de l'ostium est à %1, à %2 de l'axe proximal de l'auricule.</translation>
    </message>
    <message>
        <source>It serves the repair.</source>
        <translation>Il sert à la réparation.</translation>
    </message>
    <message>
        <source>It does not serve the repair.</source>
        <translation>Il ne sert pas à la réparation.</translation>
    </message>
    <message>
        <source>It serves the closure.</source>
        <translation>Il sert à la fermeture.</translation>
    </message>
    <message>
        <source>It serves the closure with a steerable sheath only.</source>
        <translation>Il ne sert à la fermeture qu'avec une gaine orientable.</translation>
    </message>
    <message>
        <source>It does not serve the closure.</source>
        <translation>Il ne sert pas à la fermeture.</translation>
    </message>
    <message>
        <source>It serves repair and closure.</source>
        <translation>Il sert à la réparation et à la fermeture.</translation>
    </message>
    <message>
        <source>It serves the repair, and the closure with a steerable sheath only.</source>
        <translation>Il sert à la réparation, et à la fermeture avec une gaine orientable seulement.</translation>
    </message>
    <message>
        <source>It serves the repair, not the closure.</source>
        <translation>Il sert à la réparation, pas à la fermeture.</translation>
    </message>
    <message>
        <source>It serves the closure, not the repair.</source>
        <translation>Il sert à la fermeture, pas à la réparation.</translation>
    </message>
    <message>
        <source>It serves the closure with a steerable sheath only, and not the repair.</source>
        <translation>Il ne sert à la fermeture qu'avec une gaine orientable, et pas à la réparation.</translation>
    </message>
    <message>
        <source>It serves neither the repair nor the closure.</source>
        <translation>Il ne sert ni à la réparation ni à la fermeture.</translation>
    </message>
    <message>
        <source>Cannot cross the septum there: the place lies %1 outside the fossa's outline, towards the %2 (%3).</source>
        <translation>Impossible de traverser le septum ici : le lieu est à %1 hors du contour de la fosse, côté %2 (%3).</translation>
    </message>
    <message>
        <source>Choose a place within the outline, or correct the marks of the rim.</source>
        <translation>Choisir un lieu dans le contour, ou corriger les marques du bord.</translation>
    </message>
    <message>
        <source>No bend of radius %1 leads from this crossing to the ostium: the line to it leaves the septum at %2 where %3 are allowed, and over %4 no bend makes up for that.</source>
        <translation>Aucune courbure de rayon %1 ne mène de ce point à l'ostium : la ligne quitte le septum à %2 alors que %3 sont permis, et sur %4 aucune courbure ne compense cela.</translation>
    </message>
    <message>
        <source>over the plane of the mitral annulus</source>
        <translation>au-dessus du plan de l'anneau mitral</translation>
    </message>
    <message>
        <source>over the level of coaptation, parallel to the septum</source>
        <translation>au-dessus du niveau de coaptation, parallèlement au septum</translation>
    </message>
    <message>
        <source>inferior-posterior</source>
        <translation>inféro-postérieur</translation>
    </message>
    <message>
        <source>inferior-central</source>
        <translation>inféro-central</translation>
    </message>
    <message>
        <source>inferior-anterior</source>
        <translation>inféro-antérieur</translation>
    </message>
    <message>
        <source>central</source>
        <translation>central</translation>
    </message>
    <message>
        <source>superior-posterior</source>
        <translation>supéro-postérieur</translation>
    </message>
    <message>
        <source>superior-central</source>
        <translation>supéro-central</translation>
    </message>
    <message>
        <source>superior-anterior</source>
        <translation>supéro-antérieur</translation>
    </message>
    <message>
        <source>aortic-root side (anterior)</source>
        <translation>racine aortique (antérieur)</translation>
    </message>
    <message>
        <source>posterior wall</source>
        <translation>paroi postérieure</translation>
    </message>
    <message>
        <source>superior side</source>
        <translation>supérieur</translation>
    </message>
    <message>
        <source>inferior side</source>
        <translation>inférieur</translation>
    </message>
    <message>
        <source>told by the marked aortic root</source>
        <translation>d'après la racine aortique marquée</translation>
    </message>
    <message>
        <source>told by the patient's axes: no aortic root is marked</source>
        <translation>d'après les axes du patient : aucune racine aortique n'est marquée</translation>
    </message>
    <message>
        <source>over the level of coaptation, parallel to the septum, by marked points on CT</source>
        <translation>au-dessus du niveau de coaptation, parallèlement au septum, par des points marqués sur le CT</translation>
    </message>
    <message>
        <source>over the plane of the mitral annulus, by marked points on CT</source>
        <translation>au-dessus du plan de l'anneau mitral, par des points marqués sur le CT</translation>
    </message>
    <message>
        <source>from the crossing to the ostium's centre on CT</source>
        <translation>du point de traversée au centre de l'ostium sur le CT</translation>
    </message>
    <message>
        <source>line from the crossing to the ostium's centre against the proximal axis on CT</source>
        <translation>ligne du point de traversée au centre de l'ostium contre l'axe proximal sur le CT</translation>
    </message>
    <message>
        <source>arrival of a steerable sheath of the set radius against the proximal axis on CT</source>
        <translation>arrivée d'une gaine orientable du rayon choisi contre l'axe proximal sur le CT</translation>
    </message>
    <message>
        <source>Size %1 finds no room along the sheath: at the landing zone %2 stands in its way.</source>
        <translation>La taille %1 ne trouve pas de place le long de la gaine ; à la zone de pose lui fait obstacle : %2.</translation>
    </message>
    <message>
        <source>Size %1 finds no room along the sheath: square to it the landing zone leaves %2 by the chart's own measure, and its narrowest width is %3.</source>
        <translation>La taille %1 ne trouve pas de place le long de la gaine : perpendiculairement à celle-ci la zone de pose laisse %2 selon la mesure propre du tableau, et la plus petite largeur de la taille est de %3.</translation>
    </message>
    <message>
        <source>The landing plane itself, %1 degrees off that direction, measures %2.</source>
        <translation>Le plan de pose lui-même, à %1 degrés de cette direction, mesure %2.</translation>
    </message>
    <message>
        <source>They land at the plug plane, %1 beyond the ridge.</source>
        <translation>Elles se posent au plan du bouchon, %1 au-delà de la crête.</translation>
    </message>
    <message>
        <source>At the landing zone, size %1 being %2 wide in place by the chart's own measure: above %3; below %4.</source>
        <translation>À la zone de pose, la taille %1 y ayant une largeur de %2 selon la mesure propre du tableau : en haut %3 ; en bas %4.</translation>
    </message>
    <message>
        <source>%1 open</source>
        <translation>%1 d’espace</translation>
    </message>
    <message>
        <source>wall pressed out by %1</source>
        <translation>paroi repoussée de %1</translation>
    </message>
    <message>
        <source>width of the CT contour at %1, parallel rays</source>
        <translation>largeur du contour du scanner à %1, rayons parallèles</translation>
    </message>
    <message>
        <source>the appendage's narrowing below %1</source>
        <translation>l’auricule, qui s’y rétrécit au-dessous de %1</translation>
    </message>
    <message>
        <source>a trabecula or fold on the %1 side</source>
        <translation>trabécule ou repli, côté : %1</translation>
    </message>
    <message>
        <source>it touches the wall</source>
        <translation>elle touche la paroi</translation>
    </message>
    <message>
        <source>angles of the C-arm, best view within its reach for: %1</source>
        <translation>angles de l’arceau, meilleure vue dans sa portée pour : %1</translation>
    </message>
    <message>
        <source>longest width</source>
        <translation>largeur la plus grande</translation>
    </message>
    <message>
        <source>shortest width</source>
        <translation>largeur la plus petite</translation>
    </message>
    <message>
        <source>bend in profile</source>
        <translation>courbure de profil</translation>
    </message>
    <message>
        <source>least overlap with the atrium</source>
        <translation>moindre superposition avec l’oreillette</translation>
    </message>
    <message>
        <source>all aims in one view</source>
        <translation>tout en une vue</translation>
    </message>
    <message>
        <source>angles of the C-arm along the plane's normal</source>
        <translation>angles de l’arceau le long de la normale du plan</translation>
    </message>
    <message>
        <source>angles of the C-arm, chosen by the person</source>
        <translation>angles de l’arceau, choisis par la personne</translation>
    </message>
    <message>
        <source>Cannot use the distances of the C-arm: from the source %1 to the isocentre and %2 to the detector; they must lie within %3 to %4, and the detector beyond the isocentre.</source>
        <translation>Impossible d’utiliser les distances de l’arceau : de la source %1 à l’isocentre et %2 au détecteur ; elles doivent être comprises entre %3 et %4, et le détecteur au-delà de l’isocentre.</translation>
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
        <source>The patient's course</source>
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
        <source>the library's file is damaged (SQLite code %1). Nothing was changed. Rescue the whole cases into a new library, or bring back a copy.</source>
        <translation>le fichier de la bibliothèque est endommagé (code SQLite %1). Rien n’a été modifié. Récupérer les cas intacts dans une nouvelle bibliothèque, ou rapporter une copie.</translation>
    </message>
    <message>
        <source>the disk is full. Free some space, then try again.</source>
        <translation>le disque est plein. Libérer de la place, puis réessayer.</translation>
    </message>
    <message>
        <source>the file cannot be opened. Check the folder's permissions.</source>
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
        <source>another person's change held this case too long. Try again.</source>
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
    <message>
        <source>Sizes, seat, what next, card for the room</source>
        <translation>Tailles, assise, suite, fiche pour la salle</translation>
    </message>
    <message>
        <source>Seat</source>
        <translation>Assise</translation>
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
    <message>
        <source>measuring …</source>
        <translation>mesure en cours …</translation>
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
        <source>Click or left and right keys show a depth; drag the landing zone's marker, or hold Shift with the keys, to move it.</source>
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
    <message>
        <source>size %1</source>
        <translation>taille %1</translation>
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
    <message>
        <source>Mark a point: %1</source>
        <translation>Marquer un point : %1</translation>
    </message>
    <message>
        <source>Move a point: %1</source>
        <translation>Déplacer un point : %1</translation>
    </message>
    <message>
        <source>Remove a point: %1</source>
        <translation>Retirer un point : %1</translation>
    </message>
    <message>
        <source>Remove all points: %1</source>
        <translation>Retirer tous les points : %1</translation>
    </message>
    <message>
        <source>Set the limits of the crossing</source>
        <translation>Fixer les limites de la traversée</translation>
    </message>
    <message>
        <source>Choose the septal crossing</source>
        <translation>Choisir la traversée septale</translation>
    </message>
    <message>
        <source>Give the septal crossing up</source>
        <translation>Abandonner la traversée septale</translation>
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
        <source>Rotation of the probe's plane as the picture shows it, degrees:</source>
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
    <name>FirstPictureView</name>
    <message>
        <source>First picture of the CT that is being loaded</source>
        <translation>Première image du scanner en cours de chargement</translation>
    </message>
    <message>
        <source>slice %1 of %2</source>
        <translation>coupe %1 sur %2</translation>
    </message>
    <message>
        <source>%1 of “%2”</source>
        <translation>%1 de « %2 »</translation>
    </message>
    <message>
        <source>%1, phase %2</source>
        <translation>%1, phase %2</translation>
    </message>
    <message>
        <source>%1 % loaded. Measuring begins when all slices are here and their places are proved.</source>
        <translation>%1 % chargé. La mesure commence quand toutes les coupes sont là et que leur place est prouvée.</translation>
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
        <source>Calibrate by the program's own reading of a catheter's edges along a piece of it</source>
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
        <source>CT predicts nothing: the file does not tell the C-arm's angles.</source>
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
        <source>The file does not tell the C-arm's angles for this frame.</source>
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
    <message>
        <source>Planned size</source>
        <translation>Taille prévue</translation>
    </message>
    <message>
        <source>The outline of size %1, as it would sit by the CT, is laid over the frame by the line of the landing zone, or else of the ostium, that is drawn on it. A frame after release shows beside it how the implant lies.</source>
        <translation>Le contour de la taille %1, telle qu’elle se placerait d’après le scanner, est posé sur l’image selon la ligne tracée de la zone d’ancrage, ou sinon de l’ostium. Une image après largage montre à côté comment se trouve l’implant.</translation>
    </message>
    <message>
        <source>planned %1</source>
        <translation>prévu : %1</translation>
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
    <name>ImageView</name>
    <message>
        <source>slab of %1, mean</source>
        <translation>tranche de %1, moyenne</translation>
    </message>
    <message>
        <source>slab of %1, maximum</source>
        <translation>tranche de %1, maximum</translation>
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
    <name>LandingEditor</name>
    <message>
        <source>Landing zone, mm beyond the ostium</source>
        <translation>Zone d’ancrage, mm au-delà de l’ostium</translation>
    </message>
    <message>
        <source>Second landing plane, mm beyond the ostium</source>
        <translation>Second plan d’ancrage, mm au-delà de l’ostium</translation>
    </message>
    <message>
        <source>Plug plane, mm beyond the ridge</source>
        <translation>Plan du bouchon, mm au-delà de la crête</translation>
    </message>
    <message>
        <source>none</source>
        <translation>aucun</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Montrer</translation>
    </message>
    <message>
        <source>Show: %1</source>
        <translation>Montrer : %1</translation>
    </message>
    <message>
        <source>Show the cross-section there</source>
        <translation>Montrer la coupe transversale à cet endroit</translation>
    </message>
    <message>
        <source>mm</source>
        <translation>mm</translation>
    </message>
    <message>
        <source>Landing zone</source>
        <translation>Zone d’ancrage</translation>
    </message>
    <message>
        <source>How far beyond the ostium along the axis the implant will hold</source>
        <translation>À quelle distance au-delà de l’ostium, le long de l’axe, l’implant tiendra</translation>
    </message>
    <message>
        <source>Second plane</source>
        <translation>Second plan</translation>
    </message>
    <message>
        <source>One more plane along the axis to compare with; empty: none</source>
        <translation>Un plan de plus le long de l’axe pour comparer ; vide : aucun</translation>
    </message>
    <message>
        <source>Plug plane</source>
        <translation>Plan du bouchon</translation>
    </message>
    <message>
        <source>Through the circumflex artery and the wall this far beyond the tip of the ridge; empty: none</source>
        <translation>Par l’artère circonflexe et la paroi à cette distance au-delà du sommet de la crête ; vide : aucun</translation>
    </message>
    <message>
        <source>Mark the circumflex artery and the ridge first: the plug plane is placed by them</source>
        <translation>Marquez d’abord l’artère circonflexe et la crête : elles placent le plan du bouchon</translation>
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
        <source>The case was exported to %1. The file holds the patient's name.</source>
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
    <message>
        <source>The library was read whole: nothing is wrong with it.</source>
        <translation>La bibliothèque a été lue en entier : tout est en ordre.</translation>
    </message>
    <message numerus="yes">
        <source>%n thing(s) are wrong with the library: %1 Copy what is whole into a new library.</source>
        <translation>
            <numerusform>%n chose ne va pas dans la bibliothèque : %1 Copiez ce qui est intact dans une nouvelle bibliothèque.</numerusform>
            <numerusform>%n choses ne vont pas dans la bibliothèque : %1 Copiez ce qui est intact dans une nouvelle bibliothèque.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n case(s) were copied to %1, each with its newest whole version. Choose this file in the settings to work with it.</source>
        <translation>
            <numerusform>%n cas a été copié vers %1, avec sa version intacte la plus récente. Choisissez ce fichier dans les réglages pour travailler avec.</numerusform>
            <numerusform>%n cas ont été copiés vers %1, chacun avec sa version intacte la plus récente. Choisissez ce fichier dans les réglages pour travailler avec.</numerusform>
        </translation>
    </message>
    <message>
        <source>A new library for what is whole</source>
        <translation>Une nouvelle bibliothèque pour ce qui est intact</translation>
    </message>
    <message>
        <source>rescued.library</source>
        <translation>sauvee.library</translation>
    </message>
    <message>
        <source>Case libraries (*.library)</source>
        <translation>Bibliothèques de cas (*.library)</translation>
    </message>
    <message>
        <source>&amp;Check …</source>
        <translation>&amp;Vérifier …</translation>
    </message>
    <message>
        <source>Read everything in the library and say what is wrong with it</source>
        <translation>Lire toute la bibliothèque et dire ce qui ne va pas</translation>
    </message>
    <message>
        <source>Copy what is &amp;whole …</source>
        <translation>Co&amp;pier ce qui est intact …</translation>
    </message>
    <message>
        <source>Copy the newest whole version of each case into a new library</source>
        <translation>Copier la version intacte la plus récente de chaque cas dans une nouvelle bibliothèque</translation>
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
    <name>LibrarySettingsPart</name>
    <message>
        <source>A file of your own</source>
        <translation>Un fichier à vous</translation>
    </message>
    <message>
        <source>A server of the team (PostgreSQL)</source>
        <translation>Un serveur de l’équipe (PostgreSQL)</translation>
    </message>
    <message>
        <source>&amp;Library</source>
        <translation>&amp;Bibliothèque</translation>
    </message>
    <message>
        <source>Another library holds from the next start.</source>
        <translation>Une autre bibliothèque vaut dès le prochain démarrage.</translation>
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
        <translation>Choisir le fichier de la bibliothèque ; il est créé s’il n’existe pas</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Fichier</translation>
    </message>
    <message>
        <source>&amp;Host</source>
        <translation>&amp;Hôte</translation>
    </message>
    <message>
        <source>name or address of the server</source>
        <translation>nom ou adresse du serveur</translation>
    </message>
    <message>
        <source>P&amp;ort</source>
        <translation>P&amp;ort</translation>
    </message>
    <message>
        <source>&amp;Database</source>
        <translation>Base de &amp;données</translation>
    </message>
    <message>
        <source>as you are logged in here</source>
        <translation>comme vous êtes connecté ici</translation>
    </message>
    <message>
        <source>User na&amp;me</source>
        <translation>No&amp;m d’utilisateur</translation>
    </message>
    <message>
        <source>Encrypted</source>
        <translation>Chiffrée</translation>
    </message>
    <message>
        <source>Encrypted, and the server's certificate is checked</source>
        <translation>Chiffrée, et le certificat du serveur est vérifié</translation>
    </message>
    <message>
        <source>Not encrypted: patient data can be read on the way</source>
        <translation>Non chiffrée : les données du patient peuvent être lues en chemin</translation>
    </message>
    <message>
        <source>&amp;Connection</source>
        <translation>&amp;Connexion</translation>
    </message>
    <message>
        <source>none: the server is the one above</source>
        <translation>aucun : le serveur est celui du dessus</translation>
    </message>
    <message>
        <source>A name in the service file of PostgreSQL (~/.pg_service.conf), which then says all the rest</source>
        <translation>Un nom du fichier de services de PostgreSQL (~/.pg_service.conf), qui dit alors tout le reste</translation>
    </message>
    <message>
        <source>&amp;Service file's name</source>
        <translation>Nom du fichier de &amp;services</translation>
    </message>
    <message>
        <source>The password is not kept here: PostgreSQL reads it from its own password file (~/.pgpass, readable by you alone), one line host:port:database:user:password.</source>
        <translation>Le mot de passe n’est pas gardé ici : PostgreSQL le lit dans son propre fichier de mots de passe (~/.pgpass, lisible par vous seul), une ligne host:port:database:user:password.</translation>
    </message>
    <message>
        <source>&amp;Try the connection</source>
        <translation>&amp;Essayer la connexion</translation>
    </message>
    <message>
        <source>Name the server's host first, or a name of the service file.</source>
        <translation>Nommez d’abord l’hôte du serveur, ou un nom du fichier de services.</translation>
    </message>
    <message>
        <source>Trying …</source>
        <translation>Essai en cours …</translation>
    </message>
    <message>
        <source>The server answers: %1.</source>
        <translation>Le serveur répond : %1.</translation>
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
        <source>%1 has the case now. Yours is kept as version %2 beside theirs.</source>
        <translation>%1 a le cas maintenant. Le vôtre est conservé à côté, en version %2.</translation>
    </message>
    <message>
        <source>Two versions</source>
        <translation>Deux versions</translation>
    </message>
    <message>
        <source>Both stay in the case library until you decide there which one is to be the present one.</source>
        <translation>Les deux restent dans la bibliothèque jusqu’à ce que vous y décidiez laquelle sera l’actuelle.</translation>
    </message>
    <message>
        <source>Read &amp;theirs</source>
        <translation>Lire la &amp;leur</translation>
    </message>
    <message>
        <source>Read &amp;yours</source>
        <translation>Lire la &amp;vôtre</translation>
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
        <translation>L'image a été écrite dans %1. Cherchez les noms qui font partie des images de radioscopie.</translation>
    </message>
    <message>
        <source>The picture could not be written to %1. Choose a folder that can be written to and has space.</source>
        <translation>L'image n'a pas pu être écrite dans %1. Choisissez un dossier accessible en écriture où il reste de la place.</translation>
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
        <translation>Le cas d'exemple est en cours de création, environ 200 Mo ; il s'ouvre de lui-même quand il est prêt …</translation>
    </message>
    <message>
        <source>A case without images: add the moments and type in what was read. Open a folder of images at any time.</source>
        <translation>Un cas sans images : ajoutez les moments et saisissez ce qui a été lu. Ouvrez un dossier d'images à tout moment.</translation>
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
        <translation>Ce cas n'a jamais été enregistré, et selon les réglages le travail non enregistré n'est pas conservé. L'enregistrer maintenant ?</translation>
    </message>
    <message>
        <source>Part that scrolls</source>
        <translation>Partie qui défile</translation>
    </message>
    <message>
        <source>Read a &amp;report into the table …</source>
        <translation>Lire un rappo&amp;rt dans le tableau …</translation>
    </message>
    <message>
        <source>Take readings from a DICOM Structured Report</source>
        <translation>Reprendre les lectures d’un DICOM Structured Report</translation>
    </message>
    <message>
        <source>&amp;Values as CSV or JSON …</source>
        <translation>&amp;Valeurs en CSV ou JSON …</translation>
    </message>
    <message>
        <source>Export wit&amp;hout identity …</source>
        <translation>Exporter sans &amp;identité …</translation>
    </message>
    <message>
        <source>Case and images without names, numbers and dates of the patient</source>
        <translation>Cas et images sans noms, numéros ni dates du patient</translation>
    </message>
    <message>
        <source>Read a structured report</source>
        <translation>Lire un rapport structuré</translation>
    </message>
    <message>
        <source>DICOM (*.dcm);;All files (*)</source>
        <translation>DICOM (*.dcm);;Tous les fichiers (*)</translation>
    </message>
    <message>
        <source>Another patient</source>
        <translation>Un autre patient</translation>
    </message>
    <message>
        <source>This report seems to be about another patient. Take its readings all the same?</source>
        <translation>Ce rapport semble concerner un autre patient. Reprendre ses lectures malgré tout ?</translation>
    </message>
    <message numerus="yes">
        <source>%n of ID, name and date of birth differ(s).</source>
        <translation>
            <numerusform>%n élément parmi numéro, nom et date de naissance diffère.</numerusform>
            <numerusform>%n éléments parmi numéro, nom et date de naissance diffèrent.</numerusform>
        </translation>
    </message>
    <message>
        <source>Take the readings</source>
        <translation>Reprendre les lectures</translation>
    </message>
    <message>
        <source>No reading was taken: the report is about another patient.</source>
        <translation>Aucune lecture reprise : le rapport concerne un autre patient.</translation>
    </message>
    <message>
        <source>Whether it is the same patient could not be checked.</source>
        <translation>Impossible de vérifier qu’il s’agit du même patient.</translation>
    </message>
    <message>
        <source>Table for spreadsheets (*.csv)</source>
        <translation>Tableau pour tableurs (*.csv)</translation>
    </message>
    <message>
        <source>JSON for programs (*.json)</source>
        <translation>JSON pour programmes (*.json)</translation>
    </message>
    <message>
        <source>Values of the case</source>
        <translation>Valeurs du cas</translation>
    </message>
    <message>
        <source>values.csv</source>
        <translation>valeurs.csv</translation>
    </message>
    <message>
        <source>The values were written to %1.</source>
        <translation>Les valeurs ont été écrites dans %1.</translation>
    </message>
    <message>
        <source>Cannot write %1: %2. Choose another folder, or make room.</source>
        <translation>Impossible d’écrire %1 : %2. Choisissez un autre dossier, ou libérez de la place.</translation>
    </message>
    <message>
        <source>Folder with the images to export</source>
        <translation>Dossier des images à exporter</translation>
    </message>
    <message>
        <source>Empty folder for images and case without identity</source>
        <translation>Dossier vide pour images et cas sans identité</translation>
    </message>
    <message>
        <source>Writing images without identity to %1 …</source>
        <translation>Écriture des images sans identité dans %1 …</translation>
    </message>
    <message numerus="yes">
        <source>%n image(s) were written to %1.</source>
        <translation>
            <numerusform>%n image a été écrite dans %1.</numerusform>
            <numerusform>%n images ont été écrites dans %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n file(s) were left out, since text of the patient may be in them.</source>
        <translation>
            <numerusform>%n fichier a été laissé de côté, car du texte du patient peut s’y trouver.</numerusform>
            <numerusform>%n fichiers ont été laissés de côté, car du texte du patient peut s’y trouver.</numerusform>
        </translation>
    </message>
    <message>
        <source>Look at the pictures before you pass them on: text within the image is not removed.</source>
        <translation>Regardez les images avant de les transmettre : le texte dans l’image n’est pas retiré.</translation>
    </message>
    <message>
        <source>PDF on A4 (*.pdf)</source>
        <translation>PDF en A4 (*.pdf)</translation>
    </message>
    <message>
        <source>PDF on Letter (*.pdf)</source>
        <translation>PDF en Letter (*.pdf)</translation>
    </message>
    <message>
        <source>Septum</source>
        <translation>Septum</translation>
    </message>
    <message>
        <source>Where to cross the septum: height for the repair, angle for the closure</source>
        <translation>Où traverser le septum : hauteur pour la réparation, angle pour la fermeture</translation>
    </message>
    <message>
        <source>Projection</source>
        <translation>Incidences</translation>
    </message>
    <message>
        <source>Angles of the C-arm that show ostium and landing zone</source>
        <translation>Angles de l’arceau qui montrent l’ostium et la zone d’ancrage</translation>
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
    <message>
        <source>Landing planes</source>
        <translation>Plans d’ancrage</translation>
    </message>
    <message>
        <source>On the wall of the left pulmonary artery or its trunk, where it lies nearest to the appendage. For the distance that the sizes keep from it.</source>
        <translation>Sur la paroi de l’artère pulmonaire gauche ou de son tronc, où elle est la plus proche de l’auricule. Pour la distance que les tailles en gardent.</translation>
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
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
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
        <source>Scale: %1 mm a pixel ± %2 % (%3)</source>
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
    <name>Projection</name>
    <message>
        <source>en face</source>
        <translation>de face</translation>
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
        <translation>plus grande largeur</translation>
    </message>
    <message>
        <source>shortest width</source>
        <translation>plus petite largeur</translation>
    </message>
    <message>
        <source>bend in profile</source>
        <translation>coude de profil</translation>
    </message>
    <message>
        <source>least overlap with the atrium</source>
        <translation>moindre recouvrement par l’oreillette</translation>
    </message>
    <message>
        <source>one view for all</source>
        <translation>une incidence pour tout</translation>
    </message>
    <message>
        <source>landing zone</source>
        <translation>zone d’ancrage</translation>
    </message>
    <message>
        <source>ostium</source>
        <translation>ostium</translation>
    </message>
    <message>
        <source>no width</source>
        <translation>pas de largeur</translation>
    </message>
    <message>
        <source>%1 (%2 to %3 within 5°)</source>
        <translation>%1 (%2 à %3 à 5° près)</translation>
    </message>
    <message>
        <source>%1 of the longest not shown</source>
        <translation>%1 de la plus grande non montrés</translation>
    </message>
    <message>
        <source>%1 more than the shortest</source>
        <translation>%1 de plus que la plus petite</translation>
    </message>
    <message>
        <source>plane %1 from edge-on</source>
        <translation>plan à %1 de la tranche</translation>
    </message>
    <message>
        <source>%1 off the bend's profile</source>
        <translation>%1 hors du profil du coude</translation>
    </message>
    <message>
        <source>%1 off en face</source>
        <translation>%1 hors de la vue de face</translation>
    </message>
    <message>
        <source>%1 more of the appendage behind the atrium than need be</source>
        <translation>%1 de plus de l’auricule derrière l’oreillette que nécessaire</translation>
    </message>
    <message>
        <source>%1 of the appendage behind the atrium</source>
        <translation>%1 de l’auricule derrière l’oreillette</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>rien</translation>
    </message>
    <message>
        <source>not told by the images</source>
        <translation>non indiqué par les images</translation>
    </message>
    <message>
        <source>on the back (%1)</source>
        <translation>sur le dos (%1)</translation>
    </message>
    <message>
        <source>on the face (%1)</source>
        <translation>sur le ventre (%1)</translation>
    </message>
    <message>
        <source>on the left side (%1)</source>
        <translation>sur le côté gauche (%1)</translation>
    </message>
    <message>
        <source>on the right side (%1)</source>
        <translation>sur le côté droit (%1)</translation>
    </message>
    <message>
        <source>in an unusual position (%1)</source>
        <translation>dans une position inhabituelle (%1)</translation>
    </message>
</context>
<context>
    <name>ProjectionChart</name>
    <message>
        <source>Dome of the C-arm's views</source>
        <translation>Dôme des incidences de l’arceau</translation>
    </message>
    <message>
        <source>Curve of the C-arm's views</source>
        <translation>Courbe des incidences de l’arceau</translation>
    </message>
    <message>
        <source>Click or press Enter to take the view; drag to turn the C-arm. Arrows move by 1°, with Shift by 10°; Home: from the front; E: edge-on; Escape: no view</source>
        <translation>Un clic ou Entrée choisit l’incidence ; glisser tourne l’arceau. Les flèches déplacent de 1°, avec Maj de 10° ; Début : de face ; E : par la tranche ; Échap : aucune incidence</translation>
    </message>
</context>
<context>
    <name>ProjectionPanel</name>
    <message>
        <source>Views for</source>
        <translation>Incidences pour</translation>
    </message>
    <message>
        <source>The plane that the views are planned for</source>
        <translation>Le plan pour lequel les incidences sont prévues</translation>
    </message>
    <message>
        <source>What the view shows</source>
        <translation>Ce que montre l’incidence</translation>
    </message>
    <message>
        <source>%1 (key %2)</source>
        <translation>%1 (touche %2)</translation>
    </message>
    <message>
        <source>Take this view</source>
        <translation>Choisir cette incidence</translation>
    </message>
    <message>
        <source>Take the view that is pointed at, or the row of the table, as a working view</source>
        <translation>Choisir comme incidence de travail celle qui est pointée, ou la ligne du tableau</translation>
    </message>
    <message>
        <source>Give up a view</source>
        <translation>Abandonner une incidence</translation>
    </message>
    <message>
        <source>Give up the chosen view in the row of the table</source>
        <translation>Abandonner l’incidence choisie de la ligne du tableau</translation>
    </message>
    <message>
        <source>View</source>
        <translation>Incidence</translation>
    </message>
    <message>
        <source>C-arm</source>
        <translation>Arceau</translation>
    </message>
    <message>
        <source>Width seen</source>
        <translation>Largeur vue</translation>
    </message>
    <message>
        <source>What is lost</source>
        <translation>Ce qui est perdu</translation>
    </message>
    <message>
        <source>Working views</source>
        <translation>Incidences de travail</translation>
    </message>
    <message>
        <source>Enter or a double click takes the view of the row</source>
        <translation>Entrée ou un double clic choisit l’incidence de la ligne</translation>
    </message>
    <message>
        <source>The views are being planned …</source>
        <translation>Les incidences sont en cours de calcul…</translation>
    </message>
    <message>
        <source>this run</source>
        <translation>cette série</translation>
    </message>
    <message>
        <source>the ideal, %1, is out of reach</source>
        <translation>l’idéale, %1, est hors de portée</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>picked by hand</source>
        <translation>choisie à la main</translation>
    </message>
    <message>
        <source>chosen before the plane moved: choose again</source>
        <translation>choisie avant que le plan ne bouge : choisir à nouveau</translation>
    </message>
    <message>
        <source>%1 of the longest not shown</source>
        <translation>%1 de la plus grande non montrés</translation>
    </message>
    <message>
        <source>beyond the reach</source>
        <translation>hors de portée</translation>
    </message>
    <message>
        <source>%1 · chosen: %2, %3</source>
        <translation>%1 · choisie : %2, %3</translation>
    </message>
    <message>
        <source>%1 · beyond the reach of the C-arm</source>
        <translation>%1 · hors de portée de l’arceau</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>%1 off the bend's profile</source>
        <translation>%1 hors du profil du coude</translation>
    </message>
    <message>
        <source>%1 of the appendage behind the atrium</source>
        <translation>%1 de l’auricule derrière l’oreillette</translation>
    </message>
    <message>
        <source>Working views, C-arm and patient</source>
        <translation>Incidences de travail, arceau et patient</translation>
    </message>
    <message>
        <source>C-arm and patient</source>
        <translation>Arceau et patient</translation>
    </message>
    <message>
        <source>Double ring: the simulated radiograph; drag turns it. Squares and circles: en face. Letters: working views of the table. Numbers: chosen views.</source>
        <translation>Double anneau : la radiographie simulée ; glisser la tourne. Carrés et cercles : de face. Lettres : incidences de travail du tableau. Chiffres : incidences choisies.</translation>
    </message>
    <message>
        <source>Point at a view to see what it shows; click or press Enter to take it. Squares and circles: en face. Letters: working views. Numbers: chosen views.</source>
        <translation>Pointez une incidence pour lire ce qu’elle montre ; un clic ou Entrée la choisit. Carrés et cercles : de face. Lettres : incidences de travail. Chiffres : incidences choisies.</translation>
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
    <name>RadiographView</name>
    <message>
        <source>Simulated radiograph from CT</source>
        <translation>Radiographie simulée d'après le scanner</translation>
    </message>
    <message>
        <source>Simulated from CT. Drag turns the heart, arrow keys move the C-arm by 1° (Shift: 10°), A types the angles, Home comes back, F changes what is filled with contrast medium, right drag changes the window, W finds it again, + and − change the field of view.</source>
        <translation>Simulé d'après le scanner. Glisser tourne le cœur, les flèches déplacent l'arceau de 1° (Maj : 10°), A saisit les angles, Début revient, F change ce qui est opacifié, glisser à droite change le fenêtrage, W le retrouve, + et − changent le champ.</translation>
    </message>
    <message>
        <source>Angles of the C-arm</source>
        <translation>Angles de l'arceau</translation>
    </message>
    <message>
        <source>RAO 30 CAUD 12</source>
        <translation>RAO 30 CAUD 12</translation>
    </message>
    <message>
        <source>Simulated radiograph: type the angles</source>
        <translation>Radiographie simulée : saisir les angles</translation>
    </message>
    <message>
        <source>Simulated radiograph: back to its angles</source>
        <translation>Radiographie simulée : revenir à ses angles</translation>
    </message>
    <message>
        <source>Simulated radiograph: fill another chamber</source>
        <translation>Radiographie simulée : opacifier une autre cavité</translation>
    </message>
    <message>
        <source>Simulated from CT · %1</source>
        <translation>Simulé d'après le scanner · %1</translation>
    </message>
    <message>
        <source>nothing filled: no appendage is measured</source>
        <translation>rien d'opacifié : aucun auricule n'est mesuré</translation>
    </message>
    <message>
        <source>as CT has it</source>
        <translation>tel que le scanner le montre</translation>
    </message>
    <message>
        <source>appendage filled with contrast medium</source>
        <translation>auricule opacifié</translation>
    </message>
    <message>
        <source>atrium and appendage filled with contrast medium</source>
        <translation>oreillette et auricule opacifiés</translation>
    </message>
    <message>
        <source>appendage alone</source>
        <translation>auricule seul</translation>
    </message>
    <message>
        <source>atrium and appendage alone</source>
        <translation>oreillette et auricule seuls</translation>
    </message>
    <message>
        <source>Distances from the file: source to isocentre %1, to detector %2.</source>
        <translation>Distances du fichier : de la source à l'isocentre %1, au détecteur %2.</translation>
    </message>
    <message>
        <source>Distances assumed: source to isocentre %1, to detector %2.</source>
        <translation>Distances supposées : de la source à l'isocentre %1, au détecteur %2.</translation>
    </message>
    <message>
        <source>The landing zone is put where it was drawn on the frame.</source>
        <translation>La zone d’ancrage est placée là où elle a été tracée sur l'image.</translation>
    </message>
    <message>
        <source>No file tells where the isocentre lies in the CT: the landing zone is put in the middle.</source>
        <translation>Aucun fichier ne dit où se trouve l'isocentre dans le scanner : la zone d’ancrage est placée au milieu.</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>This case has no CT: there is nothing to simulate a radiograph from.</source>
        <translation>Ce cas n'a pas de scanner : rien ne permet de simuler une radiographie.</translation>
    </message>
    <message>
        <source>Nothing is open.</source>
        <translation>Rien n'est ouvert.</translation>
    </message>
    <message>
        <source>Simulating the radiograph …</source>
        <translation>Simulation de la radiographie …</translation>
    </message>
    <message>
        <source>appendage filled</source>
        <translation>auricule opacifiée</translation>
    </message>
    <message>
        <source>atrium and appendage filled</source>
        <translation>oreillette et auricule opacifiées</translation>
    </message>
    <message>
        <source>What is filled with contrast medium</source>
        <translation>Ce qui est rempli de produit de contraste</translation>
    </message>
    <message>
        <source>What the simulated radiograph shows filled with contrast medium, or alone (key F)</source>
        <translation>Ce que la radiographie simulée montre rempli de produit de contraste, ou seul (touche F)</translation>
    </message>
    <message>
        <source>Distances as you set them: source to isocentre %1, to detector %2.</source>
        <translation>Distances telles que vous les avez réglées : source à l’isocentre %1, au détecteur %2.</translation>
    </message>
    <message>
        <source>The patient lies turned against the CT: %1.</source>
        <translation>Le patient est tourné par rapport au CT : %1.</translation>
    </message>
    <message>
        <source>%1 The place for it is on the page Projection, under C-arm and patient.</source>
        <translation>%1 Cela se règle sur la page Projection, sous Arceau et patient.</translation>
    </message>
</context>
<context>
    <name>ReadReport</name>
    <message>
        <source>The patient's ID is “%1” in the case and “%2” in the report.</source>
        <translation>Le numéro du patient est « %1 » dans le cas et « %2 » dans le rapport.</translation>
    </message>
    <message>
        <source>The patient's name is “%1” in the case and “%2” in the report.</source>
        <translation>Le nom du patient est « %1 » dans le cas et « %2 » dans le rapport.</translation>
    </message>
    <message>
        <source>The date of birth is %1 in the case and %2 in the report.</source>
        <translation>La date de naissance est %1 dans le cas et %2 dans le rapport.</translation>
    </message>
    <message>
        <source>report without a date</source>
        <translation>rapport sans date</translation>
    </message>
    <message>
        <source>report of %1</source>
        <translation>rapport du %1</translation>
    </message>
    <message>
        <source>%1 by %2</source>
        <translation>%1 par %2</translation>
    </message>
    <message>
        <source>%1 (%2)</source>
        <translation>%1 (%2)</translation>
    </message>
    <message>
        <source>stage not stated: taken as before the procedure</source>
        <translation>stade non indiqué : pris comme avant la procédure</translation>
    </message>
    <message>
        <source>way of reading not stated in full: assumed</source>
        <translation>mode de lecture non entièrement indiqué : supposé</translation>
    </message>
    <message>
        <source>computed from a perimeter or an area</source>
        <translation>calculé d’après un périmètre ou une aire</translation>
    </message>
    <message>
        <source>Take readings from a report</source>
        <translation>Reprendre les lectures d’un rapport</translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) were taken from the %1.</source>
        <translation>
            <numerusform>%n lecture a été reprise : %1.</numerusform>
            <numerusform>%n lectures ont été reprises : %1.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n reading(s) are in the case already.</source>
        <translation>
            <numerusform>%n lecture est déjà dans le cas.</numerusform>
            <numerusform>%n lectures sont déjà dans le cas.</numerusform>
        </translation>
    </message>
    <message>
        <source>the comparison table has no row for it</source>
        <translation>le tableau comparatif n’a pas de ligne pour lui</translation>
    </message>
    <message>
        <source>it does not say whether it is the ostium's or the landing zone's</source>
        <translation>il n’est pas dit s’il s’agit de l’ostium ou de la zone d’atterrissage</translation>
    </message>
    <message>
        <source>it does not say on which kind of images it was read</source>
        <translation>il n’est pas dit sur quel type d’images il a été lu</translation>
    </message>
    <message>
        <source>its unit is not known here</source>
        <translation>son unité n’est pas connue ici</translation>
    </message>
    <message>
        <source>it lies outside 1 to 120 mm</source>
        <translation>il est hors de 1 à 120 mm</translation>
    </message>
    <message>
        <source>the diameter that follows from it is in the report too</source>
        <translation>le diamètre qui en découle est aussi dans le rapport</translation>
    </message>
    <message>
        <source>%1%2, %3 %4: %5</source>
        <translation>%1%2, %3 %4 : %5</translation>
    </message>
    <message numerus="yes">
        <source>%n number(s) of the report have no place in the comparison table.</source>
        <translation>
            <numerusform>%n nombre du compte rendu n’a pas de place dans le tableau comparatif.</numerusform>
            <numerusform>%n nombres du compte rendu n’ont pas de place dans le tableau comparatif.</numerusform>
        </translation>
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
        <translation>Le fichier n'est plus là.</translation>
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
        <source>No size is chosen: compression and the chart's own clearances cannot be judged.</source>
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
        <source>Near 12 mmHg the width grows by %1 mm per mmHg (standard deviation %2); %3 % of that is this patient's own, the rest is assumed.</source>
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
    <message>
        <source>How the sizes would sit</source>
        <translation>Comment les tailles se placeraient</translation>
    </message>
    <message>
        <source>Septal crossing</source>
        <translation>Traversée septale</translation>
    </message>
    <message>
        <source> (stale)</source>
        <translation> (périmé)</translation>
    </message>
    <message>
        <source>Septal face seen from the left atrium. %1</source>
        <translation>Face septale vue de l'oreillette gauche. %1</translation>
    </message>
    <message>
        <source>picked by hand</source>
        <translation>choisie à la main</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>%1 (the plane has moved since)</source>
        <translation>%1 (le plan a bougé depuis)</translation>
    </message>
    <message>
        <source>View</source>
        <translation>Incidence</translation>
    </message>
    <message>
        <source>Plane</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>C-arm</source>
        <translation>Arceau</translation>
    </message>
    <message>
        <source>Width by CT</source>
        <translation>Largeur selon le CT</translation>
    </message>
    <message>
        <source>Chosen</source>
        <translation>Choisies</translation>
    </message>
    <message>
        <source>Named by the program</source>
        <translation>Nommées par le programme</translation>
    </message>
    <message>
        <source>Within a reach of RAO %1, LAO %2, CRA %3, CAU %4.</source>
        <translation>Dans une portée de RAO %1, LAO %2, CRA %3, CAU %4.</translation>
    </message>
    <message>
        <source>At CT the patient lay: %1.</source>
        <translation>Au CT le patient était couché : %1.</translation>
    </message>
    <message>
        <source>Turned against the CT by LAO %1, CRA %2, as stated.</source>
        <translation>Tourné par rapport au CT de LAO %1, CRA %2, comme indiqué.</translation>
    </message>
    <message>
        <source>Working projections</source>
        <translation>Incidences de travail</translation>
    </message>
    <message>
        <source>Angles are predicted from CT: confirm each view on the screen before anything rests on it.</source>
        <translation>Les angles sont prédits d’après le CT : confirmer chaque incidence à l’écran avant que quoi que ce soit en dépende.</translation>
    </message>
    <message>
        <source>Views of the C-arm, as its detector sees the patient from the front</source>
        <translation>Incidences de l’arceau, comme son détecteur voit le patient de face</translation>
    </message>
    <message>
        <source>Edge-on views by their angles</source>
        <translation>Incidences par la tranche selon leurs angles</translation>
    </message>
    <message>
        <source>Simulated from CT · %1</source>
        <translation>Simulé d’après le scanner · %1</translation>
    </message>
    <message>
        <source>the appendage as if filled with contrast medium</source>
        <translation>l’auricule comme opacifiée</translation>
    </message>
    <message>
        <source>nothing filled with contrast medium</source>
        <translation>rien d’opacifié</translation>
    </message>
    <message>
        <source>Simulated radiograph at %1, %2. Not a fluoroscopy: distances of the C-arm are assumed, and the landing zone is put in the middle.</source>
        <translation>Radiographie simulée à %1, %2. Pas une fluoroscopie : les distances de l’arceau sont supposées, et la zone de pose est mise au milieu.</translation>
    </message>
    <message>
        <source>A model of geometry: a straight body with the chart's dimensions slides into the blood that was measured and takes the form of its wall, as far as the chart's compression allows by the chart's own measure. It knows no force and no turning on the way.</source>
        <translation>Un modèle géométrique : un corps droit aux dimensions du tableau glisse dans le sang mesuré et prend la forme de sa paroi, autant que la compression du tableau le permet selon sa propre mesure. Il ne connaît ni force ni rotation en chemin.</translation>
    </message>
    <message>
        <source>From the crossing to the ostium: the straight line and, where a steerable sheath can make the way, its bend, on CT in the plane of crossing, ostium and axis.</source>
        <translation>De la ponction à l’ostium : la ligne droite et, où une gaine orientable peut faire le chemin, sa courbe, sur le scanner dans le plan de la ponction, de l’ostium et de l’axe.</translation>
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
    <message>
        <source>pulmonary artery</source>
        <translation>artère pulmonaire</translation>
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
        <source>The file does not tell where the tip of the sector lies: the middle of the region's upper edge stands for it.</source>
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
    <message>
        <source>planned %1</source>
        <translation>prévu : %1</translation>
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
    <name>SeatModel</name>
    <message>
        <source>not seen</source>
        <translation>non vu</translation>
    </message>
    <message>
        <source>pressed out %1</source>
        <translation>repoussée de %1</translation>
    </message>
    <message>
        <source>no body to seat</source>
        <translation>aucun corps à placer</translation>
    </message>
    <message>
        <source>%1 needed</source>
        <translation>%1 nécessaires</translation>
    </message>
    <message>
        <source>no room</source>
        <translation>pas de place</translation>
    </message>
    <message>
        <source>at least %1</source>
        <translation>au moins %1</translation>
    </message>
    <message>
        <source>not marked</source>
        <translation>non marquée</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>inconnu</translation>
    </message>
    <message>
        <source>overlap %1</source>
        <translation>débord %1</translation>
    </message>
    <message>
        <source>above: %1</source>
        <translation>au-dessus : %1</translation>
    </message>
    <message>
        <source>below: %1</source>
        <translation>au-dessous : %1</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1 : %2</translation>
    </message>
    <message>
        <source>nothing marked</source>
        <translation>rien de marqué</translation>
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
        <source>Reach from the ostium</source>
        <translation>Portée depuis l’ostium</translation>
    </message>
    <message>
        <source>Reach from the landing plane</source>
        <translation>Portée depuis le plan d’atterrissage</translation>
    </message>
    <message>
        <source>Beyond the artery</source>
        <translation>Au-delà de l’artère</translation>
    </message>
    <message>
        <source>Disc over the ostium</source>
        <translation>Disque sur l’ostium</translation>
    </message>
    <message>
        <source>Gaps</source>
        <translation>Espaces</translation>
    </message>
    <message>
        <source>Clearances</source>
        <translation>Distances</translation>
    </message>
    <message>
        <source>touches the wall</source>
        <translation>touche la paroi</translation>
    </message>
</context>
<context>
    <name>SeatPanel</name>
    <message>
        <source>Copy the seats as a table</source>
        <translation>Copier les assises en tableau</translation>
    </message>
    <message>
        <source>Copy reach, cover, gaps and clearances of all sizes for a spreadsheet</source>
        <translation>Copier portée, couverture, espaces et distances de toutes les tailles pour un tableur</translation>
    </message>
    <message>
        <source>Size %1, chosen</source>
        <translation>Taille %1, choisie</translation>
    </message>
    <message>
        <source>Size %1, greatest fit chance</source>
        <translation>Taille %1, plus grande chance d’ajustement</translation>
    </message>
    <message>
        <source>All sizes</source>
        <translation>Toutes les tailles</translation>
    </message>
    <message>
        <source>What this rests on</source>
        <translation>Sur quoi cela repose</translation>
    </message>
    <message>
        <source>At the decision pressure the wall is taken to lie farther out than on the CT: diameters are %1 larger.</source>
        <translation>À la pression de décision, la paroi est supposée plus en dehors que sur le scanner : les diamètres sont plus grands de %1.</translation>
    </message>
    <message>
        <source>At the decision pressure the wall is taken to lie farther in than on the CT: diameters are %1 smaller.</source>
        <translation>À la pression de décision, la paroi est supposée plus en dedans que sur le scanner : les diamètres sont plus petits de %1.</translation>
    </message>
    <message>
        <source>The sizes are being seated …</source>
        <translation>Les tailles sont en cours de placement …</translation>
    </message>
    <message>
        <source>A model of geometry: a straight body with the chart's dimensions slides into the blood that was measured and takes the form of its wall, as far as the chart's compression allows by the chart's own measure. It knows no force and no turning on the way.</source>
        <translation>Un modèle géométrique : un corps droit aux dimensions du tableau glisse dans le sang mesuré et prend la forme de sa paroi, autant que la compression du tableau le permet selon sa propre mesure. Il ne connaît ni force ni rotation en chemin.</translation>
    </message>
</context>
<context>
    <name>Seats</name>
    <message>
        <source>How the sizes would sit is told once the appendage is measured on CT.</source>
        <translation>La manière dont les tailles se placeraient est indiquée dès que l’auricule est mesurée au scanner.</translation>
    </message>
</context>
<context>
    <name>SeptalFaceView</name>
    <message>
        <source>Septal face with the map of crossing height and angle</source>
        <translation>Face septale avec la carte de la hauteur et de l'angle</translation>
    </message>
    <message>
        <source>Drag the crossing, or move it with the arrow keys (Shift: larger steps).</source>
        <translation>Glisser le point de traversée, ou le déplacer avec les flèches (Maj : pas plus grands).</translation>
    </message>
    <message>
        <source>Nothing is marked on the septum yet.

Mark on the scanner-axis sections, with the buttons above:
1. the rim of the fossa ovalis, at least four points,
2. the mitral annulus, at least three points,
3. where the leaflets meet in systole,
4. the middle of the aortic root.

The angle to the appendage follows from its marks (atrium and tip).</source>
        <translation>Rien n'est encore marqué sur le septum.

Marquer sur les coupes des axes du scanner, avec les boutons ci-dessus :
1. le bord de la fosse ovale, au moins quatre points,
2. l'anneau mitral, au moins trois points,
3. le lieu où les feuillets se rejoignent en systole,
4. le milieu de la racine aortique.

L'angle avec l'auricule suit de ses marques (oreillette et pointe).</translation>
    </message>
    <message>
        <source>The rim of the fossa ovalis is not marked yet.

Mark at least four points around it on the scanner-axis sections, with the button above.</source>
        <translation>Le bord de la fosse ovale n'est pas encore marqué.

En marquer au moins quatre points tout autour sur les coupes des axes du scanner, avec le bouton ci-dessus.</translation>
    </message>
</context>
<context>
    <name>SeptumDrawing</name>
    <message>
        <source>limit %1</source>
        <translation>limite %1</translation>
    </message>
    <message>
        <source>serves repair and closure</source>
        <translation>sert à la réparation et à la fermeture</translation>
    </message>
    <message>
        <source>serves both with a steerable sheath</source>
        <translation>sert aux deux avec une gaine orientable</translation>
    </message>
    <message>
        <source>serves the closure with a steerable sheath</source>
        <translation>sert à la fermeture avec une gaine orientable</translation>
    </message>
    <message>
        <source>serves the closure</source>
        <translation>sert à la fermeture</translation>
    </message>
    <message>
        <source>most room</source>
        <translation>le plus de place</translation>
    </message>
    <message>
        <source>aortic root</source>
        <translation>racine aortique</translation>
    </message>
    <message>
        <source>front (aortic root)</source>
        <translation>avant (racine aortique)</translation>
    </message>
    <message>
        <source>posterior wall</source>
        <translation>paroi postérieure</translation>
    </message>
    <message>
        <source>superior</source>
        <translation>supérieur</translation>
    </message>
    <message>
        <source>inferior</source>
        <translation>inférieur</translation>
    </message>
    <message>
        <source>outside the fossa</source>
        <translation>hors de la fosse</translation>
    </message>
    <message>
        <source>Solid lines: height over the plane of the mitral annulus.</source>
        <translation>Lignes pleines : hauteur au-dessus du plan de l'anneau mitral.</translation>
    </message>
    <message>
        <source>Solid lines: height over the level of coaptation, parallel to the septum.</source>
        <translation>Lignes pleines : hauteur au-dessus de la coaptation, parallèlement au septum.</translation>
    </message>
    <message>
        <source>Fill and dotted lines: angle of a straight sheath to the appendage's proximal axis; the limit is dashed.</source>
        <translation>Fond et lignes pointillées : angle d'une gaine droite avec l'axe proximal de l'auricule ; la limite est en tirets.</translation>
    </message>
    <message>
        <source>%1 over the annulus</source>
        <translation>%1 au-dessus de l'anneau</translation>
    </message>
    <message>
        <source>%1 over the coaptation</source>
        <translation>%1 au-dessus de la coaptation</translation>
    </message>
    <message>
        <source>%1 to the axis, straight</source>
        <translation>%1 de l'axe, droite</translation>
    </message>
    <message>
        <source>%1 to the axis, steerable</source>
        <translation>%1 de l'axe, orientable</translation>
    </message>
    <message>
        <source>%1 to the ostium</source>
        <translation>%1 jusqu'à l'ostium</translation>
    </message>
    <message>
        <source>bend, radius %1: arrives at %2</source>
        <translation>courbure, rayon %1 : arrive à %2</translation>
    </message>
    <message>
        <source>straight: %1, arrives at %2</source>
        <translation>droite : %1, arrive à %2</translation>
    </message>
</context>
<context>
    <name>SeptumMarkBar</name>
    <message>
        <source>Remove these points</source>
        <translation>Retirer ces points</translation>
    </message>
    <message>
        <source>%1
Key %2; drag moves a point, Delete removes the one under the pointer, Escape ends.</source>
        <translation>%1
Touche %2 ; glisser déplace un point, Suppr retire celui sous le pointeur, Échap termine.</translation>
    </message>
    <message>
        <source>Remove all points of the kind that is being marked</source>
        <translation>Retirer tous les points du genre en cours de marquage</translation>
    </message>
    <message>
        <source>%1 Escape ends.</source>
        <translation>%1 Échap termine.</translation>
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
        <translation>Les marques doivent se trouver sur les images : cliquer dans l'image.</translation>
    </message>
</context>
<context>
    <name>SeptumPage</name>
    <message>
        <source>Same crossing</source>
        <translation>Même traversée</translation>
    </message>
    <message>
        <source>Same crossing, with a steerable sheath</source>
        <translation>Même traversée, avec une gaine orientable</translation>
    </message>
    <message>
        <source>Second, lower crossing</source>
        <translation>Seconde traversée, plus basse</translation>
    </message>
    <message>
        <source>Closure last</source>
        <translation>Fermeture en dernier</translation>
    </message>
    <message>
        <source>Closure alone</source>
        <translation>Fermeture seule</translation>
    </message>
    <message>
        <source>No answer yet</source>
        <translation>Pas encore de réponse</translation>
    </message>
    <message>
        <source>The same session repairs the mitral valve</source>
        <translation>La même séance répare la valve mitrale</translation>
    </message>
    <message>
        <source>A steerable sheath is at hand</source>
        <translation>Une gaine orientable est disponible</translation>
    </message>
    <message>
        <source>Seen from the left atrium</source>
        <translation>Vu de l'oreillette gauche</translation>
    </message>
    <message>
        <source>Seen from the right atrium</source>
        <translation>Vu de l'oreillette droite</translation>
    </message>
    <message>
        <source>Side from which the septum is seen</source>
        <translation>Côté d'où le septum est vu</translation>
    </message>
    <message>
        <source>Cross where there is most room</source>
        <translation>Traverser où il y a le plus de place</translation>
    </message>
    <message>
        <source>Choose the middle of the hatched region as the crossing (key Shift+M)</source>
        <translation>Choisir le milieu de la zone hachurée comme point de traversée (touche Maj+M)</translation>
    </message>
    <message>
        <source>Give the crossing up</source>
        <translation>Abandonner le point de traversée</translation>
    </message>
    <message>
        <source>Take the chosen crossing away</source>
        <translation>Retirer le point de traversée choisi</translation>
    </message>
    <message>
        <source>Look from the other atrium</source>
        <translation>Regarder de l'autre oreillette</translation>
    </message>
    <message>
        <source>See the septum from the left or from the right atrium (key Shift+X)</source>
        <translation>Voir le septum de l'oreillette gauche ou droite (touche Maj+X)</translation>
    </message>
    <message>
        <source>Datum of the height</source>
        <translation>Référence de la hauteur</translation>
    </message>
    <message>
        <source>From where the height band of the repair counts. Published heights count from the annulus; DICOM's own height (131130) counts from the leaflets, parallel to the septum.</source>
        <translation>D'où se compte la plage de hauteur de la réparation. Les hauteurs publiées se comptent de l'anneau ; la hauteur de DICOM (131130) se compte des feuillets, parallèlement au septum.</translation>
    </message>
    <message>
        <source>Height counts</source>
        <translation>La hauteur se compte</translation>
    </message>
    <message>
        <source>Height from, mm</source>
        <translation>Hauteur de, mm</translation>
    </message>
    <message>
        <source>Height to, mm</source>
        <translation>Hauteur à, mm</translation>
    </message>
    <message>
        <source>Angle at most, degrees</source>
        <translation>Angle au plus, degrés</translation>
    </message>
    <message>
        <source>Radius of its bend, mm</source>
        <translation>Rayon de sa courbure, mm</translation>
    </message>
    <message>
        <source>Leaves the septum within, degrees</source>
        <translation>Quitte le septum à moins de, degrés</translation>
    </message>
    <message>
        <source>Defaults: 40 mm and more over the annulus was read, the range 35 to 45 mm is from memory; 30 degrees was read. Radius and departure of the sheath are assumptions: enter those of the sheath in use.</source>
        <translation>Valeurs par défaut : 40 mm et plus au-dessus de l'anneau a été lu, la plage de 35 à 45 mm est de mémoire ; 30 degrés a été lu. Le rayon et le départ de la gaine sont des hypothèses : saisir ceux de la gaine utilisée.</translation>
    </message>
    <message>
        <source>No crossing is chosen: click on the face, or take the place with most room.</source>
        <translation>Aucun point de traversée n'est choisi : cliquer sur la face, ou prendre le lieu qui a le plus de place.</translation>
    </message>
    <message>
        <source>The chosen crossing</source>
        <translation>Le point de traversée choisi</translation>
    </message>
    <message>
        <source> (being computed again)</source>
        <translation> (en cours de calcul)</translation>
    </message>
    <message>
        <source>over the annulus</source>
        <translation>au-dessus de l’anneau</translation>
    </message>
    <message>
        <source>over the coaptation</source>
        <translation>au-dessus de la coaptation</translation>
    </message>
</context>
<context>
    <name>SeptumPoint</name>
    <message>
        <source>mitral annulus</source>
        <translation>anneau mitral</translation>
    </message>
    <message>
        <source>coaptation of the leaflets</source>
        <translation>coaptation des feuillets</translation>
    </message>
    <message>
        <source>rim of the fossa</source>
        <translation>bord de la fosse</translation>
    </message>
    <message>
        <source>aortic root</source>
        <translation>racine aortique</translation>
    </message>
    <message>
        <source>Click points around the mitral annulus, at least three, better eight.</source>
        <translation>Cliquer des points autour de l'anneau mitral, au moins trois, mieux huit.</translation>
    </message>
    <message>
        <source>Click where the mitral leaflets meet in systole, one point or several along the line.</source>
        <translation>Cliquer où les feuillets mitraux se rejoignent en systole, un point ou plusieurs le long de la ligne.</translation>
    </message>
    <message>
        <source>Click points around the rim of the fossa ovalis on the septum, at least four, better eight.</source>
        <translation>Cliquer des points autour du bord de la fosse ovale sur le septum, au moins quatre, mieux huit.</translation>
    </message>
    <message>
        <source>Click the middle of the aortic root beside the septum: it tells the side that must not be crossed.</source>
        <translation>Cliquer le milieu de la racine aortique à côté du septum : elle dit le côté à ne pas traverser.</translation>
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
        <source>Written into the case's journal and its reports</source>
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
        <translation>Longueurs en mm, aires en mm², volumes en mL, pressions en mmHg : toujours, pour qu'un chiffre se lise de même sur chaque écran.</translation>
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
    <name>SheathView</name>
    <message>
        <source>Way of the sheath from the crossing to the ostium</source>
        <translation>Trajet de la gaine du point de traversée à l'ostium</translation>
    </message>
    <message>
        <source>The way of the sheath is shown once the fossa is marked and the appendage is measured.</source>
        <translation>Le trajet de la gaine est montré dès que la fosse est marquée et l'auricule mesurée.</translation>
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
        <translation>Ajustement</translation>
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
        <source>Chance that the size's band holds the width at the decision pressure</source>
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
        <source>Load a chart typed from the device's current instructions</source>
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
        <source>Device choice follows the device's current instructions for use, local protocol and law.</source>
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
        <source>Near 12 mmHg it widens by %1 mm per mmHg (± %2; %3 % of that is this patient's own, the rest is assumed).</source>
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
        <translation>ou déposez le dossier ou un cas sur cette fenêtre. Puis marquez l'oreillette et la pointe de l'auricule en deux clics.</translation>
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
        <translation>Cas gardés dans la bibliothèque d'une personne ou d'une équipe</translation>
    </message>
    <message>
        <source>Try the sample case</source>
        <translation>Voir le cas d'exemple</translation>
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
        <translation>Saisir mesures et pressions, et juger les tailles d'un tableau</translation>
    </message>
    <message>
        <source>How wide is the left atrial appendage at which depth, under which pressure, and which size fits then: every value with its uncertainty.</source>
        <translation>Quelle largeur a l'auricule gauche à quelle profondeur, sous quelle pression, et quelle taille convient alors : chaque valeur avec son incertitude.</translation>
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
    <message>
        <source>before the procedure</source>
        <translation>avant la procédure</translation>
    </message>
    <message>
        <source>before the repair</source>
        <translation>avant la réparation</translation>
    </message>
    <message>
        <source>after the repair</source>
        <translation>après la réparation</translation>
    </message>
    <message>
        <source>sheath in the appendage</source>
        <translation>gaine dans l’auricule</translation>
    </message>
    <message>
        <source>device partly deployed</source>
        <translation>dispositif partiellement déployé</translation>
    </message>
    <message>
        <source>deployed and attached</source>
        <translation>déployé et attaché</translation>
    </message>
    <message>
        <source>after release</source>
        <translation>après le largage</translation>
    </message>
    <message>
        <source>follow-up</source>
        <translation>suivi</translation>
    </message>
    <message>
        <source>CT</source>
        <translation>CT</translation>
    </message>
    <message>
        <source>2D echo</source>
        <translation>écho 2D</translation>
    </message>
    <message>
        <source>3D echo</source>
        <translation>écho 3D</translation>
    </message>
    <message>
        <source>fluoroscopy</source>
        <translation>radioscopie</translation>
    </message>
    <message>
        <source>contour</source>
        <translation>contour</translation>
    </message>
    <message>
        <source>ellipse from probe angles</source>
        <translation>ellipse par angles de sonde</translation>
    </message>
    <message>
        <source>single view</source>
        <translation>vue unique</translation>
    </message>
    <message>
        <source>perimeter-derived diameter of the landing zone</source>
        <translation>diamètre de la zone d’atterrissage dérivé du périmètre</translation>
    </message>
    <message>
        <source>area-derived diameter of the landing zone</source>
        <translation>diamètre de la zone d’atterrissage dérivé de l’aire</translation>
    </message>
    <message>
        <source>longest diameter of the landing zone</source>
        <translation>plus long diamètre de la zone d’atterrissage</translation>
    </message>
    <message>
        <source>perimeter-derived diameter of the ostium</source>
        <translation>diamètre de l’ostium dérivé du périmètre</translation>
    </message>
    <message>
        <source>longest diameter of the ostium</source>
        <translation>plus long diamètre de l’ostium</translation>
    </message>
    <message>
        <source>echo view</source>
        <translation>vue d’écho</translation>
    </message>
    <message>
        <source>spectral Doppler</source>
        <translation>Doppler spectral</translation>
    </message>
    <message>
        <source>other images</source>
        <translation>autres images</translation>
    </message>
    <message>
        <source>end-systole</source>
        <translation>télésystole</translation>
    </message>
    <message>
        <source>end-diastole</source>
        <translation>télédiastole</translation>
    </message>
    <message>
        <source>another phase</source>
        <translation>autre phase</translation>
    </message>
    <message>
        <source>unknown phase</source>
        <translation>phase inconnue</translation>
    </message>
    <message>
        <source>mitral regurgitation not yet treated</source>
        <translation>régurgitation mitrale pas encore traitée</translation>
    </message>
    <message>
        <source>filled on purpose</source>
        <translation>rempli exprès</translation>
    </message>
    <message>
        <source>as usual</source>
        <translation>comme d’habitude</translation>
    </message>
    <message>
        <source>sinus rhythm</source>
        <translation>rythme sinusal</translation>
    </message>
    <message>
        <source>atrial fibrillation</source>
        <translation>fibrillation auriculaire</translation>
    </message>
    <message>
        <source>atrial flutter</source>
        <translation>flutter auriculaire</translation>
    </message>
    <message>
        <source>paced</source>
        <translation>stimulé</translation>
    </message>
    <message>
        <source>breathing spontaneously</source>
        <translation>respiration spontanée</translation>
    </message>
    <message>
        <source>controlled ventilation</source>
        <translation>ventilation contrôlée</translation>
    </message>
    <message>
        <source>none or trace</source>
        <translation>aucune ou trace</translation>
    </message>
    <message>
        <source>mild (1+)</source>
        <translation>légère (1+)</translation>
    </message>
    <message>
        <source>moderate (2+)</source>
        <translation>modérée (2+)</translation>
    </message>
    <message>
        <source>moderate to severe (3+)</source>
        <translation>modérée à sévère (3+)</translation>
    </message>
    <message>
        <source>severe (4+)</source>
        <translation>sévère (4+)</translation>
    </message>
    <message>
        <source>systolic wave dominant</source>
        <translation>onde systolique dominante</translation>
    </message>
    <message>
        <source>systolic wave blunted</source>
        <translation>onde systolique émoussée</translation>
    </message>
    <message>
        <source>systolic wave reversed</source>
        <translation>onde systolique inversée</translation>
    </message>
    <message>
        <source>measured directly</source>
        <translation>mesurée directement</translation>
    </message>
    <message>
        <source>wedge pressure</source>
        <translation>pression capillaire bloquée</translation>
    </message>
    <message>
        <source>estimated by echo</source>
        <translation>estimée par écho</translation>
    </message>
    <message>
        <source>measured at the start of the procedure</source>
        <translation>mesurée au début de la procédure</translation>
    </message>
    <message>
        <source>sheath tip beyond the landing plane</source>
        <translation>pointe de la gaine au-delà du plan d’atterrissage</translation>
    </message>
    <message>
        <source>share of the lobe beyond the circumflex artery</source>
        <translation>part du lobe au-delà de l’artère circonflexe</translation>
    </message>
    <message>
        <source>width of the implant</source>
        <translation>largeur de l’implant</translation>
    </message>
    <message>
        <source>gap to the wall before the pull</source>
        <translation>espace à la paroi avant la traction</translation>
    </message>
    <message>
        <source>gap to the wall after the pull</source>
        <translation>espace à la paroi après la traction</translation>
    </message>
    <message>
        <source>angle of the lobe to the neck</source>
        <translation>angle du lobe au col</translation>
    </message>
    <message>
        <source>separation of disc and lobe</source>
        <translation>écart du disque et du lobe</translation>
    </message>
    <message>
        <source>lobes left uncovered</source>
        <translation>lobes non couverts</translation>
    </message>
    <message>
        <source>width of the jet past the implant</source>
        <translation>largeur du jet le long de l’implant</translation>
    </message>
    <message>
        <source>clearance to the circumflex artery</source>
        <translation>distance à l’artère circonflexe</translation>
    </message>
    <message>
        <source>clearance to the pulmonary artery</source>
        <translation>distance à l’artère pulmonaire</translation>
    </message>
    <message>
        <source>clearance to the mitral annulus</source>
        <translation>distance à l’anneau mitral</translation>
    </message>
    <message>
        <source>clearance to the ridge</source>
        <translation>distance à la crête</translation>
    </message>
    <message>
        <source>pericardial effusion</source>
        <translation>épanchement péricardique</translation>
    </message>
    <message>
        <source>mean mitral gradient</source>
        <translation>gradient mitral moyen</translation>
    </message>
    <message>
        <source>grade of mitral regurgitation</source>
        <translation>grade de régurgitation mitrale</translation>
    </message>
    <message>
        <source>pulmonary vein flow free</source>
        <translation>flux de la veine pulmonaire libre</translation>
    </message>
    <message>
        <source>thrombus on the device</source>
        <translation>thrombus sur le dispositif</translation>
    </message>
    <message>
        <source>hole left in the septum</source>
        <translation>trou laissé dans le septum</translation>
    </message>
    <message>
        <source>direction of the longest diameter</source>
        <translation>direction du plus long diamètre</translation>
    </message>
    <message>
        <source>ostium</source>
        <translation>ostium</translation>
    </message>
    <message>
        <source>landing zone</source>
        <translation>zone d’atterrissage</translation>
    </message>
    <message>
        <source>landing zone %1</source>
        <translation>zone d’atterrissage %1</translation>
    </message>
    <message>
        <source>appendage</source>
        <translation>auricule</translation>
    </message>
    <message>
        <source>height over the plane of the mitral annulus</source>
        <translation>hauteur au-dessus du plan de l'anneau mitral</translation>
    </message>
    <message>
        <source>height over the level of coaptation, parallel to the septum</source>
        <translation>hauteur au-dessus de la coaptation, parallèlement au septum</translation>
    </message>
    <message>
        <source>distance to the ostium's centre</source>
        <translation>distance au centre de l'ostium</translation>
    </message>
    <message>
        <source>angle of a straight sheath to the proximal axis</source>
        <translation>angle d'une gaine droite avec l'axe proximal</translation>
    </message>
    <message>
        <source>angle of a steerable sheath to the proximal axis</source>
        <translation>angle d'une gaine orientable avec l'axe proximal</translation>
    </message>
    <message>
        <source>septal crossing</source>
        <translation>traversée septale</translation>
    </message>
    <message>
        <source>C-arm, LAO above 0°</source>
        <translation>arceau, LAO au-dessus de 0°</translation>
    </message>
    <message>
        <source>C-arm, cranial above 0°</source>
        <translation>arceau, crânial au-dessus de 0°</translation>
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
    <name>ViewPlanner</name>
    <message>
        <source>The appendage is not measured on CT: there is nothing to plan views for. Mark atrium and tip on the scanner axes.</source>
        <translation>L’auricule n’est pas mesurée au CT : il n’y a rien pour quoi prévoir des incidences. Marquer l’oreillette et la pointe sur les axes du scanner.</translation>
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
    <message>
        <source>Set the reach of the C-arm</source>
        <translation>Régler la portée de l’arceau</translation>
    </message>
    <message>
        <source>Say how the patient will lie</source>
        <translation>Indiquer la position du patient</translation>
    </message>
    <message>
        <source>Choose a working view</source>
        <translation>Choisir une incidence de travail</translation>
    </message>
    <message>
        <source>Give up a working view</source>
        <translation>Abandonner une incidence de travail</translation>
    </message>
</context>
</TS>
