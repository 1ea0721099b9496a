<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Ears</name>
    <message>
        <source>%1 dBA</source>
        <translation>%1 dBA</translation>
    </message>
    <message>
        <source>over 24 h</source>
        <translation>über 24 h</translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation>%1 h</translation>
    </message>
    <message>
        <source>under 1 min</source>
        <translation>unter 1 min</translation>
    </message>
    <message>
        <source>%1 min</source>
        <translation>%1 min</translation>
    </message>
    <message>
        <source>turned 30° to stage left %1</source>
        <translation>um 30° nach Bühne links gedreht %1</translation>
    </message>
    <message>
        <source>turned 30° to stage right %1</source>
        <translation>um 30° nach Bühne rechts gedreht %1</translation>
    </message>
    <message>
        <source>1 m upstage %1</source>
        <translation>1 m nach hinten %1</translation>
    </message>
    <message>
        <source>Margin as drawn %1, then %2.</source>
        <translation>Reserve wie gezeichnet %1, dann %2.</translation>
    </message>
    <message>
        <source>%1: %2, then %3.</source>
        <translation>%1: %2, dann %3.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1 sends change.</source>
        <translation>%1 Sends ändern sich.</translation>
    </message>
    <message>
        <source>Wash at %1: %2, then %3.</source>
        <translation>Bühnenschall bei %1: %2, dann %3.</translation>
    </message>
    <message>
        <source>%1: at the ear %2, then %3; hear margin %4, then %5.</source>
        <translation>%1: am Ohr %2, dann %3; Hörreserve %4, dann %5.</translation>
    </message>
    <message>
        <source>nobody has to answer</source>
        <translation>niemand muss nachziehen</translation>
    </message>
    <message>
        <source>Nothing on this stage can get louder.</source>
        <translation>Auf dieser Bühne kann nichts lauter werden.</translation>
    </message>
    <message>
        <source>%1 dB</source>
        <translation>%1 dB</translation>
    </message>
    <message>
        <source>Nothing of her own that matters is masked.</source>
        <translation>Nichts Eigenes, auf das es ankommt, wird verdeckt.</translation>
    </message>
    <message>
        <source>%1: %2, then %3 instead of %4. %5</source>
        <translation>%1: %2, dann %3 statt %4. %5</translation>
    </message>
    <message>
        <source>%1 %2 dB, then %3 dB</source>
        <translation>%1 %2 dB, dann %3 dB</translation>
    </message>
    <message>
        <source>Sends in %1: %2.</source>
        <translation>Sends in %1: %2.</translation>
    </message>
    <message>
        <source>turns up %1 dB</source>
        <translation>dreht um %1 dB auf</translation>
    </message>
    <message>
        <source>Mix %1</source>
        <translation>Mix %1</translation>
    </message>
    <message>
        <source>%1: each answer calls for another, and there is no end. At first: %2.</source>
        <translation>%1: Jede Antwort ruft die nächste hervor, und es nimmt kein Ende. Zuerst: %2.</translation>
    </message>
    <message>
        <source>%1: %2. Margin %3, then %4.</source>
        <translation>%1: %2. Reserve %3, dann %4.</translation>
    </message>
    <message>
        <source>No levels let everybody hear themselves that well. In each other&apos;s way are: %1.</source>
        <translation>Mit keinen Pegeln hören sich alle so gut. Einander im Weg sind: %1.</translation>
    </message>
    <message>
        <source>If one gets 3 dB louder: what each player&apos;s hear margin loses, and how far she turns up to hear as before.</source>
        <translation>Wenn eines 3 dB lauter wird: was jeder an Hörreserve verliert und wie weit dann aufgedreht wird, um sich wie zuvor zu hören.</translation>
    </message>
    <message>
        <source>%1: made by %2.</source>
        <translation>%1: erzeugt von %2.</translation>
    </message>
    <message>
        <source>What helps: %1.</source>
        <translation>Was hilft: %1.</translation>
    </message>
    <message>
        <source>No stage loudspeaker is heard at %1.</source>
        <translation>Bei %1 ist kein Bühnenlautsprecher zu hören.</translation>
    </message>
</context>
<context>
    <name>Inputs</name>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>&quot;%1&quot;: expected yes or no</source>
        <translation>„%1“: ja oder nein erwartet</translation>
    </message>
    <message>
        <source>&quot;%1&quot;: expected a channel number from 1 to 9999</source>
        <translation>„%1“: eine Kanalnummer von 1 bis 9999 erwartet</translation>
    </message>
    <message>
        <source>normal</source>
        <translation>normal</translation>
    </message>
    <message>
        <source>inverted</source>
        <translation>gedreht</translation>
    </message>
    <message>
        <source>&quot;%1&quot;: expected normal or inverted</source>
        <translation>„%1“: normal oder gedreht erwartet</translation>
    </message>
    <message>
        <source>&quot;%1&quot;: no player of this name on the plan</source>
        <translation>„%1“: kein Spieler dieses Namens auf dem Plan</translation>
    </message>
    <message>
        <source>line</source>
        <translation>Line</translation>
    </message>
    <message>
        <source>pickup</source>
        <translation>Tonabnehmer</translation>
    </message>
    <message>
        <source>&quot;%1&quot;: expected line, pickup or a pattern such as cardioid</source>
        <translation>„%1“: Line, Tonabnehmer oder eine Charakteristik wie Niere erwartet</translation>
    </message>
</context>
<context>
    <name>Inspector</name>
    <message>
        <source>first order by number</source>
        <translation>erster Ordnung nach Zahl</translation>
    </message>
    <message>
        <source>measured table</source>
        <translation>gemessene Tabelle</translation>
    </message>
    <message>
        <source>A hand around the grille: omni, with a peak at 1.6 kHz (common practice, no source)</source>
        <translation>Eine Hand um den Korb: Kugel, mit einer Spitze bei 1,6 kHz (übliche Praxis, ohne Quelle)</translation>
    </message>
    <message>
        <source>a in a + (1 - a) cos: 1 omni, 0.5 cardioid, 0 figure-8</source>
        <translation>a in a + (1 - a) cos: 1 Kugel, 0,5 Niere, 0 Acht</translation>
    </message>
    <message>
        <source>How far the played signal stands above what the air makes through a mode of 0 dB</source>
        <translation>Wie weit das gespielte Signal über dem steht, was die Luft durch eine Eigenschwingung von 0 dB erzeugt</translation>
    </message>
    <message>
        <source>Tape or a plug tames the air modes. Tape can mark a finish: test first, take it off after the show.</source>
        <translation>Klebeband oder ein Stopfen zähmt die Luftschwingungen. Klebeband kann Lack zeichnen: erst probieren, nach der Show abnehmen.</translation>
    </message>
    <message>
        <source>nobody</source>
        <translation>niemand</translation>
    </message>
    <message>
        <source>Level at the microphone in loud playing; for a pickup the reference of its isolation</source>
        <translation>Pegel am Mikrofon bei lautem Spiel; bei einem Tonabnehmer der Bezug seiner Isolation</translation>
    </message>
    <message>
        <source>omni</source>
        <translation>Kugel</translation>
    </message>
    <message>
        <source>coverage angles</source>
        <translation>Abstrahlwinkel</translation>
    </message>
    <message>
        <source>cap on a sphere</source>
        <translation>Kappe auf einer Kugel</translation>
    </message>
    <message>
        <source>Full angle between the -6 dB directions</source>
        <translation>Voller Winkel zwischen den Richtungen mit -6 dB</translation>
    </message>
    <message>
        <source>Loudspeaker</source>
        <translation>Lautsprecher</translation>
    </message>
    <message>
        <source>Mix</source>
        <translation>Mix</translation>
    </message>
    <message>
        <source>From the centre line, stage left positive</source>
        <translation>Von der Mittellinie, Bühne links positiv</translation>
    </message>
    <message>
        <source>Of the acoustic centre above the stage floor, even on a riser</source>
        <translation>Der akustischen Mitte über dem Bühnenboden, auch auf einem Podest</translation>
    </message>
    <message>
        <source>0 faces the audience, 90 faces stage left</source>
        <translation>0 zeigt zum Publikum, 90 nach Bühne links</translation>
    </message>
    <message>
        <source>Highest level at 1 m on axis; empty: not known</source>
        <translation>Höchster Pegel in 1 m auf der Achse; leer: nicht bekannt</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keiner</translation>
    </message>
    <message>
        <source>loudspeakers</source>
        <translation>Lautsprecher</translation>
    </message>
    <message>
        <source>in-ears</source>
        <translation>In-Ears</translation>
    </message>
    <message>
        <source>no monitor</source>
        <translation>kein Monitor</translation>
    </message>
    <message>
        <source>Of the instrument or voice itself in loud playing; empty: none</source>
        <translation>Des Instruments oder der Stimme selbst bei lautem Spiel; leer: keiner</translation>
    </message>
    <message>
        <source>Above the riser or floor under the player</source>
        <translation>Über dem Podest oder Boden, auf dem gespielt wird</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>Where the surface stands; empty: there is none</source>
        <translation>Wo die Fläche steht; leer: es gibt keine</translation>
    </message>
    <message>
        <source>Volume and reverberation time; empty: open air</source>
        <translation>Volumen und Nachhallzeit; leer: im Freien</translation>
    </message>
    <message>
        <source>Year-month-day, e.g. 2031-05-14</source>
        <translation>Jahr-Monat-Tag, z. B. 2031-05-14</translation>
    </message>
    <message>
        <source>metres</source>
        <translation>Meter</translation>
    </message>
    <message>
        <source>feet and inches</source>
        <translation>Fuß und Zoll</translation>
    </message>
    <message>
        <source>Converters and processing, from microphone to loudspeaker</source>
        <translation>Wandler und Bearbeitung, vom Mikrofon zum Lautsprecher</translation>
    </message>
    <message>
        <source>How many stages, each a little off, the margin to count on is drawn from</source>
        <translation>Aus wie vielen Aufbauten, jeder ein wenig daneben, die verlässliche Reserve gezogen wird</translation>
    </message>
    <message>
        <source>0 reflects everything, 1 is free air</source>
        <translation>0 wirft alles zurück, 1 ist freie Luft</translation>
    </message>
    <message>
        <source>Back wall by octaves</source>
        <translation>Rückwand nach Oktaven</translation>
    </message>
    <message>
        <source>Front wall by octaves</source>
        <translation>Vorderwand nach Oktaven</translation>
    </message>
    <message>
        <source>Left wall by octaves</source>
        <translation>Linke Wand nach Oktaven</translation>
    </message>
    <message>
        <source>Right wall by octaves</source>
        <translation>Rechte Wand nach Oktaven</translation>
    </message>
    <message>
        <source>Ceiling by octaves</source>
        <translation>Decke nach Oktaven</translation>
    </message>
    <message>
        <source>normal</source>
        <translation>normal</translation>
    </message>
    <message>
        <source>inverted</source>
        <translation>gedreht</translation>
    </message>
    <message>
        <source>Hz</source>
        <translation>Hz</translation>
    </message>
    <message>
        <source>Butterworth corner; empty: none</source>
        <translation>Butterworth-Grenzfrequenz; leer: keine</translation>
    </message>
    <message>
        <source>6 dB an octave for each order</source>
        <translation>6 dB je Oktave für jede Ordnung</translation>
    </message>
    <message>
        <source>Butterworth high-pass; empty: none</source>
        <translation>Butterworth-Hochpass; leer: keiner</translation>
    </message>
    <message>
        <source>Butterworth low-pass; empty: none</source>
        <translation>Butterworth-Tiefpass; leer: keiner</translation>
    </message>
    <message>
        <source>Stage left</source>
        <translation>Bühne links</translation>
    </message>
    <message>
        <source>Upstage</source>
        <translation>Nach hinten</translation>
    </message>
    <message>
        <source>Equaliser</source>
        <translation>Equalizer</translation>
    </message>
    <message>
        <source>Notches</source>
        <translation>Kerbfilter</translation>
    </message>
    <message>
        <source>Q</source>
        <translation>Q</translation>
    </message>
    <message>
        <source>dB</source>
        <translation>dB</translation>
    </message>
    <message>
        <source>Response table</source>
        <translation>Tabelle des Frequenzgangs</translation>
    </message>
    <message>
        <source>Set response table</source>
        <translation>Tabelle des Frequenzgangs setzen</translation>
    </message>
    <message>
        <source>row %1: expected a frequency above the one before</source>
        <translation>Zeile %1: eine Frequenz über der vorigen erwartet</translation>
    </message>
    <message>
        <source>Body modes</source>
        <translation>Eigenschwingungen</translation>
    </message>
    <message>
        <source>Set body modes</source>
        <translation>Eigenschwingungen setzen</translation>
    </message>
    <message>
        <source>Air, 0 or 1</source>
        <translation>Luft, 0/1</translation>
    </message>
    <message>
        <source>Set corners</source>
        <translation>Ecken setzen</translation>
    </message>
    <message>
        <source>expected three corners or more whose edges do not cross</source>
        <translation>drei oder mehr Ecken erwartet, deren Kanten sich nicht kreuzen</translation>
    </message>
    <message>
        <source>Set absorption</source>
        <translation>Absorption setzen</translation>
    </message>
    <message>
        <source>Octave, Hz</source>
        <translation>Oktave, Hz</translation>
    </message>
    <message>
        <source>Absorption</source>
        <translation>Absorption</translation>
    </message>
    <message>
        <source>expected octaves 63, 125 .. 8000 Hz, each once</source>
        <translation>Oktaven 63, 125 .. 8000 Hz erwartet, jede einmal</translation>
    </message>
    <message>
        <source>Response</source>
        <translation>Frequenzgang</translation>
    </message>
    <message>
        <source>High-pass</source>
        <translation>Hochpass</translation>
    </message>
    <message>
        <source>High-pass order</source>
        <translation>Ordnung des Hochpasses</translation>
    </message>
    <message>
        <source>Low corner</source>
        <translation>Untere Grenze</translation>
    </message>
    <message>
        <source>High corner</source>
        <translation>Obere Grenze</translation>
    </message>
    <message>
        <source>Low order</source>
        <translation>Untere Ordnung</translation>
    </message>
    <message>
        <source>High order</source>
        <translation>Obere Ordnung</translation>
    </message>
    <message>
        <source>Microphone</source>
        <translation>Mikrofon</translation>
    </message>
    <message>
        <source>Pickup and body</source>
        <translation>Tonabnehmer und Korpus</translation>
    </message>
    <message>
        <source>Input</source>
        <translation>Eingang</translation>
    </message>
    <message>
        <source>Place and aim</source>
        <translation>Ort und Richtung</translation>
    </message>
    <message>
        <source>Channel settings</source>
        <translation>Kanaleinstellungen</translation>
    </message>
    <message>
        <source>For the patch</source>
        <translation>Für die Verkabelung</translation>
    </message>
    <message>
        <source>Pattern</source>
        <translation>Richtcharakteristik</translation>
    </message>
    <message>
        <source>Spectrum</source>
        <translation>Spektrum</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Stand</source>
        <translation>Stativ</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>a</source>
        <translation>a</translation>
    </message>
    <message>
        <source>Isolation</source>
        <translation>Isolation</translation>
    </message>
    <message>
        <source>Between modes</source>
        <translation>Zwischen den Schwingungen</translation>
    </message>
    <message>
        <source>Cover takes</source>
        <translation>Abdeckung nimmt</translation>
    </message>
    <message>
        <source>Loud playing</source>
        <translation>Lautes Spiel</translation>
    </message>
    <message>
        <source>Yaw</source>
        <translation>Drehung</translation>
    </message>
    <message>
        <source>Pitch</source>
        <translation>Neigung</translation>
    </message>
    <message>
        <source>°</source>
        <translation>°</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>Channel</source>
        <translation>Kanal</translation>
    </message>
    <message>
        <source>Cupped by a hand</source>
        <translation>Mit der Hand umfasst</translation>
    </message>
    <message>
        <source>Sound holes covered</source>
        <translation>Schalllöcher abgedeckt</translation>
    </message>
    <message>
        <source>48 V phantom</source>
        <translation>48 V Phantomspeisung</translation>
    </message>
    <message>
        <source>DI box</source>
        <translation>DI-Box</translation>
    </message>
    <message>
        <source>Polarity</source>
        <translation>Polarität</translation>
    </message>
    <message>
        <source>Player</source>
        <translation>Spieler</translation>
    </message>
    <message>
        <source>Directivity</source>
        <translation>Richtwirkung</translation>
    </message>
    <message>
        <source>Signal</source>
        <translation>Signal</translation>
    </message>
    <message>
        <source>Type</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Horizontal</source>
        <translation>Waagrecht</translation>
    </message>
    <message>
        <source>Vertical</source>
        <translation>Senkrecht</translation>
    </message>
    <message>
        <source>Depth behind</source>
        <translation>Dämpfung nach hinten</translation>
    </message>
    <message>
        <source>Roll</source>
        <translation>Rollen</translation>
    </message>
    <message>
        <source>Trim</source>
        <translation>Abgleich</translation>
    </message>
    <message>
        <source>Delay</source>
        <translation>Verzögerung</translation>
    </message>
    <message>
        <source>ms</source>
        <translation>ms</translation>
    </message>
    <message>
        <source>Loudest</source>
        <translation>Am lautesten</translation>
    </message>
    <message>
        <source>Cabinet width</source>
        <translation>Breite der Box</translation>
    </message>
    <message>
        <source>Cabinet height</source>
        <translation>Höhe der Box</translation>
    </message>
    <message>
        <source>Sphere radius</source>
        <translation>Radius der Kugel</translation>
    </message>
    <message>
        <source>Cap radius</source>
        <translation>Radius der Kappe</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Backline</source>
        <translation>Backline</translation>
    </message>
    <message>
        <source>Place in the house</source>
        <translation>Platz im Saal</translation>
    </message>
    <message>
        <source>Mark</source>
        <translation>Markierung</translation>
    </message>
    <message>
        <source>Riser</source>
        <translation>Podest</translation>
    </message>
    <message>
        <source>Text</source>
        <translation>Text</translation>
    </message>
    <message>
        <source>Seal of in-ears</source>
        <translation>Dämpfung der In-Ears</translation>
    </message>
    <message>
        <source>Looks</source>
        <translation>Blickt</translation>
    </message>
    <message>
        <source>Level at 1 m</source>
        <translation>Pegel in 1 m</translation>
    </message>
    <message>
        <source>dBA</source>
        <translation>dBA</translation>
    </message>
    <message>
        <source>Own sound at the ear</source>
        <translation>Eigener Klang am Ohr</translation>
    </message>
    <message>
        <source>Ear height</source>
        <translation>Ohrhöhe</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>Hears by</source>
        <translation>Hört über</translation>
    </message>
    <message>
        <source>Surfaces</source>
        <translation>Flächen</translation>
    </message>
    <message>
        <source>Room</source>
        <translation>Raum</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Show</translation>
    </message>
    <message>
        <source>System</source>
        <translation>Anlage</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>What may be off</source>
        <translation>Was abweichen kann</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>Act</source>
        <translation>Besetzung</translation>
    </message>
    <message>
        <source>Venue</source>
        <translation>Spielort</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Contact</source>
        <translation>Kontakt</translation>
    </message>
    <message>
        <source>Phone</source>
        <translation>Telefon</translation>
    </message>
    <message>
        <source>E-mail</source>
        <translation>E-Mail</translation>
    </message>
    <message>
        <source>Latency</source>
        <translation>Latenz</translation>
    </message>
    <message>
        <source>Target margin</source>
        <translation>Zielreserve</translation>
    </message>
    <message>
        <source>Front-of-house target</source>
        <translation>Ziel im Saal</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Luftfeuchte</translation>
    </message>
    <message>
        <source>Pressure</source>
        <translation>Luftdruck</translation>
    </message>
    <message>
        <source>Aims, ±</source>
        <translation>Richtungen, ±</translation>
    </message>
    <message>
        <source>Sends, ±</source>
        <translation>Sends, ±</translation>
    </message>
    <message>
        <source>Temperature, ±</source>
        <translation>Temperatur, ±</translation>
    </message>
    <message>
        <source>Loudspeaker phase, ±</source>
        <translation>Lautsprecherphase, ±</translation>
    </message>
    <message>
        <source>Floor absorbs</source>
        <translation>Boden schluckt</translation>
    </message>
    <message>
        <source>°C</source>
        <translation>°C</translation>
    </message>
    <message>
        <source>%</source>
        <translation>%</translation>
    </message>
    <message>
        <source>kPa</source>
        <translation>kPa</translation>
    </message>
    <message>
        <source>Places, ±</source>
        <translation>Orte, ±</translation>
    </message>
    <message>
        <source>Draws</source>
        <translation>Ziehungen</translation>
    </message>
    <message>
        <source>Lengths in</source>
        <translation>Längen in</translation>
    </message>
    <message>
        <source>Back wall</source>
        <translation>Rückwand</translation>
    </message>
    <message>
        <source>Front wall</source>
        <translation>Vorderwand</translation>
    </message>
    <message>
        <source>Left wall</source>
        <translation>Linke Wand</translation>
    </message>
    <message>
        <source>Right wall</source>
        <translation>Rechte Wand</translation>
    </message>
    <message>
        <source>Ceiling</source>
        <translation>Decke</translation>
    </message>
    <message>
        <source>Back wall absorbs</source>
        <translation>Rückwand schluckt</translation>
    </message>
    <message>
        <source>Front wall absorbs</source>
        <translation>Vorderwand schluckt</translation>
    </message>
    <message>
        <source>Left wall absorbs</source>
        <translation>Linke Wand schluckt</translation>
    </message>
    <message>
        <source>Right wall absorbs</source>
        <translation>Rechte Wand schluckt</translation>
    </message>
    <message>
        <source>Ceiling absorbs</source>
        <translation>Decke schluckt</translation>
    </message>
    <message>
        <source>m³</source>
        <translation>m³</translation>
    </message>
    <message>
        <source>s</source>
        <translation>s</translation>
    </message>
    <message>
        <source>Volume</source>
        <translation>Volumen</translation>
    </message>
    <message>
        <source>Reverberation</source>
        <translation>Nachhall</translation>
    </message>
    <message>
        <source>Set equaliser</source>
        <translation>Equalizer setzen</translation>
    </message>
    <message>
        <source>Set notches</source>
        <translation>Kerbfilter setzen</translation>
    </message>
    <message>
        <source>Stage corners</source>
        <translation>Ecken der Bühne</translation>
    </message>
    <message>
        <source>Riser corners</source>
        <translation>Ecken des Podests</translation>
    </message>
    <message>
        <source>Floor by octaves</source>
        <translation>Boden nach Oktaven</translation>
    </message>
    <message>
        <source>A line input makes no loop; it may stand on the plan or only in the input list</source>
        <translation>Ein Line-Eingang bildet keine Schleife; er kann auf dem Plan stehen oder nur in der Eingangsliste</translation>
    </message>
    <message>
        <source>On the plan</source>
        <translation>Auf dem Plan</translation>
    </message>
    <message>
        <source>Spectrum by third-octave bands</source>
        <translation>Spektrum nach Terzbändern</translation>
    </message>
    <message>
        <source>Set spectrum</source>
        <translation>Spektrum setzen</translation>
    </message>
    <message>
        <source>Band, Hz</source>
        <translation>Band, Hz</translation>
    </message>
    <message>
        <source>expected third-octave bands 20, 25, 31.5 .. 20000 Hz, each once</source>
        <translation>Terzbänder 20, 25, 31,5 .. 20000 Hz erwartet, jedes einmal</translation>
    </message>
    <message>
        <source>expected one band at least; without any there is no sound</source>
        <translation>wenigstens ein Band erwartet; ohne gibt es keinen Klang</translation>
    </message>
    <message>
        <source>Mixes</source>
        <translation>Mixe</translation>
    </message>
    <message>
        <source>The mixes that play through it</source>
        <translation>Die Mixe, die über ihn spielen</translation>
    </message>
    <message>
        <source>The part that its figures come from; nothing is computed from this name</source>
        <translation>Das Teil, aus dem seine Werte stammen; aus diesem Namen wird nichts berechnet</translation>
    </message>
    <message>
        <source>Preset</source>
        <translation>Vorgabe</translation>
    </message>
    <message>
        <source>How the sound is spread over frequency; its level is told on its own</source>
        <translation>Wie sich der Klang über die Frequenz verteilt; sein Pegel steht für sich</translation>
    </message>
    <message>
        <source>It is locked: unlock it to change its corners.</source>
        <translation>Es ist gesperrt: entsperren, um seine Ecken zu ändern.</translation>
    </message>
    <message>
        <source>pink</source>
        <translation>rosa</translation>
    </message>
    <message>
        <source>voice</source>
        <translation>Stimme</translation>
    </message>
    <message>
        <source>strings</source>
        <translation>Streicher</translation>
    </message>
    <message>
        <source>plucked</source>
        <translation>gezupft</translation>
    </message>
    <message>
        <source>bass</source>
        <translation>Bass</translation>
    </message>
    <message>
        <source>third-octave bands</source>
        <translation>Terzbänder</translation>
    </message>
    <message>
        <source>microphone</source>
        <translation>Mikrofon</translation>
    </message>
    <message>
        <source>pickup</source>
        <translation>Tonabnehmer</translation>
    </message>
    <message>
        <source>line</source>
        <translation>Line</translation>
    </message>
    <message>
        <source>Loudspeakers</source>
        <translation>Lautsprecher</translation>
    </message>
    <message>
        <source>The loudspeakers that play this mix</source>
        <translation>Die Lautsprecher, die diesen Mix spielen</translation>
    </message>
    <message>
        <source>Another number draws other stages; the same one always draws the same</source>
        <translation>Eine andere Zahl zieht andere Bühnen; dieselbe zieht immer dieselben</translation>
    </message>
    <message>
        <source>Seed</source>
        <translation>Startzahl</translation>
    </message>
</context>
<context>
    <name>Plan</name>
    <message>
        <source>This part cannot be placed: %1</source>
        <translation>Dieses Teil lässt sich nicht setzen: %1</translation>
    </message>
    <message>
        <source>%1 %2 objects</source>
        <translation>%1 %2 Objekte</translation>
    </message>
    <message>
        <source>back wall</source>
        <translation>Rückwand</translation>
    </message>
    <message>
        <source>front wall</source>
        <translation>Vorderwand</translation>
    </message>
    <message>
        <source>left wall</source>
        <translation>linke Wand</translation>
    </message>
    <message>
        <source>right wall</source>
        <translation>rechte Wand</translation>
    </message>
    <message>
        <source>AUDIENCE</source>
        <translation>PUBLIKUM</translation>
    </message>
    <message>
        <source>UPSTAGE</source>
        <translation>HINTERBÜHNE</translation>
    </message>
    <message>
        <source>STAGE LEFT</source>
        <translation>BÜHNE LINKS</translation>
    </message>
    <message>
        <source>STAGE RIGHT</source>
        <translation>BÜHNE RECHTS</translation>
    </message>
    <message>
        <source>in the house, from the stage edge: %1</source>
        <translation>im Saal, ab Bühnenkante: %1</translation>
    </message>
    <message>
        <source>gain left before it rings, dB</source>
        <translation>Reserve bis zum Pfeifen, dB</translation>
    </message>
    <message>
        <source>gain left with the loudspeaker here, dB</source>
        <translation>Reserve mit dem Lautsprecher hier, dB</translation>
    </message>
    <message>
        <source>level at ear height, %1</source>
        <translation>Pegel in Ohrhöhe, %1</translation>
    </message>
    <message>
        <source>stage wash, %1</source>
        <translation>Bühnenschall, %1</translation>
    </message>
    <message>
        <source>%1 to %2: this path alone leaves %3, worst at %4</source>
        <translation>%1 zu %2: dieser Weg allein lässt %3, am schlimmsten bei %4</translation>
    </message>
    <message>
        <source>The stage rings already without this input: turn others down first.</source>
        <translation>Die Bühne pfeift schon ohne diesen Eingang: erst andere leiser drehen.</translation>
    </message>
    <message>
        <source>This makes no loop: nothing of it comes back.</source>
        <translation>Hier entsteht keine Schleife: nichts kommt zurück.</translation>
    </message>
    <message>
        <source>Nothing sounds here.</source>
        <translation>Hier klingt nichts.</translation>
    </message>
    <message>
        <source>%1 dBA</source>
        <translation>%1 dBA</translation>
    </message>
    <message>
        <source>%1 dB</source>
        <translation>%1 dB</translation>
    </message>
    <message>
        <source>%1 left, worst at %2</source>
        <translation>%1 übrig, am schlimmsten bei %2</translation>
    </message>
    <message>
        <source>%1 left</source>
        <translation>%1 übrig</translation>
    </message>
    <message>
        <source>Stage plan</source>
        <translation>Bühnenplan</translation>
    </message>
    <message>
        <source>%1, bearing %2, %3 ms</source>
        <translation>%1, Richtung %2, %3 ms</translation>
    </message>
    <message>
        <source>, %1 waves at %2</source>
        <translation>, %1 Wellen bei %2</translation>
    </message>
    <message>
        <source>%1 to %2: %3</source>
        <translation>%1 zu %2: %3</translation>
    </message>
    <message>
        <source>, %1 off the microphone&apos;s axis</source>
        <translation>, %1 neben der Achse des Mikrofons</translation>
    </message>
    <message>
        <source>, %1 off the loudspeaker&apos;s axis</source>
        <translation>, %1 neben der Achse des Lautsprechers</translation>
    </message>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>%1 ft</source>
        <translation>%1 ft</translation>
    </message>
    <message>
        <source>Feedback map: %1</source>
        <translation>Rückkopplungskarte: %1</translation>
    </message>
    <message>
        <source>Loudspeaker map: %1</source>
        <translation>Lautsprecherkarte: %1</translation>
    </message>
    <message>
        <source>Level map: %1</source>
        <translation>Pegelkarte: %1</translation>
    </message>
    <message>
        <source>Wash map: all stage loudspeakers</source>
        <translation>Saalkarte: alle Lautsprecher der Bühne</translation>
    </message>
    <message>
        <source>%1, at %2</source>
        <translation>%1, bei %2</translation>
    </message>
    <message>
        <source>%1, band %2</source>
        <translation>%1, Band %2</translation>
    </message>
    <message>
        <source>%1, worst of all</source>
        <translation>%1, je das Schlimmste</translation>
    </message>
    <message>
        <source>, grid %1</source>
        <translation>, Raster %1</translation>
    </message>
</context>
<context>
    <name>QMessageBox</name>
    <message>
        <source>Howlmap</source>
        <translation>Howlmap</translation>
    </message>
</context>
<context>
    <name>Sheet</name>
    <message>
        <source>page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>page %1</source>
        <translation>Seite %1</translation>
    </message>
    <message>
        <source>Untitled show</source>
        <translation>Show ohne Titel</translation>
    </message>
    <message>
        <source>Contact: %1</source>
        <translation>Kontakt: %1</translation>
    </message>
    <message>
        <source>Ring-out list, most likely first</source>
        <translation>Liste zum Einpfeifen, Wahrscheinlichstes zuerst</translation>
    </message>
    <message>
        <source>Changed since %1</source>
        <translation>Geändert seit %1</translation>
    </message>
    <message>
        <source>Nothing that matters for patching, placing or equalising.</source>
        <translation>Nichts, was für Verkabeln, Stellen oder Entzerren zählt.</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>version of %1</source>
        <translation>Stand vom %1</translation>
    </message>
    <message>
        <source>Mix %1  %2</source>
        <translation>Mix %1  %2</translation>
    </message>
    <message>
        <source>  -  for %1</source>
        <translation>  -  für %1</translation>
    </message>
    <message>
        <source>  -  on %1</source>
        <translation>  -  auf %1</translation>
    </message>
    <message>
        <source>%1 %2 (ch %3)</source>
        <translation>%1 %2 (Kanal %3)</translation>
    </message>
    <message>
        <source>no sends</source>
        <translation>keine Sends</translation>
    </message>
    <message>
        <source>polarity normal, no high-pass, no notches</source>
        <translation>Polarität normal, kein Hochpass, keine Kerbfilter</translation>
    </message>
    <message>
        <source>Map: how much gain channel %1, %2, has left before it rings if it stood there, everything else as drawn.</source>
        <translation>Karte: wie viel Reserve Kanal %1, %2, bis zum Pfeifen hätte, stünde er dort, alles andere wie gezeichnet.</translation>
    </message>
    <message>
        <source>About this show</source>
        <translation>Über diese Show</translation>
    </message>
    <message>
        <source>How often a band is the first to ring if the stage is set up by hand after this plan, never quite alike, and the loop that most likely makes it.</source>
        <translation>Wie oft ein Band als erstes pfeift, wenn die Bühne von Hand nach diesem Plan aufgebaut wird, nie ganz gleich, und die Schleife, die es am ehesten macht.</translation>
    </message>
    <message>
        <source>Lines: the loops from loudspeaker to microphone that matter, heavier the nearer to ringing.</source>
        <translation>Linien: die Schleifen vom Lautsprecher zum Mikrofon, auf die es ankommt, kräftiger, je näher am Pfeifen.</translation>
    </message>
    <message>
        <source>Starting equaliser</source>
        <translation>Start-Equalizer</translation>
    </message>
    <message>
        <source>Most likely to ring through this mix</source>
        <translation>Pfeift am ehesten durch diesen Mix</translation>
    </message>
    <message>
        <source>Found at the soundcheck</source>
        <translation>Beim Soundcheck gefunden</translation>
    </message>
    <message>
        <source>Ch</source>
        <translation>Kanal</translation>
    </message>
    <message>
        <source>Input</source>
        <translation>Eingang</translation>
    </message>
    <message>
        <source>How much</source>
        <translation>Wie viel</translation>
    </message>
    <message>
        <source>Level at 1 m</source>
        <translation>Pegel in 1 m</translation>
    </message>
    <message>
        <source>Set at the desk</source>
        <translation>Am Pult eingestellt</translation>
    </message>
    <message>
        <source>Heard, Hz</source>
        <translation>Gehört, Hz</translation>
    </message>
    <message>
        <source>Cut, dB</source>
        <translation>Absenkung, dB</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>equaliser flat</source>
        <translation>Equalizer flach</translation>
    </message>
    <message>
        <source>may ring at %1</source>
        <translation>kann pfeifen bei %1</translation>
    </message>
    <message>
        <source>Sends are levels at 1 m from the mix&apos;s loudspeaker in loud playing. Grey bars and numbers, also those in brackets: the bands of the ring-out list, in its order, in the mix through which they most likely ring.</source>
        <translation>Sends sind Pegel in 1 m vor dem Lautsprecher des Mixes bei lautem Spiel. Graue Balken und Zahlen, auch die in Klammern: die Bänder der Liste zum Einpfeifen, in ihrer Reihenfolge, in dem Mix, durch den sie am ehesten pfeifen.</translation>
    </message>
    <message>
        <source>Mixes and starting equalisers</source>
        <translation>Mixe und Start-Equalizer</translation>
    </message>
    <message>
        <source>Risks: %1</source>
        <translation>Risiken: %1</translation>
    </message>
</context>
<context>
    <name>about</name>
    <message>
        <source>&lt;p&gt;Where things stand on a stage, which frequency rings first, and what to do about it.&lt;/p&gt;&lt;p&gt;Free software under the GNU General Public License, version 3 or later, without any warranty. Examples, presets and symbols are CC0.&lt;/p&gt;</source>
        <translation>&lt;p&gt;Was wo auf einer Bühne steht, welche Frequenz zuerst pfeift, und was dagegen zu tun ist.&lt;/p&gt;&lt;p&gt;Freie Software unter der GNU General Public License, Version 3 oder später, ohne jede Gewährleistung. Beispiele, Vorgaben und Symbole sind CC0.&lt;/p&gt;</translation>
    </message>
    <message>
        <source>&lt;p&gt;Libraries and their licences:&lt;/p&gt;</source>
        <translation>&lt;p&gt;Bibliotheken und ihre Lizenzen:&lt;/p&gt;</translation>
    </message>
    <message>
        <source>&lt;p&gt;Where files are kept:&lt;/p&gt;</source>
        <translation>&lt;p&gt;Wo Dateien liegen:&lt;/p&gt;</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>Copies aside</source>
        <translation>Beiseitegelegte Kopien</translation>
    </message>
    <message>
        <source>About Howlmap</source>
        <translation>Über Howlmap</translation>
    </message>
</context>
<context>
    <name>command_line</name>
    <message>
        <source>the PDF to write</source>
        <translation>die PDF-Datei, die geschrieben wird</translation>
    </message>
    <message>
        <source>write the lists as CSV files into this folder</source>
        <translation>die Listen als CSV-Dateien in diesen Ordner schreiben</translation>
    </message>
    <message>
        <source>add a page that says what changed since this older show</source>
        <translation>eine Seite mit dem anfügen, was sich seit dieser älteren Show geändert hat</translation>
    </message>
    <message>
        <source>which parts, of plan,inputs,mixes,risks</source>
        <translation>welche Teile, von plan,inputs,mixes,risks</translation>
    </message>
    <message>
        <source>A4 or Letter; by the locale if not given</source>
        <translation>A4 oder Letter; ohne Angabe nach der Sprache</translation>
    </message>
    <message>
        <source>draw the loops that matter on the plan</source>
        <translation>die Schleifen, auf die es ankommt, in den Plan zeichnen</translation>
    </message>
    <message>
        <source>each mix on a page of its own, for the monitor desk</source>
        <translation>jeder Mix auf einer eigenen Seite, für das Monitorpult</translation>
    </message>
    <message>
        <source>--pages: found &quot;%1&quot;, expected some of %2</source>
        <translation>--pages: „%1“ gefunden, einige von %2 erwartet</translation>
    </message>
    <message>
        <source>--paper: found &quot;%1&quot;, expected A4 or Letter</source>
        <translation>--paper: „%1“ gefunden, A4 oder Letter erwartet</translation>
    </message>
    <message>
        <source>%1: the folder cannot be made</source>
        <translation>%1: der Ordner lässt sich nicht anlegen</translation>
    </message>
    <message>
        <source>advance: where to? Give -o OUT.pdf, --csv DIR or both</source>
        <translation>advance: wohin? Bitte -o OUT.pdf, --csv DIR oder beides angeben</translation>
    </message>
    <message>
        <source>writes the sheet for the venue&apos;s engineer: plan, inputs, mixes, equalisers, risks</source>
        <translation>schreibt das Blatt für die Technik am Ort: Plan, Eingänge, Mixe, Equalizer, Risiken</translation>
    </message>
    <message>
        <source>margins, verdict, ring list, worst pairs, ears, house, warnings</source>
        <translation>Reserven, Urteil, Pfeifstellen, schlimmste Paare, Ohren, Saal, Warnungen</translation>
    </message>
    <message>
        <source>only cures for the loops that this input hears</source>
        <translation>nur Abhilfen für die Schleifen, die dieser Eingang hört</translation>
    </message>
    <message>
        <source>write the show with the plan applied</source>
        <translation>die Show mit dem angewendeten Vorschlag schreiben</translation>
    </message>
    <message>
        <source>%1: there is no input &quot;%2&quot;.</source>
        <translation>%1: es gibt keinen Eingang „%2“.</translation>
    </message>
    <message>
        <source>ranked cures and the plan, always at equal loudness</source>
        <translation>geordnete Abhilfen und der Vorschlag, immer bei gleicher Lautheit</translation>
    </message>
    <message>
        <source>-o OUT.wav is missing</source>
        <translation>-o OUT.wav fehlt</translation>
    </message>
    <message>
        <source>lets you hear the loops: rising, ringing, howling; peaks limited</source>
        <translation>lässt die Schleifen hören: anwachsend, klingelnd, pfeifend; Spitzen begrenzt</translation>
    </message>
    <message>
        <source>feedback, loudspeaker, level or wash</source>
        <translation>feedback, loudspeaker, level oder wash</translation>
    </message>
    <message>
        <source>input of a feedback map</source>
        <translation>Eingang einer Rückkopplungskarte</translation>
    </message>
    <message>
        <source>loudspeaker of a loudspeaker map</source>
        <translation>Lautsprecher einer Lautsprecherkarte</translation>
    </message>
    <message>
        <source>mix of a level map</source>
        <translation>Mix einer Pegelkarte</translation>
    </message>
    <message>
        <source>one third-octave band only, by its nominal frequency</source>
        <translation>nur ein Terzband, mit seiner Nennfrequenz</translation>
    </message>
    <message>
        <source>metres between cells, 0.02 to 1; 0.05 if not given</source>
        <translation>Meter zwischen den Zellen, 0.02 bis 1; ohne Angabe 0.05</translation>
    </message>
    <message>
        <source>a %1 map needs --%2 ID</source>
        <translation>eine Karte %1 braucht --%2 ID</translation>
    </message>
    <message>
        <source>--kind: found &quot;%1&quot;, expected feedback, loudspeaker, level or wash</source>
        <translation>--kind: „%1“ gefunden, feedback, loudspeaker, level oder wash erwartet</translation>
    </message>
    <message>
        <source>--band: found &quot;%1&quot;, expected a nominal third-octave value such as 1000 or 31.5</source>
        <translation>--band: „%1“ gefunden, ein Terz-Nennwert wie 1000 oder 31.5 erwartet</translation>
    </message>
    <message>
        <source>one map over the plan (PNG, SVG, PDF) or its figures (CSV)</source>
        <translation>eine Karte über dem Plan (PNG, SVG, PDF) oder ihre Zahlen (CSV)</translation>
    </message>
    <message>
        <source>file to write; its ending says what kind</source>
        <translation>die Datei, die geschrieben wird; ihre Endung sagt, welcher Art</translation>
    </message>
    <message>
        <source>resolution of a PNG, 30 to 1200; 150 if not given</source>
        <translation>Auflösung eines PNG, 30 bis 1200; ohne Angabe 150</translation>
    </message>
    <message>
        <source>size of a PNG in pixels, like 1600x1200; a page if not given</source>
        <translation>Größe eines PNG in Bildpunkten, wie 1600x1200; ohne Angabe eine Seite</translation>
    </message>
    <message>
        <source>no page behind the plan (PNG, SVG)</source>
        <translation>keine Seite hinter dem Plan (PNG, SVG)</translation>
    </message>
    <message>
        <source>say where to write with -o FILE.svg, .pdf or .png</source>
        <translation>sag, wohin, mit -o DATEI.svg, .pdf oder .png</translation>
    </message>
    <message>
        <source>%1: expected a name that ends in .svg, .pdf or .png</source>
        <translation>%1: ein Name auf .svg, .pdf oder .png erwartet</translation>
    </message>
    <message>
        <source>--size: found &quot;%1&quot;, expected two numbers of pixels like 1600x1200, up to 20000</source>
        <translation>--size: „%1“ gefunden, zwei Zahlen von Bildpunkten wie 1600x1200 erwartet, bis 20000</translation>
    </message>
    <message>
        <source>%1: a picture of this size cannot be made</source>
        <translation>%1: ein Bild dieser Größe lässt sich nicht machen</translation>
    </message>
    <message>
        <source>draw the loops that matter as lines</source>
        <translation>die Schleifen, auf die es ankommt, als Linien zeichnen</translation>
    </message>
    <message>
        <source>the drawn plan as SVG, PDF or PNG</source>
        <translation>der gezeichnete Plan als SVG, PDF oder PNG</translation>
    </message>
    <message>
        <source>which frequency howls in a recording, which band to pull, which loop it may be</source>
        <translation>welche Frequenz in einer Aufnahme pfeift, welches Band zu ziehen ist, welche Schleife es sein kann</translation>
    </message>
    <message>
        <source>Usage: howlmap [SHOW]         open the window
       howlmap VERB ...       work without one

Verbs (howlmap VERB --help says more):
</source>
        <translation>Aufruf: howlmap [SHOW]         das Fenster öffnen
        howlmap VERB ...       ohne Fenster arbeiten

Verben (howlmap VERB --help sagt mehr):
</translation>
    </message>
    <message>
        <source>
Options:
  --help      this text
  --version   the version

Exit status: 0 done (check: the margin to count on reaches the target), 1 check: it does not,
2 the input is refused, 3 the output could not be written.
</source>
        <translation>
Optionen:
  --help      dieser Text
  --version   die Version

Rückgabe: 0 fertig (check: die verlässliche Reserve erreicht das Ziel), 1 check: sie erreicht es nicht,
2 die Eingabe wird abgelehnt, 3 die Ausgabe konnte nicht geschrieben werden.
</translation>
    </message>
    <message>
        <source>%1
Try &quot;howlmap %2 --help&quot;.</source>
        <translation>%1
Mehr sagt „howlmap %2 --help“.</translation>
    </message>
    <message>
        <source>%1 is missing</source>
        <translation>%1 fehlt</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is one too many</source>
        <translation>„%1“ ist eines zu viel</translation>
    </message>
    <message>
        <source>unknown option &quot;%1&quot;; try &quot;howlmap --help&quot;</source>
        <translation>unbekannte Option „%1“; mehr sagt „howlmap --help“</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is neither a verb nor a file; try &quot;howlmap --help&quot;</source>
        <translation>„%1“ ist weder ein Verb noch eine Datei; mehr sagt „howlmap --help“</translation>
    </message>
    <message>
        <source>internal error: %1</source>
        <translation>innerer Fehler: %1</translation>
    </message>
    <message>
        <source>standard output could not be written</source>
        <translation>die Standardausgabe konnte nicht geschrieben werden</translation>
    </message>
    <message>
        <source>%1 has no input &quot;%2&quot;</source>
        <translation>%1 hat keinen Eingang „%2“</translation>
    </message>
    <message>
        <source>input &quot;%1&quot; is no pickup, so it has no body modes</source>
        <translation>Eingang „%1“ ist kein Tonabnehmer und hat deshalb keine Korpusmoden</translation>
    </message>
    <message>
        <source>--into, --input and -o belong together</source>
        <translation>--into, --input und -o gehören zusammen</translation>
    </message>
    <message>
        <source>body modes (frequency, Q, level) of a tapped instrument</source>
        <translation>Korpusmoden (Frequenz, Q, Pegel) eines angeklopften Instruments</translation>
    </message>
    <message>
        <source>--%1: found &quot;%2&quot;, expected a number from %3 to %4</source>
        <translation>--%1: „%2“ gefunden, eine Zahl von %3 bis %4 erwartet</translation>
    </message>
    <message>
        <source>put the feedback map of one input under the plan</source>
        <translation>die Rückkopplungskarte eines Eingangs unter den Plan legen</translation>
    </message>
    <message>
        <source>whose map; if not given, of the input that rings first</source>
        <translation>wessen Karte; ohne Angabe die des Eingangs, der zuerst pfeift</translation>
    </message>
    <message>
        <source>No loop on this stage can ring: no map.</source>
        <translation>Keine Schleife dieser Bühne kann pfeifen: keine Karte.</translation>
    </message>
    <message>
        <source>kinds of cure that cannot be had here, as --json names them</source>
        <translation>Arten von Abhilfen, die es hier nicht gibt, wie --json sie nennt</translation>
    </message>
    <message>
        <source>--without: found &quot;%1&quot;, expected some of %2</source>
        <translation>--without: „%1“ gefunden, einige von %2 erwartet</translation>
    </message>
    <message>
        <source>the WAV file to write (needed)</source>
        <translation>die WAV-Datei, die geschrieben wird (nötig)</translation>
    </message>
    <message>
        <source>raise all sends by so many decibels, -60 to 60</source>
        <translation>alle Sends um so viele Dezibel anheben, -60 bis 60</translation>
    </message>
    <message>
        <source>a recording to play instead of the built-in phrase</source>
        <translation>eine Aufnahme, die statt der eingebauten Phrase spielt</translation>
    </message>
    <message>
        <source>the input to play into; if not given, the one that feeds the first ring</source>
        <translation>der Eingang, der spielt; ohne Angabe der, der das erste Pfeifen speist</translation>
    </message>
    <message>
        <source>say which loops of this show could make each howl</source>
        <translation>sagen, welche Schleifen dieser Show jedes Pfeifen verursachen könnten</translation>
    </message>
    <message>
        <source>print the machine form</source>
        <translation>die maschinenlesbare Form ausgeben</translation>
    </message>
    <message>
        <source>print this text</source>
        <translation>diesen Text ausgeben</translation>
    </message>
    <message>
        <source>print the version</source>
        <translation>die Version ausgeben</translation>
    </message>
    <message>
        <source>Usage: howlmap %1 %2 [options]</source>
        <translation>Aufruf: howlmap %1 %2 [Optionen]</translation>
    </message>
    <message>
        <source>%1: expected a name that ends in %2</source>
        <translation>%1: erwartet wird ein Name, der auf %2 endet</translation>
    </message>
    <message>
        <source>give the modes to a pickup of this show</source>
        <translation>die Moden einem Tonabnehmer dieser Show geben</translation>
    </message>
    <message>
        <source>the pickup, by its id in the show</source>
        <translation>der Tonabnehmer, nach seiner Kennung in der Show</translation>
    </message>
    <message>
        <source>where the show with the modes is written</source>
        <translation>wohin die Show mit den Moden geschrieben wird</translation>
    </message>
</context>
<context>
    <name>cures</name>
    <message>
        <source>Aim the microphone</source>
        <translation>Mikrofon ausrichten</translation>
    </message>
    <message>
        <source>Move the microphone</source>
        <translation>Mikrofon versetzen</translation>
    </message>
    <message>
        <source>Closer to the source</source>
        <translation>Näher an die Quelle</translation>
    </message>
    <message>
        <source>Another pattern</source>
        <translation>Andere Richtcharakteristik</translation>
    </message>
    <message>
        <source>Move the loudspeaker</source>
        <translation>Lautsprecher versetzen</translation>
    </message>
    <message>
        <source>Aim the loudspeaker</source>
        <translation>Lautsprecher ausrichten</translation>
    </message>
    <message>
        <source>Pull bands</source>
        <translation>Bänder ziehen</translation>
    </message>
    <message>
        <source>Narrow notches</source>
        <translation>Kerbfilter</translation>
    </message>
    <message>
        <source>Turn polarity</source>
        <translation>Polarität drehen</translation>
    </message>
    <message>
        <source>Turn polarity of the mix</source>
        <translation>Polarität des Mixes drehen</translation>
    </message>
    <message>
        <source>Cover the sound holes</source>
        <translation>Schalllöcher abdecken</translation>
    </message>
    <message>
        <source>Take out of the mix</source>
        <translation>Aus dem Mix nehmen</translation>
    </message>
    <message>
        <source>In-ears</source>
        <translation>In-Ears</translation>
    </message>
    <message>
        <source>Turn down</source>
        <translation>Leiser drehen</translation>
    </message>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>then</source>
        <translation>dann</translation>
    </message>
    <message>
        <source>Margin to count on</source>
        <translation>Verlässliche Reserve</translation>
    </message>
    <message>
        <source>Margin as drawn</source>
        <translation>Reserve wie gezeichnet</translation>
    </message>
    <message>
        <source>Change of tone</source>
        <translation>Änderung des Klangs</translation>
    </message>
    <message>
        <source>Change of loudness</source>
        <translation>Änderung der Lautheit</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>Rings first</source>
        <translation>Pfeift zuerst</translation>
    </message>
    <message>
        <source>The target is reached: no plan is needed.</source>
        <translation>Das Ziel ist erreicht: es braucht keinen Vorschlag.</translation>
    </message>
    <message>
        <source>{} no longer has {} in the mix.</source>
        <translation>{} hat {} nicht mehr im Mix.</translation>
    </message>
    <message>
        <source>Stand elsewhere</source>
        <translation>Woanders stehen</translation>
    </message>
    <message>
        <source>Turn {} by {}.</source>
        <translation>Drehe {} um {}.</translation>
    </message>
    <message>
        <source>It sends less towards the microphones for what it sends to the ear.</source>
        <translation>Gemessen an dem, was ans Ohr geht, geht weniger zu den Mikrofonen.</translation>
    </message>
    <message>
        <source>Turn the microphone of {} by {}.</source>
        <translation>Drehe das Mikrofon von {} um {}.</translation>
    </message>
    <message>
        <source>The loudspeakers come to lie where it hears least.</source>
        <translation>Die Lautsprecher liegen dann dort, wo es am wenigsten hört.</translation>
    </message>
    <message>
        <source>an omni</source>
        <translation>ein Kugel-</translation>
    </message>
    <message>
        <source>a subcardioid</source>
        <translation>ein Breite-Niere-</translation>
    </message>
    <message>
        <source>a cardioid</source>
        <translation>ein Nieren-</translation>
    </message>
    <message>
        <source>a supercardioid</source>
        <translation>ein Supernieren-</translation>
    </message>
    <message>
        <source>a hypercardioid</source>
        <translation>ein Hypernieren-</translation>
    </message>
    <message>
        <source>a figure-8</source>
        <translation>ein Achter-</translation>
    </message>
    <message>
        <source>Take the hand off the grille of the microphone of {}: hold it by the shaft.</source>
        <translation>Nimm die Hand vom Korb des Mikrofons von {}: halte es am Schaft.</translation>
    </message>
    <message>
        <source>A covered grille hears all around and rings in the upper middle; open it is directional again.</source>
        <translation>Ein verdeckter Korb hört rundum und pfeift in den oberen Mitten; offen richtet er wieder.</translation>
    </message>
    <message>
        <source>Give {} {} microphone.</source>
        <translation>Gib {} {}Mikrofon.</translation>
    </message>
    <message>
        <source>Give {} {} microphone and turn it by {}.</source>
        <translation>Gib {} {}Mikrofon und drehe es um {}.</translation>
    </message>
    <message>
        <source>It hears least {:.0f} deg off its front.</source>
        <translation>Am wenigsten hört es {:.0f} Grad neben seiner Vorderseite.</translation>
    </message>
    <message>
        <source>Another microphone sounds different: try it before the show.</source>
        <translation>Ein anderes Mikrofon klingt anders: probiere es vor der Show.</translation>
    </message>
    <message>
        <source>Bring the microphone of {} from {} to {} from its source, then take its preamplifier down by {:.1f} dB.</source>
        <translation>Bringe das Mikrofon von {} von {} auf {} an seine Quelle heran, dann nimm den Vorverstärker um {:.1f} dB zurück.</translation>
    </message>
    <message>
        <source>The source gets {:.1f} dB louder at the microphone, the loudspeakers do not.</source>
        <translation>Die Quelle wird am Mikrofon um {:.1f} dB lauter, die Lautsprecher nicht.</translation>
    </message>
    <message>
        <source>{} at {}</source>
        <translation>{} bei {}</translation>
    </message>
    <message>
        <source>Cover the sound holes of {}.</source>
        <translation>Decke die Schalllöcher von {} ab.</translation>
    </message>
    <message>
        <source>Its strongest mode is {} now; with the holes covered {} is left as the strongest.</source>
        <translation>Die stärkste Eigenschwingung ist jetzt {}; mit abgedeckten Löchern bleibt {} als stärkste.</translation>
    </message>
    <message>
        <source>Tape or a plug can mark a finish: test it where it does not show, and take it off after the show. How much covering takes is an estimate ({:.0f} dB).</source>
        <translation>Klebeband oder ein Stopfen kann Lack zeichnen: probiere es, wo es niemand sieht, und nimm es nach der Show ab. Wie viel das Abdecken nimmt, ist geschätzt ({:.0f} dB).</translation>
    </message>
    <message>
        <source>mix {} ({}): </source>
        <translation>Mix {} ({}): </translation>
    </message>
    <message>
        <source>Set the graphic equaliser of {}.</source>
        <translation>Stelle den Terz-Equalizer von {}.</translation>
    </message>
    <message>
        <source>The smallest cut that buys it; every other fader stays.</source>
        <translation>Die kleinste Absenkung, die es bringt; alle anderen Regler bleiben.</translation>
    </message>
    <message>
        <source>The smallest cuts that buy it: {} faders move, every other stays.</source>
        <translation>Die kleinsten Absenkungen, die es bringen: {} Regler bewegen sich, alle anderen bleiben.</translation>
    </message>
    <message>
        <source>Little of this sound lies below, but much can ring there. Listen whether its lowest notes keep their weight.</source>
        <translation>Darunter liegt wenig von diesem Klang, aber viel kann dort pfeifen. Hör hin, ob die tiefsten Töne ihr Gewicht behalten.</translation>
    </message>
    <message>
        <source>channel {} ({})</source>
        <translation>Kanal {} ({})</translation>
    </message>
    <message>
        <source>mix {} ({})</source>
        <translation>Mix {} ({})</translation>
    </message>
    <message>
        <source>{} in-ear</source>
        <translation>{} In-Ear</translation>
    </message>
    <message>
        <source>All loops through mix {} vanish.</source>
        <translation>Alle Schleifen über Mix {} verschwinden.</translation>
    </message>
    <message>
        <source>Mix {} stays on for those who share it.</source>
        <translation>Mix {} bleibt an für alle, die ihn teilen.</translation>
    </message>
    <message>
        <source>Left in the worst loop: {}.</source>
        <translation>In der schlimmsten Schleife bleibt: {}.</translation>
    </message>
    <message>
        <source>Give {} in-ears on mix {} and switch its loudspeakers off.</source>
        <translation>Gib {} In-Ears auf Mix {} und schalte dessen Lautsprecher aus.</translation>
    </message>
    <message>
        <source>Give {} in-ears with a mix of her own.</source>
        <translation>Gib {} In-Ears mit einem eigenen Mix.</translation>
    </message>
    <message>
        <source>In-ears can be far too loud without anybody hearing it: start low, use a limiter, keep both ears in.</source>
        <translation>In-Ears können viel zu laut sein, ohne dass es jemand merkt: leise anfangen, einen Limiter benutzen, beide Ohren drin lassen.</translation>
    </message>
    <message>
        <source>{} in mix {} to {:.1f} dB ({:+.1f})</source>
        <translation>{} in Mix {} auf {:.1f} dB ({:+.1f})</translation>
    </message>
    <message>
        <source>Then set {}, so that it stays as loud.</source>
        <translation>Dann stelle {}, damit es gleich laut bleibt.</translation>
    </message>
    <message>
        <source>{} more things change by as much or less.</source>
        <translation>{} weitere Dinge ändern sich ebenso viel oder weniger.</translation>
    </message>
    <message>
        <source>Move {} by {}.</source>
        <translation>Verschiebe {} um {}.</translation>
    </message>
    <message>
        <source>Move {} by {} and turn it by {}, at its listener.</source>
        <translation>Verschiebe {} um {} und drehe um {}, zum Hörplatz hin.</translation>
    </message>
    <message>
        <source>The same level at the ear with less of it at the microphones.</source>
        <translation>Der gleiche Pegel am Ohr, und weniger davon an den Mikrofonen.</translation>
    </message>
    <message>
        <source>Let {} stand {} with {}; the wedge stays.</source>
        <translation>Lass {} um {} versetzt stehen, mit {}; der Wedge bleibt.</translation>
    </message>
    <message>
        <source>The instrument gets out of the way of the sound that drives it.</source>
        <translation>Das Instrument geht dem Schall aus dem Weg, der es anregt.</translation>
    </message>
    <message>
        <source>Its back turns towards the loudspeakers.</source>
        <translation>Seine Rückseite wendet sich den Lautsprechern zu.</translation>
    </message>
    <message>
        <source>What an automatic notch box would set, ring by ring.</source>
        <translation>Was ein automatisches Kerbfiltergerät setzen würde, Pfeifstelle um Pfeifstelle.</translation>
    </message>
    <message>
        <source>Narrow notches fit only while nothing moves and the air keeps its temperature.</source>
        <translation>Schmale Kerbfilter passen nur, solange sich nichts bewegt und die Luft ihre Temperatur hält.</translation>
    </message>
    <message>
        <source>No sequence that was found reaches {:.1f} dB at equal loudness: without the last step the margin to count on is {:.1f} dB. The last {:.1f} dB come out of the level.</source>
        <translation>Keine gefundene Folge erreicht {:.1f} dB bei gleicher Lautstärke: ohne den letzten Schritt ist die verlässliche Reserve {:.1f} dB. Die letzten {:.1f} dB gehen vom Pegel ab.</translation>
    </message>
    <message>
        <source>Every ring of these loops moves half a wave along; between the old ones there may be less gain.</source>
        <translation>Jede Pfeifstelle dieser Schleifen rückt um eine halbe Welle weiter; zwischen den alten kann weniger Verstärkung liegen.</translation>
    </message>
    <message>
        <source>It holds only where things stand as drawn: a step or another wedge undoes it. Listen for low notes that get thin.</source>
        <translation>Es hilft nur, wo alles wie gezeichnet steht: ein Schritt oder ein weiterer Wedge hebt es auf. Achte auf tiefe Töne, die dünn werden.</translation>
    </message>
    <message>
        <source>Press the polarity switch of channel {} ({}).</source>
        <translation>Drücke den Polaritätsschalter von Kanal {} ({}).</translation>
    </message>
    <message>
        <source>Turn the polarity of mix {} ({}).</source>
        <translation>Drehe die Polarität von Mix {} ({}).</translation>
    </message>
    <message>
        <source>Take {} out of mix {} ({}).</source>
        <translation>Nimm {} aus Mix {} ({}) heraus.</translation>
    </message>
    <message>
        <source>A microphone that is not in a mix cannot ring with its loudspeaker.</source>
        <translation>Ein Mikrofon, das nicht in einem Mix ist, kann mit dessen Lautsprecher nicht pfeifen.</translation>
    </message>
    <message>
        <source>The wash at {} falls from {:.1f} to {:.1f} dBA. </source>
        <translation>Der Bühnenschall bei {} fällt von {:.1f} auf {:.1f} dBA. </translation>
    </message>
    <message>
        <source>{} may stay at it for {:.0f} minutes instead of {:.0f} (NIOSH, an estimate for planning).</source>
        <translation>{} kann {:.0f} Minuten statt {:.0f} dabei bleiben (NIOSH, eine Schätzung zum Planen).</translation>
    </message>
    <message>
        <source>Turn every send to a loudspeaker down by {:.1f} dB.</source>
        <translation>Drehe jeden Send zu einem Lautsprecher um {:.1f} dB zurück.</translation>
    </message>
    <message>
        <source>Everybody on loudspeakers hears the mixes that much quieter; the acoustic instruments stay as loud.</source>
        <translation>Alle, die über Lautsprecher hören, hören die Mixe um so viel leiser; die akustischen Instrumente bleiben gleich laut.</translation>
    </message>
    <message>
        <source>{} and {}</source>
        <translation>{} und {}</translation>
    </message>
    <message>
        <source>{} in</source>
        <translation>{} Zoll</translation>
    </message>
    <message>
        <source>{} ft</source>
        <translation>{} Fuß</translation>
    </message>
    <message>
        <source>{} ft {} in</source>
        <translation>{} Fuß {} Zoll</translation>
    </message>
    <message>
        <source>Set {} notch of Q {:.1f} (a tenth of an octave): {}.</source>
        <translation>Setze {} Kerbfilter mit Q {:.1f} (ein Zehntel einer Oktave): {}.</translation>
    </message>
    <message>
        <source>Set {} notches of Q {:.1f} (a tenth of an octave): {}.</source>
        <translation>Setze {} Kerbfilter mit Q {:.1f} (ein Zehntel einer Oktave): {}.</translation>
    </message>
    <message>
        <source>{:.0f} deg towards stage left</source>
        <translation>{:.0f} Grad nach Bühne links</translation>
    </message>
    <message>
        <source>{:.0f} deg towards stage right</source>
        <translation>{:.0f} Grad nach Bühne rechts</translation>
    </message>
    <message>
        <source>{:.0f} deg towards upstage</source>
        <translation>{:.0f} Grad nach hinten</translation>
    </message>
    <message>
        <source>{:.0f} deg towards the audience</source>
        <translation>{:.0f} Grad zum Publikum</translation>
    </message>
    <message>
        <source>{:.0f} deg up</source>
        <translation>{:.0f} Grad nach oben</translation>
    </message>
    <message>
        <source>{:.0f} deg down</source>
        <translation>{:.0f} Grad nach unten</translation>
    </message>
    <message>
        <source>The target is reached as it stands.</source>
        <translation>Das Ziel ist schon erreicht.</translation>
    </message>
    <message>
        <source>There is no loop that could ring.</source>
        <translation>Es gibt keine Schleife, die pfeifen könnte.</translation>
    </message>
    <message>
        <source>{0} hears {1:.1f} dB more of {2}.</source>
        <translation>{0} hört {1:.1f} dB mehr von {2}.</translation>
    </message>
    <message>
        <source>{0} hears {1:.1f} dB more of what {0} plays.</source>
        <translation>{0} hört {1:.1f} dB mehr vom eigenen Spiel.</translation>
    </message>
    <message>
        <source>All in all it gets {1:.1f} dB louder at {0}.</source>
        <translation>Insgesamt wird es bei {0} um {1:.1f} dB lauter.</translation>
    </message>
    <message>
        <source>{0} hears {1:.1f} dB less of {2}.</source>
        <translation>{0} hört {1:.1f} dB weniger von {2}.</translation>
    </message>
    <message>
        <source>{0} hears {1:.1f} dB less of what {0} plays.</source>
        <translation>{0} hört {1:.1f} dB weniger vom eigenen Spiel.</translation>
    </message>
    <message>
        <source>All in all it gets {1:.1f} dB quieter at {0}.</source>
        <translation>Insgesamt wird es bei {0} um {1:.1f} dB leiser.</translation>
    </message>
    <message>
        <source>{} upstage</source>
        <translation>{} nach hinten</translation>
    </message>
    <message>
        <source>{} towards stage left</source>
        <translation>{} nach Bühne links</translation>
    </message>
    <message>
        <source>{} up</source>
        <translation>{} nach oben</translation>
    </message>
    <message>
        <source>{} downstage</source>
        <translation>{} nach vorn</translation>
    </message>
    <message>
        <source>{} towards stage right</source>
        <translation>{} nach Bühne rechts</translation>
    </message>
    <message>
        <source>{} down</source>
        <translation>{} nach unten</translation>
    </message>
    <message>
        <source>No sequence that was found reaches {:.1f} dB at equal loudness, and turning down is ruled out: {:.1f} dB are missing.</source>
        <translation>Keine gefundene Folge erreicht {:.1f} dB bei gleicher Lautstärke, und leiser drehen ist ausgeschlossen: {:.1f} dB fehlen.</translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translation>%1 und %2 weitere</translation>
    </message>
    <message>
        <source>Set the graphic equalisers as listed, in dB.</source>
        <translation>Stelle die grafischen Equalizer wie aufgeführt, in dB.</translation>
    </message>
    <message>
        <source>mix %1</source>
        <translation>Mix %1</translation>
    </message>
    <message>
        <source>Then set the sends, in dB, so that it stays as loud:</source>
        <translation>Stelle dann die Sends, in dB, damit es gleich laut bleibt:</translation>
    </message>
    <message>
        <source>{} to {:.1f} dB ({:+.1f})</source>
        <translation>{} auf {:.1f} dB ({:+.1f})</translation>
    </message>
    <message>
        <source>High-pass</source>
        <translation>Hochpass</translation>
    </message>
    <message>
        <source>Directional microphones sound fuller close up; a high-pass may be wanted.</source>
        <translation>Richtmikrofone klingen aus der Nähe voller; ein Hochpass kann nötig sein.</translation>
    </message>
    <message>
        <source>Set the high-pass of {} to {}, {} dB an octave.</source>
        <translation>Stelle den Hochpass von {} auf {}, {} dB je Oktave.</translation>
    </message>
    <message>
        <source>Move the microphone of {} by {}, the same distance from its source and aimed at it.</source>
        <translation>Verschiebe das Mikrofon von {} um {}, im gleichen Abstand zur Quelle und auf sie gerichtet.</translation>
    </message>
</context>
<context>
    <name>howlmap::app</name>
    <message>
        <source>&amp;New show</source>
        <translation>&amp;Neue Show</translation>
    </message>
    <message>
        <source>Starts an empty show.</source>
        <translation>Beginnt eine leere Show.</translation>
    </message>
    <message>
        <source>&amp;Open...</source>
        <translation>Ö&amp;ffnen...</translation>
    </message>
    <message>
        <source>Opens a show from a file.</source>
        <translation>Öffnet eine Show aus einer Datei.</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Speichern</translation>
    </message>
    <message>
        <source>Saves the show; the file holds the old or the new show, never half of one.</source>
        <translation>Speichert die Show; die Datei enthält die alte oder die neue Show, nie eine halbe.</translation>
    </message>
    <message>
        <source>Save &amp;as...</source>
        <translation>Speichern &amp;unter...</translation>
    </message>
    <message>
        <source>Saves the show under another name and goes on with that file.</source>
        <translation>Speichert die Show unter anderem Namen und macht mit dieser Datei weiter.</translation>
    </message>
    <message>
        <source>Re&amp;vert</source>
        <translation>&amp;Zurück zum Gespeicherten</translation>
    </message>
    <message>
        <source>Goes back to the show as the file holds it.</source>
        <translation>Geht zurück zur Show, wie sie in der Datei steht.</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>S&amp;chließen</translation>
    </message>
    <message>
        <source>Closes this show and starts an empty one.</source>
        <translation>Schließt diese Show und beginnt eine leere.</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>&amp;Beenden</translation>
    </message>
    <message>
        <source>Closes the window.</source>
        <translation>Schließt das Fenster.</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>Takes the last step back.</source>
        <translation>Nimmt den letzten Schritt zurück.</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederholen</translation>
    </message>
    <message>
        <source>Does the step again that was taken back.</source>
        <translation>Macht den zurückgenommenen Schritt noch einmal.</translation>
    </message>
    <message>
        <source>&amp;Preferences...</source>
        <translation>&amp;Einstellungen...</translation>
    </message>
    <message>
        <source>Light or dark, units of new shows, how soon a copy is kept aside.</source>
        <translation>Hell oder dunkel, Einheiten neuer Shows, wie bald eine Kopie beiseitegelegt wird.</translation>
    </message>
    <message>
        <source>Plan &amp;alone</source>
        <translation>Nur der &amp;Plan</translation>
    </message>
    <message>
        <source>Hides all panels, or brings them back.</source>
        <translation>Blendet alle Felder aus oder holt sie zurück.</translation>
    </message>
    <message>
        <source>&amp;Full screen</source>
        <translation>&amp;Vollbild</translation>
    </message>
    <message>
        <source>Uses the whole screen, for a class or a projector.</source>
        <translation>Nutzt den ganzen Bildschirm, für eine Klasse oder einen Projektor.</translation>
    </message>
    <message>
        <source>&amp;Reset panels</source>
        <translation>&amp;Felder zurücksetzen</translation>
    </message>
    <message>
        <source>Puts all panels back where they were at first.</source>
        <translation>Bringt alle Felder dorthin, wo sie zuerst waren.</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>Opens the help at the place that explains what has the focus.</source>
        <translation>Öffnet die Hilfe an der Stelle, die erklärt, was gerade den Fokus hat.</translation>
    </message>
    <message>
        <source>&amp;What&apos;s this?</source>
        <translation>&amp;Was ist das?</translation>
    </message>
    <message>
        <source>Click anything to have it explained.</source>
        <translation>Irgendetwas anklicken, um es erklärt zu bekommen.</translation>
    </message>
    <message>
        <source>&amp;Three steps</source>
        <translation>&amp;Drei Schritte</translation>
    </message>
    <message>
        <source>Shows the three steps of the first start again.</source>
        <translation>Zeigt die drei Schritte des ersten Starts noch einmal.</translation>
    </message>
    <message>
        <source>&amp;Cautions</source>
        <translation>&amp;Vorsicht</translation>
    </message>
    <message>
        <source>Shows what this program is not and what can hurt you.</source>
        <translation>Zeigt, was dieses Programm nicht ist und was schaden kann.</translation>
    </message>
    <message>
        <source>&amp;About Howlmap</source>
        <translation>&amp;Über Howlmap</translation>
    </message>
    <message>
        <source>Version, licences, and where files are kept.</source>
        <translation>Version, Lizenzen, und wo Dateien liegen.</translation>
    </message>
    <message>
        <source>A&amp;dvance sheet...</source>
        <translation>&amp;Blatt für das Haus...</translation>
    </message>
    <message>
        <source>The sheet for the venue&apos;s engineer: pages, print, PDF, lists for a spreadsheet.</source>
        <translation>Das Blatt für die Technik des Hauses: Seiten, Druck, PDF, Listen für eine Tabellenkalkulation.</translation>
    </message>
    <message>
        <source>&amp;Open the lesson</source>
        <translation>Lektion ö&amp;ffnen</translation>
    </message>
    <message>
        <source>One loudspeaker and one microphone from the side: why placement matters, to see and to hear.</source>
        <translation>Ein Lautsprecher und ein Mikrofon von der Seite: warum der Platz zählt, zum Sehen und zum Hören.</translation>
    </message>
    <message>
        <source>&amp;Show in the lesson</source>
        <translation>In der Lektion &amp;zeigen</translation>
    </message>
    <message>
        <source>Puts the selected loudspeaker and microphone, or the selected ring&apos;s, on the bench of the lesson.</source>
        <translation>Stellt den ausgewählten Lautsprecher und das Mikrofon, oder die der ausgewählten Pfeifstelle, auf die Bank der Lektion.</translation>
    </message>
    <message>
        <source>&amp;Hear the stage...</source>
        <translation>Bühne an&amp;hören...</translation>
    </message>
    <message>
        <source>Plays all loops of this show as they are set, or raised.</source>
        <translation>Spielt alle Schleifen dieser Show, wie sie eingestellt oder angehoben sind.</translation>
    </message>
</context>
<context>
    <name>howlmap::app::Autosave</name>
    <message>
        <source>The copy aside cannot be read.</source>
        <translation>Die beiseitegelegte Kopie lässt sich nicht lesen.</translation>
    </message>
    <message>
        <source>It was left where it is.</source>
        <translation>Sie bleibt, wo sie ist.</translation>
    </message>
</context>
<context>
    <name>howlmap::app::BodyCurve</name>
    <message>
        <source>Response of the body before and after</source>
        <translation>Antwort des Korpus vorher und nachher</translation>
    </message>
    <message>
        <source>%1 k</source>
        <translation>%1 k</translation>
    </message>
    <message>
        <source>lines %1 dB apart</source>
        <translation>Linien im Abstand von %1 dB</translation>
    </message>
    <message>
        <source>How the body answers to the sound around it: dashed as it is, heavy with the modes found.</source>
        <translation>Wie der Korpus auf den Schall um ihn antwortet: gestrichelt wie er ist, kräftig mit den gefundenen Moden.</translation>
    </message>
    <message>
        <source>heavy: found
dashed: as it is</source>
        <translation>kräftig: gefunden
gestrichelt: wie es ist</translation>
    </message>
</context>
<context>
    <name>howlmap::app::CautionStrip</name>
    <message>
        <source>Cautions</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>Understood</source>
        <translation>Verstanden</translation>
    </message>
    <message>
        <source>Hides this strip. Help, Cautions brings it back.</source>
        <translation>Blendet diesen Streifen aus. Hilfe, Vorsicht holt ihn zurück.</translation>
    </message>
</context>
<context>
    <name>howlmap::app::CombView</name>
    <message>
        <source>Frequencies that fit</source>
        <translation>Frequenzen, die passen</translation>
    </message>
    <message>
        <source>Each tooth is a frequency that comes back in step. Click or drag to look at a frequency; left and right go by semitones, up and down to the next tooth.</source>
        <translation>Jeder Zahn ist eine Frequenz, die im Takt zurückkommt. Klicke oder ziehe, um eine Frequenz anzusehen; links und rechts gehen um Halbtöne, auf und ab zum nächsten Zahn.</translation>
    </message>
    <message>
        <source>%1 frequencies fit; looked at: %2</source>
        <translation>%1 Frequenzen passen; angesehen: %2</translation>
    </message>
</context>
<context>
    <name>howlmap::app::CureModel</name>
    <message>
        <source>as drawn %1</source>
        <translation>wie gezeichnet %1</translation>
    </message>
    <message>
        <source>trouble %1 · tone %2 dB</source>
        <translation>Mühe %1 · Klang %2 dB</translation>
    </message>
    <message>
        <source>%1, to count on %2, %3, %4, %5</source>
        <translation>%1, verlässlich %2, %3, %4, %5</translation>
    </message>
</context>
<context>
    <name>howlmap::app::CuresPanel</name>
    <message>
        <source>Progress of the search</source>
        <translation>Fortschritt der Suche</translation>
    </message>
    <message>
        <source>&amp;Apply</source>
        <translation>&amp;Anwenden</translation>
    </message>
    <message>
        <source>Makes this change to the show; one step that can be undone.</source>
        <translation>Ändert die Show so; ein Schritt, der sich zurücknehmen lässt.</translation>
    </message>
    <message>
        <source>&amp;Why</source>
        <translation>&amp;Warum</translation>
    </message>
    <message>
        <source>Shows the figures before and after.</source>
        <translation>Zeigt die Zahlen vorher und nachher.</translation>
    </message>
    <message>
        <source>Apply &amp;plan</source>
        <translation>&amp;Vorschlag anwenden</translation>
    </message>
    <message>
        <source>Makes all changes of the plan, in order; one step that can be undone.</source>
        <translation>Macht alle Änderungen des Vorschlags der Reihe nach; ein Schritt, der sich zurücknehmen lässt.</translation>
    </message>
    <message>
        <source>Nothing can ring here, so there is nothing to cure.</source>
        <translation>Hier kann nichts pfeifen, also ist nichts abzuhelfen.</translation>
    </message>
    <message>
        <source>No cure was found that helps at equal loudness.</source>
        <translation>Es fand sich keine Abhilfe, die bei gleicher Lautheit hilft.</translation>
    </message>
    <message>
        <source>Looking for cures: the first appear within a moment, the plan a little later.</source>
        <translation>Abhilfen werden gesucht: die ersten kommen gleich, der Vorschlag etwas später.</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Vorschlag</translation>
    </message>
    <message>
        <source>Plan: count on %1, the target is reached</source>
        <translation>Vorschlag: verlässlich %1, das Ziel ist erreicht</translation>
    </message>
    <message>
        <source>Plan: count on %1, short of the target</source>
        <translation>Vorschlag: verlässlich %1, unter dem Ziel</translation>
    </message>
    <message>
        <source>Applied: %1</source>
        <translation>Angewendet: %1</translation>
    </message>
    <message>
        <source>Plan of %1 steps</source>
        <translation>Vorschlag aus %1 Schritten</translation>
    </message>
    <message>
        <source>Applied the plan: %1 steps.</source>
        <translation>Vorschlag angewendet: %1 Schritte.</translation>
    </message>
    <message>
        <source>&amp;Kinds</source>
        <translation>A&amp;rten</translation>
    </message>
    <message>
        <source>Which kinds of cure can be had here, and how much trouble each is.</source>
        <translation>Welche Arten von Abhilfen es hier gibt, und wie viel Mühe jede macht.</translation>
    </message>
    <message>
        <source>Large: gain to count on. First what gains most for its trouble and tone.</source>
        <translation>Groß: verlässlicher Gewinn. Zuerst, was für Mühe und Klang am meisten bringt.</translation>
    </message>
    <message>
        <source>Cures, most gain for their cost first</source>
        <translation>Abhilfen, zuerst die mit dem meisten Gewinn für ihren Preis</translation>
    </message>
    <message>
        <source>Each card is one cure, judged at equal loudness for the player: at the right what it gains to count on, below it as drawn, at the left its cost: trouble, which Kinds sets, and tone. Rest on one to see it as a ghost on the plan and as a dashed curve.</source>
        <translation>Jede Karte ist eine Abhilfe, beurteilt bei gleicher Lautheit für die Spielerin: rechts, was sie verlässlich bringt, darunter wie gezeichnet, links ihr Preis: Mühe, die unter Arten steht, und Klang. Darauf verweilen zeigt sie als Schatten im Plan und als gestrichelte Kurve.</translation>
    </message>
    <message>
        <source>The marked cure and the plan</source>
        <translation>Die markierte Abhilfe und der Vorschlag</translation>
    </message>
</context>
<context>
    <name>howlmap::app::CurveChoice</name>
    <message>
        <source>Curve of</source>
        <translation>Kurve von</translation>
    </message>
    <message>
        <source>Whose loop gain is drawn: of everything together, or of a part as if it were alone.</source>
        <translation>Wessen Schleifenverstärkung gezeichnet wird: von allem zusammen oder von einem Teil, als wäre er allein.</translation>
    </message>
    <message>
        <source>All loops together</source>
        <translation>Alle Schleifen zusammen</translation>
    </message>
    <message>
        <source>Mix %1 %2 alone</source>
        <translation>Mix %1 %2 allein</translation>
    </message>
    <message>
        <source>Input %1 %2 alone</source>
        <translation>Eingang %1 %2 allein</translation>
    </message>
    <message>
        <source>%1 → %2</source>
        <translation>%1 → %2</translation>
    </message>
</context>
<context>
    <name>howlmap::app::CutOffer</name>
    <message>
        <source>%1 · band %2 · %3 %4%5 c</source>
        <translation>%1 · Band %2 · %3 %4%5 c</translation>
    </message>
    <message>
        <source>Mix to cut in</source>
        <translation>Mix für die Absenkung</translation>
    </message>
    <message>
        <source>The mix whose equaliser takes the cut.</source>
        <translation>Der Mix, dessen Equalizer abgesenkt wird.</translation>
    </message>
    <message>
        <source>Band or notch</source>
        <translation>Band oder Kerbfilter</translation>
    </message>
    <message>
        <source>A band of the graphic equaliser, or a notch at the frequency itself: it costs less tone.</source>
        <translation>Ein Band des Terz-Equalizers oder ein Kerbfilter auf der Frequenz selbst: es kostet weniger Klang.</translation>
    </message>
    <message>
        <source>band</source>
        <translation>Band</translation>
    </message>
    <message>
        <source>notch</source>
        <translation>Kerbfilter</translation>
    </message>
    <message>
        <source>Depth of the cut</source>
        <translation>Tiefe der Absenkung</translation>
    </message>
    <message>
        <source>Computed so that the next ring is as far; change it to what was really cut.</source>
        <translation>So berechnet, dass die nächste Pfeifstelle gleich weit ist; ändere sie auf das, was wirklich abgesenkt wurde.</translation>
    </message>
    <message>
        <source> dB</source>
        <translation> dB</translation>
    </message>
    <message>
        <source>&amp;Log and cut</source>
        <translation>&amp;Eintragen und absenken</translation>
    </message>
    <message>
        <source>Writes it in the log and cuts in the mix: one step that can be undone.</source>
        <translation>Trägt es ins Protokoll ein und senkt im Mix ab: ein Schritt, der sich zurücknehmen lässt.</translation>
    </message>
    <message>
        <source>Log &amp;only</source>
        <translation>Nur ein&amp;tragen</translation>
    </message>
    <message>
        <source>Writes in the log what was heard and cuts nothing.</source>
        <translation>Trägt ein, was gehört wurde, und senkt nichts ab.</translation>
    </message>
    <message>
        <source>%1 → %2</source>
        <translation>%1 → %2</translation>
    </message>
    <message>
        <source>Nothing to cut yet.</source>
        <translation>Noch nichts abzusenken.</translation>
    </message>
    <message>
        <source>Working out how much is needed …</source>
        <translation>Wie viel nötig ist, wird berechnet …</translation>
    </message>
    <message>
        <source>Nothing can be cut: there is no mix yet.</source>
        <translation>Nichts lässt sich absenken: es gibt noch keinen Mix.</translation>
    </message>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>So much and no more: then %1 is as near.</source>
        <translation>So viel und nicht mehr: dann ist %1 gleich nah.</translation>
    </message>
    <message>
        <source>Even the deepest cut leaves it nearer than %1: turn down, or see Cures.</source>
        <translation>Selbst die tiefste Absenkung lässt sie näher als %1: leiser drehen, oder siehe Abhilfen.</translation>
    </message>
    <message>
        <source>Cut %1 by %2 dB and log it</source>
        <translation>%1 um %2 dB absenken und eintragen</translation>
    </message>
    <message>
        <source>Log %1</source>
        <translation>%1 eintragen</translation>
    </message>
    <message>
        <source>In the log: %1.</source>
        <translation>Im Protokoll: %1.</translation>
    </message>
    <message>
        <source>%1 dB would do, but less than %2 dB is hardly worth a cut: then %3 is the nearest.</source>
        <translation>%1 dB würden reichen, aber weniger als %2 dB lohnt kaum eine Absenkung: dann ist %3 am nächsten.</translation>
    </message>
    <message>
        <source>By gain alone %1 stands higher than this one, so begin with little and listen.</source>
        <translation>Nach der Verstärkung allein steht %1 höher als dieses, also mit wenig anfangen und hören.</translation>
    </message>
</context>
<context>
    <name>howlmap::app::DragReading</name>
    <message>
        <source>Margin as drawn %1</source>
        <translation>Reserve wie gezeichnet %1</translation>
    </message>
    <message>
        <source> (%1 since the start)</source>
        <translation> (%1 seit Beginn)</translation>
    </message>
</context>
<context>
    <name>howlmap::app::EarsPanel</name>
    <message>
        <source>Levels and minutes are estimates for planning, not a measurement of hearing safety.</source>
        <translation>Pegel und Minuten sind Schätzungen zum Planen, keine Messung zum Gehörschutz.</translation>
    </message>
    <message>
        <source>Players: own, others, hear margin, minutes</source>
        <translation>Spieler: eigenes, anderes, Hörreserve, Minuten</translation>
    </message>
    <message>
        <source>Stage wash in the house</source>
        <translation>Bühnenschall im Saal</translation>
    </message>
    <message>
        <source>hear margin</source>
        <translation>Hörreserve</translation>
    </message>
    <message>
        <source>own level at the ear</source>
        <translation>eigener Pegel am Ohr</translation>
    </message>
    <message>
        <source>everything at the ear</source>
        <translation>alles am Ohr</translation>
    </message>
    <message>
        <source>What is wished for</source>
        <translation>Was gewünscht wird</translation>
    </message>
    <message>
        <source> dB</source>
        <translation> dB</translation>
    </message>
    <message>
        <source>How much is wished for</source>
        <translation>Wie viel gewünscht wird</translation>
    </message>
    <message>
        <source> min set</source>
        <translation> min Set</translation>
    </message>
    <message>
        <source>Length of the set</source>
        <translation>Länge des Sets</translation>
    </message>
    <message>
        <source>Apply</source>
        <translation>Anwenden</translation>
    </message>
    <message>
        <source>Sets the sends that were found, as one step</source>
        <translation>Stellt die gefundenen Sends ein, als ein Schritt</translation>
    </message>
    <message>
        <source>Wish:</source>
        <translation>Wunsch:</translation>
    </message>
    <message>
        <source>The same wish for everybody, solved together</source>
        <translation>Derselbe Wunsch für alle, zusammen gelöst</translation>
    </message>
    <message>
        <source>Quietest stage</source>
        <translation>Leiseste Bühne</translation>
    </message>
    <message>
        <source>What louder costs</source>
        <translation>Was lauter kostet</translation>
    </message>
    <message>
        <source>What 3 dB more of a neighbour or of backline costs everybody</source>
        <translation>Was 3 dB mehr von einem Nachbarn oder der Backline alle kostet</translation>
    </message>
    <message>
        <source>Solving…</source>
        <translation>Wird gelöst…</translation>
    </message>
    <message>
        <source>Set sends for a wish</source>
        <translation>Sends nach Wunsch stellen</translation>
    </message>
    <message>
        <source>Looking for the quietest stage…</source>
        <translation>Die leiseste Bühne wird gesucht…</translation>
    </message>
    <message>
        <source>Set the quietest stage</source>
        <translation>Leiseste Bühne einstellen</translation>
    </message>
    <message>
        <source>Working out what 3 dB more costs…</source>
        <translation>Was 3 dB mehr kostet, wird berechnet…</translation>
    </message>
    <message>
        <source>The show has changed since: solve again.</source>
        <translation>Die Show hat sich inzwischen geändert: bitte neu lösen.</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>Stage wash</source>
        <translation>Bühnenschall</translation>
    </message>
    <message>
        <source>Against target</source>
        <translation>Gegen das Ziel</translation>
    </message>
    <message>
        <source>Loudspeaker</source>
        <translation>Lautsprecher</translation>
    </message>
    <message>
        <source>Asked for at 1 m</source>
        <translation>Verlangt in 1 m</translation>
    </message>
    <message>
        <source>Can do</source>
        <translation>Kann</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Rest</translation>
    </message>
    <message>
        <source>Band</source>
        <translation>Band</translation>
    </message>
    <message>
        <source>Own</source>
        <translation>Eigenes</translation>
    </message>
    <message>
        <source>Others</source>
        <translation>Anderes</translation>
    </message>
    <message>
        <source>Hear margin</source>
        <translation>Hörreserve</translation>
    </message>
    <message>
        <source> dBA</source>
        <translation> dBA</translation>
    </message>
    <message>
        <source>This player</source>
        <translation>Diese Person</translation>
    </message>
    <message>
        <source>Solves the marked player&apos;s own sends for the wish</source>
        <translation>Löst die eigenen Sends der markierten Person nach dem Wunsch auf</translation>
    </message>
    <message>
        <source>All players</source>
        <translation>Alle</translation>
    </message>
    <message>
        <source>House</source>
        <translation>Saal</translation>
    </message>
    <message>
        <source>Loudspeakers against what they can do</source>
        <translation>Lautsprecher gegen das, was sie können</translation>
    </message>
    <message>
        <source>Loudspeakers</source>
        <translation>Lautsprecher</translation>
    </message>
    <message>
        <source>Third-octaves at the ear of the marked player</source>
        <translation>Terzen am Ohr der markierten Person</translation>
    </message>
    <message>
        <source>Bands</source>
        <translation>Bänder</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Antwort</translation>
    </message>
    <message>
        <source>What was found</source>
        <translation>Was gefunden wurde</translation>
    </message>
    <message>
        <source>Wish for something at the left, or ask for the quietest stage: what it takes stands here.</source>
        <translation>Wünsche links etwas, oder frage nach der leisesten Bühne: was es braucht, steht hier.</translation>
    </message>
    <message>
        <source>Put a listener from Parts into the house to see what the stage spills there.</source>
        <translation>Setze aus den Teilen einen Zuhörer in den Saal, um zu sehen, was von der Bühne dort ankommt.</translation>
    </message>
    <message>
        <source>The lowest sends at which everybody has the hear margin of the wish; what is nobody&apos;s own falls by 6 dB</source>
        <translation>Die niedrigsten Sends, bei denen alle die gewünschte Hörreserve haben; was niemandes eigenes ist, sinkt um 6 dB</translation>
    </message>
    <message>
        <source>What makes the wash at the marked place, and what helps</source>
        <translation>Was den Bühnenschall am markierten Platz macht und was hilft</translation>
    </message>
    <message>
        <source>Front-of-house target</source>
        <translation>Ziel im Saal</translation>
    </message>
    <message>
        <source>Set the front-of-house target</source>
        <translation>Ziel im Saal setzen</translation>
    </message>
    <message>
        <source>Front-of-house target:</source>
        <translation>Ziel im Saal:</translation>
    </message>
</context>
<context>
    <name>howlmap::app::FaderBank</name>
    <message>
        <source>The third-octave bands of the chosen mix. Drag a knob, or choose a band with the left and right keys and move it with up and down. The column behind a knob is the probability that its band rings first, and through this mix.</source>
        <translation>Die Terzbänder des gewählten Mixes. Einen Knopf ziehen, oder mit links und rechts ein Band wählen und mit auf und ab bewegen. Die Säule hinter einem Knopf ist die Wahrscheinlichkeit, dass sein Band zuerst pfeift, und zwar durch diesen Mix.</translation>
    </message>
    <message>
        <source>%1: %2; rings first through this mix in %3 of 100 stages</source>
        <translation>%1: %2; pfeift durch diesen Mix in %3 von 100 Aufbauten zuerst</translation>
    </message>
</context>
<context>
    <name>howlmap::app::FieldRow</name>
    <message>
        <source>Set %1</source>
        <translation>%1 setzen</translation>
    </message>
    <message>
        <source>several</source>
        <translation>verschieden</translation>
    </message>
    <message>
        <source>It is locked: unlock it on the plan (context menu, Lock) to change this.</source>
        <translation>Es ist gesperrt: auf dem Plan entsperren (Kontextmenü, Sperren), um dies zu ändern.</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
</context>
<context>
    <name>howlmap::app::FileActions</name>
    <message>
        <source>Shows (*.howlmap);;All files (*)</source>
        <translation>Shows (*.howlmap);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Open a show</source>
        <translation>Show öffnen</translation>
    </message>
    <message>
        <source>Save the show</source>
        <translation>Show speichern</translation>
    </message>
    <message>
        <source>Howlmap</source>
        <translation>Howlmap</translation>
    </message>
    <message>
        <source>Give up all changes since the last save?</source>
        <translation>Alle Änderungen seit dem letzten Speichern aufgeben?</translation>
    </message>
    <message>
        <source>this new show</source>
        <translation>diese neue Show</translation>
    </message>
    <message>
        <source>Save the changes to %1?</source>
        <translation>Änderungen an %1 speichern?</translation>
    </message>
    <message>
        <source>If you do not save, they are lost.</source>
        <translation>Ungespeichert gehen sie verloren.</translation>
    </message>
    <message>
        <source>%1 was changed by another program.</source>
        <translation>%1 wurde von einem anderen Programm geändert.</translation>
    </message>
    <message>
        <source>Reload it and lose the changes made here, or keep what is here?</source>
        <translation>Neu laden und die Änderungen hier verlieren, oder behalten, was hier ist?</translation>
    </message>
    <message>
        <source>Reload it, or keep what is here?</source>
        <translation>Neu laden oder behalten, was hier ist?</translation>
    </message>
    <message>
        <source>&amp;Reload</source>
        <translation>&amp;Neu laden</translation>
    </message>
    <message>
        <source>&amp;Keep what is here</source>
        <translation>&amp;Behalten, was hier ist</translation>
    </message>
    <message>
        <source>The file of this show is gone.</source>
        <translation>Die Datei dieser Show ist fort.</translation>
    </message>
    <message>
        <source>The show is still here. Save it to write the file again.</source>
        <translation>Die Show ist noch hier. Speichern schreibt die Datei wieder.</translation>
    </message>
    <message>
        <source>show</source>
        <translation>Show</translation>
    </message>
    <message>
        <source>%1 can only be read.</source>
        <translation>%1 kann nur gelesen werden.</translation>
    </message>
    <message>
        <source>Save the show under another name to keep the changes.</source>
        <translation>Speichere die Show unter einem anderen Namen, um die Änderungen zu behalten.</translation>
    </message>
    <message>
        <source>Save &amp;as...</source>
        <translation>Speichern &amp;unter...</translation>
    </message>
    <message>
        <source>No second window could be opened.</source>
        <translation>Ein zweites Fenster ließ sich nicht öffnen.</translation>
    </message>
    <message>
        <source>Open the show by the menu of this window, or from the file manager.</source>
        <translation>Die Show über das Menü dieses Fensters oder aus der Dateiverwaltung öffnen.</translation>
    </message>
</context>
<context>
    <name>howlmap::app::FileSession</name>
    <message>
        <source>The show cannot be opened.</source>
        <translation>Die Show lässt sich nicht öffnen.</translation>
    </message>
    <message>
        <source>Check that the file is there and that you may read it.</source>
        <translation>Prüfe, ob die Datei da ist und ob du sie lesen darfst.</translation>
    </message>
    <message>
        <source>Nothing was changed. Mend this place in a text editor, or open an older copy.</source>
        <translation>Nichts wurde geändert. Berichtige die Stelle in einem Texteditor, oder öffne eine ältere Kopie.</translation>
    </message>
    <message>
        <source>It was written by a newer version (file version %1); saving it from here could lose what that version added.</source>
        <translation>Sie stammt von einer neueren Fassung (Dateiversion %1); beim Speichern von hier könnte verloren gehen, was diese hinzugefügt hat.</translation>
    </message>
    <message>
        <source>It is a copy of an example. Save it under a name of your own to keep it.</source>
        <translation>Dies ist die Kopie eines Beispiels. Unter eigenem Namen gespeichert, bleibt sie erhalten.</translation>
    </message>
    <message>
        <source>The show cannot be saved here.</source>
        <translation>Die Show lässt sich hier nicht speichern.</translation>
    </message>
    <message>
        <source>Use Save As to save it under another name.</source>
        <translation>Speichere sie mit „Speichern unter“ unter anderem Namen.</translation>
    </message>
    <message>
        <source>The show cannot be saved there.</source>
        <translation>Die Show lässt sich dort nicht speichern.</translation>
    </message>
    <message>
        <source>Choose another name or folder.</source>
        <translation>Wähle einen anderen Namen oder Ordner.</translation>
    </message>
    <message>
        <source>The show could not be saved. The file is as it was before.</source>
        <translation>Die Show konnte nicht gespeichert werden. Die Datei ist wie zuvor.</translation>
    </message>
    <message>
        <source>Save it in another place with Save As. Until then nothing here is lost.</source>
        <translation>Speichere sie mit „Speichern unter“ an einem anderen Ort. Bis dahin geht hier nichts verloren.</translation>
    </message>
    <message>
        <source>The file is write-protected.</source>
        <translation>Die Datei ist schreibgeschützt.</translation>
    </message>
    <message>
        <source>Its folder is write-protected.</source>
        <translation>Ihr Ordner ist schreibgeschützt.</translation>
    </message>
    <message>
        <source>It is open in another window (%1, process %2 on %3).</source>
        <translation>Sie ist in einem anderen Fenster offen (%1, Prozess %2 auf %3).</translation>
    </message>
</context>
<context>
    <name>howlmap::app::FilterHandles</name>
    <message>
        <source>Move high-pass</source>
        <translation>Hochpass verschieben</translation>
    </message>
    <message>
        <source>Move notch</source>
        <translation>Kerbfilter verschieben</translation>
    </message>
    <message>
        <source>Change width of notch</source>
        <translation>Breite des Kerbfilters ändern</translation>
    </message>
</context>
<context>
    <name>howlmap::app::GuidePanel</name>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>The step before (Page up).</source>
        <translation>Der vorige Schritt (Bild auf).</translation>
    </message>
    <message>
        <source>&amp;Next</source>
        <translation>&amp;Weiter</translation>
    </message>
    <message>
        <source>The next step (Page down).</source>
        <translation>Der nächste Schritt (Bild ab).</translation>
    </message>
    <message>
        <source>Hint</source>
        <translation>Hinweis</translation>
    </message>
    <message>
        <source>Shows a hint for this task.</source>
        <translation>Zeigt einen Hinweis zu dieser Aufgabe.</translation>
    </message>
    <message>
        <source>Show one way</source>
        <translation>Ein Weg</translation>
    </message>
    <message>
        <source>Sets the bench so that the task is solved.</source>
        <translation>Stellt die Bank so ein, dass die Aufgabe gelöst ist.</translation>
    </message>
    <message>
        <source>As at first</source>
        <translation>Wie zu Beginn</translation>
    </message>
    <message>
        <source>Sets the bench back to how it was.</source>
        <translation>Stellt die Bank zurück, wie sie war.</translation>
    </message>
    <message>
        <source>Lesson</source>
        <translation>Lektion</translation>
    </message>
    <message>
        <source>Free play</source>
        <translation>Freies Spiel</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>Drag the microphone and the loudspeaker, turn the knobs, and watch which frequencies fit. Below the picture stands what just changed.</source>
        <translation>Ziehe Mikrofon und Lautsprecher, drehe an den Reglern, und sieh, welche Frequenzen passen. Unter dem Bild steht, was sich eben geändert hat.</translation>
    </message>
    <message>
        <source>&amp;First lesson</source>
        <translation>&amp;Erste Lektion</translation>
    </message>
    <message>
        <source>Your task</source>
        <translation>Deine Aufgabe</translation>
    </message>
    <message>
        <source>Step %1 of %2</source>
        <translation>Schritt %1 von %2</translation>
    </message>
    <message>
        <source>✓ Solved.</source>
        <translation>✓ Gelöst.</translation>
    </message>
    <message>
        <source>Not yet.</source>
        <translation>Noch nicht.</translation>
    </message>
    <message>
        <source>&amp;Free play</source>
        <translation>&amp;Freies Spiel</translation>
    </message>
    <message>
        <source>&amp;Next lesson</source>
        <translation>&amp;Nächste Lektion</translation>
    </message>
</context>
<context>
    <name>howlmap::app::HearWindow</name>
    <message>
        <source>&amp;Write a sound file...</source>
        <translation>Ton&amp;datei schreiben...</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Hear the stage - Howlmap</source>
        <translation>Bühne anhören - Howlmap</translation>
    </message>
    <message>
        <source>What is played</source>
        <translation>Was gespielt wird</translation>
    </message>
    <message>
        <source>What suits the input</source>
        <translation>Was zum Eingang passt</translation>
    </message>
    <message>
        <source>Plucked strings</source>
        <translation>Gezupfte Saiten</translation>
    </message>
    <message>
        <source>Bowed strings</source>
        <translation>Gestrichene Saiten</translation>
    </message>
    <message>
        <source>A recording...</source>
        <translation>Eine Aufnahme...</translation>
    </message>
    <message>
        <source>Into which input</source>
        <translation>In welchen Eingang</translation>
    </message>
    <message>
        <source>Writes what would be heard as a WAV file, faded in and held below half of full scale.</source>
        <translation>Schreibt, was zu hören wäre, als WAV-Datei, eingeblendet und unter halber Vollaussteuerung gehalten.</translation>
    </message>
    <message>
        <source>&amp;Play</source>
        <translation>S&amp;pielen</translation>
    </message>
    <message>
        <source>&amp;Into</source>
        <translation>&amp;In</translation>
    </message>
    <message>
        <source>As drawn</source>
        <translation>Wie gezeichnet</translation>
    </message>
    <message>
        <source>Nothing was written.</source>
        <translation>Es wurde nichts geschrieben.</translation>
    </message>
    <message>
        <source>on its way</source>
        <translation>unterwegs</translation>
    </message>
    <message>
        <source>The one that feeds the first ring</source>
        <translation>Der, der das erste Pfeifen speist</translation>
    </message>
    <message>
        <source>A recording to play</source>
        <translation>Eine Aufnahme zum Abspielen</translation>
    </message>
    <message>
        <source>Sound files (*.wav *.flac *.aiff *.ogg)</source>
        <translation>Tondateien (*.wav *.flac *.aiff *.ogg)</translation>
    </message>
    <message>
        <source>Reading %1...</source>
        <translation>%1 wird gelesen...</translation>
    </message>
    <message>
        <source>%1 is played.</source>
        <translation>%1 wird gespielt.</translation>
    </message>
    <message>
        <source>Write a sound file</source>
        <translation>Tondatei schreiben</translation>
    </message>
    <message>
        <source>WAV sound (*.wav)</source>
        <translation>WAV-Ton (*.wav)</translation>
    </message>
    <message>
        <source>Written. Strongest at %1, %2 dB a second.</source>
        <translation>Geschrieben. Am stärksten bei %1, %2 dB in der Sekunde.</translation>
    </message>
    <message>
        <source>Written.</source>
        <translation>Geschrieben.</translation>
    </message>
    <message>
        <source>Stops writing; no file is left behind.</source>
        <translation>Hört auf zu schreiben; es bleibt keine Datei zurück.</translation>
    </message>
</context>
<context>
    <name>howlmap::app::HelpViewer</name>
    <message>
        <source>Help</source>
        <translation>Hilfe</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>Goes to the page before.</source>
        <translation>Geht zur Seite davor.</translation>
    </message>
    <message>
        <source>Forward</source>
        <translation>Vor</translation>
    </message>
    <message>
        <source>Goes on to the page after.</source>
        <translation>Geht zur Seite danach.</translation>
    </message>
    <message>
        <source>Help page</source>
        <translation>Hilfeseite</translation>
    </message>
</context>
<context>
    <name>howlmap::app::InputsModel</name>
    <message>
        <source>Ch</source>
        <translation>Kanal</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Transducer</source>
        <translation>Wandler</translation>
    </message>
    <message>
        <source>Player</source>
        <translation>Spieler</translation>
    </message>
    <message>
        <source>Stand</source>
        <translation>Stativ</translation>
    </message>
    <message>
        <source>48 V</source>
        <translation>48 V</translation>
    </message>
    <message>
        <source>DI</source>
        <translation>DI</translation>
    </message>
    <message>
        <source>Polarity</source>
        <translation>Polarität</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>Edit input list</source>
        <translation>Eingangsliste ändern</translation>
    </message>
    <message>
        <source>Reorder inputs</source>
        <translation>Eingänge umordnen</translation>
    </message>
    <message>
        <source>Paste into input list</source>
        <translation>In die Eingangsliste einfügen</translation>
    </message>
    <message>
        <source>row %1: %2</source>
        <translation>Zeile %1: %2</translation>
    </message>
    <message>
        <source>normal</source>
        <translation>normal</translation>
    </message>
    <message>
        <source>inverted</source>
        <translation>gedreht</translation>
    </message>
</context>
<context>
    <name>howlmap::app::InputsPanel</name>
    <message>
        <source>No inputs yet: drag a microphone or an instrument from Parts, or paste a list from a spreadsheet.</source>
        <translation>Noch keine Eingänge: ziehe ein Mikrofon oder Instrument aus den Teilen, oder füge eine Liste aus einer Tabelle ein.</translation>
    </message>
    <message>
        <source>Input list</source>
        <translation>Eingangsliste</translation>
    </message>
    <message>
        <source>Copy cells</source>
        <translation>Zellen kopieren</translation>
    </message>
    <message>
        <source>Paste cells</source>
        <translation>Zellen einfügen</translation>
    </message>
    <message>
        <source>Move up</source>
        <translation>Nach oben</translation>
    </message>
    <message>
        <source>Move down</source>
        <translation>Nach unten</translation>
    </message>
    <message>
        <source>Some cells were left as they were. %1</source>
        <translation>Einige Zellen blieben, wie sie waren. %1</translation>
    </message>
    <message>
        <source>Remove inputs</source>
        <translation>Eingänge entfernen</translation>
    </message>
    <message>
        <source>Mark a cell of the input that is to go.</source>
        <translation>Markiere eine Zelle des Eingangs, der wegfallen soll.</translation>
    </message>
    <message>
        <source>Nothing removed: what is marked is locked.</source>
        <translation>Nichts entfernt: Das Markierte ist gesperrt.</translation>
    </message>
    <message>
        <source>Copies the marked cells for a spreadsheet; without any the whole list.</source>
        <translation>Kopiert die markierten Zellen für eine Tabellenkalkulation; ohne Markierung die ganze Liste.</translation>
    </message>
    <message>
        <source>Puts cells from a spreadsheet here, from the marked cell on.</source>
        <translation>Setzt Zellen aus einer Tabellenkalkulation ein, ab der markierten Zelle.</translation>
    </message>
    <message>
        <source>Takes this input to the channel before.</source>
        <translation>Bringt diesen Eingang auf den Kanal davor.</translation>
    </message>
    <message>
        <source>Takes this input to the next channel.</source>
        <translation>Bringt diesen Eingang auf den nächsten Kanal.</translation>
    </message>
    <message>
        <source>Takes the marked inputs and their sends out of the show.</source>
        <translation>Nimmt die markierten Eingänge und ihre Sends aus der Show.</translation>
    </message>
</context>
<context>
    <name>howlmap::app::InspectorPanel</name>
    <message>
        <source>Nothing selected: the show and its stage</source>
        <translation>Nichts ausgewählt: die Show und ihre Bühne</translation>
    </message>
    <message>
        <source>%1 objects</source>
        <translation>%1 Objekte</translation>
    </message>
    <message>
        <source>Selected</source>
        <translation>Ausgewählt</translation>
    </message>
    <message>
        <source>From a tap recording…</source>
        <translation>Aus Klopfaufnahme…</translation>
    </message>
    <message>
        <source>Finds the body modes in a recording of taps and puts them on this pickup.</source>
        <translation>Findet die Korpusmoden in einer Aufnahme von Klopfern und gibt sie diesem Tonabnehmer.</translation>
    </message>
</context>
<context>
    <name>howlmap::app::KindsDialog</name>
    <message>
        <source>Kinds of cure</source>
        <translation>Arten von Abhilfen</translation>
    </message>
    <message>
        <source>Take away what cannot be had here, say in-ears that nobody owns. Trouble is what a cure costs you besides tone: 1 is as bad as 1 dB of tone. The ranking and the plan follow.</source>
        <translation>Nimm heraus, was es hier nicht gibt, etwa In-Ears, die niemand hat. Mühe ist, was eine Abhilfe außer Klang kostet: 1 ist so schlimm wie 1 dB Klang. Reihung und Vorschlag richten sich danach.</translation>
    </message>
    <message>
        <source>Trouble</source>
        <translation>Mühe</translation>
    </message>
    <message>
        <source>Trouble of: %1</source>
        <translation>Mühe von: %1</translation>
    </message>
</context>
<context>
    <name>howlmap::app::KnobPanel</name>
    <message>
        <source>Freq&amp;uency</source>
        <translation>Freq&amp;uenz</translation>
    </message>
    <message>
        <source> Hz</source>
        <translation> Hz</translation>
    </message>
    <message>
        <source>&amp;Distance</source>
        <translation>Abstan&amp;d</translation>
    </message>
    <message>
        <source> m</source>
        <translation> m</translation>
    </message>
    <message>
        <source>&amp;Height</source>
        <translation>&amp;Höhe</translation>
    </message>
    <message>
        <source>Microphone &amp;aim</source>
        <translation>Mikrofon&amp;richtung</translation>
    </message>
    <message>
        <source>°</source>
        <translation>°</translation>
    </message>
    <message>
        <source>&amp;Level at 1 m</source>
        <translation>Pege&amp;l in 1 m</translation>
    </message>
    <message>
        <source> dB</source>
        <translation> dB</translation>
    </message>
    <message>
        <source>Player at m&amp;ic</source>
        <translation>Sp&amp;iel am Mikrofon</translation>
    </message>
    <message>
        <source>La&amp;tency</source>
        <translation>La&amp;tenz</translation>
    </message>
    <message>
        <source> ms</source>
        <translation> ms</translation>
    </message>
    <message>
        <source>Loudspeaker height</source>
        <translation>Höhe des Lautsprechers</translation>
    </message>
    <message>
        <source>Loudspeaker aim</source>
        <translation>Richtung des Lautsprechers</translation>
    </message>
    <message>
        <source>&amp;Middle</source>
        <translation>&amp;Mitten</translation>
    </message>
    <message>
        <source>One band at</source>
        <translation>Ein Band bei</translation>
    </message>
    <message>
        <source>One &amp;band by</source>
        <translation>Ein &amp;Band um</translation>
    </message>
    <message>
        <source>&amp;Polarity turned</source>
        <translation>&amp;Polarität gedreht</translation>
    </message>
    <message>
        <source>&amp;Floor reflects</source>
        <translation>Boden re&amp;flektiert</translation>
    </message>
    <message>
        <source>Instrument with pick&amp;up</source>
        <translation>Instrument mit Tonabne&amp;hmer</translation>
    </message>
    <message>
        <source>Sound holes &amp;covered</source>
        <translation>S&amp;challlöcher abgedeckt</translation>
    </message>
    <message>
        <source>In-&amp;ears</source>
        <translation>In-&amp;Ears</translation>
    </message>
    <message>
        <source>%1, slider</source>
        <translation>%1, Schieber</translation>
    </message>
    <message>
        <source>Pattern of the microphone</source>
        <translation>Richtcharakteristik des Mikrofons</translation>
    </message>
    <message>
        <source> ft</source>
        <translation> ft</translation>
    </message>
</context>
<context>
    <name>howlmap::app::LessonActions</name>
    <message>
        <source>There is no loop to show: select a microphone and a loudspeaker that plays it.</source>
        <translation>Es gibt keine Schleife zu zeigen: wähle ein Mikrofon und einen Lautsprecher, der es wiedergibt.</translation>
    </message>
</context>
<context>
    <name>howlmap::app::LessonWindow</name>
    <message>
        <source>Lesson - Howlmap</source>
        <translation>Lektion - Howlmap</translation>
    </message>
    <message>
        <source>What just changed</source>
        <translation>Was sich eben geändert hat</translation>
    </message>
    <message>
        <source>Stand still</source>
        <translation>Stillstehen</translation>
    </message>
    <message>
        <source>Stops or starts the waves (Space). It is remembered.</source>
        <translation>Hält die Wellen an oder lässt sie laufen (Leertaste). Es wird gemerkt.</translation>
    </message>
    <message>
        <source>Put &amp;back into the show</source>
        <translation>In die Show ü&amp;bernehmen</translation>
    </message>
    <message>
        <source>What was changed here since the pair came from the show is changed there, as one step that can be undone.</source>
        <translation>Was hier geändert wurde, seit das Paar aus der Show kam, wird dort geändert, als ein Schritt, der sich zurücknehmen lässt.</translation>
    </message>
    <message>
        <source>Full screen</source>
        <translation>Vollbild</translation>
    </message>
    <message>
        <source>Uses the whole screen, for a class or a projector (F11, back with Esc).</source>
        <translation>Nutzt den ganzen Bildschirm, für eine Klasse oder einen Beamer (F11, zurück mit Esc).</translation>
    </message>
    <message>
        <source>Back to the window, silence</source>
        <translation>Zurück zum Fenster, Stille</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Hilfe</translation>
    </message>
    <message>
        <source>Next step</source>
        <translation>Nächster Schritt</translation>
    </message>
    <message>
        <source>Step before</source>
        <translation>Voriger Schritt</translation>
    </message>
    <message>
        <source>Next frequency that fits</source>
        <translation>Nächste Frequenz, die passt</translation>
    </message>
    <message>
        <source>Frequency before that fits</source>
        <translation>Vorige Frequenz, die passt</translation>
    </message>
    <message>
        <source>Polarity</source>
        <translation>Polarität</translation>
    </message>
    <message>
        <source>Floor</source>
        <translation>Boden</translation>
    </message>
    <message>
        <source>Body</source>
        <translation>Korpus</translation>
    </message>
    <message>
        <source>Sound holes</source>
        <translation>Schalllöcher</translation>
    </message>
    <message>
        <source>In-ears</source>
        <translation>In-Ears</translation>
    </message>
    <message>
        <source>Nothing sends this input to that loudspeaker, so there is no loop to show.</source>
        <translation>Nichts sendet diesen Eingang zu jenem Lautsprecher, also gibt es keine Schleife zu zeigen.</translation>
    </message>
    <message>
        <source>Lesson: what was tried</source>
        <translation>Lektion: was ausprobiert wurde</translation>
    </message>
    <message>
        <source>The show has what was tried in the lesson.</source>
        <translation>Die Show hat, was in der Lektion ausprobiert wurde.</translation>
    </message>
    <message>
        <source>Nothing was changed in the lesson.</source>
        <translation>In der Lektion wurde nichts geändert.</translation>
    </message>
    <message>
        <source>Margin %1</source>
        <translation>Reserve %1</translation>
    </message>
    <message>
        <source>No loop</source>
        <translation>Keine Schleife</translation>
    </message>
    <message>
        <source>First ring %1, %2</source>
        <translation>Pfeift zuerst bei %1, %2</translation>
    </message>
    <message>
        <source>Tone cost %1 dB</source>
        <translation>Klang kostet %1 dB</translation>
    </message>
    <message>
        <source>Leave full screen</source>
        <translation>Vollbild verlassen</translation>
    </message>
</context>
<context>
    <name>howlmap::app::LiveDisplay</name>
    <message>
        <source>Live sound</source>
        <translation>Live-Klang</translation>
    </message>
    <message>
        <source>Not listening</source>
        <translation>Hört nicht zu</translation>
    </message>
    <message>
        <source>Quiet</source>
        <translation>Still</translation>
    </message>
    <message>
        <source>RINGS %1 · %2</source>
        <translation>PFEIFT %1 · %2</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>%1 dBFS   peak %2%3</source>
        <translation>%1 dBFS   Spitze %2%3</translation>
    </message>
</context>
<context>
    <name>howlmap::app::LivePage</name>
    <message>
        <source>Sound input</source>
        <translation>Toneingang</translation>
    </message>
    <message>
        <source>Where the sound comes from.</source>
        <translation>Woher der Klang kommt.</translation>
    </message>
    <message>
        <source>&amp;Listen</source>
        <translation>&amp;Zuhören</translation>
    </message>
    <message>
        <source>Begins or stops listening; nothing is kept.</source>
        <translation>Beginnt oder beendet das Zuhören; nichts wird behalten.</translation>
    </message>
    <message>
        <source>&amp;Fill the screen</source>
        <translation>&amp;Bildschirmfüllend</translation>
    </message>
    <message>
        <source>Shows it so large that it can be read from the stage; Esc closes.</source>
        <translation>Zeigt es so groß, dass man es von der Bühne lesen kann; Esc schließt.</translation>
    </message>
    <message>
        <source>&amp;Cut this ring</source>
        <translation>&amp;Diese Pfeifstelle absenken</translation>
    </message>
    <message>
        <source>Takes the last ring into the walk.</source>
        <translation>Nimmt das letzte Pfeifen in den Rundgang.</translation>
    </message>
    <message>
        <source>A file in its place…</source>
        <translation>Eine Datei stattdessen…</translation>
    </message>
    <message>
        <source>Look for sound inputs again</source>
        <translation>Noch einmal nach Toneingängen suchen</translation>
    </message>
    <message>
        <source>Levels are of the input (dBFS), not of the room.</source>
        <translation>Pegel sind die des Eingangs (dBFS), nicht die des Raums.</translation>
    </message>
    <message>
        <source>A file in place of a sound input</source>
        <translation>Eine Datei anstelle eines Toneingangs</translation>
    </message>
    <message>
        <source>&amp;Stop</source>
        <translation>&amp;Stopp</translation>
    </message>
    <message>
        <source>Listening; nothing is kept. Levels are of the input (dBFS), not of the room.</source>
        <translation>Hört zu; nichts wird behalten. Pegel sind die des Eingangs (dBFS), nicht die des Raums.</translation>
    </message>
    <message>
        <source>Stopped. The last ring was at %1.</source>
        <translation>Angehalten. Das letzte Pfeifen war bei %1.</translation>
    </message>
    <message>
        <source>Stopped.</source>
        <translation>Angehalten.</translation>
    </message>
    <message>
        <source>Live sound</source>
        <translation>Live-Klang</translation>
    </message>
</context>
<context>
    <name>howlmap::app::LogModel</name>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Frequency</source>
        <translation>Frequenz</translation>
    </message>
    <message>
        <source>Band</source>
        <translation>Band</translation>
    </message>
    <message>
        <source>Input</source>
        <translation>Eingang</translation>
    </message>
    <message>
        <source>Mix</source>
        <translation>Mix</translation>
    </message>
    <message>
        <source>Action</source>
        <translation>Handlung</translation>
    </message>
    <message>
        <source>Gain</source>
        <translation>Verstärkung</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>%1 cannot be &quot;%2&quot;.</source>
        <translation>%1 kann nicht „%2“ sein.</translation>
    </message>
    <message>
        <source>Edit log</source>
        <translation>Protokoll ändern</translation>
    </message>
    <message>
        <source>Add to log</source>
        <translation>Ins Protokoll aufnehmen</translation>
    </message>
    <message>
        <source>Remove from log</source>
        <translation>Aus dem Protokoll nehmen</translation>
    </message>
</context>
<context>
    <name>howlmap::app::LogPage</name>
    <message>
        <source>Log of the soundcheck</source>
        <translation>Protokoll des Soundchecks</translation>
    </message>
    <message>
        <source>Nothing logged yet: rings that you log appear here and on the printed sheet.</source>
        <translation>Noch nichts eingetragen: eingetragene Pfeifstellen erscheinen hier und auf dem gedruckten Blatt.</translation>
    </message>
    <message>
        <source>Remove row</source>
        <translation>Zeile entfernen</translation>
    </message>
    <message>
        <source>Takes the marked rows out of the log (Del).</source>
        <translation>Nimmt die gewählten Zeilen aus dem Protokoll (Entf).</translation>
    </message>
    <message>
        <source>&amp;Add row</source>
        <translation>Zeile &amp;hinzufügen</translation>
    </message>
    <message>
        <source>Adds a row for something that was found by ear.</source>
        <translation>Fügt eine Zeile für etwas hinzu, das nach Gehör gefunden wurde.</translation>
    </message>
    <message>
        <source>&amp;Remove row</source>
        <translation>Zeile &amp;entfernen</translation>
    </message>
    <message>
        <source>Takes the marked rows out of the log.</source>
        <translation>Nimmt die gewählten Zeilen aus dem Protokoll.</translation>
    </message>
</context>
<context>
    <name>howlmap::app::LoopsPanel</name>
    <message>
        <source>Large: margin to count on</source>
        <translation>Groß: verlässliche Reserve</translation>
    </message>
    <message>
        <source>Rings, worst first</source>
        <translation>Pfeifstellen, schlimmste zuerst</translation>
    </message>
    <message>
        <source>Each card is a frequency that can ring: note, band, who makes it; at the right the margin to count on, and below it the margin as drawn.</source>
        <translation>Jede Karte ist eine Frequenz, die pfeifen kann: Ton, Band, wer sie macht; rechts die verlässliche Reserve, darunter die Reserve wie gezeichnet.</translation>
    </message>
    <message>
        <source>Nothing can ring. Give a mix a loudspeaker and send it a microphone or a pickup, in Mixes.</source>
        <translation>Nichts kann pfeifen. Gib unter Mixe einem Mix einen Lautsprecher und schicke ihm ein Mikrofon oder einen Tonabnehmer.</translation>
    </message>
    <message>
        <source>The first figures are on their way.</source>
        <translation>Die ersten Zahlen sind unterwegs.</translation>
    </message>
    <message>
        <source>Show in the &amp;lesson</source>
        <translation>In der &amp;Lektion zeigen</translation>
    </message>
    <message>
        <source>Puts the loudspeaker and the microphone that make this ring on the bench of the lesson.</source>
        <translation>Stellt den Lautsprecher und das Mikrofon, die dieses Pfeifen machen, auf die Bank der Lektion.</translation>
    </message>
</context>
<context>
    <name>howlmap::app::MainWindow</name>
    <message>
        <source>A calculation broke off by an error of the program; what it would have shown is missing. (%1)</source>
        <translation>Eine Berechnung brach durch einen Fehler des Programms ab; was sie gezeigt hätte, fehlt. (%1)</translation>
    </message>
    <message>
        <source>Last message</source>
        <translation>Letzte Meldung</translation>
    </message>
    <message>
        <source>Saved %1.</source>
        <translation>%1 gespeichert.</translation>
    </message>
    <message>
        <source>Read-only. %1</source>
        <translation>Nur lesbar. %1</translation>
    </message>
    <message>
        <source>No copy could be kept aside: %1</source>
        <translation>Es konnte keine Kopie beiseitegelegt werden: %1</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>&amp;Undo %1</source>
        <translation>&amp;Rückgängig: %1</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederholen</translation>
    </message>
    <message>
        <source>&amp;Redo %1</source>
        <translation>&amp;Wiederholen: %1</translation>
    </message>
    <message>
        <source>New show</source>
        <translation>Neue Show</translation>
    </message>
    <message>
        <source>%1 (read-only)[*] - Howlmap</source>
        <translation>%1 (nur lesbar)[*] - Howlmap</translation>
    </message>
    <message>
        <source>%1[*] - Howlmap</source>
        <translation>%1[*] - Howlmap</translation>
    </message>
    <message>
        <source>Restore unsaved changes</source>
        <translation>Ungespeichertes wiederherstellen</translation>
    </message>
</context>
<context>
    <name>howlmap::app::MeasuredDirectivity</name>
    <message>
        <source>Paste table</source>
        <translation>Tabelle einfügen</translation>
    </message>
    <message>
        <source>First line: angles; each further line: Hz, then dB at each angle</source>
        <translation>Erste Zeile: Winkel; jede weitere: Hz, dann dB bei jedem Winkel</translation>
    </message>
    <message>
        <source>Load table…</source>
        <translation>Tabelle laden…</translation>
    </message>
    <message>
        <source>From a CSV file</source>
        <translation>Aus einer CSV-Datei</translation>
    </message>
    <message>
        <source>Copy table</source>
        <translation>Tabelle kopieren</translation>
    </message>
    <message>
        <source>As comma separated text</source>
        <translation>Als Text mit Kommas</translation>
    </message>
    <message>
        <source>%1 angles by %2 frequencies, the same all round the axis</source>
        <translation>%1 Winkel mal %2 Frequenzen, rund um die Achse gleich</translation>
    </message>
    <message>
        <source>Set measured directivity</source>
        <translation>Gemessene Richtwirkung setzen</translation>
    </message>
    <message>
        <source>Load a directivity</source>
        <translation>Richtwirkung laden</translation>
    </message>
    <message>
        <source>Tables (*.csv *.txt *.tsv);;All files (*)</source>
        <translation>Tabellen (*.csv *.txt *.tsv);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>%1 cannot be read</source>
        <translation>%1 lässt sich nicht lesen</translation>
    </message>
</context>
<context>
    <name>howlmap::app::MixesPanel</name>
    <message>
        <source>No mixes yet: place a wedge beside a player, or add a mix here.</source>
        <translation>Noch keine Mixe: stelle einen Monitor neben eine Spielerin, oder füge hier einen Mix hinzu.</translation>
    </message>
    <message>
        <source>Sends, inputs by mixes</source>
        <translation>Sends, Eingänge mal Mixe</translation>
    </message>
    <message>
        <source>Copy cells</source>
        <translation>Zellen kopieren</translation>
    </message>
    <message>
        <source>Paste cells</source>
        <translation>Zellen einfügen</translation>
    </message>
    <message>
        <source>Take out send</source>
        <translation>Send herausnehmen</translation>
    </message>
    <message>
        <source> dB at 1 m</source>
        <translation> dB in 1 m</translation>
    </message>
    <message>
        <source>Level of the send at 1 m</source>
        <translation>Pegel des Sends in 1 m</translation>
    </message>
    <message>
        <source> dBA</source>
        <translation> dBA</translation>
    </message>
    <message>
        <source>Level of the send at the ear</source>
        <translation>Pegel des Sends am Ohr</translation>
    </message>
    <message>
        <source>Sets the send so that it reaches this level at the ear. An estimate, not a measurement.</source>
        <translation>Stellt den Send so, dass er am Ohr diesen Pegel erreicht. Eine Schätzung, keine Messung.</translation>
    </message>
    <message>
        <source>Add mix</source>
        <translation>Mix hinzufügen</translation>
    </message>
    <message>
        <source>Remove mix</source>
        <translation>Mix entfernen</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1 in %2</translation>
    </message>
    <message>
        <source>Mark a cell to set its send</source>
        <translation>Eine Zelle wählen, um ihren Send zu stellen</translation>
    </message>
    <message>
        <source>at the ear</source>
        <translation>am Ohr</translation>
    </message>
    <message>
        <source>at the ear of %1</source>
        <translation>am Ohr von %1</translation>
    </message>
    <message>
        <source>Mix %1</source>
        <translation>Mix %1</translation>
    </message>
    <message>
        <source>Mark a cell of the mix that is to go.</source>
        <translation>Wähle eine Zelle des Mixes, der gehen soll.</translation>
    </message>
    <message>
        <source>Copies the marked cells for a spreadsheet; without any the whole table.</source>
        <translation>Kopiert die markierten Zellen für eine Tabellenkalkulation; ohne Markierung die ganze Tabelle.</translation>
    </message>
    <message>
        <source>Puts levels from a spreadsheet here, from the marked cell on.</source>
        <translation>Setzt Pegel aus einer Tabellenkalkulation ein, ab der markierten Zelle.</translation>
    </message>
    <message>
        <source>The mix no longer gets this input.</source>
        <translation>Der Mix bekommt diesen Eingang nicht mehr.</translation>
    </message>
    <message>
        <source>A new mix; say in the Inspector which loudspeakers play it.</source>
        <translation>Ein neuer Mix; welche Lautsprecher ihn spielen, sagst du in den Eigenschaften.</translation>
    </message>
    <message>
        <source>Removes the mix of the marked cell with all its sends.</source>
        <translation>Entfernt den Mix der markierten Zelle mit allen seinen Sends.</translation>
    </message>
</context>
<context>
    <name>howlmap::app::NumberTable</name>
    <message>
        <source>Add</source>
        <translation>Hinzufügen</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Paste</source>
        <translation>Einfügen</translation>
    </message>
    <message>
        <source>Load…</source>
        <translation>Laden…</translation>
    </message>
    <message>
        <source>Copy cells</source>
        <translation>Zellen kopieren</translation>
    </message>
    <message>
        <source>Load a table</source>
        <translation>Tabelle laden</translation>
    </message>
    <message>
        <source>Tables (*.csv *.txt *.tsv);;All files (*)</source>
        <translation>Tabellen (*.csv *.txt *.tsv);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>%1 cannot be read</source>
        <translation>%1 lässt sich nicht lesen</translation>
    </message>
    <message>
        <source>Adds a row at the end.</source>
        <translation>Fügt am Ende eine Zeile an.</translation>
    </message>
    <message>
        <source>Takes the current row out.</source>
        <translation>Nimmt die aktuelle Zeile heraus.</translation>
    </message>
    <message>
        <source>Replaces all rows by those on the clipboard.</source>
        <translation>Ersetzt alle Zeilen durch die der Zwischenablage.</translation>
    </message>
    <message>
        <source>Replaces all rows by those of a CSV file.</source>
        <translation>Ersetzt alle Zeilen durch die einer CSV-Datei.</translation>
    </message>
    <message>
        <source>Copies the marked cells for a spreadsheet; without any the whole table.</source>
        <translation>Kopiert die markierten Zellen für eine Tabellenkalkulation; ohne Markierung die ganze Tabelle.</translation>
    </message>
    <message>
        <source>Paste rows</source>
        <translation>Zeilen einfügen</translation>
    </message>
    <message>
        <source>Remove row</source>
        <translation>Zeile entfernen</translation>
    </message>
</context>
<context>
    <name>howlmap::app::NumberTableModel</name>
    <message>
        <source>expected at most %1 rows</source>
        <translation>höchstens %1 Zeilen erwartet</translation>
    </message>
    <message>
        <source>row %1, %2: found %3, expected %4 to %5</source>
        <translation>Zeile %1, %2: %3 gefunden, %4 bis %5 erwartet</translation>
    </message>
    <message>
        <source>&quot;%1&quot; cannot be read as a number</source>
        <translation>„%1“ lässt sich nicht als Zahl lesen</translation>
    </message>
    <message>
        <source>line %1: found %2 numbers, expected %3</source>
        <translation>Zeile %1: %2 Zahlen gefunden, %3 erwartet</translation>
    </message>
    <message>
        <source>found no numbers</source>
        <translation>keine Zahlen gefunden</translation>
    </message>
    <message>
        <source>%1, m</source>
        <translation>%1, m</translation>
    </message>
    <message>
        <source>&quot;%1&quot; cannot be read as a length</source>
        <translation>„%1“ lässt sich nicht als Länge lesen</translation>
    </message>
</context>
<context>
    <name>howlmap::app::OverlayBar</name>
    <message>
        <source>no map</source>
        <translation>keine Karte</translation>
    </message>
    <message>
        <source>feedback map of</source>
        <translation>Rückkopplungskarte von</translation>
    </message>
    <message>
        <source>loudspeaker map of</source>
        <translation>Lautsprecherkarte von</translation>
    </message>
    <message>
        <source>level map of</source>
        <translation>Pegelkarte von</translation>
    </message>
    <message>
        <source>wash map</source>
        <translation>Saalkarte</translation>
    </message>
    <message>
        <source>Map under the plan</source>
        <translation>Karte unter dem Plan</translation>
    </message>
    <message>
        <source>Feedback: how much gain an input has left wherever its microphone stands. Loudspeaker: the same for a loudspeaker. Level: what a mix makes at ear height. Wash: what the stage spills into the house.</source>
        <translation>Rückkopplung: wie viel Verstärkung ein Eingang noch hat, wo auch immer sein Mikrofon steht. Lautsprecher: dasselbe für einen Lautsprecher. Pegel: was ein Mix in Ohrhöhe macht. Saal: was von der Bühne in den Saal dringt.</translation>
    </message>
    <message>
        <source>Of what the map is</source>
        <translation>Wovon die Karte ist</translation>
    </message>
    <message>
        <source>The input, loudspeaker or mix that the map is about. Selecting one on the plan chooses it here.</source>
        <translation>Der Eingang, Lautsprecher oder Mix, um den es in der Karte geht. Wer ihn im Plan auswählt, wählt ihn hier.</translation>
    </message>
    <message>
        <source>&amp;Map</source>
        <translation>&amp;Karte</translation>
    </message>
</context>
<context>
    <name>howlmap::app::OverlayLook</name>
    <message>
        <source>&amp;Frequency</source>
        <translation>&amp;Frequenz</translation>
    </message>
    <message>
        <source>Frequencies of the map</source>
        <translation>Frequenzen der Karte</translation>
    </message>
    <message>
        <source>Worst of all: at every place the frequency that rings first. Or one third-octave band, or one frequency.</source>
        <translation>Das Schlimmste von allem: an jedem Ort die Frequenz, die zuerst pfeift. Oder ein Terzband, oder eine Frequenz.</translation>
    </message>
    <message>
        <source>Frequency of the map</source>
        <translation>Frequenz der Karte</translation>
    </message>
    <message>
        <source>The map at this one frequency alone. &quot;Worst of all&quot; in the list goes back.</source>
        <translation>Die Karte bei dieser einen Frequenz. „Das Schlimmste von allem“ in der Liste führt zurück.</translation>
    </message>
    <message>
        <source>&amp;at</source>
        <translation>b&amp;ei</translation>
    </message>
    <message>
        <source>Opacity of the map</source>
        <translation>Deckkraft der Karte</translation>
    </message>
    <message>
        <source>How strongly the map shows under the objects.</source>
        <translation>Wie kräftig die Karte unter den Objekten zu sehen ist.</translation>
    </message>
    <message>
        <source>&amp;Opacity</source>
        <translation>&amp;Deckkraft</translation>
    </message>
    <message>
        <source>all bands, A-weighted</source>
        <translation>alle Bänder, A-bewertet</translation>
    </message>
    <message>
        <source>worst of all</source>
        <translation>das Schlimmste von allem</translation>
    </message>
    <message>
        <source>one frequency</source>
        <translation>eine Frequenz</translation>
    </message>
    <message>
        <source>band %1</source>
        <translation>Band %1</translation>
    </message>
</context>
<context>
    <name>howlmap::app::PartList</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1
Figures: %2
Drag onto the plan, or press Enter to place it in the middle.</source>
        <translation>%1
Zahlen: %2
Auf den Plan ziehen, oder mit Eingabe in die Mitte setzen.</translation>
    </message>
</context>
<context>
    <name>howlmap::app::PartsPanel</name>
    <message>
        <source>Search parts, e.g. wedge 12</source>
        <translation>Teile suchen, z. B. Monitor 12</translation>
    </message>
    <message>
        <source>Search parts</source>
        <translation>Teile suchen</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Drag onto the plan, or press Enter.</source>
        <translation>Auf den Plan ziehen, oder Eingabe drücken.</translation>
    </message>
</context>
<context>
    <name>howlmap::app::PhasorView</name>
    <message>
        <source>One round of the loop as arrows and as waves</source>
        <translation>Eine Runde der Schleife als Pfeile und als Wellen</translation>
    </message>
    <message>
        <source>Thin: straight. Dashed: by the floor. Heavy: both together. The ring is where a round gives back as much as it took.</source>
        <translation>Dünn: gerade. Gestrichelt: über den Boden. Kräftig: beide zusammen. Am Kreis gibt eine Runde so viel zurück, wie sie nahm.</translation>
    </message>
    <message>
        <source>%1 dB, %2 turns out of step</source>
        <translation>%1 dB, %2 Umdrehungen aus dem Takt</translation>
    </message>
    <message>
        <source>No loop</source>
        <translation>Keine Schleife</translation>
    </message>
    <message>
        <source>A round gives back %1 dB</source>
        <translation>Eine Runde gibt %1 dB zurück</translation>
    </message>
    <message>
        <source>No loop: nothing comes back</source>
        <translation>Keine Schleife: nichts kommt zurück</translation>
    </message>
    <message>
        <source>%1 turns out of step</source>
        <translation>%1 Umdrehungen aus dem Takt</translation>
    </message>
</context>
<context>
    <name>howlmap::app::PlanActions</name>
    <message>
        <source>Cu&amp;t</source>
        <translation>&amp;Ausschneiden</translation>
    </message>
    <message>
        <source>Moves the selected objects to the clipboard.</source>
        <translation>Legt die ausgewählten Objekte in die Zwischenablage.</translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translation>&amp;Kopieren</translation>
    </message>
    <message>
        <source>Copies the selected objects.</source>
        <translation>Kopiert die ausgewählten Objekte.</translation>
    </message>
    <message>
        <source>&amp;Paste</source>
        <translation>&amp;Einfügen</translation>
    </message>
    <message>
        <source>Puts the objects of the clipboard on the plan.</source>
        <translation>Setzt die Objekte der Zwischenablage auf den Plan.</translation>
    </message>
    <message>
        <source>&amp;Duplicate</source>
        <translation>&amp;Verdoppeln</translation>
    </message>
    <message>
        <source>Doubles the selected objects with their mixes and sends.</source>
        <translation>Verdoppelt die ausgewählten Objekte mit ihren Mixen und Sends.</translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation>&amp;Entfernen</translation>
    </message>
    <message>
        <source>Takes the selected objects off the stage.</source>
        <translation>Nimmt die ausgewählten Objekte von der Bühne.</translation>
    </message>
    <message>
        <source>Select &amp;all</source>
        <translation>&amp;Alles auswählen</translation>
    </message>
    <message>
        <source>Selects everything on the plan.</source>
        <translation>Wählt alles auf dem Plan aus.</translation>
    </message>
    <message>
        <source>Select &amp;none</source>
        <translation>&amp;Nichts auswählen</translation>
    </message>
    <message>
        <source>Selects nothing.</source>
        <translation>Wählt nichts aus.</translation>
    </message>
    <message>
        <source>Select same &amp;kind</source>
        <translation>&amp;Gleiche Art auswählen</translation>
    </message>
    <message>
        <source>Selects all objects of the kinds that are selected.</source>
        <translation>Wählt alle Objekte der ausgewählten Arten aus.</translation>
    </message>
    <message>
        <source>Turn &amp;left</source>
        <translation>Nach &amp;links drehen</translation>
    </message>
    <message>
        <source>Turns each selected object 15 degrees counter-clockwise.</source>
        <translation>Dreht jedes ausgewählte Objekt um 15 Grad gegen den Uhrzeigersinn.</translation>
    </message>
    <message>
        <source>Turn &amp;right</source>
        <translation>Nach &amp;rechts drehen</translation>
    </message>
    <message>
        <source>Turns each selected object 15 degrees clockwise.</source>
        <translation>Dreht jedes ausgewählte Objekt um 15 Grad im Uhrzeigersinn.</translation>
    </message>
    <message>
        <source>&amp;Mirror</source>
        <translation>&amp;Spiegeln</translation>
    </message>
    <message>
        <source>Mirrors the selected objects about the centre line.</source>
        <translation>Spiegelt die ausgewählten Objekte an der Mittellinie.</translation>
    </message>
    <message>
        <source>Loc&amp;k</source>
        <translation>S&amp;perren</translation>
    </message>
    <message>
        <source>Keeps the selected objects from being moved, turned or removed.</source>
        <translation>Schützt die ausgewählten Objekte vor Verschieben, Drehen und Entfernen.</translation>
    </message>
    <message>
        <source>Align at the left</source>
        <translation>Links ausrichten</translation>
    </message>
    <message>
        <source>Brings the selected objects to the one furthest left on the page (stage right).</source>
        <translation>Bringt die ausgewählten Objekte zum linkesten auf der Seite (Bühne rechts).</translation>
    </message>
    <message>
        <source>Align in a column</source>
        <translation>In einer Spalte ausrichten</translation>
    </message>
    <message>
        <source>Brings the selected objects to one line from upstage to downstage.</source>
        <translation>Bringt die ausgewählten Objekte auf eine Linie von hinten nach vorn.</translation>
    </message>
    <message>
        <source>Align at the right</source>
        <translation>Rechts ausrichten</translation>
    </message>
    <message>
        <source>Brings the selected objects to the one furthest right on the page (stage left).</source>
        <translation>Bringt die ausgewählten Objekte zum rechtesten auf der Seite (Bühne links).</translation>
    </message>
    <message>
        <source>Align downstage</source>
        <translation>Vorn ausrichten</translation>
    </message>
    <message>
        <source>Brings the selected objects to the one nearest the audience.</source>
        <translation>Bringt die ausgewählten Objekte zu dem, das dem Publikum am nächsten ist.</translation>
    </message>
    <message>
        <source>Align in a row</source>
        <translation>In einer Reihe ausrichten</translation>
    </message>
    <message>
        <source>Brings the selected objects to one line across the stage.</source>
        <translation>Bringt die ausgewählten Objekte auf eine Linie quer über die Bühne.</translation>
    </message>
    <message>
        <source>Align upstage</source>
        <translation>Hinten ausrichten</translation>
    </message>
    <message>
        <source>Brings the selected objects to the one furthest from the audience.</source>
        <translation>Bringt die ausgewählten Objekte zu dem, das vom Publikum am weitesten weg ist.</translation>
    </message>
    <message>
        <source>Spread across</source>
        <translation>Quer verteilen</translation>
    </message>
    <message>
        <source>Makes the gaps between the selected objects equal across the stage.</source>
        <translation>Macht die Abstände der ausgewählten Objekte quer über die Bühne gleich.</translation>
    </message>
    <message>
        <source>Spread in depth</source>
        <translation>In der Tiefe verteilen</translation>
    </message>
    <message>
        <source>Makes the gaps between the selected objects equal from front to back.</source>
        <translation>Macht die Abstände der ausgewählten Objekte von vorn nach hinten gleich.</translation>
    </message>
    <message>
        <source>Zoom &amp;in</source>
        <translation>Ver&amp;größern</translation>
    </message>
    <message>
        <source>Shows the plan larger.</source>
        <translation>Zeigt den Plan größer.</translation>
    </message>
    <message>
        <source>Zoom &amp;out</source>
        <translation>Ver&amp;kleinern</translation>
    </message>
    <message>
        <source>Shows the plan smaller.</source>
        <translation>Zeigt den Plan kleiner.</translation>
    </message>
    <message>
        <source>&amp;Whole plan</source>
        <translation>&amp;Ganzer Plan</translation>
    </message>
    <message>
        <source>Fits the whole plan into the view.</source>
        <translation>Passt den ganzen Plan in die Ansicht ein.</translation>
    </message>
    <message>
        <source>Zoom to &amp;selection</source>
        <translation>Zur Aus&amp;wahl</translation>
    </message>
    <message>
        <source>Fits the selected objects into the view.</source>
        <translation>Passt die ausgewählten Objekte in die Ansicht ein.</translation>
    </message>
    <message>
        <source>&amp;100 %</source>
        <translation>&amp;100 %</translation>
    </message>
    <message>
        <source>One metre is 100 pixels.</source>
        <translation>Ein Meter ist 100 Bildpunkte.</translation>
    </message>
    <message>
        <source>S&amp;nap</source>
        <translation>&amp;Einrasten</translation>
    </message>
    <message>
        <source>&amp;Grid</source>
        <translation>&amp;Raster</translation>
    </message>
    <message>
        <source>Shows the grid.</source>
        <translation>Zeigt das Raster.</translation>
    </message>
    <message>
        <source>&amp;Select</source>
        <translation>&amp;Auswählen</translation>
    </message>
    <message>
        <source>Picks, moves and turns objects.</source>
        <translation>Wählt, verschiebt und dreht Objekte.</translation>
    </message>
    <message>
        <source>&amp;Measure</source>
        <translation>&amp;Messen</translation>
    </message>
    <message>
        <source>Measures distance, bearing, travel time and waves between two places.</source>
        <translation>Misst Abstand, Richtung, Laufzeit und Wellen zwischen zwei Stellen.</translation>
    </message>
    <message>
        <source>Stage &amp;outline</source>
        <translation>Bühnen&amp;umriss</translation>
    </message>
    <message>
        <source>Pulls the corners of the stage; a point of an edge becomes a new corner.</source>
        <translation>Zieht an den Ecken der Bühne; ein Punkt einer Kante wird zu einer neuen Ecke.</translation>
    </message>
    <message>
        <source>&amp;Write plan...</source>
        <translation>Plan &amp;schreiben...</translation>
    </message>
    <message>
        <source>Writes the plan as PDF, SVG or PNG.</source>
        <translation>Schreibt den Plan als PDF, SVG oder PNG.</translation>
    </message>
    <message>
        <source>&amp;Print plan...</source>
        <translation>Plan &amp;drucken...</translation>
    </message>
    <message>
        <source>Prints the plan on one page, to scale.</source>
        <translation>Druckt den Plan auf eine Seite, maßstäblich.</translation>
    </message>
    <message>
        <source>Print pre&amp;view...</source>
        <translation>Druck&amp;vorschau...</translation>
    </message>
    <message>
        <source>Shows the page before it is printed.</source>
        <translation>Zeigt die Seite vor dem Druck.</translation>
    </message>
    <message>
        <source>Copy as p&amp;icture</source>
        <translation>Als &amp;Bild kopieren</translation>
    </message>
    <message>
        <source>Puts the whole plan on the clipboard as a picture.</source>
        <translation>Legt den ganzen Plan als Bild in die Zwischenablage.</translation>
    </message>
    <message>
        <source>Align and spread</source>
        <translation>Ausrichten und verteilen</translation>
    </message>
    <message>
        <source>R&amp;ulers</source>
        <translation>&amp;Lineale</translation>
    </message>
    <message>
        <source>Shows rulers: across from the centre line, in depth from the downstage edge.</source>
        <translation>Zeigt Lineale: quer von der Mittellinie aus, in die Tiefe von der Bühnenvorderkante aus.</translation>
    </message>
    <message>
        <source>Snaps to the grid, the centre line, neighbours, edges and walls while dragging. Alt suspends it.</source>
        <translation>Rastet beim Ziehen an Raster, Mittellinie, Nachbarn, Kanten und Wänden ein. Alt setzt es aus.</translation>
    </message>
</context>
<context>
    <name>howlmap::app::PlanFileDialog</name>
    <message>
        <source>Write the plan</source>
        <translation>Plan schreiben</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>SVG drawing (*.svg)</source>
        <translation>SVG-Zeichnung (*.svg)</translation>
    </message>
    <message>
        <source>PNG picture (*.png)</source>
        <translation>PNG-Bild (*.png)</translation>
    </message>
    <message>
        <source> dpi</source>
        <translation> dpi</translation>
    </message>
    <message>
        <source>Resolution of the picture</source>
        <translation>Auflösung des Bildes</translation>
    </message>
    <message>
        <source>Dots an inch of a PNG: how fine it is, and how wide its lines are.</source>
        <translation>Punkte je Zoll eines PNG: wie fein es ist und wie breit seine Linien sind.</translation>
    </message>
    <message>
        <source>Si&amp;ze in pixels</source>
        <translation>Größe in Pi&amp;xeln</translation>
    </message>
    <message>
        <source>A PNG of just this size; else it is one page at its resolution.</source>
        <translation>Ein PNG von genau dieser Größe; sonst ist es eine Seite in seiner Auflösung.</translation>
    </message>
    <message>
        <source>Width in pixels</source>
        <translation>Breite in Pixeln</translation>
    </message>
    <message>
        <source>Height in pixels</source>
        <translation>Höhe in Pixeln</translation>
    </message>
    <message>
        <source>No pa&amp;per behind the plan</source>
        <translation>Kein Pa&amp;pier hinter dem Plan</translation>
    </message>
    <message>
        <source>SVG and PNG without a background, to be laid over something else.</source>
        <translation>SVG und PNG ohne Hintergrund, um sie über etwas anderes zu legen.</translation>
    </message>
</context>
<context>
    <name>howlmap::app::PlanView</name>
    <message>
        <source>Nudge</source>
        <translation>Schubsen</translation>
    </message>
    <message>
        <source>loudspeaker</source>
        <translation>Lautsprecher</translation>
    </message>
    <message>
        <source>input</source>
        <translation>Eingang</translation>
    </message>
    <message>
        <source>player</source>
        <translation>Spieler</translation>
    </message>
    <message>
        <source>backline</source>
        <translation>Backline</translation>
    </message>
    <message>
        <source>place in the house</source>
        <translation>Platz im Saal</translation>
    </message>
    <message>
        <source>mark</source>
        <translation>Zeichen</translation>
    </message>
    <message>
        <source>riser</source>
        <translation>Podest</translation>
    </message>
    <message>
        <source>x %1, y %2</source>
        <translation>x %1, y %2</translation>
    </message>
    <message>
        <source>, yaw %1°</source>
        <translation>, Drehung %1°</translation>
    </message>
    <message>
        <source>, locked</source>
        <translation>, gesperrt</translation>
    </message>
    <message>
        <source>The plan cannot be written.</source>
        <translation>Der Plan lässt sich nicht schreiben.</translation>
    </message>
    <message>
        <source>The name ends in none of .pdf, .svg and .png.</source>
        <translation>Der Name endet weder auf .pdf noch auf .svg oder .png.</translation>
    </message>
    <message>
        <source>Choose a name with one of these endings.</source>
        <translation>Wähle einen Namen mit einer dieser Endungen.</translation>
    </message>
    <message>
        <source>Choose another folder.</source>
        <translation>Wähle einen anderen Ordner.</translation>
    </message>
    <message>
        <source>Plan written to %1</source>
        <translation>Plan nach %1 geschrieben</translation>
    </message>
    <message>
        <source>The plan is on the clipboard.</source>
        <translation>Der Plan liegt in der Zwischenablage.</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Plan</translation>
    </message>
    <message>
        <source>The stage seen from above, audience at the bottom. Tab goes from object to object, arrows move.</source>
        <translation>Die Bühne von oben, das Publikum unten. Tab geht von Objekt zu Objekt, Pfeile verschieben.</translation>
    </message>
    <message>
        <source>There is nothing on the clipboard that could stand on a stage.</source>
        <translation>In der Zwischenablage ist nichts, was auf einer Bühne stehen könnte.</translation>
    </message>
    <message>
        <source>Paste</source>
        <translation>Einfügen</translation>
    </message>
    <message>
        <source>A show cannot hold that many objects.</source>
        <translation>So viele Objekte fasst eine Show nicht.</translation>
    </message>
    <message>
        <source>Duplicate</source>
        <translation>Verdoppeln</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Setzen</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Nothing removed: what is selected is locked.</source>
        <translation>Nichts entfernt: was ausgewählt ist, ist gesperrt.</translation>
    </message>
    <message>
        <source>Turn</source>
        <translation>Drehen</translation>
    </message>
    <message>
        <source>Mirror</source>
        <translation>Spiegeln</translation>
    </message>
    <message>
        <source>Align</source>
        <translation>Ausrichten</translation>
    </message>
    <message>
        <source>Spread</source>
        <translation>Verteilen</translation>
    </message>
    <message>
        <source>Lock</source>
        <translation>Sperren</translation>
    </message>
    <message>
        <source>Unlock</source>
        <translation>Entsperren</translation>
    </message>
    <message>
        <source>Reshape stage</source>
        <translation>Bühne umformen</translation>
    </message>
    <message>
        <source>Reshape riser</source>
        <translation>Podest umformen</translation>
    </message>
    <message>
        <source>It is locked: unlock it to move it.</source>
        <translation>Es ist gesperrt: entsperren, um es zu verschieben.</translation>
    </message>
    <message>
        <source>Move</source>
        <translation>Verschieben</translation>
    </message>
    <message>
        <source>Remove corner</source>
        <translation>Ecke entfernen</translation>
    </message>
    <message>
        <source>Move wall</source>
        <translation>Wand verschieben</translation>
    </message>
    <message>
        <source>plan</source>
        <translation>plan</translation>
    </message>
    <message>
        <source>There is not enough memory for a picture of this size.</source>
        <translation>Der Speicher reicht nicht für ein Bild dieser Größe.</translation>
    </message>
    <message>
        <source>Choose fewer pixels.</source>
        <translation>Weniger Pixel wählen.</translation>
    </message>
    <message>
        <source>Writing the plan to %1…</source>
        <translation>Der Plan wird nach %1 geschrieben …</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Write the plan</source>
        <translation>Plan schreiben</translation>
    </message>
    <message>
        <source>%1 was not written</source>
        <translation>%1 wurde nicht geschrieben</translation>
    </message>
</context>
<context>
    <name>howlmap::app::Player</name>
    <message>
        <source>This machine has no sound device. A sound file can still be written: howlmap hear.</source>
        <translation>Dieser Rechner hat kein Tongerät. Eine Tondatei lässt sich trotzdem schreiben: howlmap hear.</translation>
    </message>
    <message>
        <source>%1 can not play 48 kHz. A sound file can still be written: howlmap hear.</source>
        <translation>%1 kann keine 48 kHz wiedergeben. Eine Tondatei lässt sich trotzdem schreiben: howlmap hear.</translation>
    </message>
    <message>
        <source>This program was built without sound. A sound file can still be written: howlmap hear.</source>
        <translation>Dieses Programm wurde ohne Ton gebaut. Eine Tondatei lässt sich trotzdem schreiben: howlmap hear.</translation>
    </message>
    <message>
        <source>Take headphones off and turn the volume down first. A howl is loud and comes suddenly; it fades in and is held below half of full scale, but your amplifier makes it as loud as it is set.</source>
        <translation>Nimm vorher Kopfhörer ab und drehe leiser. Ein Pfeifen ist laut und kommt plötzlich; es wird eingeblendet und unter halber Vollaussteuerung gehalten, doch dein Verstärker macht es so laut, wie er eingestellt ist.</translation>
    </message>
    <message>
        <source>There is no loop to hear: no microphone or pickup is sent to a loudspeaker.</source>
        <translation>Es gibt keine Schleife zu hören: kein Mikrofon oder Tonabnehmer geht zu einem Lautsprecher.</translation>
    </message>
    <message>
        <source>The sound device could not be opened.</source>
        <translation>Das Tongerät ließ sich nicht öffnen.</translation>
    </message>
</context>
<context>
    <name>howlmap::app::PlayersModel</name>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>Player</source>
        <translation>Spieler</translation>
    </message>
    <message>
        <source>Own</source>
        <translation>Eigenes</translation>
    </message>
    <message>
        <source>Others</source>
        <translation>Anderes</translation>
    </message>
    <message>
        <source>Hear margin</source>
        <translation>Hörreserve</translation>
    </message>
    <message>
        <source>loudspeakers</source>
        <translation>Lautsprecher</translation>
    </message>
    <message>
        <source>in-ears</source>
        <translation>In-Ears</translation>
    </message>
    <message>
        <source>no monitor</source>
        <translation>kein Monitor</translation>
    </message>
    <message>
        <source>How this player hears; choose with a double click or F2</source>
        <translation>Wie diese Person hört; wähle mit Doppelklick oder F2</translation>
    </message>
    <message>
        <source>Hears by</source>
        <translation>Hört über</translation>
    </message>
    <message>
        <source>At ear</source>
        <translation>Am Ohr</translation>
    </message>
    <message>
        <source>NIOSH</source>
        <translation>NIOSH</translation>
    </message>
    <message>
        <source>OSHA</source>
        <translation>OSHA</translation>
    </message>
    <message>
        <source>Change how %1 hears</source>
        <translation>Ändern, wie %1 hört</translation>
    </message>
    <message>
        <source>%1 dB</source>
        <translation>%1 dB</translation>
    </message>
    <message>
        <source>How much the in-ears keep out; type it after a double click or F2</source>
        <translation>Wie viel die In-Ears draußen halten; nach Doppelklick oder F2 eintippen</translation>
    </message>
    <message>
        <source>Her instrument or voice itself at her ear in loud playing; type it, empty for none</source>
        <translation>Das Instrument oder die Stimme selbst am eigenen Ohr bei lautem Spiel; eintippen, leer für keines</translation>
    </message>
    <message>
        <source>Seal</source>
        <translation>Dämpfung</translation>
    </message>
    <message>
        <source>Own acoustic</source>
        <translation>Eigener Klang</translation>
    </message>
    <message>
        <source>&quot;%1&quot;: expected decibels from %2 to %3</source>
        <translation>„%1“: Dezibel von %2 bis %3 erwartet</translation>
    </message>
    <message>
        <source>Change the seal of %1</source>
        <translation>Dämpfung von %1 ändern</translation>
    </message>
    <message>
        <source>&quot;%1&quot;: expected dBA from %2 to %3, or nothing</source>
        <translation>„%1“: dBA von %2 bis %3 erwartet, oder nichts</translation>
    </message>
    <message>
        <source>Change the acoustic sound of %1</source>
        <translation>Eigenen Klang von %1 ändern</translation>
    </message>
    <message>
        <source>Her own sound at her ears: what her sends play and the instrument itself</source>
        <translation>Ihr eigener Klang an ihren Ohren: was ihre Sends spielen und das Instrument selbst</translation>
    </message>
    <message>
        <source>Everything else at her ears</source>
        <translation>Alles andere an ihren Ohren</translation>
    </message>
    <message>
        <source>Own less others: at 0 dB she is just as loud at her ears as all others together</source>
        <translation>Eigenes weniger anderes: Bei 0 dB ist sie an ihren Ohren gerade so laut wie alle anderen zusammen</translation>
    </message>
    <message>
        <source>Own and others together at her ears</source>
        <translation>Eigenes und anderes zusammen an ihren Ohren</translation>
    </message>
    <message>
        <source>How long she may stay at that in a day; an estimate for planning, not a measurement of hearing safety</source>
        <translation>Wie lange sie am Tag dabei bleiben darf; eine Schätzung zum Planen, keine Messung zum Gehörschutz</translation>
    </message>
    <message>
        <source>What the set takes of the NIOSH dose of a day; an estimate for planning, not a measurement of hearing safety</source>
        <translation>Was das Set von der NIOSH-Tagesdosis verbraucht; eine Schätzung zum Planen, keine Messung zum Gehörschutz</translation>
    </message>
    <message>
        <source>Dose</source>
        <translation>Dosis</translation>
    </message>
</context>
<context>
    <name>howlmap::app::PolarPlot</name>
    <message>
        <source>Directivity</source>
        <translation>Richtwirkung</translation>
    </message>
    <message>
        <source>rings 6 dB</source>
        <translation>Ringe 6 dB</translation>
    </message>
</context>
<context>
    <name>howlmap::app::PolarityList</name>
    <message>
        <source>Polarity of inputs and mixes</source>
        <translation>Polarität von Eingängen und Mixen</translation>
    </message>
    <message>
        <source>Inverted</source>
        <translation>Gedreht</translation>
    </message>
    <message>
        <source>Turning it over: to count on</source>
        <translation>Umdrehen bringt verlässlich</translation>
    </message>
    <message>
        <source>as drawn</source>
        <translation>wie gezeichnet</translation>
    </message>
    <message>
        <source>Turns the polarity over; one step that can be undone.</source>
        <translation>Dreht die Polarität um; ein Schritt, der sich zurücknehmen lässt.</translation>
    </message>
    <message>
        <source>Input %1 %2</source>
        <translation>Eingang %1 %2</translation>
    </message>
    <message>
        <source>Mix %1 %2</source>
        <translation>Mix %1 %2</translation>
    </message>
    <message>
        <source>Turn polarity of %1</source>
        <translation>Polarität von %1 drehen</translation>
    </message>
    <message>
        <source>first ring</source>
        <translation>erstes Pfeifen</translation>
    </message>
    <message>
        <source>stays at %1</source>
        <translation>bleibt bei %1</translation>
    </message>
    <message>
        <source>only moves from %1 to %2</source>
        <translation>rückt nur von %1 auf %2</translation>
    </message>
    <message>
        <source>from %1 to %2</source>
        <translation>von %1 auf %2</translation>
    </message>
</context>
<context>
    <name>howlmap::app::PreferencesDialog</name>
    <message>
        <source>Preferences</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>As the desktop</source>
        <translation>Wie der Schreibtisch</translation>
    </message>
    <message>
        <source>Light: ink on paper</source>
        <translation>Hell: Tinte auf Papier</translation>
    </message>
    <message>
        <source>Dark: chalk on slate</source>
        <translation>Dunkel: Kreide auf Schiefer</translation>
    </message>
    <message>
        <source>Look</source>
        <translation>Aussehen</translation>
    </message>
    <message>
        <source>Prints are always ink on paper.</source>
        <translation>Gedruckt wird immer Tinte auf Papier.</translation>
    </message>
    <message>
        <source>As the language says</source>
        <translation>Nach der Sprache</translation>
    </message>
    <message>
        <source>Metres</source>
        <translation>Meter</translation>
    </message>
    <message>
        <source>Feet and inches</source>
        <translation>Fuß und Zoll</translation>
    </message>
    <message>
        <source>Units of new shows</source>
        <translation>Einheiten neuer Shows</translation>
    </message>
    <message>
        <source>A show keeps its own units; change them in the Inspector.</source>
        <translation>Eine Show behält ihre eigenen Einheiten; ändere sie unter Eigenschaften.</translation>
    </message>
    <message>
        <source> s</source>
        <translation> s</translation>
    </message>
    <message>
        <source>Keep a copy aside after</source>
        <translation>Kopie beiseitelegen nach</translation>
    </message>
    <message>
        <source>How long the hands must rest before unsaved changes are copied aside. Your own file is never touched.</source>
        <translation>Wie lange die Hände ruhen müssen, bis Ungespeichertes beiseitegelegt wird. Deine eigene Datei wird nie berührt.</translation>
    </message>
    <message>
        <source>&amp;Look</source>
        <translation>&amp;Aussehen</translation>
    </message>
    <message>
        <source>&amp;Units of new shows</source>
        <translation>&amp;Einheiten neuer Shows</translation>
    </message>
    <message>
        <source>Keep a &amp;copy aside after</source>
        <translation>&amp;Kopie beiseitelegen nach</translation>
    </message>
</context>
<context>
    <name>howlmap::app::RecentFiles</name>
    <message>
        <source>%1 (not there any more)</source>
        <translation>%1 (nicht mehr da)</translation>
    </message>
    <message>
        <source>No show was opened yet</source>
        <translation>Noch keine Show geöffnet</translation>
    </message>
    <message>
        <source>Shows that you open are listed here.</source>
        <translation>Geöffnete Shows stehen hier.</translation>
    </message>
    <message>
        <source>Forget these</source>
        <translation>Diese vergessen</translation>
    </message>
    <message>
        <source>Empties this list; no file is touched.</source>
        <translation>Leert diese Liste; keine Datei wird berührt.</translation>
    </message>
</context>
<context>
    <name>howlmap::app::RecordingPage</name>
    <message>
        <source>Sound (%1);;All files (*)</source>
        <translation>Klang (%1);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Load a &amp;sound…</source>
        <translation>&amp;Aufnahme laden…</translation>
    </message>
    <message>
        <source>A recording in which something howls: WAV, FLAC or AIFF, also hours long.</source>
        <translation>Eine Aufnahme, in der etwas pfeift: WAV, FLAC oder AIFF, auch stundenlang.</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Stopp</translation>
    </message>
    <message>
        <source>Gives the search up.</source>
        <translation>Bricht die Suche ab.</translation>
    </message>
    <message>
        <source>Searched so far</source>
        <translation>Bisher durchsucht</translation>
    </message>
    <message>
        <source>Load a recording, or drop one here: it says which frequency howls, and which loop it may be.</source>
        <translation>Lade eine Aufnahme, oder lass sie hier fallen: sie zeigt, welche Frequenz pfeift und welche Schleife es sein kann.</translation>
    </message>
    <message>
        <source>Frequency</source>
        <translation>Frequenz</translation>
    </message>
    <message>
        <source>Band</source>
        <translation>Band</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Grew</source>
        <translation>Wuchs</translation>
    </message>
    <message>
        <source>Loudest</source>
        <translation>Am lautesten</translation>
    </message>
    <message>
        <source>Howls in the recording</source>
        <translation>Pfeifen in der Aufnahme</translation>
    </message>
    <message>
        <source>Could be</source>
        <translation>Könnte sein</translation>
    </message>
    <message>
        <source>Rings at</source>
        <translation>Pfeift bei</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Reserve</translation>
    </message>
    <message>
        <source>Loops that could make it</source>
        <translation>Schleifen, die es sein könnten</translation>
    </message>
    <message>
        <source>Load a sound</source>
        <translation>Aufnahme laden</translation>
    </message>
    <message>
        <source>Listening to %1 …</source>
        <translation>%1 wird angehört …</translation>
    </message>
    <message>
        <source>%1: no howl in %2.</source>
        <translation>%1: kein Pfeifen in %2.</translation>
    </message>
    <message>
        <source>%1, %2: howls found: %3.</source>
        <translation>%1, %2: Pfeifstellen gefunden: %3.</translation>
    </message>
    <message>
        <source>%1 was not read.</source>
        <translation>%1 wurde nicht gelesen.</translation>
    </message>
    <message>
        <source>The sound cannot be used.</source>
        <translation>Diese Aufnahme lässt sich nicht verwenden.</translation>
    </message>
    <message>
        <source>Save it as WAV, FLAC or AIFF with 8 to 192 kHz and load it again.</source>
        <translation>Speichere sie als WAV, FLAC oder AIFF mit 8 bis 192 kHz, und lade sie noch einmal.</translation>
    </message>
    <message>
        <source>Stopped.</source>
        <translation>Angehalten.</translation>
    </message>
    <message>
        <source>%1 dB/s</source>
        <translation>%1 dB/s</translation>
    </message>
    <message>
        <source>held</source>
        <translation>gehalten</translation>
    </message>
    <message>
        <source>%1 dBFS</source>
        <translation>%1 dBFS</translation>
    </message>
    <message>
        <source>%1 → %2</source>
        <translation>%1 → %2</translation>
    </message>
    <message>
        <source>no loop of this show comes near</source>
        <translation>keine Schleife dieser Show kommt in die Nähe</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
</context>
<context>
    <name>howlmap::app::RecoveryDialog</name>
    <message>
        <source>New show</source>
        <translation>Neue Show</translation>
    </message>
    <message>
        <source>never saved</source>
        <translation>nie gespeichert</translation>
    </message>
    <message>
        <source>Unsaved changes were found</source>
        <translation>Ungespeicherte Änderungen gefunden</translation>
    </message>
    <message>
        <source>Howlmap did not end as it should. These changes were kept aside; your files are as you last saved them.</source>
        <translation>Howlmap endete nicht, wie es sollte. Diese Änderungen wurden beiseitegelegt; deine Dateien sind, wie du sie zuletzt gespeichert hast.</translation>
    </message>
    <message>
        <source>Show</source>
        <translation>Show</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>Kept at</source>
        <translation>Beiseitegelegt</translation>
    </message>
    <message>
        <source>Unsaved changes</source>
        <translation>Ungespeicherte Änderungen</translation>
    </message>
    <message>
        <source>&amp;Restore</source>
        <translation>&amp;Wiederherstellen</translation>
    </message>
    <message>
        <source>&amp;Discard</source>
        <translation>&amp;Verwerfen</translation>
    </message>
    <message>
        <source>&amp;Later</source>
        <translation>&amp;Später</translation>
    </message>
</context>
<context>
    <name>howlmap::app::ResponsePanel</name>
    <message>
        <source>Mix of the faders</source>
        <translation>Mix der Regler</translation>
    </message>
    <message>
        <source>Whose faders, notches and high-pass these are.</source>
        <translation>Wessen Regler, Kerbfilter und Hochpass dies sind.</translation>
    </message>
    <message>
        <source>Polarity</source>
        <translation>Polarität</translation>
    </message>
    <message>
        <source>Shows the polarity of every input and mix in place of the faders.</source>
        <translation>Zeigt statt der Regler die Polarität aller Eingänge und Mixe.</translation>
    </message>
    <message>
        <source>Without EQ</source>
        <translation>Ohne EQ</translation>
    </message>
    <message>
        <source>Dashed: the curve if this mix had no equaliser at all, to compare before and after.</source>
        <translation>Gestrichelt: die Kurve, wenn dieser Mix gar keinen Equalizer hätte, zum Vergleich vorher und nachher.</translation>
    </message>
    <message>
        <source>Flat</source>
        <translation>Flach</translation>
    </message>
    <message>
        <source>Sets all 31 bands of this mix to 0 dB.</source>
        <translation>Stellt alle 31 Bänder dieses Mixes auf 0 dB.</translation>
    </message>
    <message>
        <source>Flatten faders</source>
        <translation>Regler flach stellen</translation>
    </message>
    <message>
        <source>Copy to</source>
        <translation>Kopieren</translation>
    </message>
    <message>
        <source>Copies the equaliser of this mix to another one.</source>
        <translation>Kopiert den Equalizer dieses Mixes in einen anderen.</translation>
    </message>
    <message>
        <source>Filters</source>
        <translation>Filter</translation>
    </message>
    <message>
        <source>Adds or removes a notch or the high-pass; drag their handles on the curve.</source>
        <translation>Setzt oder entfernt ein Kerbfilter oder den Hochpass; ziehe ihre Griffe auf der Kurve.</translation>
    </message>
    <message>
        <source>Add a notch at the ring</source>
        <translation>Kerbfilter auf die Pfeifstelle</translation>
    </message>
    <message>
        <source>Remove the notch touched last</source>
        <translation>Zuletzt berührtes Kerbfilter entfernen</translation>
    </message>
    <message>
        <source>High-pass in or out</source>
        <translation>Hochpass ein oder aus</translation>
    </message>
    <message>
        <source>Save</source>
        <translation>Speichern</translation>
    </message>
    <message>
        <source>Saves the curves as a picture or as a table.</source>
        <translation>Speichert die Kurven als Bild oder als Tabelle.</translation>
    </message>
    <message>
        <source>As a picture...</source>
        <translation>Als Bild...</translation>
    </message>
    <message>
        <source>As a table (CSV)...</source>
        <translation>Als Tabelle (CSV)...</translation>
    </message>
    <message>
        <source>Pull %1 in %2</source>
        <translation>%1 in %2 ziehen</translation>
    </message>
    <message>
        <source>Mix %1 %2</source>
        <translation>Mix %1 %2</translation>
    </message>
    <message>
        <source>without equaliser</source>
        <translation>ohne Equalizer</translation>
    </message>
    <message>
        <source>Add notch at %1</source>
        <translation>Kerbfilter bei %1</translation>
    </message>
    <message>
        <source>Remove notch</source>
        <translation>Kerbfilter entfernen</translation>
    </message>
    <message>
        <source>Click the handle of a notch on the curve first.</source>
        <translation>Klicke zuerst auf den Griff eines Kerbfilters auf der Kurve.</translation>
    </message>
    <message>
        <source>Take high-pass out</source>
        <translation>Hochpass herausnehmen</translation>
    </message>
    <message>
        <source>Put high-pass in</source>
        <translation>Hochpass einsetzen</translation>
    </message>
    <message>
        <source>Copy equaliser</source>
        <translation>Equalizer kopieren</translation>
    </message>
    <message>
        <source>Save the curves as a picture</source>
        <translation>Kurven als Bild speichern</translation>
    </message>
    <message>
        <source>Pictures (*.png);;PDF (*.pdf)</source>
        <translation>Bilder (*.png);;PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Saved %1.</source>
        <translation>%1 gespeichert.</translation>
    </message>
    <message>
        <source>The picture could not be written.</source>
        <translation>Das Bild konnte nicht geschrieben werden.</translation>
    </message>
    <message>
        <source>Choose another folder.</source>
        <translation>Wähle einen anderen Ordner.</translation>
    </message>
    <message>
        <source>Save the curves as a table</source>
        <translation>Kurven als Tabelle speichern</translation>
    </message>
    <message>
        <source>Tables (*.csv)</source>
        <translation>Tabellen (*.csv)</translation>
    </message>
    <message>
        <source>The table could not be written.</source>
        <translation>Die Tabelle konnte nicht geschrieben werden.</translation>
    </message>
</context>
<context>
    <name>howlmap::app::ResponsePlot</name>
    <message>
        <source>Loop gain over frequency</source>
        <translation>Schleifenverstärkung über der Frequenz</translation>
    </message>
</context>
<context>
    <name>howlmap::app::RingModel</name>
    <message>
        <source>%1 → %2</source>
        <translation>%1 → %2</translation>
    </message>
    <message>
        <source>as drawn %1</source>
        <translation>wie gezeichnet %1</translation>
    </message>
    <message>
        <source>band %1</source>
        <translation>Band %1</translation>
    </message>
    <message>
        <source>%1, %2, %3, to count on %4, %5, %6</source>
        <translation>%1, %2, %3, verlässlich %4, %5, %6</translation>
    </message>
</context>
<context>
    <name>howlmap::app::RingOutList</name>
    <message>
        <source>Bands in the order in which they are likely to ring</source>
        <translation>Bänder in der Reihenfolge, in der sie voraussichtlich pfeifen</translation>
    </message>
    <message>
        <source>Draws done</source>
        <translation>Gezogen</translation>
    </message>
    <message>
        <source>Likely to ring first</source>
        <translation>Pfeift wohl zuerst</translation>
    </message>
    <message>
        <source>Nothing can ring. Give a mix a loudspeaker and send it a microphone or a pickup, in Mixes.</source>
        <translation>Nichts kann pfeifen. Gib unter Mixe einem Mix einen Lautsprecher und schicke ihm ein Mikrofon oder einen Tonabnehmer.</translation>
    </message>
    <message>
        <source>The stage is drawn a thousand times as it might really stand; the order follows in a moment.</source>
        <translation>Die Bühne wird tausendmal so gezogen, wie sie wirklich stehen könnte; die Reihenfolge folgt gleich.</translation>
    </message>
    <message>
        <source>Each card is a third-octave band: at the right the probability that it rings first, over all stages that the tolerances allow, and the frequency at which it mostly does; below who makes it and in which mix. Press Enter to take it into the walk.</source>
        <translation>Jede Karte ist ein Terzband: rechts die Wahrscheinlichkeit, dass es zuerst pfeift, über alle Aufbauten, die die Toleranzen zulassen, und die Frequenz, bei der es das meistens tut; darunter, wer es macht und in welchem Mix. Eingabe nimmt es in den Rundgang.</translation>
    </message>
</context>
<context>
    <name>howlmap::app::RingOutModel</name>
    <message>
        <source>&lt; 1 %</source>
        <translation>&lt; 1 %</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>%1 → %2</source>
        <translation>%1 → %2</translation>
    </message>
    <message>
        <source>%1 · %2</source>
        <translation>%1 · %2</translation>
    </message>
    <message>
        <source>Band %1 rings first with a probability of %2, near %3: %4, mix %5</source>
        <translation>Band %1 pfeift mit Wahrscheinlichkeit %2 zuerst, nahe %3: %4, Mix %5</translation>
    </message>
</context>
<context>
    <name>howlmap::app::SendsModel</name>
    <message>
        <source>%1 dB at 1 m makes %2 dBA at the ear of %3 (estimate)</source>
        <translation>%1 dB in 1 m sind %2 dBA am Ohr von %3 (Schätzung)</translation>
    </message>
    <message>
        <source>%1 dB at 1 m; nobody hears this mix</source>
        <translation>%1 dB in 1 m; niemand hört diesen Mix</translation>
    </message>
    <message>
        <source>%1: nobody hears it</source>
        <translation>%1: niemand hört ihn</translation>
    </message>
    <message>
        <source>%1, for %2</source>
        <translation>%1, für %2</translation>
    </message>
    <message>
        <source>Take out send</source>
        <translation>Send herausnehmen</translation>
    </message>
    <message>
        <source>Set send</source>
        <translation>Send stellen</translation>
    </message>
    <message>
        <source>Set send for an ear level</source>
        <translation>Send nach Pegel am Ohr stellen</translation>
    </message>
    <message>
        <source>Reorder mixes</source>
        <translation>Mixe umordnen</translation>
    </message>
    <message>
        <source>Mark the cell where the first value goes.</source>
        <translation>Wähle die Zelle, in die der erste Wert gehört.</translation>
    </message>
    <message>
        <source>Paste sends</source>
        <translation>Sends einfügen</translation>
    </message>
    <message>
        <source>&quot;%1&quot;: expected a level from -60 to 160 dB inside the table</source>
        <translation>„%1“: Pegel von -60 bis 160 dB innerhalb der Tabelle erwartet</translation>
    </message>
    <message>
        <source>&quot;%1&quot; cannot be read as a level in dB</source>
        <translation>„%1“ lässt sich nicht als Pegel in dB lesen</translation>
    </message>
    <message>
        <source>A send has %1 to %2 dB at 1 m, not %3. Nothing was changed.</source>
        <translation>Ein Send hat %1 bis %2 dB auf 1 m, nicht %3. Nichts wurde geändert.</translation>
    </message>
    <message>
        <source>%1 dBA at the ear would take %2 dB at 1 m; a send has %3 to %4 dB. Nothing was changed.</source>
        <translation>%1 dBA am Ohr bräuchten %2 dB auf 1 m; ein Send hat %3 bis %4 dB. Nichts wurde geändert.</translation>
    </message>
</context>
<context>
    <name>howlmap::app::SheetDialog</name>
    <message>
        <source>advance sheet</source>
        <translation>Blatt für das Haus</translation>
    </message>
    <message>
        <source>%1 advance</source>
        <translation>%1 Blatt</translation>
    </message>
    <message>
        <source>%1 could not be written.</source>
        <translation>%1 konnte nicht geschrieben werden.</translation>
    </message>
    <message>
        <source>Choose another folder.</source>
        <translation>Wähle einen anderen Ordner.</translation>
    </message>
    <message>
        <source>Save the sheet</source>
        <translation>Blatt speichern</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Folder for the lists</source>
        <translation>Ordner für die Listen</translation>
    </message>
    <message>
        <source>The show as it was sent</source>
        <translation>Die Show, wie sie geschickt wurde</translation>
    </message>
    <message>
        <source>Shows (*.howlmap);;All files (*)</source>
        <translation>Shows (*.howlmap);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Advance sheet</source>
        <translation>Blatt für das Haus</translation>
    </message>
    <message>
        <source>Pages</source>
        <translation>Seiten</translation>
    </message>
    <message>
        <source>&amp;Plan</source>
        <translation>&amp;Plan</translation>
    </message>
    <message>
        <source>&amp;Input list</source>
        <translation>&amp;Eingangsliste</translation>
    </message>
    <message>
        <source>&amp;Mixes and equalisers</source>
        <translation>&amp;Mixe und Equalizer</translation>
    </message>
    <message>
        <source>&amp;Risks and cautions</source>
        <translation>&amp;Risiken und Vorsicht</translation>
    </message>
    <message>
        <source>&amp;One mix a page</source>
        <translation>Ein Mi&amp;x je Seite</translation>
    </message>
    <message>
        <source>For the monitor desk.</source>
        <translation>Für das Monitorpult.</translation>
    </message>
    <message>
        <source>On the plan</source>
        <translation>Auf dem Plan</translation>
    </message>
    <message>
        <source>&amp;Loops that matter</source>
        <translation>Schleifen, auf die es ankomm&amp;t</translation>
    </message>
    <message>
        <source>Map under the plan</source>
        <translation>Karte unter dem Plan</translation>
    </message>
    <message>
        <source>How much gain an input has left before it rings, at every place of the stage.</source>
        <translation>Wie viel Reserve ein Eingang bis zum Pfeifen hat, an jedem Ort der Bühne.</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>A4</source>
        <translation>A4</translation>
    </message>
    <message>
        <source>Letter</source>
        <translation>Letter</translation>
    </message>
    <message>
        <source>Changed since</source>
        <translation>Geändert seit</translation>
    </message>
    <message>
        <source>Not compared.</source>
        <translation>Nicht verglichen.</translation>
    </message>
    <message>
        <source>Compare &amp;with...</source>
        <translation>&amp;Vergleichen mit...</translation>
    </message>
    <message>
        <source>An older file of this show: the sheet then says what has changed since.</source>
        <translation>Eine ältere Datei dieser Show: das Blatt sagt dann, was sich seither geändert hat.</translation>
    </message>
    <message>
        <source>Do &amp;not compare</source>
        <translation>&amp;Nicht vergleichen</translation>
    </message>
    <message>
        <source>Leaves the list of changes out.</source>
        <translation>Lässt die Liste der Änderungen weg.</translation>
    </message>
    <message>
        <source>The pages</source>
        <translation>Die Seiten</translation>
    </message>
    <message>
        <source>Page &amp;back</source>
        <translation>&amp;Zurückblättern</translation>
    </message>
    <message>
        <source>Shows the page before.</source>
        <translation>Zeigt die vorige Seite.</translation>
    </message>
    <message>
        <source>Page &amp;on</source>
        <translation>&amp;Weiterblättern</translation>
    </message>
    <message>
        <source>Shows the next page.</source>
        <translation>Zeigt die nächste Seite.</translation>
    </message>
    <message>
        <source>&amp;All pages</source>
        <translation>&amp;Alle Seiten</translation>
    </message>
    <message>
        <source>Shows all pages at once.</source>
        <translation>Zeigt alle Seiten auf einmal.</translation>
    </message>
    <message>
        <source>One pa&amp;ge</source>
        <translation>&amp;Eine Seite</translation>
    </message>
    <message>
        <source>Shows one page as large as fits.</source>
        <translation>Zeigt eine Seite so groß, wie sie passt.</translation>
    </message>
    <message>
        <source>Larger</source>
        <translation>Größer</translation>
    </message>
    <message>
        <source>Zooms in.</source>
        <translation>Vergrößert.</translation>
    </message>
    <message>
        <source>Smaller</source>
        <translation>Kleiner</translation>
    </message>
    <message>
        <source>Zooms out.</source>
        <translation>Verkleinert.</translation>
    </message>
    <message>
        <source>&amp;Save PDF...</source>
        <translation>PDF &amp;speichern...</translation>
    </message>
    <message>
        <source>Writes the pages as they are shown.</source>
        <translation>Schreibt die Seiten, wie sie gezeigt werden.</translation>
    </message>
    <message>
        <source>Prin&amp;t...</source>
        <translation>&amp;Drucken...</translation>
    </message>
    <message>
        <source>Prints the pages as they are shown.</source>
        <translation>Druckt die Seiten, wie sie gezeigt werden.</translation>
    </message>
    <message>
        <source>Lists as &amp;CSV...</source>
        <translation>Listen als &amp;CSV...</translation>
    </message>
    <message>
        <source>Writes the lists as tables for a spreadsheet into a folder.</source>
        <translation>Schreibt die Listen als Tabellen für eine Tabellenkalkulation in einen Ordner.</translation>
    </message>
    <message>
        <source>Cop&amp;y list</source>
        <translation>&amp;Liste kopieren</translation>
    </message>
    <message>
        <source>Puts one list on the clipboard, for a spreadsheet.</source>
        <translation>Legt eine Liste in die Zwischenablage, für eine Tabellenkalkulation.</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Closes this window.</source>
        <translation>Schließt dieses Fenster.</translation>
    </message>
    <message>
        <source>No map</source>
        <translation>Keine Karte</translation>
    </message>
    <message>
        <source>Map of %1 %2</source>
        <translation>Karte von %1 %2</translation>
    </message>
    <message>
        <source>What to count on is being worked out; the pages follow.</source>
        <translation>Was verlässlich ist, wird gerade ausgerechnet; die Seiten folgen.</translation>
    </message>
    <message>
        <source>The map is being made.</source>
        <translation>Die Karte wird gemacht.</translation>
    </message>
    <message>
        <source>Written to %1.</source>
        <translation>Nach %1 geschrieben.</translation>
    </message>
    <message>
        <source>Lists written to %1.</source>
        <translation>Listen nach %1 geschrieben.</translation>
    </message>
    <message>
        <source>Sent to the printer.</source>
        <translation>An den Drucker geschickt.</translation>
    </message>
    <message>
        <source>%1 cannot be compared with. %2</source>
        <translation>Mit %1 lässt sich nicht vergleichen. %2</translation>
    </message>
    <message>
        <source>%1 is on the clipboard.</source>
        <translation>%1 ist in der Zwischenablage.</translation>
    </message>
</context>
<context>
    <name>howlmap::app::SideView</name>
    <message>
        <source>Loudspeaker and microphone from the side</source>
        <translation>Lautsprecher und Mikrofon von der Seite</translation>
    </message>
    <message>
        <source>%1 m</source>
        <translation>%1 m</translation>
    </message>
    <message>
        <source>%1 ft</source>
        <translation>%1 ft</translation>
    </message>
    <message>
        <source>%1 waves</source>
        <translation>%1 Wellen</translation>
    </message>
    <message>
        <source>%1 way, one wave %2</source>
        <translation>%1 Weg, eine Welle %2</translation>
    </message>
    <message>
        <source>Level %1 dB</source>
        <translation>Pegel %1 dB</translation>
    </message>
    <message>
        <source>Latency %1 ms</source>
        <translation>Latenz %1 ms</translation>
    </message>
    <message>
        <source>Polarity turned</source>
        <translation>Polarität gedreht</translation>
    </message>
    <message>
        <source>Polarity normal</source>
        <translation>Polarität normal</translation>
    </message>
    <message>
        <source>Drag the microphone or the loudspeaker, or turn either by the handle behind it. Level and latency are dragged sideways, the polarity turns with a click. Arrows move the microphone, with Shift ten times as far; [ and ] turn it.</source>
        <translation>Ziehe Mikrofon oder Lautsprecher, oder drehe sie am Griff dahinter. Pegel und Latenz zieht man seitwärts, die Polarität dreht ein Klick. Pfeiltasten bewegen das Mikrofon, mit Umschalt zehnmal so weit; [ und ] drehen es.</translation>
    </message>
    <message>
        <source>%1° off the microphone&apos;s axis: not heard</source>
        <translation>%1° neben der Mikrofonachse: nicht gehört</translation>
    </message>
    <message>
        <source>%1° off the microphone&apos;s axis: %2 against the front</source>
        <translation>%1° neben der Mikrofonachse: %2 gegenüber vorn</translation>
    </message>
</context>
<context>
    <name>howlmap::app::SoundBar</name>
    <message>
        <source>Hea&amp;r it</source>
        <translation>Anhö&amp;ren</translation>
    </message>
    <message>
        <source>&amp;Stop</source>
        <translation>&amp;Stopp</translation>
    </message>
    <message>
        <source>Plays a phrase through the loop as it is set; it howls if it must.</source>
        <translation>Spielt eine Phrase durch die Schleife, wie sie eingestellt ist; sie pfeift, wenn sie muss.</translation>
    </message>
    <message>
        <source>Silence at once.</source>
        <translation>Sofort Stille.</translation>
    </message>
    <message>
        <source> dB</source>
        <translation> dB</translation>
    </message>
    <message>
        <source>raised by </source>
        <translation>angehoben um </translation>
    </message>
    <message>
        <source>How far all sends are raised while it plays</source>
        <translation>Wie weit alle Sends angehoben sind, während es spielt</translation>
    </message>
    <message>
        <source>Raises all sends while it plays; the show stays as it is. At the margin it starts to howl.</source>
        <translation>Hebt alle Sends an, während es spielt; die Show bleibt, wie sie ist. Bei der Reserve beginnt es zu pfeifen.</translation>
    </message>
    <message>
        <source>I have: play</source>
        <translation>Erledigt: spielen</translation>
    </message>
    <message>
        <source>Getting ready...</source>
        <translation>Macht sich bereit...</translation>
    </message>
    <message>
        <source>Playing.</source>
        <translation>Spielt.</translation>
    </message>
</context>
<context>
    <name>howlmap::app::SoundcheckPanel</name>
    <message>
        <source>Soundcheck pages</source>
        <translation>Seiten des Soundchecks</translation>
    </message>
    <message>
        <source>Walk</source>
        <translation>Rundgang</translation>
    </message>
    <message>
        <source>Rings the stage out step by step.</source>
        <translation>Pfeift die Bühne Schritt für Schritt ein.</translation>
    </message>
    <message>
        <source>Recording</source>
        <translation>Aufnahme</translation>
    </message>
    <message>
        <source>Finds out what howls in a recording.</source>
        <translation>Findet heraus, was in einer Aufnahme pfeift.</translation>
    </message>
    <message>
        <source>Live</source>
        <translation>Live</translation>
    </message>
    <message>
        <source>Listens and names what rings, in large type.</source>
        <translation>Hört zu und nennt in großer Schrift, was pfeift.</translation>
    </message>
    <message>
        <source>Tap test</source>
        <translation>Klopftest</translation>
    </message>
    <message>
        <source>Finds the modes of an instrument&apos;s body.</source>
        <translation>Findet die Moden eines Instrumentenkorpus.</translation>
    </message>
    <message>
        <source>Log</source>
        <translation>Protokoll</translation>
    </message>
    <message>
        <source>What was found and done.</source>
        <translation>Was gefunden und getan wurde.</translation>
    </message>
</context>
<context>
    <name>howlmap::app::StatusFigures</name>
    <message>
        <source>How far all sends can come up before the stage rings, if everything stands exactly as drawn.</source>
        <translation>Wie weit alle Sends noch hochkönnen, bevor die Bühne pfeift, wenn alles genau so steht wie gezeichnet.</translation>
    </message>
    <message>
        <source>What is left in 95 of 100 stages set up by hand from this drawing. Believe this one.</source>
        <translation>Was in 95 von 100 von Hand nach dieser Zeichnung aufgebauten Bühnen übrig bleibt. Dieser Zahl glauben.</translation>
    </message>
    <message>
        <source>Progress of the draws</source>
        <translation>Fortschritt der Ziehungen</translation>
    </message>
    <message>
        <source>as drawn %1</source>
        <translation>wie gezeichnet %1</translation>
    </message>
    <message>
        <source>count on %1</source>
        <translation>verlässlich %1</translation>
    </message>
    <message>
        <source>count on %1 ?</source>
        <translation>verlässlich %1 ?</translation>
    </message>
    <message>
        <source>Margin as drawn</source>
        <translation>Reserve wie gezeichnet</translation>
    </message>
    <message>
        <source>Margin to count on</source>
        <translation>Verlässliche Reserve</translation>
    </message>
    <message>
        <source>%1  %2  %3 → %4</source>
        <translation>%1  %2  %3 → %4</translation>
    </message>
    <message>
        <source>No loop: no loudspeaker plays a microphone or pickup that hears it.</source>
        <translation>Keine Schleife: Kein Lautsprecher spielt ein Mikrofon oder einen Tonabnehmer, der ihn hört.</translation>
    </message>
    <message>
        <source>What rings first if everything is raised and stands exactly as drawn, and between whom.</source>
        <translation>Was zuerst pfeift, wenn alles angehoben wird und genau wie gezeichnet steht, und zwischen wem.</translation>
    </message>
    <message>
        <source>Set up by hand, band %1 rings first in %2 of 100 stages: %3 → %4.</source>
        <translation>Von Hand aufgebaut pfeift in %2 von 100 Fällen zuerst Band %1: %3 → %4.</translation>
    </message>
</context>
<context>
    <name>howlmap::app::TapPage</name>
    <message>
        <source>Modes, strongest first</source>
        <translation>Moden, stärkste zuerst</translation>
    </message>
    <message>
        <source>Frequency</source>
        <translation>Frequenz</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Q</source>
        <translation>Q</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>Pegel</translation>
    </message>
    <message>
        <source>Load &amp;taps…</source>
        <translation>&amp;Klopfer laden…</translation>
    </message>
    <message>
        <source>A recording of several taps with quiet between them.</source>
        <translation>Eine Aufnahme mehrerer Klopfer mit Stille dazwischen.</translation>
    </message>
    <message>
        <source>Re&amp;cord</source>
        <translation>Auf&amp;nehmen</translation>
    </message>
    <message>
        <source>Records taps from the first sound input, a minute at most.</source>
        <translation>Nimmt Klopfer vom ersten Toneingang auf, höchstens eine Minute.</translation>
    </message>
    <message>
        <source>Pickup</source>
        <translation>Tonabnehmer</translation>
    </message>
    <message>
        <source>The pickup that is to have the modes.</source>
        <translation>Der Tonabnehmer, der die Moden bekommt.</translation>
    </message>
    <message>
        <source>&amp;Put on pickup</source>
        <translation>&amp;Dem Tonabnehmer geben</translation>
    </message>
    <message>
        <source>Gives the pickup these modes; one step that can be undone.</source>
        <translation>Gibt dem Tonabnehmer diese Moden; ein Schritt, der sich zurücknehmen lässt.</translation>
    </message>
    <message>
        <source>Damp the strings, tap the bridge a few times with a fingertip, and load the recording.</source>
        <translation>Saiten dämpfen, mit der Fingerspitze einige Male auf den Steg klopfen und die Aufnahme laden.</translation>
    </message>
    <message>
        <source>This show has no pickup yet.</source>
        <translation>Diese Show hat noch keinen Tonabnehmer.</translation>
    </message>
    <message>
        <source>Load taps</source>
        <translation>Klopfer laden</translation>
    </message>
    <message>
        <source>&amp;Stop</source>
        <translation>&amp;Stopp</translation>
    </message>
    <message>
        <source>Recording: tap a few times, half a second apart, then stop.</source>
        <translation>Nimmt auf: einige Male klopfen, eine halbe Sekunde auseinander, dann anhalten.</translation>
    </message>
    <message>
        <source>The recording</source>
        <translation>Die Aufnahme</translation>
    </message>
    <message>
        <source>%1: looking for modes …</source>
        <translation>%1: Moden werden gesucht …</translation>
    </message>
    <message>
        <source>%1 Hz</source>
        <translation>%1 Hz</translation>
    </message>
    <message>
        <source>%1 dB</source>
        <translation>%1 dB</translation>
    </message>
    <message>
        <source>%1: taps averaged: %2.</source>
        <translation>%1: gemittelte Klopfer: %2.</translation>
    </message>
    <message>
        <source>Modes of %1 from taps</source>
        <translation>Moden von %1 aus Klopfern</translation>
    </message>
    <message>
        <source>Modes from a tap recording</source>
        <translation>Moden aus einer Klopfaufnahme</translation>
    </message>
</context>
<context>
    <name>howlmap::app::TourStrip</name>
    <message>
        <source>Three steps</source>
        <translation>Drei Schritte</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>The step before.</source>
        <translation>Der Schritt davor.</translation>
    </message>
    <message>
        <source>Next</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>The next step.</source>
        <translation>Der nächste Schritt.</translation>
    </message>
    <message>
        <source>Not again</source>
        <translation>Nicht wieder</translation>
    </message>
    <message>
        <source>Hides these steps for ever. Help, Three steps brings them back.</source>
        <translation>Blendet diese Schritte für immer aus. Hilfe, Drei Schritte holt sie zurück.</translation>
    </message>
    <message>
        <source>&lt;b&gt;1 of 3: look.&lt;/b&gt; The lines on the plan are the loops that come nearest to ringing. The figure at the bottom right is the margin to count on: how far all sends may still come up.</source>
        <translation>&lt;b&gt;1 von 3: schauen.&lt;/b&gt; Die Linien im Plan sind die Schleifen, die dem Pfeifen am nächsten sind. Die Zahl unten rechts ist die verlässliche Reserve: wie weit alle Sends noch hochkönnen.</translation>
    </message>
    <message>
        <source>&lt;b&gt;2 of 3: ask why.&lt;/b&gt; Loops lists what rings first. Click the first row: its loudspeaker, its microphone and its peak light up.</source>
        <translation>&lt;b&gt;2 von 3: nach dem Warum fragen.&lt;/b&gt; Schleifen nennt, was zuerst pfeift. Klicke auf die erste Zeile: ihr Lautsprecher, ihr Mikrofon und ihre Spitze leuchten auf.</translation>
    </message>
    <message>
        <source>&lt;b&gt;3 of 3: cure it.&lt;/b&gt; Cures ranks what helps, at equal loudness for the player. Rest on one to see it as a ghost, apply it, and undo it if you do not like it.</source>
        <translation>&lt;b&gt;3 von 3: abhelfen.&lt;/b&gt; Abhilfen ordnet, was hilft, bei gleicher Lautheit für die Spielerin. Verweilen zeigt sie als Schatten; wende sie an, und nimm sie zurück, wenn sie nicht gefällt.</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Fertig</translation>
    </message>
</context>
<context>
    <name>howlmap::app::UnitEdit</name>
    <message>
        <source>several</source>
        <translation>verschieden</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>expected %1 to %2</source>
        <translation>%1 bis %2 erwartet</translation>
    </message>
    <message>
        <source>cannot be read; expected e.g. %1</source>
        <translation>nicht lesbar; erwartet z. B. %1</translation>
    </message>
</context>
<context>
    <name>howlmap::app::WalkPage</name>
    <message>
        <source>&lt;b&gt;Ears and hands first.&lt;/b&gt; Ring out at low level, hands on the fader, ears protected, nobody&apos;s head in front of a wedge, players warned. Levels here are estimates and no measurement of hearing safety. House rules and local codes come first.</source>
        <translation>&lt;b&gt;Erst Ohren und Hände.&lt;/b&gt; Leise einpfeifen, die Hand am Regler, die Ohren geschützt, niemandes Kopf vor einem Monitor, die Spieler gewarnt. Pegel sind hier Schätzungen und keine Messung zum Gehörschutz. Hausregeln und örtliche Vorschriften gehen vor.</translation>
    </message>
    <message>
        <source>Band that rings</source>
        <translation>Band, das pfeift</translation>
    </message>
    <message>
        <source>The band that rings; the likeliest stand first.</source>
        <translation>Das Band, das pfeift; die wahrscheinlichsten stehen zuerst.</translation>
    </message>
    <message>
        <source>Loud enough: &amp;finish</source>
        <translation>Laut genug: &amp;fertig</translation>
    </message>
    <message>
        <source>The mix is as loud as the players need it, and nothing rings.</source>
        <translation>Der Mix ist so laut, wie die Spieler ihn brauchen, und nichts pfeift.</translation>
    </message>
    <message>
        <source>Ears and hands are &amp;ready: begin</source>
        <translation>Ohren und Hände sind &amp;bereit: beginnen</translation>
    </message>
    <message>
        <source>It &amp;rings</source>
        <translation>Es &amp;pfeift</translation>
    </message>
    <message>
        <source>&amp;Begin again</source>
        <translation>&amp;Neu beginnen</translation>
    </message>
    <message>
        <source>It has &amp;stopped: listen again</source>
        <translation>Es hat auf&amp;gehört: wieder hinhören</translation>
    </message>
    <message>
        <source> Cuts so far: %1, all in the log.</source>
        <translation> Absenkungen bisher: %1, alle im Protokoll.</translation>
    </message>
    <message>
        <source>One mix at a time: raise, listen, name the band, cut no more than needed, and again.</source>
        <translation>Ein Mix nach dem anderen: anheben, hinhören, das Band nennen, nicht mehr als nötig absenken, und wieder von vorn.</translation>
    </message>
    <message>
        <source>Raise mix %1 slowly until something begins to ring, then take the fader back a little. Most likely it is %2: %3 → %4.</source>
        <translation>Hebe %1 langsam an, bis etwas zu pfeifen beginnt, dann nimm den Regler etwas zurück. Am wahrscheinlichsten ist es %2: %3 → %4.</translation>
    </message>
    <message>
        <source>Raise the mix slowly until something begins to ring.</source>
        <translation>Hebe den Mix langsam an, bis etwas zu pfeifen beginnt.</translation>
    </message>
    <message>
        <source>Which band is it? Choose it here, or let Live name it. The cut is as deep as it takes for the next ring to be as far, and no deeper.</source>
        <translation>Welches Band ist es? Wähle es hier, oder lass es Live nennen. Die Absenkung ist so tief, dass die nächste Pfeifstelle gleich weit ist, und nicht tiefer.</translation>
    </message>
    <message>
        <source>Done.</source>
        <translation>Fertig.</translation>
    </message>
    <message>
        <source>Play the loudest song, open every microphone, and keep a hand on the fader.</source>
        <translation>Spiele das lauteste Stück, öffne alle Mikrofone, und behalte eine Hand am Regler.</translation>
    </message>
    <message>
        <source>Ring-out done. Cuts in the log: %1.</source>
        <translation>Einpfeifen fertig. Absenkungen im Protokoll: %1.</translation>
    </message>
    <message>
        <source>%1 (%2 %)</source>
        <translation>%1 (%2 %)</translation>
    </message>
    <message>
        <source>First the cautions: then begin the walk.</source>
        <translation>Erst die Vorsicht, dann den Rundgang beginnen.</translation>
    </message>
    <message>
        <source>Which band?</source>
        <translation>Welches Band?</translation>
    </message>
    <message>
        <source>%1 rings: take the fader back first. When ears and hands are ready, the cut for it comes next.</source>
        <translation>%1 pfeift: nimm zuerst den Regler zurück. Wenn Ohren und Hände bereit sind, kommt als Nächstes die Absenkung dafür.</translation>
    </message>
    <message>
        <source>Takes the walk one step on.</source>
        <translation>Bringt den Gang einen Schritt weiter.</translation>
    </message>
</context>
<context>
    <name>lesson</name>
    <message>
        <source>nothing</source>
        <translation>nichts</translation>
    </message>
    <message>
        <source>%1: found %2, expected %3</source>
        <translation>%1: %2 gefunden, %3 erwartet</translation>
    </message>
    <message>
        <source>at byte %1: %2</source>
        <translation>bei Byte %1: %2</translation>
    </message>
    <message>
        <source>the level there stays as it was</source>
        <translation>der Pegel dort bleibt, wie er war</translation>
    </message>
    <message>
        <source>Nothing comes back: no loop, no ring.</source>
        <translation>Nichts kommt zurück: keine Schleife, kein Pfeifen.</translation>
    </message>
    <message>
        <source>{} ({})</source>
        <translation>{} ({})</translation>
    </message>
    <message>
        <source>the level there rises by {:.1f} dB</source>
        <translation>der Pegel dort steigt um {:.1f} dB</translation>
    </message>
    <message>
        <source>the level there falls by {:.1f} dB</source>
        <translation>der Pegel dort fällt um {:.1f} dB</translation>
    </message>
    <message>
        <source>Margin {}.</source>
        <translation>Reserve {}.</translation>
    </message>
    <message>
        <source>Margin {} before, {} now.</source>
        <translation>Reserve vorher {}, jetzt {}.</translation>
    </message>
    <message>
        <source>The first ring stays at {}.</source>
        <translation>Das erste Pfeifen bleibt bei {}.</translation>
    </message>
    <message>
        <source>The first ring moves from {} to {}.</source>
        <translation>Das erste Pfeifen rückt von {} auf {}.</translation>
    </message>
    <message>
        <source>At {} {} fits {:.1f} times; at {} {:.1f} times</source>
        <translation>Bei {} passt {} {:.1f}-mal; bei {} {:.1f}-mal</translation>
    </message>
    <message>
        <source>{}: other frequencies fit, and {}.</source>
        <translation>{}: andere Frequenzen passen, und {}.</translation>
    </message>
    <message>
        <source>The microphone turns from {:.0f} to {:.0f} deg.</source>
        <translation>Das Mikrofon dreht sich von {:.0f} auf {:.0f} Grad.</translation>
    </message>
    <message>
        <source>The loudspeaker turns from {:.0f} to {:.0f} deg.</source>
        <translation>Der Lautsprecher dreht sich von {:.0f} auf {:.0f} Grad.</translation>
    </message>
    <message>
        <source>The loudspeaker plays {:.1f} dB SPL at 1 m instead of {:.1f}.</source>
        <translation>Der Lautsprecher spielt {:.1f} dB SPL in 1 m statt {:.1f}.</translation>
    </message>
    <message>
        <source>At the microphone the player makes {:.1f} dB SPL instead of {:.1f}; the loudspeaker stays as loud.</source>
        <translation>Am Mikrofon macht das Spiel {:.1f} dB SPL statt {:.1f}; der Lautsprecher bleibt gleich laut.</translation>
    </message>
    <message>
        <source>Latency {:.1f} ms instead of {:.1f}: more time on the way, more frequencies fit.</source>
        <translation>Latenz {:.1f} ms statt {:.1f}: mehr Zeit unterwegs, mehr Frequenzen passen.</translation>
    </message>
    <message>
        <source>The microphone is now: {}.</source>
        <translation>Das Mikrofon ist jetzt: {}.</translation>
    </message>
    <message>
        <source>The middle is cut by {:.1f} dB instead of {:.1f}.</source>
        <translation>Die Mitten sind um {:.1f} dB statt {:.1f} abgesenkt.</translation>
    </message>
    <message>
        <source>The band at {} is pulled by {:.1f} dB.</source>
        <translation>Das Band bei {} ist um {:.1f} dB gezogen.</translation>
    </message>
    <message>
        <source>First ring {}.</source>
        <translation>Erstes Pfeifen {}.</translation>
    </message>
    <message>
        <source>Polarity turned: the frequencies that fit move half-way to their neighbours.</source>
        <translation>Polarität gedreht: die passenden Frequenzen rücken auf halben Weg zu ihren Nachbarn.</translation>
    </message>
    <message>
        <source>Polarity as before: the frequencies that fit move back.</source>
        <translation>Polarität wie zuvor: die passenden Frequenzen rücken zurück.</translation>
    </message>
    <message>
        <source>The floor reflects: a second way, now with the first, now against it.</source>
        <translation>Der Boden reflektiert: ein zweiter Weg, bald mit dem ersten, bald gegen ihn.</translation>
    </message>
    <message>
        <source>The floor is gone: one way is left.</source>
        <translation>Der Boden ist weg: ein Weg bleibt.</translation>
    </message>
    <message>
        <source>An instrument with a pickup: its body hears, most where it rings itself.</source>
        <translation>Ein Instrument mit Tonabnehmer: sein Korpus hört, am meisten dort, wo er selbst schwingt.</translation>
    </message>
    <message>
        <source>A microphone hears the air.</source>
        <translation>Ein Mikrofon hört die Luft.</translation>
    </message>
    <message>
        <source>Sound holes covered: the air in the body is still.</source>
        <translation>Schalllöcher abgedeckt: die Luft im Korpus steht still.</translation>
    </message>
    <message>
        <source>Sound holes open.</source>
        <translation>Schalllöcher offen.</translation>
    </message>
    <message>
        <source>In-ears: the loudspeaker is silent.</source>
        <translation>In-Ears: der Lautsprecher schweigt.</translation>
    </message>
    <message>
        <source>The loudspeaker plays.</source>
        <translation>Der Lautsprecher spielt.</translation>
    </message>
    <message>
        <source>It comes back in step: it feeds itself.</source>
        <translation>Es kommt im Takt zurück: es speist sich selbst.</translation>
    </message>
    <message>
        <source>It comes back against itself: it can not ring here.</source>
        <translation>Es kommt gegen sich selbst zurück: hier kann es nicht pfeifen.</translation>
    </message>
    <message>
        <source>It comes back out of step.</source>
        <translation>Es kommt aus dem Takt zurück.</translation>
    </message>
    <message>
        <source>{} is a wave of {}; from loudspeaker to microphone it fits {:.2f} times.</source>
        <translation>{} ist eine Welle von {}; vom Lautsprecher zum Mikrofon passt sie {:.2f}-mal.</translation>
    </message>
    <message>
        <source>{:.2f} waves in the air {} {:.2f} on the rest of the way (filters, floor, polarity) = {:.2f}.</source>
        <translation>{:.2f} Wellen in der Luft {} {:.2f} auf dem Rest des Wegs (Filter, Boden, Polarität) = {:.2f}.</translation>
    </message>
</context>
<context>
    <name>listening</name>
    <message>
        <source>her own sound</source>
        <translation>ihr eigener Klang</translation>
    </message>
    <message>
        <source>{} in the ear</source>
        <translation>{} im Ohr</translation>
    </message>
    <message>
        <source>{} in {}</source>
        <translation>{} in {}</translation>
    </message>
    <message>
        <source>{} is asked for {:.1f} dB SPL at 1 m, {:.1f} dB more than its {:.1f} dB.</source>
        <translation>{} soll {:.1f} dB SPL in 1 m machen, {:.1f} dB mehr als seine {:.1f} dB.</translation>
    </message>
    <message>
        <source>Turning up further would bring the stage closer to ringing than its target allows.</source>
        <translation>Weiter aufdrehen brächte die Bühne näher ans Pfeifen, als ihr Ziel erlaubt.</translation>
    </message>
    <message>
        <source>{} can give no more: it is at its largest level.</source>
        <translation>{} kann nicht mehr geben: es ist an seinem höchsten Pegel.</translation>
    </message>
    <message>
        <source>The level that this takes is out of range, or her own acoustic sound is louder already.</source>
        <translation>Der nötige Pegel liegt außerhalb der Grenzen, oder ihr eigener akustischer Klang ist schon lauter.</translation>
    </message>
    <message>
        <source>What others send or play is in the way: more for one takes the same from another.</source>
        <translation>Was andere senden oder spielen, ist im Weg: mehr für die eine nimmt der anderen dasselbe.</translation>
    </message>
    <message>
        <source>Nothing of her own is in the mix that she hears.</source>
        <translation>Nichts Eigenes ist in dem Mix, den sie hört.</translation>
    </message>
    <message>
        <source>Your whole sound is under {} ({} dB at {}).</source>
        <translation>Dein ganzer Klang liegt unter {} ({} dB bei {}).</translation>
    </message>
    <message>
        <source>Your chest voice is under {} ({} dB at {}).</source>
        <translation>Deine Bruststimme liegt unter {} ({} dB bei {}).</translation>
    </message>
    <message>
        <source>Your vowels are under {} ({} dB at {}).</source>
        <translation>Deine Vokale liegen unter {} ({} dB bei {}).</translation>
    </message>
    <message>
        <source>Your consonants are under {} ({} dB at {}).</source>
        <translation>Deine Konsonanten liegen unter {} ({} dB bei {}).</translation>
    </message>
    <message>
        <source>Your low strings are under {} ({} dB at {}).</source>
        <translation>Deine tiefen Saiten liegen unter {} ({} dB bei {}).</translation>
    </message>
    <message>
        <source>Your upper strings are under {} ({} dB at {}).</source>
        <translation>Deine hohen Saiten liegen unter {} ({} dB bei {}).</translation>
    </message>
    <message>
        <source>Your brilliance is under {} ({} dB at {}).</source>
        <translation>Deine Brillanz liegt unter {} ({} dB bei {}).</translation>
    </message>
    <message>
        <source>Your attack is under {} ({} dB at {}).</source>
        <translation>Dein Anschlag liegt unter {} ({} dB bei {}).</translation>
    </message>
    <message>
        <source>Your lowest notes are under {} ({} dB at {}).</source>
        <translation>Deine tiefsten Töne liegen unter {} ({} dB bei {}).</translation>
    </message>
    <message>
        <source>Your upper notes are under {} ({} dB at {}).</source>
        <translation>Deine hohen Töne liegen unter {} ({} dB bei {}).</translation>
    </message>
    <message>
        <source>Your lows are under {} ({} dB at {}).</source>
        <translation>Deine Tiefen liegen unter {} ({} dB bei {}).</translation>
    </message>
    <message>
        <source>Your middle is under {} ({} dB at {}).</source>
        <translation>Deine Mitten liegen unter {} ({} dB bei {}).</translation>
    </message>
    <message>
        <source>Your highs are under {} ({} dB at {}).</source>
        <translation>Deine Höhen liegen unter {} ({} dB bei {}).</translation>
    </message>
</context>
<context>
    <name>menus</name>
    <message>
        <source>New on a s&amp;tage</source>
        <translation>Neu auf einer &amp;Bühne</translation>
    </message>
    <message>
        <source>Starts a show on an empty stage of a common kind.</source>
        <translation>Beginnt eine Show auf einer leeren Bühne üblicher Art.</translation>
    </message>
    <message>
        <source>Starts a show on this stage.</source>
        <translation>Beginnt eine Show auf dieser Bühne.</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>&amp;Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>The shows that were opened last.</source>
        <translation>Die zuletzt geöffneten Shows.</translation>
    </message>
    <message>
        <source>&amp;Examples</source>
        <translation>&amp;Beispiele</translation>
    </message>
    <message>
        <source>Invented shows to learn from; each opens as a copy.</source>
        <translation>Erfundene Shows zum Lernen; jede öffnet sich als Kopie.</translation>
    </message>
    <message>
        <source>Opens a copy of this example.</source>
        <translation>Öffnet eine Kopie dieses Beispiels.</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation>Werkzeuge</translation>
    </message>
    <message>
        <source>Shows or hides the tool bar.</source>
        <translation>Zeigt oder verbirgt die Werkzeugleiste.</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>Shows and files.</source>
        <translation>Shows und Dateien.</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>What is selected on the plan.</source>
        <translation>Was auf dem Plan ausgewählt ist.</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>Tools, zoom and panels.</source>
        <translation>Werkzeuge, Vergrößerung und Felder.</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>How it works, and what can hurt you.</source>
        <translation>Wie es geht, und was schaden kann.</translation>
    </message>
    <message>
        <source>Map</source>
        <translation>Karte</translation>
    </message>
    <message>
        <source>Shows or hides the frequency of the map.</source>
        <translation>Zeigt oder verbirgt die Frequenz der Karte.</translation>
    </message>
    <message>
        <source>&amp;Lesson</source>
        <translation>&amp;Lektion</translation>
    </message>
    <message>
        <source>To see and to hear why placement matters.</source>
        <translation>Sehen und hören, warum der Platz zählt.</translation>
    </message>
</context>
<context>
    <name>notes</name>
    <message>
        <source>C</source>
        <translation>C</translation>
    </message>
    <message>
        <source>C#</source>
        <translation>Cis</translation>
    </message>
    <message>
        <source>D</source>
        <translation>D</translation>
    </message>
    <message>
        <source>D#</source>
        <translation>Dis</translation>
    </message>
    <message>
        <source>E</source>
        <translation>E</translation>
    </message>
    <message>
        <source>F</source>
        <translation>F</translation>
    </message>
    <message>
        <source>F#</source>
        <translation>Fis</translation>
    </message>
    <message>
        <source>G</source>
        <translation>G</translation>
    </message>
    <message>
        <source>G#</source>
        <translation>Gis</translation>
    </message>
    <message>
        <source>A</source>
        <translation>A</translation>
    </message>
    <message>
        <source>A#</source>
        <translation>Ais</translation>
    </message>
    <message>
        <source>B</source>
        <translation>H</translation>
    </message>
</context>
<context>
    <name>panels</name>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>What can be put on the plan.</source>
        <translation>Was auf den Plan gesetzt werden kann.</translation>
    </message>
    <message>
        <source>Loops</source>
        <translation>Schleifen</translation>
    </message>
    <message>
        <source>What rings first, worst first, and who makes it.</source>
        <translation>Was zuerst pfeift, Schlimmstes zuerst, und wer es macht.</translation>
    </message>
    <message>
        <source>Cures</source>
        <translation>Abhilfen</translation>
    </message>
    <message>
        <source>What to do about it, best first, at equal loudness.</source>
        <translation>Was dagegen zu tun ist, Bestes zuerst, bei gleicher Lautheit.</translation>
    </message>
    <message>
        <source>Inspector</source>
        <translation>Eigenschaften</translation>
    </message>
    <message>
        <source>Every property of what is selected.</source>
        <translation>Alle Eigenschaften dessen, was ausgewählt ist.</translation>
    </message>
    <message>
        <source>Response</source>
        <translation>Frequenzgang</translation>
    </message>
    <message>
        <source>Loop gain over frequency, and the faders that change it.</source>
        <translation>Schleifenverstärkung über der Frequenz, und die Regler, die sie ändern.</translation>
    </message>
    <message>
        <source>Inputs</source>
        <translation>Eingänge</translation>
    </message>
    <message>
        <source>The input list: channels, names, transducers, stands.</source>
        <translation>Die Eingangsliste: Kanäle, Namen, Wandler, Stative.</translation>
    </message>
    <message>
        <source>Mixes</source>
        <translation>Mixe</translation>
    </message>
    <message>
        <source>Which input goes how loud into which mix.</source>
        <translation>Welcher Eingang wie laut in welchen Mix geht.</translation>
    </message>
    <message>
        <source>Ears</source>
        <translation>Ohren</translation>
    </message>
    <message>
        <source>What every player hears, for how long, and what reaches the house.</source>
        <translation>Was alle Spieler hören, wie lange, und was in den Saal dringt.</translation>
    </message>
    <message>
        <source>Soundcheck</source>
        <translation>Soundcheck</translation>
    </message>
    <message>
        <source>What rings first, the walk through it, recordings, live sound, taps, and the log.</source>
        <translation>Was zuerst pfeift, der Rundgang hindurch, Aufnahmen, Live-Klang, Klopfer und das Protokoll.</translation>
    </message>
</context>
<context>
    <name>report</name>
    <message>
        <source>one whole wave</source>
        <translation>eine ganze Welle</translation>
    </message>
    <message>
        <source>{:.0f} whole waves</source>
        <translation>{:.0f} ganze Wellen</translation>
    </message>
    <message>
        <source>{:.1f} waves</source>
        <translation>{:.1f} Wellen</translation>
    </message>
    <message>
        <source>stands still</source>
        <translation>bleibt stehen</translation>
    </message>
    <message>
        <source>doubles every {}</source>
        <translation>verdoppelt sich alle {}</translation>
    </message>
    <message>
        <source>halves every {}</source>
        <translation>halbiert sich alle {}</translation>
    </message>
    <message>
        <source>{} is {} from {} to {}</source>
        <translation>{} ist {} von {} bis {}</translation>
    </message>
    <message>
        <source>No loudspeaker on this stage feeds back into an open input.</source>
        <translation>Kein Lautsprecher dieser Bühne koppelt in einen offenen Eingang zurück.</translation>
    </message>
    <message>
        <source>Levels and minutes are estimates for planning, not a measurement of hearing safety.</source>
        <translation>Pegel und Minuten sind Schätzungen zum Planen, keine Messung zum Gehörschutz.</translation>
    </message>
    <message>
        <source>Ring out at low level, hands on the fader, ears protected.</source>
        <translation>Leise einpfeifen, die Hand am Regler, die Ohren geschützt.</translation>
    </message>
    <message>
        <source>Flown loudspeakers, power and grounding belong to licensed people and local codes.</source>
        <translation>Geflogene Lautsprecher, Strom und Erdung gehören in die Hände von Fachleuten und unter die örtlichen Vorschriften.</translation>
    </message>
    <message>
        <source>Tape over sound holes can mark a finish: test it first, take it off after the show.</source>
        <translation>Klebeband über Schalllöchern kann den Lack zeichnen: erst probieren, nach dem Auftritt abnehmen.</translation>
    </message>
    <message>
        <source>no loop</source>
        <translation>keine Schleife</translation>
    </message>
    <message>
        <source>omni</source>
        <translation>Kugel</translation>
    </message>
    <message>
        <source>subcardioid</source>
        <translation>breite Niere</translation>
    </message>
    <message>
        <source>cardioid</source>
        <translation>Niere</translation>
    </message>
    <message>
        <source>supercardioid</source>
        <translation>Superniere</translation>
    </message>
    <message>
        <source>hypercardioid</source>
        <translation>Hyperniere</translation>
    </message>
    <message>
        <source>figure-8</source>
        <translation>Acht</translation>
    </message>
    <message>
        <source>measured pattern</source>
        <translation>gemessene Charakteristik</translation>
    </message>
    <message>
        <source>wedge</source>
        <translation>Monitor</translation>
    </message>
    <message>
        <source>side fill</source>
        <translation>Sidefill</translation>
    </message>
    <message>
        <source>drum fill</source>
        <translation>Drumfill</translation>
    </message>
    <message>
        <source>front fill</source>
        <translation>Frontfill</translation>
    </message>
    <message>
        <source>flown fill</source>
        <translation>geflogenes Fill</translation>
    </message>
    <message>
        <source>main</source>
        <translation>Hauptlautsprecher</translation>
    </message>
    <message>
        <source>sub</source>
        <translation>Subwoofer</translation>
    </message>
    <message>
        <source>combo amplifier</source>
        <translation>Kofferverstärker</translation>
    </message>
    <message>
        <source> and </source>
        <translation> und </translation>
    </message>
    <message>
        <source>held</source>
        <translation>gehalten</translation>
    </message>
    <message>
        <source>no loop of the show comes near this frequency</source>
        <translation>keine Schleife der Show kommt dieser Frequenz nahe</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>Frequency</source>
        <translation>Frequenz</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Ton</translation>
    </message>
    <message>
        <source>Pull band</source>
        <translation>Band ziehen</translation>
    </message>
    <message>
        <source>Grew</source>
        <translation>Wuchs</translation>
    </message>
    <message>
        <source>Loudest</source>
        <translation>Am lautesten</translation>
    </message>
    <message>
        <source>Pull 3 dB first and listen; a notch at the frequency itself costs less tone than a band.</source>
        <translation>Erst 3 dB ziehen und hören; ein Kerbfilter auf der Frequenz selbst kostet weniger Klang als ein Band.</translation>
    </message>
    <message>
        <source>One tap.

</source>
        <translation>Ein Klopfen.

</translation>
    </message>
    <message>
        <source>Level</source>
        <translation>Pegel</translation>
    </message>
    <message>
        <source>Falls 60 dB in</source>
        <translation>Fällt 60 dB in</translation>
    </message>
    <message>
        <source>Nothing comes back round a loop.
</source>
        <translation>Nichts kommt in einer Schleife zurück.
</translation>
    </message>
    <message>
        <source>Turn the volume down before you listen: howling hurts.
</source>
        <translation>Vor dem Anhören leiser drehen: Pfeifen tut weh.
</translation>
    </message>
    <message>
        <source>HOLDS: no loudspeaker reaches an open microphone or pickup, so nothing can ring.
</source>
        <translation>HÄLT: kein Lautsprecher erreicht ein offenes Mikrofon oder einen Tonabnehmer, also kann nichts pfeifen.
</translation>
    </message>
    <message>
        <source>To count on</source>
        <translation>Verlässlich</translation>
    </message>
    <message>
        <source>As drawn</source>
        <translation>Wie gezeichnet</translation>
    </message>
    <message>
        <source>At the worst phases</source>
        <translation>Bei schlimmsten Phasen</translation>
    </message>
    <message>
        <source>First rings as drawn, worst first</source>
        <translation>Erste Pfeifstellen wie gezeichnet, schlimmste zuerst</translation>
    </message>
    <message>
        <source>Band</source>
        <translation>Band</translation>
    </message>
    <message>
        <source>Margin</source>
        <translation>Reserve</translation>
    </message>
    <message>
        <source>At this margin</source>
        <translation>Bei dieser Reserve</translation>
    </message>
    <message>
        <source>Who: loudspeaker &gt; input</source>
        <translation>Wer: Lautsprecher &gt; Eingang</translation>
    </message>
    <message>
        <source>Where to listen first when ringing out</source>
        <translation>Wo beim Einpfeifen zuerst hinhören</translation>
    </message>
    <message>
        <source>Pairs to worry about: loop gain at the worst frequency of each, distance, angle off each axis</source>
        <translation>Bedenkliche Paare: Schleifenverstärkung bei der schlimmsten Frequenz, Abstand, Winkel zu jeder Achse</translation>
    </message>
    <message>
        <source>silent</source>
        <translation>still</translation>
    </message>
    <message>
        <source>a day or more</source>
        <translation>einen Tag oder mehr</translation>
    </message>
    <message>
        <source>Ears (estimates for planning, no hearing-safety measurement)</source>
        <translation>Ohren (Schätzungen zum Planen, keine Messung zum Gehörschutz)</translation>
    </message>
    <message>
        <source>Player</source>
        <translation>Spieler</translation>
    </message>
    <message>
        <source>Own</source>
        <translation>Eigenes</translation>
    </message>
    <message>
        <source>Others</source>
        <translation>Anderes</translation>
    </message>
    <message>
        <source>Own over others</source>
        <translation>Eigenes über anderem</translation>
    </message>
    <message>
        <source>NIOSH</source>
        <translation>NIOSH</translation>
    </message>
    <message>
        <source>OSHA</source>
        <translation>OSHA</translation>
    </message>
    <message>
        <source>Look at this</source>
        <translation>Darauf achten</translation>
    </message>
    <message>
        <source>no loop left</source>
        <translation>keine Schleife mehr</translation>
    </message>
    <message>
        <source>Caution: </source>
        <translation>Vorsicht: </translation>
    </message>
    <message>
        <source>The plan, cheapest that was found:</source>
        <translation>Der Vorschlag, der günstigste gefundene:</translation>
    </message>
    <message>
        <source>Each on its own, best first (always at the same level at the ears):</source>
        <translation>Jede für sich, beste zuerst (immer bei gleichem Pegel an den Ohren):</translation>
    </message>
    <message>
        <source>position</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>aim</source>
        <translation>Richtung</translation>
    </message>
    <message>
        <source>inverted</source>
        <translation>gedreht</translation>
    </message>
    <message>
        <source>normal</source>
        <translation>normal</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
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
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>channel</source>
        <translation>Kanal</translation>
    </message>
    <message>
        <source>transducer</source>
        <translation>Wandler</translation>
    </message>
    <message>
        <source>stand</source>
        <translation>Stativ</translation>
    </message>
    <message>
        <source>48 V</source>
        <translation>48 V</translation>
    </message>
    <message>
        <source>DI</source>
        <translation>DI</translation>
    </message>
    <message>
        <source>notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>polarity</source>
        <translation>Polarität</translation>
    </message>
    <message>
        <source>high-pass</source>
        <translation>Hochpass</translation>
    </message>
    <message>
        <source>equaliser</source>
        <translation>Equalizer</translation>
    </message>
    <message>
        <source>kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>loudspeakers</source>
        <translation>Lautsprecher</translation>
    </message>
    <message>
        <source>in-ears</source>
        <translation>In-Ears</translation>
    </message>
    <message>
        <source>no monitor</source>
        <translation>kein Monitor</translation>
    </message>
    <message>
        <source>hears by</source>
        <translation>hört über</translation>
    </message>
    <message>
        <source>mix</source>
        <translation>Mix</translation>
    </message>
    <message>
        <source>send</source>
        <translation>Send</translation>
    </message>
    <message>
        <source>number</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>outlets</source>
        <translation>Ausgänge</translation>
    </message>
    <message>
        <source>notches</source>
        <translation>Kerbfilter</translation>
    </message>
    <message>
        <source>delay</source>
        <translation>Verzögerung</translation>
    </message>
    <message>
        <source>there</source>
        <translation>da</translation>
    </message>
    <message>
        <source>gone</source>
        <translation>fort</translation>
    </message>
    <message>
        <source>new</source>
        <translation>neu</translation>
    </message>
    <message>
        <source>What changed</source>
        <translation>Was sich änderte</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Which</source>
        <translation>Welches</translation>
    </message>
    <message>
        <source>Before</source>
        <translation>Vorher</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>input</source>
        <translation>Eingang</translation>
    </message>
    <message>
        <source>player</source>
        <translation>Spieler</translation>
    </message>
    <message>
        <source>loudspeaker</source>
        <translation>Lautsprecher</translation>
    </message>
    <message>
        <source>backline</source>
        <translation>Backline</translation>
    </message>
    <message>
        <source>polarity inverted</source>
        <translation>Polarität gedreht</translation>
    </message>
    <message>
        <source>most</source>
        <translation>am meisten</translation>
    </message>
    <message>
        <source>strong</source>
        <translation>stark</translation>
    </message>
    <message>
        <source>medium</source>
        <translation>mittel</translation>
    </message>
    <message>
        <source>a little</source>
        <translation>wenig</translation>
    </message>
    <message>
        <source>delay {:.1f} ms</source>
        <translation>Verzögerung {:.1f} ms</translation>
    </message>
    <message>
        <source>in-ears of {}</source>
        <translation>In-Ears von {}</translation>
    </message>
    <message>
        <source>mix {}: {:+g} dB</source>
        <translation>Mix {}: {:+g} dB</translation>
    </message>
    <message>
        <source>Input list</source>
        <translation>Eingangsliste</translation>
    </message>
    <message>
        <source>Ch</source>
        <translation>Kanal</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>Transducer</source>
        <translation>Wandler</translation>
    </message>
    <message>
        <source>Stand</source>
        <translation>Stativ</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>Mix</source>
        <translation>Mix</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Für</translation>
    </message>
    <message>
        <source>Outlets</source>
        <translation>Ausgänge</translation>
    </message>
    <message>
        <source>Input</source>
        <translation>Eingang</translation>
    </message>
    <message>
        <source>Level at 1 m</source>
        <translation>Pegel in 1 m</translation>
    </message>
    <message>
        <source>Amount</source>
        <translation>Menge</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>Sends, dB SPL at 1 m</source>
        <translation>Sends, dB SPL in 1 m</translation>
    </message>
    <message>
        <source>Ring-out list</source>
        <translation>Liste zum Einpfeifen</translation>
    </message>
    <message>
        <source>Cut now</source>
        <translation>Jetzt abgesenkt</translation>
    </message>
    <message>
        <source>As drawn, all sends can rise by {} before the stage rings.</source>
        <translation>Wie gezeichnet können alle Sends um {} hoch, bevor die Bühne pfeift.</translation>
    </message>
    <message>
        <source>This stage is tight: count on {} before it rings (as drawn {}) where {:g} dB are wanted.</source>
        <translation>Diese Bühne ist knapp: verlässlich {} bis zum Pfeifen (wie gezeichnet {}), wo {:g} dB gewünscht sind.</translation>
    </message>
    <message>
        <source>This stage holds: count on {} before it rings (as drawn {}), {:g} dB are wanted.</source>
        <translation>Diese Bühne hält: verlässlich {} bis zum Pfeifen (wie gezeichnet {}), {:g} dB sind gewünscht.</translation>
    </message>
    <message>
        <source>first order, a = {:.2f}</source>
        <translation>erste Ordnung, a = {:.2f}</translation>
    </message>
    <message>
        <source>{} microphone</source>
        <translation>Mikrofon, {}</translation>
    </message>
    <message>
        <source>{}, cupped</source>
        <translation>{}, umfasst</translation>
    </message>
    <message>
        <source>pickup, sound holes covered</source>
        <translation>Tonabnehmer, Schalllöcher abgedeckt</translation>
    </message>
    <message>
        <source>pickup</source>
        <translation>Tonabnehmer</translation>
    </message>
    <message>
        <source>line</source>
        <translation>Line</translation>
    </message>
    <message>
        <source>high-pass {}, {} dB/oct</source>
        <translation>Hochpass {}, {} dB/Okt.</translation>
    </message>
    <message>
        <source>{:+.1f} dB at {}, Q {:.1f}</source>
        <translation>{:+.1f} dB bei {}, Q {:.1f}</translation>
    </message>
    <message>
        <source>could be {} &gt; {}: rings at {} as drawn, margin {}</source>
        <translation>könnte {} &gt; {} sein: pfeift wie gezeichnet bei {}, Reserve {}</translation>
    </message>
    <message>
        <source>No howl was found in {}.
</source>
        <translation>In {} wurde kein Pfeifen gefunden.
</translation>
    </message>
    <message>
        <source>One howl in {}.

</source>
        <translation>Ein Pfeifen in {}.

</translation>
    </message>
    <message>
        <source>{} howls in {}.

</source>
        <translation>{} Pfeifstellen in {}.

</translation>
    </message>
    <message>
        <source>{} taps, averaged.

</source>
        <translation>{} Klopfer, gemittelt.

</translation>
    </message>
    <message>
        <source>Margin as drawn: {}; all sends raised by {:g} dB.
</source>
        <translation>Reserve wie gezeichnet: {}; alle Sends um {:g} dB angehoben.
</translation>
    </message>
    <message>
        <source>{:.1f} s of sound; the source plays into {}.
</source>
        <translation>{:.1f} s Ton; die Quelle spielt in {}.
</translation>
    </message>
    <message>
        <source>{} howls: it grows by {:.1f} dB/s until the amplifier holds it.
</source>
        <translation>{} pfeift: es wächst um {:.1f} dB/s, bis der Verstärker es hält.
</translation>
    </message>
    <message>
        <source>RINGS: count on {:.1f} dB; a stage set up from this drawing may howl as it is set.
</source>
        <translation>PFEIFT: verlässlich {:.1f} dB; eine nach dieser Zeichnung aufgebaute Bühne kann pfeifen, wie sie eingestellt ist.
</translation>
    </message>
    <message>
        <source>TIGHT: count on {:.1f} dB, {:.1f} dB short of the target of {:g} dB.
</source>
        <translation>KNAPP: verlässlich {:.1f} dB, {:.1f} dB unter dem Ziel von {:g} dB.
</translation>
    </message>
    <message>
        <source>HOLDS: count on {:.1f} dB; the target is {:g} dB.
</source>
        <translation>HÄLT: verlässlich {:.1f} dB; das Ziel ist {:g} dB.
</translation>
    </message>
    <message>
        <source>  (to count on: 95 of 100 stages set up by hand from this drawing have at least this; {} draws)
</source>
        <translation>  (verlässlich: 95 von 100 von Hand nach dieser Zeichnung aufgebauten Bühnen haben mindestens dies; {} Ziehungen)
</translation>
    </message>
    <message>
        <source>  and {} more; --json lists them
</source>
        <translation>  und {} weitere; --json führt sie auf
</translation>
    </message>
    <message>
        <source>House: what spills from the stage, target {:g} dBA</source>
        <translation>Saal: was von der Bühne kommt, Ziel {:g} dBA</translation>
    </message>
    <message>
        <source>{:+.0f} dB against the target</source>
        <translation>{:+.0f} dB gegen das Ziel</translation>
    </message>
    <message>
        <source>to count on {}, as drawn {}, tone {:.1f} dB</source>
        <translation>verlässlich {}, wie gezeichnet {}, Klang {:.1f} dB</translation>
    </message>
    <message>
        <source>; the first to ring is then {} ({})</source>
        <translation>; zuerst pfeift dann {} ({})</translation>
    </message>
    <message>
        <source>After that: count on {}, as drawn {}; the target is {:g} dB.</source>
        <translation>Danach: verlässlich {}, wie gezeichnet {}; das Ziel ist {:g} dB.</translation>
    </message>
    <message>
        <source>Now: count on {}, as drawn {}; the target is {:g} dB.</source>
        <translation>Jetzt: verlässlich {}, wie gezeichnet {}; das Ziel ist {:g} dB.</translation>
    </message>
    <message>
        <source>What is lost: </source>
        <translation>Was verloren geht: </translation>
    </message>
    <message>
        <source>mix {}: {} to {}</source>
        <translation>Mix {}: {} zu {}</translation>
    </message>
    <message>
        <source>Likely loop</source>
        <translation>Wahrscheinliche Schleife</translation>
    </message>
    <message>
        <source>No howl: what comes back dies away by {:.1f} dB/s.
</source>
        <translation>Kein Pfeifen: was zurückkommt, verklingt um {:.1f} dB/s.
</translation>
    </message>
    <message>
        <source>First to howl would be {}, with {:.1f} dB more.
</source>
        <translation>Zuerst pfiffe es bei {}, mit {:.1f} dB mehr.
</translation>
    </message>
    <message>
        <source>not known: no loop as drawn reaches it</source>
        <translation>nicht bekannt: keine gezeichnete Schleife reicht dorthin</translation>
    </message>
    <message>
        <source>Near</source>
        <translation>Nahe</translation>
    </message>
    <message>
        <source>Found at the soundcheck</source>
        <translation>Beim Soundcheck gefunden</translation>
    </message>
    <message>
        <source>Heard</source>
        <translation>Gehört</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Getan</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>Absenkung</translation>
    </message>
    <message>
        <source>This stage is likely to howl as it is set: count on {} of room (as drawn {}). Below 0 dB it howls; {:g} dB are wanted.</source>
        <translation>Diese Bühne pfeift wohl so, wie sie eingestellt ist: verlässlich {} Spielraum (wie gezeichnet {}). Unter 0 dB pfeift sie; {:g} dB sind gewünscht.</translation>
    </message>
    <message>
        <source>on the centre line</source>
        <translation>auf der Mittellinie</translation>
    </message>
    <message>
        <source>{} stage left</source>
        <translation>{} bühnenlinks</translation>
    </message>
    <message>
        <source>{} stage right</source>
        <translation>{} bühnenrechts</translation>
    </message>
    <message>
        <source>{} in front of the edge</source>
        <translation>{} vor der Kante</translation>
    </message>
    <message>
        <source>{} from the edge</source>
        <translation>{} von der Kante</translation>
    </message>
    <message>
        <source>{} high</source>
        <translation>{} hoch</translation>
    </message>
    <message>
        <source>Loudspeakers</source>
        <translation>Lautsprecher</translation>
    </message>
    <message>
        <source>    from {}
</source>
        <translation>    von {}
</translation>
    </message>
    <message>
        <source>  {} has least left: it is asked for {:.0f} dB at 1 m and can do {:.0f} more.
</source>
        <translation>  {} hat am wenigsten übrig: verlangt sind {:.0f} dB in 1 m, {:.0f} mehr sind möglich.
</translation>
    </message>
    <message>
        <source>They know the drawing alone: no shadows of people and stands, no wall reflecting twice, no compressors or notch boxes, nobody who moves.</source>
        <translation>Sie kennen nur die Zeichnung: keine Schatten von Menschen und Stativen, keine Wand, die zweimal reflektiert, keine Kompressoren oder Kerbfilter-Automaten, niemanden, der sich bewegt.</translation>
    </message>
    <message>
        <source>Quietest stage on which everybody hears herself over the others</source>
        <translation>Leiseste Bühne, auf der sich alle über den anderen hören</translation>
    </message>
    <message>
        <source>  The Ears tab sets it and tells what it does to the margin.
</source>
        <translation>  Der Reiter Ohren stellt sie ein und sagt, was sie mit der Reserve macht.
</translation>
    </message>
    <message>
        <source>Mix {}</source>
        <translation>Mix {}</translation>
    </message>
    <message>
        <source>  {}: each answer calls for another, and there is no end
</source>
        <translation>  {}: Jede Antwort ruft die nächste hervor, und es nimmt kein Ende
</translation>
    </message>
    <message>
        <source>  {}: {:.0f} dBA, then {:.0f} dBA
</source>
        <translation>  {}: {:.0f} dBA, dann {:.0f} dBA
</translation>
    </message>
    <message>
        <source>  no levels make it; in each other&apos;s way are {}
</source>
        <translation>  mit keinen Pegeln; einander im Weg sind {}
</translation>
    </message>
    <message>
        <source>Set up exactly as drawn, {} ({}) is first to ring: {} back into {} through mix {}.</source>
        <translation>Genau wie gezeichnet pfeift {} ({}) zuerst: {} zurück in {} über Mix {}.</translation>
    </message>
    <message>
        <source>No stage is set up exactly: ring out at low level before a monitor goes up, expect {} first, and keep loudspeakers and microphones where the plan has them.</source>
        <translation>Keine Bühne wird genau so aufgebaut: leise einpfeifen, bevor ein Monitor hochgeht, zuerst {} erwarten, und Lautsprecher und Mikrofone dort lassen, wo der Plan sie hat.</translation>
    </message>
    <message>
        <source>If one gets 3 dB louder: how far each turns up to hear as before</source>
        <translation>Wenn eines 3 dB lauter wird: wie weit dann aufgedreht wird, um sich wie zuvor zu hören</translation>
    </message>
    <message>
        <source>Mixes</source>
        <translation>Mixe</translation>
    </message>
    <message>
        <source>First to ring, share of set-ups</source>
        <translation>Pfeift zuerst, Anteil der Aufbauten</translation>
    </message>
    <message>
        <source>No stage is set up exactly: ring out at low level before a monitor goes up, expect {} first, most likely {} back into {} through mix {}, and keep loudspeakers and microphones where the plan has them.</source>
        <translation>Keine Bühne wird genau so aufgebaut: leise einpfeifen, bevor ein Monitor hochgeht, zuerst {} erwarten, am ehesten {} zurück in {} über Mix {}, und Lautsprecher und Mikrofone dort lassen, wo der Plan sie hat.</translation>
    </message>
</context>
<context>
    <name>ring_why</name>
    <message>
        <source>As set it dies away: %1.</source>
        <translation>Wie eingestellt klingt es ab: %1.</translation>
    </message>
    <message>
        <source>As set it builds up: %1.</source>
        <translation>Wie eingestellt schaukelt es sich auf: %1.</translation>
    </message>
    <message>
        <source>In 95 of 100 stages it has %1 left or more.</source>
        <translation>In 95 von 100 Aufbauten sind %1 oder mehr übrig.</translation>
    </message>
    <message>
        <source>Filters, delays and the body change nothing of that.</source>
        <translation>Filter, Verzögerungen und der Korpus ändern daran nichts.</translation>
    </message>
    <message>
        <source>Filters, delays and the body add %1.</source>
        <translation>Filter, Verzögerungen und der Korpus fügen %1 hinzu.</translation>
    </message>
    <message>
        <source>Filters, delays and the body take away %1.</source>
        <translation>Filter, Verzögerungen und der Korpus nehmen %1 davon weg.</translation>
    </message>
    <message>
        <source>Together that is whole: it comes back in step.</source>
        <translation>Zusammen ist das eine ganze Zahl: Es kommt im Takt zurück.</translation>
    </message>
    <message>
        <source>What is missing to a whole number comes from other paths and loops, which ring along.</source>
        <translation>Was zu einer ganzen Zahl fehlt, bringen andere Wege und Schleifen, die mitpfeifen.</translation>
    </message>
</context>
<context>
    <name>soundcheck</name>
    <message>
        <source>heard</source>
        <translation>gehört</translation>
    </message>
    <message>
        <source>notch</source>
        <translation>Kerbfilter</translation>
    </message>
    <message>
        <source>pull band</source>
        <translation>Band ziehen</translation>
    </message>
    <message>
        <source>The sound input could not be opened.</source>
        <translation>Der Toneingang ließ sich nicht öffnen.</translation>
    </message>
    <message>
        <source>The sound input has gone away.</source>
        <translation>Der Toneingang ist verschwunden.</translation>
    </message>
    <message>
        <source>%1 offers no rate between 8 and 192 kHz.</source>
        <translation>%1 bietet keine Rate zwischen 8 und 192 kHz.</translation>
    </message>
    <message>
        <source>This machine offers no sound input. Everything else works: record elsewhere and load the file, or plug a sound input in and look again.</source>
        <translation>Dieser Rechner bietet keinen Toneingang. Alles andere geht: woanders aufnehmen und die Datei laden, oder einen Toneingang anstecken und noch einmal suchen.</translation>
    </message>
</context>
</TS>
