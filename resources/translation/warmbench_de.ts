<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Warmbench</name>
    <message>
        <source>   that holds</source>
        <translation>   die hält</translation>
    </message>
    <message>
        <source>   with</source>
        <translation>   mit</translation>
    </message>
    <message>
        <source> % of every weekday's hands</source>
        <translation> % der Arbeitskraft jedes Wochentags</translation>
    </message>
    <message>
        <source> % sure to meet each target</source>
        <translation> % sicher, jedes Ziel zu erreichen</translation>
    </message>
    <message>
        <source> (outside its recipe)</source>
        <translation> (außerhalb des Rezepts)</translation>
    </message>
    <message>
        <source> (set)</source>
        <translation> (gestellt)</translation>
    </message>
    <message>
        <source> K warmer than now</source>
        <translation> K wärmer als jetzt</translation>
    </message>
    <message>
        <source> W</source>
        <translation> W</translation>
    </message>
    <message>
        <source> and %1 more</source>
        <translation> und %1 weitere</translation>
    </message>
    <message>
        <source> day</source>
        <translation> Tag</translation>
    </message>
    <message>
        <source> days</source>
        <translation> Tage</translation>
    </message>
    <message>
        <source> mm</source>
        <translation> mm</translation>
    </message>
    <message>
        <source> or </source>
        <translation> oder </translation>
    </message>
    <message>
        <source> s</source>
        <translation> s</translation>
    </message>
    <message>
        <source> weeks</source>
        <translation> Wochen</translation>
    </message>
    <message>
        <source> °C</source>
        <translation> °C</translation>
    </message>
    <message>
        <source> · late</source>
        <translation> · zu spät</translation>
    </message>
    <message>
        <source>%1 %</source>
        <translation>%1 %</translation>
    </message>
    <message>
        <source>%1 % (%2 to %3)</source>
        <translation>%1 % (%2 bis %3)</translation>
    </message>
    <message>
        <source>%1 % (%2)</source>
        <translation>%1 % (%2)</translation>
    </message>
    <message>
        <source>%1 % hands</source>
        <translation>%1 % Arbeitskraft</translation>
    </message>
    <message>
        <source>%1 % should have roots, none seen yet</source>
        <translation>%1 % müssten Wurzeln haben, noch keine gesehen</translation>
    </message>
    <message>
        <source>%1 % sure</source>
        <translation>%1 % sicher</translation>
    </message>
    <message>
        <source>%1 (%2 to %3)</source>
        <translation>%1 (%2 bis %3)</translation>
    </message>
    <message>
        <source>%1 (just before: %2)</source>
        <translation>%1 (kurz davor: %2)</translation>
    </message>
    <message>
        <source>%1 (no readings)</source>
        <translation>%1 (keine Messwerte)</translation>
    </message>
    <message>
        <source>%1 + %2 planned</source>
        <translation>%1 + %2 geplant</translation>
    </message>
    <message>
        <source>%1 - Warmbench</source>
        <translation>%1 - Warmbench</translation>
    </message>
    <message>
        <source>%1 W</source>
        <translation>%1 W</translation>
    </message>
    <message>
        <source>%1 are told of, but only %2 were examined</source>
        <translation>%1 sind genannt, aber nur %2 wurden angesehen</translation>
    </message>
    <message>
        <source>%1 at %2, %3, then %4 in the open</source>
        <translation>%1 bei %2, %3, danach offen %4</translation>
    </message>
    <message>
        <source>%1 batches</source>
        <translation>%1 Partien</translation>
    </message>
    <message>
        <source>%1 batches need a look</source>
        <translation>%1 Partien brauchen einen Blick</translation>
    </message>
    <message>
        <source>%1 becomes what it was at the beginning of %2. What was put in since then is not in it: it is kept beside it, in a file of its own.</source>
        <translation>%1 wird so, wie es am Anfang des %2 war. Was seither eingetragen wurde, steht nicht darin: Es bleibt daneben in einer eigenen Datei erhalten.</translation>
    </message>
    <message>
        <source>%1 bytes of text; expected at most %2</source>
        <translation>%1 Byte Text; erwartet höchstens %2</translation>
    </message>
    <message>
        <source>%1 can be relied on, at %2 % sureness</source>
        <translation>mit %1 kann man bei %2 % Sicherheit rechnen</translation>
    </message>
    <message>
        <source>%1 container in zone %2</source>
        <translation>%1 Gefäß in Zone %2</translation>
    </message>
    <message>
        <source>%1 containers</source>
        <translation>%1 Gefäße</translation>
    </message>
    <message>
        <source>%1 containers in zone %2</source>
        <translation>%1 Gefäße in Zone %2</translation>
    </message>
    <message>
        <source>%1 cutting was taken where its flushes give %2</source>
        <translation>%1 Steckling wurde geschnitten, wo die Austriebe %2 geben</translation>
    </message>
    <message>
        <source>%1 cuttings</source>
        <translation>%1 Stecklinge</translation>
    </message>
    <message>
        <source>%1 cuttings can be struck in time from %2 to %3</source>
        <translation>Stecklinge (%1) können rechtzeitig gesteckt werden von %2 bis %3</translation>
    </message>
    <message>
        <source>%1 cuttings for %2 plants, as the recipe's take may be anything from %3 to %4 %: at a sureness of %5 % they would be %6, and checks of your own, taken over into a recipe in Results, would ask for fewer as well</source>
        <translation>%1 Stecklinge für %2 Pflanzen, weil die Ausbeute des Rezepts irgendwo zwischen %3 und %4 % liegen kann: bei %5 % Sicherheit wären es %6, und eigene Kontrollen, unter Ergebnisse in ein Rezept übernommen, verlangten auch weniger</translation>
    </message>
    <message>
        <source>%1 cuttings for %2 plants, as the recipe's take may be anything from %3 to %4 %: checks of your own, taken over into a recipe in Results, would ask for fewer</source>
        <translation>%1 Stecklinge für %2 Pflanzen, weil die Ausbeute des Rezepts irgendwo zwischen %3 und %4 % liegen kann: Eigene Kontrollen, unter Ergebnisse in ein Rezept übernommen, verlangten weniger</translation>
    </message>
    <message>
        <source>%1 cuttings on a day with hands for %2</source>
        <translation>%1 Stecklinge an einem Tag mit Arbeitskraft für %2</translation>
    </message>
    <message>
        <source>%1 cuttings were taken where its flushes give %2</source>
        <translation>%1 Stecklinge wurden geschnitten, wo die Austriebe %2 geben</translation>
    </message>
    <message>
        <source>%1 cuttings; expected 1 to 100000</source>
        <translation>%1 Stecklinge; erwartet 1 bis 100000</translation>
    </message>
    <message>
        <source>%1 days</source>
        <translation>%1 Tage</translation>
    </message>
    <message>
        <source>%1 days behind the plan</source>
        <translation>%1 Tage hinter dem Plan</translation>
    </message>
    <message>
        <source>%1 degree-day above %2 so far, %3</source>
        <translation>%1 Gradtag über %2 bis jetzt, %3</translation>
    </message>
    <message>
        <source>%1 degree-days above %2 so far, %3</source>
        <translation>%1 Gradtage über %2 bis jetzt, %3</translation>
    </message>
    <message>
        <source>%1 does not suit.</source>
        <translation>%1 passt nicht.</translation>
    </message>
    <message>
        <source>%1 entries; expected at most %2</source>
        <translation>%1 Einträge; erwartet höchstens %2</translation>
    </message>
    <message>
        <source>%1 examined, but only %2 stand in it</source>
        <translation>%1 angesehen, aber nur %2 stehen darin</translation>
    </message>
    <message>
        <source>%1 examined, but rooted, callused, alive and dead make %2</source>
        <translation>%1 angesehen, aber bewurzelt, mit Kallus, lebend und tot ergeben %2</translation>
    </message>
    <message>
        <source>%1 h</source>
        <translation>%1 h</translation>
    </message>
    <message>
        <source>%1 has %2 rows; a sheet takes %3</source>
        <translation>%1 hat %2 Zeilen; ein Blatt fasst %3</translation>
    </message>
    <message>
        <source>%1 has stood there since %2, and its warmth is reckoned from that; make the zone smaller instead of taking it away</source>
        <translation>%1 steht dort seit %2, und die Wärme wird danach gerechnet; machen Sie die Zone kleiner, statt sie wegzunehmen</translation>
    </message>
    <message>
        <source>%1 in %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1 is as it was at the beginning of %2.</source>
        <translation>%1 ist so, wie es am Anfang des %2 war.</translation>
    </message>
    <message>
        <source>%1 is before it was struck, on %2</source>
        <translation>%1 liegt vor dem Stecken am %2</translation>
    </message>
    <message>
        <source>%1 is full: no place is left in it for one slot more. Make the house larger, or a bench in it smaller, or put the bench in another house.</source>
        <translation>%1 ist voll: Es ist kein Platz für einen einzigen Stellplatz mehr. Machen Sie das Haus größer oder einen Tisch darin kleiner, oder stellen Sie den Tisch in ein anderes Haus.</translation>
    </message>
    <message>
        <source>%1 is no set-point of its mat</source>
        <translation>%1 ist kein Sollwert der Heizmatte</translation>
    </message>
    <message>
        <source>%1 is not due to be potted on on this day.</source>
        <translation>%1 ist an diesem Tag nicht zum Topfen fällig.</translation>
    </message>
    <message>
        <source>%1 is too large for every zone</source>
        <translation>%1 ist für jede Zone zu groß</translation>
    </message>
    <message>
        <source>%1 is too large for every zone that suits it</source>
        <translation>%1 ist für jede passende Zone zu groß</translation>
    </message>
    <message>
        <source>%1 kWh, %2</source>
        <translation>%1 kWh, %2</translation>
    </message>
    <message>
        <source>%1 l of %2</source>
        <translation>%1 l %2</translation>
    </message>
    <message>
        <source>%1 less</source>
        <translation>%1 weniger</translation>
    </message>
    <message>
        <source>%1 long</source>
        <translation>%1 lang</translation>
    </message>
    <message>
        <source>%1 loses its place and waits: %2</source>
        <translation>%1 verliert ihren Platz und wartet: %2</translation>
    </message>
    <message>
        <source>%1 lost</source>
        <translation>%1 verloren</translation>
    </message>
    <message>
        <source>%1 lost in the last two weeks</source>
        <translation>%1 in den letzten zwei Wochen ausgefallen</translation>
    </message>
    <message>
        <source>%1 measured</source>
        <translation>%1 gemessen</translation>
    </message>
    <message>
        <source>%1 missing</source>
        <translation>%1 zu wenig</translation>
    </message>
    <message>
        <source>%1 missing so far</source>
        <translation>bisher %1 zu wenig</translation>
    </message>
    <message>
        <source>%1 missing: %2</source>
        <translation>%1 zu wenig: %2</translation>
    </message>
    <message>
        <source>%1 more</source>
        <translation>%1 mehr</translation>
    </message>
    <message>
        <source>%1 more %2 slot in %3 on %4</source>
        <translation>%1 Stellplatz (%2) mehr in %3, %4</translation>
    </message>
    <message>
        <source>%1 more %2 slots in %3 on %4</source>
        <translation>%1 Stellplätze (%2) mehr in %3, %4</translation>
    </message>
    <message>
        <source>%1 need the place of %2, so they are not ticked any more either.</source>
        <translation>%1 brauchen den Platz von %2 und sind deshalb auch nicht mehr angehakt.</translation>
    </message>
    <message>
        <source>%1 needs the place of %2, so it is not ticked any more either.</source>
        <translation>%1 braucht den Platz von %2 und ist deshalb auch nicht mehr angehakt.</translation>
    </message>
    <message>
        <source>%1 needs the place of %2, so that is ticked too.</source>
        <translation>%1 braucht den Platz von %2, deshalb ist das mit angehakt.</translation>
    </message>
    <message>
        <source>%1 needs the places of %2, so they are ticked too.</source>
        <translation>%1 braucht die Plätze von %2, deshalb sind diese mit angehakt.</translation>
    </message>
    <message>
        <source>%1 node</source>
        <translation>%1 Knoten</translation>
    </message>
    <message>
        <source>%1 nodes</source>
        <translation>%1 Knoten</translation>
    </message>
    <message>
        <source>%1 number %2: found nothing that can be its %3</source>
        <translation>%1 Nummer %2: Für %3 steht nichts Brauchbares da</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <comment>root zone, set-point</comment>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>%1 of %2 came of %3 cutting</source>
        <translation>%1 von %2 wurden aus %3 Steckling</translation>
    </message>
    <message>
        <source>%1 of %2 came of %3 cuttings</source>
        <translation>%1 von %2 wurden aus %3 Stecklingen</translation>
    </message>
    <message>
        <source>%1 of %2 can be counted on</source>
        <translation>mit %1 von %2 kann man rechnen</translation>
    </message>
    <message>
        <source>%1 of %2 can be counted on; the chance of all is %3 %</source>
        <translation>auf %1 von %2 ist Verlass; die Aussicht auf alle ist %3 %</translation>
    </message>
    <message>
        <source>%1 of %2 container: %3 plant, %4 lost</source>
        <translation>%1 von %2 Gefäß: %3 Pflanze, %4 Ausfall</translation>
    </message>
    <message>
        <source>%1 of %2 container: %3 plants, %4 lost</source>
        <translation>%1 von %2 Gefäß: %3 Pflanzen, %4 Ausfall</translation>
    </message>
    <message>
        <source>%1 of %2 containers: %3 plant, %4 lost</source>
        <translation>%1 von %2 Gefäßen: %3 Pflanze, %4 Ausfall</translation>
    </message>
    <message>
        <source>%1 of %2 containers: %3 plants, %4 lost</source>
        <translation>%1 von %2 Gefäßen: %3 Pflanzen, %4 Ausfall</translation>
    </message>
    <message>
        <source>%1 of %2 cutting has a place</source>
        <translation>%1 von %2 Steckling hat einen Platz</translation>
    </message>
    <message>
        <source>%1 of %2 cutting that hands can strike is taken.</source>
        <translation>%1 von %2 Steckling, der gesteckt werden kann, ist vergeben.</translation>
    </message>
    <message>
        <source>%1 of %2 cuttings have a place</source>
        <translation>%1 von %2 Stecklingen haben einen Platz</translation>
    </message>
    <message>
        <source>%1 of %2 cuttings that hands can strike are taken.</source>
        <translation>%1 von %2 Stecklingen, die gesteckt werden können, sind vergeben.</translation>
    </message>
    <message>
        <source>%1 of %2 cuttings, expected at most as many</source>
        <translation>%1 von %2 Stecklingen, erwartet höchstens so viele</translation>
    </message>
    <message>
        <source>%1 of %2 dead on %3</source>
        <translation>%1 von %2 tot am %3</translation>
    </message>
    <message>
        <source>%1 of %2 kWh, %3, ran under nothing; reckoned from set-points and the houses' air, not metered</source>
        <translation>%1 von %2 kWh, %3, liefen unter nichts; aus Sollwerten und der Luft der Häuser gerechnet, nicht gezählt</translation>
    </message>
    <message>
        <source>%1 of %2 lines can't be read, such as %3</source>
        <translation>%1 von %2 Zeilen sind nicht lesbar, etwa %3</translation>
    </message>
    <message>
        <source>%1 of %2 potted on from %3, %4 %: %5 to %6 % at %7 %, as batches differ</source>
        <translation>%1 von %2 getopft aus %3, %4 %: %5 bis %6 % bei %7 %, so wie sich Partien unterscheiden</translation>
    </message>
    <message>
        <source>%1 of %2 rooted</source>
        <translation>%1 von %2 bewurzelt</translation>
    </message>
    <message>
        <source>%1 of %2 slots taken</source>
        <translation>%1 von %2 Stellplätzen belegt</translation>
    </message>
    <message>
        <source>%1 of %2 slots taken, %3 batch</source>
        <translation>%1 von %2 Stellplätzen belegt, Partien: %3</translation>
    </message>
    <message>
        <source>%1 of %2 slots taken, %3 batches</source>
        <translation>%1 von %2 Stellplätzen belegt, Partien: %3</translation>
    </message>
    <message>
        <source>%1 of %2 target is covered</source>
        <translation>%1 von %2 Ziel ist gedeckt</translation>
    </message>
    <message>
        <source>%1 of %2 targets are covered</source>
        <translation>%1 von %2 Zielen sind gedeckt</translation>
    </message>
    <message>
        <source>%1 of %2 was dead at the last checks</source>
        <translation>%1 von %2 war bei den letzten Kontrollen tot</translation>
    </message>
    <message>
        <source>%1 of %2 were dead at the last checks</source>
        <translation>%1 von %2 waren bei den letzten Kontrollen tot</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <translation>%1 auf %2</translation>
    </message>
    <message>
        <source>%1 on %2</source>
        <comment>a taxon and its strike day</comment>
        <translation>%1 am %2</translation>
    </message>
    <message>
        <source>%1 on %2, by %3</source>
        <translation>%1 am %2, von %3</translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <translation>%1 oder %2</translation>
    </message>
    <message>
        <source>%1 pairs were compared, and 1 in 20 differs by chance alone</source>
        <translation>%1 Paare wurden verglichen, und 1 von 20 unterscheidet sich allein durch Zufall</translation>
    </message>
    <message>
        <source>%1 parts of %2; expected 1 to 1000</source>
        <translation>%1 Teile %2; erwartet 1 bis 1000</translation>
    </message>
    <message>
        <source>%1 pixels; expected %2 to %3</source>
        <translation>%1 Bildpunkte; erwartet %2 bis %3</translation>
    </message>
    <message>
        <source>%1 plant by %2</source>
        <translation>%1 Pflanze bis %2</translation>
    </message>
    <message>
        <source>%1 plants by %2</source>
        <translation>%1 Pflanzen bis %2</translation>
    </message>
    <message>
        <source>%1 plants; expected 1 to a million</source>
        <translation>%1 Pflanzen; erwartet 1 bis eine Million</translation>
    </message>
    <message>
        <source>%1 point (%2 to %3)</source>
        <translation>%1 Punkt (%2 bis %3)</translation>
    </message>
    <message>
        <source>%1 points (%2 to %3)</source>
        <translation>%1 Punkte (%2 bis %3)</translation>
    </message>
    <message>
        <source>%1 pots</source>
        <translation>%1 Töpfe</translation>
    </message>
    <message>
        <source>%1 potted on</source>
        <translation>%1 getopft</translation>
    </message>
    <message>
        <source>%1 reading from %2 to %3, in the place's winter time.</source>
        <translation>%1 Messwert von %2 bis %3, in der Winterzeit des Ortes.</translation>
    </message>
    <message>
        <source>%1 readings from %2 to %3, in the place's winter time.</source>
        <translation>%1 Messwerte von %2 bis %3, in der Winterzeit des Ortes.</translation>
    </message>
    <message>
        <source>%1 rooted, but only %2 examined</source>
        <translation>%1 bewurzelt, aber nur %2 angesehen</translation>
    </message>
    <message>
        <source>%1 rows and %2 columns; expected 1 to 1000 of each</source>
        <translation>%1 Reihen und %2 Spalten; erwartet je 1 bis 1000</translation>
    </message>
    <message>
        <source>%1 s: the best plan so far costs %2, none can cost less than %3</source>
        <translation>%1 s: Der bisher beste Plan kostet %2, keiner kann weniger als %3 kosten</translation>
    </message>
    <message>
        <source>%1 set, %2</source>
        <translation>%1 eingestellt, %2</translation>
    </message>
    <message>
        <source>%1 set, %2 expected</source>
        <translation>%1 eingestellt, %2 erwartet</translation>
    </message>
    <message>
        <source>%1 slots</source>
        <translation>%1 Stellplätze</translation>
    </message>
    <message>
        <source>%1 stands in it</source>
        <translation>%1 steht darin</translation>
    </message>
    <message>
        <source>%1 stands or has stood there; move it first</source>
        <translation>%1 steht oder stand dort; stellen Sie sie zuerst um</translation>
    </message>
    <message>
        <source>%1 still wants %2 cutting of %3, from %4 to %5. Plan these weeks gives it a day and a place.</source>
        <translation>%1 braucht noch %2 Steckling von %3, von %4 bis %5. „Diese Wochen planen“ gibt ihm Tag und Platz.</translation>
    </message>
    <message>
        <source>%1 still wants %2 cuttings of %3, from %4 to %5. Plan these weeks gives them a day and a place.</source>
        <translation>%1 braucht noch %2 Stecklinge von %3, von %4 bis %5. „Diese Wochen planen“ gibt ihnen Tag und Platz.</translation>
    </message>
    <message>
        <source>%1 suits.</source>
        <translation>%1 passt.</translation>
    </message>
    <message>
        <source>%1 targets still want striking.</source>
        <translation>%1 Ziele müssen noch gesteckt werden.</translation>
    </message>
    <message>
        <source>%1 to %2</source>
        <translation>%1 bis %2</translation>
    </message>
    <message>
        <source>%1 to %2 %</source>
        <translation>%1 bis %2 %</translation>
    </message>
    <message>
        <source>%1 to %2 °C</source>
        <translation>%1 bis %2 °C</translation>
    </message>
    <message>
        <source>%1 to look at</source>
        <translation>%1 anzusehen</translation>
    </message>
    <message>
        <source>%1 trays</source>
        <translation>%1 Platten</translation>
    </message>
    <message>
        <source>%1 wants %2  %3</source>
        <translation>%1 braucht %2  %3</translation>
    </message>
    <message>
        <source>%1 was taken in the year before</source>
        <translation>%1 wurde im Jahr davor geschnitten</translation>
    </message>
    <message>
        <source>%1 were taken in the year before</source>
        <translation>%1 wurden im Jahr davor geschnitten</translation>
    </message>
    <message>
        <source>%1 were thrown away in the copy, but %2 stand in it here</source>
        <translation>in der Kopie wurden %1 weggeworfen, aber hier stehen %2 darin</translation>
    </message>
    <message>
        <source>%1 would be %2 days late</source>
        <translation>%1 käme %2 Tage zu spät</translation>
    </message>
    <message>
        <source>%1 would be 1 day late</source>
        <translation>%1 käme 1 Tag zu spät</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>%1, %2 W</source>
        <translation>%1, %2 W</translation>
    </message>
    <message>
        <source>%1, %2 before this day</source>
        <translation>%1, %2 vor diesem Tag</translation>
    </message>
    <message>
        <source>%1, %2 of %3 slots taken</source>
        <translation>%1, %2 von %3 Stellplätzen belegt</translation>
    </message>
    <message>
        <source>%1, %2 to %3, %4</source>
        <translation>%1, %2 bis %3, %4</translation>
    </message>
    <message>
        <source>%1, %2%3</source>
        <translation>%1, %2%3</translation>
    </message>
    <message>
        <source>%1, %2, %3</source>
        <translation>%1, %2, %3</translation>
    </message>
    <message>
        <source>%1, %2, %3, until %4</source>
        <translation>%1, %2, %3, bis %4</translation>
    </message>
    <message>
        <source>%1, %2, in %3 from %4 to %5</source>
        <translation>%1, %2, in %3 von %4 bis %5</translation>
    </message>
    <message>
        <source>%1, %2, mat</source>
        <translation>%1, %2, Heizmatte</translation>
    </message>
    <message>
        <source>%1, %2: struck on %3</source>
        <translation>%1, %2: gesteckt am %3</translation>
    </message>
    <message>
        <source>%1, %2: to be struck on %3</source>
        <translation>%1, %2: zu stecken am %3</translation>
    </message>
    <message>
        <source>%1, and for a later stay %2</source>
        <translation>%1, und für einen späteren Stand %2</translation>
    </message>
    <message>
        <source>%1, and set its mat</source>
        <translation>%1 und Heizmatte stellen</translation>
    </message>
    <message>
        <source>%1, container %2</source>
        <translation>%1, Gefäß %2</translation>
    </message>
    <message>
        <source>%1, container %2: %3 of %4 rooted</source>
        <translation>%1, Gefäß %2: %3 von %4 bewurzelt</translation>
    </message>
    <message>
        <source>%1, containers %2</source>
        <translation>%1, Gefäße %2</translation>
    </message>
    <message>
        <source>%1, free %2</source>
        <comment>slots, day</comment>
        <translation>%1, frei am %2</translation>
    </message>
    <message>
        <source>%1, mat set to</source>
        <translation>%1, Heizmatte gestellt auf</translation>
    </message>
    <message>
        <source>%1, next free %2</source>
        <translation>%1, nächste frei am %2</translation>
    </message>
    <message>
        <source>%1, not struck on %2</source>
        <translation>%1, am %2 nicht gesteckt</translation>
    </message>
    <message>
        <source>%1, out of order since %2</source>
        <translation>%1, außer Betrieb seit %2</translation>
    </message>
    <message>
        <source>%1, row %2, column %3</source>
        <translation>%1, Reihe %2, Spalte %3</translation>
    </message>
    <message>
        <source>%1, row %2, column %3 · %4 stand in it</source>
        <translation>%1, Reihe %2, Spalte %3 · %4 stehen darin</translation>
    </message>
    <message>
        <source>%1, until now %2 on %3</source>
        <translation>%1, bisher %2 am %3</translation>
    </message>
    <message>
        <source>%1, until now without a place</source>
        <translation>%1, bisher ohne Platz</translation>
    </message>
    <message>
        <source>%1-copy-%2</source>
        <translation>%1-Kopie-%2</translation>
    </message>
    <message>
        <source>%1. %2</source>
        <translation>%1. %2</translation>
    </message>
    <message>
        <source>%1. Enter keeps it so, Escape leaves it.</source>
        <translation>%1. Eingabe behält es so, Esc lässt es.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2 a day</source>
        <translation>%1: %2 am Tag</translation>
    </message>
    <message>
        <source>%1: %2 cutting from %3 on</source>
        <translation>%1: %2 Steckling ab %3</translation>
    </message>
    <message>
        <source>%1: %2 cutting stands on it now</source>
        <translation>%1: jetzt steht %2 Steckling daran</translation>
    </message>
    <message>
        <source>%1: %2 cuttings from %3 on</source>
        <translation>%1: %2 Stecklinge ab %3</translation>
    </message>
    <message>
        <source>%1: %2 cuttings stand on it now</source>
        <translation>%1: jetzt stehen %2 Stecklinge daran</translation>
    </message>
    <message>
        <source>%1: %2 m by %3 m</source>
        <translation>%1: %2 m mal %3 m</translation>
    </message>
    <message>
        <source>%1: %2 of %3</source>
        <translation>%1: %2 von %3</translation>
    </message>
    <message>
        <source>%1: %2 of %3 rooted, but %4 of %5 on %6; have roots vanished?</source>
        <translation>%1: %2 von %3 bewurzelt, aber am %6 %4 von %5; sind Wurzeln verschwunden?</translation>
    </message>
    <message>
        <source>%1: %2 planned, hands for %3</source>
        <translation>%1: %2 geplant, Arbeitskraft für %3</translation>
    </message>
    <message>
        <source>%1: %2 rows by %3 columns of slots, %4 m from the left end, %5 m from the back wall</source>
        <translation>%1: %2 Reihen mal %3 Spalten, %4 m vom linken Ende, %5 m von der Rückwand</translation>
    </message>
    <message>
        <source>%1: %2, %3</source>
        <translation>%1: %2, %3</translation>
    </message>
    <message>
        <source>%1: %2, number %3</source>
        <translation>%1: %2, Nummer %3</translation>
    </message>
    <message>
        <source>%1: %2. %3: %4. Difference %5 to %6 points</source>
        <translation>%1: %2. %3: %4. Unterschied %5 bis %6 Punkte</translation>
    </message>
    <message>
        <source>%1: all %2</source>
        <translation>%1: alle, %2</translation>
    </message>
    <message>
        <source>%1: free</source>
        <translation>%1: frei</translation>
    </message>
    <message>
        <source>%1: it was looked at on %2 already (%3 of %4 rooted); another check?</source>
        <translation>%1: wurde am %2 schon angesehen (%3 von %4 bewurzelt); noch eine Kontrolle?</translation>
    </message>
    <message>
        <source>%1: its days there from %2 still count, shown on other slots of the zone.</source>
        <translation>%1: Ihre Tage dort ab %2 zählen weiter, gezeigt auf anderen Stellplätzen der Zone.</translation>
    </message>
    <message>
        <source>%1: loses its place from %2 on and waits in the tray; its containers are kept.</source>
        <translation>%1: verliert ab %2 ihren Platz und wartet an der Seite; ihre Gefäße bleiben.</translation>
    </message>
    <message>
        <source>%1: no slot is left to show its days there from %2 on; they no longer count. The journal keeps them.</source>
        <translation>%1: Kein Stellplatz ist übrig, um ihre Tage dort ab %2 zu zeigen; sie zählen nicht mehr. Das Journal behält sie.</translation>
    </message>
    <message>
        <source>%1: no slot is left to show its days there from %2 on; they still count, as others of the batch stood there.</source>
        <translation>%1: Kein Stellplatz ist übrig, um ihre Tage dort ab %2 zu zeigen; sie zählen weiter, da andere der Partie dort standen.</translation>
    </message>
    <message>
        <source>%1: not rooted within a year</source>
        <translation>%1: binnen eines Jahres nicht bewurzelt</translation>
    </message>
    <message>
        <source>%1: nothing to cut in the year to come</source>
        <translation>%1: im kommenden Jahr nichts zu schneiden</translation>
    </message>
    <message>
        <source>%1: planning again can move what was to follow them.</source>
        <translation>%1: Neu planen kann verschieben, was ihnen folgen sollte.</translation>
    </message>
    <message>
        <source>%1: too much for its power</source>
        <translation>%1: zu viel für ihre Leistung</translation>
    </message>
    <message>
        <source>%1; besides, %2</source>
        <translation>%1; außerdem: %2</translation>
    </message>
    <message>
        <source>%1; expected -50 to 60 °C</source>
        <translation>%1; erwartet -50 bis 60 °C</translation>
    </message>
    <message>
        <source>%1; in the way: %2</source>
        <translation>%1; im Weg: %2</translation>
    </message>
    <message>
        <source>%1; now %2 to %3, Enter keeps it</source>
        <translation>%1; jetzt %2 bis %3, Eingabe behält es</translation>
    </message>
    <message>
        <source>&amp;About Warmbench</source>
        <translation>&amp;Über Warmbench</translation>
    </message>
    <message>
        <source>&amp;Accept what is ticked</source>
        <translation>Angehaktes &amp;annehmen</translation>
    </message>
    <message>
        <source>&amp;Add it</source>
        <translation>&amp;Hinzufügen</translation>
    </message>
    <message>
        <source>&amp;Back to the list</source>
        <translation>&amp;Zurück zur Liste</translation>
    </message>
    <message>
        <source>&amp;Backups: look into one, go back to one…</source>
        <translation>S&amp;icherungen: hineinsehen, zu einer zurückkehren …</translation>
    </message>
    <message>
        <source>&amp;Batches</source>
        <translation>&amp;Partien</translation>
    </message>
    <message>
        <source>&amp;Book</source>
        <translation>&amp;Buch</translation>
    </message>
    <message>
        <source>&amp;Bring home all but the conflicts</source>
        <translation>Alles außer den &amp;Konflikten heimbringen</translation>
    </message>
    <message>
        <source>&amp;Bring it home</source>
        <translation>&amp;Heimbringen</translation>
    </message>
    <message>
        <source>&amp;By</source>
        <comment>date</comment>
        <translation>&amp;Bis</translation>
    </message>
    <message>
        <source>&amp;By</source>
        <comment>group</comment>
        <translation>&amp;Nach</translation>
    </message>
    <message>
        <source>&amp;Cells apart by</source>
        <translation>Zellen &amp;getrennt durch</translation>
    </message>
    <message>
        <source>&amp;Change it</source>
        <translation>&amp;Ändern</translation>
    </message>
    <message>
        <source>&amp;Change…</source>
        <translation>&amp;Ändern …</translation>
    </message>
    <message>
        <source>&amp;Check the selected batch on the round</source>
        <translation>Gewählte Partie im Rundgang &amp;kontrollieren</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>&amp;Schließen</translation>
    </message>
    <message>
        <source>&amp;Colours</source>
        <translation>F&amp;arben</translation>
    </message>
    <message>
        <source>&amp;Columns, left to right</source>
        <translation>&amp;Spalten, links nach rechts</translation>
    </message>
    <message>
        <source>&amp;Connection</source>
        <translation>&amp;Verbindung</translation>
    </message>
    <message>
        <source>&amp;Containers</source>
        <translation>&amp;Gefäße</translation>
    </message>
    <message>
        <source>&amp;Currency</source>
        <translation>&amp;Währung</translation>
    </message>
    <message>
        <source>&amp;Cuttings in one</source>
        <translation>Steck&amp;linge in einem</translation>
    </message>
    <message>
        <source>&amp;Cuttings that can be struck</source>
        <translation>&amp;Stecklinge, die gesteckt werden können</translation>
    </message>
    <message>
        <source>&amp;Dark</source>
        <translation>&amp;Dunkel</translation>
    </message>
    <message>
        <source>&amp;Dates</source>
        <translation>&amp;Daten</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>&amp;Tag</translation>
    </message>
    <message>
        <source>&amp;Done</source>
        <translation>&amp;Erledigt</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>&amp;Find a taxon, batch, target or slot</source>
        <translation>Art, Partie, Ziel oder Stellplatz &amp;finden</translation>
    </message>
    <message>
        <source>&amp;First day</source>
        <translation>&amp;Erster Tag</translation>
    </message>
    <message>
        <source>&amp;For</source>
        <translation>&amp;Dauer</translation>
    </message>
    <message>
        <source>&amp;From</source>
        <translation>&amp;Ab</translation>
    </message>
    <message>
        <source>&amp;Go on typing</source>
        <translation>&amp;Weiter eingeben</translation>
    </message>
    <message>
        <source>&amp;Hands</source>
        <translation>&amp;Arbeitskraft</translation>
    </message>
    <message>
        <source>&amp;Health</source>
        <translation>&amp;Gesundheit</translation>
    </message>
    <message>
        <source>&amp;Heat and its cost</source>
        <translation>&amp;Wärme und ihre Kosten</translation>
    </message>
    <message>
        <source>&amp;House</source>
        <translation>&amp;Haus</translation>
    </message>
    <message>
        <source>&amp;Intervals of</source>
        <translation>&amp;Intervalle von</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Behalten</translation>
    </message>
    <message>
        <source>&amp;Keep these readings</source>
        <translation>Diese Messwerte &amp;behalten</translation>
    </message>
    <message>
        <source>&amp;Keep these readings (%1)</source>
        <translation>Diese Messwerte &amp;behalten (%1)</translation>
    </message>
    <message>
        <source>&amp;Keep what was tried</source>
        <translation>Versuchtes &amp;behalten</translation>
    </message>
    <message>
        <source>&amp;Keys</source>
        <translation>&amp;Tasten</translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation>&amp;Art</translation>
    </message>
    <message>
        <source>&amp;Language</source>
        <translation>&amp;Sprache</translation>
    </message>
    <message>
        <source>&amp;Latitude, north positive</source>
        <translation>&amp;Breitengrad, Norden positiv</translation>
    </message>
    <message>
        <source>&amp;Leave it as it is</source>
        <translation>&amp;Lassen, wie es ist</translation>
    </message>
    <message>
        <source>&amp;Length</source>
        <translation>&amp;Länge</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Hell</translation>
    </message>
    <message>
        <source>&amp;Look inside</source>
        <translation>&amp;Hineinsehen</translation>
    </message>
    <message>
        <source>&amp;Measured</source>
        <translation>&amp;Gemessen</translation>
    </message>
    <message>
        <source>&amp;Medium in one</source>
        <translation>S&amp;ubstrat in einem</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>&amp;Name, as recipes say it</source>
        <translation>&amp;Name, wie Rezepte ihn nennen</translation>
    </message>
    <message>
        <source>&amp;New house book…</source>
        <translation>&amp;Neues Hausbuch …</translation>
    </message>
    <message>
        <source>&amp;New…</source>
        <translation>&amp;Neu …</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>&amp;Notiz</translation>
    </message>
    <message>
        <source>&amp;Open a file…</source>
        <translation>Datei ö&amp;ffnen …</translation>
    </message>
    <message>
        <source>&amp;Open a house book…</source>
        <translation>Hausbuch ö&amp;ffnen …</translation>
    </message>
    <message>
        <source>&amp;Own figures</source>
        <translation>&amp;Eigene Zahlen</translation>
    </message>
    <message>
        <source>&amp;Password</source>
        <translation>&amp;Passwort</translation>
    </message>
    <message>
        <source>&amp;Plan</source>
        <translation>&amp;Planen</translation>
    </message>
    <message>
        <source>&amp;Plan</source>
        <comment>menu</comment>
        <translation>P&amp;lanung</translation>
    </message>
    <message>
        <source>&amp;Plan the striking…</source>
        <translation>Stecken &amp;planen …</translation>
    </message>
    <message>
        <source>&amp;Plants</source>
        <translation>&amp;Pflanzen</translation>
    </message>
    <message>
        <source>&amp;Plants wanted, potted on</source>
        <translation>Gewünschte &amp;Pflanzen, getopft</translation>
    </message>
    <message>
        <source>&amp;Play the days</source>
        <translation>Tage abs&amp;pielen</translation>
    </message>
    <message>
        <source>&amp;Price of heat</source>
        <translation>&amp;Preis der Wärme</translation>
    </message>
    <message>
        <source>&amp;Print labels, lists and sheets…</source>
        <translation>Etiketten, &amp;Listen und Blätter drucken …</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Drucken …</translation>
    </message>
    <message>
        <source>&amp;Put it aside for later</source>
        <translation>Für &amp;später beiseitelegen</translation>
    </message>
    <message>
        <source>&amp;Put it in place</source>
        <translation>An die &amp;Stelle setzen</translation>
    </message>
    <message>
        <source>&amp;Put these lines in (%1)</source>
        <translation>Diese Zeilen ein&amp;geben (%1)</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>B&amp;eenden</translation>
    </message>
    <message>
        <source>&amp;Read a logger's file…</source>
        <translation>Datei eines Loggers &amp;einlesen …</translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation>&amp;Wiederholen</translation>
    </message>
    <message>
        <source>&amp;Redo: %1</source>
        <translation>&amp;Wiederholen: %1</translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation>&amp;Entfernen</translation>
    </message>
    <message>
        <source>&amp;Remove the selected planned batch</source>
        <translation>Gewählte geplante Partie &amp;entfernen</translation>
    </message>
    <message>
        <source>&amp;Rows of slots, back to front</source>
        <translation>R&amp;eihen von Stellplätzen, hinten nach vorn</translation>
    </message>
    <message>
        <source>&amp;Run the mat at this</source>
        <translation>Heizmatte so &amp;stellen</translation>
    </message>
    <message>
        <source>&amp;Save as PDF…</source>
        <translation>Als PDF &amp;speichern …</translation>
    </message>
    <message>
        <source>&amp;Server</source>
        <translation>&amp;Server</translation>
    </message>
    <message>
        <source>&amp;Show the house as it was then</source>
        <translation>Haus &amp;zeigen, wie es damals war</translation>
    </message>
    <message>
        <source>&amp;Stop here</source>
        <translation>&amp;Hier anhalten</translation>
    </message>
    <message>
        <source>&amp;Strike the selected batch today</source>
        <translation>Gewählte Partie heute &amp;stecken</translation>
    </message>
    <message>
        <source>&amp;Struck in</source>
        <translation>&amp;Gesteckt in</translation>
    </message>
    <message>
        <source>&amp;Sureness to meet a target</source>
        <translation>Si&amp;cherheit, ein Ziel zu erreichen</translation>
    </message>
    <message>
        <source>&amp;Takes</source>
        <translation>&amp;Ausbeuten</translation>
    </message>
    <message>
        <source>&amp;Taxon</source>
        <translation>&amp;Art/Sorte</translation>
    </message>
    <message>
        <source>&amp;Temperature in</source>
        <translation>&amp;Temperatur in</translation>
    </message>
    <message>
        <source>&amp;Throw it away</source>
        <translation>&amp;Verwerfen</translation>
    </message>
    <message>
        <source>&amp;Time to search</source>
        <translation>&amp;Zeit zum Suchen</translation>
    </message>
    <message>
        <source>&amp;Today</source>
        <translation>&amp;Heute</translation>
    </message>
    <message>
        <source>&amp;Try it</source>
        <translation>&amp;Versuchen</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>&amp;Undo: %1</source>
        <translation>&amp;Rückgängig: %1</translation>
    </message>
    <message>
        <source>&amp;Use these figures in the recipe</source>
        <translation>Diese Zahlen im &amp;Rezept verwenden</translation>
    </message>
    <message>
        <source>&amp;Wean the selected batch today</source>
        <translation>Gewählte Partie heute &amp;abhärten</translation>
    </message>
    <message>
        <source>&amp;What</source>
        <translation>&amp;Was</translation>
    </message>
    <message>
        <source>&amp;What kind of day</source>
        <translation>&amp;Art des Tages</translation>
    </message>
    <message>
        <source>&amp;Where it was</source>
        <translation>&amp;Wo er lag</translation>
    </message>
    <message>
        <source>&amp;Width</source>
        <translation>&amp;Breite</translation>
    </message>
    <message>
        <source>&amp;Your name there</source>
        <translation>Ihr &amp;Name dort</translation>
    </message>
    <message>
        <source>'%1'; expected such as 1-4, 7</source>
        <translation>„%1“; erwartet etwa 1-4, 7</translation>
    </message>
    <message>
        <source>+ from any field</source>
        <translation>+ aus jedem Feld</translation>
    </message>
    <message>
        <source>, </source>
        <translation>, </translation>
    </message>
    <message>
        <source>, %1 are to be taken</source>
        <translation>, %1 sind zu schneiden</translation>
    </message>
    <message>
        <source>, %1 callused</source>
        <translation>, %1 mit Kallus</translation>
    </message>
    <message>
        <source>, %1 dead</source>
        <translation>, %1 tot</translation>
    </message>
    <message>
        <source>, %1 is to be taken</source>
        <translation>, %1 ist zu schneiden</translation>
    </message>
    <message>
        <source>, %1 late</source>
        <translation>, %1 zu spät</translation>
    </message>
    <message>
        <source>, %1 short</source>
        <translation>, %1 nicht</translation>
    </message>
    <message>
        <source>, back row above</source>
        <translation>, hintere Reihe oben</translation>
    </message>
    <message>
        <source>, grade %1</source>
        <translation>, Note %1</translation>
    </message>
    <message>
        <source>, heated</source>
        <translation>, beheizt</translation>
    </message>
    <message>
        <source>- from any field</source>
        <translation>- aus jedem Feld</translation>
    </message>
    <message>
        <source>. Covered: enough can be relied on at %1 % sureness. Expected: with the band that holds 9 times in 10.</source>
        <translation>. Gedeckt: mit genug kann man bei %1 % Sicherheit rechnen. Erwartet: mit dem Bereich, der 9-mal in 10 gilt.</translation>
    </message>
    <message>
        <source>. Enter moves it, Escape leaves it.</source>
        <translation>. Eingabe verschiebt sie, Esc lässt sie.</translation>
    </message>
    <message>
        <source>. Left and Right try another day.</source>
        <translation>. Links und Rechts versuchen einen anderen Tag.</translation>
    </message>
    <message>
        <source>. Ticked: %1 of %2 batch.</source>
        <translation>. Angehakt: %1 von %2 Partie.</translation>
    </message>
    <message>
        <source>. Ticked: %1 of %2 batches.</source>
        <translation>. Angehakt: %1 von %2 Partien.</translation>
    </message>
    <message>
        <source>1 batch</source>
        <translation>1 Partie</translation>
    </message>
    <message>
        <source>1 batch needs a look</source>
        <translation>1 Partie braucht einen Blick</translation>
    </message>
    <message>
        <source>1 container</source>
        <translation>1 Gefäß</translation>
    </message>
    <message>
        <source>1 cutting</source>
        <translation>1 Steckling</translation>
    </message>
    <message>
        <source>1 day</source>
        <translation>1 Tag</translation>
    </message>
    <message>
        <source>1 pot</source>
        <translation>1 Topf</translation>
    </message>
    <message>
        <source>1 slot</source>
        <translation>1 Stellplatz</translation>
    </message>
    <message>
        <source>1 target still wants striking.</source>
        <translation>1 Ziel muss noch gesteckt werden.</translation>
    </message>
    <message>
        <source>1 tray</source>
        <translation>1 Platte</translation>
    </message>
    <message>
        <source>2027-03-01</source>
        <translation>2027-03-01</translation>
    </message>
    <message>
        <source>; %1 is due on %2</source>
        <translation>; %1 ist fällig am %2</translation>
    </message>
    <message>
        <source>; %1 of %2 rooted at its last check</source>
        <translation>; %1 von %2 bei der letzten Kontrolle bewurzelt</translation>
    </message>
    <message>
        <source>; for 100 ml of dip %1 ml of a concentrate of %2 ppm, made up as its label says</source>
        <translation>; für 100 ml Tauchlösung %1 ml eines Konzentrats von %2 ppm, nach dessen Etikett angesetzt</translation>
    </message>
    <message>
        <source>; its slots are free on %1</source>
        <translation>; ihre Stellplätze sind frei am %1</translation>
    </message>
    <message>
        <source>; late</source>
        <translation>; zu spät</translation>
    </message>
    <message>
        <source>; mind: %1</source>
        <translation>; beachten: %1</translation>
    </message>
    <message>
        <source>; planned before and kept: %1</source>
        <translation>; schon geplant und behalten: %1</translation>
    </message>
    <message>
        <source>; the plan has %1, dashed</source>
        <translation>; geplant ist der %1, gestrichelt</translation>
    </message>
    <message>
        <source>; the plan is %1</source>
        <translation>; der Plan ist %1</translation>
    </message>
    <message>
        <source>&lt;b&gt;As it is planned&lt;/b&gt;, with what is ticked. Nothing of it is in the book yet.</source>
        <translation>&lt;b&gt;Wie es geplant ist&lt;/b&gt;, mit dem, was angehakt ist. Noch steht nichts davon im Buch.</translation>
    </message>
    <message>
        <source>&lt;b&gt;In conflict: %1.&lt;/b&gt; These are left out. Put right in one of the books what is wrong, then bring the round home again: what is home already does not come twice.</source>
        <translation>&lt;b&gt;Im Konflikt: %1.&lt;/b&gt; Sie bleiben weg. Berichtigen Sie in einem der Bücher, was falsch ist, und bringen Sie den Rundgang noch einmal heim: Was schon daheim ist, kommt nicht doppelt.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Outside the range of what roots there&lt;/b&gt;, on the days shown, in all zones: %1. Enter shows one.</source>
        <translation>&lt;b&gt;Außerhalb des Bereichs dessen, was dort wurzelt&lt;/b&gt;, an den gezeigten Tagen, in allen Zonen: %1. Die Eingabetaste zeigt einen Fall.</translation>
    </message>
    <message>
        <source>&lt;b&gt;The house as it was&lt;/b&gt; on %1, after: %2 (%3). Nothing can be changed here.</source>
        <translation>&lt;b&gt;Das Haus, wie es war&lt;/b&gt; am %1, nach: %2 (%3). Hier lässt sich nichts ändern.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Typed, and not in the book yet&lt;/b&gt;: %1, and %2 more.</source>
        <translation>&lt;b&gt;Eingegeben, aber noch nicht im Buch&lt;/b&gt;: %1 und %2 weitere.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Typed, and not in the book yet&lt;/b&gt;: %1.</source>
        <translation>&lt;b&gt;Eingegeben, aber noch nicht im Buch&lt;/b&gt;: %1.</translation>
    </message>
    <message>
        <source>&lt;b&gt;What this was about is not in the book any more&lt;/b&gt;: %1. What was typed can be copied, or thrown away.</source>
        <translation>&lt;b&gt;Worum es hier ging, steht nicht mehr im Buch&lt;/b&gt;: %1. Das Eingegebene kann kopiert oder verworfen werden.</translation>
    </message>
    <message>
        <source>&lt;b&gt;Yours: take %1 to %2 %, %3 to %4 days to root.&lt;/b&gt; %5 plants of %6 cuttings; as cuttings of one batch share its luck, they count as %7. Drawn towards the recipe where there are few. Nothing uses these figures until you say so, and undo brings the recipe's back.</source>
        <translation>&lt;b&gt;Ihre: Ausbeute %1 bis %2 %, %3 bis %4 Tage zum Wurzeln.&lt;/b&gt; %5 Pflanzen von %6 Stecklingen; da Stecklinge einer Partie ihr Los teilen, zählen sie wie %7. Wo es wenige sind, zum Rezept hin gezogen. Nichts verwendet diese Zahlen, bevor Sie es sagen, und Rückgängig bringt die des Rezepts zurück.</translation>
    </message>
    <message>
        <source>&lt;p&gt;&lt;b&gt;On the map&lt;/b&gt;&lt;br&gt;Arrows: the next zone or batch on that side&lt;br&gt;Enter: from a zone to its batches, Escape: back&lt;br&gt;M or Space: take up the chosen batch; then arrows aim, Tab: the next zone that suits, T: turn, Enter: put down, Escape: put back&lt;br&gt;+ and -: zoom, 0: show everything&lt;br&gt;Ctrl and arrows: move the map&lt;br&gt;Menu key or right button: all that can be done with a batch&lt;/p&gt;&lt;p&gt;&lt;b&gt;On the day line&lt;/b&gt;&lt;br&gt;Left and Right: a day&lt;br&gt;PgUp and PgDn: a week&lt;br&gt;Home: today, Space: play&lt;/p&gt;&lt;p&gt;&lt;b&gt;On the house in plan&lt;/b&gt; (Nursery)&lt;br&gt;N and P: the next thing and the one before&lt;br&gt;Arrows: move it, Shift and arrows: its right and front edges&lt;br&gt;Enter: keep it so, Escape: leave it&lt;/p&gt;&lt;p&gt;&lt;b&gt;Anywhere&lt;/b&gt;&lt;br&gt;Ctrl F: find&lt;br&gt;Ctrl Z: undo&lt;br&gt;Alt and Left, Right: a day back, on&lt;br&gt;F8: back to now from an earlier step&lt;/p&gt;</source>
        <translation>&lt;p&gt;&lt;b&gt;Im Tischplan&lt;/b&gt;&lt;br&gt;Pfeile: die nächste Zone oder Partie auf dieser Seite&lt;br&gt;Eingabe: von einer Zone zu ihren Partien, Esc: zurück&lt;br&gt;M oder Leertaste: gewählte Partie aufnehmen; dann zielen die Pfeile, Tabulator: nächste passende Zone, T: drehen, Eingabe: absetzen, Esc: zurückstellen&lt;br&gt;+ und -: vergrößern und verkleinern, 0: alles zeigen&lt;br&gt;Strg und Pfeile: Plan verschieben&lt;br&gt;Menütaste oder rechte Maustaste: alles, was sich mit einer Partie tun lässt&lt;/p&gt;&lt;p&gt;&lt;b&gt;In der Tagesleiste&lt;/b&gt;&lt;br&gt;Links und Rechts: ein Tag&lt;br&gt;Bild auf und Bild ab: eine Woche&lt;br&gt;Pos1: heute, Leertaste: abspielen&lt;/p&gt;&lt;p&gt;&lt;b&gt;Im Grundriss des Hauses&lt;/b&gt; (Betrieb)&lt;br&gt;N und P: das nächste und das vorige Ding&lt;br&gt;Pfeile: verschieben, Umschalt und Pfeile: rechte und vordere Kante&lt;br&gt;Eingabe: so behalten, Esc: lassen&lt;/p&gt;&lt;p&gt;&lt;b&gt;Überall&lt;/b&gt;&lt;br&gt;Strg F: finden&lt;br&gt;Strg Z: rückgängig&lt;br&gt;Alt und Links, Rechts: ein Tag zurück, vor&lt;br&gt;F8: von einem früheren Schritt zurück zum Jetzt&lt;/p&gt;</translation>
    </message>
    <message>
        <source>&lt;p&gt;&lt;b&gt;Warmbench %1&lt;/b&gt;&lt;/p&gt;&lt;p&gt;Plans the work of a propagation house.&lt;/p&gt;</source>
        <translation>&lt;p&gt;&lt;b&gt;Warmbench %1&lt;/b&gt;&lt;/p&gt;&lt;p&gt;Plant die Arbeit eines Vermehrungshauses.&lt;/p&gt;</translation>
    </message>
    <message>
        <source>A day &amp;back</source>
        <translation>Ein Tag &amp;zurück</translation>
    </message>
    <message>
        <source>A day o&amp;n</source>
        <translation>Ein Tag v&amp;or</translation>
    </message>
    <message>
        <source>A house book holds your house, its benches, and all that grows on them.</source>
        <translation>Ein Hausbuch enthält Ihr Haus, seine Tische und alles, was darauf wächst.</translation>
    </message>
    <message>
        <source>A month</source>
        <translation>Ein Monat</translation>
    </message>
    <message>
        <source>A new bench</source>
        <translation>Ein neuer Tisch</translation>
    </message>
    <message>
        <source>A new house: the figures are only a start, put your own</source>
        <translation>Ein neues Haus: Die Zahlen sind nur ein Anfang, setzen Sie Ihre ein</translation>
    </message>
    <message>
        <source>A new kind of container</source>
        <translation>Eine neue Gefäßart</translation>
    </message>
    <message>
        <source>A new zone: put your mat's own figures</source>
        <translation>Eine neue Zone: Setzen Sie die Zahlen Ihrer Heizmatte ein</translation>
    </message>
    <message>
        <source>A new zone: what covers it, and does it lie on a mat?</source>
        <translation>Eine neue Zone: Was deckt sie ab, und liegt sie auf einer Heizmatte?</translation>
    </message>
    <message>
        <source>A part of any name, code or target, or a zone with a row and a column: A 2 5</source>
        <translation>Ein Teil eines Namens, Codes oder Ziels, oder eine Zone mit Reihe und Spalte: A 2 5</translation>
    </message>
    <message>
        <source>A sharp blade for each person; cut away from the body, thumb below the cut; a cut-resistant glove on the holding hand for hardwood.</source>
        <translation>Eine scharfe Klinge für jede Person; vom Körper weg schneiden, Daumen unter dem Schnitt; bei Steckholz ein schnittfester Handschuh an der haltenden Hand.</translation>
    </message>
    <message>
        <source>A step back</source>
        <translation>Schritt zurück</translation>
    </message>
    <message>
        <source>A step on</source>
        <translation>Schritt vor</translation>
    </message>
    <message>
        <source>A taxon of my own, new to Warmbench</source>
        <translation>Eine eigene Art oder Sorte, für Warmbench neu</translation>
    </message>
    <message>
        <source>A week</source>
        <translation>Eine Woche</translation>
    </message>
    <message>
        <source>A year</source>
        <translation>Ein Jahr</translation>
    </message>
    <message>
        <source>About Warmbench</source>
        <translation>Über Warmbench</translation>
    </message>
    <message>
        <source>About what is selected</source>
        <translation>Über das Gewählte</translation>
    </message>
    <message>
        <source>Accept the plan from %1 to %2</source>
        <translation>Plan vom %1 bis %2 annehmen</translation>
    </message>
    <message>
        <source>Across × down</source>
        <translation>Quer × hoch</translation>
    </message>
    <message>
        <source>Add %1 %2</source>
        <translation>%1 %2 hinzufügen</translation>
    </message>
    <message>
        <source>Add the &amp;usual containers</source>
        <translation>&amp;Übliche Gefäße hinzufügen</translation>
    </message>
    <message>
        <source>Add the usual containers</source>
        <translation>Übliche Gefäße hinzufügen</translation>
    </message>
    <message>
        <source>Additional protection commonly means a residual-current device of 30 mA.</source>
        <translation>Zusätzlicher Schutz heißt üblicherweise: ein Fehlerstromschutzschalter mit 30 mA.</translation>
    </message>
    <message>
        <source>Against it</source>
        <translation>Dagegen</translation>
    </message>
    <message>
        <source>Aim at a zone: those that suit have a frame and a tick.</source>
        <translation>Zielen Sie auf eine Zone: Passende haben einen Rahmen und einen Haken.</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>Air, by month</source>
        <translation>Luft nach Monaten</translation>
    </message>
    <message>
        <source>Alive</source>
        <translation>Lebend</translation>
    </message>
    <message>
        <source>Alive, no roots</source>
        <translation>Lebend, ohne Wurzeln</translation>
    </message>
    <message>
        <source>All</source>
        <translation>Alles</translation>
    </message>
    <message>
        <source>Amiss where they stand</source>
        <translation>Nicht richtig, wo sie stehen</translation>
    </message>
    <message>
        <source>Another &amp;flush</source>
        <translation>Noch ein &amp;Austrieb</translation>
    </message>
    <message>
        <source>Another &amp;mat under</source>
        <translation>Andere Heiz&amp;matte unter</translation>
    </message>
    <message>
        <source>As far as</source>
        <translation>So weit wie</translation>
    </message>
    <message>
        <source>As it is</source>
        <translation>Wie es ist</translation>
    </message>
    <message>
        <source>As on the &amp;desktop</source>
        <translation>Wie der &amp;Schreibtisch</translation>
    </message>
    <message>
        <source>As the server likes: only inside your own walls</source>
        <translation>Wie der Server will: nur in den eigenen vier Wänden</translation>
    </message>
    <message>
        <source>At the beginning of</source>
        <translation>Am Anfang des</translation>
    </message>
    <message>
        <source>Back to &amp;now from an earlier step</source>
        <translation>Von einem früheren Schritt zurück zum &amp;Jetzt</translation>
    </message>
    <message>
        <source>Back to now (%1)</source>
        <translation>Zurück zum Jetzt (%1)</translation>
    </message>
    <message>
        <source>Backups of %1</source>
        <translation>Sicherungen von %1</translation>
    </message>
    <message>
        <source>Backups of the book, the newest first</source>
        <translation>Sicherungen des Buchs, die neueste zuerst</translation>
    </message>
    <message>
        <source>Batch</source>
        <translation>Partie</translation>
    </message>
    <message>
        <source>Batch %1</source>
        <translation>Partie %1</translation>
    </message>
    <message>
        <source>Batches</source>
        <translation>Partien</translation>
    </message>
    <message>
        <source>Batches by the days on which they are struck</source>
        <translation>Partien nach ihren Stecktagen</translation>
    </message>
    <message>
        <source>Batches of one stock and wood, struck within a week, that differ in one way. The line is Newcombe's interval of the first way's take less the second's, in points of a hundred.</source>
        <translation>Partien derselben Mutterpflanzen und desselben Holzes, binnen einer Woche gesteckt, die sich in einem unterscheiden. Die Linie ist das Newcombe-Intervall der Ausbeute der ersten Weise weniger der zweiten, in Prozentpunkten.</translation>
    </message>
    <message>
        <source>Batches on the benches</source>
        <translation>Partien auf den Tischen</translation>
    </message>
    <message>
        <source>Batches planned but not struck may &amp;move where that pays</source>
        <translation>Geplante, noch nicht gesteckte Partien dürfen &amp;umziehen, wo es sich lohnt</translation>
    </message>
    <message>
        <source>Batches struck from %1 to %2, as known on %3.</source>
        <translation>Partien, gesteckt von %1 bis %2, Stand %3.</translation>
    </message>
    <message>
        <source>Batches that are due</source>
        <translation>Fällige Partien</translation>
    </message>
    <message>
        <source>Batches that are planned stand here, day by day, with what is needed to strike them.</source>
        <translation>Geplante Partien stehen hier Tag für Tag, mit dem, was zum Stecken nötig ist.</translation>
    </message>
    <message>
        <source>Batches that have ended. Hatched: what the recipe promises. Dot and line: plants potted on of cuttings struck, with Wilson's interval at 95 %, as in Results. What to change rests on wider ones, as batches differ. A ring, and * in the table: fewer than 3 batches.</source>
        <translation>Beendete Partien. Schraffiert: was das Rezept verspricht. Punkt und Linie: getopfte Pflanzen von den gesteckten Stecklingen, mit Wilsons Intervall bei 95 %, wie unter Ergebnisse. Was zu ändern ist, stützt sich auf weitere, weil sich Partien unterscheiden. Ein Ring, und * in der Tabelle: weniger als 3 Partien.</translation>
    </message>
    <message>
        <source>Batches to strike</source>
        <translation>Zu steckende Partien</translation>
    </message>
    <message>
        <source>Behind the plan</source>
        <translation>Hinter dem Plan</translation>
    </message>
    <message>
        <source>Bench and heat for each plant</source>
        <translation>Tisch und Wärme je Pflanze</translation>
    </message>
    <message>
        <source>Bench map</source>
        <translation>Tischplan</translation>
    </message>
    <message>
        <source>Block slo&amp;ts</source>
        <translation>Stellplät&amp;ze sperren</translation>
    </message>
    <message>
        <source>Blocked slots, row/column</source>
        <translation>Gesperrte Stellplätze, Reihe/Spalte</translation>
    </message>
    <message>
        <source>Bring a &amp;round home from a copy…</source>
        <translation>&amp;Rundgang aus einer Kopie heimbringen …</translation>
    </message>
    <message>
        <source>Bring a round home</source>
        <translation>Einen Rundgang heimbringen</translation>
    </message>
    <message>
        <source>Bring home the round in %1</source>
        <translation>Rundgang in %1 heimbringen</translation>
    </message>
    <message>
        <source>By</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>Callused</source>
        <translation>Mit Kallus</translation>
    </message>
    <message>
        <source>Came to</source>
        <translation>Ergab</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>Care</source>
        <translation>Vorsicht</translation>
    </message>
    <message>
        <source>Change %1 %2</source>
        <translation>%1 %2 ändern</translation>
    </message>
    <message>
        <source>Change a recipe of %1</source>
        <translation>Ein Rezept von %1 ändern</translation>
    </message>
    <message>
        <source>Change a stock</source>
        <translation>Mutterpflanzen ändern</translation>
    </message>
    <message>
        <source>Change a target</source>
        <translation>Ziel ändern</translation>
    </message>
    <message>
        <source>Change the days of %1</source>
        <translation>Tage von %1 ändern</translation>
    </message>
    <message>
        <source>Change the days of %1 in %2</source>
        <translation>Tage von %1 in %2 ändern</translation>
    </message>
    <message>
        <source>Change the nursery's settings</source>
        <translation>Einstellungen des Betriebs ändern</translation>
    </message>
    <message>
        <source>Checks</source>
        <translation>Kontrollen</translation>
    </message>
    <message>
        <source>Circuits in horticultural places need residual-current protection: additional protection for socket outlets up to 32 A, 100 mA or less above that, 300 mA or less for other circuits (UK wiring rules of 2015; codes differ and change).</source>
        <translation>Stromkreise im Gartenbau brauchen Fehlerstromschutz: zusätzlichen Schutz für Steckdosen bis 32 A, darüber höchstens 100 mA, für andere Stromkreise höchstens 300 mA (britische Errichtungsregeln von 2015; Vorschriften sind verschieden und ändern sich).</translation>
    </message>
    <message>
        <source>Clean source, no dead legs, covered tanks, cool storage; flush after any idle spell without breathing the spray, and keep away from fog in use. Anyone at higher risk should take advice first.</source>
        <translation>Sauberes Wasser, keine toten Leitungen, abgedeckte Behälter, kühl gelagert; nach jedem Stillstand spülen, ohne den Sprühnebel einzuatmen, und laufendem Nebel fernbleiben. Wer stärker gefährdet ist, holt vorher ärztlichen Rat ein.</translation>
    </message>
    <message>
        <source>Click slots of a zone that take no container, or drag over them; by keys, arrows go from slot to slot, Space blocks one or frees it, Enter keeps that.</source>
        <translation>Stellplätze einer Zone anklicken oder überstreichen, die kein Gefäß aufnehmen; mit Tasten: Pfeile gehen von Platz zu Platz, die Leertaste sperrt einen oder gibt ihn frei, Enter behält es so.</translation>
    </message>
    <message>
        <source>Climate</source>
        <translation>Klima</translation>
    </message>
    <message>
        <source>Clock put &amp;forward</source>
        <translation>Uhr &amp;vorgestellt</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Co&amp;ver</source>
        <translation>&amp;Abdeckung</translation>
    </message>
    <message>
        <source>Col&amp;umns</source>
        <translation>S&amp;palten</translation>
    </message>
    <message>
        <source>Container</source>
        <translation>Gefäß</translation>
    </message>
    <message>
        <source>Container %1: %2</source>
        <translation>Gefäß %1: %2</translation>
    </message>
    <message>
        <source>Containers</source>
        <translation>Gefäße</translation>
    </message>
    <message>
        <source>Containers worth a look, in walking order</source>
        <translation>Gefäße, die einen Blick lohnen, in der Folge des Gangs</translation>
    </message>
    <message>
        <source>Containers worth a look: %1. The round sheet has them in the order of the walk.</source>
        <translation>Gefäße, die einen Blick lohnen: %1. Das Blatt für den Rundgang hat sie in der Folge des Gangs.</translation>
    </message>
    <message>
        <source>Copy what was typed</source>
        <translation>Eingegebenes kopieren</translation>
    </message>
    <message>
        <source>Cost against days until it is ready</source>
        <translation>Kosten gegen Tage, bis sie fertig ist</translation>
    </message>
    <message>
        <source>Cost by the planner: %1 now, %2 there, %3.</source>
        <translation>Kosten nach dem Planer: jetzt %1, dort %2, %3.</translation>
    </message>
    <message>
        <source>Cost of the heat</source>
        <translation>Kosten der Wärme</translation>
    </message>
    <message>
        <source>Cost until then</source>
        <translation>Kosten bis dahin</translation>
    </message>
    <message>
        <source>Could give</source>
        <translation>Könnten geben</translation>
    </message>
    <message>
        <source>Count its plants as stock plants</source>
        <translation>Ihre Pflanzen als Mutterpflanzen zählen</translation>
    </message>
    <message>
        <source>Cover and heat are taken away by steps from today on; the batch goes to where it is to be weaned.</source>
        <translation>Von heute an werden Abdeckung und Wärme schrittweise weggenommen; die Partie kommt dorthin, wo sie abgehärtet wird.</translation>
    </message>
    <message>
        <source>Covers &amp;rows of slots</source>
        <translation>Bedeckt &amp;Reihen von Stellplätzen</translation>
    </message>
    <message>
        <source>Cuttings</source>
        <translation>Stecklinge</translation>
    </message>
    <message>
        <source>Cuttings from a plant at flush %1</source>
        <translation>Stecklinge je Pflanze beim Austrieb %1</translation>
    </message>
    <message>
        <source>Cuttings on a %1</source>
        <translation>Stecklinge am %1</translation>
    </message>
    <message>
        <source>Cuttings planned</source>
        <translation>Stecklinge geplant</translation>
    </message>
    <message>
        <source>Cuttings planned, and hands for</source>
        <translation>Stecklinge geplant, und Arbeitskraft für</translation>
    </message>
    <message>
        <source>Cuttings planned, hands for</source>
        <translation>Stecklinge geplant, Arbeitskraft für</translation>
    </message>
    <message>
        <source>Cuttings struck</source>
        <translation>Gesteckte Stecklinge</translation>
    </message>
    <message>
        <source>Cuttings taken</source>
        <translation>Geschnittene Stecklinge</translation>
    </message>
    <message>
        <source>Cuttings to strike</source>
        <translation>Zu steckende Stecklinge</translation>
    </message>
    <message>
        <source>Cuttings without a place</source>
        <translation>Stecklinge ohne Platz</translation>
    </message>
    <message>
        <source>Dates</source>
        <translation>Daten</translation>
    </message>
    <message>
        <source>Day shown on the map</source>
        <translation>Tag, den der Plan zeigt</translation>
    </message>
    <message>
        <source>Days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>Days late, all targets</source>
        <translation>Tage zu spät, alle Ziele</translation>
    </message>
    <message>
        <source>Days on which &amp;cuttings may be struck</source>
        <translation>&amp;Tage, an denen gesteckt werden darf</translation>
    </message>
    <message>
        <source>Days still to root and heating, by setting</source>
        <translation>Tage, die es noch zum Wurzeln braucht, und Heizen, nach Sollwert</translation>
    </message>
    <message>
        <source>Days that ask too much</source>
        <translation>Tage, die zu viel verlangen</translation>
    </message>
    <message>
        <source>Days to root and heating, by setting</source>
        <translation>Tage zum Wurzeln und Heizen, nach Sollwert</translation>
    </message>
    <message>
        <source>Days to root in the recipe</source>
        <translation>Tage zum Wurzeln im Rezept</translation>
    </message>
    <message>
        <source>Days until flush %1 has grown again</source>
        <translation>Tage, bis Austrieb %1 nachgewachsen ist</translation>
    </message>
    <message>
        <source>Dead</source>
        <translation>Tot</translation>
    </message>
    <message>
        <source>Deci&amp;mals</source>
        <translation>Dezi&amp;malzahlen</translation>
    </message>
    <message>
        <source>Describe %1</source>
        <translation>%1 beschreiben</translation>
    </message>
    <message>
        <source>Difference</source>
        <translation>Unterschied</translation>
    </message>
    <message>
        <source>Dips in alcohol burn: no flame, no spark, good air.</source>
        <translation>Tauchlösungen in Alkohol brennen: keine Flamme, kein Funke, gute Lüftung.</translation>
    </message>
    <message>
        <source>Discard %1</source>
        <translation>%1 verwerfen</translation>
    </message>
    <message>
        <source>Discard batch</source>
        <translation>Partie verwerfen</translation>
    </message>
    <message>
        <source>Discard container</source>
        <translation>Gefäß verwerfen</translation>
    </message>
    <message>
        <source>Discard containers of %1</source>
        <translation>Gefäße von %1 verwerfen</translation>
    </message>
    <message>
        <source>Do</source>
        <translation>Arbeit</translation>
    </message>
    <message>
        <source>Done again: %1</source>
        <translation>Wieder getan: %1</translation>
    </message>
    <message>
        <source>Done: %1</source>
        <translation>Erledigt: %1</translation>
    </message>
    <message>
        <source>Doubles left out: %1, of which %2 have another temperature. Put in order: %3. Lines without a temperature: %4. Lines that can't be read: %5.</source>
        <translation>Doppelte ausgelassen: %1, davon %2 mit anderer Temperatur. Umgeordnet: %3. Zeilen ohne Temperatur: %4. Nicht lesbare Zeilen: %5.</translation>
    </message>
    <message>
        <source>Draw a b&amp;ench</source>
        <translation>T&amp;isch zeichnen</translation>
    </message>
    <message>
        <source>Draw a z&amp;one</source>
        <translation>Z&amp;one zeichnen</translation>
    </message>
    <message>
        <source>Due</source>
        <translation>Fällig</translation>
    </message>
    <message>
        <source>Due: %1. Enter weans, or goes to the counts for potting on</source>
        <translation>Fällig: %1. Eingabe härtet ab oder geht zum Zählen fürs Topfen</translation>
    </message>
    <message>
        <source>Each move has to save more than %1. Batches that should have been struck before the first day, and those without a place, are planned anew in any case.</source>
        <translation>Jeder Umzug muss mehr als %1 sparen. Partien, die vor dem ersten Tag hätten gesteckt werden sollen, und solche ohne Platz werden auf jeden Fall neu geplant.</translation>
    </message>
    <message>
        <source>Empty box: plants wanted. Filled: plants potted on.</source>
        <translation>Leerer Kasten: gewünschte Pflanzen. Gefüllt: getopfte Pflanzen.</translation>
    </message>
    <message>
        <source>Enter does what is chosen</source>
        <translation>Die Eingabetaste erledigt das Gewählte</translation>
    </message>
    <message>
        <source>Enter the round of %1</source>
        <translation>Den Rundgang vom %1 eintragen</translation>
    </message>
    <message>
        <source>Enter: next field. +: write down, -: later, Up and Down: along the walk, Ctrl Z: take back.</source>
        <translation>Eingabe: nächstes Feld. +: eintragen, -: später, Auf und Ab: den Gang entlang, Strg Z: zurücknehmen.</translation>
    </message>
    <message>
        <source>Evidence</source>
        <translation>Beleg</translation>
    </message>
    <message>
        <source>Examined</source>
        <translation>Angesehen</translation>
    </message>
    <message>
        <source>Expected</source>
        <translation>Erwartet</translation>
    </message>
    <message>
        <source>F&amp;or</source>
        <translation>Da&amp;uer</translation>
    </message>
    <message>
        <source>Fever, cough or breathlessness after exposure: see a doctor and mention the mist.</source>
        <translation>Fieber, Husten oder Atemnot danach: zum Arzt gehen und den Sprühnebel erwähnen.</translation>
    </message>
    <message>
        <source>Filled: the day of striking, with a tick once it is struck. Hatched: the days on which its wood is right and its target is met. Grey: nobody strikes. • hands of their own, ! more cuttings than hands.</source>
        <translation>Gefüllt: der Stecktag, mit Haken, sobald gesteckt ist. Schraffiert: die Tage, an denen das Holz richtig ist und das Ziel erreicht wird. Grau: niemand steckt. • eigene Arbeitskraft, ! mehr Stecklinge als Arbeitskraft.</translation>
    </message>
    <message>
        <source>Find a taxon, batch, target or slot</source>
        <translation>Art, Partie, Ziel oder Stellplatz finden</translation>
    </message>
    <message>
        <source>Find in the journal</source>
        <translation>Im Journal finden</translation>
    </message>
    <message>
        <source>Fine spray can carry legionella into the lungs. The risk is with water between 20 and 45 °C that is stored or recirculated, or holds scale, sludge or slime: assess it, keep it clean, watch it, keep records.</source>
        <translation>Feiner Sprühnebel kann Legionellen in die Lunge tragen. Gefährlich ist Wasser zwischen 20 und 45 °C, das gespeichert oder umgewälzt wird oder Kalk, Schlamm oder Schleim enthält: Gefährdung beurteilen, sauber halten, überwachen, Aufzeichnungen führen.</translation>
    </message>
    <message>
        <source>First</source>
        <translation>Zuerst</translation>
    </message>
    <message>
        <source>First &amp;column, from the left</source>
        <translation>Erste &amp;Spalte, von links</translation>
    </message>
    <message>
        <source>First &amp;row, counted from the back</source>
        <translation>Erste &amp;Reihe, von hinten gezählt</translation>
    </message>
    <message>
        <source>First day</source>
        <translation>Erster Tag</translation>
    </message>
    <message>
        <source>First day of flush %1</source>
        <translation>Erster Tag des Austriebs %1</translation>
    </message>
    <message>
        <source>First way</source>
        <translation>Erste Weise</translation>
    </message>
    <message>
        <source>Fit</source>
        <translation>Alles</translation>
    </message>
    <message>
        <source>Fixed wiring, supply, earthing and fault protection for benches, cables and mats are for a licensed electrician, to the local code. Do not improvise.</source>
        <translation>Feste Leitungen, Anschluss, Erdung und Fehlerschutz für Tische, Kabel und Heizmatten sind Sache einer zugelassenen Elektrofachkraft, nach den örtlichen Vorschriften. Nicht improvisieren.</translation>
    </message>
    <message>
        <source>For</source>
        <translation>Für</translation>
    </message>
    <message>
        <source>For</source>
        <comment>how long</comment>
        <translation>Dauer</translation>
    </message>
    <message>
        <source>For and why</source>
        <translation>Wofür und warum</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Gefunden</translation>
    </message>
    <message>
        <source>Found: %1 of %2</source>
        <translation>Gefunden: %1 von %2</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>From its &amp;back wall</source>
        <translation>Von der &amp;Rückwand</translation>
    </message>
    <message>
        <source>From the house's &amp;left end</source>
        <translation>Vom &amp;linken Ende des Hauses</translation>
    </message>
    <message>
        <source>Gaps</source>
        <translation>Abstände</translation>
    </message>
    <message>
        <source>Gaps of more than 3 hours: %1, in all %2 h; set-points are taken there.</source>
        <translation>Lücken von mehr als 3 Stunden: %1, zusammen %2 h; dort gelten die Sollwerte.</translation>
    </message>
    <message>
        <source>General cautions only. Local codes, product labels and safety sheets, makers' instructions, your employer's risk assessment and licensed electricians come first and overrule anything here.</source>
        <translation>Nur allgemeine Hinweise. Örtliche Vorschriften, Etiketten und Sicherheitsdatenblätter, Anleitungen der Hersteller, die Gefährdungsbeurteilung Ihres Betriebs und zugelassene Elektrofachkräfte gehen vor und gelten vor allem, was hier steht.</translation>
    </message>
    <message>
        <source>Give %1 a place in %2</source>
        <translation>%1 einen Platz in %2 geben</translation>
    </message>
    <message>
        <source>Give %1 a place in %2 from %3 on</source>
        <translation>%1 ab %3 einen Platz in %2 geben</translation>
    </message>
    <message>
        <source>Gloves and eye protection for liquids; avoid breathing powder; wash before food; keep it locked, in the original pack.</source>
        <translation>Bei Flüssigkeiten Handschuhe und Augenschutz; Puder nicht einatmen; vor dem Essen waschen; verschlossen und in der Originalpackung aufbewahren.</translation>
    </message>
    <message>
        <source>Go on with it</source>
        <translation>Damit weitermachen</translation>
    </message>
    <message>
        <source>Go to Nursery, above, and put in a house, its benches and their zones: the map of them will stand here. Then say under Targets which plants are wanted, and under Stocks what cuttings are taken from.</source>
        <translation>Gehen Sie oben zu „Betrieb“ und geben Sie ein Haus, seine Tische und deren Zonen ein: Hier steht dann ihr Plan. Sagen Sie danach unter „Ziele“, welche Pflanzen gewünscht sind, und unter „Mutterpflanzen“, wovon Stecklinge geschnitten werden.</translation>
    </message>
    <message>
        <source>Go to the &amp;round</source>
        <translation>Zum &amp;Rundgang</translation>
    </message>
    <message>
        <source>Good or disinfected water is the control.</source>
        <translation>Gutes oder desinfiziertes Wasser ist der Schutz.</translation>
    </message>
    <message>
        <source>Grade</source>
        <translation>Note</translation>
    </message>
    <message>
        <source>Grade: the roots of the rooted ones, 0 to 5. Leave it empty where none was given.</source>
        <translation>Note: die Wurzeln der bewurzelten, 0 bis 5. Leer lassen, wo keine gegeben wurde.</translation>
    </message>
    <message>
        <source>Group</source>
        <translation>Gruppe</translation>
    </message>
    <message>
        <source>Grows on in</source>
        <translation>Weiterkultur in</translation>
    </message>
    <message>
        <source>H&amp;ouses</source>
        <translation>&amp;Häuser</translation>
    </message>
    <message>
        <source>H&amp;umidity in</source>
        <translation>L&amp;uftfeuchte in</translation>
    </message>
    <message>
        <source>Hands for</source>
        <translation>Arbeitskraft für</translation>
    </message>
    <message>
        <source>Hands of a &amp;day…</source>
        <translation>Arbeitskraft eines &amp;Tages …</translation>
    </message>
    <message>
        <source>Hands of a day</source>
        <translation>Arbeitskraft eines Tages</translation>
    </message>
    <message>
        <source>Hands week by week</source>
        <translation>Arbeitskraft Woche für Woche</translation>
    </message>
    <message>
        <source>He&amp;lp</source>
        <translation>H&amp;ilfe</translation>
    </message>
    <message>
        <source>Health</source>
        <translation>Gesundheit</translation>
    </message>
    <message>
        <source>Heat a plant</source>
        <translation>Wärme je Pflanze</translation>
    </message>
    <message>
        <source>Heat a plant, kWh</source>
        <translation>Wärme je Pflanze, kWh</translation>
    </message>
    <message>
        <source>Heat and slots are those of the days planned and %1 after them. Each trial is the best plan found in its time, so small differences may be chance.</source>
        <translation>Wärme und Stellplätze gelten für die geplanten Tage und %1 danach. Jeder Versuch ist der beste in seiner Zeit gefundene Plan; kleine Unterschiede können Zufall sein.</translation>
    </message>
    <message>
        <source>Heat for a plant</source>
        <translation>Wärme je Pflanze</translation>
    </message>
    <message>
        <source>Heat lost now</source>
        <translation>Wärmeverlust jetzt</translation>
    </message>
    <message>
        <source>Heat of all mats</source>
        <translation>Wärme aller Heizmatten</translation>
    </message>
    <message>
        <source>Heat of the mats, kWh</source>
        <translation>Wärme der Heizmatten, kWh</translation>
    </message>
    <message>
        <source>Heat, kWh</source>
        <translation>Wärme, kWh</translation>
    </message>
    <message>
        <source>Heating at each setting</source>
        <translation>Heizen bei jedem Sollwert</translation>
    </message>
    <message>
        <source>Hormone; medium, parts</source>
        <translation>Hormon; Substrat, Teile</translation>
    </message>
    <message>
        <source>Horticultural misting is among the systems that need such an assessment (UK guidance).</source>
        <translation>Sprühnebelanlagen im Gartenbau gehören zu denen, die eine solche Beurteilung brauchen (britischer Leitfaden).</translation>
    </message>
    <message>
        <source>House</source>
        <translation>Haus</translation>
    </message>
    <message>
        <source>House books (*.warmbench);;All files (*)</source>
        <translation>Hausbücher (*.warmbench);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>House: benches %1, zones %2. Slots taken on that day: %3, by batches: %4.</source>
        <translation>Haus: Tische %1, Zonen %2. Belegte Stellplätze an diesem Tag: %3, von Partien: %4.</translation>
    </message>
    <message>
        <source>How it stands, and what can be done</source>
        <translation>Wie es steht und was zu tun ist</translation>
    </message>
    <message>
        <source>How many</source>
        <translation>Wie viele</translation>
    </message>
    <message>
        <source>How many weeks</source>
        <translation>Wie viele Wochen</translation>
    </message>
    <message>
        <source>How s&amp;ure</source>
        <translation>Wie si&amp;cher</translation>
    </message>
    <message>
        <source>Humidity</source>
        <translation>Luftfeuchte</translation>
    </message>
    <message>
        <source>If eaten, or sap in the eye: call poison or emergency help, and keep a piece of the plant.</source>
        <translation>Verschluckt oder Saft im Auge: Giftnotruf oder Notruf anrufen und ein Stück der Pflanze aufheben.</translation>
    </message>
    <message>
        <source>Import %1</source>
        <translation>%1 einlesen</translation>
    </message>
    <message>
        <source>In the way: %1.</source>
        <translation>Im Weg: %1.</translation>
    </message>
    <message>
        <source>In time</source>
        <translation>Rechtzeitig</translation>
    </message>
    <message>
        <source>It does not open: %1</source>
        <translation>Sie lässt sich nicht öffnen: %1</translation>
    </message>
    <message>
        <source>It is %1; they need %2.</source>
        <translation>Sie ist %1; nötig ist %2.</translation>
    </message>
    <message>
        <source>It lies on a heated &amp;mat</source>
        <translation>Sie liegt auf einer Heiz&amp;matte</translation>
    </message>
    <message>
        <source>It may be &amp;turned</source>
        <translation>Es darf &amp;gedreht werden</translation>
    </message>
    <message>
        <source>It stands there from %1 to %2.</source>
        <translation>Sie steht dort von %1 bis %2.</translation>
    </message>
    <message>
        <source>Its clock in w&amp;inter</source>
        <translation>Seine Uhr im W&amp;inter</translation>
    </message>
    <message>
        <source>Its mat has to be off.</source>
        <translation>Die Heizmatte muss aus sein.</translation>
    </message>
    <message>
        <source>Its mat has to be set to %1.</source>
        <translation>Die Heizmatte muss auf %1 gestellt werden.</translation>
    </message>
    <message>
        <source>Journal</source>
        <translation>Journal</translation>
    </message>
    <message>
        <source>Keep %1 reading of %2</source>
        <translation>%1 Messwert von %2 behalten</translation>
    </message>
    <message>
        <source>Keep %1 readings of %2</source>
        <translation>%1 Messwerte von %2 behalten</translation>
    </message>
    <message>
        <source>Keep plugs, joints and controllers above splash height, and let leads hang in a drip loop.</source>
        <translation>Stecker, Verbindungen und Regler über Spritzhöhe halten und Leitungen mit Tropfschlaufe führen.</translation>
    </message>
    <message>
        <source>Keep trimmings of poisonous kinds from livestock, pets and children. Never burn oleander, and do not shut fresh crushed laurel in a closed vehicle or shed.</source>
        <translation>Schnittgut giftiger Arten von Vieh, Haustieren und Kindern fernhalten. Oleander nie verbrennen, und frisch gequetschten Kirschlorbeer nicht in Fahrzeug oder Schuppen einschließen.</translation>
    </message>
    <message>
        <source>Keep what was tried, with its plan</source>
        <translation>Versuchtes mit seinem Plan behalten</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>Label</source>
        <translation>Etikett</translation>
    </message>
    <message>
        <source>Labels</source>
        <translation>Etiketten</translation>
    </message>
    <message>
        <source>Labels of batch %1</source>
        <translation>Etiketten der Partie %1</translation>
    </message>
    <message>
        <source>Labels, one a container</source>
        <translation>Etiketten, eines je Gefäß</translation>
    </message>
    <message>
        <source>Last day of flush %1</source>
        <translation>Letzter Tag des Austriebs %1</translation>
    </message>
    <message>
        <source>Last on %1: %2 of %3 rooted, %4 callused, %5 dead</source>
        <translation>Zuletzt am %1: %2 von %3 bewurzelt, %4 mit Kallus, %5 tot</translation>
    </message>
    <message>
        <source>Last step in it</source>
        <translation>Letzter Schritt darin</translation>
    </message>
    <message>
        <source>Later</source>
        <translation>Später</translation>
    </message>
    <message>
        <source>Leave them</source>
        <translation>Stehen lassen</translation>
    </message>
    <message>
        <source>Left and Right: a day, PgUp and PgDn: a week, Home: today, Space: play
Marks above: cuttings struck; rings: batches that are to be rooted</source>
        <translation>Links und Rechts: ein Tag, Bild auf und Bild ab: eine Woche, Pos1: heute, Leertaste: abspielen
Marken oben: gesteckte Stecklinge; Ringe: Partien, die bewurzelt sein sollen</translation>
    </message>
    <message>
        <source>Left × top margin</source>
        <translation>Rand links × oben</translation>
    </message>
    <message>
        <source>Likely %1 later than planned, and its slots stay taken as long. Plan again, so that what is to come finds room.</source>
        <translation>Wahrscheinlich %1 später als geplant; so lange bleiben auch die Stellplätze belegt. Planen Sie neu, damit das Kommende Platz findet.</translation>
    </message>
    <message>
        <source>Line</source>
        <translation>Zeile</translation>
    </message>
    <message>
        <source>Lists (*.csv *.txt *.tsv);;All files (*)</source>
        <translation>Listen (*.csv *.txt *.tsv);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Look at</source>
        <translation>Ansehen</translation>
    </message>
    <message>
        <source>Look at its &amp;backups…</source>
        <translation>Seine &amp;Sicherungen ansehen …</translation>
    </message>
    <message>
        <source>Look for</source>
        <translation>Zu achten auf</translation>
    </message>
    <message>
        <source>Looking at targets, recipes, stocks and benches…</source>
        <translation>Ziele, Rezepte, Mutterpflanzen und Tische werden angesehen …</translation>
    </message>
    <message>
        <source>Loss of heat</source>
        <translation>Wärmeverlust</translation>
    </message>
    <message>
        <source>Losses</source>
        <translation>Verluste</translation>
    </message>
    <message>
        <source>Lost</source>
        <translation>Ausfall</translation>
    </message>
    <message>
        <source>Lost of %1</source>
        <translation>Ausfall von %1</translation>
    </message>
    <message>
        <source>Make the book</source>
        <translation>Das Buch anlegen</translation>
    </message>
    <message>
        <source>Mat</source>
        <translation>Heizmatte</translation>
    </message>
    <message>
        <source>Mat of</source>
        <translation>Heizmatte von</translation>
    </message>
    <message>
        <source>Mat's name</source>
        <translation>Name der Heizmatte</translation>
    </message>
    <message>
        <source>Mats to set</source>
        <translation>Zu stellende Heizmatten</translation>
    </message>
    <message>
        <source>Mend a root check of %1</source>
        <translation>Wurzelkontrolle von %1 berichtigen</translation>
    </message>
    <message>
        <source>Milky sap of spurges and figs gives an itchy rash: gloves, and cover for the eyes.</source>
        <translation>Der Milchsaft von Wolfsmilch und Feigen macht juckenden Ausschlag: Handschuhe und Augenschutz.</translation>
    </message>
    <message>
        <source>Mix and compost can hold harmful microbes and dust: damp it, open bags away from the face, wear a mask where it is dusty, wash hands.</source>
        <translation>Substrat und Kompost können schädliche Keime und Staub enthalten: anfeuchten, Säcke vom Gesicht weg öffnen, bei Staub Maske tragen, Hände waschen.</translation>
    </message>
    <message>
        <source>Month</source>
        <translation>Monat</translation>
    </message>
    <message>
        <source>Month plan</source>
        <translation>Monatsplan</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>More places</source>
        <translation>Weitere Orte</translation>
    </message>
    <message>
        <source>More than there are hands for: %1.</source>
        <translation>Mehr, als Arbeitskraft da ist: %1.</translation>
    </message>
    <message>
        <source>Move %1 to %2</source>
        <translation>%1 nach %2 umstellen</translation>
    </message>
    <message>
        <source>Move %1 to %2 from %3 on</source>
        <translation>%1 ab %3 nach %2 umstellen</translation>
    </message>
    <message>
        <source>Move %1 within %2 from %3 on</source>
        <translation>%1 ab %3 innerhalb von %2 umstellen</translation>
    </message>
    <message>
        <source>Move them</source>
        <translation>Umstellen</translation>
    </message>
    <message>
        <source>N and P go to the next thing and the one before. Arrows move it, Shift and arrows move its right and front edges, Enter keeps that, Escape leaves it.</source>
        <translation>N und P gehen zum nächsten und zum vorigen Ding. Pfeile verschieben es, Umschalt und Pfeile seine rechte und vordere Kante, Eingabe behält das, Esc lässt es.</translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation>No&amp;tiz</translation>
    </message>
    <message>
        <source>Names that nobody knows are taxa of my &amp;own</source>
        <translation>Unbekannte Namen sind &amp;eigene Arten</translation>
    </message>
    <message>
        <source>Never cut, cross or kink heating cable, and space it evenly.</source>
        <translation>Heizkabel nie kürzen, kreuzen oder knicken und in gleichem Abstand verlegen.</translation>
    </message>
    <message>
        <source>New &amp;bench</source>
        <translation>Neuer &amp;Tisch</translation>
    </message>
    <message>
        <source>New &amp;container</source>
        <translation>Neues &amp;Gefäß</translation>
    </message>
    <message>
        <source>New &amp;house</source>
        <translation>Neues &amp;Haus</translation>
    </message>
    <message>
        <source>New &amp;zone</source>
        <translation>Neue &amp;Zone</translation>
    </message>
    <message>
        <source>New house book</source>
        <translation>Neues Hausbuch</translation>
    </message>
    <message>
        <source>New house book…</source>
        <translation>Neues Hausbuch …</translation>
    </message>
    <message>
        <source>New stock</source>
        <translation>Neue Mutterpflanzen</translation>
    </message>
    <message>
        <source>New target</source>
        <translation>Neues Ziel</translation>
    </message>
    <message>
        <source>Next comes target %1: its wood (%2) is right from %3 to %4. With %3 as the first day it can be planned already.</source>
        <translation>Als Nächstes kommt Ziel %1: das Holz (%2) ist vom %3 bis %4 so weit. Mit %3 als erstem Tag lässt es sich schon planen.</translation>
    </message>
    <message>
        <source>Next slots free</source>
        <translation>Nächste freie Stellplätze</translation>
    </message>
    <message>
        <source>No batch has ended yet, so there are no figures of your own.</source>
        <translation>Noch ist keine Partie beendet, also gibt es keine eigenen Zahlen.</translation>
    </message>
    <message>
        <source>No batch has ended yet, so there is no take to show.</source>
        <translation>Noch ist keine Partie beendet, also gibt es keine Ausbeute zu zeigen.</translation>
    </message>
    <message>
        <source>No caution shown is no promise that a plant is safe: treat an unknown sap as irritant, and no plant here as food.</source>
        <translation>Kein Hinweis heißt nicht, dass eine Pflanze ungefährlich ist: unbekannten Saft als reizend behandeln und keine Pflanze hier als Speise.</translation>
    </message>
    <message>
        <source>No container is worth a look on this day.</source>
        <translation>An diesem Tag lohnt kein Gefäß einen Blick.</translation>
    </message>
    <message>
        <source>No container is worth a look on this day: all were looked at lately, or are too young to be lifted.

Go to another day on the house's day line to see its round.</source>
        <translation>An diesem Tag lohnt kein Gefäß einen Blick: Alle wurden kürzlich angesehen oder sind zu jung, um gehoben zu werden.

Gehen Sie in der Tagesleiste des Hauses zu einem anderen Tag, um dessen Rundgang zu sehen.</translation>
    </message>
    <message>
        <source>No container of %1 is worth a look on this day.</source>
        <translation>Kein Gefäß von %1 braucht an diesem Tag einen Blick.</translation>
    </message>
    <message>
        <source>No copy was made.</source>
        <translation>Es wurde keine Kopie gemacht.</translation>
    </message>
    <message>
        <source>No house book is open</source>
        <translation>Kein Hausbuch ist geöffnet</translation>
    </message>
    <message>
        <source>No plan keeps all that stands or is fixed: %1</source>
        <translation>Kein Plan erhält alles, was steht oder fest ist: %1</translation>
    </message>
    <message>
        <source>No readings are kept here yet. What is expected of the mat is drawn.</source>
        <translation>Hier gibt es noch keine Messwerte. Gezeichnet ist, was von der Heizmatte erwartet wird.</translation>
    </message>
    <message>
        <source>No room: %1 slot is free, but not so that these containers fit.</source>
        <translation>Kein Platz: %1 Stellplatz ist frei, aber nicht so, dass diese Gefäße passen.</translation>
    </message>
    <message>
        <source>No room: %1 slot is free, they take %2.</source>
        <translation>Kein Platz: %1 Stellplatz ist frei, nötig sind %2.</translation>
    </message>
    <message>
        <source>No room: %1 slots are free, but not so that these containers fit.</source>
        <translation>Kein Platz: %1 Stellplätze sind frei, aber nicht so, dass diese Gefäße passen.</translation>
    </message>
    <message>
        <source>No room: %1 slots are free, they take %2.</source>
        <translation>Kein Platz: %1 Stellplätze sind frei, nötig sind %2.</translation>
    </message>
    <message>
        <source>No root zone left the range of what roots in it, on the days shown.</source>
        <translation>An den gezeigten Tagen verließ kein Wurzelraum den Bereich dessen, was darin wurzelt.</translation>
    </message>
    <message>
        <source>No stock plants are in the book yet. Cuttings are taken from them: put in the first with New.</source>
        <translation>Noch stehen keine Mutterpflanzen im Buch. Von ihnen werden Stecklinge geschnitten: Geben Sie die ersten mit „Neu“ ein.</translation>
    </message>
    <message>
        <source>No target needs striking in these days: each is covered, or its season comes at another time.</source>
        <translation>In diesen Tagen muss für kein Ziel gesteckt werden: Jedes ist gedeckt, oder seine Zeit kommt später.</translation>
    </message>
    <message>
        <source>No target was due and no batch was struck for one.</source>
        <translation>Kein Ziel war fällig und für keines wurde gesteckt.</translation>
    </message>
    <message>
        <source>No trials: no two batches of one stock and wood, struck within a week, differ in hormone, medium or heat alone.</source>
        <translation>Keine Versuche: Keine zwei Partien derselben Mutterpflanzen und desselben Holzes, binnen einer Woche gesteckt, unterscheiden sich allein in Hormon, Substrat oder Wärme.</translation>
    </message>
    <message>
        <source>No.</source>
        <translation>Nr.</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Nothing</source>
        <translation>Nichts</translation>
    </message>
    <message>
        <source>Nothing can be brought home just now.</source>
        <translation>Gerade lässt sich nichts heimbringen.</translation>
    </message>
    <message>
        <source>Nothing in this book is called “%1”.</source>
        <translation>Nichts in diesem Buch heißt „%1“.</translation>
    </message>
    <message>
        <source>Nothing is better than what is planned. Batches that stay as they are: %1.</source>
        <translation>Nichts ist besser als das Geplante. Partien, die bleiben, wie sie sind: %1.</translation>
    </message>
    <message>
        <source>Nothing is changed yet: set other hands, houses, sureness or a mat.</source>
        <translation>Noch ist nichts geändert: Stellen Sie Arbeitskraft, Häuser, Sicherheit oder eine Heizmatte anders ein.</translation>
    </message>
    <message>
        <source>Nothing is counted yet: give the plants of one container at least.</source>
        <translation>Noch ist nichts gezählt: Geben Sie die Pflanzen mindestens eines Gefäßes an.</translation>
    </message>
    <message>
        <source>Nothing is due</source>
        <translation>Nichts ist fällig</translation>
    </message>
    <message>
        <source>Nothing is in the way.</source>
        <translation>Nichts steht im Weg.</translation>
    </message>
    <message>
        <source>Nothing is known of what it yields.</source>
        <translation>Über den Ertrag ist nichts bekannt.</translation>
    </message>
    <message>
        <source>Nothing is planned or wanted in these weeks.</source>
        <translation>In diesen Wochen ist nichts geplant oder gewünscht.</translation>
    </message>
    <message>
        <source>Nothing is planned or wanted on these days.</source>
        <translation>An diesen Tagen ist nichts geplant oder gewünscht.</translation>
    </message>
    <message>
        <source>Nothing is planned to be struck</source>
        <translation>Es ist nichts zu stecken geplant</translation>
    </message>
    <message>
        <source>Nothing is planned to be struck.</source>
        <translation>Es ist nichts zu stecken geplant.</translation>
    </message>
    <message>
        <source>Nothing is to be taken, prepared or set.</source>
        <translation>Nichts ist zu schneiden, vorzubereiten oder zu stellen.</translation>
    </message>
    <message>
        <source>Nothing is wanted yet. A target is so many plants of a taxon, potted on, by a date: put in the first with New.</source>
        <translation>Noch ist nichts gewünscht. Ein Ziel sind so und so viele getopfte Pflanzen einer Art oder Sorte bis zu einem Tag: Geben Sie das erste mit „Neu“ ein.</translation>
    </message>
    <message>
        <source>Nothing of it can be brought home, as all of it is in conflict.</source>
        <translation>Nichts davon lässt sich heimbringen, da alles im Konflikt steht.</translation>
    </message>
    <message>
        <source>Nothing roots over a mat on this day.</source>
        <translation>An diesem Tag wurzelt nichts über einer Heizmatte.</translation>
    </message>
    <message>
        <source>Nothing that rests on enough.</source>
        <translation>Nichts, was genügend belegt ist.</translation>
    </message>
    <message>
        <source>Nothing was brought home.</source>
        <translation>Nichts wurde heimgebracht.</translation>
    </message>
    <message>
        <source>Nothing was struck on these days.</source>
        <translation>An diesen Tagen wurde nichts gesteckt.</translation>
    </message>
    <message>
        <source>Nothing was taken from them.</source>
        <translation>Von ihnen wurde nichts geschnitten.</translation>
    </message>
    <message>
        <source>Nursery</source>
        <translation>Betrieb</translation>
    </message>
    <message>
        <source>Nursery and hands</source>
        <translation>Betrieb und Arbeitskraft</translation>
    </message>
    <message>
        <source>Observe re-entry times. Gloves and eye protection; keep it locked, in the original pack.</source>
        <translation>Wiederbetretungsfristen einhalten. Handschuhe und Augenschutz; verschlossen und in der Originalpackung aufbewahren.</translation>
    </message>
    <message>
        <source>Of batches that have ended. A slot-day is one slot for one day. Heat is reckoned from set-points and the houses' air, not metered, and shared by slots; %1 kWh (%2) ran under nothing.</source>
        <translation>Von beendeten Partien. Ein Stellplatztag ist ein Stellplatz für einen Tag. Die Wärme ist aus Sollwerten und der Luft der Häuser gerechnet, nicht gezählt, und nach Stellplätzen geteilt; %1 kWh (%2) liefen unter nichts.</translation>
    </message>
    <message>
        <source>One is &amp;worth</source>
        <translation>Eine ist &amp;wert</translation>
    </message>
    <message>
        <source>One label</source>
        <translation>Ein Etikett</translation>
    </message>
    <message>
        <source>Only root checks, losses, weanings and pottings on come home; whatever else was done in the copy stays there.</source>
        <translation>Nur Kontrollen, Verluste, Abhärten und Topfen kommen heim; was sonst in der Kopie getan wurde, bleibt dort.</translation>
    </message>
    <message>
        <source>Open a &amp;shared house book…</source>
        <translation>&amp;Gemeinsames Hausbuch öffnen …</translation>
    </message>
    <message>
        <source>Open a file that a logger has written. Nothing is in the book until you say so.</source>
        <translation>Öffnen Sie eine Datei, die ein Logger geschrieben hat. Nichts kommt ins Buch, bevor Sie es sagen.</translation>
    </message>
    <message>
        <source>Open a house book</source>
        <translation>Hausbuch öffnen</translation>
    </message>
    <message>
        <source>Open a house book…</source>
        <translation>Hausbuch öffnen …</translation>
    </message>
    <message>
        <source>Open a list</source>
        <translation>Liste öffnen</translation>
    </message>
    <message>
        <source>Open a logger's file</source>
        <translation>Datei eines Loggers öffnen</translation>
    </message>
    <message>
        <source>Open a shared house book</source>
        <translation>Gemeinsames Hausbuch öffnen</translation>
    </message>
    <message>
        <source>Opens</source>
        <translation>Zustand</translation>
    </message>
    <message>
        <source>Other hands than usual</source>
        <translation>Andere Arbeitskraft als sonst</translation>
    </message>
    <message>
        <source>Out of order from</source>
        <translation>Außer Betrieb ab</translation>
    </message>
    <message>
        <source>P&amp;laces</source>
        <translation>&amp;Orte</translation>
    </message>
    <message>
        <source>PDF (*.pdf)</source>
        <translation>PDF (*.pdf)</translation>
    </message>
    <message>
        <source>Paste a list here, such as lines copied from a spreadsheet: </source>
        <translation>Fügen Sie hier eine Liste ein, etwa Zeilen aus einer Tabellenkalkulation: </translation>
    </message>
    <message>
        <source>Pick</source>
        <translation>Wählen</translation>
    </message>
    <message>
        <source>Pictures (*.pdf *.png *.svg)</source>
        <translation>Bilder (*.pdf *.png *.svg)</translation>
    </message>
    <message>
        <source>Place</source>
        <translation>Platz</translation>
    </message>
    <message>
        <source>Places for which the window is too narrow</source>
        <translation>Orte, für die das Fenster zu schmal ist</translation>
    </message>
    <message>
        <source>Placing by hand</source>
        <translation>Von Hand stellen</translation>
    </message>
    <message>
        <source>Plan</source>
        <translation>Planen</translation>
    </message>
    <message>
        <source>Plan %1 cutting of %2</source>
        <translation>%1 Steckling von %2 planen</translation>
    </message>
    <message>
        <source>Plan %1 cuttings of %2</source>
        <translation>%1 Stecklinge von %2 planen</translation>
    </message>
    <message>
        <source>Plan %1 for %2 instead</source>
        <translation>%1 stattdessen für %2 planen</translation>
    </message>
    <message>
        <source>Plan again…</source>
        <translation>Neu planen …</translation>
    </message>
    <message>
        <source>Plan other places for %1</source>
        <translation>Andere Plätze für %1 planen</translation>
    </message>
    <message>
        <source>Plan the striking</source>
        <translation>Stecken planen</translation>
    </message>
    <message>
        <source>Plan these &amp;weeks…</source>
        <translation>Diese Wochen &amp;planen …</translation>
    </message>
    <message>
        <source>Planned</source>
        <translation>Geplant</translation>
    </message>
    <message>
        <source>Planning: %1</source>
        <translation>Geplant wird: %1</translation>
    </message>
    <message>
        <source>Plants</source>
        <translation>Pflanzen</translation>
    </message>
    <message>
        <source>Plants expected, all targets</source>
        <translation>Erwartete Pflanzen, alle Ziele</translation>
    </message>
    <message>
        <source>Plants in the end</source>
        <translation>Pflanzen am Ende</translation>
    </message>
    <message>
        <source>Plants of %1</source>
        <translation>Pflanzen von %1</translation>
    </message>
    <message>
        <source>Plants of cuttings</source>
        <translation>Pflanzen von Stecklingen</translation>
    </message>
    <message>
        <source>Plants of each container, Enter, what is lost; +: pot on. Lost left empty: all the rest. A container left empty stays where it is.</source>
        <translation>Pflanzen jedes Gefäßes, Eingabetaste, Ausfall; +: topfen. Ausfall leer gelassen: der ganze Rest. Ein leer gelassenes Gefäß bleibt, wo es ist.</translation>
    </message>
    <message>
        <source>Plants potted on</source>
        <translation>Getopfte Pflanzen</translation>
    </message>
    <message>
        <source>Plants potted on of cuttings struck, batches that have ended. The line is Wilson's interval, the dot the take, the box what the recipes say.</source>
        <translation>Getopfte Pflanzen von gesteckten Stecklingen, beendete Partien. Die Linie ist das Wilson-Intervall, der Punkt die Ausbeute, der Kasten, was die Rezepte sagen.</translation>
    </message>
    <message>
        <source>Play</source>
        <translation>Abspielen</translation>
    </message>
    <message>
        <source>Pot on</source>
        <translation>Topfen</translation>
    </message>
    <message>
        <source>Pot on %1</source>
        <translation>%1 topfen</translation>
    </message>
    <message>
        <source>Pot on %1 as stock plants of %2</source>
        <translation>%1 als Mutterpflanzen von %2 topfen</translation>
    </message>
    <message>
        <source>Pot the selected batch &amp;on</source>
        <translation>Gewählte Partie t&amp;opfen</translation>
    </message>
    <message>
        <source>Potted on</source>
        <translation>Getopft</translation>
    </message>
    <message>
        <source>Potted on about %1, %2 after its date.</source>
        <translation>Getopft etwa %1, %2 nach dem Termin.</translation>
    </message>
    <message>
        <source>Print</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <source>Print the selected batch's &amp;labels…</source>
        <translation>Et&amp;iketten der gewählten Partie drucken…</translation>
    </message>
    <message>
        <source>Private, and only with the server that its certificate names</source>
        <translation>Vertraulich, und nur mit dem Server, den sein Zertifikat nennt</translation>
    </message>
    <message>
        <source>Private, whatever certificate the server shows</source>
        <translation>Vertraulich, gleich welches Zertifikat der Server zeigt</translation>
    </message>
    <message>
        <source>Proposed batches</source>
        <translation>Vorgeschlagene Partien</translation>
    </message>
    <message>
        <source>Put &amp;part of the selected batch elsewhere</source>
        <translation>Einen &amp;Teil der gewählten Partie umstellen</translation>
    </message>
    <message>
        <source>Put back</source>
        <translation>Zurückstellen</translation>
    </message>
    <message>
        <source>Put down</source>
        <translation>Absetzen</translation>
    </message>
    <message>
        <source>Put in %1 targets of a list</source>
        <translation>%1 Ziele einer Liste eingeben</translation>
    </message>
    <message>
        <source>Put in %2 lines of a list of %1</source>
        <translation>%2 Zeilen einer Liste eingeben: %1</translation>
    </message>
    <message>
        <source>Put in 1 line of a list of %1</source>
        <translation>1 Zeile einer Liste eingeben: %1</translation>
    </message>
    <message>
        <source>Put in 1 target of a list</source>
        <translation>1 Ziel einer Liste eingeben</translation>
    </message>
    <message>
        <source>Put in a &amp;list…</source>
        <translation>&amp;Liste eingeben …</translation>
    </message>
    <message>
        <source>Put in a list</source>
        <translation>Liste eingeben</translation>
    </message>
    <message>
        <source>Put in stock %1</source>
        <translation>Mutterpflanzen %1 eingeben</translation>
    </message>
    <message>
        <source>Put in target %1</source>
        <translation>Ziel %1 eingeben</translation>
    </message>
    <message>
        <source>Put it in the book's &amp;place…</source>
        <translation>An die &amp;Stelle des Buchs setzen …</translation>
    </message>
    <message>
        <source>Put it into a &amp;new file…</source>
        <translation>In eine &amp;neue Datei legen …</translation>
    </message>
    <message>
        <source>Put the backup in the book's place</source>
        <translation>Die Sicherung an die Stelle des Buchs setzen</translation>
    </message>
    <message>
        <source>Put the backup into a new file</source>
        <translation>Die Sicherung in eine neue Datei legen</translation>
    </message>
    <message>
        <source>Put the selected batch &amp;elsewhere</source>
        <translation>Gewählte Partie &amp;umstellen</translation>
    </message>
    <message>
        <source>R&amp;enew from its own cuttings…</source>
        <translation>Aus &amp;eigenen Stecklingen erneuern …</translation>
    </message>
    <message>
        <source>Rated power</source>
        <translation>Nennleistung</translation>
    </message>
    <message>
        <source>Read as: %1.</source>
        <translation>Gelesen als: %1.</translation>
    </message>
    <message>
        <source>Readings (*.csv *.txt *.tsv);;All files (*)</source>
        <translation>Messwerte (*.csv *.txt *.tsv);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Readings from %1 to %2. Wheel or + and − zoom, dragging or the arrows move, 0 shows all.</source>
        <translation>Messwerte von %1 bis %2. Rad oder + und − vergrößern, Ziehen oder Pfeile verschieben, 0 zeigt alles.</translation>
    </message>
    <message>
        <source>Readings of a logger</source>
        <translation>Messwerte eines Loggers</translation>
    </message>
    <message>
        <source>Ready after</source>
        <translation>Fertig nach</translation>
    </message>
    <message>
        <source>Ready on %1; it stands there from %2 to %3.</source>
        <translation>Fertig am %1; sie steht dort von %2 bis %3.</translation>
    </message>
    <message>
        <source>Ready to wean</source>
        <translation>Bereit zum Abhärten</translation>
    </message>
    <message>
        <source>Recipe</source>
        <translation>Rezept</translation>
    </message>
    <message>
        <source>Recipe as it was then</source>
        <translation>Rezept, wie es damals war</translation>
    </message>
    <message>
        <source>Recipe's range</source>
        <translation>Bereich des Rezepts</translation>
    </message>
    <message>
        <source>Recipe's take</source>
        <translation>Ausbeute im Rezept</translation>
    </message>
    <message>
        <source>Recipes</source>
        <translation>Rezepte</translation>
    </message>
    <message>
        <source>Recipes with batches of your own</source>
        <translation>Rezepte mit eigenen Partien</translation>
    </message>
    <message>
        <source>Record a loss in %1</source>
        <translation>Ausfall in %1 eintragen</translation>
    </message>
    <message>
        <source>Record a root check of %1</source>
        <translation>Wurzelkontrolle von %1 eintragen</translation>
    </message>
    <message>
        <source>Redo: %1</source>
        <translation>Wiederholt: %1</translation>
    </message>
    <message>
        <source>Refit bench %1</source>
        <translation>Tisch %1 umbauen</translation>
    </message>
    <message>
        <source>Refit zone %1</source>
        <translation>Zone %1 umbauen</translation>
    </message>
    <message>
        <source>Remo&amp;ve the readings of the days shown</source>
        <translation>Messwerte der gezeigten Tage &amp;löschen</translation>
    </message>
    <message>
        <source>Remove %1</source>
        <translation>%1 entfernen</translation>
    </message>
    <message>
        <source>Remove %1 %2</source>
        <translation>%1 %2 entfernen</translation>
    </message>
    <message>
        <source>Remove a root check</source>
        <translation>Wurzelkontrolle entfernen</translation>
    </message>
    <message>
        <source>Remove a root check of %1</source>
        <translation>Wurzelkontrolle von %1 entfernen</translation>
    </message>
    <message>
        <source>Remove readings of %1 from %2 to %3</source>
        <translation>Messwerte von %1 vom %2 bis %3 löschen</translation>
    </message>
    <message>
        <source>Remove the planned batch %1</source>
        <translation>Geplante Partie %1 entfernen</translation>
    </message>
    <message>
        <source>Results</source>
        <translation>Ergebnisse</translation>
    </message>
    <message>
        <source>Results of earlier batches</source>
        <translation>Ergebnisse früherer Partien</translation>
    </message>
    <message>
        <source>Ro&amp;ws</source>
        <translation>R&amp;eihen</translation>
    </message>
    <message>
        <source>Room only until %1; they would stand there until %2.</source>
        <translation>Platz nur bis %1; sie stünden dort bis %2.</translation>
    </message>
    <message>
        <source>Root checks</source>
        <translation>Kontrollen</translation>
    </message>
    <message>
        <source>Root checks: %1. Losses: %2. Weanings: %3. Pottings on: %4.</source>
        <translation>Kontrollen: %1. Verluste: %2. Abgehärtet: %3. Getopft: %4.</translation>
    </message>
    <message>
        <source>Root grade, 0 to 5</source>
        <translation>Wurzelnote, 0 bis 5</translation>
    </message>
    <message>
        <source>Root zone</source>
        <translation>Wurzelraum</translation>
    </message>
    <message>
        <source>Root zone expected</source>
        <translation>Wurzelraum erwartet</translation>
    </message>
    <message>
        <source>Root zone measured</source>
        <translation>Wurzelraum gemessen</translation>
    </message>
    <message>
        <source>Root zone with no mat on</source>
        <translation>Wurzelraum ohne Heizmatte</translation>
    </message>
    <message>
        <source>Rooted</source>
        <translation>Bewurzelt</translation>
    </message>
    <message>
        <source>Roots in</source>
        <translation>Wurzelt in</translation>
    </message>
    <message>
        <source>Rotate modes of action, and do not spray as routine when air and cleaning will do.</source>
        <translation>Wirkungsweisen wechseln und nicht gewohnheitsmäßig spritzen, wo Lüften und Säubern genügen.</translation>
    </message>
    <message>
        <source>Round</source>
        <translation>Rundgang</translation>
    </message>
    <message>
        <source>Round of %1</source>
        <translation>Rundgang am %1</translation>
    </message>
    <message>
        <source>Round sheet</source>
        <translation>Blatt für den Rundgang</translation>
    </message>
    <message>
        <source>Round: batches in all %1, root checks %2.</source>
        <translation>Rundgang: Partien insgesamt %1, Kontrollen %2.</translation>
    </message>
    <message>
        <source>S&amp;ee the map</source>
        <translation>&amp;Karte zeigen</translation>
    </message>
    <message>
        <source>S&amp;ureness</source>
        <translation>&amp;Sicherheit</translation>
    </message>
    <message>
        <source>Save as PDF</source>
        <translation>Als PDF speichern</translation>
    </message>
    <message>
        <source>Save the &amp;map as a picture…</source>
        <translation>Plan als &amp;Bild speichern …</translation>
    </message>
    <message>
        <source>Save the map as a picture</source>
        <translation>Plan als Bild speichern</translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation>Gespeichert: %1</translation>
    </message>
    <message>
        <source>Season's report</source>
        <translation>Bericht der Saison</translation>
    </message>
    <message>
        <source>Seasons come &amp;later by</source>
        <translation>Jahreszeiten &amp;später um</translation>
    </message>
    <message>
        <source>Second way</source>
        <translation>Zweite Weise</translation>
    </message>
    <message>
        <source>Set the hands of days</source>
        <translation>Arbeitskraft der Tage festlegen</translation>
    </message>
    <message>
        <source>Set the mat of %1</source>
        <translation>Heizmatte von %1 stellen</translation>
    </message>
    <message>
        <source>Set to</source>
        <translation>Gestellt auf</translation>
    </message>
    <message>
        <source>Set-points, %1</source>
        <translation>Sollwerte, %1</translation>
    </message>
    <message>
        <source>Share rooted by day</source>
        <translation>Bewurzelter Anteil nach Tagen</translation>
    </message>
    <message>
        <source>Sheet or roll</source>
        <translation>Bogen oder Rolle</translation>
    </message>
    <message>
        <source>Short by %1 plant. Strike %2 cuttings at once; they will be late.</source>
        <translation>Es fehlt %1 Pflanze. Stecken Sie sofort %2 Stecklinge; sie kommen zu spät.</translation>
    </message>
    <message>
        <source>Short by %1 plant. There is time to strike %2 cuttings again, while the wood is right, until %3.</source>
        <translation>Es fehlt %1 Pflanze. Solange das Holz richtig ist, bis %3, können noch %2 Stecklinge nachgesteckt werden.</translation>
    </message>
    <message>
        <source>Short by %1 plant: %2.</source>
        <translation>Es fehlt %1 Pflanze: %2.</translation>
    </message>
    <message>
        <source>Short by %1 plants. Strike %2 cuttings at once; they will be late.</source>
        <translation>Es fehlen %1 Pflanzen. Stecken Sie sofort %2 Stecklinge; sie kommen zu spät.</translation>
    </message>
    <message>
        <source>Short by %1 plants. There is time to strike %2 cuttings again, while the wood is right, until %3.</source>
        <translation>Es fehlen %1 Pflanzen. Solange das Holz richtig ist, bis %3, können noch %2 Stecklinge nachgesteckt werden.</translation>
    </message>
    <message>
        <source>Short by %1 plants: %2.</source>
        <translation>Es fehlen %1 Pflanzen: %2.</translation>
    </message>
    <message>
        <source>Show &amp;everything</source>
        <translation>&amp;Alles zeigen</translation>
    </message>
    <message>
        <source>Show everything</source>
        <translation>Alles zeigen</translation>
    </message>
    <message>
        <source>Show on the &amp;map</source>
        <translation>Im Tisch&amp;plan zeigen</translation>
    </message>
    <message>
        <source>Show the selected batch on the &amp;map</source>
        <translation>Gewählte Partie im &amp;Plan zeigen</translation>
    </message>
    <message>
        <source>Side of a &amp;slot</source>
        <translation>Kantenlänge eines Stell&amp;platzes</translation>
    </message>
    <message>
        <source>Since</source>
        <translation>Seit</translation>
    </message>
    <message>
        <source>Slot-days</source>
        <translation>Stellplatztage</translation>
    </message>
    <message>
        <source>Slot-days a plant</source>
        <translation>Stellplatztage je Pflanze</translation>
    </message>
    <message>
        <source>Slot-days for a plant</source>
        <translation>Stellplatztage je Pflanze</translation>
    </message>
    <message>
        <source>Slot-days taken</source>
        <translation>Belegte Stellplatztage</translation>
    </message>
    <message>
        <source>Slots taken</source>
        <translation>Belegte Stellplätze</translation>
    </message>
    <message>
        <source>Slots taken on the fullest day</source>
        <translation>Belegte Stellplätze am vollsten Tag</translation>
    </message>
    <message>
        <source>Slots taken, by heat</source>
        <translation>Belegte Stellplätze nach Wärme</translation>
    </message>
    <message>
        <source>Some saps burn skin in sunlight: keep skin covered, and out of the sun until washed.</source>
        <translation>Manche Säfte verbrennen die Haut im Sonnenlicht: Haut bedecken und bis zum Waschen aus der Sonne bleiben.</translation>
    </message>
    <message>
        <source>Sooner than off</source>
        <translation>Früher als aus</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>Stand</source>
        <translation>Bestand</translation>
    </message>
    <message>
        <source>Stand now</source>
        <translation>Jetzt verfügbar</translation>
    </message>
    <message>
        <source>Standing</source>
        <translation>Stehend</translation>
    </message>
    <message>
        <source>Stands here</source>
        <translation>Steht hier</translation>
    </message>
    <message>
        <source>Steps in the copy since it was taken along: %1; the last by %2 on %3: %4</source>
        <translation>Schritte in der Kopie, seit sie mitgenommen wurde: %1; der letzte von %2 am %3: %4</translation>
    </message>
    <message>
        <source>Steps in the journal: %1; the last by %2 on %3: %4</source>
        <translation>Schritte im Journal: %1; der letzte von %2 am %3: %4</translation>
    </message>
    <message>
        <source>Steps: %1</source>
        <translation>Schritte: %1</translation>
    </message>
    <message>
        <source>Still standing</source>
        <translation>Noch stehend</translation>
    </message>
    <message>
        <source>Still to take, a year</source>
        <translation>Noch zu schneiden im Jahr</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>Mutterpflanzen</translation>
    </message>
    <message>
        <source>Stock gives %1.</source>
        <translation>Mutterpflanzen geben %1.</translation>
    </message>
    <message>
        <source>Stocks</source>
        <translation>Mutterpflanzen</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Anhalten</translation>
    </message>
    <message>
        <source>Strike</source>
        <translation>Stecken</translation>
    </message>
    <message>
        <source>Strike %1</source>
        <translation>%1 stecken</translation>
    </message>
    <message>
        <source>Strike %1 %2 cutting from %3 to %4, by the recipe %5.</source>
        <translation>%1 Steckling (%2) von %3 bis %4 stecken, nach dem Rezept %5.</translation>
    </message>
    <message>
        <source>Strike %1 %2 cuttings from %3 to %4, by the recipe %5.</source>
        <translation>%1 Stecklinge (%2) von %3 bis %4 stecken, nach dem Rezept %5.</translation>
    </message>
    <message>
        <source>Strike %1 cutting of %2</source>
        <translation>%1 Steckling von %2 stecken</translation>
    </message>
    <message>
        <source>Strike %1 cuttings of %2</source>
        <translation>%1 Stecklinge von %2 stecken</translation>
    </message>
    <message>
        <source>Strike list</source>
        <translation>Steckliste</translation>
    </message>
    <message>
        <source>Strike today</source>
        <translation>Heute stecken</translation>
    </message>
    <message>
        <source>Struck</source>
        <translation>Gesteckt</translation>
    </message>
    <message>
        <source>Struck on %1. Days and costs are those still to come, of the whole mat, until nine of ten of those that root have; the house's air is taken as %2 today. The mat is %3.</source>
        <translation>Gesteckt am %1. Tage und Kosten sind die noch ausstehenden, für die ganze Matte, bis neun von zehn der wurzelnden bewurzelt sind; für die Luft im Haus werden heute %2 angenommen. Die Matte ist %3.</translation>
    </message>
    <message>
        <source>Struck, without a place</source>
        <translation>Gesteckt, ohne Platz</translation>
    </message>
    <message>
        <source>Suits as it is</source>
        <translation>Passt, wie sie ist</translation>
    </message>
    <message>
        <source>Suits at %1</source>
        <translation>Passt bei %1</translation>
    </message>
    <message>
        <source>Switch off and isolate before digging in a heated bed. Damaged, warm or tripping gear: off, tagged, out of use, electrician.</source>
        <translation>Vor dem Graben in einem beheizten Beet abschalten und freischalten. Beschädigtes, warmes oder auslösendes Gerät: aus, gekennzeichnet, außer Betrieb, Elektrofachkraft.</translation>
    </message>
    <message>
        <source>T&amp;ime to search</source>
        <translation>&amp;Zeit zum Suchen</translation>
    </message>
    <message>
        <source>T&amp;rials</source>
        <translation>&amp;Versuche</translation>
    </message>
    <message>
        <source>Take</source>
        <translation>Ausbeute</translation>
    </message>
    <message>
        <source>Take</source>
        <comment>cuttings</comment>
        <translation>Schneiden</translation>
    </message>
    <message>
        <source>Take %1 off its place</source>
        <translation>%1 vom Platz nehmen</translation>
    </message>
    <message>
        <source>Take %1 off its planned places</source>
        <translation>%1 von den geplanten Plätzen nehmen</translation>
    </message>
    <message>
        <source>Take (95 %)</source>
        <translation>Ausbeute (95 %)</translation>
    </message>
    <message>
        <source>Take a &amp;copy along on a round…</source>
        <translation>&amp;Kopie auf einen Rundgang mitnehmen …</translation>
    </message>
    <message>
        <source>Take a copy along on a round</source>
        <translation>Eine Kopie auf einen Rundgang mitnehmen</translation>
    </message>
    <message>
        <source>Take and losses</source>
        <translation>Ausbeute und Ausfall</translation>
    </message>
    <message>
        <source>Take away a bench</source>
        <translation>Tisch wegnehmen</translation>
    </message>
    <message>
        <source>Take away bench %1</source>
        <translation>Tisch %1 wegnehmen</translation>
    </message>
    <message>
        <source>Take away zone %1</source>
        <translation>Zone %1 wegnehmen</translation>
    </message>
    <message>
        <source>Take in the recipe</source>
        <translation>Ausbeute im Rezept</translation>
    </message>
    <message>
        <source>Taken back: %1</source>
        <translation>Zurückgenommen: %1</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>Target %1</source>
        <translation>Ziel %1</translation>
    </message>
    <message>
        <source>Targets</source>
        <translation>Ziele</translation>
    </message>
    <message>
        <source>Targets met</source>
        <translation>Erreichte Ziele</translation>
    </message>
    <message>
        <source>Targets that can be relied on</source>
        <translation>Ziele, mit denen man rechnen kann</translation>
    </message>
    <message>
        <source>Targets that no batch covers yet are planned round all that stands. Nothing is in the book until you accept it.</source>
        <translation>Ziele, die noch keine Partie deckt, werden um alles Stehende herum geplant. Nichts kommt ins Buch, bevor Sie es annehmen.</translation>
    </message>
    <message>
        <source>Targets: %1. Stocks: %2. Recipes of your own: %3.</source>
        <translation>Ziele: %1. Mutterpflanzen: %2. Eigene Rezepte: %3.</translation>
    </message>
    <message>
        <source>Taxon</source>
        <translation>Art/Sorte</translation>
    </message>
    <message>
        <source>Taxon and wood</source>
        <translation>Art/Sorte und Holz</translation>
    </message>
    <message>
        <source>Temperature</source>
        <translation>Temperatur</translation>
    </message>
    <message>
        <source>Temperatures in °&amp;F</source>
        <translation>&amp;Temperaturen in °F</translation>
    </message>
    <message>
        <source>Temperatures over time</source>
        <translation>Temperaturen im Zeitlauf</translation>
    </message>
    <message>
        <source>The backup is in %1</source>
        <translation>Die Sicherung liegt in %1</translation>
    </message>
    <message>
        <source>The backup is in place</source>
        <translation>Die Sicherung steht an ihrer Stelle</translation>
    </message>
    <message>
        <source>The batch on the mat</source>
        <translation>Die Partie auf der Heizmatte</translation>
    </message>
    <message>
        <source>The book as it was opened</source>
        <translation>Das Buch, wie es geöffnet wurde</translation>
    </message>
    <message>
        <source>The book has %1 of them already, and for %2 minute another value, which stays. A minute has one reading, the first; %3 more are left out for that.</source>
        <translation>%1 davon hat das Buch schon, und für %2 Minute einen anderen Wert, der bleibt. Eine Minute hat einen Messwert, den ersten; %3 weitere sind deshalb ausgelassen.</translation>
    </message>
    <message>
        <source>The book has %1 of them already, and for %2 minutes another value, which stays. A minute has one reading, the first; %3 more are left out for that.</source>
        <translation>%1 davon hat das Buch schon, und für %2 Minuten einen anderen Wert, der bleibt. Eine Minute hat einen Messwert, den ersten; %3 weitere sind deshalb ausgelassen.</translation>
    </message>
    <message>
        <source>The book made these by itself, each before that day's first change. Look into one first. Whatever you do here, nothing is thrown away.</source>
        <translation>Das Buch hat sie selbst gemacht, jede vor der ersten Änderung des Tages. Sehen Sie erst hinein. Was immer Sie hier tun, nichts wird weggeworfen.</translation>
    </message>
    <message>
        <source>The book's file has been moved, removed or replaced. You can read the book as it was; it can be changed again when the file is back in its place.</source>
        <translation>Die Datei des Hausbuchs wurde verschoben, gelöscht oder ersetzt. Sie können das Buch lesen, wie es war; ändern lässt es sich wieder, wenn die Datei an ihrem Platz ist.</translation>
    </message>
    <message>
        <source>The connection to the shared book is lost. You can read the book as it was; it can be changed again as soon as the connection is back.</source>
        <translation>Die Verbindung zum gemeinsamen Hausbuch ist abgebrochen. Sie können das Buch lesen, wie es war; ändern lässt es sich wieder, sobald die Verbindung zurück ist.</translation>
    </message>
    <message>
        <source>The connection was lost in the middle of this. Whether it was kept shows when the connection is back.</source>
        <translation>Die Verbindung brach mittendrin ab. Ob die Änderung gespeichert ist, zeigt sich, wenn die Verbindung zurück ist.</translation>
    </message>
    <message>
        <source>The copy is %1. Take it along and open it there with File &gt; Open a house book.</source>
        <translation>Die Kopie ist %1. Nehmen Sie sie mit und öffnen Sie sie dort mit Datei &gt; Hausbuch öffnen.</translation>
    </message>
    <message>
        <source>The copy that was taken along on the round</source>
        <translation>Die Kopie, die auf den Rundgang mitgenommen wurde</translation>
    </message>
    <message>
        <source>The day's page</source>
        <translation>Tagesblatt</translation>
    </message>
    <message>
        <source>The first line names the &amp;columns</source>
        <translation>Die erste Zeile benennt die &amp;Spalten</translation>
    </message>
    <message>
        <source>The first readings as they are understood</source>
        <translation>Die ersten Messwerte, wie sie verstanden sind</translation>
    </message>
    <message>
        <source>The house book whose backups you want to see</source>
        <translation>Das Hausbuch, dessen Sicherungen Sie sehen möchten</translation>
    </message>
    <message>
        <source>The house in plan</source>
        <translation>Das Haus im Grundriss</translation>
    </message>
    <message>
        <source>The list</source>
        <translation>Die Liste</translation>
    </message>
    <message>
        <source>The list as it is understood</source>
        <translation>Die Liste, wie sie verstanden ist</translation>
    </message>
    <message>
        <source>The mat is &amp;out of order</source>
        <translation>Die Heizmatte ist &amp;außer Betrieb</translation>
    </message>
    <message>
        <source>The mat of %1 no longer runs at %2 from %3 to %4.</source>
        <translation>Die Heizmatte von %1 läuft von %3 bis %4 nicht mehr auf %2.</translation>
    </message>
    <message>
        <source>The new zone as it was drawn. What covers it, and its mat, is asked below.</source>
        <translation>Die neue Zone, wie sie gezeichnet wurde. Abdeckung und Heizmatte werden unten erfragt.</translation>
    </message>
    <message>
        <source>The pages as they will be</source>
        <translation>Die Seiten, wie sie werden</translation>
    </message>
    <message>
        <source>The password goes to this system's key store, and into no file. Without a key store it is asked for each time.</source>
        <translation>Das Passwort kommt in den Schlüsselbund dieses Systems und in keine Datei. Ohne Schlüsselbund wird jedes Mal danach gefragt.</translation>
    </message>
    <message>
        <source>The printer took no page.</source>
        <translation>Der Drucker nahm keine Seite an.</translation>
    </message>
    <message>
        <source>The recipe's own figures don't fit together, so yours can't be weighed with them.</source>
        <translation>Die Zahlen des Rezepts passen nicht zusammen, also lassen sich Ihre nicht damit abwägen.</translation>
    </message>
    <message>
        <source>The round is home. %1</source>
        <translation>Der Rundgang ist daheim. %1</translation>
    </message>
    <message>
        <source>There is no backup of this book yet. It makes one by itself before each day's first change, in a folder beside it.</source>
        <translation>Von diesem Buch gibt es noch keine Sicherung. Es macht selbst eine vor der ersten Änderung jedes Tages, in einem Ordner daneben.</translation>
    </message>
    <message>
        <source>There is no house in this book yet</source>
        <translation>In diesem Buch steht noch kein Haus</translation>
    </message>
    <message>
        <source>There is nothing new in it: what was found with it is in the book already.</source>
        <translation>Sie enthält nichts Neues: Was mit ihr gefunden wurde, steht schon im Buch.</translation>
    </message>
    <message>
        <source>These cuttings have been struck. Move them to %1 from %2 on?</source>
        <translation>Diese Stecklinge sind schon gesteckt. Ab %2 nach %1 umstellen?</translation>
    </message>
    <message>
        <source>These weeks have gone; choose a later first day.</source>
        <translation>Diese Wochen sind vorbei; wählen Sie einen späteren ersten Tag.</translation>
    </message>
    <message>
        <source>They &amp;stand</source>
        <translation>Sie &amp;stehen</translation>
    </message>
    <message>
        <source>They stand for %1.</source>
        <translation>Sie stehen: %1.</translation>
    </message>
    <message>
        <source>They take %1 slot (%2) for %3.</source>
        <translation>Sie belegen %1 Stellplatz (%2), Dauer %3.</translation>
    </message>
    <message>
        <source>They take %1 slots (%2) for %3.</source>
        <translation>Sie belegen %1 Stellplätze (%2), Dauer %3.</translation>
    </message>
    <message>
        <source>They would need the mat at %1, which %2 there does not bear.</source>
        <translation>Sie brauchten die Heizmatte auf %1, was %2 dort nicht verträgt.</translation>
    </message>
    <message>
        <source>This batch renews the stock %1, which has %2 now.</source>
        <translation>Diese Partie erneuert die Mutterpflanzen %1, bisher %2.</translation>
    </message>
    <message>
        <source>This book has no house yet.</source>
        <translation>Dieses Hausbuch hat noch kein Haus.</translation>
    </message>
    <message>
        <source>This changes more than the drawing. It is one step, which can be taken back.</source>
        <translation>Das ändert mehr als die Zeichnung. Es ist ein Schritt, der sich zurücknehmen lässt.</translation>
    </message>
    <message>
        <source>This container was not looked at before.</source>
        <translation>Dieses Gefäß wurde noch nie angesehen.</translation>
    </message>
    <message>
        <source>This day</source>
        <translation>Dieser Tag</translation>
    </message>
    <message>
        <source>This day is still to come; nothing of it is done yet.</source>
        <translation>Dieser Tag kommt erst noch; nichts davon ist getan.</translation>
    </message>
    <message>
        <source>This is the backup of %1 from the beginning of %2, to be looked at only.</source>
        <translation>Dies ist die Sicherung von %1 vom Anfang des %2; sie ist nur zum Ansehen.</translation>
    </message>
    <message>
        <source>Throw all &amp;away</source>
        <translation>Alle ver&amp;werfen</translation>
    </message>
    <message>
        <source>Throw it away</source>
        <translation>Wegwerfen</translation>
    </message>
    <message>
        <source>Throws the whole container away; the reason is what stands in the note</source>
        <translation>Wirft das ganze Gefäß weg; der Grund ist, was in der Notiz steht</translation>
    </message>
    <message>
        <source>Tick &amp;none</source>
        <translation>&amp;Keine anhaken</translation>
    </message>
    <message>
        <source>Tick a&amp;ll</source>
        <translation>A&amp;lle anhaken</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Tip out what you need, never dip into the stock pot, and discard what is left.</source>
        <translation>Nur die nötige Menge entnehmen, nie in den Vorratsbehälter tauchen und den Rest entsorgen.</translation>
    </message>
    <message>
        <source>To %1</source>
        <translation>Auf %1</translation>
    </message>
    <message>
        <source>To be weaned in</source>
        <translation>Wird abgehärtet in</translation>
    </message>
    <message>
        <source>To check</source>
        <translation>Zu kontrollieren</translation>
    </message>
    <message>
        <source>To have ready</source>
        <translation>Bereitzuhalten</translation>
    </message>
    <message>
        <source>To strike</source>
        <translation>Zu stecken</translation>
    </message>
    <message>
        <source>To take</source>
        <translation>Zu schneiden</translation>
    </message>
    <message>
        <source>To throw it away, give the reason in the note first.</source>
        <translation>Geben Sie vor dem Wegwerfen den Grund in der Notiz an.</translation>
    </message>
    <message>
        <source>To throw the batch away, give the reason first.</source>
        <translation>Geben Sie vor dem Wegwerfen der Partie den Grund an.</translation>
    </message>
    <message>
        <source>To wean and pot on</source>
        <translation>Abzuhärten und zu topfen</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>Too cold: the root zone goes down to %1, they need %2 at least.</source>
        <translation>Zu kalt: Der Wurzelraum sinkt auf %1, nötig sind mindestens %2.</translation>
    </message>
    <message>
        <source>Too cold: they would not root there within a year.</source>
        <translation>Zu kalt: Sie würden dort binnen eines Jahres nicht wurzeln.</translation>
    </message>
    <message>
        <source>Too little to go by yet</source>
        <translation>Noch zu wenig, um sich danach zu richten</translation>
    </message>
    <message>
        <source>Too warm: the root zone goes up to %1, they bear %2 at most.</source>
        <translation>Zu warm: Der Wurzelraum steigt auf %1, sie vertragen höchstens %2.</translation>
    </message>
    <message>
        <source>Trial</source>
        <translation>Versuch</translation>
    </message>
    <message>
        <source>Trials</source>
        <translation>Versuche</translation>
    </message>
    <message>
        <source>Try fewer hands, a cooler house, more sureness or another mat on a copy</source>
        <translation>An einer Kopie weniger Arbeitskraft, ein kühleres Haus, mehr Sicherheit oder eine andere Heizmatte versuchen</translation>
    </message>
    <message>
        <source>Try something</source>
        <translation>Etwas versuchen</translation>
    </message>
    <message>
        <source>Turn (T)</source>
        <translation>Drehen (T)</translation>
    </message>
    <message>
        <source>Turned like this they do not all fit; turn them with T.</source>
        <translation>So gedreht passen nicht alle; drehen Sie sie mit T.</translation>
    </message>
    <message>
        <source>U&amp;nit</source>
        <translation>Ei&amp;nheit</translation>
    </message>
    <message>
        <source>UTC %1%2:%3</source>
        <translation>UTC %1%2:%3</translation>
    </message>
    <message>
        <source>Undo: %1</source>
        <translation>Rückgängig: %1</translation>
    </message>
    <message>
        <source>Use a thermostat with its probe in the root zone and a separate high limit: a slipped probe overheats the bed.</source>
        <translation>Thermostat mit Fühler im Wurzelraum und getrennter Übertemperatursicherung verwenden: Ein verrutschter Fühler überhitzt das Beet.</translation>
    </message>
    <message>
        <source>Use only equipment made and rated for wet horticultural places, and test its residual-current device as the maker advises.</source>
        <translation>Nur Geräte verwenden, die für nasse Räume im Gartenbau gebaut und zugelassen sind, und den Fehlerstromschutzschalter prüfen, wie der Hersteller es rät.</translation>
    </message>
    <message>
        <source>Use only products approved for the purpose where you are, at label rate, with the protective gear that the label states. Some hormones and strengths are restricted to trained users.</source>
        <translation>Nur Mittel verwenden, die dort, wo Sie sind, für den Zweck zugelassen sind, in der Menge des Etiketts, mit der Schutzausrüstung, die das Etikett nennt. Manche Hormone und Stärken sind Sachkundigen vorbehalten.</translation>
    </message>
    <message>
        <source>Use only products approved for the purpose where you are, at label rate, with the protective gear that the label states; where the law asks for a trained user, by one.</source>
        <translation>Nur Mittel verwenden, die dort, wo Sie sind, für den Zweck zugelassen sind, in der Menge des Etiketts, mit der Schutzausrüstung, die das Etikett nennt; wo das Gesetz Sachkunde verlangt, durch Sachkundige.</translation>
    </message>
    <message>
        <source>Used blades go in a sharps box. Keep tetanus cover up to date.</source>
        <translation>Benutzte Klingen in einen durchstichsicheren Behälter geben. Tetanusschutz aktuell halten.</translation>
    </message>
    <message>
        <source>Used on the first sheet</source>
        <translation>Auf dem ersten Bogen benutzt</translation>
    </message>
    <message>
        <source>Vapour pressure &amp;deficit</source>
        <translation>Dampfdruck&amp;defizit</translation>
    </message>
    <message>
        <source>W&amp;hat it measured</source>
        <translation>W&amp;as er maß</translation>
    </message>
    <message>
        <source>W&amp;ood</source>
        <translation>H&amp;olz</translation>
    </message>
    <message>
        <source>Wanted</source>
        <translation>Gewünscht</translation>
    </message>
    <message>
        <source>Warmbench</source>
        <translation>Warmbench</translation>
    </message>
    <message>
        <source>Warmth</source>
        <translation>Wärme</translation>
    </message>
    <message>
        <source>Was</source>
        <translation>War</translation>
    </message>
    <message>
        <source>Was &amp;weaned on %1</source>
        <translation>Am %1 ab&amp;gehärtet</translation>
    </message>
    <message>
        <source>Was weaned on %1</source>
        <translation>Am %1 abgehärtet</translation>
    </message>
    <message>
        <source>Wean %1</source>
        <translation>%1 abhärten</translation>
    </message>
    <message>
        <source>Wean now</source>
        <translation>Jetzt abhärten</translation>
    </message>
    <message>
        <source>Weaned</source>
        <translation>Abgehärtet</translation>
    </message>
    <message>
        <source>Weaned in</source>
        <translation>Abgehärtet in</translation>
    </message>
    <message>
        <source>Week from</source>
        <translation>Woche ab</translation>
    </message>
    <message>
        <source>What &amp;if…</source>
        <translation>&amp;Was wäre, wenn …</translation>
    </message>
    <message>
        <source>What &lt;b&gt;%1&lt;/b&gt; holds and &lt;b&gt;%2&lt;/b&gt; does not. Nothing is stored yet, and the copy stays as it is.</source>
        <translation>Was in &lt;b&gt;%1&lt;/b&gt; steht und in &lt;b&gt;%2&lt;/b&gt; nicht. Noch ist nichts gespeichert, und die Kopie bleibt, wie sie ist.</translation>
    </message>
    <message>
        <source>What can be cut in the year to come</source>
        <translation>Was im kommenden Jahr geschnitten werden kann</translation>
    </message>
    <message>
        <source>What changes</source>
        <translation>Was sich ändert</translation>
    </message>
    <message>
        <source>What column %1 means</source>
        <translation>Was Spalte %1 bedeutet</translation>
    </message>
    <message>
        <source>What comes home, by batch</source>
        <translation>Was heimkommt, nach Partien</translation>
    </message>
    <message>
        <source>What comes of each season</source>
        <translation>Was aus jeder Saison wird</translation>
    </message>
    <message>
        <source>What each set-point costs and brings</source>
        <translation>Was jeder Sollwert kostet und bringt</translation>
    </message>
    <message>
        <source>What if</source>
        <translation>Was wäre, wenn</translation>
    </message>
    <message>
        <source>What is amiss</source>
        <translation>Was nicht stimmt</translation>
    </message>
    <message>
        <source>What is in conflict</source>
        <translation>Was im Konflikt steht</translation>
    </message>
    <message>
        <source>What is wrong</source>
        <translation>Was nicht stimmt</translation>
    </message>
    <message>
        <source>What it heated before stays as it was. From that day on it is not planned with, and what stands there is reckoned without it.</source>
        <translation>Was sie vorher geheizt hat, bleibt, wie es war. Von diesem Tag an wird nicht mehr mit ihr geplant, und was dort steht, wird ohne sie gerechnet.</translation>
    </message>
    <message>
        <source>What it says</source>
        <translation>Was er sagt</translation>
    </message>
    <message>
        <source>What stands there</source>
        <translation>Was dort steht</translation>
    </message>
    <message>
        <source>What stood there is kept beside it as %1.</source>
        <translation>Was dort stand, bleibt daneben als %1 erhalten.</translation>
    </message>
    <message>
        <source>What the colours of the map mean</source>
        <translation>Was die Farben des Plans bedeuten</translation>
    </message>
    <message>
        <source>What the list holds</source>
        <translation>Was die Liste enthält</translation>
    </message>
    <message>
        <source>What the nursery consists of</source>
        <translation>Woraus der Betrieb besteht</translation>
    </message>
    <message>
        <source>What the stock plants gave</source>
        <translation>Was die Mutterpflanzen gaben</translation>
    </message>
    <message>
        <source>What there is</source>
        <translation>Was es gibt</translation>
    </message>
    <message>
        <source>What there is to do</source>
        <translation>Was zu tun ist</translation>
    </message>
    <message>
        <source>What these weeks take</source>
        <translation>Was diese Wochen brauchen</translation>
    </message>
    <message>
        <source>What to change next year, and on what evidence</source>
        <translation>Was nächstes Jahr zu ändern ist, und aufgrund wovon</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Was zu tun ist</translation>
    </message>
    <message>
        <source>What to do meanwhile</source>
        <translation>Was inzwischen zu tun ist</translation>
    </message>
    <message>
        <source>What to take, prepare and mind</source>
        <translation>Was zu schneiden, vorzubereiten und zu beachten ist</translation>
    </message>
    <message>
        <source>What was done</source>
        <translation>Was getan wurde</translation>
    </message>
    <message>
        <source>What was got</source>
        <translation>Was herauskam</translation>
    </message>
    <message>
        <source>What was wanted and made</source>
        <translation>Was gewünscht war und wurde</translation>
    </message>
    <message>
        <source>What you find with it comes home with File &gt; Bring a round home from a copy: root checks, losses, weanings and pottings on. Whatever else is done in the copy stays there, so do your planning here.</source>
        <translation>Was Sie mit ihr finden, kommt mit Datei &gt; Rundgang aus einer Kopie heimbringen heim: Kontrollen, Verluste, Abhärten und Topfen. Was sonst in der Kopie getan wird, bleibt dort; planen Sie also hier.</translation>
    </message>
    <message>
        <source>What you typed is not in the book. What is to become of it?</source>
        <translation>Was Sie eingegeben haben, steht nicht im Buch. Was soll damit werden?</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>Where and why</source>
        <translation>Wo und warum</translation>
    </message>
    <message>
        <source>Where it stands</source>
        <translation>Wo sie steht</translation>
    </message>
    <message>
        <source>Where the root zone left the range</source>
        <translation>Wo der Wurzelraum den Bereich verließ</translation>
    </message>
    <message>
        <source>Where they go afterwards %1 stands when they would come.</source>
        <translation>Wo sie danach hinkommen, steht dann noch %1.</translation>
    </message>
    <message>
        <source>Which are moved, such as 1-4, 7</source>
        <translation>Welche umziehen, etwa 1-4, 7</translation>
    </message>
    <message>
        <source>Which trial to keep</source>
        <translation>Welchen Versuch behalten</translation>
    </message>
    <message>
        <source>Who</source>
        <translation>Wer</translation>
    </message>
    <message>
        <source>Who did what when</source>
        <translation>Wer wann was getan hat</translation>
    </message>
    <message>
        <source>Whose cuttings</source>
        <translation>Wessen Stecklinge</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Why it is thrown away</source>
        <translation>Warum sie weggeworfen wird</translation>
    </message>
    <message>
        <source>Wipe off sap, then disinfect between stock plants and at each batch, for the contact time on the label.</source>
        <translation>Saft abwischen, dann zwischen Mutterpflanzen und bei jeder Partie desinfizieren, mit der Einwirkzeit des Etiketts.</translation>
    </message>
    <message>
        <source>Wood</source>
        <translation>Holz</translation>
    </message>
    <message>
        <source>Wood of flush %1</source>
        <translation>Holz des Austriebs %1</translation>
    </message>
    <message>
        <source>Wood, season, cuttings from a plant</source>
        <translation>Holz, Zeit, Stecklinge je Pflanze</translation>
    </message>
    <message>
        <source>Write down</source>
        <translation>Eintragen</translation>
    </message>
    <message>
        <source>Write it down once more if it is so.</source>
        <translation>Tragen Sie es noch einmal ein, wenn es so ist.</translation>
    </message>
    <message>
        <source>Wrong and left out: %1 of %2 lines.</source>
        <translation>Fehlerhaft und ausgelassen: %1 von %2 Zeilen.</translation>
    </message>
    <message>
        <source>Your changes are kept, but today's backup could not be made: %1. It is tried again with tomorrow's first change.</source>
        <translation>Ihre Änderungen sind aufbewahrt, aber die heutige Sicherung ging nicht: %1. Mit der ersten Änderung von morgen wird es wieder versucht.</translation>
    </message>
    <message>
        <source>Zone %1</source>
        <translation>Zone %1</translation>
    </message>
    <message>
        <source>Zone %1 is cut to what is left of its bench.</source>
        <translation>Zone %1 wird auf den Rest ihres Tisches gekürzt.</translation>
    </message>
    <message>
        <source>Zone %1 is taken away.</source>
        <translation>Zone %1 fällt weg.</translation>
    </message>
    <message>
        <source>Zone %1: %2 slot blocked; row %3, column %4 is %5</source>
        <translation>Zone %1: %2 Stellplatz gesperrt; Reihe %3, Spalte %4 ist %5</translation>
    </message>
    <message>
        <source>Zone %1: %2 slots blocked; row %3, column %4 is %5</source>
        <translation>Zone %1: %2 Stellplätze gesperrt; Reihe %3, Spalte %4 ist %5</translation>
    </message>
    <message>
        <source>Zone %1: rows %2 to %3, columns %4 to %5</source>
        <translation>Zone %1: Reihen %2 bis %3, Spalten %4 bis %5</translation>
    </message>
    <message>
        <source>Zone or house</source>
        <translation>Zone oder Haus</translation>
    </message>
    <message>
        <source>Zoom &amp;in</source>
        <translation>&amp;Vergrößern</translation>
    </message>
    <message>
        <source>Zoom &amp;out</source>
        <translation>Ver&amp;kleinern</translation>
    </message>
    <message>
        <source>Zoom in</source>
        <translation>Vergrößern</translation>
    </message>
    <message>
        <source>Zoom out</source>
        <translation>Verkleinern</translation>
    </message>
    <message>
        <source>a batch</source>
        <translation>eine Partie</translation>
    </message>
    <message>
        <source>a blocked slot is named twice</source>
        <translation>ein gesperrter Stellplatz ist zweimal genannt</translation>
    </message>
    <message>
        <source>a blocked slot lies outside it</source>
        <translation>ein gesperrter Stellplatz liegt außerhalb</translation>
    </message>
    <message>
        <source>a book has one</source>
        <translation>ein Buch hat eine</translation>
    </message>
    <message>
        <source>a book has one, number 1</source>
        <translation>ein Buch hat einen, Nummer 1</translation>
    </message>
    <message>
        <source>a botanical or common name</source>
        <translation>ein botanischer oder üblicher Name</translation>
    </message>
    <message>
        <source>a character that is not UTF-8</source>
        <translation>ein Zeichen, das kein UTF-8 ist</translation>
    </message>
    <message>
        <source>a component of the medium has no name</source>
        <translation>ein Bestandteil des Substrats hat keinen Namen</translation>
    </message>
    <message>
        <source>a container takes no cutting</source>
        <translation>ein Gefäß fasst keinen Steckling</translation>
    </message>
    <message>
        <source>a control character</source>
        <translation>ein Steuerzeichen</translation>
    </message>
    <message>
        <source>a cost is below 0</source>
        <translation>Kosten liegen unter 0</translation>
    </message>
    <message>
        <source>a count is below 0</source>
        <translation>eine Zahl liegt unter 0</translation>
    </message>
    <message>
        <source>a day outside the years 1 to 9999</source>
        <translation>ein Tag außerhalb der Jahre 1 bis 9999</translation>
    </message>
    <message>
        <source>a day that no year has</source>
        <translation>ein Tag, den kein Jahr hat</translation>
    </message>
    <message>
        <source>a flush yields 0 cuttings a plant or more, and grows again after a day or more</source>
        <translation>ein Austrieb gibt 0 oder mehr Stecklinge je Pflanze und wächst nach einem Tag oder mehr nach</translation>
    </message>
    <message>
        <source>a holiday: nobody strikes</source>
        <translation>ein Feiertag: niemand steckt</translation>
    </message>
    <message>
        <source>a humidity that is not from 0 to 100 %</source>
        <translation>eine Luftfeuchte, die nicht zwischen 0 und 100 % liegt</translation>
    </message>
    <message>
        <source>a kilowatt-hour</source>
        <translation>je Kilowattstunde</translation>
    </message>
    <message>
        <source>a line before is of another taxon</source>
        <translation>eine frühere Zeile hat eine andere Art/Sorte</translation>
    </message>
    <message>
        <source>a month of readings must begin on its first day</source>
        <translation>ein Monat von Messwerten muss am Monatsersten beginnen</translation>
    </message>
    <message>
        <source>a new stock</source>
        <translation>eine neue Mutterpflanze</translation>
    </message>
    <message>
        <source>a new target</source>
        <translation>ein neues Ziel</translation>
    </message>
    <message>
        <source>a number beyond %1</source>
        <translation>eine Zahl jenseits von %1</translation>
    </message>
    <message>
        <source>a pasted list</source>
        <translation>eine eingefügte Liste</translation>
    </message>
    <message>
        <source>a place</source>
        <translation>ein Ort</translation>
    </message>
    <message>
        <source>a place for it never pays while “One is worth” of target %1 is 0</source>
        <translation>ein Platz dafür lohnt sich nie, solange „Eine ist wert“ des Ziels %1 auf 0 steht</translation>
    </message>
    <message>
        <source>a plan is shown that is not accepted yet; accept it or close it first</source>
        <translation>gezeigt wird ein Plan, der noch nicht angenommen ist; nehmen Sie ihn an oder schließen Sie ihn</translation>
    </message>
    <message>
        <source>a plant's worth is below 0</source>
        <translation>der Wert einer Pflanze liegt unter 0</translation>
    </message>
    <message>
        <source>a recipe is for it</source>
        <translation>ein Rezept gilt dafür</translation>
    </message>
    <message>
        <source>a run from %1 to %2 leaves the days %3 to %4</source>
        <translation>ein Lauf von %1 bis %2 verlässt die Tage %3 bis %4</translation>
    </message>
    <message>
        <source>a run of its mat ends before it begins</source>
        <translation>ein Lauf der Heizmatte endet vor seinem Beginn</translation>
    </message>
    <message>
        <source>a set-point of %1; expected 0 to 45 °C</source>
        <translation>ein Sollwert von %1; erwartet 0 bis 45 °C</translation>
    </message>
    <message>
        <source>a setting holds a semicolon</source>
        <translation>eine Einstellung enthält ein Semikolon</translation>
    </message>
    <message>
        <source>a side of %1 mm; expected half a metre to a kilometre</source>
        <translation>eine Seite von %1 mm; erwartet ein halber Meter bis ein Kilometer</translation>
    </message>
    <message>
        <source>a slot of %1 mm; expected 20 to 2000 mm</source>
        <translation>ein Stellplatz von %1 mm; erwartet 20 bis 2000 mm</translation>
    </message>
    <message>
        <source>a stay that begins on %1 can't end on %2</source>
        <translation>was am %1 beginnt, kann nicht am %2 enden</translation>
    </message>
    <message>
        <source>a stay without a container</source>
        <translation>ein Stand ohne Gefäß</translation>
    </message>
    <message>
        <source>a taxon</source>
        <translation>eine Art/Sorte</translation>
    </message>
    <message>
        <source>a taxon by any of its names, how many plants, by which date; worth, wood, a name and a note where you have them.</source>
        <translation>eine Art oder Sorte mit einem ihrer Namen, wie viele Pflanzen, bis zu welchem Tag; Wert, Holz, Name und Notiz, soweit vorhanden.</translation>
    </message>
    <message>
        <source>a taxon, its wood, and figures of your own under their names, such as root_zone_ideal_c or take_percent; the rest stays as the built-in recipe has it.</source>
        <translation>eine Art oder Sorte, ihr Holz und eigene Zahlen unter ihren Namen, etwa root_zone_ideal_c oder take_percent; das Übrige bleibt wie im eingebauten Rezept.</translation>
    </message>
    <message>
        <source>a taxon, its wood, the day of striking, how many cuttings, how many plants came of them, the day of potting on; the stock and the hormone where you have them.</source>
        <translation>eine Art oder Sorte, ihr Holz, der Stecktag, wie viele Stecklinge, wie viele Pflanzen daraus wurden, der Topftag; Mutterpflanzen und Bewurzelungshormon, soweit vorhanden.</translation>
    </message>
    <message>
        <source>a taxon, the stock's name, how many plants; for each flush its wood, the days from and to which it is cut (05-10), cuttings a plant and days to regrow.</source>
        <translation>eine Art oder Sorte, der Name der Mutterpflanzen, wie viele Pflanzen; für jeden Austrieb das Holz, von wann bis wann geschnitten wird (05-10), Stecklinge je Pflanze und Tage zum Nachwachsen.</translation>
    </message>
    <message>
        <source>a temperature that is not from -60 to 100 °C</source>
        <translation>eine Temperatur, die nicht zwischen -60 und 100 °C liegt</translation>
    </message>
    <message>
        <source>a zone</source>
        <translation>eine Zone</translation>
    </message>
    <message>
        <source>about %1</source>
        <translation>etwa %1</translation>
    </message>
    <message>
        <source>about %1 % are rooted, %2 of %3 in the last checks</source>
        <translation>etwa %1 % sind bewurzelt, %2 von %3 bei den letzten Kontrollen</translation>
    </message>
    <message>
        <source>about %1 % are rooted, %2 of %3 in the last checks; its rooting time is over</source>
        <translation>etwa %1 % sind bewurzelt, %2 von %3 bei den letzten Kontrollen; die Zeit zum Wurzeln ist um</translation>
    </message>
    <message>
        <source>about %1 % of those alive, nine times in ten %2 to %3 %; dots are checks</source>
        <translation>etwa %1 % der lebenden, in neun von zehn Fällen %2 bis %3 %; Punkte sind Kontrollen</translation>
    </message>
    <message>
        <source>about %1, likely %2 to %3</source>
        <translation>etwa %1, wahrscheinlich %2 bis %3</translation>
    </message>
    <message>
        <source>about %1, nine times in ten %2 to %3; %4 can be counted on</source>
        <translation>etwa %1, in neun von zehn Fällen %2 bis %3; auf %4 ist Verlass</translation>
    </message>
    <message>
        <source>above</source>
        <translation>darüber</translation>
    </message>
    <message>
        <source>add the pots and trays that you strike in</source>
        <translation>die Töpfe und Platten eingeben, in die Sie stecken</translation>
    </message>
    <message>
        <source>air</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>air %1</source>
        <translation>Luft %1</translation>
    </message>
    <message>
        <source>all %1 were potted on by %2, wanted by %3</source>
        <translation>alle %1 waren bis %2 getopft, gewünscht bis %3</translation>
    </message>
    <message>
        <source>all years</source>
        <translation>alle Jahre</translation>
    </message>
    <message>
        <source>an unknown word</source>
        <translation>ein unbekanntes Wort</translation>
    </message>
    <message>
        <source>and %1 before</source>
        <translation>und %1 davor</translation>
    </message>
    <message>
        <source>and &amp;columns</source>
        <translation>und &amp;Spalten</translation>
    </message>
    <message>
        <source>another number of cuttings</source>
        <translation>eine andere Zahl von Stecklingen</translation>
    </message>
    <message>
        <source>another program is writing to it; try again (%1)</source>
        <translation>ein anderes Programm schreibt gerade hinein; versuchen Sie es noch einmal (%1)</translation>
    </message>
    <message>
        <source>any that meets the date</source>
        <translation>jedes, das den Termin hält</translation>
    </message>
    <message>
        <source>as it fits</source>
        <translation>wie es passt</translation>
    </message>
    <message>
        <source>as its weekday says</source>
        <translation>wie der Wochentag es sagt</translation>
    </message>
    <message>
        <source>at %1 now</source>
        <translation>jetzt auf %1</translation>
    </message>
    <message>
        <source>at its ideal heat</source>
        <translation>bei idealer Wärme</translation>
    </message>
    <message>
        <source>at most %1 % from the best possible</source>
        <translation>höchstens %1 % vom bestmöglichen entfernt</translation>
    </message>
    <message>
        <source>bag</source>
        <translation>Folienbeutel</translation>
    </message>
    <message>
        <source>basal</source>
        <translation>Grundtrieb</translation>
    </message>
    <message>
        <source>batch</source>
        <translation>Partie</translation>
    </message>
    <message>
        <source>batch %1 is for it</source>
        <translation>Partie %1 ist dafür</translation>
    </message>
    <message>
        <source>batch %1 is of it</source>
        <translation>Partie %1 ist davon</translation>
    </message>
    <message>
        <source>batch %1 was taken from it</source>
        <translation>Partie %1 wurde davon geschnitten</translation>
    </message>
    <message>
        <source>batches</source>
        <translation>Partien</translation>
    </message>
    <message>
        <source>below</source>
        <translation>darunter</translation>
    </message>
    <message>
        <source>bench</source>
        <translation>Tisch</translation>
    </message>
    <message>
        <source>benches</source>
        <translation>Tische</translation>
    </message>
    <message>
        <source>beside what stands in the house already there is no room for its %1: it would take %2</source>
        <translation>neben dem, was schon im Haus steht, ist für %1 kein Platz: nötig wären %2</translation>
    </message>
    <message>
        <source>blocked</source>
        <translation>gesperrt</translation>
    </message>
    <message>
        <source>by</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>by her own take of %1 to %2 % (of the next batch, 8 times in 10; %3 so far) %4 cuttings would have been struck for %5 plants</source>
        <translation>nach der eigenen Ausbeute von %1 bis %2 % (der nächsten Partie, 8-mal in 10; bisher %3) wären %4 Stecklinge für %5 Pflanzen gesteckt worden</translation>
    </message>
    <message>
        <source>by set-points</source>
        <translation>nach Sollwerten</translation>
    </message>
    <message>
        <source>callused</source>
        <translation>kallusiert</translation>
    </message>
    <message>
        <source>cannot be opened: %1, expected a file that can be read</source>
        <translation>lässt sich nicht öffnen: %1, erwartet eine lesbare Datei</translation>
    </message>
    <message>
        <source>cannot be placed as pinned together with the other pinned and held batches</source>
        <translation>lässt sich nicht so festgesetzt unterbringen, zusammen mit den anderen festgesetzten und stehenden Partien</translation>
    </message>
    <message>
        <source>cannot be placed as pinned: no zone and day suit it</source>
        <translation>lässt sich nicht so festgesetzt unterbringen: keine Zone und kein Tag passen</translation>
    </message>
    <message>
        <source>cannot be read: %1, expected a file that can be read</source>
        <translation>lässt sich nicht lesen: %1, erwartet eine lesbare Datei</translation>
    </message>
    <message>
        <source>cannot be written: %1, expected room for a file there</source>
        <translation>lässt sich nicht schreiben: %1, erwartet Platz für eine Datei</translation>
    </message>
    <message>
        <source>cells apart by %1, %2, %3; %4</source>
        <translation>Zellen durch %1 getrennt, %2, %3; %4</translation>
    </message>
    <message>
        <source>check</source>
        <translation>kontrollieren</translation>
    </message>
    <message>
        <source>column %1</source>
        <translation>Spalte %1</translation>
    </message>
    <message>
        <source>columns %1 to %2</source>
        <translation>Spalten %1 bis %2</translation>
    </message>
    <message>
        <source>comma</source>
        <translation>Komma</translation>
    </message>
    <message>
        <source>comma: 21,5</source>
        <translation>Komma: 21,5</translation>
    </message>
    <message>
        <source>container %1</source>
        <translation>Gefäß %1</translation>
    </message>
    <message>
        <source>container %1 is named twice</source>
        <translation>Gefäß %1 ist zweimal genannt</translation>
    </message>
    <message>
        <source>container type</source>
        <translation>Gefäßart</translation>
    </message>
    <message>
        <source>container types</source>
        <translation>Gefäßarten</translation>
    </message>
    <message>
        <source>containers %1</source>
        <translation>Gefäße %1</translation>
    </message>
    <message>
        <source>containers %1 of %2</source>
        <translation>Gefäße %1 von %2</translation>
    </message>
    <message>
        <source>containers worth a look, in the order of the walk</source>
        <translation>Gefäße, die einen Blick lohnen, in der Folge des Gangs</translation>
    </message>
    <message>
        <source>cost, %1</source>
        <translation>Kosten, %1</translation>
    </message>
    <message>
        <source>covered</source>
        <translation>gedeckt</translation>
    </message>
    <message>
        <source>covered, by %1</source>
        <translation>gedeckt, bis %1</translation>
    </message>
    <message>
        <source>cuttings</source>
        <translation>Stecklinge</translation>
    </message>
    <message>
        <source>cuttings a plant</source>
        <translation>Stecklinge je Pflanze</translation>
    </message>
    <message>
        <source>cuttings of it were lost on %1 in both books: %2 here, %3 in the copy</source>
        <translation>am %1 gingen in beiden Büchern Stecklinge davon verloren: hier %2, in der Kopie %3</translation>
    </message>
    <message>
        <source>cuttings struck</source>
        <translation>gesteckte Stecklinge</translation>
    </message>
    <message>
        <source>damaged</source>
        <translation>beschädigt</translation>
    </message>
    <message>
        <source>date</source>
        <translation>Termin</translation>
    </message>
    <message>
        <source>dates day first</source>
        <translation>Daten mit dem Tag zuerst</translation>
    </message>
    <message>
        <source>dates month first</source>
        <translation>Daten mit dem Monat zuerst</translation>
    </message>
    <message>
        <source>dates year first</source>
        <translation>Daten mit dem Jahr zuerst</translation>
    </message>
    <message>
        <source>day %1</source>
        <translation>Tag %1</translation>
    </message>
    <message>
        <source>day first: 1.3.2027</source>
        <translation>Tag zuerst: 1.3.2027</translation>
    </message>
    <message>
        <source>days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>days %1 to %2</source>
        <translation>Tage %1 bis %2</translation>
    </message>
    <message>
        <source>days in a row</source>
        <translation>Tage in Folge</translation>
    </message>
    <message>
        <source>days to root must be 1 to 400, the fewest first</source>
        <translation>Tage zum Wurzeln müssen 1 bis 400 sein, die wenigsten zuerst</translation>
    </message>
    <message>
        <source>days until it is ready</source>
        <translation>Tage, bis sie fertig ist</translation>
    </message>
    <message>
        <source>decimal comma</source>
        <translation>Dezimalkomma</translation>
    </message>
    <message>
        <source>decimal point</source>
        <translation>Dezimalpunkt</translation>
    </message>
    <message>
        <source>each of %1 batches: %2</source>
        <translation>jede von %1 Partien: %2</translation>
    </message>
    <message>
        <source>empty</source>
        <translation>leer</translation>
    </message>
    <message>
        <source>empty: the one that is kept</source>
        <translation>leer: das aufbewahrte</translation>
    </message>
    <message>
        <source>ends %1 late, which counts as %2: %3</source>
        <translation>endet %1 zu spät, was als %2 zählt: %3</translation>
    </message>
    <message>
        <source>even alone in the house it would cost %1, more than its value of %2</source>
        <translation>selbst allein im Haus kostete sie %1, mehr als ihr Wert von %2</translation>
    </message>
    <message>
        <source>even alone in the house it would not end sooner</source>
        <translation>selbst allein im Haus endete es nicht früher</translation>
    </message>
    <message>
        <source>even struck on %1 they are potted on by %2 only, %3 days late</source>
        <translation>selbst am %1 gesteckt wird erst am %2 getopft, %3 Tage zu spät</translation>
    </message>
    <message>
        <source>even struck on %1 they are potted on by %2 only, 1 day late</source>
        <translation>selbst am %1 gesteckt wird erst am %2 getopft, 1 Tag zu spät</translation>
    </message>
    <message>
        <source>evergreen hardwood</source>
        <translation>ausgereift, immergrün</translation>
    </message>
    <message>
        <source>every %1 zone that could stand at %2 stands at another set-point when it is struck on %3, or so does what it needs afterwards</source>
        <translation>jeder Bereich (%1), der auf %2 stehen könnte, steht auf einem anderen Sollwert, wenn am %3 gesteckt wird, oder der danach nötige tut es</translation>
    </message>
    <message>
        <source>fewer than %1 batches have ended</source>
        <translation>weniger als %1 Partien sind beendet</translation>
    </message>
    <message>
        <source>fewer than 0 plants</source>
        <translation>weniger als 0 Pflanzen</translation>
    </message>
    <message>
        <source>fog</source>
        <translation>Feinnebel</translation>
    </message>
    <message>
        <source>found %1 by %2 labels; expected 1 to 1000 each way</source>
        <translation>%1 mal %2 Etiketten gefunden; erwartet 1 bis 1000 in jeder Richtung</translation>
    </message>
    <message>
        <source>found %1 days on which something may stand and %2 zones, expected at most 20000000 days of zones</source>
        <translation>%1 Tage, an denen etwas stehen kann, und %2 Zonen gefunden; erwartet höchstens 20000000 Zonentage</translation>
    </message>
    <message>
        <source>found %1 to %2 days to root, expected the shorter time first and none below 1 day</source>
        <translation>gefunden %1 bis %2 Tage zum Wurzeln, erwartet die kürzere Zeit zuerst und keine unter 1 Tag</translation>
    </message>
    <message>
        <source>found %1, expected a day up to %2</source>
        <translation>gefunden %1, erwartet ein Tag bis %2</translation>
    </message>
    <message>
        <source>found %1, expected a temperature from -60 to 100 °C</source>
        <translation>%1 gefunden, erwartet eine Temperatur von -60 bis 100 °C</translation>
    </message>
    <message>
        <source>found %1; expected 0 to %2</source>
        <translation>%1 gefunden; erwartet 0 bis %2</translation>
    </message>
    <message>
        <source>found '%1', expected a date</source>
        <translation>gefunden „%1“, erwartet ein Datum</translation>
    </message>
    <message>
        <source>found '%1', expected a day of the flush's season, such as 05-10</source>
        <translation>gefunden „%1“, erwartet ein Tag aus der Zeit des Austriebs, etwa 05-10</translation>
    </message>
    <message>
        <source>found '%1', expected a number of plants, 1 to 1000000</source>
        <translation>gefunden „%1“, erwartet eine Zahl von Pflanzen, 1 bis 1000000</translation>
    </message>
    <message>
        <source>found '%1', expected a temperature</source>
        <translation>„%1“ gefunden, erwartet eine Temperatur</translation>
    </message>
    <message>
        <source>found '%1', expected a time</source>
        <translation>„%1“ gefunden, erwartet eine Zeit</translation>
    </message>
    <message>
        <source>found '%1', expected a whole number from %2 on</source>
        <translation>gefunden „%1“, erwartet eine ganze Zahl ab %2</translation>
    </message>
    <message>
        <source>found '%1', expected a wood such as softwood</source>
        <translation>gefunden „%1“, erwartet ein Holz wie softwood (krautig)</translation>
    </message>
    <message>
        <source>found '%1', expected row/column such as 1/3, with semicolons between several</source>
        <translation>„%1“ gefunden, erwartet Reihe/Spalte wie 1/3, mehrere mit Semikolon getrennt</translation>
    </message>
    <message>
        <source>found '%1', expected temperatures with semicolons between them</source>
        <translation>„%1“ gefunden, erwartet Temperaturen mit Semikolon dazwischen</translation>
    </message>
    <message>
        <source>found '%1', expected two numbers such as 70x36</source>
        <translation>„%1“ gefunden, erwartet zwei Zahlen wie 70x36</translation>
    </message>
    <message>
        <source>found '%1', expected what a plant is worth</source>
        <translation>gefunden „%1“, erwartet der Wert einer Pflanze</translation>
    </message>
    <message>
        <source>found a database in the encoding %1, expected UTF8</source>
        <translation>Datenbank in der Kodierung %1 gefunden, erwartet UTF8</translation>
    </message>
    <message>
        <source>found a folder, expected a house book</source>
        <translation>einen Ordner gefunden, erwartet ein Hausbuch</translation>
    </message>
    <message>
        <source>found a root zone of %1 and a base of %2, expected a base below the root zone</source>
        <translation>gefunden ein Wurzelraum von %1 und eine Basis von %2, erwartet eine Basis unter dem Wurzelraum</translation>
    </message>
    <message>
        <source>found a take of %1 to %2 %, expected two figures from 0 to 100, the lower first</source>
        <translation>gefunden eine Ausbeute von %1 bis %2 %, erwartet zwei Zahlen von 0 bis 100, die kleinere zuerst</translation>
    </message>
    <message>
        <source>found an empty file, expected a first line that names the columns %1</source>
        <translation>leere Datei gefunden, erwartet eine erste Zeile, die die Spalten %1 nennt</translation>
    </message>
    <message>
        <source>found more than 1 GiB, expected at most that</source>
        <translation>mehr als 1 GiB gefunden, erwartet höchstens so viel</translation>
    </message>
    <message>
        <source>found no column '%1', expected a name of the first line or a number from 1 to %2</source>
        <translation>keine Spalte „%1“ gefunden, erwartet ein Name der ersten Zeile oder eine Zahl von 1 bis %2</translation>
    </message>
    <message>
        <source>found no column with temperatures, expected one beside the times</source>
        <translation>keine Spalte mit Temperaturen gefunden, erwartet eine neben den Zeiten</translation>
    </message>
    <message>
        <source>found no cuttings, expected a line for each interval</source>
        <translation>keine Stecklinge gefunden, erwartet eine Zeile für jede Zeitspanne</translation>
    </message>
    <message>
        <source>found no line with a time and a temperature, expected a logger's readings</source>
        <translation>keine Zeile mit Zeit und Temperatur gefunden, erwartet die Messwerte eines Loggers</translation>
    </message>
    <message>
        <source>found no place for it, expected one where it roots</source>
        <translation>kein Platz gefunden, erwartet einer, wo sie wurzelt</translation>
    </message>
    <message>
        <source>found no readings, expected a line for each reading</source>
        <translation>keine Messwerte gefunden, erwartet eine Zeile für jeden</translation>
    </message>
    <message>
        <source>free</source>
        <translation>frei</translation>
    </message>
    <message>
        <source>from</source>
        <translation>von</translation>
    </message>
    <message>
        <source>from %1 %2 is too cold for it; plan again to have the mat set</source>
        <translation>ab %1 ist %2 dafür zu kalt; planen Sie neu, damit die Heizmatte gestellt wird</translation>
    </message>
    <message>
        <source>from %1 %2 is too warm for it; plan again to have the mat set</source>
        <translation>ab %1 ist %2 dafür zu warm; planen Sie neu, damit die Heizmatte gestellt wird</translation>
    </message>
    <message>
        <source>from a plant</source>
        <translation>je Pflanze</translation>
    </message>
    <message>
        <source>full until %1</source>
        <translation>voll bis %1</translation>
    </message>
    <message>
        <source>fullest %1: %2</source>
        <translation>am vollsten %1: %2</translation>
    </message>
    <message>
        <source>glass</source>
        <translation>Glas</translation>
    </message>
    <message>
        <source>grade %1; expected 0 to 5</source>
        <translation>Note %1; erwartet 0 bis 5</translation>
    </message>
    <message>
        <source>growing on</source>
        <translation>Weiterkultur</translation>
    </message>
    <message>
        <source>grown on from %1 as its recipe says</source>
        <translation>seit %1 nach ihrem Rezept weiterkultiviert</translation>
    </message>
    <message>
        <source>grows again in</source>
        <translation>wächst nach in</translation>
    </message>
    <message>
        <source>half a day</source>
        <translation>ein halber Tag</translation>
    </message>
    <message>
        <source>hand day</source>
        <translation>Arbeitskraft am</translation>
    </message>
    <message>
        <source>hands are left for %1 cutting in those days</source>
        <translation>in diesen Tagen ist noch Arbeitskraft für %1 Steckling übrig</translation>
    </message>
    <message>
        <source>hands are left for %1 cuttings in those days</source>
        <translation>in diesen Tagen ist noch Arbeitskraft für %1 Stecklinge übrig</translation>
    </message>
    <message>
        <source>hands are short by %1 on %2, the best day that has slots for it</source>
        <translation>am besten Tag mit freien Stellplätzen (%2) fehlt Arbeitskraft für %1</translation>
    </message>
    <message>
        <source>hands are short by %1 on %2, when they lack least</source>
        <translation>am günstigsten Tag (%2) fehlt Arbeitskraft für %1</translation>
    </message>
    <message>
        <source>hands are short by %1 on %2, which would be better</source>
        <translation>am besseren Tag (%2) fehlt Arbeitskraft für %1</translation>
    </message>
    <message>
        <source>hands are short by %1 on its best strike day, %2: %3 to strike, %4 can be struck</source>
        <translation>Arbeitskraft fehlt für %1 am besten Stecktag (%2): %3 zu stecken, %4 können gesteckt werden</translation>
    </message>
    <message>
        <source>hands are short on %1</source>
        <translation>am %1 fehlt Arbeitskraft</translation>
    </message>
    <message>
        <source>hands for fewer than 0 cuttings</source>
        <translation>Arbeitskraft für weniger als 0 Stecklinge</translation>
    </message>
    <message>
        <source>hands for fewer than 0 cuttings a day</source>
        <translation>Arbeitskraft für weniger als 0 Stecklinge am Tag</translation>
    </message>
    <message>
        <source>hardwood</source>
        <translation>Steckholz</translation>
    </message>
    <message>
        <source>health</source>
        <translation>Gesundheit</translation>
    </message>
    <message>
        <source>health: %1</source>
        <translation>Gesundheit: %1</translation>
    </message>
    <message>
        <source>heat</source>
        <translation>Wärme</translation>
    </message>
    <message>
        <source>here %1; from others %2</source>
        <translation>hier %1; von anderen %2</translation>
    </message>
    <message>
        <source>holiday</source>
        <translation>Feiertag</translation>
    </message>
    <message>
        <source>hormone</source>
        <translation>Hormon</translation>
    </message>
    <message>
        <source>hormone for %1: %2</source>
        <translation>Hormon für %1: %2</translation>
    </message>
    <message>
        <source>house</source>
        <translation>Haus</translation>
    </message>
    <message>
        <source>houses</source>
        <translation>Häuser</translation>
    </message>
    <message>
        <source>houses %1 K</source>
        <translation>Häuser %1 K</translation>
    </message>
    <message>
        <source>humidity in %1</source>
        <translation>Feuchte in %1</translation>
    </message>
    <message>
        <source>in fog</source>
        <translation>im Feinnebel</translation>
    </message>
    <message>
        <source>in time it would cost %1 more</source>
        <translation>rechtzeitig kostete es %1 mehr</translation>
    </message>
    <message>
        <source>is being looked at</source>
        <translation>wird angesehen</translation>
    </message>
    <message>
        <source>is off its ideal heat, which counts as %1: %2</source>
        <translation>steht neben der idealen Wärme, was als %1 zählt: %2</translation>
    </message>
    <message>
        <source>it can no longer be struck or stand as it was planned</source>
        <translation>wie geplant lässt sie sich nicht mehr stecken oder aufstellen</translation>
    </message>
    <message>
        <source>it can't be brought up to date: %1</source>
        <translation>es lässt sich nicht auf den neuen Stand bringen: %1</translation>
    </message>
    <message>
        <source>it can't be opened at all: %1</source>
        <translation>lässt sich überhaupt nicht öffnen: %1</translation>
    </message>
    <message>
        <source>it can't be opened: %1</source>
        <translation>lässt sich nicht öffnen: %1</translation>
    </message>
    <message>
        <source>it can't be put aside: %1</source>
        <translation>lässt sich nicht beiseitelegen: %1</translation>
    </message>
    <message>
        <source>it can't be read: %1</source>
        <translation>lässt sich nicht lesen: %1</translation>
    </message>
    <message>
        <source>it can't be read: you may not have the right to</source>
        <translation>lässt sich nicht lesen: vielleicht fehlt Ihnen das Recht dazu</translation>
    </message>
    <message>
        <source>it can't be written: %1</source>
        <translation>lässt sich nicht schreiben: %1</translation>
    </message>
    <message>
        <source>it can't stand there on %1: it is struck on %2</source>
        <translation>sie kann dort am %1 nicht stehen: gesteckt wird sie am %2</translation>
    </message>
    <message>
        <source>it can't: %1</source>
        <translation>es geht nicht: %1</translation>
    </message>
    <message>
        <source>it could not be kept: %1</source>
        <translation>konnte nicht gespeichert werden: %1</translation>
    </message>
    <message>
        <source>it covers %1 by %2 slots; expected 1 to 100 each way</source>
        <translation>bedeckt %1 mal %2 Stellplätze; erwartet je Richtung 1 bis 100</translation>
    </message>
    <message>
        <source>it does not begin with postgresql://</source>
        <translation>sie beginnt nicht mit postgresql://</translation>
    </message>
    <message>
        <source>it does not cover %1 by %2 slots</source>
        <translation>bedeckt nicht %1 mal %2 Stellplätze</translation>
    </message>
    <message>
        <source>it does not fit inside %1</source>
        <translation>passt nicht in %1</translation>
    </message>
    <message>
        <source>it does not follow from those before: %1</source>
        <translation>er folgt nicht aus den früheren: %1</translation>
    </message>
    <message>
        <source>it does not lead to what the book holds</source>
        <translation>es führt nicht zu dem, was im Buch steht</translation>
    </message>
    <message>
        <source>it does not tell of changes: %1</source>
        <translation>meldet keine Änderungen: %1</translation>
    </message>
    <message>
        <source>it has a setting that is not known, '%1'</source>
        <translation>sie hat eine unbekannte Einstellung, „%1“</translation>
    </message>
    <message>
        <source>it has been changed meanwhile, so this can't be done any more; look at it again</source>
        <translation>wurde inzwischen geändert, daher geht das nicht mehr; sehen Sie es noch einmal an</translation>
    </message>
    <message>
        <source>it has been struck already, on %1</source>
        <translation>ist schon gesteckt, am %1</translation>
    </message>
    <message>
        <source>it has been struck, so it can't be planned anew</source>
        <translation>ist gesteckt, kann also nicht neu geplant werden</translation>
    </message>
    <message>
        <source>it has been struck; discard it with a reason instead of removing it</source>
        <translation>ist gesteckt; verwerfen Sie sie mit einem Grund, statt sie zu entfernen</translation>
    </message>
    <message>
        <source>it has its weekday's hands already; choose another kind of day</source>
        <translation>er hat schon die Arbeitskraft seines Wochentags; wählen Sie eine andere Art von Tag</translation>
    </message>
    <message>
        <source>it has no components</source>
        <translation>hat keine Bestandteile</translation>
    </message>
    <message>
        <source>it has no container</source>
        <translation>hat kein Gefäß</translation>
    </message>
    <message>
        <source>it has no container %1</source>
        <translation>hat kein Gefäß %1</translation>
    </message>
    <message>
        <source>it has no mat to run</source>
        <translation>hat keine Heizmatte</translation>
    </message>
    <message>
        <source>it has no place on %1; say until when it is to stand</source>
        <translation>hat am %1 keinen Platz; sagen Sie, bis wann sie stehen soll</translation>
    </message>
    <message>
        <source>it has not been struck</source>
        <translation>ist nicht gesteckt</translation>
    </message>
    <message>
        <source>it holds no medium</source>
        <translation>fasst kein Substrat</translation>
    </message>
    <message>
        <source>it is %1 by %2; expected 1 to 2000 mm each way</source>
        <translation>misst %1 mal %2; erwartet 1 bis 2000 mm in jeder Richtung</translation>
    </message>
    <message>
        <source>it is %1 by %2; expected at least %3 by %4</source>
        <translation>misst %1 mal %2; erwartet mindestens %3 mal %4</translation>
    </message>
    <message>
        <source>it is a name of several: %1</source>
        <translation>ist ein Name von mehreren: %1</translation>
    </message>
    <message>
        <source>it is colder or warmer now where it was</source>
        <translation>am bisherigen Platz ist es jetzt kälter oder wärmer</translation>
    </message>
    <message>
        <source>it is not empty; a whole book can be imported into an empty one only</source>
        <translation>ist nicht leer; ein ganzes Buch lässt sich nur in ein leeres einlesen</translation>
    </message>
    <message>
        <source>it is not struck yet, so it can't be weaned</source>
        <translation>sie ist noch nicht gesteckt und kann daher nicht abgehärtet werden</translation>
    </message>
    <message>
        <source>it is pinned</source>
        <translation>fest vorgegeben</translation>
    </message>
    <message>
        <source>it is read-only (the file or its folder can't be written), so nothing can be changed in it</source>
        <translation>ist schreibgeschützt (in die Datei oder ihren Ordner darf nicht geschrieben werden), also lässt sich darin nichts ändern</translation>
    </message>
    <message>
        <source>it leaves the bench</source>
        <translation>ragt über den Tisch hinaus</translation>
    </message>
    <message>
        <source>it lies across zone %1</source>
        <translation>liegt über Zone %1</translation>
    </message>
    <message>
        <source>it must be of a zone or of a house</source>
        <translation>muss zu einer Zone oder einem Haus gehören</translation>
    </message>
    <message>
        <source>it names no cover</source>
        <translation>nennt keine Abdeckung</translation>
    </message>
    <message>
        <source>it names no database</source>
        <translation>sie nennt keine Datenbank</translation>
    </message>
    <message>
        <source>it needs a code</source>
        <translation>braucht einen Code</translation>
    </message>
    <message>
        <source>it needs a name</source>
        <translation>braucht einen Namen</translation>
    </message>
    <message>
        <source>it roots from %1 on; expected a day after</source>
        <translation>wurzelt ab %1; erwartet ein Tag danach</translation>
    </message>
    <message>
        <source>it stands across %1</source>
        <translation>steht über %1</translation>
    </message>
    <message>
        <source>it stands on a blocked slot of %1</source>
        <translation>steht auf einem gesperrten Stellplatz von %1</translation>
    </message>
    <message>
        <source>it stands on the same slot as container %1</source>
        <translation>steht auf demselben Stellplatz wie Gefäß %1</translation>
    </message>
    <message>
        <source>it stands there on those days already</source>
        <translation>steht an diesen Tagen schon dort</translation>
    </message>
    <message>
        <source>it stands twice in one stay</source>
        <translation>steht zweimal in einem Stand</translation>
    </message>
    <message>
        <source>it still has %1 in it; remove that first</source>
        <translation>enthält noch %1; entfernen Sie das zuerst</translation>
    </message>
    <message>
        <source>it still has stays, checks, pottings or losses</source>
        <translation>hat noch Stände, Kontrollen, Topfungen oder Ausfälle</translation>
    </message>
    <message>
        <source>it still has zone %1; remove that first</source>
        <translation>hat noch Zone %1; entfernen Sie diese zuerst</translation>
    </message>
    <message>
        <source>it takes %1 cuttings; expected 1 to 10000</source>
        <translation>fasst %1 Stecklinge; erwartet 1 bis 10000</translation>
    </message>
    <message>
        <source>it was looked at on %1 in both books: %2 here, %3 in the copy</source>
        <translation>am %1 wurde in beiden Büchern nachgesehen: hier %2, in der Kopie %3</translation>
    </message>
    <message>
        <source>it was not struck on %1, and its %2 is never right</source>
        <translation>sie wurde am %1 nicht gesteckt, und das Holz (%2) ist nie richtig</translation>
    </message>
    <message>
        <source>it was not struck on %1, and its %2 is right again from %3 on only</source>
        <translation>sie wurde am %1 nicht gesteckt, und das Holz (%2) ist erst ab %3 wieder richtig</translation>
    </message>
    <message>
        <source>it was not struck on %1, and would be ready on %2 now, %3 days after its target's date; give the target a later date</source>
        <translation>sie wurde am %1 nicht gesteckt und wäre jetzt am %2 fertig, %3 Tage nach dem Termin ihres Ziels; geben Sie dem Ziel einen späteren Termin</translation>
    </message>
    <message>
        <source>it was opened for reading only</source>
        <translation>nur zum Lesen geöffnet</translation>
    </message>
    <message>
        <source>it was potted on on %1 in both books: %2 here, %3 in the copy</source>
        <translation>am %1 wurde in beiden Büchern getopft: hier %2, in der Kopie %3</translation>
    </message>
    <message>
        <source>it was weaned on %1</source>
        <translation>wurde am %1 abgehärtet</translation>
    </message>
    <message>
        <source>it was weaned on %1 in the copy, but here: %2</source>
        <translation>in der Kopie wurde am %1 abgehärtet, aber hier: %2</translation>
    </message>
    <message>
        <source>it was written by a newer Warmbench (found version %1, expected at most %2); use that one</source>
        <translation>von einem neueren Warmbench geschrieben (Version %1 gefunden, erwartet höchstens %2); benutzen Sie dieses</translation>
    </message>
    <message>
        <source>it would be in two places on %1</source>
        <translation>stünde am %1 an zwei Orten</translation>
    </message>
    <message>
        <source>it would have a place if “One is worth” of target %1 were %2 in place of %3</source>
        <translation>einen Platz bekäme es, wenn „Eine ist wert“ des Ziels %1 auf %2 statt %3 stünde</translation>
    </message>
    <message>
        <source>it would leave no day for the stay before, which begins on %1</source>
        <translation>ließe dem Stand davor keinen Tag, der am %1 beginnt</translation>
    </message>
    <message>
        <source>it, or one before it, has been tampered with</source>
        <translation>an diesem oder einem früheren wurde etwas verändert</translation>
    </message>
    <message>
        <source>its %1 is right from %2 to %3 only</source>
        <translation>das Holz (%1) ist nur von %2 bis %3 richtig</translation>
    </message>
    <message>
        <source>its %1 need %2 in one zone, and the largest %3 zone has %4</source>
        <translation>%1 brauchen %2 in einer Zone, und die größte (%3) hat %4</translation>
    </message>
    <message>
        <source>its %1, number %2, is not in this book</source>
        <translation>was dazu gehört (%1, Nummer %2), steht nicht in diesem Buch</translation>
    </message>
    <message>
        <source>its containers are not numbered 1, 2, 3, ...</source>
        <translation>die Gefäße sind nicht 1, 2, 3, ... nummeriert</translation>
    </message>
    <message>
        <source>its first strike day, %1, lies beyond the horizon of %2</source>
        <translation>der erste Stecktag (%1) liegt hinter dem Horizont von %2</translation>
    </message>
    <message>
        <source>its host has no closing bracket</source>
        <translation>ihrem Rechnernamen fehlt die schließende Klammer</translation>
    </message>
    <message>
        <source>its host is not written right</source>
        <translation>ihr Rechnername ist nicht richtig geschrieben</translation>
    </message>
    <message>
        <source>its ideal heat is %1</source>
        <translation>ideal wären %1</translation>
    </message>
    <message>
        <source>its mat has no power</source>
        <translation>die Heizmatte hat keine Leistung</translation>
    </message>
    <message>
        <source>its mat has no set-point</source>
        <translation>die Heizmatte hat keinen Sollwert</translation>
    </message>
    <message>
        <source>its mat has run at %1 since %2, and the warmth of what stood there is reckoned from it; keep the mat, and say from which day on it is out of order</source>
        <translation>die Heizmatte läuft auf %1 seit %2, und die Wärme dessen, was dort stand, wird danach gerechnet; behalten Sie die Heizmatte und geben Sie an, ab welchem Tag sie außer Betrieb ist</translation>
    </message>
    <message>
        <source>its mat has run at %1 since %2; keep the mat and that set-point, as the warmth of what stood there is reckoned from it</source>
        <translation>die Heizmatte läuft auf %1 seit %2; behalten Sie Heizmatte und Sollwert, denn die Wärme dessen, was dort stand, wird danach gerechnet</translation>
    </message>
    <message>
        <source>its mat has runs; take them out first</source>
        <translation>die Heizmatte hat Läufe; nehmen Sie diese zuerst heraus</translation>
    </message>
    <message>
        <source>its mat has two set-points on %1</source>
        <translation>die Heizmatte hat am %1 zwei Sollwerte</translation>
    </message>
    <message>
        <source>its mat is out of order from %1 on</source>
        <translation>die Heizmatte ist ab %1 außer Betrieb</translation>
    </message>
    <message>
        <source>its mat's loss of heat is below 0</source>
        <translation>der Wärmeverlust der Heizmatte liegt unter 0</translation>
    </message>
    <message>
        <source>its mat's set-points do not rise</source>
        <translation>die Sollwerte der Heizmatte steigen nicht</translation>
    </message>
    <message>
        <source>its name ends in '%1'; expected png, svg or pdf</source>
        <translation>der Name endet auf „%1“; erwartet png, svg oder pdf</translation>
    </message>
    <message>
        <source>its name finds no room on a label of %1 by %2 mm; choose a larger one</source>
        <translation>der Name findet auf einem Etikett von %1 mal %2 mm keinen Platz; wählen Sie ein größeres</translation>
    </message>
    <message>
        <source>its password can't be kept, as this system has no key store that is open (%1); it is asked for again next time</source>
        <translation>das Passwort lässt sich nicht merken, weil dieses System keinen offenen Schlüsselspeicher hat (%1); beim nächsten Mal wird wieder danach gefragt</translation>
    </message>
    <message>
        <source>its place is given up on %1</source>
        <translation>der Platz wird am %1 aufgegeben</translation>
    </message>
    <message>
        <source>its place is given up on %1, but nobody weaned it</source>
        <translation>ihr Platz wird am %1 aufgegeben, aber niemand hat sie abgehärtet</translation>
    </message>
    <message>
        <source>its place was given up on %1; give it one first, or pot it on</source>
        <translation>ihr Platz wurde am %1 aufgegeben; zuerst einen Platz geben oder topfen</translation>
    </message>
    <message>
        <source>its port is no number</source>
        <translation>ihr Port ist keine Zahl</translation>
    </message>
    <message>
        <source>its port is not between 1 and 65535</source>
        <translation>ihr Port liegt nicht zwischen 1 und 65535</translation>
    </message>
    <message>
        <source>its readings can't be read</source>
        <translation>die Messwerte sind nicht lesbar</translation>
    </message>
    <message>
        <source>its readings stand twice</source>
        <translation>die Messwerte stehen zweimal da</translation>
    </message>
    <message>
        <source>its recipe does not name this cover</source>
        <translation>das Rezept nennt diese Abdeckung nicht</translation>
    </message>
    <message>
        <source>its recipe is for another taxon</source>
        <translation>das Rezept gilt für eine andere Art/Sorte</translation>
    </message>
    <message>
        <source>its slot in %1 is taken by %2 on %3</source>
        <translation>der Stellplatz in %1 ist am %3 von %2 belegt</translation>
    </message>
    <message>
        <source>its slots leave %1</source>
        <translation>die Stellplätze ragen über %1 hinaus</translation>
    </message>
    <message>
        <source>its stock gives %1 %2 cutting of %3</source>
        <translation>die Mutterpflanzen geben %1 Steckling (%2) von %3</translation>
    </message>
    <message>
        <source>its stock gives %1 %2 cuttings of %3</source>
        <translation>die Mutterpflanzen geben %1 Stecklinge (%2) von %3</translation>
    </message>
    <message>
        <source>its stock gives no %2 cuttings at all, and %1 are needed</source>
        <translation>die Mutterpflanzen geben gar keine Stecklinge (%2), und %1 sind nötig</translation>
    </message>
    <message>
        <source>its stock gives no %2 cuttings at all, and %1 is needed</source>
        <translation>die Mutterpflanzen geben gar keine Stecklinge (%2), und %1 ist nötig</translation>
    </message>
    <message>
        <source>its stock gives no %2 cuttings in those days, and %1 are needed</source>
        <translation>die Mutterpflanzen geben in diesen Tagen keine Stecklinge (%2), und %1 sind nötig</translation>
    </message>
    <message>
        <source>its stock gives no %2 cuttings in those days, and %1 is needed</source>
        <translation>die Mutterpflanzen geben in diesen Tagen keine Stecklinge (%2), und %1 ist nötig</translation>
    </message>
    <message>
        <source>its user or password is not written right</source>
        <translation>Benutzer oder Passwort sind darin nicht richtig geschrieben</translation>
    </message>
    <message>
        <source>journal entry %1 is damaged: %2</source>
        <translation>Journaleintrag %1 ist beschädigt: %2</translation>
    </message>
    <message>
        <source>kPa</source>
        <translation>kPa</translation>
    </message>
    <message>
        <source>last in %1</source>
        <translation>zuletzt in %1</translation>
    </message>
    <message>
        <source>late</source>
        <translation>zu spät</translation>
    </message>
    <message>
        <source>latitude %1 is not between -90 and 90</source>
        <translation>Breitengrad %1 liegt nicht zwischen -90 und 90</translation>
    </message>
    <message>
        <source>leaf-bud</source>
        <translation>Blattknospe</translation>
    </message>
    <message>
        <source>leave the recipe's take of %1 as it is</source>
        <translation>die Ausbeute im Rezept, %1, lassen, wie sie ist</translation>
    </message>
    <message>
        <source>let the striking be planned (Ctrl L), look at it, accept it</source>
        <translation>das Stecken planen lassen (Strg L), ansehen, annehmen</translation>
    </message>
    <message>
        <source>likely %1, surely by %2</source>
        <translation>wahrscheinlich %1, sicher bis %2</translation>
    </message>
    <message>
        <source>likely on %1, surely (%2 %) by %3, dotted%4</source>
        <translation>wahrscheinlich am %1, sicher (%2 %) bis %3, gepunktet%4</translation>
    </message>
    <message>
        <source>likely ready since %1</source>
        <translation>wahrscheinlich reif seit %1</translation>
    </message>
    <message>
        <source>line %1: %2</source>
        <translation>Zeile %1: %2</translation>
    </message>
    <message>
        <source>litres</source>
        <translation>Liter</translation>
    </message>
    <message>
        <source>look at its plants; it may take worse than others</source>
        <translation>die Pflanzen ansehen; sie könnten schlechter bewurzeln als andere</translation>
    </message>
    <message>
        <source>loss</source>
        <translation>Ausfall</translation>
    </message>
    <message>
        <source>margins and gaps are 0 to 2000 mm</source>
        <translation>Ränder und Abstände sind 0 bis 2000 mm</translation>
    </message>
    <message>
        <source>mat at %1</source>
        <translation>Matte auf %1</translation>
    </message>
    <message>
        <source>mat off</source>
        <translation>Matte aus</translation>
    </message>
    <message>
        <source>mat off, %1</source>
        <translation>Matte aus, %1</translation>
    </message>
    <message>
        <source>mat run</source>
        <translation>Lauf der Heizmatte</translation>
    </message>
    <message>
        <source>mat under %1 at %2</source>
        <translation>Heizmatte unter %1 auf %2</translation>
    </message>
    <message>
        <source>mats</source>
        <translation>Heizmatten</translation>
    </message>
    <message>
        <source>measured on %1 of %2 day, else by set-points</source>
        <translation>an %1 von %2 Tag gemessen, sonst nach Sollwerten</translation>
    </message>
    <message>
        <source>measured on %1 of %2 days, else by set-points</source>
        <translation>an %1 von %2 Tagen gemessen, sonst nach Sollwerten</translation>
    </message>
    <message>
        <source>media</source>
        <translation>Substrate</translation>
    </message>
    <message>
        <source>medium</source>
        <translation>Substrat</translation>
    </message>
    <message>
        <source>met</source>
        <translation>erreicht</translation>
    </message>
    <message>
        <source>met on %1, late</source>
        <translation>erreicht am %1, zu spät</translation>
    </message>
    <message>
        <source>mist</source>
        <translation>Sprühnebel</translation>
    </message>
    <message>
        <source>month</source>
        <translation>Monat</translation>
    </message>
    <message>
        <source>month first: 3/1/2027</source>
        <translation>Monat zuerst: 3/1/2027</translation>
    </message>
    <message>
        <source>month of readings</source>
        <translation>Monat von Messwerten</translation>
    </message>
    <message>
        <source>more than a year</source>
        <translation>mehr als ein Jahr</translation>
    </message>
    <message>
        <source>moved, as %1</source>
        <translation>verlegt, weil: %1</translation>
    </message>
    <message>
        <source>name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>nearer to its ideal it would cost %1 more</source>
        <translation>näher am Ideal kostete es %1 mehr</translation>
    </message>
    <message>
        <source>neither the book nor the built-in recipes know this taxon</source>
        <translation>weder das Buch noch die eingebauten Rezepte kennen diese Art/Sorte</translation>
    </message>
    <message>
        <source>never, as most loggers</source>
        <translation>nie, wie die meisten Logger</translation>
    </message>
    <message>
        <source>next ones free on %1</source>
        <translation>nächste frei am %1</translation>
    </message>
    <message>
        <source>no %1 zone offers %2; the nearest is %3 in %4</source>
        <translation>keine Zone (%1) bietet %2; am nächsten liegt %3 in %4</translation>
    </message>
    <message>
        <source>no QR code holds it: %1</source>
        <translation>kein QR-Code fasst es: %1</translation>
    </message>
    <message>
        <source>no backup can be made before it is brought up to date: %1</source>
        <translation>vor dem Schritt auf den neuen Stand lässt sich keine Sicherung anlegen: %1</translation>
    </message>
    <message>
        <source>no backup can be made: %1</source>
        <translation>es lässt sich keine Sicherung anlegen: %1</translation>
    </message>
    <message>
        <source>no batch has ended yet</source>
        <translation>noch ist keine Partie beendet</translation>
    </message>
    <message>
        <source>no container is worth a look</source>
        <translation>kein Gefäß lohnt einen Blick</translation>
    </message>
    <message>
        <source>no container was named to move</source>
        <translation>kein Gefäß zum Umstellen genannt</translation>
    </message>
    <message>
        <source>no container was named to pot on from</source>
        <translation>kein Gefäß zum Topfen genannt</translation>
    </message>
    <message>
        <source>no cutting was examined</source>
        <translation>kein Steckling wurde angesehen</translation>
    </message>
    <message>
        <source>no cutting was lost</source>
        <translation>kein Steckling fiel aus</translation>
    </message>
    <message>
        <source>no date is given</source>
        <translation>kein Datum angegeben</translation>
    </message>
    <message>
        <source>no day within two years</source>
        <translation>kein Tag binnen zwei Jahren</translation>
    </message>
    <message>
        <source>no figure of a recipe, expected one of %1</source>
        <translation>keine Zahl eines Rezepts, erwartet eine von %1</translation>
    </message>
    <message>
        <source>no figure of its recipe is given</source>
        <translation>keine Zahl des Rezepts angegeben</translation>
    </message>
    <message>
        <source>no free %1 slots at %2 for %3 struck on %4 were found for less than its value of %5</source>
        <translation>keine freien Stellplätze (%1) bei %2 für %3, gesteckt %4, fanden sich für weniger als den Wert von %5</translation>
    </message>
    <message>
        <source>no hormone</source>
        <translation>kein Hormon</translation>
    </message>
    <message>
        <source>no house book can be made in it: %1</source>
        <translation>darin lässt sich kein Hausbuch anlegen: %1</translation>
    </message>
    <message>
        <source>no house has a zone to root them in</source>
        <translation>kein Haus hat eine Zone zum Bewurzeln</translation>
    </message>
    <message>
        <source>no mat running</source>
        <translation>keine Heizmatte in Betrieb</translation>
    </message>
    <message>
        <source>no mat, %1</source>
        <translation>ohne Matte, %1</translation>
    </message>
    <message>
        <source>no name is given</source>
        <translation>kein Name angegeben</translation>
    </message>
    <message>
        <source>no number of plants is given</source>
        <translation>keine Zahl von Pflanzen angegeben</translation>
    </message>
    <message>
        <source>no number was found; expected such as 1-4, 7</source>
        <translation>keine Zahl gefunden; erwartet etwa 1-4, 7</translation>
    </message>
    <message>
        <source>no place</source>
        <translation>kein Platz</translation>
    </message>
    <message>
        <source>no place yet</source>
        <translation>noch ohne Platz</translation>
    </message>
    <message>
        <source>no reason given</source>
        <translation>kein Grund genannt</translation>
    </message>
    <message>
        <source>no recipe says how to strike %1 cuttings of it; leave the wood open, write a recipe, or copy that of a relative</source>
        <translation>kein Rezept sagt, wie Stecklinge (%1) davon zu stecken sind; lassen Sie das Holz offen, schreiben Sie ein Rezept oder kopieren Sie das einer Verwandten</translation>
    </message>
    <message>
        <source>no recipe says how to strike it; write one, or copy that of a relative</source>
        <translation>kein Rezept sagt, wie zu stecken ist; schreiben Sie eines oder kopieren Sie das einer Verwandten</translation>
    </message>
    <message>
        <source>no season meets the date: %1 cuttings take %2 days, so they had to be struck by %3; give it a later date</source>
        <translation>keine Zeit hält den Termin: Stecklinge (%1) brauchen %2 Tage, mussten also bis %3 gesteckt sein; geben Sie einen späteren Termin</translation>
    </message>
    <message>
        <source>no season meets the date: %1 cuttings take %2 days, so they had to be struck by %3; give it a later date, %4 at the earliest</source>
        <translation>keine Zeit hält den Termin: Stecklinge (%1) brauchen %2 Tage, mussten also bis %3 gesteckt sein; geben Sie einen späteren Termin, frühestens %4</translation>
    </message>
    <message>
        <source>no season meets the date: %1 cuttings take %2 days, so they would have to be struck by %3; give it a later date, %4 at the earliest</source>
        <translation>keine Zeit hält den Termin: Stecklinge (%1) brauchen %2 Tage, müssten also bis %3 gesteckt sein; geben Sie einen späteren Termin, frühestens %4</translation>
    </message>
    <message>
        <source>no set-point, nor off, suits all that is held there together</source>
        <translation>weder ein Sollwert noch „aus“ passt für alles, was dort zusammen steht</translation>
    </message>
    <message>
        <source>no slot is taken</source>
        <translation>kein Stellplatz ist belegt</translation>
    </message>
    <message>
        <source>no stock gives %1 cuttings of it</source>
        <translation>keine Mutterpflanzen geben Stecklinge (%1) davon</translation>
    </message>
    <message>
        <source>no stock named</source>
        <translation>keine Mutterpflanzen genannt</translation>
    </message>
    <message>
        <source>no taxon is named</source>
        <translation>keine Art/Sorte genannt</translation>
    </message>
    <message>
        <source>no zone has a cover and a heat that suit it</source>
        <translation>keine Zone hat passende Abdeckung und Wärme</translation>
    </message>
    <message>
        <source>no zone has the cover that it needs: %1</source>
        <translation>keine Zone hat die nötige Abdeckung: %1</translation>
    </message>
    <message>
        <source>no zone is without a cover, to wean and grow on in</source>
        <translation>keine Zone ist offen, zum Abhärten und Weiterkultivieren</translation>
    </message>
    <message>
        <source>no zone offers it anything nearer to its ideal</source>
        <translation>keine Zone bietet etwas näher am Ideal</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>none is given</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>none is given, and the stock is in a line before</source>
        <translation>nicht angegeben, und die Mutterpflanzen stehen in einer früheren Zeile</translation>
    </message>
    <message>
        <source>none is given, such as softwood</source>
        <translation>nicht angegeben, etwa softwood (krautig)</translation>
    </message>
    <message>
        <source>none is named</source>
        <translation>nicht genannt</translation>
    </message>
    <message>
        <source>none of your recipes</source>
        <translation>keines Ihrer Rezepte</translation>
    </message>
    <message>
        <source>none yet</source>
        <translation>noch keine</translation>
    </message>
    <message>
        <source>none yet</source>
        <comment>place</comment>
        <translation>noch keiner</translation>
    </message>
    <message>
        <source>none; such as 1/3; 4/12</source>
        <translation>keine; etwa 1/3; 4/12</translation>
    </message>
    <message>
        <source>not in a year</source>
        <translation>nicht in einem Jahr</translation>
    </message>
    <message>
        <source>not looked at for %1 days</source>
        <translation>seit %1 Tagen nicht angesehen</translation>
    </message>
    <message>
        <source>not looked at since it was struck, %1 days</source>
        <translation>seit dem Stecken nicht angesehen, %1 Tage</translation>
    </message>
    <message>
        <source>not settled; if it stays so, %1 cuttings in each way would settle it</source>
        <translation>nicht entschieden; bleibt es so, würden %1 Stecklinge je Weise es entscheiden</translation>
    </message>
    <message>
        <source>not settled; they are too alike for any number of cuttings</source>
        <translation>nicht entschieden; für jede Zahl von Stecklingen zu ähnlich</translation>
    </message>
    <message>
        <source>not within two years of striking</source>
        <translation>nicht binnen zwei Jahren nach dem Stecken</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>nothing can be changed just now; try again (%1)</source>
        <translation>gerade lässt sich nichts ändern; versuchen Sie es noch einmal (%1)</translation>
    </message>
    <message>
        <source>nothing is to be done</source>
        <translation>es ist nichts zu tun</translation>
    </message>
    <message>
        <source>nothing is to be done but to set mats</source>
        <translation>zu tun ist nichts, als Heizmatten einzustellen</translation>
    </message>
    <message>
        <source>nothing on this day</source>
        <translation>an diesem Tag nichts</translation>
    </message>
    <message>
        <source>nothing stands in container %1; it has %2</source>
        <translation>in Gefäß %1 steht nichts; es gibt %2</translation>
    </message>
    <message>
        <source>nothing stands in it any more</source>
        <translation>darin steht nichts mehr</translation>
    </message>
    <message>
        <source>nothing was potted on or lost</source>
        <translation>nichts wurde getopft oder fiel aus</translation>
    </message>
    <message>
        <source>nothing was struck for it</source>
        <translation>dafür wurde nichts gesteckt</translation>
    </message>
    <message>
        <source>number %1; expected 1 to %2</source>
        <translation>Nummer %1; erwartet 1 bis %2</translation>
    </message>
    <message>
        <source>nursery</source>
        <translation>Betrieb</translation>
    </message>
    <message>
        <source>off</source>
        <translation>aus</translation>
    </message>
    <message>
        <source>off now</source>
        <translation>jetzt aus</translation>
    </message>
    <message>
        <source>off the benches on %1</source>
        <translation>von den Tischen am %1</translation>
    </message>
    <message>
        <source>on %1 %2 cutting would be taken from %3, and %4 stand on it</source>
        <translation>am %1 würde %2 Steckling von %3 geschnitten, und %4 stehen daran</translation>
    </message>
    <message>
        <source>on %1 %2 cuttings would be taken from %3, and %4 stand on it</source>
        <translation>am %1 würden %2 Stecklinge von %3 geschnitten, und %4 stehen daran</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>other batches take all %2 cuttings that its stock gives in those days, and %1 are needed</source>
        <translation>andere Partien nehmen alle Stecklinge (%2), die die Mutterpflanzen in diesen Tagen geben, und %1 sind nötig</translation>
    </message>
    <message>
        <source>other batches take all %2 cuttings that its stock gives in those days, and %1 is needed</source>
        <translation>andere Partien nehmen alle Stecklinge (%2), die die Mutterpflanzen in diesen Tagen geben, und %1 ist nötig</translation>
    </message>
    <message>
        <source>outside</source>
        <translation>außerhalb</translation>
    </message>
    <message>
        <source>page %1 of %2</source>
        <translation>Seite %1 von %2</translation>
    </message>
    <message>
        <source>passed over</source>
        <translation>übergangen</translation>
    </message>
    <message>
        <source>place</source>
        <translation>Ort</translation>
    </message>
    <message>
        <source>placing it beside the others costs %1, and its value is %2</source>
        <translation>ein Platz neben den anderen kostet %1, und der Wert ist %2</translation>
    </message>
    <message>
        <source>plan it in its season</source>
        <translation>zu seiner Zeit planen</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>geplant</translation>
    </message>
    <message>
        <source>plants</source>
        <translation>Pflanzen</translation>
    </message>
    <message>
        <source>point: 21.5</source>
        <translation>Punkt: 21.5</translation>
    </message>
    <message>
        <source>pot on</source>
        <translation>topfen</translation>
    </message>
    <message>
        <source>pot on, about %1</source>
        <translation>topfen, etwa %1</translation>
    </message>
    <message>
        <source>potted on</source>
        <translation>getopft</translation>
    </message>
    <message>
        <source>potting on</source>
        <translation>Topfung</translation>
    </message>
    <message>
        <source>potting on or weaning of %1</source>
        <translation>Topfen oder Abhärten von %1</translation>
    </message>
    <message>
        <source>put in a house, its benches, and their zones</source>
        <translation>ein Haus, seine Tische und deren Zonen eingeben</translation>
    </message>
    <message>
        <source>range of what roots there</source>
        <translation>Bereich dessen, was dort wurzelt</translation>
    </message>
    <message>
        <source>readings of a logger are kept of it; remove those first</source>
        <translation>davon sind Messwerte eines Loggers gespeichert; löschen Sie diese zuerst</translation>
    </message>
    <message>
        <source>readings of the years 1970 to 5000 can be kept, no others</source>
        <translation>nur Messwerte der Jahre 1970 bis 5000 können gespeichert werden</translation>
    </message>
    <message>
        <source>ready to pot on</source>
        <translation>topfreif</translation>
    </message>
    <message>
        <source>recipe</source>
        <translation>Rezept</translation>
    </message>
    <message>
        <source>recipes</source>
        <translation>Rezepte</translation>
    </message>
    <message>
        <source>reckon with %1 on average, not with the recipe's %2</source>
        <translation>im Mittel mit %1 rechnen, nicht mit den %2 des Rezepts</translation>
    </message>
    <message>
        <source>regrowth</source>
        <translation>Nachwuchs</translation>
    </message>
    <message>
        <source>results</source>
        <translation>Ergebnisse</translation>
    </message>
    <message>
        <source>room</source>
        <translation>Raum</translation>
    </message>
    <message>
        <source>root check</source>
        <translation>Wurzelkontrolle</translation>
    </message>
    <message>
        <source>root zone</source>
        <translation>Wurzelraum</translation>
    </message>
    <message>
        <source>rooted</source>
        <translation>bewurzelt</translation>
    </message>
    <message>
        <source>rooting</source>
        <translation>Bewurzelung</translation>
    </message>
    <message>
        <source>roots in %1</source>
        <translation>wurzelt in %1</translation>
    </message>
    <message>
        <source>row %1</source>
        <translation>Reihe %1</translation>
    </message>
    <message>
        <source>rows %1 to %2</source>
        <translation>Reihen %1 bis %2</translation>
    </message>
    <message>
        <source>say what cuttings are taken from</source>
        <translation>sagen, wovon Stecklinge geschnitten werden</translation>
    </message>
    <message>
        <source>say which plants are wanted, how many, by when</source>
        <translation>sagen, welche Pflanzen gewünscht sind, wie viele, bis wann</translation>
    </message>
    <message>
        <source>season</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>seasons shifted by %1 days; expected at most 90 either way</source>
        <translation>Jahreszeiten um %1 Tage verschoben; erwartet höchstens 90 in jede Richtung</translation>
    </message>
    <message>
        <source>semi-ripe</source>
        <translation>halbreif</translation>
    </message>
    <message>
        <source>semicolon</source>
        <translation>Strichpunkt</translation>
    </message>
    <message>
        <source>set the mat of %1 to %2: %3 is likely to be ready %4 sooner</source>
        <translation>Heizmatte von %1 auf %2 stellen: %3 ist wahrscheinlich %4 früher fertig</translation>
    </message>
    <message>
        <source>set-point</source>
        <translation>Sollwert</translation>
    </message>
    <message>
        <source>shared books need Qt's driver for PostgreSQL, which is not installed (Debian: libqt6sql6-psql)</source>
        <translation>gemeinsame Bücher brauchen Qts Treiber für PostgreSQL, der nicht installiert ist (Debian: libqt6sql6-psql)</translation>
    </message>
    <message>
        <source>softwood</source>
        <translation>krautig</translation>
    </message>
    <message>
        <source>some of these containers root and others are weaned; take up those of one stage</source>
        <translation>einige dieser Gefäße wurzeln, andere sind abgehärtet; nehmen Sie die eines Standes auf</translation>
    </message>
    <message>
        <source>somebody was faster with the same things (%1); look at it again</source>
        <translation>jemand war mit denselben Dingen schneller (%1); sehen Sie es sich noch einmal an</translation>
    </message>
    <message>
        <source>something follows its host</source>
        <translation>hinter ihrem Rechnernamen folgt noch etwas</translation>
    </message>
    <message>
        <source>something new for the nursery</source>
        <translation>etwas Neues für die Gärtnerei</translation>
    </message>
    <message>
        <source>something stands in it that no house book has</source>
        <translation>darin steht etwas, was kein Hausbuch hat</translation>
    </message>
    <message>
        <source>something stands in it that no house book has (%1); open a backup, and keep this file as it is</source>
        <translation>darin steht etwas, was kein Hausbuch hat (%1); öffnen Sie eine Sicherung und bewahren Sie diese Datei auf, wie sie ist</translation>
    </message>
    <message>
        <source>sooner it would cost %1 more</source>
        <translation>früher kostete es %1 mehr</translation>
    </message>
    <message>
        <source>sound</source>
        <translation>in Ordnung</translation>
    </message>
    <message>
        <source>spare it next year, or plant more of it</source>
        <translation>nächstes Jahr schonen oder mehr davon pflanzen</translation>
    </message>
    <message>
        <source>stay</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>stock</source>
        <translation>Mutterpflanzen</translation>
    </message>
    <message>
        <source>stock %1</source>
        <translation>Mutterpflanze %1</translation>
    </message>
    <message>
        <source>stock %1 gives %2 by %3, %4 short of the %5 that it takes</source>
        <translation>Mutterpflanzen %1 geben %2 bis %3, %4 weniger als die nötigen %5</translation>
    </message>
    <message>
        <source>stock %1 is of another taxon</source>
        <translation>Mutterpflanzen %1 sind von anderer Art/Sorte</translation>
    </message>
    <message>
        <source>stock %1 is of it</source>
        <translation>Mutterpflanzen %1 sind davon</translation>
    </message>
    <message>
        <source>stock %1 is short by %2 and hands are short by %3 on %4, the best day that has slots for it</source>
        <translation>am besten Tag mit freien Stellplätzen (%4) fehlen den Mutterpflanzen %1 %2, und Arbeitskraft fehlt für %3</translation>
    </message>
    <message>
        <source>stock %1 is short by %2 on %3, the best day that has slots for it</source>
        <translation>am besten Tag mit freien Stellplätzen (%3) fehlen den Mutterpflanzen %1 %2</translation>
    </message>
    <message>
        <source>stock %1 is short by %2 on %3, when it lacks least</source>
        <translation>den Mutterpflanzen %1 fehlen %2 am günstigsten Tag (%3)</translation>
    </message>
    <message>
        <source>stock %1 is short by %2 on %3, which would be better</source>
        <translation>am besseren Tag (%3) fehlen von %1 noch %2</translation>
    </message>
    <message>
        <source>stock is short by %1 %2 cutting by %3</source>
        <translation>den Mutterpflanzen fehlt bis %3 %1 Steckling (%2)</translation>
    </message>
    <message>
        <source>stock is short by %1 %2 cuttings by %3</source>
        <translation>den Mutterpflanzen fehlen bis %3 %1 Stecklinge (%2)</translation>
    </message>
    <message>
        <source>stocks</source>
        <translation>Mutterpflanzen</translation>
    </message>
    <message>
        <source>strike</source>
        <translation>stecken</translation>
    </message>
    <message>
        <source>strike %1 %2 cutting from %3 to %4</source>
        <translation>%1 Steckling (%2) stecken, von %3 bis %4</translation>
    </message>
    <message>
        <source>strike %1 %2 cutting from %3 to %4%5</source>
        <translation>%1 Steckling (%2) stecken, %3 bis %4%5</translation>
    </message>
    <message>
        <source>strike %1 %2 cutting from %3 to %4; it will be late all the same</source>
        <translation>%1 Steckling (%2) stecken, von %3 bis %4; er kommt trotzdem zu spät</translation>
    </message>
    <message>
        <source>strike %1 %2 cuttings from %3 to %4</source>
        <translation>%1 Stecklinge (%2) stecken, von %3 bis %4</translation>
    </message>
    <message>
        <source>strike %1 %2 cuttings from %3 to %4%5</source>
        <translation>%1 Stecklinge (%2) stecken, %3 bis %4%5</translation>
    </message>
    <message>
        <source>strike %1 %2 cuttings from %3 to %4; they will be late all the same</source>
        <translation>%1 Stecklinge (%2) stecken, von %3 bis %4; sie kommen trotzdem zu spät</translation>
    </message>
    <message>
        <source>strike it %1 days earlier</source>
        <translation>%1 Tage früher stecken</translation>
    </message>
    <message>
        <source>strike it 1 day earlier</source>
        <translation>1 Tag früher stecken</translation>
    </message>
    <message>
        <source>strike more</source>
        <translation>mehr stecken</translation>
    </message>
    <message>
        <source>strike more, once a batch has ended and tells how many</source>
        <translation>mehr stecken, sobald eine beendete Partie sagt, wie viele</translation>
    </message>
    <message>
        <source>strike with %1 rather than %2</source>
        <translation>lieber mit %1 als mit %2 stecken</translation>
    </message>
    <message>
        <source>strike, left from %1</source>
        <translation>stecken, übrig vom %1</translation>
    </message>
    <message>
        <source>struck</source>
        <translation>gesteckt</translation>
    </message>
    <message>
        <source>struck %1 earlier, on %2, it would cost %3</source>
        <translation>%1 früher gesteckt (%2), kostete sie %3</translation>
    </message>
    <message>
        <source>struck %1 earlier, on %2, it would cost %3, or %4 later, on %5, it would cost %6</source>
        <translation>%1 früher gesteckt (%2), kostete sie %3, oder %4 später (%5), kostete sie %6</translation>
    </message>
    <message>
        <source>struck %1 later, on %2, it would cost %3</source>
        <translation>%1 später gesteckt (%2), kostete sie %3</translation>
    </message>
    <message>
        <source>such as anna</source>
        <translation>etwa anna</translation>
    </message>
    <message>
        <source>such as books.example, or books.example:5433</source>
        <translation>etwa books.example oder books.example:5433</translation>
    </message>
    <message>
        <source>such as nursery</source>
        <translation>etwa betrieb</translation>
    </message>
    <message>
        <source>sureness must lie between 50 and 99.9 %</source>
        <translation>die Sicherheit muss zwischen 50 und 99,9 % liegen</translation>
    </message>
    <message>
        <source>tab</source>
        <translation>Tabulator</translation>
    </message>
    <message>
        <source>tabs</source>
        <translation>Tabulatoren</translation>
    </message>
    <message>
        <source>take %1</source>
        <translation>Ausbeute %1</translation>
    </message>
    <message>
        <source>take from other stock of the taxon, or renew it</source>
        <translation>von anderen Mutterpflanzen der Art/Sorte schneiden oder diese erneuern</translation>
    </message>
    <message>
        <source>take must be 0 to 100 %, the lowest first</source>
        <translation>die Ausbeute muss 0 bis 100 % sein, die kleinere zuerst</translation>
    </message>
    <message>
        <source>target</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>target %1</source>
        <translation>Ziel %1</translation>
    </message>
    <message>
        <source>target %1 by %2</source>
        <translation>Ziel %1 bis %2</translation>
    </message>
    <message>
        <source>target %1 wants another taxon</source>
        <translation>Ziel %1 verlangt eine andere Art/Sorte</translation>
    </message>
    <message>
        <source>target %1 wants it</source>
        <translation>Ziel %1 verlangt sie</translation>
    </message>
    <message>
        <source>target %1: %2</source>
        <translation>Ziel %1: %2</translation>
    </message>
    <message>
        <source>targets</source>
        <translation>Ziele</translation>
    </message>
    <message>
        <source>taxa</source>
        <translation>Arten/Sorten</translation>
    </message>
    <message>
        <source>taxon</source>
        <translation>Art/Sorte</translation>
    </message>
    <message>
        <source>tell who waits for them: %1 late, by %2</source>
        <translation>sagen Sie dem, der darauf wartet: %1 zu spät, bis %2</translation>
    </message>
    <message>
        <source>temperature in %1 as %2</source>
        <translation>Temperatur in %1 als %2</translation>
    </message>
    <message>
        <source>temperature in %1 as °F, as so many °C would be too hot for cuttings</source>
        <translation>Temperatur in %1 als °F, da so viele °C für Stecklinge zu heiß wären</translation>
    </message>
    <message>
        <source>tent</source>
        <translation>Folienzelt</translation>
    </message>
    <message>
        <source>that costs less than where it was</source>
        <translation>es kostet dort weniger als am bisherigen Platz</translation>
    </message>
    <message>
        <source>that is %1 more than stood in it</source>
        <translation>das sind %1 mehr, als darin standen</translation>
    </message>
    <message>
        <source>the backup is not sound: %1</source>
        <translation>die Sicherung ist nicht in Ordnung: %1</translation>
    </message>
    <message>
        <source>the best possible</source>
        <translation>der bestmögliche</translation>
    </message>
    <message>
        <source>the book has a stock of that name already</source>
        <translation>das Buch hat schon Mutterpflanzen dieses Namens</translation>
    </message>
    <message>
        <source>the book has no container to strike in</source>
        <translation>das Buch hat kein Gefäß zum Stecken</translation>
    </message>
    <message>
        <source>the book has no kind of container yet, in which it could have been struck</source>
        <translation>das Buch hat noch keine Gefäßart, in die gesteckt worden sein könnte</translation>
    </message>
    <message>
        <source>the book has no stock of it, which would have to give %1 %2 cutting</source>
        <translation>das Buch hat keine Mutterpflanzen davon, die %1 Steckling (%2) geben müssten</translation>
    </message>
    <message>
        <source>the book has no stock of it, which would have to give %1 %2 cuttings</source>
        <translation>das Buch hat keine Mutterpflanzen davon, die %1 Stecklinge (%2) geben müssten</translation>
    </message>
    <message>
        <source>the book has no such recipe of %1</source>
        <translation>das Buch hat kein solches Rezept für %1</translation>
    </message>
    <message>
        <source>the book has no such stock of %1</source>
        <translation>das Buch hat keine solchen Mutterpflanzen von %1</translation>
    </message>
    <message>
        <source>the copy can't be written: %1</source>
        <translation>die Kopie lässt sich nicht schreiben: %1</translation>
    </message>
    <message>
        <source>the copy does not hold what the book holds</source>
        <translation>die Kopie enthält nicht, was im Buch steht</translation>
    </message>
    <message>
        <source>the cost of a late plant is below 0</source>
        <translation>die Kosten einer verspäteten Pflanze liegen unter 0</translation>
    </message>
    <message>
        <source>the database says: %1</source>
        <translation>die Datenbank sagt: %1</translation>
    </message>
    <message>
        <source>the days end before they begin</source>
        <translation>die Tage enden vor ihrem Beginn</translation>
    </message>
    <message>
        <source>the file has been moved, removed or replaced since it was opened, so nothing can be changed; put it back, or open it again</source>
        <translation>die Datei wurde seit dem Öffnen verschoben, entfernt oder ersetzt, also lässt sich nichts ändern; legen Sie sie zurück oder öffnen Sie sie neu</translation>
    </message>
    <message>
        <source>the file is damaged: %1</source>
        <translation>die Datei ist beschädigt: %1</translation>
    </message>
    <message>
        <source>the file is damaged; open a backup, and keep this file as it is</source>
        <translation>die Datei ist beschädigt; öffnen Sie eine Sicherung und bewahren Sie diese Datei auf, wie sie ist</translation>
    </message>
    <message>
        <source>the first way gives more</source>
        <translation>die erste Weise gibt mehr</translation>
    </message>
    <message>
        <source>the hands of this day stand twice</source>
        <translation>die Arbeitskraft dieses Tages steht zweimal da</translation>
    </message>
    <message>
        <source>the journal can't be chained: %1</source>
        <translation>das Journal lässt sich nicht verketten: %1</translation>
    </message>
    <message>
        <source>the journal can't be read: %1</source>
        <translation>das Journal lässt sich nicht lesen: %1</translation>
    </message>
    <message>
        <source>the journal does not lead back there: %1</source>
        <translation>das Journal führt nicht dorthin zurück: %1</translation>
    </message>
    <message>
        <source>the journal is damaged: %1</source>
        <translation>das Journal ist beschädigt: %1</translation>
    </message>
    <message>
        <source>the last of a row ends at %1 on a page %2 wide</source>
        <translation>das letzte einer Reihe endet bei %1 auf einer Seite von %2 Breite</translation>
    </message>
    <message>
        <source>the lowest row ends at %1 on a page %2 high</source>
        <translation>die unterste Reihe endet bei %1 auf einer Seite von %2 Höhe</translation>
    </message>
    <message>
        <source>the pages could not be written to the end: %1</source>
        <translation>die Seiten ließen sich nicht zu Ende schreiben: %1</translation>
    </message>
    <message>
        <source>the picture could not be written to the end: %1</source>
        <translation>das Bild ließ sich nicht zu Ende schreiben: %1</translation>
    </message>
    <message>
        <source>the place that would suit it better, %1 on %2, is taken or stands at another set-point then</source>
        <translation>der bessere Platz, %1 (%2), ist dann belegt oder steht auf einem anderen Sollwert</translation>
    </message>
    <message>
        <source>the plan weans it since %1, but no root of it was seen yet; look at it first</source>
        <translation>nach Plan seit %1 abgehärtet, aber Wurzeln wurden noch nicht gesehen; erst nachsehen</translation>
    </message>
    <message>
        <source>the plan weans it since %1, but nobody has yet; about %2 % are rooted, %3 of %4 in the last checks</source>
        <translation>laut Plan wird sie seit %1 abgehärtet, aber noch niemand hat es getan; etwa %2 % sind bewurzelt, %3 von %4 bei den letzten Kontrollen</translation>
    </message>
    <message>
        <source>the plan weans it today, but no root of it was seen yet; look at it first</source>
        <translation>laut Plan wird sie heute abgehärtet, aber es wurde noch keine Wurzel gesehen; zuerst nachsehen</translation>
    </message>
    <message>
        <source>the plan weans it today; about %1 % are rooted, %2 of %3 in the last checks</source>
        <translation>laut Plan wird sie heute abgehärtet; etwa %1 % sind bewurzelt, %2 von %3 bei den letzten Kontrollen</translation>
    </message>
    <message>
        <source>the recipe may still be right</source>
        <translation>das Rezept kann noch richtig sein</translation>
    </message>
    <message>
        <source>the root zone's lowest temperature is above its highest</source>
        <translation>die tiefste Temperatur des Wurzelraums liegt über der höchsten</translation>
    </message>
    <message>
        <source>the same</source>
        <translation>gleich viel</translation>
    </message>
    <message>
        <source>the second way gives more</source>
        <translation>die zweite Weise gibt mehr</translation>
    </message>
    <message>
        <source>the shared book is damaged: %1</source>
        <translation>das gemeinsame Buch ist beschädigt: %1</translation>
    </message>
    <message>
        <source>there are slots enough for its %1, but not side by side</source>
        <translation>Stellplätze für %1 gibt es genug, aber nicht beieinander</translation>
    </message>
    <message>
        <source>there is a file of this name already; choose another</source>
        <translation>eine Datei dieses Namens gibt es schon; wählen Sie einen anderen</translation>
    </message>
    <message>
        <source>there is a house book in this database already; choose another</source>
        <translation>in dieser Datenbank gibt es schon ein Hausbuch; wählen Sie eine andere</translation>
    </message>
    <message>
        <source>there is a target %1 already</source>
        <translation>ein Ziel %1 gibt es schon</translation>
    </message>
    <message>
        <source>there is no container to label</source>
        <translation>es gibt kein Gefäß zu etikettieren</translation>
    </message>
    <message>
        <source>there is no display to open a window on</source>
        <translation>es gibt keinen Bildschirm für ein Fenster</translation>
    </message>
    <message>
        <source>there is no house book in this database; 'warmbench new' or 'warmbench copy' makes one</source>
        <translation>in dieser Datenbank gibt es kein Hausbuch; „warmbench new“ oder „warmbench copy“ legt eines an</translation>
    </message>
    <message>
        <source>there is no number %1 in this book; it may have been removed meanwhile</source>
        <translation>Nummer %1 gibt es in diesem Buch nicht; vielleicht wurde sie inzwischen entfernt</translation>
    </message>
    <message>
        <source>there is no room for its %1: it would take %2</source>
        <translation>für %1 ist kein Platz: nötig wären %2</translation>
    </message>
    <message>
        <source>there is no such batch in this book</source>
        <translation>diese Partie gibt es im Buch nicht</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>eine solche Datei gibt es nicht</translation>
    </message>
    <message>
        <source>there is nothing to redo</source>
        <translation>es gibt nichts zu wiederholen</translation>
    </message>
    <message>
        <source>there is nothing to undo</source>
        <translation>es gibt nichts zurückzunehmen</translation>
    </message>
    <message>
        <source>there is room for only %1 of its %2: it would take %3</source>
        <translation>Platz ist nur für %1, verlangt sind %2: nötig wären %3</translation>
    </message>
    <message>
        <source>there is room for only %1 of its %2: there are slots enough, but not side by side</source>
        <translation>Platz ist nur für %1, verlangt sind %2: Stellplätze gibt es genug, aber nicht beieinander</translation>
    </message>
    <message>
        <source>they are not in order of time</source>
        <translation>sie sind nicht nach der Zeit geordnet</translation>
    </message>
    <message>
        <source>this book has no such batch</source>
        <translation>dieses Buch hat keine solche Partie</translation>
    </message>
    <message>
        <source>this is a book of its own and no copy of %1, as the first steps of their journals tell; choose the copy that was taken along</source>
        <translation>dies ist ein eigenes Buch und keine Kopie von %1, wie die ersten Schritte ihrer Journale zeigen; wählen Sie die Kopie, die mitgenommen wurde</translation>
    </message>
    <message>
        <source>this is no address of a shared book: %1; expected postgresql://user@host:port/database?sslmode=verify-full</source>
        <translation>das ist keine Adresse eines gemeinsamen Buchs: %1; erwartet postgresql://user@host:port/database?sslmode=verify-full</translation>
    </message>
    <message>
        <source>this is no house book (found another kind of file, expected one made by Warmbench)</source>
        <translation>das ist kein Hausbuch (eine andere Art Datei gefunden, erwartet eine von Warmbench)</translation>
    </message>
    <message>
        <source>this is no house book (found another program's database)</source>
        <translation>das ist kein Hausbuch (die Datenbank eines anderen Programms gefunden)</translation>
    </message>
    <message>
        <source>this is the book that is open here; choose the copy that was taken along</source>
        <translation>dies ist das Buch, das hier geöffnet ist; wählen Sie die Kopie, die mitgenommen wurde</translation>
    </message>
    <message>
        <source>this is the house as it was; go back to now to change it</source>
        <translation>dies ist das Haus, wie es war; gehen Sie zum Jetzt zurück, um es zu ändern</translation>
    </message>
    <message>
        <source>those without a temperature</source>
        <translation>solche ohne Temperatur</translation>
    </message>
    <message>
        <source>time in %1</source>
        <translation>Zeit in %1</translation>
    </message>
    <message>
        <source>time in %1 and the next</source>
        <translation>Zeit in %1 und der nächsten</translation>
    </message>
    <message>
        <source>tip removed</source>
        <translation>Spitze entfernt</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
    <message>
        <source>too cold</source>
        <translation>zu kalt</translation>
    </message>
    <message>
        <source>too cold: %1, needs at least %2</source>
        <translation>zu kalt: %1, nötig sind mindestens %2</translation>
    </message>
    <message>
        <source>too warm</source>
        <translation>zu warm</translation>
    </message>
    <message>
        <source>too warm: %1, at most %2 is right</source>
        <translation>zu warm: %1, richtig sind höchstens %2</translation>
    </message>
    <message>
        <source>try %1 against %2 again</source>
        <translation>%1 noch einmal gegen %2 versuchen</translation>
    </message>
    <message>
        <source>tunnel</source>
        <translation>Folientunnel</translation>
    </message>
    <message>
        <source>turn them off where nothing stands: most in %1</source>
        <translation>ausschalten, wo nichts steht: am meisten in %1</translation>
    </message>
    <message>
        <source>two %1 have this name</source>
        <translation>zwei %1 haben diesen Namen</translation>
    </message>
    <message>
        <source>two batches have this code</source>
        <translation>zwei Partien haben diesen Code</translation>
    </message>
    <message>
        <source>two benches of %1 have this name</source>
        <translation>zwei Tische von %1 haben diesen Namen</translation>
    </message>
    <message>
        <source>two houses have this name</source>
        <translation>zwei Häuser haben diesen Namen</translation>
    </message>
    <message>
        <source>two zones of this bench have this name</source>
        <translation>zwei Zonen dieses Tisches haben diesen Namen</translation>
    </message>
    <message>
        <source>under a tent</source>
        <translation>unter dem Folienzelt</translation>
    </message>
    <message>
        <source>under bags</source>
        <translation>unter Folienbeuteln</translation>
    </message>
    <message>
        <source>under mist</source>
        <translation>unter Sprühnebel</translation>
    </message>
    <message>
        <source>upright bar</source>
        <translation>senkrechter Strich</translation>
    </message>
    <message>
        <source>vapour pressure deficit</source>
        <translation>Dampfdruckdefizit</translation>
    </message>
    <message>
        <source>wean</source>
        <translation>abhärten</translation>
    </message>
    <message>
        <source>weaned on %1 and grown on as its recipe says</source>
        <translation>am %1 abgehärtet und weiterkultiviert, wie das Rezept es sagt</translation>
    </message>
    <message>
        <source>weaning</source>
        <translation>Abhärtung</translation>
    </message>
    <message>
        <source>weaning takes 0 to 400 days, growing on 0 to 1000</source>
        <translation>Abhärten dauert 0 bis 400 Tage, Weiterkultur 0 bis 1000</translation>
    </message>
    <message>
        <source>what follows its question mark is not written right</source>
        <translation>was hinter ihrem Fragezeichen folgt, ist nicht richtig geschrieben</translation>
    </message>
    <message>
        <source>what is still to do before the first strike</source>
        <translation>was vor dem ersten Stecken noch zu tun ist</translation>
    </message>
    <message>
        <source>what others have changed does not fit: %1</source>
        <translation>was andere geändert haben, passt nicht: %1</translation>
    </message>
    <message>
        <source>what was found in %1</source>
        <translation>was in %1 gefunden wurde</translation>
    </message>
    <message>
        <source>what was weaned on %1 can't root from %2 on</source>
        <translation>was am %1 abgehärtet wurde, kann nicht ab %2 wurzeln</translation>
    </message>
    <message>
        <source>when it is struck on %1, no zones offer one after the other what it needs</source>
        <translation>wenn am %1 gesteckt wird, bietet kein Bereich nach dem anderen, was gebraucht wird</translation>
    </message>
    <message>
        <source>with American daylight saving time</source>
        <translation>mit amerikanischer Sommerzeit</translation>
    </message>
    <message>
        <source>with European summer time</source>
        <translation>mit europäischer Sommerzeit</translation>
    </message>
    <message>
        <source>within</source>
        <translation>innerhalb</translation>
    </message>
    <message>
        <source>without roots at potting on</source>
        <translation>beim Topfen ohne Wurzeln</translation>
    </message>
    <message>
        <source>wood</source>
        <translation>Holz</translation>
    </message>
    <message>
        <source>worth</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>you</source>
        <translation>Sie</translation>
    </message>
    <message>
        <source>you may not read the house book in this database: %1</source>
        <translation>Sie dürfen das Hausbuch in dieser Datenbank nicht lesen: %1</translation>
    </message>
    <message>
        <source>your own figures</source>
        <translation>eigene Zahlen</translation>
    </message>
    <message>
        <source>zone</source>
        <translation>Zone</translation>
    </message>
    <message>
        <source>zone %1</source>
        <translation>Zone %1</translation>
    </message>
    <message>
        <source>zone %1, %2&lt;br&gt;%3 to %4</source>
        <translation>Zone %1, %2&lt;br&gt;%3 bis %4</translation>
    </message>
    <message>
        <source>zones</source>
        <translation>Zonen</translation>
    </message>
    <message>
        <source>zones %1</source>
        <translation>Zonen %1</translation>
    </message>
    <message>
        <source>zones that suit it have %1 slot free on %2</source>
        <translation>passende Zonen haben am %2 %1 Stellplatz frei</translation>
    </message>
    <message>
        <source>zones that suit it have %1 slots free on %2</source>
        <translation>passende Zonen haben am %2 %1 Stellplätze frei</translation>
    </message>
    <message>
        <source>°C</source>
        <translation>°C</translation>
    </message>
    <message>
        <source>°F</source>
        <translation>°F</translation>
    </message>
    <message>
        <source>▲ %1 late</source>
        <translation>▲ %1 zu spät</translation>
    </message>
    <message>
        <source>▲ %1 missing</source>
        <translation>▲ %1 zu wenig</translation>
    </message>
    <message>
        <source>▲ Cut too hard: %1.</source>
        <translation>▲ Zu stark geschnitten: %1.</translation>
    </message>
    <message>
        <source>▲ on %1 %2 are to be taken and %3 stand</source>
        <translation>▲ am %1 sind %2 zu schneiden, und %3 stehen</translation>
    </message>
</context>
</TS>
