<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name></name>
    <message>
        <source>Start and finish</source>
        <translation>Start und Ziel</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>Build-up</source>
        <extracomment>Targets of links: the mend of a check, by its place, a day for a session, two to swap.</extracomment>
        <translation>Aufbau</translation>
    </message>
    <message>
        <source>What the race asks</source>
        <translation>Was das Rennen fordert</translation>
    </message>
    <message>
        <source>asked</source>
        <translation>gefordert</translation>
    </message>
    <message>
        <source>planned</source>
        <extracomment>Link targets: an action by the name of its row.</extracomment>
        <translation>geplant</translation>
    </message>
    <message>
        <source>Climb per {0}</source>
        <translation>Anstieg je {0}</translation>
    </message>
    <message>
        <source>Likely finish</source>
        <translation>Ziel wahrscheinlich</translation>
    </message>
    <message>
        <source>In the dark</source>
        <translation>Im Dunkeln</translation>
    </message>
    <message>
        <source>Runway</source>
        <translation>Anlauf</translation>
    </message>
    <message>
        <source>Weeks to go</source>
        <translation>Wochen bis dahin</translation>
    </message>
    <message>
        <source>Weeks needed</source>
        <translation>Wochen nötig</translation>
    </message>
    <message>
        <source>Largest week</source>
        <translation>Größte Woche</translation>
    </message>
    <message>
        <source>Longest run</source>
        <translation>Längster Lauf</translation>
    </message>
    <message>
        <source>Pale: asked; bold: what the rules allow by then.</source>
        <translation>Blass: gefordert; fett: was die Regeln bis dahin zulassen.</translation>
    </message>
    <message>
        <source>Cutoffs, level pace</source>
        <translation>Zeitlimits, Tempo im Flachen</translation>
    </message>
    <message>
        <source>likely</source>
        <translation>wahrscheinlich</translation>
    </message>
    <message>
        <source>to {0}</source>
        <translation>bis {0}</translation>
    </message>
    <message>
        <source>Time in hand at its end: {0}</source>
        <translation>Zeitpolster am Ende: {0}</translation>
    </message>
    <message>
        <source>Ranges coaches use; no trial sets them.</source>
        <translation>Bereiche aus der Trainerpraxis; keine Studie legt sie fest.</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>Go back to an earlier state</source>
        <translation>Zu einem früheren Stand zurück</translation>
    </message>
    <message>
        <source>The plan becomes what it was then. Undo brings today&apos;s back.</source>
        <translation>Der Plan wird, wie er damals war. Rückgängig holt den heutigen zurück.</translation>
    </message>
    <message>
        <source>Earlier states</source>
        <translation>Frühere Stände</translation>
    </message>
    <message>
        <source>Nothing lies behind yet. Name this state, and you find it here.</source>
        <translation>Noch liegt nichts zurück. Benenne diesen Stand, dann findest du ihn hier.</translation>
    </message>
    <message>
        <source>Go &amp;back to it</source>
        <translation>&amp;Dorthin zurück</translation>
    </message>
    <message>
        <source>Fuel per hour</source>
        <translation>Verpflegung je Stunde</translation>
    </message>
    <message>
        <source>From {0} to {1}</source>
        <translation>Von {0} bis {1}</translation>
    </message>
    <message>
        <source>&amp;Carbohydrate</source>
        <translation>&amp;Kohlenhydrate</translation>
    </message>
    <message>
        <source>&amp;Fluid to have with you</source>
        <translation>&amp;Flüssigkeit am Körper</translation>
    </message>
    <message>
        <source>&amp;Sodium</source>
        <translation>&amp;Natrium</translation>
    </message>
    <message>
        <source>First &amp;bite after</source>
        <translation>Erster &amp;Happen nach</translation>
    </message>
    <message>
        <source>Then &amp;every</source>
        <translation>Dann &amp;alle</translation>
    </message>
    <message>
        <source>Keys</source>
        <translation>Tasten</translation>
    </message>
    <message>
        <source>In the day grid and the race lanes: choose</source>
        <translation>Im Tagesraster und in den Rennspuren: wählen</translation>
    </message>
    <message>
        <source>arrow keys</source>
        <translation>Pfeiltasten</translation>
    </message>
    <message>
        <source>Pick up, put down</source>
        <translation>Aufnehmen, ablegen</translation>
    </message>
    <message>
        <source>Enter</source>
        <translation>Eingabe</translation>
    </message>
    <message>
        <source>Move what is picked up</source>
        <translation>Aufgenommenes bewegen</translation>
    </message>
    <message>
        <source>Put it back</source>
        <translation>Zurücklegen</translation>
    </message>
    <message>
        <source>Esc</source>
        <translation>Esc</translation>
    </message>
    <message>
        <source>While dragging on race day: snap to nothing</source>
        <translation>Beim Ziehen am Renntag: nirgends einrasten</translation>
    </message>
    <message>
        <source>Over race day: fold the leg ahead of a station, or behind</source>
        <translation>Über dem Renntag: Teilstück vor oder nach einer Station falten</translation>
    </message>
    <message>
        <source>Move a lane up or down</source>
        <translation>Spur nach oben oder unten schieben</translation>
    </message>
    <message>
        <source>Make a lane higher or lower</source>
        <translation>Spur höher oder niedriger machen</translation>
    </message>
    <message>
        <source>In other lanes: move the line with the figures</source>
        <translation>In anderen Spuren: Linie mit den Zahlen bewegen</translation>
    </message>
    <message>
        <source>left and right, Shift: ten</source>
        <translation>links und rechts, Umschalt: zehn</translation>
    </message>
    <message>
        <source>In other lanes: what can be done</source>
        <translation>In anderen Spuren: was man tun kann</translation>
    </message>
    <message>
        <source>Action</source>
        <translation>Aktion</translation>
    </message>
    <message>
        <source>When to stop and get help</source>
        <translation>Wann aufhören und Hilfe holen</translation>
    </message>
    <message>
        <source>About Ultraplanner</source>
        <translation>Über Ultraplanner</translation>
    </message>
    <message>
        <source>Ultraplanner {0}</source>
        <translation>Ultraplanner {0}</translation>
    </message>
    <message>
        <source>Plans an ultramarathon from the first week of training to the card in the pocket.</source>
        <translation>Plant einen Ultramarathon von der ersten Trainingswoche bis zur Karte in der Tasche.</translation>
    </message>
    <message>
        <source>This plan is arithmetic on what you typed. It does not examine you.</source>
        <translation>Dieser Plan rechnet mit dem, was du eingegeben hast. Er untersucht dich nicht.</translation>
    </message>
    <message>
        <source>{0} to go, {1} week</source>
        <translation>noch {0}, Woche: {1}</translation>
    </message>
    <message>
        <source>loading</source>
        <translation>Belastung</translation>
    </message>
    <message>
        <source>Race week</source>
        <translation>Rennwoche</translation>
    </message>
    <message>
        <source>Distance</source>
        <translation>Distanz</translation>
    </message>
    <message>
        <source>Clay: over 10 % above the last loading week. A custom, weakly supported.</source>
        <translation>Tonfarben: mehr als 10 % über der letzten Belastungswoche. Ein Brauch, schwach belegt.</translation>
    </message>
    <message>
        <source>Of last loading week</source>
        <translation>Von letzter Belastungswoche</translation>
    </message>
    <message>
        <source>Match</source>
        <translation>Passt</translation>
    </message>
    <message>
        <source>Of the stretch</source>
        <translation>Von der Strecke</translation>
    </message>
    <message>
        <source>On feet</source>
        <translation>Auf den Beinen</translation>
    </message>
    <message>
        <source>What it leaves out</source>
        <translation>Was es auslässt</translation>
    </message>
    <message>
        <source>any ground</source>
        <translation>beliebig</translation>
    </message>
    <message>
        <source>{0} s</source>
        <translation>{0} s</translation>
    </message>
    <message>
        <source>{0} times round {1}, {2} each</source>
        <translation>{0}-mal um {1}, je {2}</translation>
    </message>
    <message>
        <source>on the level</source>
        <translation>im Flachen</translation>
    </message>
    <message>
        <source>up {0}</source>
        <translation>hinauf {0}</translation>
    </message>
    <message>
        <source>down {0}</source>
        <translation>hinab {0}</translation>
    </message>
    <message>
        <source>{0} {1}, {2}</source>
        <translation>{0} {1}, {2}</translation>
    </message>
    <message>
        <source>{0} times {1} {2}, {3}</source>
        <translation>{0}-mal {1} {2}, {3}</translation>
    </message>
    <message>
        <source>Build the block</source>
        <translation>Den Block bauen</translation>
    </message>
    <message>
        <source>No sessions yet.</source>
        <translation>Noch keine Einheiten.</translation>
    </message>
    <message>
        <source>Its share of the week</source>
        <translation>Sein Anteil der Woche</translation>
    </message>
    <message>
        <source>Longest, 30 days before</source>
        <translation>Längster, 30 Tage davor</translation>
    </message>
    <message>
        <source>Climb</source>
        <translation>Aufstieg</translation>
    </message>
    <message>
        <source>Drop</source>
        <translation>Abstieg</translation>
    </message>
    <message>
        <source>Practice carbs</source>
        <translation>KH geübt</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>Effort times minutes (Foster 1998). Compare only with your own weeks.</source>
        <translation>Anstrengung mal Minuten (Foster 1998). Nur mit deinen eigenen Wochen vergleichen.</translation>
    </message>
    <message>
        <source>{0} sessions are selected: {1}, {2}. This is the one at the cursor.</source>
        <translation>{0} Einheiten sind ausgewählt: {1}, {2}. Hier steht die mit dem dunklen Rand.</translation>
    </message>
    <message>
        <source>On the same day: {0}</source>
        <translation>Am selben Tag: {0}</translation>
    </message>
    <message>
        <source>race week</source>
        <translation>Rennwoche</translation>
    </message>
    <message>
        <source>{0} to go</source>
        <translation>noch {0}</translation>
    </message>
    <message>
        <source>from {0}, to {1}</source>
        <translation>von {0}, bis {1}</translation>
    </message>
    <message>
        <source>Ground</source>
        <translation>Untergrund</translation>
    </message>
    <message>
        <source>Practice</source>
        <translation>Übung</translation>
    </message>
    <message>
        <source>Missed. What is missed is not made up later.</source>
        <translation>Ausgefallen. Was ausfällt, wird nicht nachgeholt.</translation>
    </message>
    <message>
        <source>done</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Effort</source>
        <translation>Anstrengung</translation>
    </message>
    <message>
        <source>{0} One more like it.</source>
        <translation>{0} Noch einmal dasselbe.</translation>
    </message>
    <message>
        <source>{0} {1} more like it.</source>
        <translation>{0} Noch {1}-mal dasselbe.</translation>
    </message>
    <message>
        <source>It holds only as long as it was; H puts it back.</source>
        <translation>Es hält nur so lang, wie sie war; H macht das.</translation>
    </message>
    <message>
        <source>Nothing near would hold; H leaves it out.</source>
        <translation>In der Nähe wäre nichts erfüllt; H lässt sie weg.</translation>
    </message>
    <message>
        <source>Nothing near would hold; H puts it back.</source>
        <translation>In der Nähe wäre nichts erfüllt; H legt sie zurück.</translation>
    </message>
    <message>
        <source>{0} would hold; H makes it so</source>
        <translation>{0}: wäre erfüllt; H macht es so</translation>
    </message>
    <message>
        <source>Swapped with the {0} of {1} would hold</source>
        <translation>Getauscht mit {0} ({1}): wäre erfüllt</translation>
    </message>
    <message>
        <source>{0}; H swaps them</source>
        <translation>{0}; H tauscht sie</translation>
    </message>
    <message>
        <source>{0} would hold</source>
        <translation>{0}: wäre erfüllt</translation>
    </message>
    <message>
        <source>{0} of {1} to go</source>
        <translation>{0}, noch {1}</translation>
    </message>
    <message>
        <source>{0} of the race week</source>
        <translation>{0}, Rennwoche</translation>
    </message>
    <message>
        <source>Climb, drop</source>
        <translation>Auf, ab</translation>
    </message>
    <message>
        <source>Carbs</source>
        <translation>KH</translation>
    </message>
    <message>
        <source>Every check holds</source>
        <translation>Alle Prüfungen erfüllt</translation>
    </message>
    <message>
        <source>Checks that do not hold</source>
        <translation>Nicht erfüllte Prüfungen</translation>
    </message>
    <message>
        <source>Checks it touches</source>
        <translation>Prüfungen, die es berührt</translation>
    </message>
    <message>
        <source>{0}; H puts it there</source>
        <translation>{0}; H legt es dorthin</translation>
    </message>
    <message>
        <source>before</source>
        <translation>vorher</translation>
    </message>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>Section</source>
        <translation>Abschnitt</translation>
    </message>
    <message>
        <source>Arrive</source>
        <translation>Ankunft</translation>
    </message>
    <message>
        <source>Window</source>
        <translation>Fenster</translation>
    </message>
    <message>
        <source>Where 8 of 10 arrivals fall in 10,000 simulated races; an estimate of our own.</source>
        <translation>Hier liegen 8 von 10 Ankünften in 10.000 simulierten Rennen; eine eigene Schätzung.</translation>
    </message>
    <message>
        <source>{0} to {1}</source>
        <translation>{0} bis {1}</translation>
    </message>
    <message>
        <source>{0} at {1}, {2}</source>
        <translation>{0} bei {1}, {2}</translation>
    </message>
    <message>
        <source>Servings</source>
        <translation>Portionen</translation>
    </message>
    <message>
        <source>Fluid</source>
        <translation>Flüssigkeit</translation>
    </message>
    <message>
        <source>Sodium</source>
        <translation>Natrium</translation>
    </message>
    <message>
        <source>Caffeine</source>
        <translation>Koffein</translation>
    </message>
    <message>
        <source>Race day</source>
        <translation>Renntag</translation>
    </message>
    <message>
        <source>Open a course file</source>
        <translation>Eine Streckendatei öffnen</translation>
    </message>
    <message>
        <source>No course yet. Drop a GPX file on the window.</source>
        <translation>Noch keine Strecke. Zieh eine GPX-Datei ins Fenster.</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Running time</source>
        <translation>Laufzeit</translation>
    </message>
    <message>
        <source>Target, fixed</source>
        <translation>Vorgabe, fest</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Vorgabe</translation>
    </message>
    <message>
        <source>To this cutoff, leaving</source>
        <translation>Zum Zeitlimit, beim Weiterlaufen</translation>
    </message>
    <message>
        <source>To this cutoff</source>
        <translation>Zu diesem Zeitlimit</translation>
    </message>
    <message>
        <source>Time in hand</source>
        <translation>Zeitpolster</translation>
    </message>
    <message>
        <source>So much later, every later cutoff is still met at planned speed.</source>
        <translation>Um so viel später, und jedes spätere Zeitlimit wird mit geplantem Tempo noch erreicht.</translation>
    </message>
    <message>
        <source>Forecast takes</source>
        <translation>Prognose braucht</translation>
    </message>
    <message>
        <source>At walking pace</source>
        <translation>Im Gehen</translation>
    </message>
    <message>
        <source>Pace there</source>
        <translation>Tempo dort</translation>
    </message>
    <message>
        <source>Leave later, and a cutoff is missed even at planned speed.</source>
        <translation>Gehst du später los, wird ein Zeitlimit selbst mit geplantem Tempo verpasst.</translation>
    </message>
    <message>
        <source>Leave by</source>
        <translation>Spätestens los</translation>
    </message>
    <message>
        <source>Leave by then and the rest can be walked in, only if you are well.</source>
        <translation>Bis dahin los, und der Rest lässt sich gehen, nur wenn es dir gut geht.</translation>
    </message>
    <message>
        <source>not from here</source>
        <translation>nicht von hier</translation>
    </message>
    <message>
        <source>Leave by, to walk in</source>
        <translation>Gehgrenze, los bis</translation>
    </message>
    <message>
        <source>The day</source>
        <translation>Der Tag</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Dunkel</translation>
    </message>
    <message>
        <source>Rest can be walked in from</source>
        <translation>Rest lässt sich gehen ab</translation>
    </message>
    <message>
        <source>Air on your way</source>
        <translation>Luft unterwegs</translation>
    </message>
    <message>
        <source>Good day</source>
        <translation>Guter Tag</translation>
    </message>
    <message>
        <source>Fair day</source>
        <translation>Mittlerer Tag</translation>
    </message>
    <message>
        <source>Hard day</source>
        <translation>Schwerer Tag</translation>
    </message>
    <message>
        <source>Carry out of {0}</source>
        <translation>Mitnehmen ab {0}</translation>
    </message>
    <message>
        <source>Carbs, 15 % spare</source>
        <translation>KH, 15 % Reserve</translation>
    </message>
    <message>
        <source>Fluid, 15 % spare</source>
        <translation>Flüssigkeit, 15 % Reserve</translation>
    </message>
    <message>
        <source>Planned per hour</source>
        <translation>Geplant je Stunde</translation>
    </message>
    <message>
        <source>Glycogen at least</source>
        <translation>Glykogen mindestens</translation>
    </message>
    <message>
        <source>In the gut at most</source>
        <translation>Im Magen höchstens</translation>
    </message>
    <message>
        <source>Fuel</source>
        <translation>Verpflegung</translation>
    </message>
    <message>
        <source>Per hour</source>
        <translation>Je Stunde</translation>
    </message>
    <message>
        <source>In the body at most</source>
        <translation>Im Körper höchstens</translation>
    </message>
    <message>
        <source>Sodium a litre</source>
        <translation>Natrium je Liter</translation>
    </message>
    <message>
        <source>Cut sections every so far</source>
        <translation>Abschnitte gleicher Länge schneiden</translation>
    </message>
    <message>
        <source>Length of a section</source>
        <translation>Länge eines Abschnitts</translation>
    </message>
    <message>
        <source>&amp;Length of a section</source>
        <translation>&amp;Länge eines Abschnitts</translation>
    </message>
    <message>
        <source>End them at aid &amp;stations too</source>
        <translation>Auch an &amp;Stationen enden lassen</translation>
    </message>
    <message>
        <source>A section always ends where there is a cutoff.</source>
        <translation>Ein Abschnitt endet immer an einem Zeitlimit.</translation>
    </message>
    <message>
        <source>&amp;Cut</source>
        <translation>S&amp;chneiden</translation>
    </message>
    <message>
        <source>Name the section</source>
        <translation>Abschnitt benennen</translation>
    </message>
    <message>
        <source>If …, then …</source>
        <translation>Wenn …, dann …</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>When it gets &amp;hard here</source>
        <translation>Wenn es hier &amp;hart wird</translation>
    </message>
    <message>
        <source>&amp;Set</source>
        <translation>&amp;Setzen</translation>
    </message>
    <message>
        <source>What surfaces cost</source>
        <translation>Was Untergründe kosten</translation>
    </message>
    <message>
        <source>Energy on each surface over that on firm ground, and speed downhill over that on firm ground. What is usual stands beside it: sand and smooth trail come from measurements, the rest is our own estimate. Help names the sources.</source>
        <translation>Energie auf jedem Untergrund gegenüber festem Boden und Tempo bergab gegenüber festem Boden. Das Übliche steht daneben: Sand und glatter Trail stammen aus Messungen, der Rest ist unsere eigene Schätzung. Die Hilfe nennt die Quellen.</translation>
    </message>
    <message>
        <source>Energy</source>
        <translation>Energie</translation>
    </message>
    <message>
        <source>Surface</source>
        <translation>Untergrund</translation>
    </message>
    <message>
        <source>Downhill</source>
        <translation>Bergab</translation>
    </message>
    <message>
        <source>Usual</source>
        <translation>Üblich</translation>
    </message>
    <message>
        <source>Energy on {0}</source>
        <translation>Energie auf {0}</translation>
    </message>
    <message>
        <source>Speed downhill on {0}</source>
        <translation>Tempo bergab auf {0}</translation>
    </message>
    <message>
        <source>As &amp;usual</source>
        <translation>&amp;Wie üblich</translation>
    </message>
    <message>
        <source>The file holds several lines. Read another instead:</source>
        <translation>Die Datei enthält mehrere Linien. Lies stattdessen eine andere:</translation>
    </message>
    <message>
        <source>{0}: {1}, {2} points</source>
        <translation>{0}: {1}, {2} Punkte</translation>
    </message>
    <message>
        <source>all in order</source>
        <translation>alle der Reihe nach</translation>
    </message>
    <message>
        <source>Read this</source>
        <translation>Diese lesen</translation>
    </message>
    <message>
        <source>Read this: {0}</source>
        <translation>Diese lesen: {0}</translation>
    </message>
    <message>
        <source>What was mended</source>
        <translation>Was behoben wurde</translation>
    </message>
    <message>
        <source>Nothing had to be mended in this course.</source>
        <translation>An dieser Strecke war nichts zu beheben.</translation>
    </message>
    <message>
        <source>Undo this</source>
        <translation>Zurücknehmen</translation>
    </message>
    <message>
        <source>Undo this: {0}</source>
        <translation>Zurücknehmen: {0}</translation>
    </message>
    <message>
        <source>&amp;Mend all again</source>
        <translation>&amp;Alles wieder beheben</translation>
    </message>
    <message>
        <source>To undo one, open the file of the course again: it was not read in this sitting.</source>
        <translation>Um eins zurückzunehmen, öffne die Datei der Strecke neu: Sie wurde in dieser Sitzung nicht gelesen.</translation>
    </message>
    <message>
        <source>This week</source>
        <extracomment>Target of a link that starts an action, by its name in the action table.</extracomment>
        <translation>Diese Woche</translation>
    </message>
    <message>
        <source>Mark the sessions of this week</source>
        <translation>Einheiten dieser Woche markieren</translation>
    </message>
    <message>
        <source>Last part</source>
        <translation>Letzter Teil</translation>
    </message>
    <message>
        <source>Parts</source>
        <translation>Teile</translation>
    </message>
    <message>
        <source>Locked</source>
        <translation>Gesperrt</translation>
    </message>
    <message>
        <source>stays as it is</source>
        <translation>bleibt, wie es ist</translation>
    </message>
    <message>
        <source>What it is for</source>
        <translation>Wozu es dient</translation>
    </message>
    <message>
        <source>With only 40 minutes</source>
        <translation>Mit nur 40 Minuten</translation>
    </message>
    <message>
        <source>Questions on health, before the first hard weeks</source>
        <translation>Fragen zur Gesundheit, vor den ersten harten Wochen</translation>
    </message>
    <message>
        <source>{0}: {1} to {2}</source>
        <translation>{0}: {1} bis {2}</translation>
    </message>
    <message>
        <source>{0}: {1}, climb and drop {2}, {3}</source>
        <translation>{0}: {1}, Auf- und Abstieg {2}, {3}</translation>
    </message>
    <message>
        <source>{0}: {1}, {2} high, {3}</source>
        <translation>{0}: {1}, {2} hoch, {3}</translation>
    </message>
    <message>
        <source>Learnt before</source>
        <extracomment>What a click on an open lesson does: the name of its action.</extracomment>
        <translation>Früher gelernt</translation>
    </message>
    <message>
        <source>Answer it</source>
        <translation>Beantworten</translation>
    </message>
    <message>
        <source>recorded</source>
        <translation>aufgezeichnet</translation>
    </message>
    <message>
        <source>Look at the recording</source>
        <translation>Aufzeichnung ansehen</translation>
    </message>
    <message>
        <source>Mark the session done from it</source>
        <translation>Einheit damit als erledigt markieren</translation>
    </message>
    <message>
        <source>Time moving</source>
        <translation>Zeit in Bewegung</translation>
    </message>
    <message>
        <source>Standing</source>
        <translation>Im Stehen</translation>
    </message>
    <message>
        <source>Flat-equivalent pace</source>
        <translation>Tempo, flach umgerechnet</translation>
    </message>
    <message>
        <source>Second half slower by</source>
        <translation>Zweite Hälfte langsamer um</translation>
    </message>
    <message>
        <source>Aid station</source>
        <extracomment>What a click on a mend of a stop does: the station and its stop in seconds follow.</extracomment>
        <translation>Verpflegungsstelle</translation>
    </message>
    <message>
        <source>At</source>
        <translation>Bei</translation>
    </message>
    <message>
        <source>Cutoff, out by</source>
        <translation>Zeitlimit, raus bis</translation>
    </message>
    <message>
        <source>Cutoff, in by</source>
        <translation>Zeitlimit, da bis</translation>
    </message>
    <message>
        <source>{0} of {1} days</source>
        <translation>{0} von {1} Tagen</translation>
    </message>
    <message>
        <source>Makes it, about</source>
        <translation>Schafft es, etwa</translation>
    </message>
    <message>
        <source>Stop: {0}</source>
        <translation>Halt: {0}</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Halt</translation>
    </message>
    <message>
        <source>Leave</source>
        <translation>Weiter</translation>
    </message>
    <message>
        <source>Ahead, to {0}</source>
        <translation>Voraus, bis {0}</translation>
    </message>
    <message>
        <source>When</source>
        <translation>Wann</translation>
    </message>
    <message>
        <source>Underfoot: {0}</source>
        <translation>Unter den Füßen: {0}</translation>
    </message>
    <message>
        <source>By day</source>
        <translation>Bei Tag</translation>
    </message>
    <message>
        <source>In twilight</source>
        <translation>In der Dämmerung</translation>
    </message>
    <message>
        <source>Carry out</source>
        <translation>Mitnehmen</translation>
    </message>
    <message>
        <source>Food and bottles</source>
        <translation>Essen und Flaschen</translation>
    </message>
    <message>
        <source>Your bottles hold {0} less than you would drink to the next tap.</source>
        <translation>Deine Flaschen fassen {0} weniger, als du bis zur nächsten Wasserstelle trinken würdest.</translation>
    </message>
    <message>
        <source>Drop bag</source>
        <translation>Dropbag</translation>
    </message>
    <message>
        <source>From the crew</source>
        <translation>Von der Betreuung</translation>
    </message>
    <message>
        <source>From the table</source>
        <translation>Vom Tisch</translation>
    </message>
    <message>
        <source>To change: {0}.</source>
        <translation>Wechseln: {0}.</translation>
    </message>
    <message>
        <source>In the bag: {0}.</source>
        <translation>Im Beutel: {0}.</translation>
    </message>
    <message>
        <source>Comes: {0}.</source>
        <translation>Kommt: {0}.</translation>
    </message>
    <message>
        <source>Hands over: {0}.</source>
        <translation>Reicht an: {0}.</translation>
    </message>
    <message>
        <source>Asks: {0}.</source>
        <translation>Fragt: {0}.</translation>
    </message>
    <message>
        <source>How to get there: {0}</source>
        <translation>Anfahrt: {0}</translation>
    </message>
    <message>
        <source>A pacer may come along from here.</source>
        <translation>Ab hier darf ein Begleitläufer mit.</translation>
    </message>
    <message>
        <source>Crew</source>
        <translation>Betreuung</translation>
    </message>
    <message>
        <source>If you end here: {0}.</source>
        <translation>Wenn du hier aufhörst: {0}.</translation>
    </message>
    <message>
        <source>Proven: no way keeps these rules with fewer changes.</source>
        <translation>Bewiesen: Kein Weg hält diese Regeln mit weniger Änderungen.</translation>
    </message>
    <message>
        <source>The best found in the time; fewer changes may be possible.</source>
        <translation>Das Beste, was in der Zeit gefunden wurde; weniger Änderungen sind vielleicht möglich.</translation>
    </message>
    <message>
        <source>What it costs</source>
        <translation>Was es kostet</translation>
    </message>
    <message>
        <source>Greatest week</source>
        <translation>Größte Woche</translation>
    </message>
    <message>
        <source>In all</source>
        <translation>Insgesamt</translation>
    </message>
    <message>
        <source>Loading weeks lost</source>
        <translation>Verlorene Belastungswochen</translation>
    </message>
    <message>
        <source>Sessions changed: {0}</source>
        <translation>Geänderte Einheiten: {0}</translation>
    </message>
    <message>
        <source>{0}: {1} goes</source>
        <translation>{0}: {1} entfällt</translation>
    </message>
    <message>
        <source>{0}: {1} comes in</source>
        <translation>{0}: {1} kommt dazu</translation>
    </message>
    <message>
        <source>{0} on {1}</source>
        <translation>{0} am {1}</translation>
    </message>
    <message>
        <source>{0}: {1} becomes {2}</source>
        <translation>{0}: {1} wird zu {2}</translation>
    </message>
    <message>
        <source>What comes next</source>
        <translation>Was als Nächstes kommt</translation>
    </message>
    <message>
        <source>Put in the aid stations</source>
        <translation>Verpflegungsstellen eintragen</translation>
    </message>
    <message>
        <source>Put in the cutoffs</source>
        <translation>Zeitlimits eintragen</translation>
    </message>
    <message>
        <source>Look over race and runner</source>
        <translation>Rennen und Läufer durchsehen</translation>
    </message>
    <message>
        <source>See the cards to print</source>
        <translation>Die Karten zum Drucken ansehen</translation>
    </message>
    <message>
        <source>Drag a run to another day, or its right edge to lengthen it.</source>
        <translation>Zieh einen Lauf auf einen anderen Tag, oder am rechten Rand, um ihn zu verlängern.</translation>
    </message>
    <message>
        <source>Drag the top of a target: up is faster. Click anything for its figures.</source>
        <translation>Zieh eine Vorgabe an der Oberkante: nach oben ist schneller. Ein Klick zeigt zu allem die Zahlen.</translation>
    </message>
    <message>
        <source>resources</source>
        <translation>Dateien des Programms</translation>
    </message>
    <message>
        <source>window</source>
        <translation>Fenster</translation>
    </message>
    <message>
        <source>block, in a process of its own</source>
        <translation>Trainingsblock, in einem eigenen Prozess</translation>
    </message>
    <message>
        <source>course, calendar, tables</source>
        <translation>Strecke, Kalender, Tabellen</translation>
    </message>
    <message>
        <source>cards</source>
        <translation>Karten</translation>
    </message>
    <message>
        <source>{0} ({1} s)</source>
        <translation>{0} ({1} s)</translation>
    </message>
    <message>
        <source>ok</source>
        <translation>gut</translation>
    </message>
    <message>
        <source>FAILED</source>
        <translation>FEHLER</translation>
    </message>
    <message>
        <source>Qt has no words in {0}.</source>
        <translation>Qt hat keine Texte für {0}.</translation>
    </message>
    <message>
        <source>{0} files, {1}</source>
        <translation>{0} Dateien, {1}</translation>
    </message>
    <message>
        <source>The demo did not open.</source>
        <translation>Die Demo ging nicht auf.</translation>
    </message>
    <message>
        <source>The search for a block ended without one.</source>
        <translation>Die Suche nach einem Block endete ohne einen.</translation>
    </message>
    <message>
        <source>{0} sessions, searched plan has {1}</source>
        <translation>{0} Einheiten, der gesuchte Plan hat {1}</translation>
    </message>
    <message>
        <source>{0} is empty.</source>
        <translation>{0} ist leer.</translation>
    </message>
    <message>
        <source>The PDF is not whole.</source>
        <translation>Das PDF ist nicht vollständig.</translation>
    </message>
    <message>
        <source>{0} pages</source>
        <translation>{0} Seiten</translation>
    </message>
</context>
<context>
    <name>Actions</name>
    <message>
        <source>I&amp;mport sessions, from calendar or CSV…</source>
        <translation>Ein&amp;heiten importieren, aus Kalender oder CSV…</translation>
    </message>
    <message>
        <source>Export course with tar&amp;gets as GPX…</source>
        <translation>Strecke mit &amp;Vorgaben als GPX exportieren…</translation>
    </message>
    <message>
        <source>Export sessions for &amp;a calendar…</source>
        <translation>Einheiten für Ka&amp;lender exportieren…</translation>
    </message>
    <message>
        <source>Export all ta&amp;bles as CSV…</source>
        <translation>&amp;Alle Tabellen als CSV exportieren…</translation>
    </message>
    <message>
        <source>Export all tables as &amp;XLSX…</source>
        <translation>Alle Tabellen als &amp;XLSX exportieren…</translation>
    </message>
    <message>
        <source>Export pro&amp;file as PNG…</source>
        <translation>Profil als P&amp;NG exportieren…</translation>
    </message>
    <message>
        <source>Export profile as S&amp;VG…</source>
        <translation>Profil als SV&amp;G exportieren…</translation>
    </message>
    <message>
        <source>&amp;Change session…</source>
        <translation>Einheit ä&amp;ndern…</translation>
    </message>
    <message>
        <source>Move with the arrow &amp;keys</source>
        <translation>Mit &amp;Pfeiltasten bewegen</translation>
    </message>
    <message>
        <source>T&amp;his week…</source>
        <translation>&amp;Diese Woche…</translation>
    </message>
    <message>
        <source>Ho&amp;w it went…</source>
        <translation>&amp;Wie es lief…</translation>
    </message>
    <message>
        <source>Mark &amp;done as planned</source>
        <translation>Wie geplant &amp;erledigt</translation>
    </message>
    <message>
        <source>Mark &amp;missed</source>
        <translation>Als aus&amp;gefallen markieren</translation>
    </message>
    <message>
        <source>&amp;Neither done nor missed</source>
        <translation>Weder er&amp;ledigt noch ausgefallen</translation>
    </message>
    <message>
        <source>&amp;Add a session</source>
        <translation>Einheit &amp;hinzufügen</translation>
    </message>
    <message>
        <source>Add from the shel&amp;f of kinds…</source>
        <translation>Aus der &amp;Ablage der Arten hinzufügen…</translation>
    </message>
    <message>
        <source>&amp;Remove session</source>
        <translation>Einheit en&amp;tfernen</translation>
    </message>
    <message>
        <source>T&amp;ype a week back in…</source>
        <translation>Woche abt&amp;ippen…</translation>
    </message>
    <message>
        <source>Cu&amp;t</source>
        <translation>Auss&amp;chneiden</translation>
    </message>
    <message>
        <source>C&amp;opy</source>
        <translation>&amp;Kopieren</translation>
    </message>
    <message>
        <source>&amp;Paste</source>
        <translation>Ein&amp;fügen</translation>
    </message>
    <message>
        <source>Repeat e&amp;very week…</source>
        <translation>&amp;Jede Woche wiederholen…</translation>
    </message>
    <message>
        <source>Lock or &amp;unlock</source>
        <translation>&amp;Sperren oder freigeben</translation>
    </message>
    <message>
        <source>&amp;Swap the two selected</source>
        <translation>Die zwei gewählten ta&amp;uschen</translation>
    </message>
    <message>
        <source>Swap w&amp;eek with the one before</source>
        <translation>Woche mit der v&amp;origen tauschen</translation>
    </message>
    <message>
        <source>Swap week with the ne&amp;xt one</source>
        <translation>Woche &amp;mit der nächsten tauschen</translation>
    </message>
    <message>
        <source>Se&amp;lect all ahead</source>
        <translation>Alle be&amp;vorstehenden wählen</translation>
    </message>
    <message>
        <source>&amp;I missed these days…</source>
        <translation>Diese Tage ha&amp;be ich verpasst…</translation>
    </message>
    <message>
        <source>&amp;Build the block anew</source>
        <translation>Bl&amp;ock neu bauen</translation>
    </message>
    <message>
        <source>Keep as a template to use a&amp;gain…</source>
        <translation>Als Vo&amp;rlage behalten…</translation>
    </message>
    <message>
        <source>Ad&amp;just a template to this race…</source>
        <translation>Vorlage an dieses Rennen an&amp;passen…</translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>&amp;Build-up</source>
        <translation>&amp;Aufbau</translation>
    </message>
    <message>
        <source>&amp;Race day</source>
        <translation>&amp;Renntag</translation>
    </message>
    <message>
        <source>&amp;Course</source>
        <translation>&amp;Strecke</translation>
    </message>
    <message>
        <source>F&amp;uel</source>
        <translation>&amp;Verpflegung</translation>
    </message>
    <message>
        <source>Rec&amp;ordings</source>
        <translation>Auf&amp;zeichnungen</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>A&amp;nsicht</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>New from a &amp;course…</source>
        <translation>Neu aus einer &amp;Strecke…</translation>
    </message>
    <message>
        <source>&amp;Type a course table…</source>
        <translation>Streckentabelle &amp;tippen…</translation>
    </message>
    <message>
        <source>&amp;Open project…</source>
        <translation>Projekt ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>Another &amp;window</source>
        <translation>&amp;Weiteres Fenster</translation>
    </message>
    <message>
        <source>Open the &amp;demo</source>
        <translation>&amp;Demo öffnen</translation>
    </message>
    <message>
        <source>&amp;Save a copy…</source>
        <translation>&amp;Kopie speichern…</translation>
    </message>
    <message>
        <source>Cop&amp;y to send…</source>
        <translation>Kopie &amp;zum Senden…</translation>
    </message>
    <message>
        <source>&amp;Name this state…</source>
        <translation>Stand &amp;benennen…</translation>
    </message>
    <message>
        <source>Go back to an &amp;earlier state…</source>
        <translation>Zu früherem Stand zu&amp;rück…</translation>
    </message>
    <message>
        <source>Write cards as &amp;PDF…</source>
        <translation>Karten als &amp;PDF schreiben…</translation>
    </message>
    <message>
        <source>Pr&amp;int cards…</source>
        <translation>Karten dru&amp;cken…</translation>
    </message>
    <message>
        <source>Card for a loc&amp;k screen…</source>
        <translation>Karte für Sperrb&amp;ildschirm…</translation>
    </message>
    <message>
        <source>C&amp;lose project</source>
        <translation>Pr&amp;ojekt schließen</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>B&amp;eenden</translation>
    </message>
    <message>
        <source>&amp;Steps of this sitting…</source>
        <translation>&amp;Schritte dieser Sitzung…</translation>
    </message>
    <message>
        <source>&amp;Find anything…</source>
        <translation>Alles &amp;finden…</translation>
    </message>
    <message>
        <source>Ra&amp;ce and runner…</source>
        <translation>&amp;Rennen und Läufer…</translation>
    </message>
    <message>
        <source>Cre&amp;w and lists…</source>
        <translation>&amp;Betreuung und Listen…</translation>
    </message>
    <message>
        <source>Wishes and days &amp;away…</source>
        <translation>&amp;Wünsche und Abwesenheit…</translation>
    </message>
    <message>
        <source>Add a &amp;tune-up race…</source>
        <translation>&amp;Vorbereitungsrennen hinzufügen…</translation>
    </message>
    <message>
        <source>Races to &amp;pick from…</source>
        <translation>Rennen zur &amp;Auswahl…</translation>
    </message>
    <message>
        <source>&amp;Ground at hand…</source>
        <translation>&amp;Gelände vor Ort…</translation>
    </message>
    <message>
        <source>&amp;Health…</source>
        <translation>Ges&amp;undheit…</translation>
    </message>
    <message>
        <source>For the hea&amp;d…</source>
        <translation>Für den &amp;Kopf…</translation>
    </message>
    <message>
        <source>&amp;Own lines for the last days…</source>
        <translation>&amp;Eigene Zeilen für die letzten Tage…</translation>
    </message>
    <message>
        <source>&amp;Notes…</source>
        <translation>&amp;Notizen…</translation>
    </message>
    <message>
        <source>Sett&amp;ings…</source>
        <translation>E&amp;instellungen…</translation>
    </message>
    <message>
        <source>Open another &amp;course…</source>
        <translation>Andere &amp;Strecke öffnen…</translation>
    </message>
    <message>
        <source>Add an &amp;aid station</source>
        <translation>Ver&amp;pflegungsstelle hinzufügen</translation>
    </message>
    <message>
        <source>Let the section follow the cur&amp;ve</source>
        <translation>Abschnitt der &amp;Kurve folgen lassen</translation>
    </message>
    <message>
        <source>Let all &amp;sections follow the curve</source>
        <translation>&amp;Alle Abschnitte der Kurve folgen lassen</translation>
    </message>
    <message>
        <source>&amp;Lock the section at its time</source>
        <translation>Abschnitt auf seine &amp;Zeit sperren</translation>
    </message>
    <message>
        <source>Pace of &amp;target and runner…</source>
        <translation>&amp;Tempo von Zielzeit und Läufer…</translation>
    </message>
    <message>
        <source>Predict the &amp;finish…</source>
        <translation>Ankunft im Zie&amp;l vorhersagen…</translation>
    </message>
    <message>
        <source>Fit from my &amp;runs…</source>
        <translation>Aus &amp;meinen Läufen anpassen…</translation>
    </message>
    <message>
        <source>&amp;Weather and conditions…</source>
        <translation>&amp;Wetter und Bedingungen…</translation>
    </message>
    <message>
        <source>&amp;Beside other rules…</source>
        <translation>Ne&amp;ben anderen Regeln…</translation>
    </message>
    <message>
        <source>Fold the le&amp;g away, or unfold it</source>
        <translation>Teilstück &amp;falten oder entfalten</translation>
    </message>
    <message>
        <source>&amp;Unfold all legs</source>
        <translation>Alle Teilstücke e&amp;ntfalten</translation>
    </message>
    <message>
        <source>Shape of the &amp;course…</source>
        <translation>&amp;Form der Strecke…</translation>
    </message>
    <message>
        <source>What was &amp;mended…</source>
        <translation>Was &amp;behoben wurde…</translation>
    </message>
    <message>
        <source>Change &amp;aid station…</source>
        <translation>&amp;Verpflegungsstelle ändern…</translation>
    </message>
    <message>
        <source>Cut sections by aid &amp;stations</source>
        <translation>Abschnitte nach &amp;Stationen schneiden</translation>
    </message>
    <message>
        <source>Cut sections by climbs and &amp;descents</source>
        <translation>Abschnitte nach &amp;An- und Abstiegen schneiden</translation>
    </message>
    <message>
        <source>Cut sections &amp;every so far…</source>
        <translation>Abschnitte &amp;gleicher Länge schneiden…</translation>
    </message>
    <message>
        <source>S&amp;plit the section at the cursor</source>
        <translation>Abschnitt am &amp;Cursor teilen</translation>
    </message>
    <message>
        <source>&amp;Join the section with the next</source>
        <translation>Abschnitt &amp;mit dem nächsten verbinden</translation>
    </message>
    <message>
        <source>&amp;Name the section…</source>
        <translation>Abschnitt be&amp;nennen…</translation>
    </message>
    <message>
        <source>What surfaces c&amp;ost…</source>
        <translation>Was &amp;Untergründe kosten…</translation>
    </message>
    <message>
        <source>Fuel per &amp;hour…</source>
        <translation>Verpflegung je &amp;Stunde…</translation>
    </message>
    <message>
        <source>&amp;Bottles, caffeine, allergies…</source>
        <translation>&amp;Flaschen, Koffein, Allergien…</translation>
    </message>
    <message>
        <source>Food at &amp;stations…</source>
        <translation>&amp;Essen an Stationen…</translation>
    </message>
    <message>
        <source>S&amp;weat test…</source>
        <translation>Sch&amp;weißtest…</translation>
    </message>
    <message>
        <source>&amp;Place fuel by the clock</source>
        <translation>Verpflegung nach der &amp;Uhr setzen</translation>
    </message>
    <message>
        <source>&amp;Fill to target…</source>
        <translation>Bis zur &amp;Vorgabe auffüllen…</translation>
    </message>
    <message>
        <source>Repeat a food b&amp;y rule…</source>
        <translation>Essen nach &amp;Regel wiederholen…</translation>
    </message>
    <message>
        <source>Add a fuel &amp;item</source>
        <translation>Verpflegung &amp;hinzufügen</translation>
    </message>
    <message>
        <source>&amp;Remove fuel item</source>
        <translation>Verpflegung en&amp;tfernen</translation>
    </message>
    <message>
        <source>Remove &amp;all items</source>
        <translation>&amp;Alles entfernen</translation>
    </message>
    <message>
        <source>Items keep their &amp;time</source>
        <translation>Alles behält seine &amp;Zeit</translation>
    </message>
    <message>
        <source>Items &amp;keep their place</source>
        <translation>Alles behält seinen &amp;Ort</translation>
    </message>
    <message>
        <source>When it goes wrong, and &amp;cautions…</source>
        <translation>Wenn es schief&amp;geht, und Warnungen…</translation>
    </message>
    <message>
        <source>Put practice food on sessi&amp;ons</source>
        <translation>Übungsverpflegung in Einheiten &amp;legen</translation>
    </message>
    <message>
        <source>What your &amp;gut has tolerated…</source>
        <translation>Was dein &amp;Magen vertragen hat…</translation>
    </message>
    <message>
        <source>&amp;Sheet</source>
        <translation>&amp;Blatt</translation>
    </message>
    <message>
        <source>&amp;Tables</source>
        <translation>&amp;Tabellen</translation>
    </message>
    <message>
        <source>Ca&amp;rds</source>
        <translation>&amp;Karten</translation>
    </message>
    <message>
        <source>&amp;Both storeys</source>
        <translation>B&amp;eide Etagen</translation>
    </message>
    <message>
        <source>Build-&amp;up alone</source>
        <translation>Nur &amp;Aufbau</translation>
    </message>
    <message>
        <source>Race day &amp;alone</source>
        <translation>Nur &amp;Renntag</translation>
    </message>
    <message>
        <source>Race by &amp;distance</source>
        <translation>Rennen nach &amp;Distanz</translation>
    </message>
    <message>
        <source>Race by clo&amp;ck</source>
        <translation>Rennen nach &amp;Uhrzeit</translation>
    </message>
    <message>
        <source>Plan view of t&amp;he course</source>
        <translation>Draufsicht der &amp;Strecke</translation>
    </message>
    <message>
        <source>Fewer &amp;weeks, larger</source>
        <translation>Weniger &amp;Wochen, größer</translation>
    </message>
    <message>
        <source>More weeks o&amp;ver the same width</source>
        <translation>&amp;Mehr Wochen auf gleicher Breite</translation>
    </message>
    <message>
        <source>All weeks i&amp;n view</source>
        <translation>Alle W&amp;ochen im Blick</translation>
    </message>
    <message>
        <source>Col&amp;ours of the system</source>
        <translation>Farben des S&amp;ystems</translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation>&amp;Hell</translation>
    </message>
    <message>
        <source>Dar&amp;k</source>
        <translation>Dunke&amp;l</translation>
    </message>
    <message>
        <source>Text lar&amp;ger</source>
        <translation>Schrift &amp;größer</translation>
    </message>
    <message>
        <source>Text s&amp;maller</source>
        <translation>Schrift klei&amp;ner</translation>
    </message>
    <message>
        <source>Sto&amp;p or allow motion</source>
        <translation>Bewegung sto&amp;ppen oder erlauben</translation>
    </message>
    <message>
        <source>Kilom&amp;etres and metres</source>
        <translation>K&amp;ilometer und Meter</translation>
    </message>
    <message>
        <source>Miles and &amp;feet</source>
        <translation>Meilen und &amp;Fuß</translation>
    </message>
    <message>
        <source>&amp;What is this?</source>
        <translation>&amp;Was ist das?</translation>
    </message>
    <message>
        <source>&amp;Point at what to explain</source>
        <translation>&amp;Zeigen, was erklärt werden soll</translation>
    </message>
    <message>
        <source>Search the &amp;help…</source>
        <translation>&amp;Hilfe durchsuchen…</translation>
    </message>
    <message>
        <source>Hand&amp;book</source>
        <translation>Hand&amp;buch</translation>
    </message>
    <message>
        <source>&amp;Keys</source>
        <translation>&amp;Tasten</translation>
    </message>
    <message>
        <source>When to &amp;stop and get help</source>
        <translation>Wann &amp;aufhören und Hilfe holen</translation>
    </message>
    <message>
        <source>&amp;About Ultraplanner</source>
        <translation>Über &amp;Ultraplanner</translation>
    </message>
    <message>
        <source>&amp;Add recordings…</source>
        <translation>Aufzeichnungen &amp;hinzufügen…</translation>
    </message>
    <message>
        <source>Add a &amp;folder of them…</source>
        <translation>&amp;Ordner davon hinzufügen…</translation>
    </message>
    <message>
        <source>&amp;Look at a recording…</source>
        <translation>Aufzeichnung &amp;ansehen…</translation>
    </message>
    <message>
        <source>&amp;Mark its session done…</source>
        <translation>Ihre Einheit als &amp;erledigt markieren…</translation>
    </message>
    <message>
        <source>&amp;Export its file…</source>
        <translation>Ihre Datei e&amp;xportieren…</translation>
    </message>
    <message>
        <source>&amp;Remove the recording</source>
        <translation>Aufzeichnung en&amp;tfernen</translation>
    </message>
    <message>
        <source>Look &amp;back on a run…</source>
        <translation>Auf einen Lauf &amp;zurückblicken…</translation>
    </message>
    <message>
        <source>Lessons, and their a&amp;nswers</source>
        <translation>&amp;Lehren und ihre Antworten</translation>
    </message>
    <message>
        <source>New &amp;project from this one…</source>
        <translation>Neues Projekt dara&amp;us…</translation>
    </message>
</context>
<context>
    <name>Ask</name>
    <message>
        <source>Open a course</source>
        <translation>Strecke öffnen</translation>
    </message>
    <message>
        <source>GPX courses (*.gpx *.gpx.gz);;All files (*)</source>
        <translation>GPX-Strecken (*.gpx *.gpx.gz);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>GPX recordings (*.gpx *.gpx.gz);;All files (*)</source>
        <translation>GPX-Aufzeichnungen (*.gpx *.gpx.gz);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Choose recordings</source>
        <translation>Aufzeichnungen wählen</translation>
    </message>
    <message>
        <source>A folder of recordings</source>
        <translation>Ordner mit Aufzeichnungen</translation>
    </message>
    <message>
        <source>Open a project</source>
        <translation>Projekt öffnen</translation>
    </message>
    <message>
        <source>Ultraplanner projects (*.ultraplan);;All files (*)</source>
        <translation>Ultraplanner-Projekte (*.ultraplan);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Keep the project in</source>
        <translation>Projekt aufbewahren in</translation>
    </message>
    <message>
        <source>Write the cards to</source>
        <translation>Karten schreiben nach</translation>
    </message>
    <message>
        <source>Write the picture to</source>
        <translation>Bild schreiben nach</translation>
    </message>
    <message>
        <source>Calendars and tables (*.ics *.csv);;All files (*)</source>
        <translation>Kalender und Tabellen (*.ics *.csv);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Import sessions</source>
        <translation>Einheiten importieren</translation>
    </message>
    <message>
        <source>Template blocks (*.ultrablock);;All files (*)</source>
        <translation>Blockvorlagen (*.ultrablock);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Choose a template</source>
        <translation>Vorlage wählen</translation>
    </message>
    <message>
        <source>Template blocks (*.ultrablock)</source>
        <translation>Blockvorlagen (*.ultrablock)</translation>
    </message>
    <message>
        <source>Keep the template in</source>
        <translation>Vorlage behalten in</translation>
    </message>
    <message>
        <source>Export to</source>
        <translation>Exportieren nach</translation>
    </message>
</context>
<context>
    <name>AtCursor</name>
    <message>
        <source>longest {0}</source>
        <translation>längster {0}</translation>
    </message>
    <message>
        <source>climb {0}, drop {1}</source>
        <translation>Aufstieg {0}, Abstieg {1}</translation>
    </message>
    <message>
        <source>{0} practice carbs</source>
        <translation>{0} KH geübt</translation>
    </message>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>twilight</source>
        <translation>Dämmerung</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>dunkel</translation>
    </message>
</context>
<context>
    <name>AwayRows</name>
    <message>
        <source>Days away</source>
        <translation>Abwesenheit</translation>
    </message>
    <message>
        <source>Travel, holidays, shifts: first and last day, minutes free on each, why.</source>
        <translation>Reisen, Urlaub, Schichten: erster und letzter Tag, freie Minuten je Tag, warum.</translation>
    </message>
    <message>
        <source>Add da&amp;ys away</source>
        <translation>&amp;Abwesenheit hinzufügen</translation>
    </message>
</context>
<context>
    <name>BesideTable</name>
    <message>
        <source>Beside other rules</source>
        <translation>Neben anderen Regeln</translation>
    </message>
    <message>
        <source>Target and forecast by race time; the others earlier (-) or later (+) than the target, all made to finish with it. Last line: the finish a rule names by itself.</source>
        <translation>Zielzeit und Prognose in Rennzeit; die anderen früher (-) oder später (+) als die Zielzeit, alle auf dasselbe Ziel gebracht. Letzte Zeile: die Zeit im Ziel, die eine Regel von sich aus nennt.</translation>
    </message>
    <message>
        <source>Section to</source>
        <translation>Abschnitt bis</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Vorgabe</translation>
    </message>
    <message>
        <source>Forecast</source>
        <translation>Prognose</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>Finish by itself</source>
        <translation>Ziel von sich aus</translation>
    </message>
    <message>
        <source>Splits beside other rules</source>
        <translation>Zwischenzeiten neben anderen Regeln</translation>
    </message>
</context>
<context>
    <name>Block</name>
    <message>
        <source>Too little running is entered to grow from; the build-up starts at {0} a week and a run of {1}.</source>
        <translation>Zu wenig Laufen ist eingetragen, um darauf aufzubauen; der Aufbau beginnt mit {0} die Woche und einem Lauf von {1}.</translation>
    </message>
    <message>
        <source>The race is too near to build anything; these weeks only ease into it.</source>
        <translation>Das Rennen ist zu nah, um etwas aufzubauen; diese Wochen führen nur sanft hin.</translation>
    </message>
    <message>
        <source>Volume stops at {0} a week of the {1} asked: the days given hold no more.</source>
        <translation>Der Umfang endet bei {0} die Woche von {1} gefordert: Die gegebenen Tage fassen nicht mehr.</translation>
    </message>
    <message>
        <source>The build-up starts at {0} a week, under the {1} run now: the free time and the longest run allow no more.</source>
        <translation>Der Aufbau beginnt mit {0} die Woche, unter den {1}, die du jetzt läufst: Die freie Zeit und der längste Lauf lassen nicht mehr zu.</translation>
    </message>
    <message>
        <source>Volume reaches {0} a week of the {1} asked: growing by 10 % gets no further by the race.</source>
        <translation>Der Umfang erreicht {0} die Woche von {1} gefordert: Mit 10 % Steigerung ist bis zum Rennen nicht mehr zu schaffen.</translation>
    </message>
    <message>
        <source>The longest run stops at {0} of the {1} asked: it grows by 10 % at a time and the long runs before it keep to about half of their week.</source>
        <translation>Der längste Lauf endet bei {0} von {1} gefordert: Er wächst um je 10 %, und die langen Läufe davor bleiben bei etwa der Hälfte ihrer Woche.</translation>
    </message>
    <message>
        <source>The longest run stops at {0} of the {1} asked: its day has {2} free.</source>
        <translation>Der längste Lauf endet bei {0} von {1} gefordert: Sein Tag hat {2} frei.</translation>
    </message>
    <message>
        <source>There is no rehearsal run: no long run fits three to five weeks before the race.</source>
        <translation>Es gibt keine Generalprobe: Drei bis fünf Wochen vor dem Rennen passt kein langer Lauf.</translation>
    </message>
    <message>
        <source>There is no downhill run: no day lies far enough from the long run. Seek descents on that one.</source>
        <translation>Es gibt keinen Bergablauf: Kein Tag liegt weit genug vom langen Lauf. Such bei diesem Abstiege.</translation>
    </message>
    <message>
        <source>The long runs climb as the race does and nothing at hand gives that: travel for the longest ones, use stand-in sessions for the others.</source>
        <translation>Die langen Läufe steigen wie das Rennen, und nichts vor Ort gibt das her: Reise für die längsten, nimm für die anderen Ersatzeinheiten.</translation>
    </message>
    <message>
        <source>A long flat race wears out the quads in its last third too; downhill runs can be wished for (common practice, no source).</source>
        <translation>Auch ein langes flaches Rennen ermüdet im letzten Drittel die Oberschenkel; Bergabläufe kannst du dir wünschen (übliche Praxis, keine Quelle).</translation>
    </message>
    <message>
        <source>The taper cuts the daily mean by {0}, outside 41 to 60 %: the days allow no other.</source>
        <translation>Das Tapering senkt das Tagesmittel um {0}, außerhalb von 41 bis 60 %: Die Tage lassen nichts anderes zu.</translation>
    </message>
    <message>
        <source>The gut needs {0} weeks of practice to take {1}; there are fewer.</source>
        <translation>Der Magen braucht {0} Wochen Übung, um {1} zu vertragen; es sind weniger.</translation>
    </message>
    <message>
        <source>A tune-up race was left out: it lies outside the build-up, in the week before the race or within two weeks of another.</source>
        <translation>Ein Vorbereitungsrennen wurde ausgelassen: Es liegt außerhalb des Aufbaus, in der Woche vor dem Rennen oder keine zwei Wochen von einem anderen.</translation>
    </message>
    <message>
        <source>A tune-up race of {0} is over 10 % longer than the longest run before it ({1}).</source>
        <translation>Ein Vorbereitungsrennen von {0} ist über 10 % länger als der längste Lauf davor ({1}).</translation>
    </message>
    <message>
        <source>A week of {0} is nearly all tune-up race ({1}): it may grow by more than 10 %.</source>
        <translation>Eine Woche mit {0} ist fast nur Vorbereitungsrennen ({1}): Sie darf um mehr als 10 % wachsen.</translation>
    </message>
    <message>
        <source>{0} of the {1} days with time to run hold one: weeks of this size are shared by fewer, longer runs.</source>
        <translation>{0} der {1} Tage mit Zeit zum Laufen haben einen Lauf: Wochen dieser Größe teilen sich weniger, längere Läufe.</translation>
    </message>
    <message>
        <source>A cutback comes to {0} of the last loading week, outside 60 to 80 %: its days allow no other.</source>
        <translation>Eine Entlastungswoche kommt auf {0} der letzten Belastungswoche, außerhalb von 60 bis 80 %: Ihre Tage lassen nichts anderes zu.</translation>
    </message>
    <message>
        <source>A locked run of {0} is over 10 % longer than the longest run before it ({1}).</source>
        <translation>Ein gesperrter Lauf von {0} ist über 10 % länger als der längste Lauf davor ({1}).</translation>
    </message>
    <message>
        <source>A locked session makes two hard days meet.</source>
        <translation>Durch eine gesperrte Einheit treffen zwei harte Tage aufeinander.</translation>
    </message>
    <message>
        <source>A week comes to {0} by a locked session; up to 10 % over {1} holds.</source>
        <translation>Eine Woche kommt durch eine gesperrte Einheit auf {0}; bis 10 % über {1} hält.</translation>
    </message>
    <message>
        <source>{0} of {1} strength sessions found a day: the others would lie beside hard or very long runs.</source>
        <translation>{0} von {1} Krafteinheiten fanden einen Tag: Die anderen lägen neben harten oder sehr langen Läufen.</translation>
    </message>
    <message>
        <source>{0} of {1} sessions of cross-training found a day: the others are run on or kept free.</source>
        <translation>{0} von {1} Einheiten Alternativtraining fanden einen Tag: An den anderen wird gelaufen oder sie bleiben frei.</translation>
    </message>
    <message>
        <source>The race needs a distance and a finish time above zero.</source>
        <translation>Das Rennen braucht eine Distanz und eine Zielzeit über null.</translation>
    </message>
    <message>
        <source>The race lies before the first day of the build-up; set a later race date.</source>
        <translation>Das Rennen liegt vor dem ersten Tag des Aufbaus; setze ein späteres Datum.</translation>
    </message>
    <message>
        <source>The runner needs an easy pace before a build-up is made.</source>
        <translation>Der Läufer braucht ein lockeres Tempo, bevor ein Aufbau entsteht.</translation>
    </message>
    <message>
        <source>No day has 20 minutes free for running; give the runner at least one.</source>
        <translation>Kein Tag hat 20 Minuten zum Laufen frei; gib dem Läufer mindestens einen.</translation>
    </message>
    <message>
        <source>A cutback comes every 3rd or every 4th week.</source>
        <translation>Entlastet wird jede 3. oder jede 4. Woche.</translation>
    </message>
    <message>
        <source>What the race asks needs {0} on Mondays; {1} are free.</source>
        <extracomment>Monday to Sunday.</extracomment>
        <translation>Was das Rennen fordert, braucht montags {0}; frei sind {1}.</translation>
    </message>
    <message>
        <source>What the race asks needs {0} on Tuesdays; {1} are free.</source>
        <translation>Was das Rennen fordert, braucht dienstags {0}; frei sind {1}.</translation>
    </message>
    <message>
        <source>What the race asks needs {0} on Wednesdays; {1} are free.</source>
        <translation>Was das Rennen fordert, braucht mittwochs {0}; frei sind {1}.</translation>
    </message>
    <message>
        <source>What the race asks needs {0} on Thursdays; {1} are free.</source>
        <translation>Was das Rennen fordert, braucht donnerstags {0}; frei sind {1}.</translation>
    </message>
    <message>
        <source>What the race asks needs {0} on Fridays; {1} are free.</source>
        <translation>Was das Rennen fordert, braucht freitags {0}; frei sind {1}.</translation>
    </message>
    <message>
        <source>What the race asks needs {0} on Saturdays; {1} are free.</source>
        <translation>Was das Rennen fordert, braucht samstags {0}; frei sind {1}.</translation>
    </message>
    <message>
        <source>What the race asks needs {0} on Sundays; {1} are free.</source>
        <translation>Was das Rennen fordert, braucht sonntags {0}; frei sind {1}.</translation>
    </message>
</context>
<context>
    <name>BlockDeeds</name>
    <message>
        <source>Building the block</source>
        <translation>Block wird gebaut</translation>
    </message>
    <message>
        <source>The new block is ready.</source>
        <translation>Der neue Block ist fertig.</translation>
    </message>
    <message>
        <source>The block is built. At the right: where it had to give way.</source>
        <translation>Der Block steht. Rechts: wo er nachgeben musste.</translation>
    </message>
    <message>
        <source>The block is built; it had to give way nowhere.</source>
        <translation>Der Block steht; er musste nirgends nachgeben.</translation>
    </message>
    <message>
        <source>Looking for a better block</source>
        <translation>Suche nach einem besseren Block</translation>
    </message>
    <message>
        <source>A better block is there: greatest week {0}, longest run {1}.</source>
        <translation>Ein besserer Block liegt vor: größte Woche {0}, längster Lauf {1}.</translation>
    </message>
    <message>
        <source>The search was stopped by its time limit.</source>
        <translation>Die Suche endete an ihrer Zeitgrenze.</translation>
    </message>
    <message>
        <source>By what the search counts, none is better by more than {0}.</source>
        <translation>Nach dem, was die Suche zählt, ist keiner um mehr als {0} besser.</translation>
    </message>
    <message>
        <source>Noticed while building it</source>
        <translation>Beim Bauen aufgefallen</translation>
    </message>
</context>
<context>
    <name>BuildUp</name>
    <message>
        <source>Build-up</source>
        <translation>Aufbau</translation>
    </message>
    <message>
        <source>Open the build-up</source>
        <extracomment>The actions a context menu offers, by its name: the window puts them in.</extracomment>
        <translation>Aufbau öffnen</translation>
    </message>
</context>
<context>
    <name>BuildUpDeeds</name>
    <message>
        <source>Tiles settle and changed figures are marked.</source>
        <extracomment>So many points of a loop are kept.</extracomment>
        <translation>Kacheln gleiten an ihren Platz, geänderte Zahlen werden markiert.</translation>
    </message>
    <message>
        <source>Nothing moves by itself any more.</source>
        <translation>Nichts bewegt sich mehr von selbst.</translation>
    </message>
    <message>
        <source>Nothing moves as long as your system asks programs to keep still.</source>
        <translation>Nichts bewegt sich, solange dein System die Programme um Ruhe bittet.</translation>
    </message>
    <message>
        <source>Select two sessions first: click one, Ctrl and click one.</source>
        <translation>Wähle erst zwei Einheiten: eine anklicken, die andere mit Strg anklicken.</translation>
    </message>
    <message>
        <source>Reading {0}</source>
        <translation>{0} wird gelesen</translation>
    </message>
    <message>
        <source>Looking for ways to mend the build-up</source>
        <translation>Suche nach Abhilfe für den Aufbau</translation>
    </message>
    <message>
        <source>The plan has changed meanwhile; ask again for ways to mend it.</source>
        <translation>Der Plan hat sich inzwischen geändert; frag noch einmal nach Abhilfe.</translation>
    </message>
</context>
<context>
    <name>Calibration</name>
    <message>
        <source>Match the screen</source>
        <translation>An den Bildschirm anpassen</translation>
    </message>
    <message>
        <source>Lay a bank card on the outline and move the slider, or use the arrow keys, until both are the same size. Cards are then shown as large as they are printed.</source>
        <translation>Leg eine Bankkarte auf den Umriss und bewege den Schieber, auch mit den Pfeiltasten, bis beide gleich groß sind. Karten erscheinen dann so groß, wie sie gedruckt werden.</translation>
    </message>
    <message>
        <source>Size of the outline</source>
        <translation>Größe des Umrisses</translation>
    </message>
</context>
<context>
    <name>CandidateForm</name>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Behalten</translation>
    </message>
    <message>
        <source>What the race is called</source>
        <translation>Wie das Rennen heißt</translation>
    </message>
    <message>
        <source>One cutoff a line: distance, race time, climb until there if known</source>
        <translation>Je Zeile ein Zeitlimit: Distanz, Rennzeit, Anstieg bis dort, falls bekannt</translation>
    </message>
    <message>
        <source>30 km; 6 h; 1200 m</source>
        <translation>30 km; 6 h; 1200 m</translation>
    </message>
    <message>
        <source>Anything worth remembering</source>
        <translation>Alles, was man sich merken sollte</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>&amp;Tag</translation>
    </message>
    <message>
        <source>&amp;Start</source>
        <translation>&amp;Start</translation>
    </message>
    <message>
        <source>D&amp;istance</source>
        <translation>&amp;Distanz</translation>
    </message>
    <message>
        <source>&amp;Climb</source>
        <translation>A&amp;ufstieg</translation>
    </message>
    <message>
        <source>D&amp;rop</source>
        <translation>&amp;Abstieg</translation>
    </message>
    <message>
        <source>&amp;Time limit</source>
        <translation>&amp;Gesamtlimit</translation>
    </message>
    <message>
        <source>Cut&amp;offs</source>
        <translation>&amp;Zeitlimits</translation>
    </message>
    <message>
        <source>Not&amp;e</source>
        <translation>&amp;Notiz</translation>
    </message>
</context>
<context>
    <name>Candidates</name>
    <message>
        <source>This race lies in the past.</source>
        <translation>Dieses Rennen liegt in der Vergangenheit.</translation>
    </message>
    <message>
        <source>Weeks to spare: {0}.</source>
        <translation>Wochen übrig: {0}.</translation>
    </message>
    <message>
        <source>Weeks missing for all it asks: {0}.</source>
        <translation>Wochen, die für alles fehlen, was es verlangt: {0}.</translation>
    </message>
    <message>
        <source>No cutoffs are entered.</source>
        <translation>Keine Zeitlimits eingetragen.</translation>
    </message>
    <message>
        <source>The tightest cutoff is at {0}, with {1} in hand.</source>
        <translation>Das knappste Zeitlimit liegt bei {0}, mit {1} Polster.</translation>
    </message>
    <message>
        <source>The cutoff at {0} is likely to be missed by {1}.</source>
        <translation>Das Zeitlimit bei {0} wird wahrscheinlich um {1} verpasst.</translation>
    </message>
    <message>
        <source>After {0} and its rest {1} weeks are left to build up; {2} are needed from where you are now.</source>
        <translation>Nach {0} und der Erholung bleiben {1} Wochen zum Aufbau; von deinem jetzigen Stand aus braucht es {2}.</translation>
    </message>
    <message>
        <source>Only {3} weeks after {0}: the next race of that size comes after {4} at the soonest.</source>
        <translation>Nur {3} Wochen nach {0}: Das nächste Rennen dieser Größe kommt frühestens nach {4}.</translation>
    </message>
    <message>
        <source>From {0} to {1} the cutoffs ask {2} of level ground; {3} is likely. Time in hand from before must last.</source>
        <translation>Von {0} bis {1} fordern die Zeitlimits {2} im Flachen; wahrscheinlich ist {3}. Das Zeitpolster von davor muss reichen.</translation>
    </message>
    <message>
        <source>The race needs a name.</source>
        <translation>Das Rennen braucht einen Namen.</translation>
    </message>
    <message>
        <source>“{0}” cannot be read; a cutoff is typed as 30 km; 6 h; 1200 m.</source>
        <translation>„{0}“ ist nicht lesbar; ein Zeitlimit schreibt man so: 30 km; 6 h; 1200 m.</translation>
    </message>
</context>
<context>
    <name>CandidatesPage</name>
    <message>
        <source>Races to pick from</source>
        <translation>Rennen zur Auswahl</translation>
    </message>
    <message>
        <source>No race yet. Add those you think of: day, distance, climb, drop and cutoffs are enough to see whether there is time, and what they ask.</source>
        <translation>Noch kein Rennen. Füge hinzu, woran du denkst: Tag, Distanz, Aufstieg, Abstieg und Zeitlimits genügen, um zu sehen, ob die Zeit reicht und was sie fordern.</translation>
    </message>
    <message>
        <source>&amp;Add a race…</source>
        <translation>Rennen &amp;hinzufügen…</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Change…</source>
        <translation>Ändern…</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>Change {0}</source>
        <translation>{0} ändern</translation>
    </message>
    <message>
        <source>Remove {0}</source>
        <translation>{0} entfernen</translation>
    </message>
</context>
<context>
    <name>CardChoice</name>
    <message>
        <source>Add a card</source>
        <translation>Karte hinzufügen</translation>
    </message>
</context>
<context>
    <name>CardNames</name>
    <message>
        <source>Pace card</source>
        <translation>Tempokarte</translation>
    </message>
    <message>
        <source>Fuel card</source>
        <translation>Verpflegungskarte</translation>
    </message>
    <message>
        <source>Crew sheet</source>
        <translation>Betreuungsblatt</translation>
    </message>
    <message>
        <source>Bag labels</source>
        <translation>Beutelschilder</translation>
    </message>
    <message>
        <source>To buy and to pack</source>
        <translation>Kaufen und packen</translation>
    </message>
    <message>
        <source>Hard stretches</source>
        <translation>Harte Strecken</translation>
    </message>
    <message>
        <source>Who I am</source>
        <translation>Wer ich bin</translation>
    </message>
    <message>
        <source>Wall plan</source>
        <translation>Wandplan</translation>
    </message>
    <message>
        <source>Week sheets</source>
        <translation>Wochenblätter</translation>
    </message>
    <message>
        <source>The last ten days</source>
        <translation>Die letzten zehn Tage</translation>
    </message>
    <message>
        <source>Flat card</source>
        <translation>Flache Karte</translation>
    </message>
    <message>
        <source>Wrist strip</source>
        <translation>Armstreifen</translation>
    </message>
    <message>
        <source>Folded once, pace and fuel</source>
        <translation>Einmal gefaltet, Tempo und Verpflegung</translation>
    </message>
    <message>
        <source>Concertina, a leg to each fold</source>
        <translation>Leporello, ein Teilstück je Falte</translation>
    </message>
    <message>
        <source>As in the window</source>
        <translation>Wie im Fenster</translation>
    </message>
    <message>
        <source>Kilometres and metres</source>
        <translation>Kilometer und Meter</translation>
    </message>
    <message>
        <source>Miles and feet</source>
        <translation>Meilen und Fuß</translation>
    </message>
    <message>
        <source>Profile and light</source>
        <translation>Profil und Licht</translation>
    </message>
    <message>
        <source>Climb and drop</source>
        <translation>Auf, ab</translation>
    </message>
    <message>
        <source>Pace</source>
        <translation>Tempo</translation>
    </message>
    <message>
        <source>Stops</source>
        <translation>Halte</translation>
    </message>
    <message>
        <source>Time in hand</source>
        <translation>Zeitpolster</translation>
    </message>
    <message>
        <source>30 min late</source>
        <translation>30 min später</translation>
    </message>
    <message>
        <source>Last arrival</source>
        <translation>Späteste Ankunft</translation>
    </message>
    <message>
        <source>What to do there</source>
        <translation>Was dort zu tun ist</translation>
    </message>
    <message>
        <source>Fluid</source>
        <translation>Flüssigkeit</translation>
    </message>
    <message>
        <source>Sodium</source>
        <translation>Natrium</translation>
    </message>
    <message>
        <source>Caffeine</source>
        <translation>Koffein</translation>
    </message>
    <message>
        <source>Carbs to carry or practise</source>
        <translation>KH zum Mitnehmen oder Üben</translation>
    </message>
    <message>
        <source>When it goes wrong</source>
        <translation>Wenn es schiefgeht</translation>
    </message>
    <message>
        <source>Way there</source>
        <translation>Anfahrt</translation>
    </message>
    <message>
        <source>What to hand over</source>
        <translation>Was anzureichen ist</translation>
    </message>
    <message>
        <source>What to ask</source>
        <translation>Was zu fragen ist</translation>
    </message>
    <message>
        <source>When to worry</source>
        <translation>Wann man sich sorgt</translation>
    </message>
    <message>
        <source>Red flags</source>
        <translation>Warnzeichen</translation>
    </message>
    <message>
        <source>Way home</source>
        <translation>Heimweg</translation>
    </message>
    <message>
        <source>Words to myself</source>
        <translation>Worte an mich</translation>
    </message>
    <message>
        <source>Medical lines</source>
        <translation>Medizinische Angaben</translation>
    </message>
    <message>
        <source>If I stop at …</source>
        <translation>Wenn ich aufhöre bei …</translation>
    </message>
    <message>
        <source>What is done</source>
        <translation>Was erledigt ist</translation>
    </message>
    <message>
        <source>Lines to write on</source>
        <translation>Zeilen zum Schreiben</translation>
    </message>
    <message>
        <source>Three kinds of day</source>
        <translation>Drei Arten von Tagen</translation>
    </message>
    <message>
        <source>What to picture</source>
        <translation>Was ich mir vorstelle</translation>
    </message>
    <message>
        <source>Days after the race</source>
        <translation>Tage nach dem Rennen</translation>
    </message>
</context>
<context>
    <name>CardRow</name>
    <message>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>More</source>
        <translation>Mehr</translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation>Weglassen</translation>
    </message>
    <message>
        <source>Own size</source>
        <translation>Eigene Größe</translation>
    </message>
    <message>
        <source>As in the window</source>
        <translation>Wie im Fenster</translation>
    </message>
    <message>
        <source>How often it is printed</source>
        <translation>Wie oft sie gedruckt wird</translation>
    </message>
    <message>
        <source>Copies</source>
        <translation>Kopien</translation>
    </message>
    <message>
        <source>Units of the card</source>
        <translation>Einheiten der Karte</translation>
    </message>
    <message>
        <source>Language of its numbers</source>
        <translation>Sprache ihrer Zahlen</translation>
    </message>
    <message>
        <source>Form of the card</source>
        <translation>Form der Karte</translation>
    </message>
    <message>
        <source>Size of the card</source>
        <translation>Größe der Karte</translation>
    </message>
    <message>
        <source>Copies, units, language, what is on it</source>
        <translation>Kopien, Einheiten, Sprache, was darauf steht</translation>
    </message>
    <message>
        <source>{0} upright, {1} × {2} mm</source>
        <translation>{0} hoch, {1} × {2} mm</translation>
    </message>
    <message>
        <source>{0} lying, {1} × {2} mm</source>
        <translation>{0} quer, {1} × {2} mm</translation>
    </message>
    <message>
        <source> mm</source>
        <translation> mm</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>Numbers</source>
        <translation>Zahlen</translation>
    </message>
    <message>
        <source>On it</source>
        <translation>Darauf</translation>
    </message>
</context>
<context>
    <name>Cards</name>
    <message>
        <source>Finish</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>There is no course yet. Open a GPX file, then make the cards.</source>
        <translation>Es gibt noch keine Strecke. Öffne eine GPX-Datei, dann mach die Karten.</translation>
    </message>
    <message>
        <source>{0} of {1}</source>
        <translation>{0} von {1}</translation>
    </message>
    <message>
        <source>continued on {0} of {1}</source>
        <translation>weiter auf {0} von {1}</translation>
    </message>
    <message>
        <source>{0}, packs: {1}</source>
        <translation>{0}, Packungen: {1}</translation>
    </message>
    <message>
        <source>Whoever was up all night does not drive.</source>
        <translation>Wer die ganze Nacht wach war, fährt nicht.</translation>
    </message>
    <message>
        <source>Crew</source>
        <translation>Betreuung</translation>
    </message>
    <message>
        <source>No aid station lets a crew in. Mark those that do.</source>
        <translation>Keine Verpflegungsstelle lässt Betreuung zu. Markiere die, die es tun.</translation>
    </message>
    <message>
        <source>emergency</source>
        <translation>Notfall</translation>
    </message>
    <message>
        <source>Who is who</source>
        <translation>Wer ist wer</translation>
    </message>
    <message>
        <source>{0} – {1}</source>
        <translation>{0} – {1}</translation>
    </message>
    <message>
        <source>on plan</source>
        <translation>nach Plan</translation>
    </message>
    <message>
        <source>way there</source>
        <translation>Anfahrt</translation>
    </message>
    <message>
        <source>who</source>
        <translation>wer</translation>
    </message>
    <message>
        <source>hand over</source>
        <translation>anreichen</translation>
    </message>
    <message>
        <source>if I stop</source>
        <translation>wenn ich aufhöre</translation>
    </message>
    <message>
        <source>ask</source>
        <translation>fragen</translation>
    </message>
    <message>
        <source>stop {0}</source>
        <translation>Halt {0}</translation>
    </message>
    <message>
        <source>leave by {0}</source>
        <translation>spätestens los {0}</translation>
    </message>
    <message>
        <source>cutoff {0}</source>
        <translation>Zeitlimit {0}</translation>
    </message>
    <message>
        <source>Before {0} no news is good news; after {1} ask the race office.</source>
        <translation>Vor {0} heißt keine Nachricht gute Nachricht; nach {1} frag das Rennbüro.</translation>
    </message>
    <message>
        <source>Before {0} no news is good news; after {1} ask the station.</source>
        <translation>Vor {0} heißt keine Nachricht gute Nachricht; nach {1} frag die Station.</translation>
    </message>
    <message>
        <source>{0} drives.</source>
        <translation>{0} fährt.</translation>
    </message>
    <message>
        <source>Nobody is named yet who drives.</source>
        <translation>Noch steht nicht fest, wer fährt.</translation>
    </message>
    <message>
        <source>The way home</source>
        <translation>Der Heimweg</translation>
    </message>
    <message>
        <source>Fuel</source>
        <translation>Verpflegung</translation>
    </message>
    <message>
        <source>eat</source>
        <translation>essen</translation>
    </message>
    <message>
        <source>No food is placed yet. Place some on the race day lanes.</source>
        <translation>Noch kein Essen gesetzt. Setze welches in den Spuren des Renntags.</translation>
    </message>
    <message>
        <source>Sick: walk, cool down, sip, then 20 g/h. Hot: wet head and arms. Empty: two sweets, water, walk. Puffy, headache: stop drinking, salt. Nothing stays down, confused: get help.</source>
        <translation>Übel: gehen, abkühlen, nippen, dann 20 g/h. Heiß: Kopf und Arme nass machen. Leer: zwei Bonbons, Wasser, gehen. Geschwollen, Kopfweh: nicht mehr trinken, Salz. Nichts bleibt drin, verwirrt: Hilfe holen.</translation>
    </message>
    <message>
        <source>nothing planned</source>
        <translation>nichts geplant</translation>
    </message>
    <message>
        <source>Start → {0}</source>
        <translation>Start → {0}</translation>
    </message>
    <message>
        <source>→ {0}</source>
        <translation>→ {0}</translation>
    </message>
    <message>
        <source>{0} sodium</source>
        <translation>{0} Natrium</translation>
    </message>
    <message>
        <source>{0} caffeine</source>
        <translation>{0} Koffein</translation>
    </message>
    <message>
        <source>carry out {0} of carbs, {1}</source>
        <translation>{0} KH mitnehmen, {1}</translation>
    </message>
    <message>
        <source>take {0}</source>
        <translation>{0} nehmen</translation>
    </message>
    <message>
        <source>there: {0}</source>
        <translation>dort: {0}</translation>
    </message>
    <message>
        <source>BAG</source>
        <translation>BEUTEL</translation>
    </message>
    <message>
        <source>CREW</source>
        <translation>BETREUUNG</translation>
    </message>
    <message>
        <source>{0} at {1}</source>
        <translation>{0} bei {1}</translation>
    </message>
    <message>
        <source>1 × {0}</source>
        <translation>1 × {0}</translation>
    </message>
    <message>
        <source>Whole race</source>
        <translation>Ganzes Rennen</translation>
    </message>
    <message>
        <source>A card of {0} x {1} mm is larger than the paper. Choose larger or turned paper, or a smaller card.</source>
        <translation>Eine Karte von {0} x {1} mm ist größer als das Papier. Wähle größeres oder gedrehtes Papier oder eine kleinere Karte.</translation>
    </message>
    <message>
        <source>A card of {0} x {1} mm is too small to be legible. Choose a larger one.</source>
        <translation>Eine Karte von {0} x {1} mm ist zu klein zum Lesen. Wähle eine größere.</translation>
    </message>
    <message>
        <source>No card is chosen. Add a card, then print.</source>
        <translation>Keine Karte gewählt. Füge eine hinzu, dann druck.</translation>
    </message>
    <message>
        <source>start {0} · target {1}</source>
        <translation>Start {0} · Zielzeit {1}</translation>
    </message>
    <message>
        <source>leave by</source>
        <translation>los bis</translation>
    </message>
    <message>
        <source>in hand</source>
        <translation>Polster</translation>
    </message>
    <message>
        <source>last</source>
        <translation>spätestens</translation>
    </message>
    <message>
        <source>cutoff</source>
        <translation>Zeitlimit</translation>
    </message>
    <message>
        <source>30 late</source>
        <translation>30 später</translation>
    </message>
    <message>
        <source>climb · drop&#xa0;{0}</source>
        <translation>Auf · Ab {0}</translation>
    </message>
    <message>
        <source>stop</source>
        <translation>Halt</translation>
    </message>
    <message>
        <source>to</source>
        <translation>bis</translation>
    </message>
    <message>
        <source>there</source>
        <translation>dort</translation>
    </message>
    <message>
        <source>This plan misses the cutoff at {0}.</source>
        <translation>Dieser Plan verpasst das Zeitlimit bei {0}.</translation>
    </message>
    <message>
        <source>30 min late misses the cutoff at {0}.</source>
        <translation>30 min später verpasst das Zeitlimit bei {0}.</translation>
    </message>
    <message>
        <source>The course has no heights: paced as level ground.</source>
        <translation>Die Strecke hat keine Höhen: Tempo wie im Flachen.</translation>
    </message>
    <message>
        <source>last: every cutoff from here on is still met at planned speed</source>
        <translation>spätestens: jedes Zeitlimit ab hier wird mit geplantem Tempo noch erreicht</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>dunkel</translation>
    </message>
    <message>
        <source>No aid station takes a drop bag. Mark those that do.</source>
        <translation>Keine Verpflegungsstelle nimmt einen Dropbag. Markiere die, die es tun.</translation>
    </message>
    <message>
        <source>To do there</source>
        <translation>Dort zu tun</translation>
    </message>
    <message>
        <source>In this bag</source>
        <translation>In diesem Beutel</translation>
    </message>
    <message>
        <source>number {0}</source>
        <translation>Nummer {0}</translation>
    </message>
    <message>
        <source>Mandatory kit</source>
        <translation>Pflichtausrüstung</translation>
    </message>
    <message>
        <source>To pack</source>
        <translation>Packen</translation>
    </message>
    <message>
        <source>On me at the start</source>
        <translation>Am Start bei mir</translation>
    </message>
    <message>
        <source>To buy</source>
        <translation>Kaufen</translation>
    </message>
    <message>
        <source>To buy and to pack</source>
        <translation>Kaufen und packen</translation>
    </message>
    <message>
        <source>{0} ({1})</source>
        <translation>{0} ({1})</translation>
    </message>
    <message>
        <source>on the body</source>
        <translation>am Körper</translation>
    </message>
    <message>
        <source>in the vest</source>
        <translation>in der Laufweste</translation>
    </message>
    <message>
        <source>in a drop bag</source>
        <translation>in einem Dropbag</translation>
    </message>
    <message>
        <source>No mandatory kit is put down yet. Look into the race rules.</source>
        <translation>Noch keine Pflichtausrüstung eingetragen. Sieh in die Rennregeln.</translation>
    </message>
    <message>
        <source>Bag for {0}</source>
        <translation>Beutel für {0}</translation>
    </message>
    <message>
        <source>Bag for the finish</source>
        <translation>Beutel fürs Ziel</translation>
    </message>
    <message>
        <source>Anywhere</source>
        <translation>Überall</translation>
    </message>
    <message>
        <source>To say to myself</source>
        <translation>Was ich mir sage</translation>
    </message>
    <message>
        <source>When it gets hard</source>
        <translation>Wenn es hart wird</translation>
    </message>
    <message>
        <source>Nothing is put down yet. Write in the ledger or under Crew and lists what will help.</source>
        <translation>Noch nichts eingetragen. Schreib in den Angaben oder unter Betreuung und Listen, was helfen wird.</translation>
    </message>
    <message>
        <source>If {0}</source>
        <translation>Wenn {0}</translation>
    </message>
    <message>
        <source>then {0}</source>
        <translation>dann {0}</translation>
    </message>
    <message>
        <source>then {0} (tried)</source>
        <translation>dann {0} (erprobt)</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>{0} → {1}</source>
        <translation>{0} → {1}</translation>
    </message>
    <message>
        <source>Medical</source>
        <translation>Medizinisches</translation>
    </message>
    <message>
        <source>born {0}</source>
        <translation>geboren {0}</translation>
    </message>
    <message>
        <source>Who I am</source>
        <translation>Wer ich bin</translation>
    </message>
    <message>
        <source>Name and whom to call are not put down yet: fill in Crew and lists.</source>
        <translation>Name und wer anzurufen ist, fehlen noch: Füll Betreuung und Listen aus.</translation>
    </message>
    <message>
        <source>race emergency</source>
        <translation>Notruf des Rennens</translation>
    </message>
    <message>
        <source>my people</source>
        <translation>meine Leute</translation>
    </message>
    <message>
        <source>Call</source>
        <translation>Anrufen</translation>
    </message>
    <message>
        <source>If I stop at {0}</source>
        <translation>Wenn ich bei {0} aufhöre</translation>
    </message>
    <message>
        <source>way out</source>
        <translation>Weg hinaus</translation>
    </message>
    <message>
        <source>fetched by</source>
        <translation>abgeholt von</translation>
    </message>
    <message>
        <source>takes</source>
        <translation>dauert</translation>
    </message>
    <message>
        <source>call</source>
        <translation>anrufen</translation>
    </message>
    <message>
        <source>The printer takes no job. Choose another, or write a PDF.</source>
        <translation>Der Drucker nimmt keinen Auftrag an. Wähle einen anderen oder schreib ein PDF.</translation>
    </message>
    <message>
        <source>The printer stopped taking the job. See that it is there, or write a PDF.</source>
        <translation>Der Drucker hat den Auftrag abgebrochen. Sieh nach, ob er da ist, oder schreib ein PDF.</translation>
    </message>
    <message>
        <source>shoes</source>
        <translation>Schuhe</translation>
    </message>
    <message>
        <source>socks</source>
        <translation>Socken</translation>
    </message>
    <message>
        <source>top</source>
        <translation>Oberteil</translation>
    </message>
    <message>
        <source>lamp</source>
        <translation>Lampe</translation>
    </message>
    <message>
        <source>poles</source>
        <translation>Stöcke</translation>
    </message>
    <message>
        <source>change</source>
        <translation>wechseln</translation>
    </message>
    <message>
        <source>sleep</source>
        <translation>Schlaf</translation>
    </message>
    <message>
        <source>bag</source>
        <translation>Beutel</translation>
    </message>
    <message>
        <source>crew</source>
        <translation>Betreuung</translation>
    </message>
    <message>
        <source>change {0}</source>
        <translation>{0} wechseln</translation>
    </message>
    <message>
        <source>pacer from here</source>
        <translation>Begleitläufer ab hier</translation>
    </message>
    <message>
        <source>gel</source>
        <translation>Gel</translation>
    </message>
    <message>
        <source>drink</source>
        <translation>Getränk</translation>
    </message>
    <message>
        <source>food</source>
        <translation>Essen</translation>
    </message>
    <message>
        <source>salt</source>
        <translation>Salz</translation>
    </message>
    <message>
        <source>fasted</source>
        <translation>nüchtern</translation>
    </message>
    <message>
        <source>heat</source>
        <translation>Hitze</translation>
    </message>
    <message>
        <source>missed</source>
        <translation>ausgefallen</translation>
    </message>
    <message>
        <source>fine</source>
        <translation>gut</translation>
    </message>
    <message>
        <source>uneasy</source>
        <translation>flau</translation>
    </message>
    <message>
        <source>bad</source>
        <translation>schlecht</translation>
    </message>
    <message>
        <source>cutback</source>
        <translation>Entlastung</translation>
    </message>
    <message>
        <source>taper</source>
        <translation>Tapering</translation>
    </message>
    <message>
        <source>race</source>
        <translation>Rennen</translation>
    </message>
    <message>
        <source>There is no build-up yet. Build the block, then print it.</source>
        <translation>Es gibt noch keinen Aufbau. Bau den Block, dann druck ihn.</translation>
    </message>
    <message>
        <source>to go</source>
        <translation>noch</translation>
    </message>
    <message>
        <source>in all</source>
        <translation>gesamt</translation>
    </message>
    <message>
        <source>Heavy edge: hard day. Tick what is done. Distances of a week are without the race.</source>
        <translation>Dicker Rand: harter Tag. Hake ab, was erledigt ist. Distanzen einer Woche ohne das Rennen.</translation>
    </message>
    <message>
        <source>Three kinds of day</source>
        <translation>Drei Arten von Tagen</translation>
    </message>
    <message>
        <source>To picture beforehand</source>
        <translation>Vorher vorstellen</translation>
    </message>
    <message>
        <source>The last ten days</source>
        <translation>Die letzten zehn Tage</translation>
    </message>
    <message>
        <source>The days after</source>
        <translation>Die Tage danach</translation>
    </message>
    <message>
        <source>the finish</source>
        <translation>das Ziel</translation>
    </message>
    <message>
        <source>day {0}</source>
        <translation>Tag {0}</translation>
    </message>
    <message>
        <source>race day</source>
        <translation>Renntag</translation>
    </message>
    <message>
        <source>{0} to go</source>
        <translation>noch {0}</translation>
    </message>
    <message>
        <source>Race week</source>
        <translation>Rennwoche</translation>
    </message>
    <message>
        <source>rest</source>
        <translation>Ruhe</translation>
    </message>
    <message>
        <source>to eat: {0}</source>
        <translation>essen: {0}</translation>
    </message>
    <message>
        <source>in the head: {0}</source>
        <translation>im Kopf: {0}</translation>
    </message>
    <message>
        <source>effort {0}</source>
        <translation>Anstrengung {0}</translation>
    </message>
    <message>
        <source>time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>climb {0}</source>
        <translation>Aufstieg {0}</translation>
    </message>
    <message>
        <source>drop {0}</source>
        <translation>Abstieg {0}</translation>
    </message>
    <message>
        <source>effort</source>
        <translation>Anstrengung</translation>
    </message>
    <message>
        <source>carbs g</source>
        <translation>KH g</translation>
    </message>
    <message>
        <source>gut</source>
        <translation>Magen</translation>
    </message>
    <message>
        <source>note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Lessons of an earlier race wait for an answer: {0}. Answer them under Tables, Lessons, then print.</source>
        <translation>Lehren aus einem früheren Rennen warten auf Antwort: {0}. Beantworte sie unter Tabellen, Lehren, dann druck.</translation>
    </message>
</context>
<context>
    <name>CardsDesk</name>
    <message>
        <source>Not written.</source>
        <translation>Nicht geschrieben.</translation>
    </message>
    <message>
        <source>{0} cards.pdf</source>
        <translation>{0} Karten.pdf</translation>
    </message>
    <message>
        <source>Print cards</source>
        <translation>Karten drucken</translation>
    </message>
    <message>
        <source>Add a card to print.</source>
        <translation>Füge eine Karte zum Drucken hinzu.</translation>
    </message>
    <message>
        <source>{0}: the smallest legible type.</source>
        <translation>{0}: die kleinste lesbare Schrift.</translation>
    </message>
    <message>
        <source>{0}: {1} pages.</source>
        <translation>{0}: {1} Seiten.</translation>
    </message>
    <message>
        <source>Written: {0}</source>
        <translation>Geschrieben: {0}</translation>
    </message>
    <message>
        <source>Write cards</source>
        <translation>Karten schreiben</translation>
    </message>
    <message>
        <source>{0} lock screen.png</source>
        <translation>{0} Sperrbildschirm.png</translation>
    </message>
    <message>
        <source>Write a picture</source>
        <translation>Bild schreiben</translation>
    </message>
</context>
<context>
    <name>Caution</name>
    <message>
        <source>Amounts are a starting point to practise in training. Drink to thirst. Stop and get help if you are confused, faint, swollen, or keep vomiting. Race rules and medical staff go first.</source>
        <translation>Mengen sind ein Ausgangspunkt zum Üben im Training. Trink nach Durst. Hör auf und hol Hilfe, wenn du verwirrt, einer Ohnmacht nahe oder geschwollen bist oder immer wieder erbrichst. Rennregeln und medizinisches Personal gehen vor.</translation>
    </message>
    <message>
        <source>Drinking more than you sweat can kill. Weight gain, puffy hands, headache or vomiting: no more plain water, go to medical staff at once.</source>
        <translation>Mehr zu trinken, als du schwitzt, kann töten. Gewichtszunahme, geschwollene Hände, Kopfweh oder Erbrechen: kein reines Wasser mehr, sofort zum medizinischen Personal.</translation>
    </message>
    <message>
        <source>No ibuprofen or similar painkillers before or during the race: they may harm the kidneys. Pain that needs them is a reason to stop.</source>
        <translation>Kein Ibuprofen oder ähnliche Schmerzmittel vor oder während des Rennens: Sie können den Nieren schaden. Schmerz, der sie braucht, ist ein Grund aufzuhören.</translation>
    </message>
    <message>
        <source>Caffeine limits are for healthy adults. Pregnant, under 18, with heart trouble, high blood pressure, anxiety or stimulant medicines: ask a doctor first.</source>
        <translation>Koffeingrenzen gelten für gesunde Erwachsene. Schwanger, unter 18, bei Herzproblemen, Bluthochdruck, Angststörung oder anregenden Medikamenten: Frag erst einen Arzt.</translation>
    </message>
    <message>
        <source>Dizzy, confused, unsteady or shivering in the heat: stop, call for help and get into cold water first.</source>
        <translation>Schwindlig, verwirrt, unsicher auf den Beinen oder Frösteln bei Hitze: anhalten, Hilfe rufen und zuerst in kaltes Wasser.</translation>
    </message>
    <message>
        <source>With diabetes, kidney, heart or blood pressure trouble, or on regular medicines, agree the plan with your doctor before you use it.</source>
        <translation>Bei Diabetes, Nieren-, Herz- oder Blutdruckproblemen oder regelmäßigen Medikamenten: Sprich den Plan mit deinem Arzt ab, bevor du ihn nutzt.</translation>
    </message>
    <message>
        <source>The table of foods cannot know every packet: read the label. Some foods set off an allergy only when one runs after them; carry what you were prescribed.</source>
        <translation>Die Tabelle der Lebensmittel kann nicht jede Packung kennen: Lies das Etikett. Manche lösen eine Allergie nur aus, wenn man danach läuft; nimm mit, was dir verschrieben wurde.</translation>
    </message>
    <message>
        <source>Many guts take fructose badly in large amounts. With hereditary fructose intolerance: no fructose, table sugar, honey or fruit at all.</source>
        <translation>Viele vertragen Fruktose in großen Mengen schlecht. Bei erblicher Fruktoseintoleranz: gar keine Fruktose, kein Haushaltszucker, kein Honig, kein Obst.</translation>
    </message>
    <message>
        <source>Sick: slow down, cool down, small sips. Half an hour of nothing but mouthfuls, then 15 to 30 g/h of what you like, liquid or sweets. No fat, no big drinks.</source>
        <translation>Übel: langsamer werden, abkühlen, kleine Schlucke. Eine halbe Stunde nur kleine Schlucke, dann 15 bis 30 g/h von dem, was du magst, flüssig oder Bonbons. Kein Fett, nicht viel auf einmal trinken.</translation>
    </message>
    <message>
        <source>Hot: walk the climbs, wet head and arms at every stream, ice if there is any, eat less at a time. Confused or unsteady: stop, call help, cold water first.</source>
        <translation>Heiß: Anstiege gehen, Kopf und Arme an jedem Bach nass machen, Eis, wenn es welches gibt, weniger auf einmal essen. Verwirrt oder unsicher auf den Beinen: anhalten, Hilfe rufen, zuerst kaltes Wasser.</translation>
    </message>
    <message>
        <source>Empty: walk, take two sweets or half a gel and water now, again in ten minutes, then back to the plan. It passes in twenty to thirty minutes.</source>
        <translation>Leer: gehen, jetzt zwei Bonbons oder ein halbes Gel und Wasser nehmen, in zehn Minuten noch einmal, dann zurück zum Plan. In zwanzig bis dreißig Minuten ist es vorbei.</translation>
    </message>
    <message>
        <source>Puffy hands, headache, gaining weight, clear urine: stop drinking. Something salty if awake. Confused or vomiting: medical staff at once, no water.</source>
        <translation>Geschwollene Hände, Kopfweh, Gewichtszunahme, klarer Urin: nicht mehr trinken. Etwas Salziges, wenn du wach bist. Verwirrt oder Erbrechen: sofort medizinisches Personal, kein Wasser.</translation>
    </message>
    <message>
        <source>Ask a doctor first with chest pain, fainting, unusual breathlessness or palpitations, with heart, kidney or metabolic disease, when pregnant, or after long inactivity.</source>
        <translation>Frag erst einen Arzt bei Brustschmerz, Ohnmacht, ungewöhnlicher Atemnot oder Herzstolpern, bei Herz-, Nieren- oder Stoffwechselkrankheit, in der Schwangerschaft oder nach langer Untätigkeit.</translation>
    </message>
    <message>
        <source>Stop now and call for help: chest pain, fainting, confusion, a fit, severe breathlessness, hot and confused, froth when coughing.</source>
        <translation>Sofort anhalten und Hilfe rufen: Brustschmerz, Ohnmacht, Verwirrtheit, Krampfanfall, schwere Atemnot, heiß und verwirrt, Schaum beim Husten.</translation>
    </message>
    <message>
        <source>See a doctor the same day: dark urine, vomiting while gaining weight, puffy hands, headache after much drinking, black stool, a swollen calf.</source>
        <translation>Noch am selben Tag zum Arzt: dunkler Urin, Erbrechen bei steigendem Gewicht, geschwollene Hände, Kopfschmerz nach viel Trinken, schwarzer Stuhl, geschwollene Wade.</translation>
    </message>
    <message>
        <source>Pain on one spot of bone, worse with load or at night, or in groin, hip or sacrum: no running until it has been seen.</source>
        <translation>Schmerz an einer Stelle am Knochen, schlimmer bei Belastung oder nachts, oder in Leiste, Hüfte oder Kreuzbein: nicht laufen, bis es untersucht ist.</translation>
    </message>
    <message>
        <source>No training with fever, chest symptoms or aches all over. No driving after a night without sleep.</source>
        <translation>Kein Training bei Fieber, Beschwerden in der Brust oder Gliederschmerzen. Nicht Auto fahren nach einer Nacht ohne Schlaf.</translation>
    </message>
</context>
<context>
    <name>Checks</name>
    <message>
        <source>Custom, weakly supported: a trial in 532 beginners found no benefit of the 10 % limit (Buist et al. 2008, Am J Sports Med 36:33).</source>
        <translation>Brauch, schwach belegt: Eine Studie mit 532 Einsteigern fand keinen Nutzen der 10-%-Grenze (Buist et al. 2008, Am J Sports Med 36:33).</translation>
    </message>
    <message>
        <source>Supported by observation of 5205 runners, no trial: Frandsen et al. 2025, Br J Sports Med 59:1203.</source>
        <translation>Durch Beobachtung von 5205 Läufern gestützt, keine Interventionsstudie: Frandsen et al. 2025, Br J Sports Med 59:1203.</translation>
    </message>
    <message>
        <source>Supported in shorter events: Bosquet et al. 2007, Med Sci Sports Exerc 39:1358; here the mean over the taper days, race day left out.</source>
        <translation>Für kürzere Wettkämpfe belegt: Bosquet et al. 2007, Med Sci Sports Exerc 39:1358; hier das Mittel über die Tage des Taperings, ohne Renntag.</translation>
    </message>
    <message>
        <source>That earlier descents protect is supported (Bontemps et al. 2020, Sports Med 50:2083); the spacing is our own choice.</source>
        <translation>Dass frühere Abstiege schützen, ist belegt (Bontemps et al. 2020, Sports Med 50:2083); die Abstände sind unsere eigene Wahl.</translation>
    </message>
    <message>
        <source>Supported over two weeks in runners (Costa et al. 2017, Appl Physiol Nutr Metab 42:547); the limit is our own choice.</source>
        <translation>Über zwei Wochen bei Läufern belegt (Costa et al. 2017, Appl Physiol Nutr Metab 42:547); die Grenze ist unsere eigene Wahl.</translation>
    </message>
    <message>
        <source>Muscle changes are shown, faster running is not (Van Proeyen et al. 2011, J Appl Physiol 110:236; Impey et al. 2018, Sports Med 48:1031); the limits are our own.</source>
        <translation>Veränderungen im Muskel sind gezeigt, schnelleres Laufen nicht (Van Proeyen et al. 2011, J Appl Physiol 110:236; Impey et al. 2018, Sports Med 48:1031); die Grenzen sind unsere eigenen.</translation>
    </message>
    <message>
        <source>Common practice, no source.</source>
        <translation>Übliche Praxis, keine Quelle.</translation>
    </message>
    <message>
        <source>climb match</source>
        <translation>Anstieg passt</translation>
    </message>
    <message>
        <source>surface match</source>
        <translation>Untergrund passt</translation>
    </message>
    <message>
        <source>dark hours</source>
        <translation>Dunkelstunden</translation>
    </message>
    <message>
        <source>spare weeks</source>
        <translation>freie Wochen</translation>
    </message>
    <message>
        <source>fasted runs</source>
        <translation>Nüchternläufe</translation>
    </message>
    <message>
        <source>The last {0} loading weeks climb {1}, the race {2}; aim for {3} of that.</source>
        <translation>Die letzten {0} Belastungswochen steigen {1}, das Rennen {2}; strebe {3} davon an.</translation>
    </message>
    <message>
        <source>Runs in the dark: {0}, {1} in all, for {2} of dark in the race; aim for {3} or more. Take a spare lamp, tell someone.</source>
        <translation>Läufe im Dunkeln: {0}, zusammen {1}, für {2} Dunkelheit im Rennen; strebe {3} oder mehr an. Nimm eine Ersatzlampe mit, sag jemandem Bescheid.</translation>
    </message>
    <message>
        <source>Weeks to spare for illness and life: {0}; keep {1} or more.</source>
        <translation>Wochen übrig für Krankheit und Leben: {0}; behalte {1} oder mehr.</translation>
    </message>
    <message>
        <source>Where it is known, the ground of the last {0} weeks matches the race&apos;s by {1}.</source>
        <translation>Soweit bekannt, stimmt der Untergrund der letzten {0} Wochen zu {1} mit dem des Rennens überein.</translation>
    </message>
    <message>
        <source>No week to spare. Weeks missing for all that is asked: {0}.</source>
        <translation>Keine Woche frei. Für alles Geforderte fehlen Wochen: {0}.</translation>
    </message>
    <message>
        <source>Fasted runs are only for those with nothing to ask a doctor about.</source>
        <translation>Nüchternläufe sind nur für dich, wenn du nichts mit einem Arzt zu klären hast.</translation>
    </message>
    <message>
        <source>Fasted runs that are not easy, over 90 minutes, in the heat, in race week or on two days running: {0}.</source>
        <translation>Nüchternläufe, die nicht locker, über 90 Minuten, in der Hitze, in der Rennwoche oder an zwei Tagen hintereinander sind: {0}.</translation>
    </message>
    <message>
        <source>Fasted runs, all easy: {0}. Carry 25 g of sugar and eat within the hour after.</source>
        <translation>Nüchternläufe, alle locker: {0}. Nimm 25 g Zucker mit und iss innerhalb einer Stunde danach.</translation>
    </message>
    <message>
        <source>single run</source>
        <translation>einzelner Lauf</translation>
    </message>
    <message>
        <source>hard days</source>
        <translation>harte Tage</translation>
    </message>
    <message>
        <source>downhill</source>
        <translation>bergab</translation>
    </message>
    <message>
        <source>tune-up race</source>
        <translation>Vorbereitungsrennen</translation>
    </message>
    <message>
        <source>hours of one run</source>
        <translation>Stunden eines Laufs</translation>
    </message>
    <message>
        <source>drop of one run</source>
        <translation>Abstieg eines Laufs</translation>
    </message>
    <message>
        <source>late descent</source>
        <translation>später Abstieg</translation>
    </message>
    <message>
        <source>{0} is within 10 % of the longest run of the 30 days before, {1}.</source>
        <translation>{0} liegt innerhalb von 10 % des längsten Laufs der 30 Tage davor, {1}.</translation>
    </message>
    <message>
        <source>{0} is {2} longer than any run of the 30 days before ({1}); the limit is 10 %.</source>
        <translation>{0} ist {2} länger als jeder Lauf der 30 Tage davor ({1}); die Grenze ist 10 %.</translation>
    </message>
    <message>
        <source>{0} on feet is over 20 % more than any long run of the 30 days before ({1}).</source>
        <translation>{0} auf den Beinen ist über 20 % mehr als jeder lange Lauf der 30 Tage davor ({1}).</translation>
    </message>
    <message>
        <source>A drop of {0} is over a quarter more than any of the 30 days before ({1}).</source>
        <translation>Ein Abstieg von {0} ist über ein Viertel mehr als jeder der 30 Tage davor ({1}).</translation>
    </message>
    <message>
        <source>The greatest late drop is {0}, {1} of the race&apos;s {2}; aim for one session of {3}.</source>
        <translation>Der größte späte Abstieg ist {0}, {1} der {2} des Rennens; plane eine Einheit mit {3}.</translation>
    </message>
    <message>
        <source>The last downhill run is {0} days before the race; put it 10 to 21 days before.</source>
        <translation>Der letzte Bergablauf liegt {0} Tage vor dem Rennen; leg ihn 10 bis 21 Tage davor.</translation>
    </message>
    <message>
        <source>The tune-up race is {0} days before the race; leave at least {1}.</source>
        <translation>Das Vorbereitungsrennen liegt {0} Tage vor dem Rennen; lass mindestens {1} dazwischen.</translation>
    </message>
    <message>
        <source>The tune-up race of {0} is {1} of the goal time; choose one of up to half.</source>
        <translation>Das Vorbereitungsrennen von {0} ist {1} der Zielzeit; wähl eines bis zur Hälfte.</translation>
    </message>
    <message>
        <source>A hard day comes {0} days after the tune-up race; keep {1} days easy.</source>
        <translation>{0} Tage nach dem Vorbereitungsrennen kommt ein harter Tag; halt {1} Tage locker.</translation>
    </message>
    <message>
        <source>Two hard sessions fall on one day.</source>
        <translation>Zwei harte Einheiten fallen auf einen Tag.</translation>
    </message>
    <message>
        <source>Two hard days meet; put an easy day between them.</source>
        <translation>Zwei harte Tage folgen aufeinander; leg einen lockeren Tag dazwischen.</translation>
    </message>
    <message>
        <source>No two hard days meet.</source>
        <translation>Keine zwei harten Tage folgen aufeinander.</translation>
    </message>
    <message>
        <source>The race drops {0} and there is no downhill run to harden the quads.</source>
        <translation>Das Rennen hat {0} Abstieg, und kein Bergablauf härtet die Oberschenkel ab.</translation>
    </message>
    <message>
        <source>{0} days lie between two downhill runs; up to 21 keep the legs used to them.</source>
        <translation>{0} Tage liegen zwischen zwei Bergabläufen; bis zu 21 halten die Beine daran gewöhnt.</translation>
    </message>
    <message>
        <source>Nothing hard comes in the {0} days after the tune-up race.</source>
        <translation>In den {0} Tagen nach dem Vorbereitungsrennen kommt nichts Hartes.</translation>
    </message>
    <message>
        <source>ramp</source>
        <translation>Steigerung</translation>
    </message>
    <message>
        <source>cutback</source>
        <translation>Entlastung</translation>
    </message>
    <message>
        <source>long-run share</source>
        <translation>Anteil langer Lauf</translation>
    </message>
    <message>
        <source>taper</source>
        <translation>Tapering</translation>
    </message>
    <message>
        <source>practice carbs</source>
        <translation>KH im Training</translation>
    </message>
    <message>
        <source>what the race asks</source>
        <translation>was das Rennen verlangt</translation>
    </message>
    <message>
        <source>{0} is within 10 % of the last loading week&apos;s {1}.</source>
        <translation>{0} liegt innerhalb von 10 % der letzten Belastungswoche mit {1}.</translation>
    </message>
    <message>
        <source>{0} is {1} above the last loading week&apos;s {2}; up to 10 % holds.</source>
        <translation>{0} liegt {1} über der letzten Belastungswoche mit {2}; bis 10 % hält.</translation>
    </message>
    <message>
        <source>{0} on feet against the last loading week&apos;s {2}: {1}; up to 10 % holds.</source>
        <translation>{0} auf den Beinen gegen {2} in der letzten Belastungswoche: {1}; bis 10 % hält.</translation>
    </message>
    <message>
        <source>{0} flat-equivalent against the last loading week&apos;s {2}: {1}; up to 10 % holds.</source>
        <translation>{0} flach umgerechnet gegen {2} in der letzten Belastungswoche: {1}; bis 10 % hält.</translation>
    </message>
    <message>
        <source>{0} is {1} above the last loading week&apos;s {2}; you wished for no growth right after a cutback.</source>
        <translation>{0} liegt {1} über den {2} der letzten Belastungswoche; gleich nach einer Entlastungswoche wolltest du keinen Zuwachs.</translation>
    </message>
    <message>
        <source>The longest run of {0} is {1} of the week&apos;s {2}; with {4} runs at this level keep to {3}.</source>
        <translation>Der längste Lauf von {0} ist {1} der {2} der Woche; bei {4} Läufen bleib auf dieser Stufe bei {3}.</translation>
    </message>
    <message>
        <source>The {0} days before the race hold {1} less a day than a week of {2}.</source>
        <translation>Die {0} Tage vor dem Rennen haben je Tag {1} weniger als eine Woche von {2}.</translation>
    </message>
    <message>
        <source>Practice goes up to {0} from {1}; raise it by 10 g/h a week at most.</source>
        <translation>Das Üben steigt von {1} auf {0}; steigere höchstens um 10 g/h je Woche.</translation>
    </message>
    <message>
        <source>{0} is {1} of the last loading week&apos;s {2}.</source>
        <translation>{0} ist {1} der letzten Belastungswoche mit {2}.</translation>
    </message>
    <message>
        <source>{0} is {1} of the last loading week&apos;s {2}; a cutback takes 60 to 80 %.</source>
        <translation>{0} ist {1} der letzten Belastungswoche mit {2}; eine Entlastung nimmt 60 bis 80 %.</translation>
    </message>
    <message>
        <source>{0} loading weeks in a row: a cutback is due every {1} weeks.</source>
        <translation>{0} Belastungswochen hintereinander: Alle {1} Wochen ist eine Entlastung fällig.</translation>
    </message>
    <message>
        <source>The last weeks practise up to {0}; the race plan takes {1}.</source>
        <translation>Die letzten Wochen üben bis zu {0}; der Rennplan braucht {1}.</translation>
    </message>
    <message>
        <source>The greatest week is {0}; the race asks for {1}.</source>
        <translation>Die größte Woche ist {0}; das Rennen verlangt {1}.</translation>
    </message>
    <message>
        <source>The longest run is {0}; the race asks for {1}.</source>
        <translation>Der längste Lauf ist {0}; das Rennen verlangt {1}.</translation>
    </message>
    <message>
        <source>Our own choice.</source>
        <translation>Unsere eigene Wahl.</translation>
    </message>
    <message>
        <source>Every lesson of earlier races has its answer.</source>
        <translation>Jede Lehre aus früheren Rennen hat ihre Antwort.</translation>
    </message>
    <message>
        <source>Lessons of earlier races without an answer: {0}.</source>
        <translation>Lehren aus früheren Rennen ohne Antwort: {0}.</translation>
    </message>
    <message>
        <source>10,000 simulated races about the forecast; an estimate of our own.</source>
        <translation>10.000 simulierte Rennen um die Prognose; eine eigene Schätzung.</translation>
    </message>
    <message>
        <source>Bands for distance races: American College of Sports Medicine 2007, Med Sci Sports Exerc 39:556 (read in secondary sources). The value is an estimate that assumes sun and a light wind.</source>
        <translation>Stufen für Langstreckenrennen: American College of Sports Medicine 2007, Med Sci Sports Exerc 39:556 (in Sekundärquellen gelesen). Der Wert ist eine Schätzung, die Sonne und leichten Wind annimmt.</translation>
    </message>
    <message>
        <source>{0} is made in time on about {1} of {2} days.</source>
        <translation>{0} wird an etwa {1} von {2} Tagen rechtzeitig erreicht.</translation>
    </message>
    <message>
        <source>The forecast misses the cutoff at {0} by {1}; the target is earlier.</source>
        <translation>Die Prognose verfehlt das Zeitlimit bei {0} um {1}; die Zielzeit ist früher.</translation>
    </message>
    <message>
        <source>The target misses the cutoff at {0} by {1}: run faster before it or stop less.</source>
        <translation>Die Vorgabe verfehlt das Zeitlimit bei {0} um {1}: davor schneller laufen oder weniger anhalten.</translation>
    </message>
    <message>
        <source>Tightest cutoff, by the forecast: {0}, {1} to spare.</source>
        <translation>Engstes Zeitlimit nach der Prognose: {0}, {1} Polster.</translation>
    </message>
    <message>
        <source>Tightest cutoff, by the target: {0}, {1} to spare.</source>
        <translation>Engstes Zeitlimit nach der Zielzeit: {0}, {1} Polster.</translation>
    </message>
    <message>
        <source>Dark for {0}, and the lamp burns {1}: carry cells or a second lamp.</source>
        <translation>{0} dunkel, und die Lampe brennt {1}: Nimm Akkus oder eine zweite Lampe mit.</translation>
    </message>
    <message>
        <source>Dark for {0} of the {1} the lamp burns: little is left for cold or delay.</source>
        <translation>{0} dunkel von {1}, die die Lampe brennt: Für Kälte oder Verspätung bleibt wenig.</translation>
    </message>
    <message>
        <source>Dark for {0}, the lamp burns {1}.</source>
        <translation>{0} dunkel, die Lampe brennt {1}.</translation>
    </message>
    <message>
        <source>Very high heat near {0}, WBGT about {1}: at this races are stopped; ask whether to start.</source>
        <translation>Sehr große Hitze bei {0}, WBGT etwa {1}: Dabei werden Rennen abgebrochen; überlege, ob du startest.</translation>
    </message>
    <message>
        <source>High heat near {0}, WBGT about {1}: slow down, cool down, and do not start if you are not well.</source>
        <translation>Große Hitze bei {0}, WBGT etwa {1}: Lauf langsamer, kühl dich und starte nicht, wenn du nicht gesund bist.</translation>
    </message>
    <message>
        <source>Moderate heat near {0}, WBGT about {1}: slower if you take heat badly.</source>
        <translation>Mäßige Hitze bei {0}, WBGT etwa {1}: langsamer, wenn du Hitze schlecht verträgst.</translation>
    </message>
    <message>
        <source>The rules of the race; the list is yours.</source>
        <translation>Die Regeln des Rennens; die Liste ist deine.</translation>
    </message>
    <message>
        <source>All mandatory kit is ticked.</source>
        <translation>Die ganze Pflichtausrüstung ist abgehakt.</translation>
    </message>
    <message>
        <source>Mandatory kit not ticked yet: {0} of {1}.</source>
        <translation>Pflichtausrüstung noch nicht abgehakt: {0} von {1}.</translation>
    </message>
    <message>
        <source>holds</source>
        <translation>hält</translation>
    </message>
    <message>
        <source>strains</source>
        <translation>knapp</translation>
    </message>
    <message>
        <source>breaks</source>
        <translation>bricht</translation>
    </message>
    <message>
        <source>The cutoff here is missed by {0}.</source>
        <extracomment>OWN: a stop is shortened by whole steps, and where that gains at least so much.</extracomment>
        <translation>Das Zeitlimit hier wird um {0} verfehlt.</translation>
    </message>
    <message>
        <source>{0} to spare to the cutoff here.</source>
        <translation>{0} Polster zum Zeitlimit hier.</translation>
    </message>
    <message>
        <source>Made in time on about {0} of {1} days.</source>
        <translation>An etwa {0} von {1} Tagen rechtzeitig.</translation>
    </message>
    <message>
        <source>Stop {0} at {1}: still {2} too late here.</source>
        <translation>Halt {0} bei {1}: hier immer noch {2} zu spät.</translation>
    </message>
    <message>
        <source>Stop {0} at {1}: {2} to spare here.</source>
        <translation>Halt {0} bei {1}: hier {2} Polster.</translation>
    </message>
    <message>
        <source>Something is done about every worry.</source>
        <translation>Gegen jede Sorge ist etwas getan.</translation>
    </message>
    <message>
        <source>Worries with nothing done about them yet: {0}.</source>
        <translation>Sorgen, gegen die noch nichts getan ist: {0}.</translation>
    </message>
</context>
<context>
    <name>ChoicesForm</name>
    <message>
        <source>Ways to mend the build-up</source>
        <translation>Wege zur Abhilfe im Aufbau</translation>
    </message>
    <message>
        <source>When to &amp;stop and get help</source>
        <translation>Wann &amp;aufhören und Hilfe holen</translation>
    </message>
    <message>
        <source>&amp;Put it in</source>
        <translation>&amp;Einsetzen</translation>
    </message>
</context>
<context>
    <name>ClimbLane</name>
    <message>
        <source>Climb, drop</source>
        <translation>Auf, ab</translation>
    </message>
    <message>
        <source>{0} a week</source>
        <translation>{0} je Woche</translation>
    </message>
    <message>
        <source>climb {0}, drop {1}</source>
        <translation>Aufstieg {0}, Abstieg {1}</translation>
    </message>
    <message>
        <source>{0}, before {1} and {2}</source>
        <translation>{0}, vorher {1} und {2}</translation>
    </message>
</context>
<context>
    <name>ClockField</name>
    <message>
        <source>From 00:00 to 23:59, on the clock at the race</source>
        <translation>Von 00:00 bis 23:59, nach der Uhr am Rennort</translation>
    </message>
</context>
<context>
    <name>Command line</name>
    <message>
        <source>usage: </source>
        <translation>Aufruf: </translation>
    </message>
    <message>
        <source>positional arguments</source>
        <translation>Argumente</translation>
    </message>
    <message>
        <source>options</source>
        <translation>Optionen</translation>
    </message>
    <message>
        <source>show this help message and exit</source>
        <translation>diese Hilfe zeigen und enden</translation>
    </message>
    <message>
        <source>%(prog)s: error: %(message)s
</source>
        <translation>%(prog)s: Fehler: %(message)s
</translation>
    </message>
    <message>
        <source>argument %(argument_name)s: %(message)s</source>
        <translation>Argument %(argument_name)s: %(message)s</translation>
    </message>
    <message>
        <source>unrecognized arguments: %s</source>
        <translation>unbekannte Argumente: %s</translation>
    </message>
    <message>
        <source>expected one argument</source>
        <translation>braucht eine Angabe dahinter</translation>
    </message>
    <message>
        <source>not allowed with argument %s</source>
        <translation>geht nicht zusammen mit %s</translation>
    </message>
    <message>
        <source>ignored explicit argument %r</source>
        <translation>nimmt keine Angabe, auch nicht %r</translation>
    </message>
    <message>
        <source>ambiguous option: %(option)s could match %(matches)s</source>
        <translation>mehrdeutige Option: %(option)s kann %(matches)s heißen</translation>
    </message>
    <message>
        <source>Plan an ultramarathon: training block, section targets, fuel, cards.</source>
        <translation>Plane einen Ultramarathon: Trainingsblock, Abschnittsziele, Verpflegung, Karten.</translation>
    </message>
    <message>
        <source>Without an option the window opens, with FILE in it if one is named.</source>
        <translation>Ohne Option geht das Fenster auf, mit DATEI darin, wenn eine genannt ist.</translation>
    </message>
    <message>
        <source>FILE</source>
        <translation>DATEI</translation>
    </message>
    <message>
        <source>a project (.ultraplan) or a course (.gpx); with --cards also a folder of projects</source>
        <translation>ein Projekt (.ultraplan) oder eine Strecke (.gpx); mit --cards auch ein Ordner voller Projekte</translation>
    </message>
    <message>
        <source>take the demo project</source>
        <translation>das Demo-Projekt nehmen</translation>
    </message>
    <message>
        <source>keep settings and new projects in a folder that is gone when its last window closes</source>
        <translation>Einstellungen und neue Projekte in einem Ordner halten, der mit seinem letzten Fenster verschwindet</translation>
    </message>
    <message>
        <source>speak the language of the compiled translation QM, for trying one</source>
        <translation>die Sprache der übersetzten Datei QM sprechen, um sie auszuprobieren</translation>
    </message>
    <message>
        <source>show the version and exit</source>
        <translation>die Version zeigen und enden</translation>
    </message>
    <message>
        <source>OUT</source>
        <translation>ZIEL</translation>
    </message>
    <message>
        <source>write all cards of FILE to the PDF OUT, without a window; if FILE is a folder, a PDF of each project in it into the folder OUT</source>
        <translation>alle Karten von DATEI ohne Fenster in das PDF ZIEL schreiben; ist DATEI ein Ordner, von jedem Projekt darin ein PDF in den Ordner ZIEL</translation>
    </message>
    <message>
        <source>print the project FILE as lines of JSON</source>
        <translation>das Projekt DATEI als Zeilen aus JSON ausgeben</translation>
    </message>
    <message>
        <source>LINES</source>
        <translation>ZEILEN</translation>
    </message>
    <message>
        <source>make the new project FILE out of the lines of JSON in LINES (- for standard input)</source>
        <translation>aus den JSON-Zeilen in ZEILEN das neue Projekt DATEI machen (- für die Standardeingabe)</translation>
    </message>
    <message>
        <source>see whether this installation works, in a folder that is thrown away</source>
        <translation>prüfen, ob diese Installation funktioniert, in einem Ordner, der danach verschwindet</translation>
    </message>
</context>
<context>
    <name>ConditionsForm</name>
    <message>
        <source>Weather and conditions</source>
        <translation>Wetter und Bedingungen</translation>
    </message>
    <message>
        <source>&amp;Set</source>
        <translation>&amp;Setzen</translation>
    </message>
    <message>
        <source>off</source>
        <translation>aus</translation>
    </message>
    <message>
        <source>Coldest on your way: {0} at {1}, {2}.</source>
        <translation>Am kältesten unterwegs: {0} bei {1}, {2}.</translation>
    </message>
    <message>
        <source>Hottest: {0} at {1}, {2}; WBGT about {3}.</source>
        <translation>Am heißesten: {0} bei {1}, {2}; WBGT etwa {3}.</translation>
    </message>
    <message>
        <source>Weather of the day</source>
        <translation>Wetter des Tages</translation>
    </message>
    <message>
        <source>There is a &amp;forecast</source>
        <translation>Es gibt eine &amp;Vorhersage</translation>
    </message>
    <message>
        <source>&amp;Coldest in the valley</source>
        <translation>&amp;Tiefstwert im Tal</translation>
    </message>
    <message>
        <source>W&amp;armest in the valley</source>
        <translation>&amp;Höchstwert im Tal</translation>
    </message>
    <message>
        <source>&amp;Humidity at the warmest</source>
        <translation>&amp;Feuchte beim Höchstwert</translation>
    </message>
    <message>
        <source>H&amp;eight of that place</source>
        <translation>Höhe dieses &amp;Ortes</translation>
    </message>
    <message>
        <source>Coldest in the valley</source>
        <translation>Tiefstwert im Tal</translation>
    </message>
    <message>
        <source>Warmest in the valley</source>
        <translation>Höchstwert im Tal</translation>
    </message>
    <message>
        <source>Hour of the coldest</source>
        <translation>Stunde des Tiefstwerts</translation>
    </message>
    <message>
        <source>Hour of the warmest</source>
        <translation>Stunde des Höchstwerts</translation>
    </message>
    <message>
        <source>at</source>
        <translation>um</translation>
    </message>
    <message>
        <source>Reckon with</source>
        <translation>Rechnen mit</translation>
    </message>
    <message>
        <source>takes in all</source>
        <translation>kostet insgesamt</translation>
    </message>
    <message>
        <source>A&amp;ltitude</source>
        <translation>Höhen&amp;lage</translation>
    </message>
    <message>
        <source>Heat, b&amp;y day</source>
        <translation>Hitze am T&amp;ag</translation>
    </message>
    <message>
        <source>&amp;Night</source>
        <translation>&amp;Nacht</translation>
    </message>
    <message>
        <source>&amp;Rough descents</source>
        <translation>&amp;Raue Abstiege</translation>
    </message>
    <message>
        <source>The dark ta&amp;kes, an estimate</source>
        <translation>Dunkelheit kostet, &amp;geschätzt</translation>
    </message>
    <message>
        <source>Lam&amp;p burns, all cells</source>
        <translation>Lam&amp;pe brennt, alle Akkus</translation>
    </message>
    <message>
        <source>{0} dark</source>
        <translation>{0} dunkel</translation>
    </message>
</context>
<context>
    <name>Course</name>
    <message>
        <source>The file has no heights: climb and drop are unknown, all counts as level.</source>
        <translation>Die Datei hat keine Höhen: Aufstieg und Abstieg sind unbekannt, alles zählt als eben.</translation>
    </message>
    <message>
        <source>The file has no heights but 0: climb and drop are unknown, all counts as level.</source>
        <translation>Die Datei hat nur Höhen von 0: Aufstieg und Abstieg sind unbekannt, alles zählt als eben.</translation>
    </message>
    <message>
        <source>Height missing at {0} of {1} points: taken from the points about them.</source>
        <translation>Höhe fehlt an {0} von {1} Punkten: aus den Punkten ringsum genommen.</translation>
    </message>
    <message>
        <source>Height 0 put in for want of one at {0} of {1} points: taken from those about them.</source>
        <translation>Höhe 0 als Lückenfüller an {0} von {1} Punkten: aus den Punkten ringsum genommen.</translation>
    </message>
    <message>
        <source>Heights that jump up or down and back were left out, at {0} of {1} points.</source>
        <translation>Höhen, die auf und ab springen, wurden weggelassen, an {0} von {1} Punkten.</translation>
    </message>
    <message>
        <source>The heights look like feet, up to {0}: they were taken as such and made metres.</source>
        <translation>Die Höhen sehen nach Fuß aus, bis {0}: Sie wurden so gelesen und in Meter umgerechnet.</translation>
    </message>
    <message>
        <source>The points lie {0} apart on average: distance, climb and drop come out short.</source>
        <extracomment>A point is astray if the line jumps so far to it and back, and so much further than usual. At the very start or end, where there is no way back, it is so far.</extracomment>
        <translation>Die Punkte liegen im Mittel {0} auseinander: Distanz, Aufstieg und Abstieg fallen zu klein aus.</translation>
    </message>
    <message>
        <source>Points far off the line were left out: {0}.</source>
        <translation>Punkte weit neben der Linie wurden weggelassen: {0}.</translation>
    </message>
    <message>
        <source>Between pieces that do not quite meet, {0} in all were bridged straight.</source>
        <translation>Zwischen Stücken, die nicht ganz zusammenstoßen, wurden insgesamt {0} gerade überbrückt.</translation>
    </message>
    <message>
        <source>The line is broken: {0} in all are missing and not counted.</source>
        <translation>Die Linie ist unterbrochen: Insgesamt {0} fehlen und zählen nicht.</translation>
    </message>
    <message>
        <source>{0} no longer holds the line that was chosen. Open it anew.</source>
        <extracomment>A line is there twice if so much of one lies so near the other and goes the same way. Of a track and a route the track is followed, unless it is less than so much of the route. Races of one event from one place share so much of their ground; loops from a base do not.</extracomment>
        <translation>{0} enthält die gewählte Linie nicht mehr. Öffne die Datei neu.</translation>
    </message>
    <message>
        <source>The file holds a route as well; the course follows the track.</source>
        <translation>Die Datei enthält auch eine Route; die Strecke folgt dem Track.</translation>
    </message>
    <message>
        <source>The file holds a short track as well; the course follows the route.</source>
        <translation>Die Datei enthält auch einen kurzen Track; die Strecke folgt der Route.</translation>
    </message>
    <message>
        <source>Lines over ground another line already covers were left out: {0}.</source>
        <translation>Linien, die eine andere Linie schon abdeckt, wurden weggelassen: {0}.</translation>
    </message>
    <message>
        <source>Shorter ways from the same start to the same finish were left out: {0}.</source>
        <translation>Kürzere Wege vom selben Start zum selben Ziel wurden weggelassen: {0}.</translation>
    </message>
    <message>
        <source>Pieces were put in the order in which they meet, not the file&apos;s.</source>
        <translation>Die Stücke wurden so geordnet, wie sie zusammenstoßen, nicht wie in der Datei.</translation>
    </message>
    <message>
        <source>{0} routes were joined in the order of the file.</source>
        <translation>{0} Routen wurden in der Reihenfolge der Datei verbunden.</translation>
    </message>
    <message>
        <source>{0} tracks were joined in the order of the file.</source>
        <translation>{0} Tracks wurden in der Reihenfolge der Datei verbunden.</translation>
    </message>
    <message>
        <source>{0} tracks were joined.</source>
        <translation>{0} Tracks wurden verbunden.</translation>
    </message>
    <message>
        <source>{0} holds no track and no route to run along. Export it with its track.</source>
        <translation>{0} enthält keinen Track und keine Route zum Laufen. Exportiere die Datei mit ihrem Track.</translation>
    </message>
    <message>
        <source>Row {0}: the cutoff would come {1} after the one before or the start. Check it, its weekday and the start.</source>
        <translation>Zeile {0}: Das Zeitlimit käme {1} nach dem vorigen oder dem Start. Prüfe es, seinen Wochentag und den Start.</translation>
    </message>
    <message>
        <source>Row {0}: the cutoff comes before an earlier one. Check both.</source>
        <translation>Zeile {0}: Das Zeitlimit kommt vor einem früheren. Prüfe beide.</translation>
    </message>
    <message>
        <source>Row {0}: a cutoff lies after the start and within 240 hours. Mend it.</source>
        <translation>Zeile {0}: Ein Zeitlimit liegt nach dem Start und innerhalb von 240 Stunden. Berichtige es.</translation>
    </message>
    <message>
        <source>The course needs its finish: type a row with the whole distance.</source>
        <translation>Die Strecke braucht ihr Ziel: Gib eine Zeile mit der ganzen Distanz ein.</translation>
    </message>
    <message>
        <source>The table has more than {0} rows. Keep the aid stations alone.</source>
        <translation>Die Tabelle hat mehr als {0} Zeilen. Behalte nur die Verpflegungsstellen.</translation>
    </message>
    <message>
        <source>Row {0} has no distance. Type how far it is from the start.</source>
        <translation>Zeile {0} hat keine Distanz. Gib ein, wie weit es vom Start ist.</translation>
    </message>
    <message>
        <source>Row {0} lies no further than the row before it. Distances count from the start.</source>
        <translation>Zeile {0} liegt nicht weiter als die Zeile davor. Distanzen zählen ab dem Start.</translation>
    </message>
    <message>
        <source>Row {0} lies less than {1} after the row before it. Join the two.</source>
        <translation>Zeile {0} liegt weniger als {1} nach der Zeile davor. Fasse beide zusammen.</translation>
    </message>
    <message>
        <source>Row {0} lies {1} from the start, further than any race. Check its unit.</source>
        <translation>Zeile {0} liegt {1} vom Start entfernt, weiter als jedes Rennen. Prüfe die Einheit.</translation>
    </message>
    <message>
        <source>Row {0}: climb and drop are metres or feet, none below 0. Mend it.</source>
        <translation>Zeile {0}: Aufstieg und Abstieg sind Meter oder Fuß, nicht unter 0. Berichtige das.</translation>
    </message>
    <message>
        <source>Row {0}: no path lies at a height of {1}. Check its unit.</source>
        <translation>Zeile {0}: Auf einer Höhe von {1} liegt kein Weg. Prüfe die Einheit.</translation>
    </message>
    <message>
        <source>Row {0}: a stop takes 0 to 24 hours. Mend it.</source>
        <translation>Zeile {0}: Ein Halt dauert 0 bis 24 Stunden. Berichtige das.</translation>
    </message>
    <message>
        <source>The table has no climb and no drop: all counts as level.</source>
        <translation>Die Tabelle hat keinen Aufstieg und keinen Abstieg: Alles zählt als eben.</translation>
    </message>
    <message>
        <source>Row {0}: {1} of climb and drop on {2} is steeper than any path. Check the units and the distance.</source>
        <translation>Zeile {0}: {1} Aufstieg und Abstieg auf {2} ist steiler als jeder Weg. Prüfe die Einheiten und die Distanz.</translation>
    </message>
    <message>
        <source>The table has no drop: each leg goes down as far as it goes up.</source>
        <translation>Die Tabelle hat keinen Abstieg: Jedes Teilstück geht so weit hinab wie hinauf.</translation>
    </message>
    <message>
        <source>The table has no climb: each leg goes up as far as it goes down.</source>
        <translation>Die Tabelle hat keinen Aufstieg: Jedes Teilstück geht so weit hinauf wie hinab.</translation>
    </message>
    <message>
        <source>Climb and drop are taken from the heights of the places alone: what goes up and down between them is not in it.</source>
        <translation>Aufstieg und Abstieg stammen nur aus den Höhen der Orte: Das Auf und Ab dazwischen ist nicht enthalten.</translation>
    </message>
    <message>
        <source>Legs without climb and drop count as level: {0}.</source>
        <translation>Teilstücke ohne Aufstieg und Abstieg zählen als eben: {0}.</translation>
    </message>
    <message>
        <source>The heights of the places do not fit climb and drop, by up to {0}: climb and drop are kept.</source>
        <translation>Die Höhen der Orte passen nicht zu Aufstieg und Abstieg, um bis zu {0}: Aufstieg und Abstieg bleiben.</translation>
    </message>
    <message>
        <source>Climb and drop add up to a height of {0}, where no path is. Check both, in metres or feet.</source>
        <translation>Aufstieg und Abstieg ergeben eine Höhe von {0}, wo kein Weg ist. Prüfe beide, in Metern oder Fuß.</translation>
    </message>
    <message>
        <source>The course is drawn from a table: its hills are schematic and its place is not known. Light is that of the equator.</source>
        <translation>Die Strecke ist aus einer Tabelle gezeichnet: Ihre Hügel sind schematisch, ihr Ort ist unbekannt. Das Licht ist das des Äquators.</translation>
    </message>
    <message>
        <source>The course is drawn from a table: its line and hills are schematic. Light is computed for {0}.</source>
        <translation>Die Strecke ist aus einer Tabelle gezeichnet: Linie und Hügel sind schematisch. Das Licht ist für {0} berechnet.</translation>
    </message>
    <message>
        <source>Start</source>
        <extracomment>Races are described in these as well as in the user&apos;s language and in English.</extracomment>
        <translation>Start</translation>
    </message>
    <message>
        <source>No column of distances is found. Give the columns heads: name, distance, climb, drop, cutoff.</source>
        <translation>Keine Spalte mit Distanzen gefunden. Gib den Spalten Köpfe: Name, Distanz, Aufstieg, Abstieg, Zeitlimit.</translation>
    </message>
    <message>
        <source>There are heads but no rows. Paste the rows as well.</source>
        <translation>Es gibt Köpfe, aber keine Zeilen. Füge auch die Zeilen ein.</translation>
    </message>
    <message>
        <source>The last row, {0}, is taken for the finish.</source>
        <translation>Die letzte Zeile, {0}, gilt als Ziel.</translation>
    </message>
    <message>
        <source>Line {0} has more cells than there are heads. Part cells with tabs or semicolons, not with the decimal sign.</source>
        <translation>Zeile {0} hat mehr Zellen, als es Köpfe gibt. Trenne Zellen mit Tabulatoren oder Semikolons, nicht mit dem Dezimalzeichen.</translation>
    </message>
    <message>
        <source>Line {0}: “{1}” is not a distance. Type it as {2}.</source>
        <translation>Zeile {0}: „{1}“ ist keine Distanz. Schreib sie als {2}.</translation>
    </message>
    <message>
        <source>Line {0}: “{1}” is not a height. Type it as {2}.</source>
        <translation>Zeile {0}: „{1}“ ist keine Höhe. Schreib sie als {2}.</translation>
    </message>
    <message>
        <source>The distances do not rise, so each is taken for one leg.</source>
        <translation>Die Distanzen steigen nicht, daher gilt jede für ein Teilstück.</translation>
    </message>
    <message>
        <source>Line {0}: “{1}” is no cutoff. Type it as Sat 20:30, 20:30 or 14 h 30 of race time.</source>
        <translation>Zeile {0}: „{1}“ ist kein Zeitlimit. Schreib es als Sa 20:30, 20:30 oder 14 h 30 Rennzeit.</translation>
    </message>
    <message>
        <source>Line {0}: “{1}” is not a stop. Type minutes, or 1 h 30.</source>
        <translation>Zeile {0}: „{1}“ ist kein Halt. Gib Minuten ein oder 1 h 30.</translation>
    </message>
    <message>
        <source>The line in {0} leads nowhere. Export the whole course.</source>
        <extracomment>How much of the time to read a course goes into parsing its file. What programs call a course nobody named, with a number or not.</extracomment>
        <translation>Die Linie in {0} führt nirgendwohin. Exportiere die ganze Strecke.</translation>
    </message>
    <message>
        <source>The line in {0} is {1} long, more than any race. Export only the course.</source>
        <translation>Die Linie in {0} ist {1} lang, mehr als jedes Rennen. Exportiere nur die Strecke.</translation>
    </message>
    <message>
        <source>{0} is written in an encoding that cannot be read. Export it as UTF-8.</source>
        <translation>{0} hat eine Zeichenkodierung, die nicht lesbar ist. Exportiere die Datei als UTF-8.</translation>
    </message>
    <message>
        <source>{0} is damaged or cut off at line {1}. Export or download it again.</source>
        <translation>{0} ist in Zeile {1} beschädigt oder abgeschnitten. Exportiere oder lade die Datei neu.</translation>
    </message>
    <message>
        <source>{0} is not a GPX file. Export the course as GPX.</source>
        <translation>{0} ist keine GPX-Datei. Exportiere die Strecke als GPX.</translation>
    </message>
    <message>
        <source>{0} has a point without latitude or longitude at line {1}. Export it again.</source>
        <translation>{0} hat in Zeile {1} einen Punkt ohne Breite oder Länge. Exportiere die Datei neu.</translation>
    </message>
    <message>
        <source>{0} has a point that is nowhere on the globe at line {1}. Mend or remove that point.</source>
        <translation>{0} hat in Zeile {1} einen Punkt, der nirgends auf der Erde liegt. Berichtige oder entferne diesen Punkt.</translation>
    </message>
    <message>
        <source>{0} has a comma in the number {2} at line {1}; GPX wants a point. Export it again.</source>
        <translation>{0} hat in der Zahl {2} in Zeile {1} ein Komma; GPX verlangt einen Punkt. Exportiere die Datei neu.</translation>
    </message>
    <message>
        <source>{0} has “{2}” at line {1} where a number belongs. Export it again.</source>
        <translation>{0} hat „{2}“ in Zeile {1}, wo eine Zahl hingehört. Exportiere die Datei neu.</translation>
    </message>
    <message>
        <source>{0} is built as no GPX file needs to be (line {1}), so it is not read. Export the course again.</source>
        <translation>{0} ist gebaut, wie es keine GPX-Datei sein muss (Zeile {1}), und wird daher nicht gelesen. Exportiere die Strecke neu.</translation>
    </message>
    <message>
        <source>{0} holds more than 1,000,000 points. Export it with fewer.</source>
        <translation>{0} enthält mehr als 1.000.000 Punkte. Exportiere die Datei mit weniger.</translation>
    </message>
    <message>
        <source>{0} declares a document type or entities, which GPX never needs and which can do harm. Export the course again.</source>
        <translation>{0} deklariert einen Dokumenttyp oder Entitäten, die GPX nie braucht und die schaden können. Exportiere die Strecke neu.</translation>
    </message>
    <message>
        <source>{0} has no times, so nobody can tell how it was run. Export the recording.</source>
        <translation>{0} hat keine Zeiten, also ist nicht zu sehen, wie gelaufen wurde. Exportiere die Aufzeichnung.</translation>
    </message>
    <message>
        <source>The times in {0} come of drawing the line, not of running it. Open it as a course, or export the recording.</source>
        <translation>Die Zeiten in {0} stammen vom Zeichnen der Linie, nicht vom Laufen. Öffne die Datei als Strecke oder exportiere die Aufzeichnung.</translation>
    </message>
    <message>
        <source>{0} is not a name a file can have. Choose another.</source>
        <translation>{0} ist kein möglicher Dateiname. Wähle einen anderen.</translation>
    </message>
    <message>
        <source>{0} is larger than 256 MB. Export the course again with fewer points.</source>
        <translation>{0} ist größer als 256 MB. Exportiere die Strecke neu mit weniger Punkten.</translation>
    </message>
    <message>
        <source>{0} is empty. Export or download it again.</source>
        <translation>{0} ist leer. Exportiere oder lade die Datei neu.</translation>
    </message>
    <message>
        <source>{0} cannot be found. Look where it lies and try again.</source>
        <translation>{0} ist nicht zu finden. Sieh nach, wo die Datei liegt, und versuch es noch einmal.</translation>
    </message>
    <message>
        <source>{0} is not a file. Choose a GPX file.</source>
        <translation>{0} ist keine Datei. Wähle eine GPX-Datei.</translation>
    </message>
    <message>
        <source>You are not allowed to read {0}. Change its permissions or copy it.</source>
        <translation>Du darfst {0} nicht lesen. Ändere die Zugriffsrechte oder kopiere die Datei.</translation>
    </message>
    <message>
        <source>{0} cannot be read ({1}). Copy it elsewhere and try again.</source>
        <translation>{0} ist nicht lesbar ({1}). Kopiere die Datei woandershin und versuch es noch einmal.</translation>
    </message>
    <message>
        <source>{0} is packed and damaged. Export or download it again.</source>
        <translation>{0} ist gepackt und beschädigt. Exportiere oder lade die Datei neu.</translation>
    </message>
    <message>
        <source>{0} is too large for the table of a course. Keep its rows alone.</source>
        <translation>{0} ist zu groß für die Tabelle einer Strecke. Behalte nur ihre Zeilen.</translation>
    </message>
    <message>
        <source>{0} is not a text file. Save the table as CSV.</source>
        <translation>{0} ist keine Textdatei. Speichere die Tabelle als CSV.</translation>
    </message>
    <message>
        <source>The table is empty. Paste it with its heads.</source>
        <translation>Die Tabelle ist leer. Füge sie mit ihren Köpfen ein.</translation>
    </message>
    <message>
        <source>This is too large for the table of a course. Paste only its rows and heads.</source>
        <translation>Das ist zu groß für die Tabelle einer Strecke. Füge nur ihre Zeilen und Köpfe ein.</translation>
    </message>
    <message>
        <source>{0} waypoints are too many for aid stations: none was taken over.</source>
        <extracomment>What the type of a waypoint says that is no aid station.</extracomment>
        <translation>{0} Wegpunkte sind zu viele für Verpflegungsstellen: Keiner wurde übernommen.</translation>
    </message>
    <message>
        <source>Waypoints more than {1} off the line were left out: {0}.</source>
        <translation>Wegpunkte, die mehr als {1} neben der Linie liegen, wurden weggelassen: {0}.</translation>
    </message>
    <message>
        <source>Waypoints less than {1} after another were left out: {0}.</source>
        <translation>Wegpunkte weniger als {1} nach einem anderen wurden weggelassen: {0}.</translation>
    </message>
    <message>
        <source>Mended in the file: {0}. Each can be undone in Course, What was mended.</source>
        <extracomment>Takes a course that was read, with its profile.</extracomment>
        <translation>In der Datei berichtigt: {0}. Jedes lässt sich unter Strecke, Was berichtigt wurde, rückgängig machen.</translation>
    </message>
    <message>
        <source>{0} is too large to be kept. Export it with a point a second or fewer.</source>
        <translation>{0} ist zu groß zum Aufbewahren. Exportiere die Datei mit höchstens einem Punkt je Sekunde.</translation>
    </message>
</context>
<context>
    <name>Course words</name>
    <message>
        <source>unknown</source>
        <translation>unbekannt</translation>
    </message>
    <message>
        <source>road</source>
        <translation>Straße</translation>
    </message>
    <message>
        <source>gravel</source>
        <translation>Schotter</translation>
    </message>
    <message>
        <source>smooth trail</source>
        <translation>glatter Trail</translation>
    </message>
    <message>
        <source>grass</source>
        <translation>Gras</translation>
    </message>
    <message>
        <source>technical trail</source>
        <translation>technischer Trail</translation>
    </message>
    <message>
        <source>rock</source>
        <translation>Fels</translation>
    </message>
    <message>
        <source>sand</source>
        <translation>Sand</translation>
    </message>
    <message>
        <source>snow</source>
        <translation>Schnee</translation>
    </message>
    <message>
        <source>water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>food</source>
        <translation>Essen</translation>
    </message>
    <message>
        <source>drop bag</source>
        <translation>Dropbag</translation>
    </message>
    <message>
        <source>crew</source>
        <translation>Betreuung</translation>
    </message>
    <message>
        <source>medical</source>
        <translation>Sanitäter</translation>
    </message>
    <message>
        <source>pass through</source>
        <translation>Durchlauf</translation>
    </message>
    <message>
        <source>eat</source>
        <translation>essen</translation>
    </message>
    <message>
        <source>change</source>
        <translation>wechseln</translation>
    </message>
    <message>
        <source>sleep</source>
        <translation>Schlaf</translation>
    </message>
    <message>
        <source>no reason given</source>
        <extracomment>Who stands still does not pass through: the same kind, with a stop planned.</extracomment>
        <translation>ohne Grund</translation>
    </message>
    <message>
        <source>in by</source>
        <translation>an bis</translation>
    </message>
    <message>
        <source>out by</source>
        <translation>ab bis</translation>
    </message>
    <message>
        <source>shoes</source>
        <translation>Schuhe</translation>
    </message>
    <message>
        <source>socks</source>
        <translation>Socken</translation>
    </message>
    <message>
        <source>top</source>
        <translation>Oberteil</translation>
    </message>
    <message>
        <source>lamp</source>
        <translation>Lampe</translation>
    </message>
    <message>
        <source>poles</source>
        <translation>Stöcke</translation>
    </message>
</context>
<context>
    <name>CourseDeeds</name>
    <message>
        <source>There is no aid station yet. Add one first.</source>
        <translation>Es gibt noch keine Verpflegungsstelle. Füge zuerst eine hinzu.</translation>
    </message>
    <message>
        <source>Looking through {0}</source>
        <translation>{0} wird durchgesehen</translation>
    </message>
    <message>
        <source>Reading {0}</source>
        <translation>{0} wird gelesen</translation>
    </message>
    <message>
        <source>The course is read the other way.</source>
        <translation>Die Strecke wird andersherum gelesen.</translation>
    </message>
</context>
<context>
    <name>CourseForm</name>
    <message>
        <source>Shape of the course</source>
        <translation>Form der Strecke</translation>
    </message>
    <message>
        <source>Official distance, climb and drop</source>
        <translation>Offizielle Distanz, Aufstieg und Abstieg</translation>
    </message>
    <message>
        <source>Trim start and finish</source>
        <translation>Start und Ziel kürzen</translation>
    </message>
    <message>
        <source>Run it the other way round</source>
        <translation>Andersherum laufen</translation>
    </message>
    <message>
        <source>Run it in laps</source>
        <translation>In Runden laufen</translation>
    </message>
    <message>
        <source>Go out and back</source>
        <translation>Hin und zurück</translation>
    </message>
    <message>
        <source>Put another file behind it</source>
        <translation>Eine andere Datei anhängen</translation>
    </message>
    <message>
        <source>What to do</source>
        <translation>Was zu tun ist</translation>
    </message>
    <message>
        <source>Lap {0}</source>
        <translation>Runde {0}</translation>
    </message>
    <message>
        <source>Turn</source>
        <translation>Wende</translation>
    </message>
    <message>
        <source>Take asks for the file of the next leg.</source>
        <translation>„Übernehmen“ fragt nach der Datei des nächsten Teilstücks.</translation>
    </message>
    <message>
        <source>This makes no course.</source>
        <translation>Das ergibt keine Strecke.</translation>
    </message>
    <message>
        <source>Then {0} with climb {1} and drop {2}; now {3}.</source>
        <translation>Dann {0} mit {1} Aufstieg und {2} Abstieg; jetzt {3}.</translation>
    </message>
    <message>
        <source>as measured</source>
        <translation>wie gemessen</translation>
    </message>
    <message>
        <source>Measured on the line: {0}; climb {1}, drop {2} as they count now.</source>
        <translation>Auf der Linie gemessen: {0}; Aufstieg {1}, Abstieg {2}, wie sie jetzt zählen.</translation>
    </message>
    <message>
        <source>Official &amp;distance</source>
        <translation>Offizielle &amp;Distanz</translation>
    </message>
    <message>
        <source>Official &amp;climb</source>
        <translation>Offizieller &amp;Aufstieg</translation>
    </message>
    <message>
        <source>Official d&amp;rop</source>
        <translation>Offizieller A&amp;bstieg</translation>
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
        <source>Cutoffs are dropped: they belong to the way it was.</source>
        <translation>Zeitlimits entfallen: Sie gehören zur bisherigen Richtung.</translation>
    </message>
    <message>
        <source>Laps</source>
        <translation>Runden</translation>
    </message>
    <message>
        <source>Aid stations come again in every lap.</source>
        <translation>Verpflegungsstellen kommen in jeder Runde wieder.</translation>
    </message>
    <message>
        <source>Back the same way from the finish to the start.</source>
        <translation>Auf demselben Weg vom Ziel zurück zum Start.</translation>
    </message>
    <message>
        <source>The next leg begins where this course ends.</source>
        <translation>Das nächste Teilstück beginnt, wo diese Strecke endet.</translation>
    </message>
    <message>
        <source>&amp;Take it</source>
        <translation>Über&amp;nehmen</translation>
    </message>
</context>
<context>
    <name>CourseTableForm</name>
    <message>
        <source>Course from a table</source>
        <extracomment>What the help says of each column.</extracomment>
        <translation>Strecke aus einer Tabelle</translation>
    </message>
    <message>
        <source>What the race is called</source>
        <translation>Wie das Rennen heißt</translation>
    </message>
    <message>
        <source>Places of the course</source>
        <translation>Orte der Strecke</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>The profile appears here as you type.</source>
        <translation>Das Profil erscheint hier beim Tippen.</translation>
    </message>
    <message>
        <source>No course yet.</source>
        <translation>Noch keine Strecke.</translation>
    </message>
    <message>
        <source>climb {0}</source>
        <translation>Aufstieg {0}</translation>
    </message>
    <message>
        <source>drop {0}</source>
        <translation>Abstieg {0}</translation>
    </message>
    <message>
        <source>1 aid station</source>
        <translation>1 Verpflegungsstelle</translation>
    </message>
    <message>
        <source>{0} aid stations</source>
        <translation>{0} Verpflegungsstellen</translation>
    </message>
    <message>
        <source>Hills and line are schematic: as long and as high as typed.</source>
        <translation>Hügel und Linie sind schematisch: so lang und so hoch wie eingegeben.</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>One row to each place with its distance from the start; the last is the finish. Type it, or paste a table from a spreadsheet or a web page, heads and all.</source>
        <translation>Eine Zeile je Ort mit seiner Distanz vom Start; die letzte ist das Ziel. Gib sie ein oder füge eine Tabelle aus einer Tabellenkalkulation oder Webseite ein, samt Köpfen.</translation>
    </message>
    <message>
        <source>Ctrl+Enter</source>
        <translation>Ctrl+Enter</translation>
    </message>
    <message>
        <source>Delete</source>
        <translation>Delete</translation>
    </message>
    <message>
        <source>Ctrl+V</source>
        <translation>Ctrl+V</translation>
    </message>
    <message>
        <source>Ctrl+Z</source>
        <translation>Ctrl+Z</translation>
    </message>
    <message>
        <source>&amp;Add a row</source>
        <translation>Zeile &amp;hinzufügen</translation>
    </message>
    <message>
        <source>Add a row under this one</source>
        <translation>Eine Zeile unter dieser hinzufügen</translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation>&amp;Entfernen</translation>
    </message>
    <message>
        <source>Remove the selected rows</source>
        <translation>Die gewählten Zeilen entfernen</translation>
    </message>
    <message>
        <source>&amp;Paste</source>
        <translation>Ein&amp;fügen</translation>
    </message>
    <message>
        <source>Paste a table or cells</source>
        <translation>Eine Tabelle oder Zellen einfügen</translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>Take back the last change</source>
        <translation>Die letzte Änderung zurücknehmen</translation>
    </message>
    <message>
        <source>&amp;Go on…</source>
        <translation>&amp;Weiter…</translation>
    </message>
</context>
<context>
    <name>Crash</name>
    <message>
        <source>A fault in the program stopped this; your work is kept. The details are in {0}.</source>
        <translation>Ein Fehler im Programm hat das abgebrochen; deine Arbeit ist gesichert. Einzelheiten stehen in {0}.</translation>
    </message>
</context>
<context>
    <name>CrewForm</name>
    <message>
        <source>Crew and lists</source>
        <translation>Betreuung und Listen</translation>
    </message>
    <message>
        <source>Who I am</source>
        <translation>Wer ich bin</translation>
    </message>
    <message>
        <source>Crew</source>
        <translation>Betreuung</translation>
    </message>
    <message>
        <source>At the stations</source>
        <translation>An den Stationen</translation>
    </message>
    <message>
        <source>Kit and lists</source>
        <translation>Ausrüstung und Listen</translation>
    </message>
    <message>
        <source>Hard stretches</source>
        <translation>Harte Strecken</translation>
    </message>
</context>
<context>
    <name>DayGrid</name>
    <message>
        <source>Day grid</source>
        <extracomment>The shelf of kinds is asked for.</extracomment>
        <translation>Tagesraster</translation>
    </message>
    <message numerus="yes">
        <source>{0}; and %n more selected</source>
        <translation>
            <numerusform>{0}; und %n weitere gewählt</numerusform>
            <numerusform>{0}; und %n weitere gewählt</numerusform>
        </translation>
    </message>
    <message>
        <source>Picked up. {0}. Enter puts it down, Esc puts it back.</source>
        <translation>Aufgenommen. {0}. Eingabe legt ab, Esc legt zurück.</translation>
    </message>
</context>
<context>
    <name>Deeds</name>
    <message>
        <source>The copy was not written</source>
        <extracomment>Files that hold a table and no line.</extracomment>
        <translation>Die Kopie wurde nicht geschrieben</translation>
    </message>
    <message>
        <source>Reading {0}</source>
        <translation>{0} wird gelesen</translation>
    </message>
    <message>
        <source>{0}, {1} aid stations proposed</source>
        <translation>{0}, {1} Verpflegungsstellen vorgeschlagen</translation>
    </message>
    <message>
        <source>, climb {0}, drop {1}</source>
        <translation>, Aufstieg {0}, Abstieg {1}</translation>
    </message>
    <message>
        <source>, no heights: paced as flat</source>
        <translation>, keine Höhen: Tempo wie im Flachen</translation>
    </message>
    <message>
        <source>The plan is made and kept. At the right: what comes next.</source>
        <translation>Der Plan ist angelegt und gesichert. Rechts steht, was als Nächstes kommt.</translation>
    </message>
    <message>
        <source>The other course is read.</source>
        <translation>Die andere Strecke wird gelesen.</translation>
    </message>
</context>
<context>
    <name>DeskPanel</name>
    <message>
        <source>Backs behind fronts</source>
        <translation>Rückseiten hinter Vorderseiten</translation>
    </message>
    <message>
        <source>Match…</source>
        <translation>Abgleichen…</translation>
    </message>
    <message>
        <source>Write PDF…</source>
        <translation>PDF schreiben…</translation>
    </message>
    <message>
        <source>Print…</source>
        <translation>Drucken…</translation>
    </message>
    <message>
        <source>For a lock screen…</source>
        <translation>Für einen Sperrbildschirm…</translation>
    </message>
    <message>
        <source>Cancel writing</source>
        <translation>Schreiben abbrechen</translation>
    </message>
    <message>
        <source>Writing, {0} %</source>
        <translation>Schreibt, {0} %</translation>
    </message>
    <message>
        <source>Each card by itself</source>
        <translation>Jede Karte für sich</translation>
    </message>
    <message>
        <source>Several on {0}</source>
        <translation>Mehrere auf {0}</translation>
    </message>
    <message>
        <source>By day</source>
        <translation>Bei Tag</translation>
    </message>
    <message>
        <source>In grey</source>
        <translation>In Grau</translation>
    </message>
    <message>
        <source>Under a red lamp</source>
        <translation>Unter rotem Licht</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Licht</translation>
    </message>
    <message>
        <source>Lay a bank card on the screen so that true size is true</source>
        <translation>Leg eine Bankkarte auf den Bildschirm, damit die wahre Größe stimmt</translation>
    </message>
    <message>
        <source>Fit</source>
        <translation>Einpassen</translation>
    </message>
    <message>
        <source>True size</source>
        <translation>Wahre Größe</translation>
    </message>
</context>
<context>
    <name>DistanceField</name>
    <message>
        <source>From {0} to {1}</source>
        <translation>Von {0} bis {1}</translation>
    </message>
</context>
<context>
    <name>DistanceLane</name>
    <message>
        <source>Distance</source>
        <translation>Distanz</translation>
    </message>
    <message>
        <source>{0} a week</source>
        <translation>{0} je Woche</translation>
    </message>
    <message>
        <source>{0}, before {1}</source>
        <translation>{0}, vorher {1}</translation>
    </message>
    <message>
        <source>{0}, planned {1}</source>
        <translation>{0}, geplant {1}</translation>
    </message>
    <message>
        <source>{0}; {1} of the last loading week</source>
        <translation>{0}; {1} der letzten Belastungswoche</translation>
    </message>
    <message>
        <source>{0} + race</source>
        <translation>{0} + Rennen</translation>
    </message>
</context>
<context>
    <name>DoneBox</name>
    <message>
        <source>What was done</source>
        <translation>Was gemacht wurde</translation>
    </message>
    <message>
        <source>Not marked yet</source>
        <translation>Noch nicht vermerkt</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Erledigt</translation>
    </message>
    <message>
        <source>Missed</source>
        <translation>Ausgefallen</translation>
    </message>
    <message>
        <source>Not noted</source>
        <translation>Nicht notiert</translation>
    </message>
    <message>
        <source>How it &amp;went</source>
        <translation>Wie es &amp;lief</translation>
    </message>
    <message>
        <source>Distance</source>
        <translation>Distanz</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Climb</source>
        <translation>Aufstieg</translation>
    </message>
    <message>
        <source>Drop</source>
        <translation>Abstieg</translation>
    </message>
    <message>
        <source>Effort</source>
        <translation>Anstrengung</translation>
    </message>
    <message>
        <source>Carbs eaten</source>
        <translation>KH gegessen</translation>
    </message>
    <message>
        <source>G&amp;ut</source>
        <translation>&amp;Magen</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>As planned.</source>
        <translation>Wie geplant.</translation>
    </message>
</context>
<context>
    <name>DoneForm</name>
    <message>
        <source>{0}, {1}</source>
        <translation>{0}, {1}</translation>
    </message>
    <message>
        <source>Planned: {0}</source>
        <translation>Geplant: {0}</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Behalten</translation>
    </message>
    <message>
        <source>Distance, time moving, climb and drop are from the recording. Say how hard it was, what you ate and how your gut took it.</source>
        <translation>Distanz, Zeit in Bewegung, Aufstieg und Abstieg stammen aus der Aufzeichnung. Gib an, wie hart es war, was du gegessen hast und wie dein Magen es vertrug.</translation>
    </message>
</context>
<context>
    <name>DurationField</name>
    <message>
        <source>none</source>
        <extracomment>The day of the month, after the weekday.</extracomment>
        <translation>keine</translation>
    </message>
    <message>
        <source>From {0} to {1}, as 20 h 16 or 20:16</source>
        <translation>Von {0} bis {1}, als 20 h 16 oder 20:16</translation>
    </message>
</context>
<context>
    <name>Edge</name>
    <message>
        <source>Drag to size the lane above; a double click undoes it</source>
        <translation>Zieh, um die Spur darüber zu vergrößern oder zu verkleinern; ein Doppelklick macht es rückgängig</translation>
    </message>
</context>
<context>
    <name>Edit</name>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Before: {0}</source>
        <translation>Vorher: {0}</translation>
    </message>
    <message>
        <source>Take the better block</source>
        <translation>Besseren Block übernehmen</translation>
    </message>
    <message>
        <source>The build-up has changed since the search began; build it again to search anew.</source>
        <translation>Der Aufbau hat sich seit Beginn der Suche geändert; bau ihn neu, um neu zu suchen.</translation>
    </message>
    <message>
        <source>Move session</source>
        <translation>Einheit verschieben</translation>
    </message>
    <message>
        <source>This session is done; it stays on the day it was run.</source>
        <translation>Diese Einheit ist erledigt; sie bleibt an dem Tag, an dem sie gelaufen wurde.</translation>
    </message>
    <message>
        <source>Change session</source>
        <translation>Einheit ändern</translation>
    </message>
    <message>
        <source>Add session</source>
        <translation>Einheit hinzufügen</translation>
    </message>
    <message>
        <source>Remove session</source>
        <translation>Einheit entfernen</translation>
    </message>
    <message>
        <source>The race itself cannot be removed from the build-up.</source>
        <translation>Das Rennen selbst lässt sich nicht aus dem Aufbau entfernen.</translation>
    </message>
    <message>
        <source>Mark session done</source>
        <translation>Einheit als erledigt vermerken</translation>
    </message>
    <message>
        <source>Mark session missed</source>
        <translation>Einheit als ausgefallen vermerken</translation>
    </message>
    <message>
        <source>Build the block</source>
        <translation>Block bauen</translation>
    </message>
    <message>
        <source>A session&apos;s distance lies between 0 and 1,000 km.</source>
        <translation>Die Distanz einer Einheit liegt zwischen 0 und 1.000 km.</translation>
    </message>
    <message>
        <source>A session&apos;s time lies between 0 and 240 hours.</source>
        <translation>Die Zeit einer Einheit liegt zwischen 0 und 240 Stunden.</translation>
    </message>
    <message>
        <source>A session&apos;s climb and drop lie between 0 and 50,000 m.</source>
        <translation>Aufstieg und Abstieg einer Einheit liegen zwischen 0 und 50.000 m.</translation>
    </message>
    <message>
        <source>Effort lies between 0 and 10.</source>
        <translation>Anstrengung liegt zwischen 0 und 10.</translation>
    </message>
    <message>
        <source>Practice carbohydrate lies between 0 and 120 g/h.</source>
        <translation>Kohlenhydrate im Training liegen zwischen 0 und 120 g/h.</translation>
    </message>
    <message>
        <source>A session starts between 00:00 and 23:59.</source>
        <translation>Eine Einheit beginnt zwischen 00:00 und 23:59.</translation>
    </message>
    <message>
        <source>Servings lie above 0 and at most 50.</source>
        <translation>Portionen liegen über 0 und bei höchstens 50.</translation>
    </message>
    <message>
        <source>Carbohydrate eaten lies between 0 and 20,000 g.</source>
        <translation>Gegessene Kohlenhydrate liegen zwischen 0 und 20.000 g.</translation>
    </message>
    <message>
        <source>A part is run 1 to 500 times, its gradient lies within 100 %.</source>
        <translation>Ein Teil wird 1- bis 500-mal gelaufen, seine Steigung liegt innerhalb von 100 %.</translation>
    </message>
    <message>
        <source>A session lies between the years {0} and {1}.</source>
        <translation>Eine Einheit liegt zwischen den Jahren {0} und {1}.</translation>
    </message>
    <message>
        <source>The race stays on its day; change the race date instead.</source>
        <translation>Das Rennen bleibt an seinem Tag; ändere stattdessen das Renndatum.</translation>
    </message>
    <message>
        <source>A project has one race; others in it are tune-up races.</source>
        <translation>Ein Projekt hat ein Rennen; andere darin sind Vorbereitungsrennen.</translation>
    </message>
    <message>
        <source>This session is locked; unlock it first to move it.</source>
        <translation>Diese Einheit ist gesperrt; entsperre sie zuerst, um sie zu verschieben.</translation>
    </message>
    <message>
        <source>Move sessions</source>
        <translation>Einheiten verschieben</translation>
    </message>
    <message>
        <source>Copy sessions</source>
        <translation>Einheiten kopieren</translation>
    </message>
    <message>
        <source>Paste sessions</source>
        <translation>Einheiten einfügen</translation>
    </message>
    <message>
        <source>Repeat weekly</source>
        <translation>Wöchentlich wiederholen</translation>
    </message>
    <message>
        <source>A session is repeated 1 to 52 times.</source>
        <translation>Eine Einheit wird 1- bis 52-mal wiederholt.</translation>
    </message>
    <message>
        <source>The race comes before the next week; repeat none.</source>
        <translation>Das Rennen kommt vor der nächsten Woche; es gibt nichts zu wiederholen.</translation>
    </message>
    <message>
        <source>Lengthen session</source>
        <translation>Einheit verlängern</translation>
    </message>
    <message>
        <source>The race is as long as its course; change that instead.</source>
        <translation>Das Rennen ist so lang wie seine Strecke; ändere stattdessen diese.</translation>
    </message>
    <message>
        <source>Only a session that lies ahead can be drawn longer.</source>
        <translation>Nur eine Einheit, die noch bevorsteht, lässt sich länger ziehen.</translation>
    </message>
    <message>
        <source>A session is longer than nothing.</source>
        <translation>Eine Einheit ist länger als nichts.</translation>
    </message>
    <message>
        <source>Swap sessions</source>
        <translation>Einheiten tauschen</translation>
    </message>
    <message>
        <source>Swap weeks</source>
        <translation>Wochen tauschen</translation>
    </message>
    <message>
        <source>The race week stays the last one.</source>
        <translation>Die Rennwoche bleibt die letzte.</translation>
    </message>
    <message>
        <source>A week that is done in part stays in its place.</source>
        <translation>Eine zum Teil erledigte Woche bleibt an ihrem Platz.</translation>
    </message>
    <message>
        <source>Lock or unlock</source>
        <translation>Sperren oder entsperren</translation>
    </message>
    <message>
        <source>Remove sessions</source>
        <translation>Einheiten entfernen</translation>
    </message>
    <message>
        <source>Move race and build-up</source>
        <translation>Rennen und Aufbau verschieben</translation>
    </message>
    <message>
        <source>Mend after missed days</source>
        <translation>Abhilfe nach ausgefallenen Tagen</translation>
    </message>
    <message>
        <source>That is more than ten years away.</source>
        <translation>Das ist mehr als zehn Jahre entfernt.</translation>
    </message>
    <message>
        <source>Choose cards</source>
        <translation>Karten wählen</translation>
    </message>
    <message>
        <source>There are at most {0} cards.</source>
        <translation>Es gibt höchstens {0} Karten.</translation>
    </message>
    <message>
        <source>A card measures between {0} and {1} mm a side.</source>
        <translation>Eine Karte misst zwischen {0} und {1} mm je Seite.</translation>
    </message>
    <message>
        <source>A card is printed between 1 and {0} times.</source>
        <translation>Eine Karte wird zwischen 1- und {0}-mal gedruckt.</translation>
    </message>
    <message>
        <source>Only a pace card can be worn or folded.</source>
        <translation>Nur eine Tempokarte lässt sich tragen oder falten.</translation>
    </message>
    <message>
        <source>That does not stand on this card.</source>
        <translation>Das steht nicht auf dieser Karte.</translation>
    </message>
    <message>
        <source>Change several things</source>
        <translation>Mehreres ändern</translation>
    </message>
    <message>
        <source>Paste into a table</source>
        <translation>In eine Tabelle einfügen</translation>
    </message>
    <message>
        <source>Import sessions</source>
        <translation>Einheiten importieren</translation>
    </message>
    <message>
        <source>Set official figures</source>
        <translation>Offizielle Werte setzen</translation>
    </message>
    <message>
        <source>Describe section</source>
        <translation>Abschnitt beschreiben</translation>
    </message>
    <message>
        <source>Set what surfaces cost</source>
        <translation>Kosten der Untergründe setzen</translation>
    </message>
    <message>
        <source>Move surface</source>
        <translation>Untergrund verschieben</translation>
    </message>
    <message>
        <source>Pin aid station or let it go</source>
        <translation>Verpflegungsstelle festlegen oder lösen</translation>
    </message>
    <message>
        <source>There is no course yet. Open a GPX file first.</source>
        <translation>Es gibt noch keine Strecke. Öffne zuerst eine GPX-Datei.</translation>
    </message>
    <message>
        <source>Move section end</source>
        <translation>Abschnittsende verschieben</translation>
    </message>
    <message>
        <source>A section ends between the start and the finish.</source>
        <translation>Ein Abschnitt endet zwischen Start und Ziel.</translation>
    </message>
    <message>
        <source>The finish stays where the course ends.</source>
        <translation>Das Ziel bleibt, wo die Strecke endet.</translation>
    </message>
    <message>
        <source>Set section target</source>
        <translation>Vorgabe des Abschnitts setzen</translation>
    </message>
    <message>
        <source>Free all section targets</source>
        <translation>Alle Vorgaben der Abschnitte lösen</translation>
    </message>
    <message>
        <source>Write section note</source>
        <translation>Notiz zum Abschnitt schreiben</translation>
    </message>
    <message>
        <source>Change aid station</source>
        <translation>Verpflegungsstelle ändern</translation>
    </message>
    <message>
        <source>Add aid station</source>
        <translation>Verpflegungsstelle hinzufügen</translation>
    </message>
    <message>
        <source>Remove aid station</source>
        <translation>Verpflegungsstelle entfernen</translation>
    </message>
    <message>
        <source>Open course</source>
        <translation>Strecke öffnen</translation>
    </message>
    <message>
        <source>The places of this course are not in order; open its file again.</source>
        <translation>Die Orte dieser Strecke sind nicht in Reihenfolge; öffne ihre Datei neu.</translation>
    </message>
    <message>
        <source>A surface costs between {0} and {1} times firm ground.</source>
        <translation>Ein Untergrund kostet zwischen dem {0}- und {1}-Fachen von festem Boden.</translation>
    </message>
    <message>
        <source>Speed downhill lies between {0} and {1} times that on firm ground.</source>
        <translation>Das Tempo bergab liegt zwischen dem {0}- und {1}-Fachen dessen auf festem Boden.</translation>
    </message>
    <message>
        <source>The official distance is the length of the course or none.</source>
        <translation>Die offizielle Distanz ist die Länge der Strecke oder keine.</translation>
    </message>
    <message>
        <source>Official climb and drop lie between 0 and 100,000 m.</source>
        <translation>Offizieller Aufstieg und Abstieg liegen zwischen 0 und 100.000 m.</translation>
    </message>
    <message>
        <source>A section takes between 1 second and 240 hours.</source>
        <translation>Ein Abschnitt dauert zwischen 1 Sekunde und 240 Stunden.</translation>
    </message>
    <message>
        <source>An aid station needs a name.</source>
        <translation>Eine Verpflegungsstelle braucht einen Namen.</translation>
    </message>
    <message>
        <source>A stop takes between 0 and 24 hours.</source>
        <translation>Ein Halt dauert zwischen 0 und 24 Stunden.</translation>
    </message>
    <message>
        <source>A cutoff lies after the start and within 240 hours.</source>
        <translation>Ein Zeitlimit liegt nach dem Start und innerhalb von 240 Stunden.</translation>
    </message>
    <message>
        <source>The stop is longer than the cutoff to leave allows. Shorten the stop.</source>
        <translation>Der Halt ist länger, als das Zeitlimit zum Verlassen erlaubt. Kürze den Halt.</translation>
    </message>
    <message>
        <source>{0} (lap {1})</source>
        <extracomment>OWN: stretched or squeezed further than that, a figure is mistyped or the line another one. OWN: as far off as heights in feet that nobody noticed, and a little more.</extracomment>
        <translation>{0} (Runde {1})</translation>
    </message>
    <message>
        <source>{0} (way back)</source>
        <translation>{0} (Rückweg)</translation>
    </message>
    <message>
        <source>Trim course</source>
        <translation>Strecke kürzen</translation>
    </message>
    <message>
        <source>Trim the course between its start and its finish.</source>
        <translation>Kürze die Strecke zwischen ihrem Start und ihrem Ziel.</translation>
    </message>
    <message>
        <source>Leave at least 1 km of the course.</source>
        <translation>Lass mindestens 1 km der Strecke übrig.</translation>
    </message>
    <message>
        <source>Reverse course, cutoffs dropped</source>
        <translation>Strecke umkehren, Zeitlimits entfallen</translation>
    </message>
    <message>
        <source>Run course in laps</source>
        <translation>Strecke in Runden laufen</translation>
    </message>
    <message>
        <source>A course has between 1 and 100 laps.</source>
        <translation>Eine Strecke hat zwischen 1 und 100 Runden.</translation>
    </message>
    <message>
        <source>The line ends {0} from its start, so it is no lap. Go out and back.</source>
        <translation>Die Linie endet {0} von ihrem Start, ist also keine Runde. Lauf hin und zurück.</translation>
    </message>
    <message>
        <source>Go out and back</source>
        <translation>Hin und zurück</translation>
    </message>
    <message>
        <source>Put another leg behind</source>
        <translation>Weiteres Teilstück anhängen</translation>
    </message>
    <message>
        <source>Set official distance</source>
        <translation>Offizielle Distanz setzen</translation>
    </message>
    <message>
        <source>A course is at most 2,000 km long.</source>
        <translation>Eine Strecke ist höchstens 2.000 km lang.</translation>
    </message>
    <message>
        <source>Set official climb and drop</source>
        <translation>Offiziellen Aufstieg und Abstieg setzen</translation>
    </message>
    <message>
        <source>Take heights as feet</source>
        <translation>Höhen als Fuß nehmen</translation>
    </message>
    <message>
        <source>The line has no heights to be in feet.</source>
        <translation>Die Linie hat keine Höhen, die in Fuß sein könnten.</translation>
    </message>
    <message>
        <source>The heights were made metres already when it was read.</source>
        <translation>Die Höhen wurden schon beim Lesen in Meter umgerechnet.</translation>
    </message>
    <message>
        <source>Pin aid station to its distance</source>
        <translation>Verpflegungsstelle auf ihre Distanz festlegen</translation>
    </message>
    <message>
        <source>Read course another way</source>
        <translation>Strecke anders lesen</translation>
    </message>
    <message>
        <source>That makes more than 2,000 km or 1,000,000 points. Make it shorter.</source>
        <translation>Das ergibt mehr als 2.000 km oder 1.000.000 Punkte. Mach es kürzer.</translation>
    </message>
    <message>
        <source>{0} is too far from the {1} of the line. Check the figure and its unit.</source>
        <translation>{0} ist zu weit von {1} der Linie entfernt. Prüfe die Zahl und ihre Einheit.</translation>
    </message>
    <message>
        <source>Between {0} and {1} the line would be stretched or squeezed more than threefold. Check the distances.</source>
        <translation>Zwischen {0} und {1} würde die Linie auf mehr als das Dreifache gedehnt oder gestaucht. Prüfe die Distanzen.</translation>
    </message>
    <message>
        <source>Move fuel item</source>
        <translation>Verpflegung verschieben</translation>
    </message>
    <message>
        <source>Change fuel item</source>
        <translation>Verpflegung ändern</translation>
    </message>
    <message>
        <source>Add fuel item</source>
        <translation>Verpflegung hinzufügen</translation>
    </message>
    <message>
        <source>Remove fuel item</source>
        <translation>Verpflegung entfernen</translation>
    </message>
    <message>
        <source>Copy fuel item</source>
        <translation>Verpflegung kopieren</translation>
    </message>
    <message>
        <source>Place fuel by the clock</source>
        <translation>Verpflegung nach der Uhr setzen</translation>
    </message>
    <message>
        <source>One item cannot stand at two times; place them anew.</source>
        <translation>Ein Eintrag kann nicht zu zwei Zeiten stehen; setze sie neu.</translation>
    </message>
    <message>
        <source>Repeat a food by rule</source>
        <translation>Lebensmittel nach Regel wiederholen</translation>
    </message>
    <message>
        <source>Fill fuel to target</source>
        <translation>Verpflegung bis zur Vorgabe auffüllen</translation>
    </message>
    <message>
        <source>Keep clock or place of fuel</source>
        <translation>Uhrzeit oder Ort der Verpflegung behalten</translation>
    </message>
    <message>
        <source>Remove all fuel items</source>
        <translation>Alle Verpflegung entfernen</translation>
    </message>
    <message>
        <source>Set fuel per hour</source>
        <translation>Verpflegung je Stunde setzen</translation>
    </message>
    <message>
        <source>Carbohydrate lies between 0 and 120 g/h; more than that has not been studied.</source>
        <translation>Kohlenhydrate liegen zwischen 0 und 120 g/h; mehr ist nicht untersucht.</translation>
    </message>
    <message>
        <source>Sodium lies between 0 and 2000 mg/h.</source>
        <translation>Natrium liegt zwischen 0 und 2000 mg/h.</translation>
    </message>
    <message>
        <source>The first item comes within 6 hours, then one every 5 minutes to 3 hours.</source>
        <translation>Der erste Eintrag kommt innerhalb von 6 Stunden, dann einer alle 5 Minuten bis 3 Stunden.</translation>
    </message>
    <message>
        <source>Change food</source>
        <translation>Lebensmittel ändern</translation>
    </message>
    <message>
        <source>A food needs a name and figures between 0 and 5000.</source>
        <translation>Ein Lebensmittel braucht einen Namen und Werte zwischen 0 und 5000.</translation>
    </message>
    <message>
        <source>There cannot be more fructose than carbohydrate in it.</source>
        <translation>Es kann nicht mehr Fruktose als Kohlenhydrate enthalten.</translation>
    </message>
    <message>
        <source>A pack holds more than no servings.</source>
        <translation>Eine Packung enthält mehr als null Portionen.</translation>
    </message>
    <message>
        <source>Remove food</source>
        <translation>Lebensmittel entfernen</translation>
    </message>
    <message>
        <source>Fluid lies between 0 and 1000 mL/h, more only after a sweat test that shows it; more than you sweat is dangerous.</source>
        <translation>Flüssigkeit liegt zwischen 0 und 1000 mL/h, mehr nur nach einem Schweißtest, der es zeigt; mehr, als du schwitzt, ist gefährlich.</translation>
    </message>
    <message>
        <source>A fuel item lies between the start and 240 hours.</source>
        <translation>Verpflegung liegt zwischen dem Start und 240 Stunden.</translation>
    </message>
    <message>
        <source>A fuel item is taken on the course.</source>
        <translation>Verpflegung wird auf der Strecke genommen.</translation>
    </message>
    <message>
        <source>Set foods at a station</source>
        <translation>Lebensmittel an einer Station setzen</translation>
    </message>
    <message>
        <source>There is no course and so no aid station.</source>
        <translation>Es gibt keine Strecke und darum keine Verpflegungsstelle.</translation>
    </message>
    <message>
        <source>Set bottles and spare</source>
        <translation>Flaschen und Reserve setzen</translation>
    </message>
    <message>
        <source>Up to 8 bottles, each of 100 to 3000 mL, can be carried.</source>
        <translation>Bis zu 8 Flaschen von je 100 bis 3000 mL lassen sich tragen.</translation>
    </message>
    <message>
        <source>What is spare lies between 0 and 100 %.</source>
        <translation>Die Reserve liegt zwischen 0 und 100 %.</translation>
    </message>
    <message>
        <source>Set caffeine</source>
        <translation>Koffein setzen</translation>
    </message>
    <message>
        <source>Set glycogen at the start</source>
        <translation>Glykogen am Start setzen</translation>
    </message>
    <message>
        <source>VO2max lies between 20 and 95 mL/kg/min.</source>
        <translation>VO2max liegt zwischen 20 und 95 mL/kg/min.</translation>
    </message>
    <message>
        <source>Leg muscle is 14 to 27 % of the body and holds 5 to 36 g of glycogen per kg.</source>
        <translation>Beinmuskeln sind 14 bis 27 % des Körpers und enthalten 5 bis 36 g Glykogen je kg.</translation>
    </message>
    <message>
        <source>The liver holds up to 160 g of glycogen.</source>
        <translation>Die Leber enthält bis zu 160 g Glykogen.</translation>
    </message>
    <message>
        <source>Set the days before</source>
        <translation>Die Tage davor setzen</translation>
    </message>
    <message>
        <source>Loading takes up to 4 days of 5 to 12 g/kg each.</source>
        <translation>Das Aufladen dauert bis zu 4 Tage mit je 5 bis 12 g/kg.</translation>
    </message>
    <message>
        <source>The last meal is one to four hours before the start.</source>
        <translation>Die letzte Mahlzeit liegt eine bis vier Stunden vor dem Start.</translation>
    </message>
    <message>
        <source>More than 200 mg of caffeine at once is not safe.</source>
        <translation>Mehr als 200 mg Koffein auf einmal sind nicht sicher.</translation>
    </message>
    <message>
        <source>Set allergies</source>
        <translation>Allergien setzen</translation>
    </message>
    <message>
        <source>Set sweat tests</source>
        <translation>Schweißtests setzen</translation>
    </message>
    <message>
        <source>A hundred sweat tests are enough.</source>
        <translation>Hundert Schweißtests sind genug.</translation>
    </message>
    <message>
        <source>Set fuel habits</source>
        <translation>Verpflegungsgewohnheiten setzen</translation>
    </message>
    <message>
        <source>Set food at stations</source>
        <translation>Essen an Stationen setzen</translation>
    </message>
    <message>
        <source>Put practice food on sessions</source>
        <translation>Übungsverpflegung auf Einheiten legen</translation>
    </message>
    <message>
        <source>Body mass lies between 30 and 250 kg.</source>
        <translation>Das Körpergewicht liegt zwischen 30 und 250 kg.</translation>
    </message>
    <message>
        <source>Up to 10 L are drunk and up to 5 L passed on one run.</source>
        <translation>Auf einem Lauf werden bis zu 10 L getrunken und bis zu 5 L ausgeschieden.</translation>
    </message>
    <message>
        <source>A sweat test lasts a quarter of an hour to six hours.</source>
        <translation>Ein Schweißtest dauert eine Viertelstunde bis sechs Stunden.</translation>
    </message>
    <message>
        <source>That would be a sweat rate outside 0.1 to 3.5 L/h; check the figures.</source>
        <translation>Das wäre eine Schweißrate außerhalb von 0,1 bis 3,5 L/h; prüfe die Werte.</translation>
    </message>
    <message>
        <source>Change crew and lists</source>
        <translation>Betreuung und Listen ändern</translation>
    </message>
    <message>
        <source>Type a week back in</source>
        <translation>Eine Woche wieder eintragen</translation>
    </message>
    <message>
        <source>Change what is for the head</source>
        <translation>Angaben für den Kopf ändern</translation>
    </message>
    <message>
        <source>A finish lies between 1 min and 240 hours.</source>
        <translation>Eine Zielankunft liegt zwischen 1 min und 240 Stunden.</translation>
    </message>
    <message>
        <source>Tick kit</source>
        <translation>Ausrüstung abhaken</translation>
    </message>
    <message>
        <source>{0} is not on the list of mandatory kit.</source>
        <translation>{0} steht nicht auf der Liste der Pflichtausrüstung.</translation>
    </message>
    <message>
        <source>That aid station is no longer on the course.</source>
        <translation>Diese Verpflegungsstelle ist nicht mehr auf der Strecke.</translation>
    </message>
    <message>
        <source>Change own lines of the countdown</source>
        <translation>Eigene Zeilen des Countdowns ändern</translation>
    </message>
    <message>
        <source>A line lies 0 to {0} days before the race, at a time of day.</source>
        <translation>Eine Zeile liegt 0 bis {0} Tage vor dem Rennen, zu einer Uhrzeit.</translation>
    </message>
    <message>
        <source>A line has at most {0} letters. Make two of it.</source>
        <translation>Eine Zeile hat höchstens {0} Zeichen. Mach zwei daraus.</translation>
    </message>
    <message>
        <source>A list has at most {0} lines.</source>
        <translation>Eine Liste hat höchstens {0} Zeilen.</translation>
    </message>
    <message>
        <source>Shape the target</source>
        <translation>Zielzeit formen</translation>
    </message>
    <message>
        <source>The target keeps between {0} and {1} of the forecast&apos;s fade.</source>
        <translation>Die Zielzeit behält zwischen {0} und {1} vom Nachlassen der Prognose.</translation>
    </message>
    <message>
        <source>Set conditions</source>
        <translation>Bedingungen setzen</translation>
    </message>
    <message>
        <source>Type in past runs</source>
        <translation>Frühere Läufe eingeben</translation>
    </message>
    <message>
        <source>Use predicted finish as goal</source>
        <translation>Prognostizierte Zeit als Ziel nehmen</translation>
    </message>
    <message>
        <source>Take fitted pace</source>
        <translation>Angepasstes Tempo übernehmen</translation>
    </message>
    <message>
        <source>Set pace</source>
        <translation>Tempo setzen</translation>
    </message>
    <message>
        <source>A lamp burns between 0 and {0}.</source>
        <translation>Eine Lampe brennt zwischen 0 und {0}.</translation>
    </message>
    <message>
        <source>The coldest hour cannot be warmer than the warmest; give both between {0} and {1}.</source>
        <translation>Die kälteste Stunde kann nicht wärmer sein als die wärmste; gib beide zwischen {0} und {1} an.</translation>
    </message>
    <message>
        <source>Humidity lies between {0} and {1}.</source>
        <translation>Die Feuchte liegt zwischen {0} und {1}.</translation>
    </message>
    <message>
        <source>The place of the forecast lies between {0} and {1}.</source>
        <translation>Der Ort der Vorhersage liegt zwischen {0} und {1}.</translation>
    </message>
    <message>
        <source>The coldest and the warmest hour are hours of one day, 0 to 24, and lie apart.</source>
        <translation>Die kälteste und die wärmste Stunde sind Stunden eines Tages, 0 bis 24, und liegen auseinander.</translation>
    </message>
    <message>
        <source>Write notes</source>
        <translation>Notizen schreiben</translation>
    </message>
    <message>
        <source>Set first day of the week</source>
        <translation>Ersten Tag der Woche setzen</translation>
    </message>
    <message>
        <source>A week begins on one of seven days.</source>
        <translation>Eine Woche beginnt an einem von sieben Tagen.</translation>
    </message>
    <message>
        <source>Go back to an earlier state</source>
        <translation>Zu einem früheren Stand zurück</translation>
    </message>
    <message>
        <source>Change race</source>
        <translation>Rennen ändern</translation>
    </message>
    <message>
        <source>Change race and runner</source>
        <translation>Rennen und Läufer ändern</translation>
    </message>
    <message>
        <source>Body weight lies between {0} and {1} kg.</source>
        <extracomment>Lowest and highest value of each figure of a runner; those of the pacing model as wide as it can be computed.</extracomment>
        <translation>Das Körpergewicht liegt zwischen {0} und {1} kg.</translation>
    </message>
    <message>
        <source>A usual week lies between {0} and {1}.</source>
        <translation>Eine übliche Woche liegt zwischen {0} und {1}.</translation>
    </message>
    <message>
        <source>The longest recent run lies between {0} and {1}.</source>
        <translation>Der längste Lauf der letzten Zeit liegt zwischen {0} und {1}.</translation>
    </message>
    <message>
        <source>Easy pace lies between {1} and {0}.</source>
        <translation>Lockeres Tempo liegt zwischen {1} und {0}.</translation>
    </message>
    <message>
        <source>What the gut takes lies between {0} and {1}.</source>
        <translation>Was der Magen verträgt, liegt zwischen {0} und {1}.</translation>
    </message>
    <message>
        <source>The fade lies between {0} and {1}.</source>
        <translation>Das Nachlassen liegt zwischen {0} und {1}.</translation>
    </message>
    <message>
        <source>The fade sets in between {0} and {1} hours.</source>
        <translation>Das Nachlassen setzt zwischen {0} und {1} Stunden ein.</translation>
    </message>
    <message>
        <source>The cost of uphill lies between {0} and {1} of the usual.</source>
        <translation>Der Aufwand bergauf liegt zwischen {0} und {1} des üblichen.</translation>
    </message>
    <message>
        <source>What the dark takes lies between {0} and {1}.</source>
        <translation>Was die Dunkelheit kostet, liegt zwischen {0} und {1}.</translation>
    </message>
    <message>
        <source>The hours of a usual week lie between {0} and {1}.</source>
        <translation>Die Stunden einer üblichen Woche liegen zwischen {0} und {1}.</translation>
    </message>
    <message>
        <source>The longest run takes between {0} and {1}.</source>
        <translation>Der längste Lauf dauert zwischen {0} und {1}.</translation>
    </message>
    <message>
        <source>The longest run drops between {0} and {1}.</source>
        <translation>Der längste Lauf hat zwischen {0} und {1} Abstieg.</translation>
    </message>
    <message>
        <source>Easy climbing lies between {0} and {1} an hour.</source>
        <translation>Lockeres Steigen liegt zwischen {0} und {1} je Stunde.</translation>
    </message>
    <message>
        <source>Speed downhill lies between {0} and {1} of the usual.</source>
        <translation>Das Tempo bergab liegt zwischen {0} und {1} des üblichen.</translation>
    </message>
    <message>
        <source>The finish scatters by {0} to {1} of its time.</source>
        <translation>Die Zielankunft streut um {0} bis {1} ihrer Zeit.</translation>
    </message>
    <message>
        <source>Walking tired is done at {0} to {1} of the speed of a fresh hiker.</source>
        <translation>Müde gehst du mit {0} bis {1} des Tempos eines frischen Wanderers.</translation>
    </message>
    <message>
        <source>The race lies between the years {0} and {1}.</source>
        <translation>Das Rennen liegt zwischen den Jahren {0} und {1}.</translation>
    </message>
    <message>
        <source>The finish time lies between 10 minutes and 240 hours.</source>
        <translation>Die Zielzeit liegt zwischen 10 Minuten und 240 Stunden.</translation>
    </message>
    <message>
        <source>The time limit lies between 10 minutes and 240 hours.</source>
        <translation>Das Zeitlimit liegt zwischen 10 Minuten und 240 Stunden.</translation>
    </message>
    <message>
        <source>The long run lies on one of seven days.</source>
        <translation>Der lange Lauf liegt an einem von sieben Tagen.</translation>
    </message>
    <message>
        <source>The time free for running lies between 0 and 24 hours a day.</source>
        <translation>Die freie Zeit zum Laufen liegt zwischen 0 und 24 Stunden am Tag.</translation>
    </message>
    <message>
        <source>At most {0} past runs are kept; take the latest.</source>
        <translation>Höchstens {0} frühere Läufe werden behalten; nimm die neuesten.</translation>
    </message>
    <message>
        <source>A past run needs a distance above zero, a climb from 0 up and a time of a minute or more.</source>
        <translation>Ein früherer Lauf braucht eine Distanz über null, einen Aufstieg ab 0 und eine Zeit von mindestens einer Minute.</translation>
    </message>
    <message>
        <source>Cut sections anew</source>
        <translation>Abschnitte neu schneiden</translation>
    </message>
    <message>
        <source>Sections are cut every 0.5 to 500 km. Choose between.</source>
        <translation>Abschnitte werden alle 0,5 bis 500 km geschnitten. Wähle einen Wert dazwischen.</translation>
    </message>
    <message>
        <source>That makes more than 500 sections. Cut them longer.</source>
        <translation>Das ergibt mehr als 500 Abschnitte. Schneide sie länger.</translation>
    </message>
    <message>
        <source>Split section</source>
        <translation>Abschnitt teilen</translation>
    </message>
    <message>
        <source>Split a section at least 100 m from where it begins and ends.</source>
        <translation>Teile einen Abschnitt mindestens 100 m von seinem Anfang und Ende entfernt.</translation>
    </message>
    <message>
        <source>Join sections</source>
        <translation>Abschnitte verbinden</translation>
    </message>
    <message>
        <source>The last section has none after it to be joined with.</source>
        <translation>Nach dem letzten Abschnitt kommt keiner, mit dem er sich verbinden ließe.</translation>
    </message>
    <message>
        <source>A section ends where there is a cutoff. Take the cutoff at {0} away.</source>
        <translation>Wo ein Zeitlimit ist, endet ein Abschnitt. Entferne das Zeitlimit bei {0}.</translation>
    </message>
    <message>
        <source>Rename section</source>
        <translation>Abschnitt umbenennen</translation>
    </message>
    <message>
        <source>The name of a section has at most 60 letters.</source>
        <translation>Der Name eines Abschnitts hat höchstens 60 Zeichen.</translation>
    </message>
    <message>
        <source>Paint surface</source>
        <translation>Untergrund malen</translation>
    </message>
    <message>
        <source>A surface lies between the start and the finish.</source>
        <translation>Ein Untergrund liegt zwischen Start und Ziel.</translation>
    </message>
    <message>
        <source>A stretch of surface is 10 m or longer.</source>
        <translation>Ein Stück Untergrund ist mindestens 10 m lang.</translation>
    </message>
    <message>
        <source>Set surface factors</source>
        <translation>Faktoren des Untergrunds setzen</translation>
    </message>
    <message>
        <source>Give both factors of a surface, or neither.</source>
        <translation>Gib beide Faktoren eines Untergrunds an oder keinen.</translation>
    </message>
    <message>
        <source>Answer on health</source>
        <translation>Gesundheitsfragen beantworten</translation>
    </message>
    <message>
        <source>Change wishes</source>
        <translation>Wünsche ändern</translation>
    </message>
    <message>
        <source>Change days away</source>
        <translation>Tage fort ändern</translation>
    </message>
    <message>
        <source>Add ground at hand</source>
        <translation>Untergrund vor Ort hinzufügen</translation>
    </message>
    <message>
        <source>Change ground at hand</source>
        <translation>Untergrund vor Ort ändern</translation>
    </message>
    <message>
        <source>Remove ground at hand</source>
        <translation>Untergrund vor Ort entfernen</translation>
    </message>
    <message>
        <source>Add candidate race</source>
        <translation>Rennen zur Wahl hinzufügen</translation>
    </message>
    <message>
        <source>Change candidate race</source>
        <translation>Rennen zur Wahl ändern</translation>
    </message>
    <message>
        <source>Remove candidate race</source>
        <translation>Rennen zur Wahl entfernen</translation>
    </message>
    <message>
        <source>Mend the build-up</source>
        <translation>Abhilfe im Aufbau</translation>
    </message>
    <message>
        <source>A mend changes open sessions only.</source>
        <translation>Eine Abhilfe ändert nur offene Einheiten.</translation>
    </message>
    <message>
        <source>A cutback comes every 3rd or every 4th week.</source>
        <translation>Entlastet wird jede 3. oder jede 4. Woche.</translation>
    </message>
    <message>
        <source>Strength comes up to 4 times a week, cross-training up to 5 times.</source>
        <translation>Krafttraining gibt es bis zu 4-mal pro Woche, Ausgleichstraining bis zu 5-mal.</translation>
    </message>
    <message>
        <source>Strength takes 10 minutes to 2 hours, cross-training up to 4 hours.</source>
        <translation>Krafttraining dauert 10 Minuten bis 2 Stunden, Ausgleichstraining bis zu 4 Stunden.</translation>
    </message>
    <message>
        <source>There are two fasted runs a week at most.</source>
        <translation>Pro Woche gibt es höchstens zwei nüchterne Läufe.</translation>
    </message>
    <message>
        <source>A candidate race lies between the years {0} and {1}.</source>
        <translation>Ein Rennen zur Wahl liegt zwischen den Jahren {0} und {1}.</translation>
    </message>
    <message>
        <source>A race is between 1 and 1,000 km long.</source>
        <translation>Ein Rennen ist 1 bis 1.000 km lang.</translation>
    </message>
    <message>
        <source>A race&apos;s climb and drop lie between 0 and 50,000 m.</source>
        <translation>Aufstieg und Abstieg eines Rennens liegen zwischen 0 und 50.000 m.</translation>
    </message>
    <message>
        <source>A race&apos;s limit lies between 10 minutes and 240 hours.</source>
        <translation>Das Limit eines Rennens liegt zwischen 10 Minuten und 240 Stunden.</translation>
    </message>
    <message>
        <source>A place lies within 90 degrees of latitude and 180 of longitude.</source>
        <translation>Ein Ort liegt innerhalb von 90 Grad Breite und 180 Grad Länge.</translation>
    </message>
    <message>
        <source>There is no time zone {0}; choose one from the list.</source>
        <translation>Es gibt keine Zeitzone {0}; wähle eine aus der Liste.</translation>
    </message>
    <message>
        <source>That ground is no longer in this project.</source>
        <translation>Dieser Untergrund ist nicht mehr im Projekt.</translation>
    </message>
    <message>
        <source>That candidate race is no longer in this project.</source>
        <translation>Dieses Rennen zur Wahl ist nicht mehr im Projekt.</translation>
    </message>
    <message>
        <source>Easy climbing is at least 100 m an hour; 0 if unknown.</source>
        <translation>Lockeres Steigen sind mindestens 100 m pro Stunde; 0, wenn unbekannt.</translation>
    </message>
    <message>
        <source>A time of day lies between 00:00 and 23:59.</source>
        <translation>Eine Uhrzeit liegt zwischen 00:00 und 23:59.</translation>
    </message>
    <message>
        <source>There is room for {0} of these; remove one first.</source>
        <translation>Es ist Platz für {0} davon; entferne zuerst eines.</translation>
    </message>
    <message>
        <source>Days away end on or after their first day and leave 0 to 24 hours a day.</source>
        <translation>Tage fort enden am ersten Tag oder später und lassen 0 bis 24 Stunden pro Tag.</translation>
    </message>
    <message>
        <source>Fasted runs and heat days are for those with nothing to ask a doctor about; answer the questions on health first.</source>
        <translation>Nüchterne Läufe und Hitzetage sind für Läufer, die nichts mit dem Arzt zu klären haben; beantworte zuerst die Gesundheitsfragen.</translation>
    </message>
    <message>
        <source>A treadmill&apos;s gradients lie between -30 and 60 %, the least one first.</source>
        <translation>Die Steigungen eines Laufbands liegen zwischen -30 und 60 %, die kleinste zuerst.</translation>
    </message>
    <message>
        <source>Climb and drop of a place lie between 0 and 5,000 m.</source>
        <translation>Aufstieg und Abstieg eines Orts liegen zwischen 0 und 5.000 m.</translation>
    </message>
    <message>
        <source>A place to train is up to 100 km long.</source>
        <translation>Ein Ort zum Trainieren ist bis zu 100 km lang.</translation>
    </message>
    <message>
        <source>A hill, stairs or a ramp needs a length and a height, the height the smaller one.</source>
        <translation>Hügel, Treppe oder Rampe brauchen eine Länge und eine kleinere Höhe.</translation>
    </message>
    <message>
        <source>A recorded loop needs as many heights as distances, the distances rising.</source>
        <translation>Eine aufgezeichnete Runde braucht so viele Höhen wie Distanzen; die Distanzen steigen.</translation>
    </message>
    <message>
        <source>Cutoffs rise with their places, which lie between start and finish, and end by the limit.</source>
        <translation>Zeitlimits steigen mit ihren Orten, liegen zwischen Start und Ziel und enden spätestens mit dem Limit.</translation>
    </message>
    <message>
        <source>New project</source>
        <translation>Neues Projekt</translation>
    </message>
    <message>
        <source>Add recordings</source>
        <translation>Aufzeichnungen hinzufügen</translation>
    </message>
    <message>
        <source>A project keeps up to {0} recordings and 200 MB of them; remove some first.</source>
        <translation>Ein Projekt behält bis zu {0} Aufzeichnungen und 200 MB davon; entferne zuerst einige.</translation>
    </message>
    <message>
        <source>Remove a recording</source>
        <translation>Aufzeichnung entfernen</translation>
    </message>
    <message>
        <source>Match a recording</source>
        <translation>Aufzeichnung zuordnen</translation>
    </message>
    <message>
        <source>Name a recording</source>
        <translation>Aufzeichnung benennen</translation>
    </message>
    <message>
        <source>A name has up to {0} letters; shorten it.</source>
        <translation>Ein Name hat bis zu {0} Zeichen; kürze ihn.</translation>
    </message>
    <message>
        <source>That recording is no longer in the plan.</source>
        <translation>Diese Aufzeichnung ist nicht mehr im Plan.</translation>
    </message>
    <message>
        <source>{0} is too large to be kept.</source>
        <translation>{0} ist zu groß zum Aufbewahren.</translation>
    </message>
    <message>
        <source>{0} has figures no run can have.</source>
        <translation>{0} hat Werte, die kein Lauf haben kann.</translation>
    </message>
    <message>
        <source>Look back on a run</source>
        <translation>Rückblick auf einen Lauf</translation>
    </message>
    <message>
        <source>What was taken lies within the race, 0 to 100 servings.</source>
        <translation>Was genommen wurde, liegt innerhalb des Rennens, 0 bis 100 Portionen.</translation>
    </message>
    <message>
        <source>A remark lies on the course.</source>
        <translation>Eine Bemerkung liegt auf der Strecke.</translation>
    </message>
    <message>
        <source>Add a lesson</source>
        <translation>Lehre hinzufügen</translation>
    </message>
    <message>
        <source>A plan keeps up to {0} lessons; remove some.</source>
        <translation>Ein Plan behält bis zu {0} Lehren; entferne einige.</translation>
    </message>
    <message>
        <source>Change a lesson</source>
        <translation>Lehre ändern</translation>
    </message>
    <message>
        <source>Remove a lesson</source>
        <translation>Lehre entfernen</translation>
    </message>
    <message>
        <source>That lesson is no longer in the plan.</source>
        <translation>Diese Lehre ist nicht mehr im Plan.</translation>
    </message>
    <message>
        <source>A lesson needs its words.</source>
        <translation>Eine Lehre braucht ihren Text.</translation>
    </message>
    <message>
        <source>A lesson is pinned to an hour up to 240 or a climb to 500.</source>
        <translation>Eine Lehre hängt an einer Stunde bis 240 oder einem Anstieg bis 500.</translation>
    </message>
    <message>
        <source>A text has up to {0} letters; shorten it.</source>
        <translation>Ein Text hat bis zu {0} Zeichen; kürze ihn.</translation>
    </message>
    <message>
        <source>Move aid station</source>
        <translation>Verpflegungsstelle verschieben</translation>
    </message>
    <message>
        <source>Change stop</source>
        <translation>Halt ändern</translation>
    </message>
    <message>
        <source>Move start</source>
        <translation>Start verschieben</translation>
    </message>
    <message>
        <source>The start moves within its day; set another day in Race and runner.</source>
        <translation>Der Start lässt sich nur innerhalb seines Tages verschieben; einen anderen Tag stellst du unter Rennen und Läufer ein.</translation>
    </message>
    <message>
        <source>Put a template in</source>
        <translation>Vorlage einsetzen</translation>
    </message>
    <message>
        <source>Nothing stands on this day. N adds a run, K opens the kinds to choose from.</source>
        <translation>An diesem Tag steht nichts. N fügt einen Lauf hinzu, K öffnet die Arten zur Auswahl.</translation>
    </message>
</context>
<context>
    <name>Export</name>
    <message>
        <source>{0} is no calendar that can be read. Export it again.</source>
        <translation>{0} ist kein lesbarer Kalender. Exportiere ihn noch einmal.</translation>
    </message>
    <message>
        <source>{0} has too many events. Export fewer months.</source>
        <translation>{0} hat zu viele Termine. Exportiere weniger Monate.</translation>
    </message>
    <message>
        <source>Left out: {0}. {1}</source>
        <translation>Ausgelassen: {0}. {1}</translation>
    </message>
    <message>
        <source>It is done or locked and stays.</source>
        <translation>Erledigt oder gesperrt, bleibt stehen.</translation>
    </message>
    <message>
        <source>{0} on {1} takes {2}.</source>
        <translation>{0} am {1} dauert {2}.</translation>
    </message>
    <message>
        <source>Move {0} from {1} to {2}.</source>
        <translation>{0} vom {1} auf den {2} verschieben.</translation>
    </message>
    <message>
        <source>Add {0} on {1}.</source>
        <translation>{0} am {1} hinzufügen.</translation>
    </message>
    <message>
        <source>It repeats; enter its days one by one.</source>
        <translation>Der Termin wiederholt sich; trage die Tage einzeln ein.</translation>
    </message>
    <message>
        <source>It has no day.</source>
        <translation>Es fehlt der Tag.</translation>
    </message>
    <message>
        <source>It names no kind of session, such as “long run”.</source>
        <translation>Es fehlt die Art der Einheit, etwa „langer Lauf“.</translation>
    </message>
    <message>
        <source>Planned: {0}, effort {1}.</source>
        <translation>Geplant: {0}, Anstrengung {1}.</translation>
    </message>
    <message>
        <source>Climb {0}, drop {1}.</source>
        <translation>Aufstieg {0}, Abstieg {1}.</translation>
    </message>
    <message>
        <source>Practise {0} of carbohydrate.</source>
        <translation>Übe {0} Kohlenhydrate.</translation>
    </message>
    <message>
        <source>Done: {0} in {1}.</source>
        <translation>Erledigt: {0} in {1}.</translation>
    </message>
    <message>
        <source>Start {0} where the race is, target {1}.</source>
        <translation>Start {0} am Ort des Rennens, Zielzeit {1}.</translation>
    </message>
    <message>
        <source>Target arrival {0}, {1} after the start.</source>
        <translation>Ankunft nach Zielzeit {0}, {1} nach dem Start.</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>End of section {0}</source>
        <translation>Ende von Abschnitt {0}</translation>
    </message>
    <message>
        <source>{0} is larger than a table of sessions can be. Keep its rows alone.</source>
        <translation>{0} ist größer, als eine Tabelle von Einheiten sein kann. Behalte nur deren Zeilen.</translation>
    </message>
    <message>
        <source>{0} is no table with heads that can be read. Save it as CSV again.</source>
        <translation>{0} ist keine lesbare Tabelle mit Spaltenköpfen. Speichere sie noch einmal als CSV.</translation>
    </message>
    <message>
        <source>{0} has no column “Date”. Export the sessions once to see its heads.</source>
        <translation>{0} hat keine Spalte „Datum“. Exportiere die Einheiten einmal, um die Spaltenköpfe zu sehen.</translation>
    </message>
    <message>
        <source>Left out: line {0}. {1}</source>
        <translation>Ausgelassen: Zeile {0}. {1}</translation>
    </message>
    <message>
        <source>The race is set under Race and runner.</source>
        <translation>Das Rennen stellst du unter Rennen und Läufer ein.</translation>
    </message>
    <message>
        <source>Add {0} on {1}: {2}, {3}.</source>
        <translation>{0} am {1} hinzufügen: {2}, {3}.</translation>
    </message>
    <message>
        <source>Change {0} on {1}: {2}.</source>
        <translation>{0} am {1} ändern: {2}.</translation>
    </message>
</context>
<context>
    <name>ExportDeeds</name>
    <message>
        <source>{0} race.gpx</source>
        <translation>{0} Rennen.gpx</translation>
    </message>
    <message>
        <source>{0} sessions.ics</source>
        <translation>{0} Einheiten.ics</translation>
    </message>
    <message>
        <source>{0} tables.zip</source>
        <translation>{0} Tabellen.zip</translation>
    </message>
    <message>
        <source>{0} tables.xlsx</source>
        <translation>{0} Tabellen.xlsx</translation>
    </message>
    <message>
        <source>{0} profile.png</source>
        <translation>{0} Profil.png</translation>
    </message>
    <message>
        <source>{0} profile.svg</source>
        <translation>{0} Profil.svg</translation>
    </message>
    <message>
        <source>Reading {0}</source>
        <translation>{0} wird gelesen</translation>
    </message>
    <message>
        <source>That did not work</source>
        <translation>Das ging nicht</translation>
    </message>
    <message>
        <source>Writing {0}</source>
        <translation>{0} wird geschrieben</translation>
    </message>
    <message>
        <source>Written: {0}</source>
        <translation>Geschrieben: {0}</translation>
    </message>
</context>
<context>
    <name>FigureBox</name>
    <message>
        <source>Anything worth remembering</source>
        <translation>Alles, was man sich merken sollte</translation>
    </message>
</context>
<context>
    <name>FillForm</name>
    <message>
        <source>Fill fuel to target</source>
        <translation>Verpflegung bis zur Vorgabe auffüllen</translation>
    </message>
    <message>
        <source>Ca&amp;ffeine may be used, late in the race</source>
        <translation>Ko&amp;ffein ist erlaubt, spät im Rennen</translation>
    </message>
    <message>
        <source>Foods to fill with</source>
        <translation>Lebensmittel zum Füllen</translation>
    </message>
    <message>
        <source>&amp;Work it out</source>
        <translation>&amp;Berechnen</translation>
    </message>
    <message>
        <source>Replaces all items by a choice that keeps {0}, {1} of fluid and {2} of sodium an hour, changes the taste with the hours and carries little far. Food on a table is taken there.</source>
        <translation>Ersetzt alle Posten durch eine Auswahl, die pro Stunde {0}, {1} Flüssigkeit und {2} Natrium hält, den Geschmack mit den Stunden wechselt und wenig weit trägt. Was auf einem Tisch steht, wird dort genommen.</translation>
    </message>
    <message>
        <source>With these foods</source>
        <translation>Mit diesen Lebensmitteln</translation>
    </message>
    <message>
        <source>&amp;Take it</source>
        <translation>Über&amp;nehmen</translation>
    </message>
    <message>
        <source>on a table</source>
        <translation>auf einem Tisch</translation>
    </message>
    <message>
        <source>on no table yet</source>
        <translation>noch auf keinem Tisch</translation>
    </message>
    <message>
        <source>{0} items: {1}, {2} of fluid and {3} of sodium an hour.</source>
        <translation>{0} Posten: {1}, {2} Flüssigkeit und {3} Natrium pro Stunde.</translation>
    </message>
    <message>
        <source>Every target is met on every leg.</source>
        <translation>Jede Vorgabe wird auf jedem Teilstück erreicht.</translation>
    </message>
    <message>
        <source>And {0} more.</source>
        <translation>Und {0} weitere.</translation>
    </message>
    <message>
        <source>A good choice; whether the best was not settled in time.</source>
        <translation>Eine gute Auswahl; ob es die beste ist, blieb in der Zeit offen.</translation>
    </message>
    <message>
        <source>Tick foods you may eat.</source>
        <translation>Kreuze an, was du essen darfst.</translation>
    </message>
    <message>
        <source>Working it out…</source>
        <translation>Wird berechnet…</translation>
    </message>
</context>
<context>
    <name>FilterField</name>
    <message>
        <source>Filter rows (Ctrl+F)</source>
        <translation>Zeilen filtern (Strg+F)</translation>
    </message>
    <message>
        <source>Show all rows</source>
        <translation>Alle Zeilen zeigen</translation>
    </message>
    <message>
        <source>Show the rows that hold these words in any cell; Esc shows all again</source>
        <translation>Zeigt die Zeilen, in denen diese Wörter stehen; Esc zeigt wieder alle</translation>
    </message>
    <message>
        <source>{0} of {1}</source>
        <translation>{0} von {1}</translation>
    </message>
    <message>
        <source>{0} rows are shown</source>
        <translation>{0} Zeilen werden gezeigt</translation>
    </message>
</context>
<context>
    <name>Finder</name>
    <message>
        <source>Find anything</source>
        <translation>Alles finden</translation>
    </message>
    <message>
        <source>Find anything: type words of it in any order</source>
        <translation>Alles finden: tippe Wörter daraus in beliebiger Folge</translation>
    </message>
    <message>
        <source>Found</source>
        <translation>Gefunden</translation>
    </message>
    <message numerus="yes">
        <source>%n found. Enter does it or goes there, Esc closes.</source>
        <translation>
            <numerusform>%n gefunden. Enter führt es aus oder geht hin, Esc schließt.</numerusform>
            <numerusform>%n gefunden. Enter führt eines aus oder geht hin, Esc schließt.</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing holds all these words. Take one away.</source>
        <translation>Nichts enthält alle diese Wörter. Nimm eines weg.</translation>
    </message>
    <message>
        <source>Not now: {0}.</source>
        <translation>Jetzt nicht: {0}.</translation>
    </message>
    <message>
        <source>Do</source>
        <translation>Tun</translation>
    </message>
    <message>
        <source>Setting</source>
        <translation>Einstellung</translation>
    </message>
    <message>
        <source>Check</source>
        <translation>Prüfung</translation>
    </message>
    <message>
        <source>Session</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>Section</source>
        <translation>Abschnitt</translation>
    </message>
    <message>
        <source>Aid station</source>
        <translation>Verpflegungsstelle</translation>
    </message>
    <message>
        <source>Fuel item</source>
        <translation>Verpflegungsposten</translation>
    </message>
    <message>
        <source>Food</source>
        <translation>Lebensmittel</translation>
    </message>
    <message>
        <source>Table</source>
        <translation>Tabelle</translation>
    </message>
    <message>
        <source>Project</source>
        <translation>Projekt</translation>
    </message>
    <message>
        <source>Help</source>
        <translation>Hilfe</translation>
    </message>
    <message>
        <source>open a project first</source>
        <extracomment>When an action can be used that acts on a session. Why an action cannot be done, by when it can.</extracomment>
        <translation>öffne zuerst ein Projekt</translation>
    </message>
    <message>
        <source>needs a course</source>
        <translation>braucht eine Strecke</translation>
    </message>
    <message>
        <source>choose a session first</source>
        <translation>wähle zuerst eine Einheit</translation>
    </message>
    <message>
        <source>choose a session that is not done</source>
        <translation>wähle eine Einheit, die nicht erledigt ist</translation>
    </message>
    <message>
        <source>choose a session that was not missed</source>
        <translation>wähle eine Einheit, die nicht ausgefallen ist</translation>
    </message>
    <message>
        <source>choose a session that was done or missed</source>
        <translation>wähle eine erledigte oder ausgefallene Einheit</translation>
    </message>
    <message>
        <source>choose a session; the race stays</source>
        <translation>wähle eine Einheit; das Rennen bleibt</translation>
    </message>
    <message>
        <source>choose a fuel item first</source>
        <translation>wähle zuerst einen Verpflegungsposten</translation>
    </message>
    <message>
        <source>choose a section first</source>
        <translation>wähle zuerst einen Abschnitt</translation>
    </message>
    <message>
        <source>Colours: {0}</source>
        <extracomment>Actions that set something: what, and the setting and value that make one the present one.</extracomment>
        <translation>Farben: {0}</translation>
    </message>
    <message>
        <source>Size of all text: {0}</source>
        <translation>Größe aller Texte: {0}</translation>
    </message>
    <message>
        <source>Units: {0}</source>
        <translation>Maßeinheiten: {0}</translation>
    </message>
    <message>
        <source>Race axis: {0}</source>
        <translation>Rennachse: {0}</translation>
    </message>
    <message>
        <source>Undo {0}</source>
        <translation>Rückgängig: {0}</translation>
    </message>
    <message>
        <source>Redo {0}</source>
        <translation>Wiederholen: {0}</translation>
    </message>
    <message>
        <source>no such step</source>
        <translation>kein solcher Schritt</translation>
    </message>
    <message>
        <source>race week</source>
        <translation>Rennwoche</translation>
    </message>
    <message>
        <source>{0} to go</source>
        <translation>noch {0}</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>{0} to {1}</source>
        <translation>{0} bis {1}</translation>
    </message>
    <message>
        <source>at {0}</source>
        <translation>bei {0}</translation>
    </message>
    <message>
        <source>{0}, after {1}</source>
        <translation>{0}, nach {1}</translation>
    </message>
    <message>
        <source>{0} carbs, {1}</source>
        <translation>{0} KH, {1}</translation>
    </message>
    <message>
        <source>now</source>
        <translation>jetzt</translation>
    </message>
    <message>
        <source>done</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>missed</source>
        <translation>ausgefallen</translation>
    </message>
</context>
<context>
    <name>FitDeeds</name>
    <message>
        <source>&amp;Fit</source>
        <translation>An&amp;passen</translation>
    </message>
    <message>
        <source>&amp;Add</source>
        <translation>&amp;Hinzufügen</translation>
    </message>
    <message>
        <source>Reading recordings</source>
        <translation>Aufzeichnungen werden gelesen</translation>
    </message>
    <message>
        <source>Fitting from my runs</source>
        <translation>Wird an deine Läufe angepasst</translation>
    </message>
</context>
<context>
    <name>FitForm</name>
    <message>
        <source>Fit from my runs</source>
        <translation>An meine Läufe anpassen</translation>
    </message>
    <message>
        <source>Fitted figures</source>
        <translation>Angepasste Werte</translation>
    </message>
    <message>
        <source>Runs fitted</source>
        <translation>Verwendete Läufe</translation>
    </message>
    <message>
        <source>Left out: {0}. {1}</source>
        <translation>Ausgelassen: {0}. {1}</translation>
    </message>
    <message>
        <source>&amp;Use these figures</source>
        <translation>Diese Werte &amp;nehmen</translation>
    </message>
    <message>
        <source>Figure</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>In the plan</source>
        <translation>Im Plan</translation>
    </message>
    <message>
        <source>Usual</source>
        <translation>Üblich</translation>
    </message>
    <message>
        <source>Cost of climbing, of the usual</source>
        <translation>Aufwand bergauf, vom üblichen</translation>
    </message>
    <message>
        <source>Tried on runs they were not made from, these figures are off by {0} of the time of each tenth of a run, the usual ones by {1}.</source>
        <translation>An Läufen geprüft, aus denen sie nicht stammen, liegen diese Werte um {0} der Zeit jedes Zehntels eines Laufs daneben, die üblichen um {1}.</translation>
    </message>
    <message>
        <source>The usual ones do better; keep them unless you know why.</source>
        <translation>Die üblichen sind besser; behalte sie, wenn du keinen Grund hast.</translation>
    </message>
    <message>
        <source>Off, by the others</source>
        <translation>Daneben, aus den anderen</translation>
    </message>
    <message>
        <source>Off, as usual</source>
        <translation>Daneben, übliche</translation>
    </message>
    <message>
        <source>From my runs</source>
        <translation>Aus meinen Läufen</translation>
    </message>
    <message>
        <source>Give or take</source>
        <translation>Plus/minus</translation>
    </message>
    <message>
        <source>Fade over the hours</source>
        <translation>Nachlassen über die Stunden</translation>
    </message>
    <message>
        <source>Downhill, of the usual speed</source>
        <translation>Bergab, vom üblichen Tempo</translation>
    </message>
    <message>
        <source>too little to tell</source>
        <translation>zu wenig für eine Aussage</translation>
    </message>
    <message>
        <source>These figures could not be tried on a run left out: the other runs are too few. Choose several long runs of different days.</source>
        <translation>Diese Werte ließen sich nicht an einem ausgelassenen Lauf erproben: Es gibt zu wenige andere Läufe. Wähle mehrere lange Läufe von verschiedenen Tagen.</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Run</source>
        <translation>Lauf</translation>
    </message>
    <message>
        <source>Distance</source>
        <translation>Distanz</translation>
    </message>
    <message>
        <source>Climb</source>
        <translation>Aufstieg</translation>
    </message>
    <message>
        <source>Moving</source>
        <translation>Bewegt</translation>
    </message>
    <message>
        <source>Standing</source>
        <translation>Im Stehen</translation>
    </message>
</context>
<context>
    <name>FluidLane</name>
    <message>
        <source>Fluid, sodium</source>
        <translation>Flüssigkeit, Natrium</translation>
    </message>
    <message>
        <source>mL/h, mg/h</source>
        <translation>mL/h, mg/h</translation>
    </message>
    <message>
        <source>Fluid appears with a course.</source>
        <translation>Flüssigkeit erscheint mit einer Strecke.</translation>
    </message>
    <message>
        <source>{0} of fluid and {1} of sodium in the hour around</source>
        <translation>{0} Flüssigkeit und {1} Natrium in der Stunde um</translation>
    </message>
    <message>
        <source>; about {0} of caffeine in the body</source>
        <translation>; etwa {0} Koffein im Körper</translation>
    </message>
</context>
<context>
    <name>Folds</name>
    <message>
        <source>Start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>{0} to {1}</source>
        <translation>{0} bis {1}</translation>
    </message>
    <message>
        <source>Folded away: {0}, {1}. Click to unfold it.</source>
        <translation>Weggefaltet: {0}, {1}. Klicke, um es aufzufalten.</translation>
    </message>
</context>
<context>
    <name>Food table</name>
    <message>
        <source>The food table has no column {0}; add it.</source>
        <translation>Die Lebensmitteltabelle hat keine Spalte {0}; füge sie hinzu.</translation>
    </message>
    <message>
        <source>Line {0} of the food table repeats the key {1}; choose another.</source>
        <translation>Zeile {0} der Lebensmitteltabelle wiederholt den Schlüssel {1}; wähle einen anderen.</translation>
    </message>
    <message>
        <source>Line {0} of the food table: {1} cannot be read; figures lie between 0 and 5000.</source>
        <translation>Zeile {0} der Lebensmitteltabelle: {1} ist nicht lesbar; Werte liegen zwischen 0 und 5000.</translation>
    </message>
</context>
<context>
    <name>FoodTaken</name>
    <message>
        <source>Carbs by hour, g; mark: planned</source>
        <translation>KH je Stunde, g; Strich: geplant</translation>
    </message>
    <message>
        <source>At</source>
        <translation>Bei</translation>
    </message>
    <message>
        <source>Food</source>
        <translation>Lebensmittel</translation>
    </message>
    <message>
        <source>Planned</source>
        <translation>Geplant</translation>
    </message>
    <message>
        <source>Taken</source>
        <translation>Gegessen</translation>
    </message>
    <message>
        <source>Food planned and taken</source>
        <translation>Verpflegung, geplant und gegessen</translation>
    </message>
    <message>
        <source>All as &amp;planned</source>
        <translation>Alles wie &amp;geplant</translation>
    </message>
    <message>
        <source>&amp;Nothing</source>
        <translation>&amp;Nichts</translation>
    </message>
    <message>
        <source>Type how many servings, as 1 or 0.5; 0 for none.</source>
        <translation>Gib an, wie viele Portionen, etwa 1 oder 0,5; 0 für keine.</translation>
    </message>
</context>
<context>
    <name>Foods</name>
    <message>
        <source>Water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>Sports drink 6 %</source>
        <translation>Sportgetränk 6 %</translation>
    </message>
    <message>
        <source>Sports drink 8 %, glucose and fructose</source>
        <translation>Sportgetränk 8 %, Glukose und Fruktose</translation>
    </message>
    <message>
        <source>Gel</source>
        <translation>Gel</translation>
    </message>
    <message>
        <source>Gel, glucose and fructose</source>
        <translation>Gel, Glukose und Fruktose</translation>
    </message>
    <message>
        <source>Gel with caffeine</source>
        <translation>Gel mit Koffein</translation>
    </message>
    <message>
        <source>Salt capsule</source>
        <translation>Salzkapsel</translation>
    </message>
    <message>
        <source>Electrolyte solution</source>
        <translation>Elektrolytlösung</translation>
    </message>
    <message>
        <source>Banana</source>
        <translation>Banane</translation>
    </message>
    <message>
        <source>Starch jelly sweets</source>
        <translation>Geleefrüchte aus Stärke</translation>
    </message>
    <message>
        <source>Dates, large soft</source>
        <translation>Datteln, groß und weich</translation>
    </message>
    <message>
        <source>Potato, boiled, salted</source>
        <translation>Kartoffel, gekocht, gesalzen</translation>
    </message>
    <message>
        <source>Jam sandwich, white bread</source>
        <translation>Marmeladenbrot, Weißbrot</translation>
    </message>
    <message>
        <source>Pretzels, salted</source>
        <translation>Salzbrezeln</translation>
    </message>
    <message>
        <source>White rice, cooked</source>
        <translation>Weißer Reis, gekocht</translation>
    </message>
    <message>
        <source>White bread</source>
        <translation>Weißbrot</translation>
    </message>
    <message>
        <source>Chicken broth from powder</source>
        <translation>Hühnerbrühe aus Pulver</translation>
    </message>
    <message>
        <source>Beef broth</source>
        <translation>Rinderbrühe</translation>
    </message>
    <message>
        <source>Beef stock, home made</source>
        <translation>Rinderfond, hausgemacht</translation>
    </message>
    <message>
        <source>Cola</source>
        <translation>Cola</translation>
    </message>
    <message>
        <source>Dates, small firm</source>
        <translation>Datteln, klein und fest</translation>
    </message>
    <message>
        <source>Potato, boiled, unsalted</source>
        <translation>Kartoffel, gekocht, ungesalzen</translation>
    </message>
    <message>
        <source>Spaghetti, cooked</source>
        <translation>Spaghetti, gekocht</translation>
    </message>
    <message>
        <source>Oat porridge made with water</source>
        <translation>Haferbrei mit Wasser</translation>
    </message>
    <message>
        <source>Orange</source>
        <translation>Orange</translation>
    </message>
    <message>
        <source>Orange juice</source>
        <translation>Orangensaft</translation>
    </message>
    <message>
        <source>Watermelon</source>
        <translation>Wassermelone</translation>
    </message>
    <message>
        <source>Raisins</source>
        <translation>Rosinen</translation>
    </message>
    <message>
        <source>Honey</source>
        <translation>Honig</translation>
    </message>
    <message>
        <source>Maple syrup</source>
        <translation>Ahornsirup</translation>
    </message>
    <message>
        <source>Jam</source>
        <translation>Marmelade</translation>
    </message>
    <message>
        <source>Potato crisps, salted</source>
        <translation>Kartoffelchips, gesalzen</translation>
    </message>
    <message>
        <source>Peanut butter</source>
        <translation>Erdnussbutter</translation>
    </message>
    <message>
        <source>Dark chocolate 70-85 %</source>
        <translation>Dunkle Schokolade 70-85 %</translation>
    </message>
    <message>
        <source>Sugar</source>
        <translation>Zucker</translation>
    </message>
    <message>
        <source>Table salt</source>
        <translation>Kochsalz</translation>
    </message>
    <message>
        <source>Coffee</source>
        <translation>Kaffee</translation>
    </message>
    <message>
        <source>Tea, black</source>
        <translation>Tee, schwarz</translation>
    </message>
    <message>
        <source>500 mL</source>
        <translation>500 mL</translation>
    </message>
    <message>
        <source>500 mL bottle</source>
        <translation>Flasche, 500 mL</translation>
    </message>
    <message>
        <source>1 gel, 40 g</source>
        <translation>1 Gel, 40 g</translation>
    </message>
    <message>
        <source>1 capsule</source>
        <translation>1 Kapsel</translation>
    </message>
    <message>
        <source>250 mL</source>
        <translation>250 mL</translation>
    </message>
    <message>
        <source>1 medium, 118 g peeled</source>
        <translation>1 mittlere, geschält 118 g</translation>
    </message>
    <message>
        <source>10 small, 22 g</source>
        <translation>10 kleine, 22 g</translation>
    </message>
    <message>
        <source>1 date, 24 g</source>
        <translation>1 Dattel, 24 g</translation>
    </message>
    <message>
        <source>1 small, 125 g</source>
        <translation>1 kleine, 125 g</translation>
    </message>
    <message>
        <source>1 sandwich, 76 g</source>
        <translation>1 belegtes Brot, 76 g</translation>
    </message>
    <message>
        <source>1 handful, 28 g</source>
        <translation>1 Handvoll, 28 g</translation>
    </message>
    <message>
        <source>half a cup, 79 g</source>
        <translation>halbe Tasse, 79 g</translation>
    </message>
    <message>
        <source>1 slice, 28 g</source>
        <translation>1 Scheibe, 28 g</translation>
    </message>
    <message>
        <source>1 cup, 150 mL</source>
        <translation>1 Becher, 150 mL</translation>
    </message>
    <message>
        <source>3 dates, 21 g</source>
        <translation>3 Datteln, 21 g</translation>
    </message>
    <message>
        <source>1 cup, 140 g</source>
        <translation>1 Tasse, 140 g</translation>
    </message>
    <message>
        <source>1 cup, 234 g</source>
        <translation>1 Tasse, 234 g</translation>
    </message>
    <message>
        <source>1 fruit, 131 g</source>
        <translation>1 Frucht, 131 g</translation>
    </message>
    <message>
        <source>1 wedge, 286 g</source>
        <translation>1 Spalte, 286 g</translation>
    </message>
    <message>
        <source>1 small box, 43 g</source>
        <translation>1 kleine Schachtel, 43 g</translation>
    </message>
    <message>
        <source>1 tablespoon, 21 g</source>
        <translation>1 Esslöffel, 21 g</translation>
    </message>
    <message>
        <source>1 tablespoon, 20 g</source>
        <translation>1 Esslöffel, 20 g</translation>
    </message>
    <message>
        <source>1 tablespoon, 16 g</source>
        <translation>1 Esslöffel, 16 g</translation>
    </message>
    <message>
        <source>5 pieces, 28 g</source>
        <translation>5 Stück, 28 g</translation>
    </message>
    <message>
        <source>1 teaspoon, 4 g</source>
        <translation>1 Teelöffel, 4 g</translation>
    </message>
    <message>
        <source>1 g</source>
        <translation>1 g</translation>
    </message>
    <message>
        <source>1 cup, 237 mL</source>
        <translation>1 Tasse, 237 mL</translation>
    </message>
</context>
<context>
    <name>FootLane</name>
    <message>
        <source>clock</source>
        <translation>Uhr</translation>
    </message>
</context>
<context>
    <name>Forms</name>
    <message>
        <source>A tune-up race</source>
        <translation>Ein Vorbereitungsrennen</translation>
    </message>
    <message>
        <source>A race to pick from</source>
        <translation>Ein Rennen zur Wahl</translation>
    </message>
    <message>
        <source>A place to train</source>
        <translation>Ein Ort zum Trainieren</translation>
    </message>
    <message>
        <source>For the head</source>
        <translation>Für den Kopf</translation>
    </message>
    <message>
        <source>Own lines for the last days</source>
        <translation>Eigene Zeilen für die letzten Tage</translation>
    </message>
    <message>
        <source>Adjust a template to this race</source>
        <extracomment>What the frame of the system takes of the height, about.</extracomment>
        <translation>Vorlage an dieses Rennen anpassen</translation>
    </message>
</context>
<context>
    <name>Fuel</name>
    <message>
        <source>Own rule</source>
        <translation>Eigene Regel</translation>
    </message>
    <message>
        <source>Common practice, no source</source>
        <translation>Üblich, ohne Quelle</translation>
    </message>
    <message>
        <source>Buy what the shopping list says; weigh and label nothing you have not tried.</source>
        <translation>Kaufe, was auf der Einkaufsliste steht; wiege und beschrifte nichts, was du nicht erprobt hast.</translation>
    </message>
    <message>
        <source>Eat as usual. No new foods from now on, and no new supplements.</source>
        <translation>Iss wie gewohnt. Ab jetzt keine neuen Lebensmittel und keine neuen Nahrungsergänzungen.</translation>
    </message>
    <message>
        <source>Carbohydrate loading: {0} through the day, about {1} at each of {2} meals; what you know, little fibre. A heavier body is stored water, and normal.</source>
        <translation>Kohlenhydrate laden: {0} über den Tag, etwa {1} bei jeder von {2} Mahlzeiten; was du kennst, wenig Ballaststoffe. Mehr Gewicht ist gespeichertes Wasser und normal.</translation>
    </message>
    <message>
        <source>Drink with meals and to thirst; pale urine is enough.</source>
        <translation>Trinke zu den Mahlzeiten und nach Durst; heller Urin genügt.</translation>
    </message>
    <message>
        <source>Last supper: rice, pasta or potatoes you know, little fat and fibre, no alcohol.</source>
        <translation>Letztes Abendessen: Reis, Nudeln oder Kartoffeln, die du kennst, wenig Ballaststoffe und Fett, kein Alkohol.</translation>
    </message>
    <message>
        <source>Mix nothing yet; put breakfast, bottles and the first hours of food ready.</source>
        <translation>Mische noch nichts; stelle Frühstück, Flaschen und die Verpflegung der ersten Stunden bereit.</translation>
    </message>
    <message>
        <source>If you are up: drink {0} to {1} in sips by {2} before the start.</source>
        <translation>Wenn du wach bist: Trinke {0} bis {1} in Schlucken bis {2} vor dem Start.</translation>
    </message>
    <message>
        <source>Last meal: {0} of carbohydrate you have practised, little fat and fibre.</source>
        <translation>Letzte Mahlzeit: {0} Kohlenhydrate, die du erprobt hast, wenig Ballaststoffe und Fett.</translation>
    </message>
    <message>
        <source>Caffeine: {0}; it counts toward the {1} of the day, no more than {2} at once.</source>
        <translation>Koffein: {0}; es zählt zu den {1} des Tages, nicht mehr als {2} auf einmal.</translation>
    </message>
    <message>
        <source>A mouthful of drink or a sweet if you like, no more.</source>
        <translation>Ein Schluck Getränk oder ein Bonbon, wenn du magst, mehr nicht.</translation>
    </message>
    <message>
        <source>Start. The first food comes after {0}, by the clock.</source>
        <translation>Start. Die erste Verpflegung kommt nach {0}, nach der Uhr.</translation>
    </message>
    <message>
        <source>Own rule, after Costa et al. 2017, Appl Physiol Nutr Metab 42:547-557</source>
        <translation>Eigene Regel, nach Costa et al. 2017, Appl Physiol Nutr Metab 42:547-557</translation>
    </message>
    <message>
        <source>The items give {0}, inside the target of {1} to {2}.</source>
        <translation>Die Posten geben {0}, innerhalb der Vorgabe von {1} bis {2}.</translation>
    </message>
    <message>
        <source>The items give {0}, below the target of {1} to {2}; add some or ask for less.</source>
        <translation>Die Posten geben {0}, unter der Vorgabe von {1} bis {2}; füge welche hinzu oder verlange weniger.</translation>
    </message>
    <message>
        <source>The items give {0}, above the target of {1} to {2}; take some out.</source>
        <translation>Die Posten geben {0}, über der Vorgabe von {1} bis {2}; nimm welche heraus.</translation>
    </message>
    <message>
        <source>{0} is near the {1} your gut is known to take.</source>
        <translation>{0} liegt nahe an {1}, die dein Magen bekanntlich verträgt.</translation>
    </message>
    <message>
        <source>{0} is well above the {1} your gut is known to take; practise for about {2} weeks first.</source>
        <translation>{0} liegt weit über {1}, die dein Magen bekanntlich verträgt; übe vorher etwa {2} Wochen.</translation>
    </message>
    <message>
        <source>{0} in one hour is more than has been studied ({1}); spread it or take less.</source>
        <translation>{0} in einer Stunde ist mehr, als untersucht wurde ({1}); verteile es oder nimm weniger.</translation>
    </message>
    <message>
        <source>{0} is more than most guts take even when trained; above {1} expect trouble.</source>
        <translation>{0} ist mehr, als die meisten selbst mit Training vertragen; über {1} ist mit Beschwerden zu rechnen.</translation>
    </message>
    <message>
        <source>{0} of it is glucose, more than is absorbed ({1}); swap some for a mix with fructose.</source>
        <translation>{0} davon ist Glukose, mehr, als aufgenommen wird ({1}); tausche etwas gegen eine Mischung mit Fruktose.</translation>
    </message>
    <message>
        <source>{0} takes a trained gut, and glucose with fructose; take less if you feel sick.</source>
        <translation>{0} braucht einen trainierten Magen und Glukose mit Fruktose; nimm weniger, wenn dir übel wird.</translation>
    </message>
    <message>
        <source>{0} can be absorbed from any kind of sugar.</source>
        <translation>{0} kann aus jeder Art Zucker aufgenommen werden.</translation>
    </message>
    <message>
        <source>For {0} the advice is {1} to {2}; the plan has {3}.</source>
        <translation>Für {0} wird {1} bis {2} empfohlen; der Plan hat {3}.</translation>
    </message>
    <message>
        <source>For {0} the advice is {1} to {2}; the plan has only {3}.</source>
        <translation>Für {0} wird {1} bis {2} empfohlen; der Plan hat nur {3}.</translation>
    </message>
    <message>
        <source>The first carbohydrate comes after {0}.</source>
        <translation>Die ersten Kohlenhydrate kommen nach {0}.</translation>
    </message>
    <message>
        <source>The first carbohydrate comes only after {0}; start within 30 to 45 minutes.</source>
        <translation>Die ersten Kohlenhydrate kommen erst nach {0}; beginne innerhalb von 30 bis 45 Minuten.</translation>
    </message>
    <message>
        <source>{0} holds what you said you must not eat; take it out of the plan.</source>
        <translation>{0} enthält, was du nach deiner Angabe nicht essen darfst; nimm es aus dem Plan.</translation>
    </message>
    <message>
        <source>{0} is marked to avoid and stands in the plan.</source>
        <translation>{0} ist als zu meiden markiert und steht im Plan.</translation>
    </message>
    <message>
        <source>{0} of fluid an hour at some time, but you sweat only {1}; drink less.</source>
        <translation>Zeitweise {0} Flüssigkeit pro Stunde, aber du schwitzt nur {1}; trinke weniger.</translation>
    </message>
    <message>
        <source>At most {0} of fluid an hour to have at hand; drink to thirst.</source>
        <translation>Höchstens {0} Flüssigkeit pro Stunde zur Hand; trinke nach Durst.</translation>
    </message>
    <message>
        <source>{0} of fluid an hour at some time; drink to thirst and never more than you sweat.</source>
        <translation>Zeitweise {0} Flüssigkeit pro Stunde; trinke nach Durst und nie mehr, als du schwitzt.</translation>
    </message>
    <message>
        <source>{0} of sodium an hour at some time is much; it need not all be replaced.</source>
        <translation>Zeitweise {0} Natrium pro Stunde ist viel; es muss nicht alles ersetzt werden.</translation>
    </message>
    <message>
        <source>At most {0} of sodium an hour.</source>
        <translation>Höchstens {0} Natrium pro Stunde.</translation>
    </message>
    <message>
        <source>At most {0} of sodium an hour, {1} mmol a litre; it is no shield against over-drinking.</source>
        <translation>Höchstens {0} Natrium pro Stunde, {1} mmol je Liter; es schützt nicht davor, zu viel zu trinken.</translation>
    </message>
    <message>
        <source>At most {0} of caffeine within an hour; the limit is {1}.</source>
        <translation>Höchstens {0} Koffein innerhalb einer Stunde; die Grenze ist {1}.</translation>
    </message>
    <message>
        <source>{0} of caffeine within an hour; above {1} at once is not held to be safe.</source>
        <translation>{0} Koffein innerhalb einer Stunde; über {1} auf einmal gilt nicht als sicher.</translation>
    </message>
    <message>
        <source>{0} of caffeine within 24 hours; the limit is {1}, your morning coffee included.</source>
        <translation>{0} Koffein innerhalb von 24 Stunden; die Grenze ist {1}, dein Morgenkaffee eingerechnet.</translation>
    </message>
    <message>
        <source>{0} of caffeine within 24 hours, coffee aside; above {1} is not held to be safe.</source>
        <translation>{0} Koffein innerhalb von 24 Stunden, ohne Kaffee; über {1} gilt nicht als sicher.</translation>
    </message>
    <message>
        <source>Items after the finish: {0}; take them out or place the fuel again.</source>
        <translation>Posten nach dem Ziel: {0}; nimm sie heraus oder verteile die Verpflegung neu.</translation>
    </message>
    <message>
        <source>The race is over before the first item would be taken.</source>
        <extracomment>Shorter pieces are looked at with their neighbours.</extracomment>
        <translation>Das Rennen ist vorbei, bevor der erste Posten dran wäre.</translation>
    </message>
    <message>
        <source>None of these foods has carbohydrate you can take; choose others or change marks.</source>
        <translation>Keines dieser Lebensmittel hat Kohlenhydrate, die du nehmen kannst; wähle andere oder ändere die Markierungen.</translation>
    </message>
    <message>
        <source>No filling was found in time; choose fewer foods.</source>
        <translation>In der Zeit wurde keine Füllung gefunden; wähle weniger Lebensmittel.</translation>
    </message>
    <message>
        <source>{0} an hour are asked, but never more than {1} are planned: you sweat less.</source>
        <translation>Verlangt sind {0} pro Stunde, aber geplant werden nie mehr als {1}: Du schwitzt weniger.</translation>
    </message>
    <message>
        <source>From {0} on: {1} of {2} to {3}; no more fits with these foods. Add one with more.</source>
        <translation>Ab {0}: {1} von {2} bis {3}; mehr passt mit diesen Lebensmitteln nicht. Füge eines mit mehr hinzu.</translation>
    </message>
    <message>
        <source>From {0} on: {1}, asked {2} to {3}; the portions are too large. Add a smaller food.</source>
        <translation>Ab {0}: {1}, verlangt {2} bis {3}; die Portionen sind zu groß. Füge ein kleineres Lebensmittel hinzu.</translation>
    </message>
    <message>
        <source>From {0} on: {1} an hour of {2} to {3}; add water or a drink to the foods.</source>
        <translation>Ab {0}: {1} pro Stunde von {2} bis {3}; füge Wasser oder ein Getränk hinzu.</translation>
    </message>
    <message>
        <source>From {0} on: {1} an hour, asked {2} to {3}; the drink gives the carbohydrate. Add solids.</source>
        <translation>Ab {0}: {1} pro Stunde, verlangt {2} bis {3}; die Kohlenhydrate kommen aus dem Getränk. Füge Festes hinzu.</translation>
    </message>
    <message>
        <source>From {0} on: {1} an hour of {2} to {3}; the bottles hold no more. Carry another.</source>
        <translation>Ab {0}: {1} pro Stunde von {2} bis {3}; mehr fassen die Flaschen nicht. Trage eine mehr.</translation>
    </message>
    <message>
        <source>From {0} on: {1} an hour of {2} to {3}; add salt capsules or salty food.</source>
        <translation>Ab {0}: {1} pro Stunde von {2} bis {3}; füge Salzkapseln oder Salziges hinzu.</translation>
    </message>
    <message>
        <source>From {0} on: {1} an hour, asked {2} to {3}; swap salty food for something else.</source>
        <translation>Ab {0}: {1} pro Stunde, verlangt {2} bis {3}; tausche Salziges gegen etwas anderes.</translation>
    </message>
    <message>
        <source>There is no food with carbohydrate and without caffeine in this project; add one.</source>
        <translation>In diesem Projekt gibt es kein Lebensmittel mit Kohlenhydraten und ohne Koffein; füge eines hinzu.</translation>
    </message>
    <message>
        <source>Own model, a trend only: 30 % off either way is usual</source>
        <translation>Eigenes Modell, nur ein Trend: 30 % Abweichung nach oben oder unten sind üblich</translation>
    </message>
    <message>
        <source>The liver falls to about {0}: low blood sugar is likely; eat more or earlier.</source>
        <translation>Die Leber fällt auf etwa {0}: Unterzucker ist wahrscheinlich; iss mehr oder früher.</translation>
    </message>
    <message>
        <source>About {0} wait in the gut at {1}: more than the body can use at this pace; take less.</source>
        <translation>Etwa {0} warten bei {1} im Magen: mehr, als der Körper bei diesem Tempo nutzen kann; nimm weniger.</translation>
    </message>
    <message>
        <source>The legs are empty from about {0} on; eat more or go slower before it.</source>
        <translation>Die Beine sind ab etwa {0} leer; iss vorher mehr oder lauf langsamer.</translation>
    </message>
    <message>
        <source>Only {0} to {1} of glycogen are left of {2}; eat more.</source>
        <translation>Nur {0} bis {1} Glykogen sind von {2} übrig; iss mehr.</translation>
    </message>
    <message>
        <source>The legs may be empty from about {0} on if you burn fast; eat more before it.</source>
        <translation>Die Beine sind vielleicht ab etwa {0} leer, wenn du viel verbrennst; iss vorher mehr.</translation>
    </message>
    <message>
        <source>At the lowest {0} to {1} of glycogen are left of {2}.</source>
        <translation>Am tiefsten Punkt sind {0} bis {1} Glykogen von {2} übrig.</translation>
    </message>
    <message>
        <source>There is no aid station yet; add one first.</source>
        <translation>Es gibt noch keine Verpflegungsstelle; füge zuerst eine hinzu.</translation>
    </message>
    <message>
        <source>No session to come has carbohydrate to practise that lacks food.</source>
        <translation>Keiner kommenden Einheit mit Kohlenhydraten zum Üben fehlt Verpflegung.</translation>
    </message>
    <message>
        <source>Not enough yet: two runs of an hour or more, eaten on, that sat well.</source>
        <translation>Noch nicht genug: zwei gut vertragene Läufe ab einer Stunde, auf denen du gegessen hast.</translation>
    </message>
</context>
<context>
    <name>FuelCautions</name>
    <message>
        <source>When it goes wrong</source>
        <translation>Wenn es schiefgeht</translation>
    </message>
    <message>
        <source>Cautions for this plan</source>
        <translation>Warnhinweise zu diesem Plan</translation>
    </message>
</context>
<context>
    <name>FuelDeeds</name>
    <message>
        <source>Filling fuel to target</source>
        <translation>Verpflegung wird auf die Vorgabe gefüllt</translation>
    </message>
    <message>
        <source>{0} sat well on {1}; the plan counts on {2}. Count on the new figure from now on?</source>
        <translation>{0} haben am {1} gut gelegen; der Plan rechnet mit {2}. Ab jetzt mit dem neuen Wert rechnen?</translation>
    </message>
    <message>
        <source>The filling is ready.</source>
        <translation>Die Füllung ist fertig.</translation>
    </message>
</context>
<context>
    <name>FuelLane</name>
    <message>
        <source>Fuel</source>
        <extracomment>Between the line at nothing and the tokens. Row each shape stands in, from the bottom.</extracomment>
        <translation>Verpflegung</translation>
    </message>
    <message>
        <source>carbs g/h</source>
        <translation>KH g/h</translation>
    </message>
    <message>
        <source>gel</source>
        <extracomment>When the item in the hand was taken, and how far from that it was gripped. Where the mouse was pressed, None once it has moved further than a click does.</extracomment>
        <translation>Gel</translation>
    </message>
    <message>
        <source>food</source>
        <translation>Essen</translation>
    </message>
    <message>
        <source>salt</source>
        <translation>Salz</translation>
    </message>
    <message>
        <source>drink</source>
        <translation>Trinken</translation>
    </message>
    <message>
        <source>Fuel appears with a course.</source>
        <translation>Verpflegung erscheint mit einer Strecke.</translation>
    </message>
    <message>
        <source>Nothing placed. Fuel, Place fuel by the clock; or right-click here.</source>
        <translation>Nichts verteilt. Verpflegung, Nach der Uhr verteilen; oder Rechtsklick hier.</translation>
    </message>
    <message>
        <source>{0} {1}, {2} of carbs, at {3} ({4}), keeps its place</source>
        <translation>{0} {1}, {2} KH, bei {3} ({4}), behält seinen Platz</translation>
    </message>
    <message>
        <source>{0} {1}, {2} of carbs, at {3} ({4})</source>
        <translation>{0} {1}, {2} KH, bei {3} ({4})</translation>
    </message>
    <message>
        <source>Copy to one interval later</source>
        <translation>Um ein Intervall später kopieren</translation>
    </message>
    <message>
        <source>Add here</source>
        <translation>Hier hinzufügen</translation>
    </message>
    <message>
        <source>{0}, {1}</source>
        <translation>{0}, {1}</translation>
    </message>
</context>
<context>
    <name>GlycogenLane</name>
    <message>
        <source>Glycogen</source>
        <extracomment>Points drawn at most: a band as smooth as the eye sees it.</extracomment>
        <translation>Glykogen</translation>
    </message>
    <message>
        <source>g, about</source>
        <translation>g, etwa</translation>
    </message>
    <message>
        <source>Glycogen appears with a course.</source>
        <translation>Glykogen erscheint mit einer Strecke.</translation>
    </message>
    <message>
        <source>About {0} to {1} of glycogen left of {2}; {3} waits in the gut</source>
        <translation>Etwa {0} bis {1} Glykogen von {2} übrig; {3} warten im Magen</translation>
    </message>
    <message>
        <source>low</source>
        <translation>niedrig</translation>
    </message>
    <message>
        <source>nearly gone</source>
        <translation>fast leer</translation>
    </message>
    <message>
        <source>legs empty from {0}</source>
        <translation>Beine leer ab {0}</translation>
    </message>
    <message>
        <source>perhaps empty from {0}</source>
        <translation>vielleicht leer ab {0}</translation>
    </message>
</context>
<context>
    <name>GridPicture</name>
    <message>
        <source>No sessions yet.</source>
        <extracomment>The kind of selection that is a week; its key is the first day.</extracomment>
        <translation>Noch keine Einheiten.</translation>
    </message>
    <message>
        <source>Build the block from the Build-up menu, or press N to add a run.</source>
        <translation>Erstelle den Block im Menü Aufbau oder drücke N für einen neuen Lauf.</translation>
    </message>
</context>
<context>
    <name>Ground</name>
    <message>
        <source>treadmill</source>
        <translation>Laufband</translation>
    </message>
    <message>
        <source>hill</source>
        <translation>Hügel</translation>
    </message>
    <message>
        <source>stairs</source>
        <translation>Treppe</translation>
    </message>
    <message>
        <source>car-park ramp</source>
        <translation>Parkhausrampe</translation>
    </message>
    <message>
        <source>flat path</source>
        <translation>flacher Weg</translation>
    </message>
    <message>
        <source>loop</source>
        <translation>Runde</translation>
    </message>
</context>
<context>
    <name>GroundForm</name>
    <message>
        <source>What you call it</source>
        <extracomment>Length and height to begin with; our own choice.</extracomment>
        <translation>Wie du es nennst</translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation>&amp;Art</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>Len&amp;gth, one way or round</source>
        <translation>Län&amp;ge, einfach oder rund</translation>
    </message>
    <message>
        <source>&amp;Climb over it</source>
        <translation>A&amp;ufstieg darauf</translation>
    </message>
    <message>
        <source>D&amp;rop over it</source>
        <translation>A&amp;bstieg darauf</translation>
    </message>
    <message>
        <source>&amp;Least gradient</source>
        <translation>&amp;Kleinste Steigung</translation>
    </message>
    <message>
        <source>&amp;Most gradient</source>
        <translation>G&amp;rößte Steigung</translation>
    </message>
    <message>
        <source>K&amp;eep</source>
        <translation>B&amp;ehalten</translation>
    </message>
</context>
<context>
    <name>GroundPage</name>
    <message>
        <source>Ground at hand</source>
        <translation>Untergrund vor Ort</translation>
    </message>
    <message>
        <source>What there is</source>
        <translation>Was es gibt</translation>
    </message>
    <message>
        <source>Grounds at hand</source>
        <translation>Untergründe vor Ort</translation>
    </message>
    <message>
        <source>&amp;Add…</source>
        <translation>&amp;Hinzufügen…</translation>
    </message>
    <message>
        <source>Add a &amp;loop…</source>
        <translation>&amp;Runde hinzufügen…</translation>
    </message>
    <message>
        <source>C&amp;hange…</source>
        <translation>Än&amp;dern…</translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation>&amp;Entfernen</translation>
    </message>
    <message>
        <source>Stretch and day</source>
        <translation>Stück und Tag</translation>
    </message>
    <message>
        <source>the whole race</source>
        <translation>das ganze Rennen</translation>
    </message>
    <message>
        <source>to {0}</source>
        <translation>bis {0}</translation>
    </message>
    <message>
        <source>S&amp;tretch</source>
        <translation>S&amp;tück</translation>
    </message>
    <message>
        <source>At &amp;most</source>
        <translation>Höchsten&amp;s</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>&amp;Tag</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>There is no course yet, so no stretch to match.</source>
        <translation>Es gibt noch keine Strecke, also auch kein Stück zum Nachbilden.</translation>
    </message>
    <message>
        <source>The stretch: {0}, {1} on feet, climb {2}, drop {3}.</source>
        <translation>Das Stück: {0}, {1} auf den Beinen, Aufstieg {2}, Abstieg {3}.</translation>
    </message>
    <message>
        <source>Say on the left what there is where you live.</source>
        <translation>Gib links an, was es bei dir gibt.</translation>
    </message>
    <message>
        <source>Nothing of it can be matched here.</source>
        <translation>Nichts davon lässt sich hier nachbilden.</translation>
    </message>
    <message>
        <source>{0}: {1}</source>
        <translation>{0}: {1}</translation>
    </message>
    <message>
        <source>Put it on {0}</source>
        <translation>Auf {0} legen</translation>
    </message>
    <message>
        <source>Run the {0} of {1} so</source>
        <translation>{0} am {1} so laufen</translation>
    </message>
</context>
<context>
    <name>GuessField</name>
    <message>
        <source>our guess</source>
        <translation>unsere Schätzung</translation>
    </message>
    <message>
        <source>I don&apos;t know</source>
        <translation>weiß ich nicht</translation>
    </message>
    <message>
        <source>Put back what was there</source>
        <translation>Zurücksetzen, was da stand</translation>
    </message>
    <message>
        <source>Put a careful guess in: {0}</source>
        <translation>Vorsichtige Schätzung einsetzen: {0}</translation>
    </message>
    <message>
        <source>I don&apos;t know: {0}</source>
        <translation>Ich weiß es nicht: {0}</translation>
    </message>
</context>
<context>
    <name>Guesses</name>
    <message>
        <source>an estimate of our own</source>
        <translation>eine eigene Schätzung</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>üblich, ohne Quelle</translation>
    </message>
    <message>
        <source>the least of the 30 to 50 g/h of Tiller et al. 2019, J Int Soc Sports Nutr 16:50</source>
        <extracomment>Round figures in each unit, on the low side: all our own choice.</extracomment>
        <translation>das Mindeste der 30 bis 50 g/h nach Tiller et al. 2019, J Int Soc Sports Nutr 16:50</translation>
    </message>
    <message>
        <source>On the low side, so that the build-up begins gently.</source>
        <translation>Eher niedrig, damit der Aufbau sanft beginnt.</translation>
    </message>
    <message>
        <source>Rather short: long runs grow from it.</source>
        <translation>Eher kurz: Lange Läufe wachsen davon aus.</translation>
    </message>
    <message>
        <source>Slow enough to talk; too slow only plans more time.</source>
        <translation>Langsam genug zum Reden; zu langsam plant nur mehr Zeit ein.</translation>
    </message>
    <message>
        <source>It only scales the energy you burn.</source>
        <translation>Es wirkt nur auf die Energie, die du verbrennst.</translation>
    </message>
    <message>
        <source>The least that is advised; most beginners manage that.</source>
        <translation>Das Mindeste, was empfohlen wird; die meisten Anfänger schaffen es.</translation>
    </message>
    <message>
        <source>More than just enough, less than all you could bear.</source>
        <translation>Mehr als gerade genug, weniger als alles, was du aushalten könntest.</translation>
    </message>
    <message>
        <source>The day with most time free.</source>
        <translation>Der Tag mit der meisten freien Zeit.</translation>
    </message>
    <message>
        <source>A working week with one day of rest and a long Saturday.</source>
        <translation>Eine Arbeitswoche mit einem Ruhetag und einem langen Samstag.</translation>
    </message>
    <message>
        <source>Most races start early.</source>
        <translation>Die meisten Rennen starten früh.</translation>
    </message>
    <message>
        <source>Cutoffs on the way still count.</source>
        <translation>Zeitlimits unterwegs gelten weiter.</translation>
    </message>
    <message>
        <source>Likely at your easy pace.</source>
        <translation>Wahrscheinlich bei deinem lockeren Tempo.</translation>
    </message>
</context>
<context>
    <name>HabitsForm</name>
    <message>
        <source>Fuel habits</source>
        <extracomment>One below what is taken for a VO2max: not known.</extracomment>
        <translation>Gewohnheiten der Verpflegung</translation>
    </message>
    <message>
        <source>&amp;Set</source>
        <translation>&amp;Setzen</translation>
    </message>
    <message>
        <source>mL</source>
        <translation>mL</translation>
    </message>
    <message>
        <source>&amp;Bottles</source>
        <translation>&amp;Flaschen</translation>
    </message>
    <message>
        <source>Eac&amp;h holds</source>
        <translation>&amp;Jede fasst</translation>
    </message>
    <message>
        <source>S&amp;pare packed</source>
        <translation>Re&amp;serve dabei</translation>
    </message>
    <message>
        <source>What you carry</source>
        <translation>Was du trägst</translation>
    </message>
    <message>
        <source>Filling may use ca&amp;ffeine</source>
        <translation>Füllen darf &amp;Koffein nehmen</translation>
    </message>
    <message>
        <source>400 mg a day, healthy adults</source>
        <translation>400 mg am Tag, gesunde Erwachsene</translation>
    </message>
    <message>
        <source>200 mg a day, as in pregnancy</source>
        <translation>200 mg am Tag, wie bei Schwangerschaft</translation>
    </message>
    <message>
        <source>3 mg/kg a day, as under 18</source>
        <translation>3 mg/kg am Tag, wie unter 18</translation>
    </message>
    <message>
        <source>&amp;Limit that counts</source>
        <translation>Gelten&amp;de Grenze</translation>
    </message>
    <message>
        <source>Caffeine</source>
        <translation>Koffein</translation>
    </message>
    <message>
        <source>days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>g/kg a day</source>
        <translation>g/kg am Tag</translation>
    </message>
    <message>
        <source> h before</source>
        <translation> h vorher</translation>
    </message>
    <message>
        <source>mg</source>
        <translation>mg</translation>
    </message>
    <message>
        <source>L&amp;oading</source>
        <translation>&amp;Laden</translation>
    </message>
    <message>
        <source>Of carbohydrate, &amp;each</source>
        <translation>Kohlenhydrate, je &amp;Tag</translation>
    </message>
    <message>
        <source>Last &amp;meal</source>
        <translation>Letzte &amp;Mahlzeit</translation>
    </message>
    <message>
        <source>Caffeine bef&amp;ore the start</source>
        <translation>K&amp;offein vor dem Start</translation>
    </message>
    <message>
        <source>Before the start</source>
        <translation>Vor dem Start</translation>
    </message>
    <message>
        <source>mL/kg/min</source>
        <translation>mL/kg/min</translation>
    </message>
    <message>
        <source>not known</source>
        <translation>nicht bekannt</translation>
    </message>
    <message>
        <source>easy, half of your best</source>
        <translation>locker, halbe Bestleistung</translation>
    </message>
    <message>
        <source>steady, 60 %</source>
        <translation>stetig, 60 %</translation>
    </message>
    <message>
        <source>hard, 70 %</source>
        <translation>hart, 70 %</translation>
    </message>
    <message>
        <source>g/kg</source>
        <translation>g/kg</translation>
    </message>
    <message>
        <source>g</source>
        <translation>g</translation>
    </message>
    <message>
        <source>&amp;VO2max</source>
        <translation>&amp;VO2max</translation>
    </message>
    <message>
        <source>If not known, the race &amp;is</source>
        <translation>Sonst &amp;ist das Rennen</translation>
    </message>
    <message>
        <source>Leg muscle, of the bod&amp;y</source>
        <translation>Beinmuskeln, Anteil am Kö&amp;rper</translation>
    </message>
    <message>
        <source>&amp;Glycogen in it</source>
        <translation>&amp;Glykogen darin</translation>
    </message>
    <message>
        <source>In the live&amp;r</source>
        <translation>In der Le&amp;ber</translation>
    </message>
    <message>
        <source>Glycogen at the start</source>
        <translation>Glykogen am Start</translation>
    </message>
    <message>
        <source>20 g/kg is usual, 36 fully loaded; liver 90 g after breakfast.</source>
        <translation>Üblich sind 20 g/kg, voll geladen 36; Leber 90 g nach dem Frühstück.</translation>
    </message>
    <message>
        <source>What you must not eat</source>
        <translation>Was du nicht essen darfst</translation>
    </message>
</context>
<context>
    <name>Handbook</name>
    <message>
        <source>1. Drop the course</source>
        <translation>1. Strecke ablegen</translation>
    </message>
    <message>
        <source>Drag the GPX file of your race on the window, or take File, New from a course. Without a file, type the table of the race&apos;s handbook: places, distances, cutoffs.</source>
        <translation>Zieh die GPX-Datei deines Rennens auf das Fenster oder nimm Datei, Neu aus einer Strecke. Ohne Datei tippst du die Tabelle aus der Ausschreibung ab: Orte, Distanzen, Zeitlimits.</translation>
    </message>
    <message>
        <source>One form opens over it. It asks when the race is and what you run now; each field where you may not know the answer proposes a careful one and says why. Nothing in it is for ever: Edit, Race and runner shows it again.</source>
        <translation>Darüber öffnet sich ein einziges Formular. Es fragt, wann das Rennen ist und was du jetzt läufst; jedes Feld, bei dem du die Antwort vielleicht nicht kennst, schlägt eine vorsichtige vor und sagt, warum. Nichts darin ist für immer: Bearbeiten, Rennen und Läufer zeigt es wieder.</translation>
    </message>
    <message>
        <source>2. See whether there is time</source>
        <translation>2. Sehen, ob die Zeit reicht</translation>
    </message>
    <message>
        <source>The runway in the header counts the weeks there are and the weeks that are needed to grow from what you run now to what the race asks, cutback weeks and taper included. If it is too short it says what binds: the weekly distance or the long run.</source>
        <translation>Der Anlauf im Kopf zählt die Wochen, die da sind, und die Wochen, die nötig sind, um von dem, was du jetzt läufst, zu dem zu kommen, was das Rennen verlangt, mit Entlastungswochen und Tapering. Ist er zu kurz, sagt er, woran es liegt: am Wochenumfang oder am langen Lauf.</translation>
    </message>
    <message>
        <source>Edit, Races to pick from lays several races side by side: their ground, their likely finish, their cutoffs, and the runway each leaves you.</source>
        <translation>Bearbeiten, Rennen zur Wahl legt mehrere Rennen nebeneinander: ihren Untergrund, die wahrscheinliche Zielzeit, ihre Zeitlimits und den Anlauf, den dir jedes lässt.</translation>
    </message>
    <message>
        <source>3. Read the build-up</source>
        <translation>3. Den Aufbau lesen</translation>
    </message>
    <message>
        <source>The upper storey is your training. Each column is a week, counted down to the race; each tile is a session with its kind, its length and the ground it is run on. The lanes above it show what a week adds up to: distance, longest run, climb and drop, practice carbs.</source>
        <translation>Das obere Stockwerk ist dein Training. Jede Spalte ist eine Woche, heruntergezählt bis zum Rennen; jede Kachel ist eine Einheit mit ihrer Art, ihrer Länge und dem Untergrund, auf dem sie gelaufen wird. Die Spuren darüber zeigen, was eine Woche ergibt: Distanz, längster Lauf, Aufstieg und Abstieg, KH zum Üben.</translation>
    </message>
    <message>
        <source>Select a tile and the ledger on the right says what it is for, how hard it should feel, and which rule it touches. A rule holds, strains or breaks; its source stands beside it.</source>
        <translation>Wähle eine Kachel, und die Angaben rechts sagen, wozu sie da ist, wie hart sie sich anfühlen soll und welche Regel sie berührt. Eine Regel hält, ist gespannt oder bricht; ihre Quelle steht daneben.</translation>
    </message>
    <message>
        <source>4. Move what does not fit your life</source>
        <translation>4. Verschieben, was nicht in dein Leben passt</translation>
    </message>
    <message>
        <source>Drag a session to another day or week; with Ctrl you drag a copy. Drag its right edge to make it longer. While it hangs from the pointer every figure shows what it would become beside what it is; Esc puts it back. Where the move breaks a rule the ledger names a day that would hold.</source>
        <translation>Zieh eine Einheit auf einen anderen Tag oder in eine andere Woche; mit Strg ziehst du eine Kopie. Zieh an ihrem rechten Rand, um sie zu verlängern. Solange sie am Zeiger hängt, zeigt jeder Wert, was er würde, neben dem, was er ist; Esc legt sie zurück. Bricht das Verschieben eine Regel, nennen die Angaben einen Tag, der hielte.</translation>
    </message>
    <message>
        <source>By keys: arrows choose a session, Enter picks it up, arrows carry it, Enter puts it down. Every step can be undone.</source>
        <translation>Mit Tasten: Pfeile wählen eine Einheit, Enter nimmt sie auf, Pfeile tragen sie, Enter legt sie ab. Jeder Schritt lässt sich rückgängig machen.</translation>
    </message>
    <message>
        <source>5. Live with it</source>
        <translation>5. Damit leben</translation>
    </message>
    <message>
        <source>Mark what was done, changed or missed with Ctrl+T, a key each. What is missed is not made up: after a cold or a week away, Build-up, I missed these days finds the smallest change that keeps the rules, and offers it.</source>
        <translation>Markiere mit Strg+T, was erledigt, geändert oder ausgefallen ist, je eine Taste. Was ausfällt, wird nicht nachgeholt: Nach einer Erkältung oder einer Woche Pause findet Aufbau, Diese Tage fielen aus die kleinste Änderung, die die Regeln hält, und bietet sie an.</translation>
    </message>
    <message>
        <source>6. Set the targets</source>
        <translation>6. Zielzeiten setzen</translation>
    </message>
    <message>
        <source>The lower storey is race day. The forecast is what runners of your finish do: start fast and fade. The target is yours, more even by default. Drag the top of a section to make it faster or slower, its edge to move where it ends.</source>
        <translation>Das untere Stockwerk ist der Renntag. Die Prognose ist, was Läufer mit deiner Zielzeit tun: schnell starten und nachlassen. Die Zielzeit gehört dir, von Haus aus gleichmäßiger. Zieh am oberen Rand eines Abschnitts, um ihn schneller oder langsamer zu machen, an seiner Kante, um sein Ende zu verschieben.</translation>
    </message>
    <message>
        <source>Stations move by their names, stops by the end of their bars, the start by its name or by the light. All snap to climbs and round figures; hold Alt and nothing does. Two tips under the names fold a leg away.</source>
        <translation>Stationen verschiebst du an ihren Namen, Halte am Ende ihrer Balken, den Start an seinem Namen oder am Licht. Alle rasten an Anstiegen und runden Werten ein; halte Alt, und nichts rastet ein. Zwei Spitzen unter den Namen falten ein Teilstück weg.</translation>
    </message>
    <message>
        <source>Time in hand tells how much later you could be and still make every cutoff; the walk-in limit, from where walking the rest would do, if you are well. Type the cutoffs and stops under Tables, Aid stations.</source>
        <translation>Das Zeitpolster sagt, wie viel später du sein könntest und doch jedes Zeitlimit schaffst; die Gehgrenze, ab wo es reicht, den Rest zu gehen, wenn es dir gut geht. Zeitlimits und Halte gibst du unter Tabellen, Verpflegungsstellen ein.</translation>
    </message>
    <message>
        <source>7. Lay out the fuel</source>
        <translation>7. Verpflegung auslegen</translation>
    </message>
    <message>
        <source>Fuel, Fuel per hour sets the rates; then the foods you know are laid out by the clock, by a rule, or so that the hours reach the target with what your stations have. Drag a token to another time; the totals by the hour, the fluid and the glycogen follow.</source>
        <translation>Verpflegung, Verpflegung pro Stunde setzt die Mengen; dann werden die Lebensmittel, die du kennst, nach der Uhr ausgelegt, nach einer Regel oder so, dass die Stunden mit dem, was deine Stationen haben, die Vorgabe erreichen. Zieh einen Posten auf eine andere Zeit; die Summen je Stunde, die Flüssigkeit und das Glykogen ziehen mit.</translation>
    </message>
    <message>
        <source>Practise it: the practice lane shows what the long runs ask your gut to take, growing toward the race.</source>
        <translation>Übe es: Die Übungsspur zeigt, was die langen Läufe deinem Magen zumuten, wachsend bis zum Rennen.</translation>
    </message>
    <message>
        <source>8. Prepare the head and the crew</source>
        <translation>8. Kopf und Betreuung vorbereiten</translation>
    </message>
    <message>
        <source>Edit, For the head has what to picture, lines for when it gets hard, worries and what is done about each, and a good, a fair and a hard day. Edit, Crew and lists names who is where, what they hand over and ask, and who drives home. The table Before the start counts down from ten days to the gun.</source>
        <translation>Bearbeiten, Für den Kopf enthält, was du dir vorstellst, Sätze für schwere Stunden, Sorgen und was gegen jede getan wird, und einen guten, einen mittleren und einen harten Tag. Bearbeiten, Betreuung und Listen nennt, wer wo ist, was sie übergeben und fragen und wer heimfährt. Die Tabelle Vor dem Start zählt von zehn Tagen bis zum Startschuss herunter.</translation>
    </message>
    <message>
        <source>9. Print what you carry</source>
        <translation>9. Drucken, was du trägst</translation>
    </message>
    <message>
        <source>Under Cards choose what you want on paper: pace, fuel, crew, bags, lists, hard stretches. Each has its size and form, flat, folded or around the wrist, and shows whether it can be read while running and under a red lamp. Print a test page once and measure it.</source>
        <translation>Unter Karten wählst du, was du auf Papier willst: Tempo, Verpflegung, Betreuung, Beutel, Listen, harte Stücke. Jede hat ihre Größe und Form, flach, gefaltet oder ums Handgelenk, und zeigt, ob sie beim Laufen und unter rotem Licht lesbar ist. Drucke einmal eine Testseite und miss sie nach.</translation>
    </message>
    <message>
        <source>10. Learn from it</source>
        <translation>10. Daraus lernen</translation>
    </message>
    <message>
        <source>Open the recordings of your runs: the pace model is fitted to you, with the error it had on runs it did not see, and is used only if you say so. After the race, finished or not, the table After the race says how long to rest and what to watch for.</source>
        <translation>Öffne die Aufzeichnungen deiner Läufe: Das Tempomodell wird an dich angepasst, mit dem Fehler, den es bei Läufen hatte, die es nicht sah, und nur benutzt, wenn du es sagst. Nach dem Rennen, im Ziel oder nicht, sagt die Tabelle Nach dem Rennen, wie lange du ruhen und worauf du achten sollst.</translation>
    </message>
    <message>
        <source>Rests on published measurements, named at the topic.</source>
        <translation>Beruht auf veröffentlichten Messungen, beim Thema genannt.</translation>
    </message>
    <message>
        <source>Published, but its value was not looked up again in the paper.</source>
        <translation>Veröffentlicht, aber der Wert wurde nicht noch einmal in der Arbeit nachgesehen.</translation>
    </message>
    <message>
        <source>Custom: what coaches and runners do. That it is common does not show that it works.</source>
        <translation>Brauch: was Trainer und Läufer tun. Dass es üblich ist, zeigt nicht, dass es wirkt.</translation>
    </message>
    <message>
        <source>Chosen by us so that a plan can be made at all.</source>
        <translation>Von uns gewählt, damit überhaupt ein Plan entstehen kann.</translation>
    </message>
    <message>
        <source>Our own estimate; treat it as a guess.</source>
        <translation>Unsere eigene Schätzung; nimm sie als Vermutung.</translation>
    </message>
    <message>
        <source>Ultraplanner, the handbook</source>
        <translation>Ultraplanner, das Handbuch</translation>
    </message>
    <message>
        <source>The job in ten steps</source>
        <translation>Die Arbeit in zehn Schritten</translation>
    </message>
    <message>
        <source>What is custom and what is supported</source>
        <translation>Was Brauch ist und was belegt</translation>
    </message>
    <message>
        <source>Cautions</source>
        <translation>Warnhinweise</translation>
    </message>
    <message>
        <source>This plan is arithmetic on what you typed. It does not examine you. Race rules, medical staff, local rules and your doctor go first.</source>
        <translation>Dieser Plan rechnet mit dem, was du eingegeben hast. Er untersucht dich nicht. Rennregeln, medizinische Helfer, örtliche Regeln und dein Arzt gehen vor.</translation>
    </message>
    <message>
        <source>The sheet</source>
        <translation>Das Blatt</translation>
    </message>
    <message>
        <source>The build-up and its weeks</source>
        <translation>Der Aufbau und seine Wochen</translation>
    </message>
    <message>
        <source>The rules of a build-up</source>
        <translation>Die Regeln eines Aufbaus</translation>
    </message>
    <message>
        <source>The build-up against its race</source>
        <translation>Der Aufbau im Vergleich zum Rennen</translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>Living with the build-up</source>
        <translation>Mit dem Aufbau leben</translation>
    </message>
    <message>
        <source>Race and runner</source>
        <translation>Rennen und Läufer</translation>
    </message>
    <message>
        <source>The course</source>
        <translation>Die Strecke</translation>
    </message>
    <message>
        <source>Race day</source>
        <translation>Renntag</translation>
    </message>
    <message>
        <source>Pacing the race</source>
        <translation>Das Rennen einteilen</translation>
    </message>
    <message>
        <source>Race day in your hands</source>
        <translation>Der Renntag in deinen Händen</translation>
    </message>
    <message>
        <source>Eating and drinking</source>
        <translation>Essen und Trinken</translation>
    </message>
    <message>
        <source>Stores, bags and practice</source>
        <translation>Speicher, Beutel und Übung</translation>
    </message>
    <message>
        <source>Cards</source>
        <translation>Karten</translation>
    </message>
    <message>
        <source>For the head, and the last days</source>
        <translation>Für den Kopf und die letzten Tage</translation>
    </message>
    <message>
        <source>Recordings and looking back</source>
        <translation>Aufzeichnungen und Rückblick</translation>
    </message>
    <message>
        <source>After the race, and other programs</source>
        <translation>Nach dem Rennen und andere Programme</translation>
    </message>
    <message>
        <source>The program</source>
        <translation>Das Programm</translation>
    </message>
</context>
<context>
    <name>HandbookView</name>
    <message>
        <source>Handbook</source>
        <translation>Handbuch</translation>
    </message>
    <message>
        <source>Search the handbook</source>
        <translation>Handbuch durchsuchen</translation>
    </message>
    <message>
        <source>Contents</source>
        <translation>Inhalt</translation>
    </message>
    <message>
        <source>Write as &amp;PDF…</source>
        <translation>Als &amp;PDF schreiben…</translation>
    </message>
</context>
<context>
    <name>Head</name>
    <message>
        <source>The first {0}, to about {1}: it should feel easy, with whole sentences and others passing. If it feels hard here, slow down.</source>
        <extracomment>How a race time reads on the clock. A climb of less is no stretch to picture (own rule). A stop as long as this makes one stiff and cold (own rule). Less in hand than this is on one&apos;s mind (own rule). Hours of the night in which one is sleepiest (common practice, no source).</extracomment>
        <translation>Die ersten {0}, bis etwa {1}: Es soll sich leicht anfühlen, mit ganzen Sätzen, und andere ziehen vorbei. Ist es hier schon hart, werde langsamer.</translation>
    </message>
    <message>
        <source>The longest stretch alone: {0}, to {1}, from about {2} to {3}. Nobody to ask; you carry food, light and the telephone, and one foot follows the other.</source>
        <translation>Die längste Strecke allein: {0}, bis {1}, von etwa {2} bis {3}. Niemand zum Fragen; du hast Essen, Licht und Telefon dabei, und ein Fuß folgt dem anderen.</translation>
    </message>
    <message>
        <source>Climb {0}, at {1}: {2} up in {3}, from about {4}, {5} long. Slower than you feel like, short steps, eat before it begins.</source>
        <translation>Anstieg {0}, bei {1}: {2} hinauf auf {3}, ab etwa {4}, {5} lang. Langsamer, als dir zumute ist, kurze Schritte, iss vorher.</translation>
    </message>
    <message>
        <source>Climb {0}, at {1}: {2} up in {3}, from about {4}, {5} long. Walked, as planned, hands on knees; eat before it begins.</source>
        <translation>Anstieg {0}, bei {1}: {2} hinauf auf {3}, ab etwa {4}, {5} lang. Gegangen, wie geplant, Hände auf den Knien; iss vorher.</translation>
    </message>
    <message>
        <source>The dark hours: {0} to {1}, from {2} to {3}. A small circle of light, cold hands, slower than by day, and that is in the plan.</source>
        <translation>Die dunklen Stunden: {0} bis {1}, von {2} bis {3}. Ein kleiner Lichtkreis, kalte Hände, langsamer als am Tag, und das steht im Plan.</translation>
    </message>
    <message>
        <source>The heat of the day: about {0}, near {1}. Slower by choice, wet head and arms, drink to thirst. Dizzy or confused: stop and get help.</source>
        <translation>Die Hitze des Tages: um {0}, bei {1}. Langsamer mit Absicht, Kopf und Arme nass, trinke nach Durst. Schwindlig oder verwirrt: Halte an und hol Hilfe.</translation>
    </message>
    <message>
        <source>The last third, from {0}, about {1}: it feels easy to nobody. Runners of your finish slow down; it is likely to take {2} of {3}. Slow, steady, yours.</source>
        <translation>Das letzte Drittel, ab {0}, etwa {1}: Niemandem fällt es leicht. Läufer deiner Zielzeit werden langsamer; es braucht wohl {2} von {3}. Langsam, stetig, deins.</translation>
    </message>
    <message>
        <source>I do not want to get up at {0}</source>
        <translation>ich bei {0} nicht aufstehen will</translation>
    </message>
    <message>
        <source>an alarm after {0}, and I walk out with food in hand</source>
        <translation>ein Wecker nach {0}, und ich gehe mit Essen in der Hand hinaus</translation>
    </message>
    <message>
        <source>I am late at {0}</source>
        <translation>ich bei {0} spät dran bin</translation>
    </message>
    <message>
        <source>out again in two minutes, and look at the card, not at the watch</source>
        <translation>in zwei Minuten wieder hinaus und auf die Karte schauen, nicht auf die Uhr</translation>
    </message>
    <message>
        <source>the climb before {0} does not end</source>
        <translation>der Anstieg vor {0} nicht endet</translation>
    </message>
    <message>
        <source>shorter steps, count to a hundred, sip, again</source>
        <translation>kürzere Schritte, bis hundert zählen, ein Schluck, von vorn</translation>
    </message>
    <message>
        <source>the heat gets to me before {0}</source>
        <translation>mir vor {0} die Hitze zusetzt</translation>
    </message>
    <message>
        <source>walk, shade, wet head and arms, drink to thirst; dizzy means stop and get help</source>
        <translation>gehen, Schatten, Kopf und Arme nass, nach Durst trinken; schwindlig heißt anhalten und Hilfe holen</translation>
    </message>
    <message>
        <source>the dark before {0} makes me slow and small</source>
        <translation>mich das Dunkel vor {0} langsam und klein macht</translation>
    </message>
    <message>
        <source>lamp and jacket on before I am cold, eat, look as far as the light goes</source>
        <translation>Lampe und Jacke an, bevor ich friere, essen, so weit schauen, wie das Licht reicht</translation>
    </message>
    <message>
        <source>I fall asleep on my feet before {0}</source>
        <translation>ich vor {0} im Laufen einschlafe</translation>
    </message>
    <message>
        <source>caffeine as planned, sing, and sleep ten minutes at the station</source>
        <translation>Koffein wie geplant, singen und zehn Minuten Schlaf an der Station</translation>
    </message>
    <message>
        <source>I feel sick</source>
        <translation>mir übel ist</translation>
    </message>
    <message>
        <source>walk, cool down, small sips, nothing for half an hour</source>
        <translation>gehen, abkühlen, kleine Schlucke, eine halbe Stunde nichts</translation>
    </message>
    <message>
        <source>a shoe rubs</source>
        <translation>ein Schuh scheuert</translation>
    </message>
    <message>
        <source>stop now and tape it, five minutes save an hour</source>
        <translation>jetzt anhalten und abkleben, fünf Minuten sparen eine Stunde</translation>
    </message>
    <message>
        <source>I want to stop</source>
        <translation>ich aufhören will</translation>
    </message>
    <message>
        <source>eat, dress, walk to the next station and decide there, not here</source>
        <translation>essen, anziehen, zur nächsten Station gehen und dort entscheiden, nicht hier</translation>
    </message>
    <message>
        <source>I am confused, faint, or my chest hurts</source>
        <translation>ich verwirrt bin, mir schwarz wird oder die Brust schmerzt</translation>
    </message>
    <message>
        <source>I stop and call for help, whatever the plan says</source>
        <translation>halte ich an und rufe Hilfe, egal was der Plan sagt</translation>
    </message>
    <message>
        <source>Arrive. Walk what has to be walked, stay well.</source>
        <translation>Ankommen. Gehen, was zu gehen ist, gesund bleiben.</translation>
    </message>
    <message>
        <source>Arrive within {0}. Walk what has to be walked, stay well.</source>
        <translation>Innerhalb von {0} ankommen. Gehen, was gegangen werden muss, gesund bleiben.</translation>
    </message>
    <message>
        <source>Get as far as it is wise. On such a day the limit, {0}, may come first.</source>
        <translation>So weit kommen, wie es klug ist. An so einem Tag kann das Zeitlimit, {0}, eher da sein.</translation>
    </message>
    <message>
        <source>Keep the target, then see what is left.</source>
        <translation>Die Zielzeit halten, dann sehen, was noch geht.</translation>
    </message>
    <message>
        <source>Eat and drink by the plan, lose no time standing.</source>
        <translation>Nach Plan essen und trinken, keine Zeit im Stehen verlieren.</translation>
    </message>
    <message>
        <source>the finish</source>
        <translation>das Ziel</translation>
    </message>
    <message>
        <source>Good day</source>
        <translation>Guter Tag</translation>
    </message>
    <message>
        <source>Fair day</source>
        <translation>Mittlerer Tag</translation>
    </message>
    <message>
        <source>Hard day</source>
        <translation>Schwerer Tag</translation>
    </message>
    <message>
        <source>The closest cutoff: {0}, {1}. On target it is {2} away.</source>
        <translation>Das knappste Zeitlimit: {0}, {1}. Nach Vorgabe bleiben {2}.</translation>
    </message>
    <message>
        <source>The closest cutoff: {0}, {1}. The target misses it by {2}.</source>
        <translation>Das knappste Zeitlimit: {0}, {1}. Die Vorgabe verfehlt es um {2}.</translation>
    </message>
    <message>
        <source>If {0}, then {1}.</source>
        <translation>Wenn {0}, dann {1}.</translation>
    </message>
    <message>
        <source>Write a line: if this happens, I do that.</source>
        <translation>Schreib einen Satz: Wenn das passiert, tue ich das.</translation>
    </message>
    <message>
        <source>{0}, about {1}: {2}</source>
        <translation>{0}, etwa {1}: {2}</translation>
    </message>
</context>
<context>
    <name>HeadForm</name>
    <message>
        <source>To &amp;picture</source>
        <translation>&amp;Vorstellen</translation>
    </message>
    <message>
        <source>&amp;If … then</source>
        <translation>&amp;Wenn … dann</translation>
    </message>
    <message>
        <source>&amp;Worries</source>
        <translation>&amp;Sorgen</translation>
    </message>
    <message>
        <source>&amp;Three kinds of day</source>
        <translation>&amp;Drei Arten von Tag</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Behalten</translation>
    </message>
</context>
<context>
    <name>HeadHand</name>
    <message>
        <source>Move with the arrow keys</source>
        <extracomment>The key the start has among the stations, which none of them can have.</extracomment>
        <translation>Mit den Pfeiltasten bewegen</translation>
    </message>
    <message>
        <source>Unfold {0}</source>
        <translation>{0} auffalten</translation>
    </message>
    <message>
        <source>Fold away {0}</source>
        <translation>{0} wegfalten</translation>
    </message>
    <message>
        <source>stop {0}</source>
        <translation>Halt {0}</translation>
    </message>
    <message>
        <source>It snaps to climbs and round figures; hold Alt to free it.</source>
        <translation>Es rastet an Anstiegen und runden Werten ein; halte Alt, um es zu lösen.</translation>
    </message>
    <message>
        <source>Drag to start earlier or later.</source>
        <translation>Zieh, um früher oder später zu starten.</translation>
    </message>
    <message>
        <source>Drag to stop longer or shorter.</source>
        <translation>Zieh, um länger oder kürzer zu halten.</translation>
    </message>
    <message>
        <source>Drag to move it along the course; its cutoff stays with it.</source>
        <translation>Zieh es die Strecke entlang; sein Zeitlimit bleibt dabei.</translation>
    </message>
    <message>
        <source>{0}, was {1}</source>
        <translation>{0}, war {1}</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>{0} to {1}</source>
        <translation>{0} bis {1}</translation>
    </message>
    <message>
        <source>Start {0}</source>
        <translation>Start {0}</translation>
    </message>
    <message>
        <source>cutoff {0}</source>
        <translation>Zeitlimit {0}</translation>
    </message>
</context>
<context>
    <name>Header</name>
    <message>
        <source>Runway</source>
        <translation>Anlauf</translation>
    </message>
    <message>
        <source>Planned finish</source>
        <translation>Zielzeit im Plan</translation>
    </message>
    <message>
        <source>Tightest cutoff</source>
        <translation>Engstes Zeitlimit</translation>
    </message>
    <message>
        <source>Kept</source>
        <translation>Gehalten</translation>
    </message>
    <message>
        <source>Unnamed race</source>
        <translation>Rennen ohne Namen</translation>
    </message>
    <message>
        <source>climb {0}, drop {1}</source>
        <translation>Aufstieg {0}, Abstieg {1}</translation>
    </message>
    <message>
        <source>no heights: paced as flat</source>
        <translation>keine Höhen: als flach gerechnet</translation>
    </message>
    <message>
        <source>limit {0}</source>
        <translation>Limit {0}</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>{0}, {1} to spare</source>
        <translation>{0}, {1} Polster</translation>
    </message>
    <message>
        <source>{0}, {1} too late</source>
        <translation>{0}, {1} zu spät</translation>
    </message>
    <message>
        <source>{0}, likely {1} – {2}</source>
        <translation>{0}, wohl {1} – {2}</translation>
    </message>
    <message>
        <source>On 8 of 10 days like the one planned you finish between {0} and {1}.</source>
        <translation>An 8 von 10 Tagen wie dem geplanten bist du zwischen {0} und {1} im Ziel.</translation>
    </message>
    <message>
        <source>The cutoff that leaves the least time, with the later of target and forecast</source>
        <translation>Das Zeitlimit, das am wenigsten Zeit lässt, mit dem Späteren von Zielzeit und Prognose</translation>
    </message>
    <message>
        <source>not kept</source>
        <translation>nicht gehalten</translation>
    </message>
    <message>
        <source>{0} full weeks, {1} needed</source>
        <translation>{0} volle Wochen, {1} nötig</translation>
    </message>
</context>
<context>
    <name>HeaderFigure</name>
    <message>
        <source>{0}, was {1}</source>
        <translation>{0}, war {1}</translation>
    </message>
</context>
<context>
    <name>HealthForm</name>
    <message>
        <source>Health, before the first block</source>
        <translation>Gesundheit, vor dem ersten Block</translation>
    </message>
    <message>
        <source>Go through the published questionnaire PAR-Q+ (seven questions; search the web for its name) whole and as it stands. It is not repeated here.</source>
        <translation>Geh den veröffentlichten Fragebogen PAR-Q+ (sieben Fragen; suche den Namen im Web) ganz und so durch, wie er ist. Er wird hier nicht wiederholt.</translation>
    </message>
    <message>
        <source>Does any of this, or any answer there, apply to you? Only yes or no is kept, in this project file. A yes stops nothing; fasted runs and heat days stay off.</source>
        <translation>Trifft etwas davon, oder eine Antwort dort, auf dich zu? Nur Ja oder Nein wird behalten, in dieser Projektdatei. Ein Ja hält nichts auf; nüchterne Läufe und Hitzetage bleiben aus.</translation>
    </message>
    <message>
        <source>When to &amp;stop and get help</source>
        <translation>Wann &amp;aufhören und Hilfe holen</translation>
    </message>
    <message>
        <source>&amp;Yes: I ask a doctor first</source>
        <translation>&amp;Ja: Ich frage zuerst einen Arzt</translation>
    </message>
    <message>
        <source>&amp;No</source>
        <translation>&amp;Nein</translation>
    </message>
    <message>
        <source>&amp;Later</source>
        <translation>&amp;Später</translation>
    </message>
    <message>
        <source>Not answered yet.</source>
        <translation>Noch nicht beantwortet.</translation>
    </message>
    <message>
        <source>Answered so far: no.</source>
        <translation>Bisher beantwortet: nein.</translation>
    </message>
    <message>
        <source>Answered so far: yes, a doctor is asked first.</source>
        <translation>Bisher beantwortet: ja, zuerst wird ein Arzt gefragt.</translation>
    </message>
</context>
<context>
    <name>HeightField</name>
    <message>
        <source>From {0} to {1}</source>
        <translation>Von {0} bis {1}</translation>
    </message>
</context>
<context>
    <name>Help</name>
    <message>
        <source>Where the figure comes from</source>
        <translation>Woher der Wert kommt</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>Caution</source>
        <translation>Warnhinweis</translation>
    </message>
    <message>
        <source>See also</source>
        <translation>Siehe auch</translation>
    </message>
    <message>
        <source>Cards</source>
        <translation>Karten</translation>
    </message>
    <message>
        <source>What you carry, hang up or hand out. Choose cards, sizes and what is on them on the left; the desk shows them as they will be. All that says something is black, so that it reads in grey and under a red lamp. Print at 100 %, not fitted to the page.</source>
        <translation>Was du trägst, aufhängst oder ausgibst. Wähle links Karten, Größen und was darauf steht; der Tisch zeigt sie so, wie sie werden. Alles, was etwas sagt, ist schwarz, damit es in Grau und unter rotem Licht lesbar ist. Drucke mit 100 %, nicht an die Seite angepasst.</translation>
    </message>
    <message>
        <source>print pdf preview paper</source>
        <translation>drucken pdf vorschau papier</translation>
    </message>
    <message>
        <source>Size of a card</source>
        <translation>Größe einer Karte</translation>
    </message>
    <message>
        <source>The finished size in millimetres, flat where it is folded. Print grows and shrinks with it within what can be read; what does not fit goes on to a second page, and the desk says so. Nothing is ever cut.</source>
        <translation>Die fertige Größe in Millimetern, flach, wo sie gefaltet wird. Die Schrift wächst und schrumpft mit ihr, soweit sie lesbar bleibt; was nicht passt, kommt auf eine zweite Seite, und der Tisch sagt es. Nie wird etwas abgeschnitten.</translation>
    </message>
    <message>
        <source>Small letters are at least 1.9 mm high on the wrist and 1.5 mm elsewhere.</source>
        <translation>Kleinbuchstaben sind am Handgelenk mindestens 1,9 mm hoch, sonst 1,5 mm.</translation>
    </message>
    <message>
        <source>A6 A5 A4 letter width height mm</source>
        <translation>A6 A5 A4 Letter breite höhe mm</translation>
    </message>
    <message>
        <source>Pace card</source>
        <translation>Tempokarte</translation>
    </message>
    <message>
        <source>One row to each place: how far, climb and drop since the last, pace, when you are there on plan, your stop, time in hand, when you would be there half an hour late, the last arrival that still makes every cutoff, and the cutoff itself.</source>
        <translation>Eine Zeile je Ort: wie weit, Aufstieg und Abstieg seit dem letzten, Tempo, wann du nach Plan dort bist, dein Halt, Zeitpolster, wann du mit einer halben Stunde Verspätung dort wärst, die späteste Ankunft, die noch jedes Zeitlimit schafft, und das Zeitlimit selbst.</translation>
    </message>
    <message>
        <source>print on plan</source>
        <translation>drucken nach plan</translation>
    </message>
    <message>
        <source>30 min late</source>
        <translation>30 min später</translation>
    </message>
    <message>
        <source>The clock if you come through half an hour behind plan. Two columns beside each other are easier to read on a bad day than a sum.</source>
        <translation>Die Uhrzeit, wenn du eine halbe Stunde hinter dem Plan durchkommst. Zwei Spalten nebeneinander lesen sich an einem schlechten Tag leichter als eine Rechnung.</translation>
    </message>
    <message>
        <source>Arrival on plan plus 30 minutes.</source>
        <translation>Ankunft nach Plan plus 30 Minuten.</translation>
    </message>
    <message>
        <source>half an hour behind column</source>
        <translation>spalte halbe stunde zurück</translation>
    </message>
    <message>
        <source>Last arrival</source>
        <translation>Späteste Ankunft</translation>
    </message>
    <message>
        <source>The latest you may arrive and still make this and every later cutoff at planned speed. Later than that, only going faster helps.</source>
        <translation>Das Späteste, zu dem du ankommen darfst und mit geplantem Tempo dieses und jedes weitere Zeitlimit schaffst. Bist du später, hilft nur schneller werden.</translation>
    </message>
    <message>
        <source>Arrival on plan plus time in hand, rounded down.</source>
        <translation>Ankunft nach Plan plus Zeitpolster, abgerundet.</translation>
    </message>
    <message>
        <source>latest column</source>
        <translation>spalte spätestens</translation>
    </message>
    <message>
        <source>Fuel card</source>
        <translation>Verpflegungskarte</translation>
    </message>
    <message>
        <source>One row to each leg between aid stations: how long it takes, what to eat and drink on it, carbohydrate in all and per hour, fluid, and whether a bag or your crew waits at its end. Items with caffeine carry the clock time they are meant for.</source>
        <translation>Eine Zeile je Teilstück zwischen Verpflegungsstellen: wie lange es dauert, was du darauf isst und trinkst, Kohlenhydrate insgesamt und pro Stunde, Flüssigkeit und ob an seinem Ende ein Beutel oder deine Betreuung wartet. Posten mit Koffein tragen die Uhrzeit, für die sie gedacht sind.</translation>
    </message>
    <message>
        <source>Why it says to drink to thirst.</source>
        <translation>Warum dort steht, nach Durst zu trinken.</translation>
    </message>
    <message>
        <source>print leg food</source>
        <translation>drucken teilstück essen</translation>
    </message>
    <message>
        <source>Crew sheet</source>
        <translation>Betreuungsblatt</translation>
    </message>
    <message>
        <source>What the crew needs at every station they may come to: how to get there, when you are likely to come, what to hand over and what to ask, the way out if you stop, and who drives home. Fill in the rest under Edit, Crew and lists.</source>
        <translation>Was die Betreuung an jeder Station braucht, an die sie darf: wie man hinkommt, wann du wohl kommst, was zu geben und zu fragen ist, der Weg hinaus, wenn du aufhörst, und wer heimfährt. Den Rest trägst du unter Bearbeiten, Betreuung und Listen ein.</translation>
    </message>
    <message>
        <source>Whoever was up all night does not drive. The red flags on the sheet are reasons to stop you.</source>
        <translation>Wer die ganze Nacht wach war, fährt nicht. Die Warnzeichen auf dem Blatt sind Gründe, dich aufzuhalten.</translation>
    </message>
    <message>
        <source>print crew support station driver</source>
        <translation>drucken betreuung hilfe station fahrer</translation>
    </message>
    <message>
        <source>No news is good news</source>
        <translation>Keine Nachricht ist gute Nachricht</translation>
    </message>
    <message>
        <source>Two times for those who wait. Before the first, not having seen you says nothing. After the second they ask the station whether you have been through.</source>
        <translation>Zwei Zeiten für alle, die warten. Vor der ersten heißt es nichts, dich nicht gesehen zu haben. Nach der zweiten fragen sie die Station, ob du durch bist.</translation>
    </message>
    <message>
        <source>The first is the end of your arrival window, which one day in ten runs past. The second is as much later again as from the middle of the window to its end, half an hour at least, and no later than a cutoff in between.</source>
        <translation>Die erste ist das Ende deines Ankunftsfensters, das an einem von zehn Tagen überschritten wird. Die zweite liegt noch einmal so viel später wie von der Mitte des Fensters bis zu seinem Ende, mindestens eine halbe Stunde, und nicht später als ein Zeitlimit dazwischen.</translation>
    </message>
    <message>
        <source>If someone is known to be hurt or lost, call the race emergency line at once.</source>
        <translation>Ist bekannt, dass jemand verletzt ist oder sich verlaufen hat, ruf sofort die Notrufnummer des Rennens an.</translation>
    </message>
    <message>
        <source>worry late search missing</source>
        <translation>sorge spät suche vermisst</translation>
    </message>
    <message>
        <source>Bag labels</source>
        <translation>Beutelschilder</translation>
    </message>
    <message>
        <source>One label for each drop bag: the station in large letters, your name and number, what is inside and what to do there. Foods are those of the plan up to the next bag.</source>
        <translation>Ein Etikett je Dropbag: die Station in großen Buchstaben, dein Name und deine Nummer, was darin ist und was dort zu tun ist. Lebensmittel sind die des Plans bis zum nächsten Beutel.</translation>
    </message>
    <message>
        <source>print drop bag contents</source>
        <translation>drucken dropbag inhalt</translation>
    </message>
    <message>
        <source>To buy and to pack</source>
        <translation>Kaufen und packen</translation>
    </message>
    <message>
        <source>Boxes to tick: the kit the race rules ask for, what you pack besides, what goes into each bag, and what to buy. Foods are counted over the whole race plan.</source>
        <translation>Kästchen zum Abhaken: die Ausrüstung, die die Rennregeln verlangen, was du sonst packst, was in jeden Beutel kommt und was zu kaufen ist. Lebensmittel werden über den ganzen Rennplan gezählt.</translation>
    </message>
    <message>
        <source>Read the race rules yourself: kit lists change, and a missing piece can end a race.</source>
        <translation>Lies die Rennregeln selbst: Ausrüstungslisten ändern sich, und ein fehlendes Teil kann das Rennen beenden.</translation>
    </message>
    <message>
        <source>print list mandatory kit shop</source>
        <translation>drucken Liste Pflichtausrüstung einkaufen</translation>
    </message>
    <message>
        <source>Hard stretches</source>
        <translation>Harte Strecken</translation>
    </message>
    <message>
        <source>Your own words for when it gets hard, put down while you can think: what may come, what you will do then, and short words to yourself.</source>
        <translation>Deine eigenen Worte für schwere Stunden, aufgeschrieben, solange du klar denkst: was kommen kann, was du dann tust, und kurze Worte an dich selbst.</translation>
    </message>
    <message>
        <source>If-then plans are carried out more often than good intentions.</source>
        <translation>Wenn-dann-Pläne werden öfter ausgeführt als gute Vorsätze.</translation>
    </message>
    <message>
        <source>if then mental cues low point print</source>
        <translation>wenn dann mental Stichwort Tiefpunkt drucken</translation>
    </message>
    <message>
        <source>Who I am</source>
        <translation>Wer ich bin</translation>
    </message>
    <message>
        <source>For a stranger who finds you: your name, whom to call, the race emergency line, what a doctor should know, and how you get away from each station if you stop there.</source>
        <translation>Für Fremde, die dich finden: dein Name, wen sie anrufen sollen, die Notrufnummer des Rennens, was ein Arzt wissen sollte und wie du von jeder Station wegkommst, wenn du dort aufhörst.</translation>
    </message>
    <message>
        <source>It stays on your computer and on the paper you print. Print it only if you want others to read it.</source>
        <translation>Es bleibt auf deinem Rechner und auf dem Papier, das du druckst. Drucke es nur, wenn andere es lesen sollen.</translation>
    </message>
    <message>
        <source>emergency contact medical identity print</source>
        <translation>Notfall Kontakt medizinisch Ausweis drucken</translation>
    </message>
    <message>
        <source>Wall plan</source>
        <translation>Wandplan</translation>
    </message>
    <message>
        <source>The whole build-up on one large sheet: a row to each week counted down to the race, a box to each session, hard days with a heavy edge, room to tick. Where the printer takes smaller paper it comes in parts to be glued, each a centimetre over the last.</source>
        <translation>Der ganze Aufbau auf einem großen Blatt: eine Zeile je Woche, bis zum Rennen heruntergezählt, ein Kästchen je Einheit, harte Tage mit dickem Rand, Platz zum Abhaken. Nimmt der Drucker nur kleineres Papier, kommt es in Teilen zum Kleben, die sich je einen Zentimeter überlappen.</translation>
    </message>
    <message>
        <source>print poster block</source>
        <translation>drucken Poster Block Aufbau</translation>
    </message>
    <message>
        <source>Week sheets</source>
        <translation>Wochenblätter</translation>
    </message>
    <message>
        <source>A sheet to each week from this one on: what is planned, and boxes and lines for what was done. Type it back in from the Build-up menu, in the same order.</source>
        <translation>Ein Blatt je Woche ab dieser: was geplant ist, dazu Kästchen und Linien für das, was gelaufen wurde. Tippe es über das Menü Aufbau wieder ein, in derselben Reihenfolge.</translation>
    </message>
    <message>
        <source>print log diary</source>
        <translation>drucken Protokoll Tagebuch</translation>
    </message>
    <message>
        <source>The last ten days</source>
        <translation>Die letzten zehn Tage</translation>
    </message>
    <message>
        <source>The countdown of the table Before the start on paper, a box to each line: sessions of the taper, sleep, food, kit, feet, bags, travel, the morning, and your own lines. A second sheet has the days after: red flags, rest, when to run again.</source>
        <translation>Der Countdown der Tabelle Vor dem Start auf Papier, ein Kästchen je Zeile: Einheiten des Taperings, Schlaf, Essen, Ausrüstung, Füße, Beutel, Anreise, der Morgen und deine eigenen Zeilen. Ein zweites Blatt hat die Tage danach: Warnzeichen, Ruhe, wann wieder gelaufen wird.</translation>
    </message>
    <message>
        <source>race week countdown checklist print</source>
        <translation>Rennwoche Countdown Checkliste drucken</translation>
    </message>
    <message>
        <source>Typing a week back in</source>
        <translation>Eine Woche eintippen</translation>
    </message>
    <message>
        <source>One row to each session of a week in the order of the week sheet. Enter goes to the next field, and at the end sends the week as one step that can be undone. A field left empty is taken as planned; a row nobody touched stays as it is.</source>
        <translation>Eine Zeile je Einheit einer Woche, in der Reihenfolge des Wochenblatts. Enter geht zum nächsten Feld und übergibt am Ende die Woche als einen Schritt, der sich rückgängig machen lässt. Ein leeres Feld gilt wie geplant; eine unberührte Zeile bleibt, wie sie ist.</translation>
    </message>
    <message>
        <source>log done enter keyboard</source>
        <translation>Protokoll erledigt Enter Tastatur</translation>
    </message>
    <message>
        <source>Crew and lists</source>
        <translation>Betreuung und Listen</translation>
    </message>
    <message>
        <source>Everything beside running: who you are, the crew and who drives home, what happens at each station, the kit the rules ask for, lists, and your own words for hard stretches. It stands on the cards and changes no figure of the plan.</source>
        <translation>Alles neben dem Laufen: wer du bist, die Betreuung und wer heimfährt, was an jeder Station geschieht, die verlangte Ausrüstung, Listen und deine eigenen Worte für schwere Strecken. Es steht auf den Karten und ändert keine Zahl des Plans.</translation>
    </message>
    <message>
        <source>form contact emergency kit bag</source>
        <translation>Formular Kontakt Notfall Ausrüstung Beutel</translation>
    </message>
    <message>
        <source>What is on a card</source>
        <translation>Was auf einer Karte steht</translation>
    </message>
    <message>
        <source>How often it is printed, in which units, in which language numbers and days are written, and which columns or lines stand on it. What you leave out makes room for larger print.</source>
        <translation>Wie oft sie gedruckt wird, in welchen Einheiten, in welcher Sprache Zahlen und Tage stehen und welche Spalten oder Zeilen darauf sind. Was du weglässt, macht Platz für größere Schrift.</translation>
    </message>
    <message>
        <source>copies units language columns</source>
        <translation>Exemplare Einheiten Sprache Spalten</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>Each card can be a page of its own, or several lie on one sheet with lines to cut along. With backs behind fronts the second page of a card lies behind its first; turn the paper on its long edge.</source>
        <translation>Jede Karte kann eine eigene Seite sein, oder mehrere liegen auf einem Blatt mit Schnittlinien. Bei Rückseiten hinter Vorderseiten liegt die zweite Seite einer Karte hinter der ersten; wende das Papier an der langen Kante.</translation>
    </message>
    <message>
        <source>several sheet duplex both sides cut</source>
        <translation>mehrere Blatt Duplex beidseitig schneiden</translation>
    </message>
    <message>
        <source>Light on the cards</source>
        <translation>Licht auf den Karten</translation>
    </message>
    <message>
        <source>Shows the cards by day, as a grey printer gives them, or as a red lamp shows them. Only the picture on the screen changes.</source>
        <translation>Zeigt die Karten bei Tag, wie ein Graudrucker sie ausgibt, oder wie sie unter einer roten Lampe aussehen. Nur das Bild auf dem Schirm ändert sich.</translation>
    </message>
    <message>
        <source>red lamp night grey preview</source>
        <translation>rote Lampe Nacht grau Vorschau</translation>
    </message>
    <message>
        <source>True size</source>
        <translation>Wahre Größe</translation>
    </message>
    <message>
        <source>Shows cards on the screen as large as they are printed. Screens often say wrongly how large they are: lay a bank card on the outline once and match it.</source>
        <translation>Zeigt Karten auf dem Schirm so groß wie gedruckt. Bildschirme geben ihre Größe oft falsch an: Lege einmal eine Bankkarte auf den Umriss und gleiche ihn an.</translation>
    </message>
    <message>
        <source>A bank card measures 85.60 by 53.98 mm. What you set is kept for each screen.</source>
        <translation>Eine Bankkarte misst 85,60 mal 53,98 mm. Was du einstellst, wird für jeden Bildschirm behalten.</translation>
    </message>
    <message>
        <source>calibrate scale bank card millimetre</source>
        <translation>kalibrieren Maßstab Bankkarte Millimeter</translation>
    </message>
    <message>
        <source>A card for a lock screen</source>
        <translation>Eine Karte für den Sperrbildschirm</translation>
    </message>
    <message>
        <source>A card as a picture of exactly the pixels of your telephone, with room for its clock. White on black spares your eyes and the battery at night.</source>
        <translation>Eine Karte als Bild mit genau den Pixeln deines Telefons und Platz für dessen Uhr. Weiß auf Schwarz schont nachts Augen und Akku.</translation>
    </message>
    <message>
        <source>png image phone wallpaper</source>
        <translation>png Bild Telefon Hintergrundbild</translation>
    </message>
    <message>
        <source>What was mended in the file</source>
        <translation>Was in der Datei behoben wurde</translation>
    </message>
    <message>
        <source>Files come broken in known ways: tracks in pieces or out of order, the same line twice, points far off, heights missing, jumping or in feet. What was done about it is said in one line each. A line that can be undone is: the file is read again and that is left as it was. The file itself is never changed.</source>
        <translation>Dateien kommen mit bekannten Fehlern: Tracks in Stücken oder in falscher Reihenfolge, dieselbe Linie zweimal, weit entfernte Punkte, Höhen, die fehlen, springen oder in Fuß stehen. Was getan wurde, steht in je einer Zeile. Manche Zeile lässt sich rückgängig machen: Dann wird die Datei neu gelesen und dies so gelassen, wie es war. Die Datei selbst wird nie geändert.</translation>
    </message>
    <message>
        <source>A way of up to 2 km between two pieces is run straight, a longer one is missing and counts for nothing. A point is far off where the line jumps 500 m or more to it and back. A height is a spike where it jumps by more than 30 m, steeper than 45 degrees, and back within 500 m. Heights are taken for feet where 8 % of the way would be steeper than 45 %, where half the course would lie above 5,900 m, or where they are whole metres only once taken as feet.</source>
        <translation>Bis zu 2 km zwischen zwei Stücken werden gerade gelaufen; ein längerer Weg fehlt und zählt nicht. Ein Punkt liegt zu weit weg, wenn die Linie 500 m oder mehr zu ihm hin und zurück springt. Eine Höhe ist ein Ausreißer, wenn sie um mehr als 30 m springt, steiler als 45 Grad, und binnen 500 m zurück. Höhen gelten als Fuß, wenn 8 % des Wegs steiler als 45 % wären, wenn die halbe Strecke über 5.900 m läge oder wenn sie erst als Fuß gelesen ganze Meter ergeben.</translation>
    </message>
    <message>
        <source>Gentle ground in feet looks like hilly ground in metres and is not noticed. Compare the climb with what the race says.</source>
        <translation>Sanftes Gelände in Fuß sieht aus wie hügeliges in Metern und fällt nicht auf. Vergleiche den Aufstieg mit dem, was das Rennen angibt.</translation>
    </message>
    <message>
        <source>repair gap spike feet filler broken import GPX undo</source>
        <translation>reparieren Lücke Ausreißer Fuß Füllwert kaputt Import GPX rückgängig</translation>
    </message>
    <message>
        <source>Which line of the file</source>
        <translation>Welche Linie der Datei</translation>
    </message>
    <message>
        <source>A file may hold several tracks and routes. The most likely reading is taken: tracks rather than routes, joined in order, and a line that goes over the ground of another one only once. Any single one, or all joined, can be chosen instead.</source>
        <translation>Eine Datei kann mehrere Tracks und Routen enthalten. Die wahrscheinlichste Lesart wird genommen: Tracks vor Routen, der Reihe nach verbunden, und eine Linie, die über denselben Weg wie eine andere führt, nur einmal. Du kannst stattdessen jede einzelne wählen oder alle verbunden.</translation>
    </message>
    <message>
        <source>A line is there twice if 95 % of it lies within 75 m of another one and goes the same way. Tracks are put in another order than the file&apos;s only if each then begins within 2 km of where the one before ends.</source>
        <translation>Eine Linie ist doppelt, wenn 95 % von ihr binnen 75 m einer anderen liegen und sie in dieselbe Richtung geht. Tracks werden nur dann anders als in der Datei gereiht, wenn dann jeder binnen 2 km vom Ende des vorigen beginnt.</translation>
    </message>
    <message>
        <source>track route several choose join</source>
        <translation>Track Route mehrere wählen verbinden</translation>
    </message>
    <message>
        <source>Changing the line</source>
        <translation>Die Linie ändern</translation>
    </message>
    <message>
        <source>A course can be trimmed at both ends, turned round, run in laps, gone out and back, or continued by another leg. Stations, surfaces, pins and sections go with their ground; stations come by again in every lap.</source>
        <translation>Eine Strecke lässt sich an beiden Enden kürzen, umdrehen, in Runden laufen, hin und zurück führen oder um ein weiteres Teilstück verlängern. Stationen, Untergründe, Festpunkte und Abschnitte gehen mit ihrem Gelände mit; Stationen kommen in jeder Runde wieder.</translation>
    </message>
    <message>
        <source>Cutoffs stay when you trim, for they are times of the race. They are dropped when you turn the course round, and in laps, on the way back and on another leg: nobody knows them but the race. A target you have fixed stays only where its section is what it was.</source>
        <translation>Zeitlimits bleiben beim Kürzen, denn sie sind Zeiten des Rennens. Sie entfallen beim Umdrehen, in Runden, auf dem Rückweg und auf einem weiteren Teilstück: Die kennt nur das Rennen. Eine fixierte Vorgabe bleibt nur, wo ihr Abschnitt derselbe ist.</translation>
    </message>
    <message>
        <source>Enter the cutoffs of later laps yourself; without them nothing warns you.</source>
        <translation>Trage die Zeitlimits späterer Runden selbst ein; ohne sie warnt dich nichts.</translation>
    </message>
    <message>
        <source>trim reverse laps out and back join leg</source>
        <translation>kürzen umdrehen Runden hin und zurück verbinden Teilstück</translation>
    </message>
    <message>
        <source>Official distance</source>
        <translation>Offizielle Distanz</translation>
    </message>
    <message>
        <source>How long the race says the course is. With it the line is stretched to that length, evenly, and all places on it with it; both figures are shown. Without it the line counts as measured.</source>
        <translation>Wie lang die Strecke laut Rennen ist. Damit wird die Linie gleichmäßig auf diese Länge gestreckt, und alle Orte mit ihr; beide Zahlen werden gezeigt. Ohne sie gilt die Linie wie gemessen.</translation>
    </message>
    <message>
        <source>One factor on all distances between two pins. More than threefold is taken for a slip of the keys.</source>
        <translation>Ein Faktor für alle Distanzen zwischen zwei Festpunkten. Mehr als das Dreifache gilt als Tippfehler.</translation>
    </message>
    <message>
        <source>length scale stretch announced</source>
        <translation>Länge Maßstab strecken angegeben</translation>
    </message>
    <message>
        <source>Official climb and drop</source>
        <translation>Offizieller Auf- und Abstieg</translation>
    </message>
    <message>
        <source>What the race says about metres up and down. With it the heights are scaled so that they come to these figures, slopes get steeper or gentler by as much, and section figures add up to them.</source>
        <translation>Was das Rennen an Höhenmetern auf und ab angibt. Damit werden die Höhen so skaliert, dass sie diese Zahlen ergeben; Steigungen werden um so viel steiler oder sanfter, und die Zahlen der Abschnitte ergeben sie in Summe.</translation>
    </message>
    <message>
        <source>All that counts as climb is multiplied by one factor, all that counts as drop by another; waves too small to count stay as they are. If you give one figure alone, the other follows so that start and finish keep their heights.</source>
        <translation>Alles, was als Aufstieg zählt, wird mit einem Faktor malgenommen, alles, was als Abstieg zählt, mit einem anderen; Wellen, die zu klein zum Zählen sind, bleiben. Gibst du nur eine Zahl an, folgt die andere so, dass Start und Ziel ihre Höhe behalten.</translation>
    </message>
    <message>
        <source>Climb hangs on how heights are smoothed: no two methods agree.</source>
        <translation>Der Aufstieg hängt davon ab, wie Höhen geglättet werden: Keine zwei Verfahren stimmen überein.</translation>
    </message>
    <message>
        <source>How the heights are scaled.</source>
        <translation>Wie die Höhen skaliert werden.</translation>
    </message>
    <message>
        <source>ascent descent elevation gain announced scale</source>
        <translation>Aufstieg Abstieg Höhenmeter angegeben skalieren</translation>
    </message>
    <message>
        <source>Pinned station</source>
        <translation>Feste Station</translation>
    </message>
    <message>
        <source>A station whose distance you take from the handbook while it stays where it is on the ground. The line before and after it is stretched to fit, so that all stations stand at the handbook&apos;s distances. Moving a pinned station takes its pin away.</source>
        <translation>Eine Station, deren Distanz du aus dem Handbuch nimmst, während sie im Gelände bleibt, wo sie ist. Die Linie davor und danach wird passend gestreckt, sodass alle Stationen bei den Distanzen des Handbuchs stehen. Verschiebst du eine feste Station, verliert sie ihren Festpunkt.</translation>
    </message>
    <message>
        <source>Between two pins distances are multiplied by one factor.</source>
        <translation>Zwischen zwei Festpunkten werden Distanzen mit einem Faktor malgenommen.</translation>
    </message>
    <message>
        <source>pin handbook distance place</source>
        <translation>Festpunkt Handbuch Distanz Ort</translation>
    </message>
    <message>
        <source>What is underfoot</source>
        <translation>Was unter den Füßen ist</translation>
    </message>
    <message>
        <source>Paint a stretch as road, gravel, smooth trail, grass, technical trail, rock, sand or snow. What you do not know stays unknown and counts as firm ground.</source>
        <translation>Markiere ein Stück als Straße, Schotter, glatten Trail, Gras, technischen Trail, Fels, Sand oder Schnee. Was du nicht weißt, bleibt unbekannt und zählt als fester Boden.</translation>
    </message>
    <message>
        <source>Each surface has a cost (energy over that on firm ground) and a factor on speed downhill. Usual costs: gravel 1.02, smooth trail 1.05, grass 1.08, technical trail 1.15, rock 1.40, snow 1.45, sand 1.60. You can set both for this course.</source>
        <translation>Jeder Untergrund hat Kosten (Energie gegenüber festem Boden) und einen Faktor für das Tempo bergab. Übliche Kosten: Schotter 1,02, glatter Trail 1,05, Gras 1,08, technischer Trail 1,15, Fels 1,40, Schnee 1,45, Sand 1,60. Beides kannst du für diese Strecke setzen.</translation>
    </message>
    <message>
        <source>Running on dry sand: 1.6.</source>
        <translation>Laufen auf trockenem Sand: 1,6.</translation>
    </message>
    <message>
        <source>An uneven treadmill: 1.05.</source>
        <translation>Ein unebenes Laufband: 1,05.</translation>
    </message>
    <message>
        <source>Runners differ most downhill. No factor is given.</source>
        <translation>Läufer unterscheiden sich am meisten bergab. Ein Faktor wird nicht genannt.</translation>
    </message>
    <message>
        <source>All other factors.</source>
        <translation>Alle anderen Faktoren.</translation>
    </message>
    <message>
        <source>Mud, wet rock or a path in the dark can cost far more than any of these.</source>
        <translation>Schlamm, nasser Fels oder ein Pfad im Dunkeln können weit mehr kosten als jeder dieser Werte.</translation>
    </message>
    <message>
        <source>terrain road gravel trail grass rock sand snow factor</source>
        <translation>Gelände Straße Schotter Trail Gras Fels Sand Schnee Faktor</translation>
    </message>
    <message>
        <source>Cutting the course into sections</source>
        <translation>Die Strecke in Abschnitte teilen</translation>
    </message>
    <message>
        <source>By aid stations, by climbs and descents, every so many kilometres, or by hand: split a section at a place, join it with the next, give it a name. A section always ends where there is a cutoff.</source>
        <translation>Nach Verpflegungsstellen, nach Anstiegen und Abstiegen, alle so und so viele Kilometer oder von Hand: Teile einen Abschnitt an einem Ort, verbinde ihn mit dem nächsten, gib ihm einen Namen. Ein Abschnitt endet immer dort, wo ein Zeitlimit ist.</translation>
    </message>
    <message>
        <source>A section that stays what it was keeps its target, name and words. Words for when it gets hard are never lost: they go to the section with the middle of the old one.</source>
        <translation>Ein Abschnitt, der bleibt, was er war, behält Vorgabe, Namen und Worte. Worte für schwere Stunden gehen nie verloren: Sie gehen an den Abschnitt, in dem die Mitte des alten liegt.</translation>
    </message>
    <message>
        <source>split merge join rename divide leg</source>
        <translation>teilen zusammenlegen verbinden umbenennen trennen Teilstück</translation>
    </message>
    <message>
        <source>Plan view of the course</source>
        <translation>Strecke von oben</translation>
    </message>
    <message>
        <source>The line from above, north up, in the colours of the profile: ochre climbs, sky descents. Arrows say which way; a lap or a way back runs beside the way before. Dashes along the line are surfaces. The place is the one in the lanes; arrow keys walk it, Enter or a click selects.</source>
        <translation>Die Linie von oben, Norden oben, in den Farben des Profils: Anstiege ocker, Abstiege himmelblau. Pfeile zeigen die Richtung; eine Runde oder ein Rückweg läuft neben dem Weg davor. Striche entlang der Linie sind Untergründe. Der Ort ist der in den Spuren; Pfeiltasten wandern ihn ab, Enter oder ein Klick wählt aus.</translation>
    </message>
    <message>
        <source>On the plane that touches the ellipsoid of the Earth in the middle of the line.</source>
        <translation>Auf der Ebene, die das Ellipsoid der Erde in der Mitte der Linie berührt.</translation>
    </message>
    <message>
        <source>map track route from above laps north</source>
        <translation>Landkarte Track Route von oben Runden Norden</translation>
    </message>
    <message>
        <source>Climbs and descents</source>
        <translation>Anstiege und Abstiege</translation>
    </message>
    <message>
        <source>The long slopes of the course, found in its profile and numbered in course order, with length and height. Small ups and downs within one belong to it.</source>
        <translation>Die langen Hänge der Strecke, im Profil gefunden und der Reihe nach nummeriert, mit Länge und Höhe. Kleines Auf und Ab darin gehört dazu.</translation>
    </message>
    <message>
        <source>The profile is parted where it goes back by a 25th of the climb of the course, at least 30 m and at most 150 m. Of each part counts what rises more than 2 % of its way; 2 km that rise less than 1 % part two climbs. Level ground of less than 1 km between two slopes goes to them.</source>
        <translation>Das Profil wird geteilt, wo es um ein 25stel des Aufstiegs der Strecke zurückgeht, mindestens 30 m und höchstens 150 m. Von jedem Teil zählt, was mehr als 2 % seines Wegs steigt; 2 km, die weniger als 1 % steigen, trennen zwei Anstiege. Ebenes unter 1 km zwischen zwei Hängen geht an diese.</translation>
    </message>
    <message>
        <source>Racing by climbs.</source>
        <translation>Nach Anstiegen laufen.</translation>
    </message>
    <message>
        <source>The limits.</source>
        <translation>Die Grenzen.</translation>
    </message>
    <message>
        <source>hill slope ascent descent steepest</source>
        <translation>Hügel Hang Anstieg Abstieg steilste</translation>
    </message>
    <message>
        <source>A stop to sleep</source>
        <translation>Ein Halt zum Schlafen</translation>
    </message>
    <message>
        <source>A planned stop can be to pass, to eat, to change, or to sleep. Time asleep is part of the stop: add what it takes to lie down, to wake up and to get going again.</source>
        <translation>Ein geplanter Halt kann zum Durchlaufen, Essen, Umziehen oder Schlafen sein. Die Schlafzeit ist Teil des Halts: Rechne dazu, was Hinlegen, Aufwachen und Loskommen brauchen.</translation>
    </message>
    <message>
        <source>Who sees things that are not there, cannot walk straight or falls asleep walking must stop where people are, whatever the plan says. Tell somebody to wake you. Do not drive home without having slept.</source>
        <translation>Wer Dinge sieht, die nicht da sind, nicht gerade gehen kann oder im Gehen einschläft, muss dort anhalten, wo Menschen sind, was auch im Plan steht. Bitte jemanden, dich zu wecken. Fahr nicht heim, ohne geschlafen zu haben.</translation>
    </message>
    <message>
        <source>nap rest night tired</source>
        <translation>Nickerchen Pause Nacht müde</translation>
    </message>
    <message>
        <source>Fuel</source>
        <translation>Verpflegung</translation>
    </message>
    <message>
        <source>What you eat and drink along the race, each item a token on the clock: drag it to another time. The line above shows carbohydrate per hour, the band what you asked for. Amounts are a starting point to practise in training.</source>
        <translation>Was du im Rennen isst und trinkst, jedes Teil eine Marke auf der Uhr: Zieh sie auf eine andere Zeit. Die Linie darüber zeigt Kohlenhydrate je Stunde, das Band, was du verlangt hast. Die Mengen sind ein Anfang zum Üben im Training.</translation>
    </message>
    <message>
        <source>The line is the carbohydrate taken in the hour around each moment; the band is 10 % below and above the rate you set.</source>
        <translation>Die Linie sind die Kohlenhydrate in der Stunde um jeden Zeitpunkt; das Band liegt 10 % unter und über der gesetzten Menge je Stunde.</translation>
    </message>
    <message>
        <source>The hour the line looks over, and the 10 %.</source>
        <translation>Die Stunde, die die Linie überblickt, und die 10 %.</translation>
    </message>
    <message>
        <source>food nutrition eating lane tokens band</source>
        <translation>Essen Ernährung Verpflegung Spur Marken Band</translation>
    </message>
    <message>
        <source>Carbs per hour</source>
        <translation>KH je Stunde</translation>
    </message>
    <message>
        <source>How much carbohydrate you take in an hour of racing, on average. The first 30 g/h matter most; more helps only if your gut takes it. Most runners of long races manage 25 to 60.</source>
        <translation>Wie viele Kohlenhydrate du im Schnitt in einer Rennstunde nimmst. Die ersten 30 g/h zählen am meisten; mehr hilft nur, wenn dein Magen es annimmt. Die meisten schaffen in langen Rennen 25 bis 60.</translation>
    </message>
    <message>
        <source>All carbohydrate of the items over the hours of the race, or over those of one leg. Fibre is not counted.</source>
        <translation>Alle Kohlenhydrate der Teile durch die Stunden des Rennens oder durch die eines Teilstücks. Ballaststoffe zählen nicht.</translation>
    </message>
    <message>
        <source>Up to 60 g/h of any sugar, up to 90 of glucose with fructose; the same for light and heavy people.</source>
        <translation>Bis 60 g/h von jedem Zucker, bis 90 von Glukose mit Fruktose; für leichte und schwere Menschen gleich.</translation>
    </message>
    <message>
        <source>30 to 50 g/h in ultramarathons run in one go.</source>
        <translation>30 bis 50 g/h in Ultramarathons, die am Stück gelaufen werden.</translation>
    </message>
    <message>
        <source>51 cyclists gained 2.0 % at 19 g/h, 3.0 at 31, 4.0 at 48 and 4.7 at 78.</source>
        <translation>51 Radfahrer gewannen 2,0 % bei 19 g/h, 3,0 bei 31, 4,0 bei 48 und 4,7 bei 78.</translation>
    </message>
    <message>
        <source>18 amateurs took 33 g/h (spread 12) over 24 hours.</source>
        <translation>18 Amateure nahmen 33 g/h (Streuung 12) über 24 Stunden.</translation>
    </message>
    <message>
        <source>Figures above 60 g/h were studied for three hours and need practice. Feel sick or bloated: slow down and take less.</source>
        <translation>Werte über 60 g/h wurden über drei Stunden untersucht und brauchen Übung. Übel oder aufgebläht: Lauf langsamer und nimm weniger.</translation>
    </message>
    <message>
        <source>carbohydrate grams rate energy gels total</source>
        <translation>Kohlenhydrate Gramm je Stunde Energie Gels Summe</translation>
    </message>
    <message>
        <source>Carbs in all</source>
        <translation>KH gesamt</translation>
    </message>
    <message>
        <source>All carbohydrate of the items up to the finish, in grams. What lies beyond the finish is not counted.</source>
        <translation>Alle Kohlenhydrate der Teile bis zum Ziel, in Gramm. Was hinter dem Ziel liegt, zählt nicht.</translation>
    </message>
    <message>
        <source>Servings times carbohydrate per serving, summed.</source>
        <translation>Portionen mal Kohlenhydrate je Portion, zusammengezählt.</translation>
    </message>
    <message>
        <source>total grams carbohydrate</source>
        <translation>Summe Gramm Kohlenhydrate</translation>
    </message>
    <message>
        <source>Fluid</source>
        <translation>Flüssigkeit</translation>
    </message>
    <message>
        <source>What you have with you to drink, not what you must drink. Drink to thirst. Water in gels and food counts in a little.</source>
        <translation>Was du zum Trinken dabeihast, nicht was du trinken musst. Trink nach Durst. Wasser in Gels und Essen zählt ein wenig mit.</translation>
    </message>
    <message>
        <source>Sum of the fluid in the items. The check takes the most within two hours: up to 800 mL an hour holds, up to 1000 strains, beyond it breaks.</source>
        <translation>Summe der Flüssigkeit in den Teilen. Die Prüfung nimmt das Höchste binnen zwei Stunden: bis 800 mL je Stunde hält, bis 1000 wird es knapp, darüber bricht es.</translation>
    </message>
    <message>
        <source>450 to 750 mL an hour as a start.</source>
        <translation>450 bis 750 mL je Stunde als Anfang.</translation>
    </message>
    <message>
        <source>383 starters in up to 39 degrees lost 2 to 3 % of their weight whichever way they drank; most drank to thirst.</source>
        <translation>383 Starter bei bis zu 39 Grad verloren 2 bis 3 % ihres Gewichts, wie auch immer sie tranken; die meisten tranken nach Durst.</translation>
    </message>
    <message>
        <source>A runner of 69 kg has to lose 1.9 to 5.0 % over 161 km only to keep the water in the body level.</source>
        <translation>Ein Läufer von 69 kg muss über 161 km 1,9 bis 5,0 % verlieren, nur damit das Wasser im Körper gleich bleibt.</translation>
    </message>
    <message>
        <source>The limits of 800 and 1000 mL.</source>
        <translation>Die Grenzen von 800 und 1000 mL.</translation>
    </message>
    <message>
        <source>Drinking more than you sweat can kill. Weight gain, puffy hands, headache, vomiting or confusion: no more plain water, go to medical staff at once.</source>
        <translation>Mehr trinken, als du schwitzt, kann töten. Gewichtszunahme, geschwollene Hände, Kopfschmerz, Erbrechen oder Verwirrtheit: kein reines Wasser mehr, sofort zu den Sanitätern.</translation>
    </message>
    <message>
        <source>water drink drinking hydration hyponatraemia sweat</source>
        <translation>Wasser Getränk trinken Flüssigkeit Hyponatriämie Schweiß</translation>
    </message>
    <message>
        <source>Sodium</source>
        <translation>Natrium</translation>
    </message>
    <message>
        <source>Sodium in milligrams, from food, drink and capsules together; a gram of table salt holds 388. It makes food and drink go down better. It need not all be replaced, and it does not protect you if you drink too much.</source>
        <translation>Natrium in Milligramm, aus Essen, Getränk und Kapseln zusammen; ein Gramm Kochsalz enthält 388. Essen und Trinken gehen damit leichter. Es muss nicht alles ersetzt werden, und es schützt dich nicht, wenn du zu viel trinkst.</translation>
    </message>
    <message>
        <source>Sum over the items; the check takes the most within two hours and strains above 1000 mg an hour. One mmol is 22.99 mg.</source>
        <translation>Summe über die Teile; die Prüfung nimmt das Höchste binnen zwei Stunden, über 1000 mg je Stunde wird es knapp. Ein mmol sind 22,99 mg.</translation>
    </message>
    <message>
        <source>15 % of 669 finishers had low blood sodium, many of them after losing weight.</source>
        <translation>15 % von 669 Finishern hatten wenig Natrium im Blut, viele davon nach Gewichtsverlust.</translation>
    </message>
    <message>
        <source>Sodium pills are not needed to keep enough water.</source>
        <translation>Natriumtabletten braucht es nicht, um genug Wasser zu halten.</translation>
    </message>
    <message>
        <source>More than 575 mg to the litre may be called for.</source>
        <translation>Mehr als 575 mg je Liter können nötig sein.</translation>
    </message>
    <message>
        <source>The 1000 mg, and 400 mg an hour to start from.</source>
        <translation>Die 1000 mg, und 400 mg je Stunde als Anfang.</translation>
    </message>
    <message>
        <source>High blood pressure, heart or kidney disease: ask your doctor first.</source>
        <translation>Bluthochdruck, Herz- oder Nierenkrankheit: Frag zuerst deinen Arzt.</translation>
    </message>
    <message>
        <source>salt electrolytes capsules</source>
        <translation>Salz Elektrolyte Kapseln</translation>
    </message>
    <message>
        <source>Caffeine</source>
        <translation>Koffein</translation>
    </message>
    <message>
        <source>Caffeine in milligrams from all items. Small doses late, when the night gets long, do more than one large one early. Half of it is still in you after about five hours. Food placed by the clock holds none unless you add it.</source>
        <translation>Koffein in Milligramm aus allen Teilen. Kleine Mengen spät, wenn die Nacht lang wird, bringen mehr als eine große früh. Nach etwa fünf Stunden ist die Hälfte noch in dir. Nach der Uhr gesetztes Essen enthält keines, wenn du es nicht zufügst.</translation>
    </message>
    <message>
        <source>At most the lower of 3 mg per kg and 200 mg within an hour, and the lower of 6 mg per kg and 400 mg within 24 hours; the coffee before the start counts in.</source>
        <translation>Höchstens das Kleinere von 3 mg je kg und 200 mg binnen einer Stunde und das Kleinere von 6 mg je kg und 400 mg binnen 24 Stunden; der Kaffee vor dem Start zählt mit.</translation>
    </message>
    <message>
        <source>200 mg at once and 400 mg a day for healthy adults.</source>
        <translation>200 mg auf einmal und 400 mg am Tag für gesunde Erwachsene.</translation>
    </message>
    <message>
        <source>3 to 6 mg per kg help performance.</source>
        <translation>3 bis 6 mg je kg helfen der Leistung.</translation>
    </message>
    <message>
        <source>Half-life about 5 hours, 1.5 to 9.5 between people.</source>
        <translation>Halbwertszeit etwa 5 Stunden, je nach Mensch 1,5 bis 9,5.</translation>
    </message>
    <message>
        <source>Taking the lower of the two limits.</source>
        <translation>Die kleinere der beiden Grenzen zu nehmen.</translation>
    </message>
    <message>
        <source>For healthy adults only. Pregnant, under 18, with heart trouble, high blood pressure, anxiety or stimulant medicines: ask a doctor first.</source>
        <translation>Nur für gesunde Erwachsene. Schwanger, unter 18, mit Herzproblemen, Bluthochdruck, Angst oder anregenden Medikamenten: Frag zuerst einen Arzt.</translation>
    </message>
    <message>
        <source>coffee cola stimulant dose</source>
        <translation>Kaffee Cola Aufputschmittel Dosis</translation>
    </message>
    <message>
        <source>Training the gut</source>
        <translation>Magentraining</translation>
    </message>
    <message>
        <source>Eating in training what you mean to eat in the race, a little more each week, until it goes down without trouble. It is the best known cure for the stomach problems that end long races.</source>
        <translation>Im Training essen, was du im Rennen essen willst, jede Woche etwas mehr, bis es ohne Ärger geht. Das ist das beste bekannte Mittel gegen die Magenprobleme, die lange Rennen beenden.</translation>
    </message>
    <message>
        <source>Weeks needed: one for each 10 g/h between what you take now and the race rate, and two more at the race rate. From 40 to 80 g/h that is six.</source>
        <translation>Nötige Wochen: eine je 10 g/h zwischen dem, was du jetzt nimmst, und der Rennmenge, und zwei weitere mit der Rennmenge. Von 40 auf 80 g/h sind das sechs.</translation>
    </message>
    <message>
        <source>Two weeks: symptoms down by about 60 %, distance in a test up 4 to 5 %.</source>
        <translation>Zwei Wochen: Beschwerden um etwa 60 % geringer, Distanz im Test um 4 bis 5 % länger.</translation>
    </message>
    <message>
        <source>Two weeks of 90 g/h in a daily hour: better absorbed.</source>
        <translation>Zwei Wochen mit 90 g/h in einer Stunde täglich: bessere Aufnahme.</translation>
    </message>
    <message>
        <source>10 g/h a week, and two weeks at the race rate.</source>
        <translation>10 g/h je Woche, und zwei Wochen mit der Rennmenge.</translation>
    </message>
    <message>
        <source>stomach practise eating adaptation</source>
        <translation>Magen üben Essen Gewöhnung</translation>
    </message>
    <message>
        <source>Carry, 15 % spare</source>
        <translation>Mitnehmen, 15 % Reserve</translation>
    </message>
    <message>
        <source>What to carry out of an aid station so that it lasts to the next, with a seventh to spare for a slower leg or a dropped gel. Carry no less than the race&apos;s rules say.</source>
        <translation>Was du von einer Verpflegungsstelle mitnimmst, damit es bis zur nächsten reicht, mit einem Siebtel Reserve für ein langsameres Teilstück oder ein verlorenes Gel. Nimm nicht weniger mit, als die Rennregeln sagen.</translation>
    </message>
    <message>
        <source>Rate times the time to the next station times 1.15; of the rate you asked for and the one your items give the higher counts.</source>
        <translation>Menge je Stunde mal Zeit bis zur nächsten Station mal 1,15; von der verlangten Menge und der deiner Teile zählt die höhere.</translation>
    </message>
    <message>
        <source>The 15 %.</source>
        <translation>Die 15 %.</translation>
    </message>
    <message>
        <source>bottles pack spare leg drop bag</source>
        <translation>Flaschen packen Reserve Teilstück Dropbag</translation>
    </message>
    <message>
        <source>Items against what was asked</source>
        <translation>Teile gegenüber dem Verlangten</translation>
    </message>
    <message>
        <source>Whether the items on the clock come to the carbohydrate per hour you set.</source>
        <translation>Ob die Teile auf der Uhr die gesetzten Kohlenhydrate je Stunde ergeben.</translation>
    </message>
    <message>
        <source>Holds within 10 % of the rate, else it strains.</source>
        <translation>Hält binnen 10 % der Menge, sonst wird es knapp.</translation>
    </message>
    <message>
        <source>band check too little too much</source>
        <translation>Band Prüfung zu wenig zu viel</translation>
    </message>
    <message>
        <source>Race rate against what your gut is known to take</source>
        <translation>Rennmenge gegenüber dem, was dein Magen kennt</translation>
    </message>
    <message>
        <source>A race is no place for a first try. If the race plan takes more than 10 g/h above what you take without trouble, practise first; the sentence says for how many weeks.</source>
        <translation>Ein Rennen ist kein Ort für den ersten Versuch. Liegt der Rennplan mehr als 10 g/h über dem, was du ohne Ärger nimmst, übe zuerst; der Satz sagt, wie viele Wochen.</translation>
    </message>
    <message>
        <source>Carbs per hour of the race minus the rate in the form for race and runner.</source>
        <translation>KH je Stunde des Rennens minus die Menge im Formular für Rennen und Läufer.</translation>
    </message>
    <message>
        <source>The 10 g/h.</source>
        <translation>Die 10 g/h.</translation>
    </message>
    <message>
        <source>check practised tolerated</source>
        <translation>Prüfung geübt vertragen</translation>
    </message>
    <message>
        <source>How much can be absorbed</source>
        <translation>Wie viel aufgenommen werden kann</translation>
    </message>
    <message>
        <source>One kind of sugar gets through the gut at about 60 g/h, glucose with fructose at about 90 in a trained gut. More than that lies in the stomach.</source>
        <translation>Eine Zuckerart geht mit etwa 60 g/h durch den Darm, Glukose mit Fruktose in einem geübten mit etwa 90. Mehr als das bleibt im Magen liegen.</translation>
    </message>
    <message>
        <source>Strains above 60 g/h, of glucose alone or in all; breaks above 90 on average or above 120 in any one hour. Of a mixed food two thirds count as glucose.</source>
        <translation>Knapp über 60 g/h, von Glukose allein oder insgesamt; bricht über 90 im Schnitt oder über 120 in irgendeiner Stunde. Von gemischtem Essen zählen zwei Drittel als Glukose.</translation>
    </message>
    <message>
        <source>60 and 90 g/h.</source>
        <translation>60 und 90 g/h.</translation>
    </message>
    <message>
        <source>120 g/h is the most that was tried: 20 elite runners, trained for it.</source>
        <translation>120 g/h ist das Höchste, was versucht wurde: 20 Spitzenläufer, dafür trainiert.</translation>
    </message>
    <message>
        <source>The mixture of two to one.</source>
        <translation>Die Mischung zwei zu eins.</translation>
    </message>
    <message>
        <source>0.8 of fructose to 1 may be better still.</source>
        <translation>0,8 Fruktose zu 1 ist vielleicht noch besser.</translation>
    </message>
    <message>
        <source>With hereditary fructose intolerance no fructose, no table sugar.</source>
        <translation>Bei erblicher Fruktoseintoleranz keine Fruktose, kein Haushaltszucker.</translation>
    </message>
    <message>
        <source>glucose fructose limit maximum check</source>
        <translation>Glukose Fruktose Grenze Höchstwert Prüfung</translation>
    </message>
    <message>
        <source>Advice for a race of this length</source>
        <translation>Rat für ein Rennen dieser Länge</translation>
    </message>
    <message>
        <source>What the advice for so long a race is, and whether the plan reaches its lower end: 30 to 90 g/h from three hours on, 45 to 60 from two, 30 to 45 from 75 minutes.</source>
        <translation>Was für ein so langes Rennen geraten wird und ob der Plan das untere Ende erreicht: 30 bis 90 g/h ab drei Stunden, 45 bis 60 ab zwei, 30 bis 45 ab 75 Minuten.</translation>
    </message>
    <message>
        <source>Read from a table by the finish time.</source>
        <translation>Nach der Zielzeit aus einer Tabelle gelesen.</translation>
    </message>
    <message>
        <source>Some of the rows under three hours.</source>
        <translation>Einige der Zeilen unter drei Stunden.</translation>
    </message>
    <message>
        <source>check duration recommendation</source>
        <translation>Prüfung Dauer Empfehlung</translation>
    </message>
    <message>
        <source>First bite</source>
        <translation>Erster Bissen</translation>
    </message>
    <message>
        <source>When you first take something. Start early, while the stomach is willing: within 30 to 45 minutes.</source>
        <translation>Wann du zuerst etwas nimmst. Fang früh an, solange der Magen willig ist: binnen 30 bis 45 Minuten.</translation>
    </message>
    <message>
        <source>The time of the first item with carbohydrate.</source>
        <translation>Die Zeit des ersten Teils mit Kohlenhydraten.</translation>
    </message>
    <message>
        <source>start eating check</source>
        <translation>Start Essen Prüfung</translation>
    </message>
    <message>
        <source>Items after the finish</source>
        <translation>Teile nach dem Ziel</translation>
    </message>
    <message>
        <source>Items whose time is later than the finish, mostly because the finish was moved. They count for nothing; take them out or place the fuel again.</source>
        <translation>Teile, deren Zeit nach dem Ziel liegt, meist weil das Ziel verschoben wurde. Sie zählen nicht; nimm sie heraus oder setze die Verpflegung neu.</translation>
    </message>
    <message>
        <source>Item time against the finish of the target.</source>
        <translation>Zeit des Teils gegenüber der Ankunft im Ziel nach der Zielzeit.</translation>
    </message>
    <message>
        <source>Fuel item</source>
        <translation>Verpflegungsposten</translation>
    </message>
    <message>
        <source>Something you take at one moment of the race: a food, how many servings, and when. Race time counts from the gun; the place is where the target brings you by then.</source>
        <translation>Etwas, das du zu einem Zeitpunkt des Rennens nimmst: ein Essen, wie viele Portionen und wann. Die Rennzeit zählt ab dem Startschuss; der Ort ist der, an den die Zielzeit dich bis dahin bringt.</translation>
    </message>
    <message>
        <source>Servings times what one serving holds.</source>
        <translation>Portionen mal das, was eine Portion enthält.</translation>
    </message>
    <message>
        <source>token race time clock gel</source>
        <translation>Marke Rennzeit Uhr Gel</translation>
    </message>
    <message>
        <source>Servings</source>
        <translation>Portionen</translation>
    </message>
    <message>
        <source>How many of the food: 2 gels, half a sandwich, a quarter of a bottle. One serving is what the table of foods says it is.</source>
        <translation>Wie viel von dem Essen: 2 Gels, ein halbes Brot, eine Viertelflasche. Was eine Portion ist, sagt die Tabelle der Lebensmittel.</translation>
    </message>
    <message>
        <source>An item gives its servings times what one serving has.</source>
        <translation>Ein Posten bringt seine Portionen mal das, was eine Portion enthält.</translation>
    </message>
    <message>
        <source>Placing fuel by the clock</source>
        <translation>Verpflegung nach der Uhr setzen</translation>
    </message>
    <message>
        <source>Puts items on the clock for you: a first bite, then one every so many minutes, none in the last 15 minutes. Gels and sweet things at first, from four hours on savoury ones too, broth from ten. What one time gives too much, the next gives less.</source>
        <translation>Setzt Teile für dich auf die Uhr: ein erster Bissen, dann einer alle so und so viele Minuten, keiner in den letzten 15 Minuten. Erst Gels und Süßes, ab vier Stunden auch Herzhaftes, Brühe ab zehn. Was ein Zeitpunkt zu viel gibt, gibt der nächste weniger.</translation>
    </message>
    <message>
        <source>Each time owes the rate times the minutes since the one before, in carbohydrate, fluid and sodium.</source>
        <translation>Jeder Zeitpunkt schuldet die Menge je Stunde mal die Minuten seit dem vorigen, an Kohlenhydraten, Flüssigkeit und Natrium.</translation>
    </message>
    <message>
        <source>The whole rule.</source>
        <translation>Die ganze Regel.</translation>
    </message>
    <message>
        <source>In long races taste turns from sweet to savoury.</source>
        <translation>In langen Rennen wechselt der Geschmack von süß zu herzhaft.</translation>
    </message>
    <message>
        <source>every minutes interval automatic slots</source>
        <translation>alle Minuten Abstand automatisch Zeitpunkte</translation>
    </message>
    <message>
        <source>Food</source>
        <translation>Lebensmittel</translation>
    </message>
    <message>
        <source>Something you can take in the race, with what one serving holds. Type what your own packets say over the figures; they then count as read from the packet.</source>
        <translation>Etwas, das du im Rennen nehmen kannst, mit dem, was eine Portion enthält. Überschreibe die Zahlen mit denen deiner Packungen; dann gelten sie als von der Packung gelesen.</translation>
    </message>
    <message>
        <source>Plain foods.</source>
        <translation>Einfache Lebensmittel.</translation>
    </message>
    <message>
        <source>Gels, sports drinks and capsules: typical packets, from memory.</source>
        <translation>Gels, Sportgetränke und Kapseln: typische Packungen, aus dem Gedächtnis.</translation>
    </message>
    <message>
        <source>Allergies: the program does not know what is in your food. Read the packet.</source>
        <translation>Allergien: Das Programm weiß nicht, was in deinem Essen ist. Lies die Packung.</translation>
    </message>
    <message>
        <source>foods serving one serving is</source>
        <translation>Lebensmittel Portionen eine Portion ist</translation>
    </message>
    <message>
        <source>Carbs of a serving</source>
        <translation>KH einer Portion</translation>
    </message>
    <message>
        <source>Carbohydrate your gut can take up, in grams: fibre is left out, because it feeds nobody within a race.</source>
        <translation>Kohlenhydrate, die dein Darm aufnehmen kann, in Gramm: ohne Ballaststoffe, denn die nähren im Rennen niemanden.</translation>
    </message>
    <message>
        <source>Carbohydrate minus fibre, per serving.</source>
        <translation>Kohlenhydrate minus Ballaststoffe, je Portion.</translation>
    </message>
    <message>
        <source>carbohydrate fibre grams</source>
        <translation>Kohlenhydrate Ballaststoffe Gramm</translation>
    </message>
    <message>
        <source>Sugars</source>
        <translation>Zucker</translation>
    </message>
    <message>
        <source>One kind is glucose, maltodextrin or starch; mixed is glucose and fructose together, as in fruit, honey, table sugar and mixed gels. They take two ways through the gut, so mixed foods allow more per hour.</source>
        <translation>Eine Art ist Glukose, Maltodextrin oder Stärke; gemischt ist Glukose und Fruktose zusammen, wie in Obst, Honig, Haushaltszucker und gemischten Gels. Sie nehmen zwei Wege durch den Darm, daher erlaubt Gemischtes mehr je Stunde.</translation>
    </message>
    <message>
        <source>Of a mixed food two thirds count as glucose.</source>
        <translation>Von gemischtem Essen zählen zwei Drittel als Glukose.</translation>
    </message>
    <message>
        <source>Many people take fructose badly; find out in training.</source>
        <translation>Viele vertragen Fruktose schlecht; finde es im Training heraus.</translation>
    </message>
    <message>
        <source>glucose fructose mixed single</source>
        <translation>Glukose Fruktose gemischt einzeln</translation>
    </message>
    <message>
        <source>Energy of a serving</source>
        <translation>Energie einer Portion</translation>
    </message>
    <message>
        <source>Kilocalories of a serving. Nothing is planned by it: in a race carbohydrate is what counts, and nobody eats as much as they burn.</source>
        <translation>Kilokalorien einer Portion. Danach wird nichts geplant: Im Rennen zählen Kohlenhydrate, und niemand isst so viel, wie er verbrennt.</translation>
    </message>
    <message>
        <source>About 4 kcal for a gram of carbohydrate or protein and 9 for one of fat.</source>
        <translation>Etwa 4 kcal für ein Gramm Kohlenhydrate oder Eiweiß und 9 für eines Fett.</translation>
    </message>
    <message>
        <source>kcal calories</source>
        <translation>kcal Kalorien</translation>
    </message>
    <message>
        <source>Weight of a serving</source>
        <translation>Gewicht einer Portion</translation>
    </message>
    <message>
        <source>What a serving weighs, in grams: what you have to carry.</source>
        <translation>Was eine Portion wiegt, in Gramm: was du tragen musst.</translation>
    </message>
    <message>
        <source>Form of a food</source>
        <translation>Form eines Lebensmittels</translation>
    </message>
    <message>
        <source>Gel, drink, solid or salt: how it is carried and taken, and the shape of its token. Drinks count toward fluid first.</source>
        <translation>Gel, Getränk, fest oder Salz: wie es getragen und genommen wird, und die Form seiner Marke. Getränke zählen zuerst zur Flüssigkeit.</translation>
    </message>
    <message>
        <source>shape gel drink solid</source>
        <translation>Form Gel Getränk fest</translation>
    </message>
    <message>
        <source>Where a food&apos;s figures are from</source>
        <translation>Woher die Zahlen eines Lebensmittels sind</translation>
    </message>
    <message>
        <source>Published: a food table, named beside it. From memory: a typical packet, to be typed over. From the packet: you typed it.</source>
        <translation>Veröffentlicht: eine Nährwerttabelle, daneben genannt. Aus dem Gedächtnis: eine typische Packung, zum Überschreiben. Von der Packung: Du hast es eingetippt.</translation>
    </message>
    <message>
        <source>source mark packet published memory</source>
        <translation>Quelle Zeichen Packung veröffentlicht Gedächtnis</translation>
    </message>
    <message>
        <source>Glycogen</source>
        <translation>Glykogen</translation>
    </message>
    <message>
        <source>How much carbohydrate liver and legs still hold along the course, as a band. The upper edge burns as most people do, the lower one a tenth of all energy more. What is eaten spares it. A trend, not a prediction: 30 % off either way is usual.</source>
        <translation>Wie viele Kohlenhydrate Leber und Beine entlang der Strecke noch haben, als Band. Der obere Rand verbrennt wie die meisten Menschen, der untere ein Zehntel der ganzen Energie mehr. Was du isst, schont sie. Ein Trend, keine Vorhersage: 30 % daneben nach beiden Seiten ist üblich.</translation>
    </message>
    <message>
        <source>Minute by minute: body mass, distance and slope give the energy, how hard that is for you the share from carbohydrate; what you eat is absorbed with a delay of half an hour and never faster than the gut can.</source>
        <translation>Minute für Minute: Körpergewicht, Distanz und Steigung geben die Energie; wie hart das für dich ist, den Anteil aus Kohlenhydraten; was du isst, wird mit einer halben Stunde Verzug aufgenommen und nie schneller, als der Darm kann.</translation>
    </message>
    <message>
        <source>About 10, 50 and 75 % of energy from carbohydrate at 25, 65 and 85 %.</source>
        <translation>Etwa 10, 50 und 75 % der Energie aus Kohlenhydraten bei 25, 65 und 85 %.</translation>
    </message>
    <message>
        <source>What is eaten is burnt at a steady rate after 90 min.</source>
        <translation>Was gegessen wird, wird nach 90 min gleichmäßig verbrannt.</translation>
    </message>
    <message>
        <source>Legs are a fifth of the body; stores per kg.</source>
        <translation>Beine sind ein Fünftel des Körpers; Speicher je kg.</translation>
    </message>
    <message>
        <source>Low below 40 % of the start, empty below 20 %; downhill, heat and altitude are left out.</source>
        <translation>Niedrig unter 40 % des Anfangs, leer unter 20 %; bergab, Hitze und Höhe sind nicht berücksichtigt.</translation>
    </message>
    <message>
        <source>Not valid with diabetes: make your own plan with your care team.</source>
        <translation>Gilt nicht bei Diabetes: Mach mit deinen Behandlern einen eigenen Plan.</translation>
    </message>
    <message>
        <source>tank wall bonk stores empty liver legs</source>
        <translation>Tank Mann mit dem Hammer Einbruch Speicher leer Leber Beine</translation>
    </message>
    <message>
        <source>Gut load</source>
        <translation>Magenlast</translation>
    </message>
    <message>
        <source>What has been eaten and not yet been absorbed or used. Above 60 g it is much, above 100 g more than the body can use at this pace: take less there, or slow down less.</source>
        <translation>Was gegessen und noch nicht aufgenommen oder verbraucht ist. Über 60 g ist viel, über 100 g mehr, als der Körper in diesem Tempo nutzen kann: Nimm dort weniger oder werde weniger langsam.</translation>
    </message>
    <message>
        <source>Out of the glycogen ledger: no more than 60 g/h of glucose is absorbed, 90 of a mixture, and no more is burnt than three quarters of the energy spent.</source>
        <translation>Aus der Glykogenrechnung: Mehr als 60 g/h Glukose werden nicht aufgenommen, 90 einer Mischung, und nicht mehr verbrannt als drei Viertel der verbrauchten Energie.</translation>
    </message>
    <message>
        <source>A simple model; guts differ more than it knows.</source>
        <translation>Ein einfaches Modell; Mägen unterscheiden sich mehr, als es weiß.</translation>
    </message>
    <message>
        <source>stomach bloating nausea absorption ceiling</source>
        <translation>Magen Blähungen Übelkeit Aufnahme Obergrenze</translation>
    </message>
    <message>
        <source>Glycogen at the start</source>
        <translation>Glykogen am Start</translation>
    </message>
    <message>
        <source>What the ledger starts from: leg muscle as a share of the body, glycogen in a kilogram of it, and the liver. 20 g/kg after usual food, up to 36 loaded; the liver 90 g after breakfast, 45 without.</source>
        <translation>Womit die Glykogenrechnung anfängt: Beinmuskeln als Anteil des Körpers, Glykogen in einem Kilogramm davon, und die Leber. 20 g/kg nach üblichem Essen, bis 36 geladen; die Leber 90 g nach Frühstück, 45 ohne.</translation>
    </message>
    <message>
        <source>With the VO2max each section has its own effort; else choose how hard the race is.</source>
        <translation>Mit der VO2max hat jeder Abschnitt seine eigene Anstrengung; sonst wähle, wie hart das Rennen ist.</translation>
    </message>
    <message>
        <source>vo2max loading liver muscle</source>
        <translation>vo2max Laden Leber Muskel</translation>
    </message>
    <message>
        <source>Fluid and sodium</source>
        <translation>Flüssigkeit und Natrium</translation>
    </message>
    <message>
        <source>Fluid in the hour around each moment, as an area, and sodium as a line. Both are what to have with you, never what to force down.</source>
        <translation>Flüssigkeit in der Stunde um jeden Zeitpunkt als Fläche, Natrium als Linie. Beides ist, was du dabeihaben sollst, nie, was du hinunterzwingen sollst.</translation>
    </message>
    <message>
        <source>The items of that hour; water in food counts. The band is a quarter either way.</source>
        <translation>Die Teile dieser Stunde; Wasser im Essen zählt mit. Das Band ist ein Viertel nach beiden Seiten.</translation>
    </message>
    <message>
        <source>450 to 750 mL an hour in ultramarathons.</source>
        <translation>450 bis 750 mL je Stunde in Ultramarathons.</translation>
    </message>
    <message>
        <source>water drink lane</source>
        <translation>Wasser Getränk Spur</translation>
    </message>
    <message>
        <source>Caffeine in the body</source>
        <translation>Koffein im Körper</translation>
    </message>
    <message>
        <source>What is left of all caffeine taken by then: half of it is gone after about five hours, in some people after two, in others after nine.</source>
        <translation>Was von allem bis dahin genommenen Koffein übrig ist: Die Hälfte ist nach etwa fünf Stunden weg, bei manchen nach zwei, bei anderen nach neun.</translation>
    </message>
    <message>
        <source>Every dose counts in full when taken and halves every five hours.</source>
        <translation>Jede Menge zählt beim Nehmen voll und halbiert sich alle fünf Stunden.</translation>
    </message>
    <message>
        <source>Half-life 5 h on average, 1.5 to 9.5 h.</source>
        <translation>Halbwertszeit im Schnitt 5 h, 1,5 bis 9,5 h.</translation>
    </message>
    <message>
        <source>sleep half-life</source>
        <translation>Schlaf Halbwertszeit</translation>
    </message>
    <message>
        <source>Keeps its time or its place</source>
        <translation>Behält Zeit oder Ort</translation>
    </message>
    <message>
        <source>What happens to an item when the pace changes: one that keeps its time is taken at the same race time, one that keeps its place where it was put, such as soup at a station.</source>
        <translation>Was mit einem Teil geschieht, wenn sich das Tempo ändert: Behält es seine Zeit, nimmst du es zur selben Rennzeit; behält es seinen Ort, dort, wohin es gesetzt wurde, etwa Suppe an einer Station.</translation>
    </message>
    <message>
        <source>clock distance anchor pace</source>
        <translation>Uhr Distanz Anker Tempo</translation>
    </message>
    <message>
        <source>Fill to target</source>
        <translation>Bis zur Vorgabe auffüllen</translation>
    </message>
    <message>
        <source>Chooses from the foods you tick how much of each to take when, so that carbohydrate, fluid, sodium and caffeine stay in their bands, sweet gives way to savoury, and little is carried far. Where a band cannot be met it says why.</source>
        <translation>Wählt aus den angehakten Lebensmitteln, wie viel wovon wann, sodass Kohlenhydrate, Flüssigkeit, Natrium und Koffein in ihren Bändern bleiben, Süßes dem Herzhaften weicht und wenig weit getragen wird. Wo ein Band nicht zu erreichen ist, steht warum.</translation>
    </message>
    <message>
        <source>An exact choice in whole portions, an hour at a time. Foods marked to avoid and those with your allergens are never used, caffeine only if you allow it.</source>
        <translation>Eine genaue Auswahl in ganzen Portionen, Stunde für Stunde. Was du meiden willst oder was deine Allergene enthält, wird nie verwendet, Koffein nur, wenn du es erlaubst.</translation>
    </message>
    <message>
        <source>Bands of 10 % for carbohydrate, 25 % for fluid, a third for sodium.</source>
        <translation>Bänder von 10 % für Kohlenhydrate, 25 % für Flüssigkeit, ein Drittel für Natrium.</translation>
    </message>
    <message>
        <source>In long races savoury food is liked more.</source>
        <translation>In langen Rennen wird Herzhaftes lieber gegessen.</translation>
    </message>
    <message>
        <source>A proposal to read item by item and to practise in training.</source>
        <translation>Ein Vorschlag, den du Teil für Teil lesen und im Training üben sollst.</translation>
    </message>
    <message>
        <source>optimise automatic menu</source>
        <translation>optimieren automatisch Menü</translation>
    </message>
    <message>
        <source>Bags</source>
        <translation>Beutel</translation>
    </message>
    <message>
        <source>Where each item of the plan comes from: on you from the start, out of a drop bag, from your crew, or off a table. Packed whole, with what is spare. Nothing perishable where a bag waits for hours in the warm.</source>
        <translation>Woher jedes Teil des Plans kommt: vom Start an bei dir, aus einem Dropbag, von deiner Betreuung oder vom Tisch. Ganz gepackt, mit Reserve. Nichts Verderbliches, wo ein Beutel stundenlang im Warmen wartet.</translation>
    </message>
    <message>
        <source>The last bag or crew before an item holds it, unless the station there offers it. Bags and tables together are the timeline.</source>
        <translation>Der letzte Beutel oder die letzte Betreuung vor einem Teil hat es, wenn die Station dort es nicht anbietet. Beutel und Tische zusammen ergeben den Zeitplan.</translation>
    </message>
    <message>
        <source>15 % spare, unless you set another.</source>
        <translation>15 % Reserve, wenn du nichts anderes setzt.</translation>
    </message>
    <message>
        <source>drop bag crew pack label kit</source>
        <translation>Dropbag Betreuung packen Etikett Ausrüstung</translation>
    </message>
    <message>
        <source>Carried</source>
        <translation>Getragen</translation>
    </message>
    <message>
        <source>What is on you when you leave a station: all food until it is eaten, and drink until the next tap, with the spare. Short of room means that your bottles do not hold it.</source>
        <translation>Was du beim Verlassen einer Station bei dir hast: alles Essen, bis es gegessen ist, und Getränk bis zum nächsten Wasser, mit der Reserve. Zu wenig Platz heißt, dass deine Flaschen es nicht fassen.</translation>
    </message>
    <message>
        <source>bottles weight capacity pack</source>
        <translation>Flaschen Gewicht Fassungsvermögen Rucksack</translation>
    </message>
    <message>
        <source>Shopping</source>
        <translation>Einkauf</translation>
    </message>
    <message>
        <source>What all bags take, spare among it, in whole packs, and what is left in the end if the race goes as planned.</source>
        <translation>Was alle Beutel brauchen, mit Reserve, in ganzen Packungen, und was am Ende übrig bleibt, wenn das Rennen nach Plan läuft.</translation>
    </message>
    <message>
        <source>buy packs list left over</source>
        <translation>kaufen Packungen Liste übrig</translation>
    </message>
    <message>
        <source>Food at stations</source>
        <translation>Essen an Stationen</translation>
    </message>
    <message>
        <source>Which foods stand on the table of an aid station, as the organiser says. Filling takes them there, bags leave them out.</source>
        <translation>Welches Essen laut Veranstalter auf dem Tisch einer Verpflegungsstelle steht. Beim Auffüllen wird es dort genommen, in den Beuteln weggelassen.</translation>
    </message>
    <message>
        <source>Tables run empty for late runners: carry what you cannot do without.</source>
        <translation>Tische sind für späte Läufer oft leer: Nimm mit, worauf du nicht verzichten kannst.</translation>
    </message>
    <message>
        <source>table aid station offers</source>
        <translation>Tisch Verpflegungsstelle Angebot</translation>
    </message>
    <message>
        <source>Before the start</source>
        <translation>Vor dem Start</translation>
    </message>
    <message>
        <source>One countdown from ten days before to the gun: runs, kit, feet, bags, sleep and the way home; loading, meals, drink and caffeine by body mass and start time. Loading binds water, so a kilogram or two more is usual.</source>
        <translation>Ein Countdown von zehn Tagen davor bis zum Startschuss: Läufe, Ausrüstung, Füße, Beutel, Schlaf und Heimweg; Laden, Mahlzeiten, Getränk und Koffein nach Körpergewicht und Startzeit. Laden bindet Wasser, ein oder zwei Kilogramm mehr sind also üblich.</translation>
    </message>
    <message>
        <source>10 to 12 g/kg a day for 36 to 48 hours.</source>
        <translation>10 bis 12 g/kg am Tag über 36 bis 48 Stunden.</translation>
    </message>
    <message>
        <source>1 to 4 g/kg one to four hours before.</source>
        <translation>1 bis 4 g/kg eine bis vier Stunden davor.</translation>
    </message>
    <message>
        <source>5 to 7 mL/kg four hours before.</source>
        <translation>5 bis 7 mL/kg vier Stunden davor.</translation>
    </message>
    <message>
        <source>Loading is not for people with diabetes without their care team.</source>
        <translation>Laden ist bei Diabetes nichts ohne die eigenen Behandler.</translation>
    </message>
    <message>
        <source>countdown loading breakfast meal week</source>
        <translation>Countdown Laden Frühstück Mahlzeit Woche</translation>
    </message>
    <message>
        <source>Sweat test</source>
        <translation>Schweißtest</translation>
    </message>
    <message>
        <source>A run of one to two hours, weighed undressed and dry before and after. It gives what you sweat an hour; no more than that is ever planned, and 70 % of it is enough to have.</source>
        <translation>Ein Lauf von ein bis zwei Stunden, davor und danach unbekleidet und trocken gewogen. Er zeigt, was du je Stunde schwitzt; mehr wird nie geplant, und 70 % davon dabeizuhaben genügt.</translation>
    </message>
    <message>
        <source>Weight lost, plus drunk, less passed, over the hours.</source>
        <translation>Verlorenes Gewicht plus Getrunkenes minus Ausgeschiedenes, durch die Stunden.</translation>
    </message>
    <message>
        <source>The least of several tests counts, to be careful.</source>
        <translation>Von mehreren Tests zählt der kleinste, zur Vorsicht.</translation>
    </message>
    <message>
        <source>sweat rate weigh hydration</source>
        <translation>Schweißrate wiegen Flüssigkeit</translation>
    </message>
    <message>
        <source>Your gut</source>
        <translation>Dein Magen</translation>
    </message>
    <message>
        <source>Your own mark for a food: tolerated, not tried, or to avoid. Two runs on which it sat well are a good reason for the first.</source>
        <translation>Deine eigene Marke für ein Essen: vertragen, nicht probiert oder meiden. Zwei Läufe, auf denen es dir gut bekam, sind ein guter Grund für das Erste.</translation>
    </message>
    <message>
        <source>tolerated avoid stomach mark</source>
        <translation>vertragen meiden Magen Marke</translation>
    </message>
    <message>
        <source>Allergens</source>
        <translation>Allergene</translation>
    </message>
    <message>
        <source>What of the fourteen that must be named on a packet a food holds. Say under Fuel habits what you must not eat: such foods are then never filled in, and the checks say if one stands in the plan.</source>
        <translation>Welche der vierzehn Allergene, die auf einer Packung stehen müssen, ein Essen enthält. Sag unter „Gewohnheiten der Verpflegung“, was du nicht essen darfst: Solches wird dann nie eingefüllt, und die Prüfungen melden, wenn es im Plan steht.</translation>
    </message>
    <message>
        <source>allergy gluten nuts milk</source>
        <translation>Allergie Gluten Nüsse Milch</translation>
    </message>
    <message>
        <source>In a pack</source>
        <translation>In einer Packung</translation>
    </message>
    <message>
        <source>How many servings are bought at once; the shopping list counts whole packs.</source>
        <translation>Wie viele Portionen man auf einmal kauft; die Einkaufsliste zählt ganze Packungen.</translation>
    </message>
    <message>
        <source>Can be carried</source>
        <translation>Tragbar</translation>
    </message>
    <message>
        <source>Whether a food can go in a bag or a pocket. Soup and cups of cola cannot: they are eaten where they stand.</source>
        <translation>Ob ein Essen in einen Beutel oder eine Tasche kann. Suppe und Becher mit Cola können es nicht: Sie werden dort genommen, wo sie stehen.</translation>
    </message>
    <message>
        <source>After the race</source>
        <translation>Nach dem Rennen</translation>
    </message>
    <message>
        <source>How long to leave running alone, to run easy only, and to wait with hard sessions and the next race, by how long the race takes; and signs not to wait with.</source>
        <translation>Wie lange du nicht läufst, nur locker läufst und mit harten Einheiten und dem nächsten Rennen wartest, je nach Dauer des Rennens; und Zeichen, mit denen du nicht warten darfst.</translation>
    </message>
    <message>
        <source>The days are our own, on the careful side.</source>
        <translation>Die Tage sind unsere eigenen, eher vorsichtig.</translation>
    </message>
    <message>
        <source>9 to 16 days until strength was back after 166 km.</source>
        <translation>9 bis 16 Tage, bis die Kraft nach 166 km zurück war.</translation>
    </message>
    <message>
        <source>Days on a calendar heal nothing: pain, fever or odd urine go first.</source>
        <translation>Tage im Kalender heilen nichts: Schmerz, Fieber oder auffälliger Urin gehen vor.</translation>
    </message>
    <message>
        <source>recovery rest return running red flags</source>
        <translation>Erholung Ruhe Wiedereinstieg Laufen Warnzeichen</translation>
    </message>
    <message>
        <source>Export to other programs</source>
        <translation>Export in andere Programme</translation>
    </message>
    <message>
        <source>In the File menu: the course with stations, section ends and target arrivals as GPX 1.1; sessions and race as a calendar; every table as CSV or XLSX with units in the heads; the profile with targets as a picture, PNG or SVG. A calendar can be read back: what would change is shown first.</source>
        <translation>Im Menü Datei: die Strecke mit Stationen, Abschnittsenden und Ankunftszeiten nach Vorgabe als GPX 1.1; Einheiten und Rennen als Kalender; jede Tabelle als CSV oder XLSX mit Einheiten im Kopf; das Profil mit Vorgaben als Bild, PNG oder SVG. Ein Kalender lässt sich zurücklesen: Erst wird gezeigt, was sich ändern würde.</translation>
    </message>
    <message>
        <source>A calendar that takes a second file changes what it has. Under another name of the race all entries are new, and what you removed from the plan stays until you delete it there. A text in a CSV that a spreadsheet could take for a formula has an apostrophe before it.</source>
        <translation>Ein Kalender, der eine zweite Datei aufnimmt, ändert, was er hat. Unter einem anderen Namen des Rennens sind alle Einträge neu, und was du aus dem Plan entfernt hast, bleibt dort, bis du es löschst. Ein Text in einer CSV, den eine Tabellenkalkulation für eine Formel halten könnte, hat einen Apostroph davor.</translation>
    </message>
    <message>
        <source>A watch shows the waypoints, not your cutoffs: carry a card as well.</source>
        <translation>Eine Uhr zeigt die Wegpunkte, nicht deine Zeitlimits: Nimm auch eine Karte mit.</translation>
    </message>
    <message>
        <source>gpx ics icalendar csv svg png spreadsheet watch</source>
        <translation>gpx ics icalendar csv svg png Tabellenkalkulation Uhr</translation>
    </message>
    <message>
        <source>This week</source>
        <translation>Diese Woche</translation>
    </message>
    <message>
        <source>Seven days with what was planned and what was done side by side. D marks a session done as planned, C opens a short form with the plan already in it, M marks it missed, U takes the mark back. A star marks the two sessions to keep if the week falls apart: the long run, then what is most specific to the race.</source>
        <translation>Sieben Tage mit Geplantem und Gelaufenem nebeneinander. D markiert eine Einheit als gelaufen wie geplant, C öffnet ein kurzes Formular, in dem der Plan schon steht, M markiert sie als ausgefallen, U nimmt die Markierung zurück. Ein Stern steht an den zwei Einheiten, die bleiben, wenn die Woche zerfällt: der lange Lauf, dann die, die dem Rennen am nächsten kommt.</translation>
    </message>
    <message>
        <source>Load is effort times minutes, of what was done or else of the plan.</source>
        <translation>Belastung ist Anstrengung mal Minuten, vom Gelaufenen oder sonst vom Plan.</translation>
    </message>
    <message>
        <source>Which two to keep is a rule of the trade.</source>
        <translation>Welche zwei bleiben, ist eine Regel aus der Praxis.</translation>
    </message>
    <message>
        <source>today glance log diary</source>
        <translation>heute Überblick Protokoll Tagebuch</translation>
    </message>
    <message>
        <source>Days missed, and mending</source>
        <translation>Ausgefallene Tage und Abhilfe</translation>
    </message>
    <message>
        <source>Say which days you missed and why. Two or three ways to mend the build-up come side by side, each with the sessions it changes and what it costs; the one you look at is shown in the grid. Nothing that was missed is made up later.</source>
        <translation>Sag, welche Tage ausfielen und warum. Zwei oder drei Wege zur Abhilfe stehen nebeneinander, jeder mit den Einheiten, die er ändert, und dem, was er kostet; der betrachtete steht im Raster. Nichts Ausgefallenes wird später nachgeholt.</translation>
    </message>
    <message>
        <source>As few sessions as possible are changed so that the rules hold again. Proven means that a search found no way with fewer. A cost with a minus is distance lost.</source>
        <translation>So wenige Einheiten wie möglich werden geändert, damit die Regeln wieder halten. Bewiesen heißt, dass eine Suche keinen Weg mit weniger fand. Kosten mit Minus sind verlorene Distanz.</translation>
    </message>
    <message>
        <source>How to take up running again after a break has no trial.</source>
        <translation>Wie man nach einer Pause wieder zu laufen beginnt, hat keine Studie geprüft.</translation>
    </message>
    <message>
        <source>What a break of some weeks takes.</source>
        <translation>Was eine Pause von einigen Wochen kostet.</translation>
    </message>
    <message>
        <source>With fever, chest symptoms or aches all over nothing is planned: rest and ask. After an injury whoever treats it decides when running is allowed.</source>
        <translation>Bei Fieber, Beschwerden in der Brust oder Schmerzen am ganzen Körper wird nichts geplant: ruhen und fragen. Nach einer Verletzung entscheidet, wer sie behandelt, wann Laufen erlaubt ist.</translation>
    </message>
    <message>
        <source>ill injured holiday repair mend break return</source>
        <translation>krank verletzt Urlaub Umbau Abhilfe Pause Wiedereinstieg</translation>
    </message>
    <message>
        <source>Questions on health</source>
        <translation>Fragen zur Gesundheit</translation>
    </message>
    <message>
        <source>Before the first block: does anything speak for asking a doctor first? The published questionnaire PAR-Q+ asks it best; it must be used whole and is not repeated here. Only yes or no is kept, in the project file and nowhere else.</source>
        <translation>Vor dem ersten Block: Spricht etwas dafür, zuerst einen Arzt zu fragen? Der veröffentlichte Fragebogen PAR-Q+ fragt es am besten; er muss ganz verwendet werden und wird hier nicht wiederholt. Behalten wird nur Ja oder Nein, in der Projektdatei und sonst nirgends.</translation>
    </message>
    <message>
        <source>The wording is ours and wants medical review.</source>
        <translation>Der Wortlaut ist von uns und müsste ärztlich geprüft werden.</translation>
    </message>
    <message>
        <source>This plan is arithmetic on what you typed. It does not examine you.</source>
        <translation>Dieser Plan rechnet mit dem, was du eingegeben hast. Er untersucht dich nicht.</translation>
    </message>
    <message>
        <source>doctor heart screening questionnaire</source>
        <translation>Arzt Herz Vorprüfung Fragebogen Gesundheit</translation>
    </message>
    <message>
        <source>Wishes</source>
        <translation>Wünsche</translation>
    </message>
    <message>
        <source>What the build-up is to hold besides running, how often a week is cut back and how the weeks after it grow. A builder keeps to it as far as the rules allow and names what gives way. Strength lies on days with time to run, beyond it where that is full.</source>
        <translation>Was der Aufbau außer Laufen enthalten soll, wie oft eine Woche entlastet wird und wie die Wochen danach wachsen. Wer neu aufbauen lässt, bekommt das, soweit die Regeln es erlauben; was zurückstehen muss, wird genannt. Kraft liegt auf Tagen mit Laufzeit, und darüber hinaus, wo diese voll ist.</translation>
    </message>
    <message>
        <source>Fasted runs are easy and short only, and not for everybody; heat days never alone. Both stay off until the questions on health are answered with no.</source>
        <translation>Nüchternläufe sind nur locker und kurz und nicht für jeden; Hitzetage nie allein. Beides bleibt aus, bis die Fragen zur Gesundheit mit Nein beantwortet sind.</translation>
    </message>
    <message>
        <source>strength cross-training back-to-back night heat fasted</source>
        <translation>Kraft Ausgleichstraining Doppeltag Nacht Hitze nüchtern</translation>
    </message>
    <message>
        <source>Hours, drop and climbing speed</source>
        <translation>Stunden, Abstieg und Steigtempo</translation>
    </message>
    <message>
        <source>Time on feet of a usual week, how long your longest run of the last 30 days took and what it dropped, and how many metres you climb in an hour at easy effort. Left empty, distance and easy pace stand in for them. Unless you choose, the ramp counts hours where the race climbs over 30 m per km and your hours are given, else distance.</source>
        <translation>Zeit auf den Beinen in einer üblichen Woche, wie lange dein längster Lauf der letzten 30 Tage dauerte und wie viel Abstieg er hatte, und wie viele Meter du in einer Stunde locker steigst. Bleibt es leer, treten Distanz und lockeres Tempo an ihre Stelle. Wenn du nichts wählst, zählt die Steigerung Stunden, wo das Rennen über 30 m je km steigt und deine Stunden angegeben sind, sonst Distanz.</translation>
    </message>
    <message>
        <source>volume hours vertical speed flat-equivalent yardstick</source>
        <translation>Umfang Stunden Steigtempo Höhenmeter flach umgerechnet Maßstab</translation>
    </message>
    <message>
        <source>Days away</source>
        <translation>Abwesenheit</translation>
    </message>
    <message>
        <source>Days on which no run fits, or less of one than usual: travel, holidays, shifts. What is built anew keeps to them; what stands already is left alone.</source>
        <translation>Tage, an denen kein Lauf passt oder weniger als sonst: Reisen, Urlaub, Schichten. Was neu gebaut wird, hält sich daran; was schon steht, bleibt.</translation>
    </message>
    <message>
        <source>travel holiday no-run dates availability</source>
        <translation>Reise Urlaub lauffreie Tage Verfügbarkeit</translation>
    </message>
    <message>
        <source>Hands on sessions</source>
        <translation>Einheiten von Hand</translation>
    </message>
    <message>
        <source>Drag a tile to move it, with Ctrl to copy it, its right edge to make it longer; draw a box over empty days to select. Ctrl and click adds one, Shift and click all between. Ctrl+arrows move, Alt+left and right shorten and lengthen, Shift+arrows select on. Type 12 or 1 h 30 over a tile, or T and long 28. S swaps two, L locks, K opens the shelf of kinds, Ctrl+X, C and V cut, copy and paste.</source>
        <translation>Zieh eine Kachel, um sie zu verschieben, mit Strg, um sie zu kopieren, an ihrem rechten Rand, um sie zu verlängern; zieh einen Rahmen über leere Tage, um sie auszuwählen. Strg und Klick nimmt eine dazu, Umschalt und Klick alle dazwischen. Strg+Pfeile verschieben, Alt+links und rechts kürzen und verlängern, Umschalt+Pfeile wählen weiter aus. Tippe 12 oder 1 h 30 über einer Kachel, oder T und lang 28. S tauscht zwei, L sperrt, K öffnet die Ablage der Arten, Strg+X, C und V schneiden aus, kopieren und fügen ein.</translation>
    </message>
    <message>
        <source>Made longer, a session keeps its pace and its climb per kilometre. Each deed is one step that can be undone.</source>
        <translation>Wird eine Einheit länger, behält sie ihr Tempo und ihren Anstieg je Kilometer. Jede Tat ist ein Schritt, der sich rückgängig machen lässt.</translation>
    </message>
    <message>
        <source>drag copy paste repeat swap lock select keys shelf kinds</source>
        <translation>ziehen kopieren einfügen wiederholen tauschen sperren auswählen Tasten Ablage Arten</translation>
    </message>
    <message>
        <source>Mends</source>
        <translation>Abhilfen</translation>
    </message>
    <message>
        <source>A line underlined beneath a check says what would put it right; a click, or Enter on it, does that as one step. Where a dragged session breaks a rule and the hand rests, the nearest day that would hold is looked for, else a run to change places with; where an edge is drawn too far, a length that would hold. H does it.</source>
        <translation>Eine unterstrichene Zeile unter einer Prüfung sagt, was sie in Ordnung brächte; ein Klick oder die Eingabetaste darauf tut es in einem Schritt. Wo eine gezogene Einheit eine Regel bricht und die Hand ruht, wird der nächste Tag gesucht, der hielte, sonst ein Lauf zum Tauschen; wo ein Rand zu weit gezogen ist, eine Länge, die hielte. H tut es.</translation>
    </message>
    <message>
        <source>What is offered breaks no rule for the session and leaves no other rule worse than before the drag; a day has time enough free and no other run.</source>
        <translation>Was angeboten wird, bricht keine Regel für die Einheit und macht keine andere schlechter als vor dem Ziehen; ein Tag hat genug freie Zeit und keinen anderen Lauf.</translation>
    </message>
    <message>
        <source>repair fix suggestion nearest day</source>
        <translation>Umbau beheben Vorschlag nächster Tag</translation>
    </message>
    <message>
        <source>Longest run, and the 30 days before it</source>
        <translation>Längster Lauf und die 30 Tage davor</translation>
    </message>
    <message>
        <source>The longest run of the week, planned or done, and the longest of the 30 days before it: the first should exceed the second by 10 % at most. Before 30 days lie behind, the longest run you entered counts.</source>
        <translation>Der längste Lauf der Woche, geplant oder gelaufen, und der längste der 30 Tage davor: Der erste sollte den zweiten um höchstens 10 % übertreffen. Solange noch keine 30 Tage zurückliegen, zählt der längste Lauf, den du angegeben hast.</translation>
    </message>
    <message>
        <source>Observed in 5205 runners; no trial.</source>
        <translation>Beobachtet an 5205 Läufern; kein Versuch.</translation>
    </message>
    <message>
        <source>reference 30-day</source>
        <translation>Bezug 30 Tage</translation>
    </message>
    <message>
        <source>Races to pick from</source>
        <translation>Rennen zur Auswahl</translation>
    </message>
    <message>
        <source>Several races side by side: the weeks there are against the weeks needed, what can be reached by then of what each asks, climb per km, hours in the dark, and between cutoffs the pace of level ground they ask against the one you are likely to run.</source>
        <translation>Mehrere Rennen nebeneinander: die Wochen, die es gibt, gegen die nötigen, was sich bis dahin von dem erreichen lässt, was jedes verlangt, Anstieg je km, Stunden im Dunkeln, und zwischen Zeitlimits das verlangte Tempo in der Ebene gegen das, das du wohl laufen wirst.</translation>
    </message>
    <message>
        <source>The likely finish keeps four fifths of your easy speed, with a metre of climb as eight along; between cutoffs your speed fades as on race day.</source>
        <translation>Das wahrscheinliche Ziel behält vier Fünftel deines lockeren Tempos, ein Meter Anstieg zählt wie acht in der Ebene; zwischen Zeitlimits lässt dein Tempo nach wie am Renntag.</translation>
    </message>
    <message>
        <source>A metre of climb as eight along.</source>
        <translation>Ein Meter Anstieg wie acht in der Ebene.</translation>
    </message>
    <message>
        <source>That four fifths of easy speed are kept.</source>
        <translation>Dass vier Fünftel des lockeren Tempos bleiben.</translation>
    </message>
    <message>
        <source>candidate choose compare race date</source>
        <translation>Kandidat wählen vergleichen Rennen Datum</translation>
    </message>
    <message>
        <source>Ground at hand</source>
        <translation>Untergrund vor Ort</translation>
    </message>
    <message>
        <source>What there is to train on where you live, and sessions on it that stand in for a stretch of the race: how often, at what gradient, how long, climb and drop in all. What cannot be matched is said, with what to do instead.</source>
        <translation>Was es bei dir zum Trainieren gibt, und Einheiten darauf, die für ein Stück des Rennens stehen: wie oft, wie steil, wie lange, Aufstieg und Abstieg insgesamt. Was sich nicht nachbilden lässt, wird gesagt, und was du stattdessen tun kannst.</translation>
    </message>
    <message>
        <source>Match compares the time on feet by class of gradient: 100 % is the same shares, 0 nothing in common. Of the stretch says how much of it one session stands for.</source>
        <translation>Übereinstimmung vergleicht die Zeit auf den Beinen je Steigungsklasse: 100 % sind gleiche Anteile, 0 nichts gemeinsam. Vom Stück sagt, für wie viel davon eine Einheit steht.</translation>
    </message>
    <message>
        <source>No trial says how alike training must be.</source>
        <translation>Kein Versuch sagt, wie ähnlich das Training sein muss.</translation>
    </message>
    <message>
        <source>Begin with few descents and few step-downs: the quads need days to get over it.</source>
        <translation>Beginne mit wenig Abstiegen und wenig Stufen abwärts: Die Oberschenkel brauchen Tage, um sich davon zu erholen.</translation>
    </message>
    <message>
        <source>treadmill stairs hill ramp flat stand-in similar</source>
        <translation>Laufband Treppe Hügel Rampe flach Ersatz ähnlich</translation>
    </message>
    <message>
        <source>Template block</source>
        <translation>Blockvorlage</translation>
    </message>
    <message>
        <source>A build-up kept in a file of its own, without its runner, marks and notes, to be laid into another plan: weeks to go and weekdays stay, distances are taken as they are or scaled so that the block begins at the other runner&apos;s usual week, times follow the easy pace. What was done, what is locked, and races on the way stay.</source>
        <translation>Ein Aufbau in eigener Datei, ohne seinen Läufer, dessen Werte und Notizen, zum Einlegen in einen anderen Plan: Restwochen und Wochentage bleiben, Distanzen werden übernommen oder so angepasst, dass der Block bei der üblichen Woche des anderen Läufers beginnt, Zeiten folgen dem lockeren Tempo. Was gelaufen ist, was gesperrt ist und Rennen auf dem Weg bleiben.</translation>
    </message>
    <message>
        <source>Scaled by usual week over usual week, between 0.4 and 1.5. Every rule is checked again for the runner it is laid in for, before anything changes.</source>
        <translation>Angepasst mit üblicher Woche durch übliche Woche, zwischen 0,4 und 1,5. Jede Regel wird für den Läufer, für den er eingelegt wird, neu geprüft, bevor sich etwas ändert.</translation>
    </message>
    <message>
        <source>How far a template is scaled.</source>
        <translation>Wie weit eine Vorlage angepasst wird.</translation>
    </message>
    <message>
        <source>A block that suited one runner can hurt another. It knows nothing of health, of days without time or of ground at hand: look at each week.</source>
        <translation>Ein Block, der einem Läufer gut tat, kann einem anderen schaden. Er weiß nichts von Gesundheit, von Tagen ohne Zeit oder vom Gelände vor Ort: Sieh dir jede Woche an.</translation>
    </message>
    <message>
        <source>coach reuse another runner athlete copy block file</source>
        <translation>Trainer wiederverwenden anderer Läufer Athlet kopieren Block Datei</translation>
    </message>
    <message>
        <source>Race day</source>
        <translation>Renntag</translation>
    </message>
    <message>
        <source>The race from start to finish on one axis, by distance or by clock. Aid stations are lines through all lanes. Ctrl and the wheel zoom in, the wheel alone moves along, 0 shows the whole race again.</source>
        <translation>Das Rennen vom Start bis zum Ziel auf einer Achse, nach Distanz oder nach Uhr. Verpflegungsstellen sind Linien durch alle Spuren. Strg und Mausrad zoomen, das Rad allein fährt entlang, 0 zeigt wieder das ganze Rennen.</translation>
    </message>
    <message>
        <source>lower storey race plan</source>
        <translation>unteres Stockwerk Rennplan</translation>
    </message>
    <message>
        <source>By distance or by clock</source>
        <translation>Nach Distanz oder nach Uhr</translation>
    </message>
    <message>
        <source>What the lanes of race day run along. By distance a climb is as wide as it is long; by clock it is as wide as the time it takes you, which is the better view for food and for the night.</source>
        <translation>Woran die Spuren des Renntags entlanglaufen. Nach Distanz ist ein Anstieg so breit, wie er lang ist; nach Uhr so breit wie die Zeit, die du dafür brauchst. Das ist die bessere Sicht für Verpflegung und Nacht.</translation>
    </message>
    <message>
        <source>Between the two the target tells where you are when.</source>
        <translation>Zwischen beiden sagt die Zielzeit, wann du wo bist.</translation>
    </message>
    <message>
        <source>scale foot axis</source>
        <translation>Skala Fuß Achse</translation>
    </message>
    <message>
        <source>The course</source>
        <translation>Die Strecke</translation>
    </message>
    <message>
        <source>The line of the race from a GPX file, with or without heights. Aid stations are proposed from its waypoints. What had to be mended in the file is said in the ledger. Nothing in the file itself is changed.</source>
        <translation>Die Linie des Rennens aus einer GPX-Datei, mit oder ohne Höhen. Verpflegungsstellen werden aus ihren Wegpunkten vorgeschlagen. Was an der Datei auszubessern war, steht in den Angaben. In der Datei selbst ändert sich nichts.</translation>
    </message>
    <message>
        <source>Length is measured point to point over the ellipsoid of the Earth. It seldom equals the distance the race announces: a line with few points is shorter, a shaky one longer.</source>
        <translation>Die Länge wird von Punkt zu Punkt über das Ellipsoid der Erde gemessen. Sie gleicht selten der Distanz, die das Rennen nennt: Eine Linie mit wenigen Punkten ist kürzer, eine zittrige länger.</translation>
    </message>
    <message>
        <source>Distance on the ellipsoid.</source>
        <translation>Distanz auf dem Ellipsoid.</translation>
    </message>
    <message>
        <source>gpx track length distance of the race</source>
        <translation>gpx Track Länge Distanz des Rennens</translation>
    </message>
    <message>
        <source>A course from a table</source>
        <translation>Eine Strecke aus einer Tabelle</translation>
    </message>
    <message>
        <source>Where there is no GPX file, the race&apos;s own table will do: each place with its distance, the climb and drop of the leg that ends there, its cutoff and what is there. Distances, climb and drop are kept as typed; the hills between are made up.</source>
        <translation>Wo es keine GPX-Datei gibt, genügt die Tabelle des Rennens: jeder Ort mit seiner Distanz, dem Aufstieg und Abstieg des Teilstücks, das dort endet, seinem Zeitlimit und dem, was es dort gibt. Distanzen, Aufstieg und Abstieg bleiben wie getippt; die Hügel dazwischen sind erfunden.</translation>
    </message>
    <message>
        <source>A leg gets a hill to each 5 km at most, all of one height, up first; its climbs and drops have one mean gradient. Light is that of the place the time zone is named after.</source>
        <translation>Ein Teilstück bekommt höchstens einen Hügel je 5 km, alle gleich hoch, zuerst hinauf; seine Anstiege und Abstiege haben eine mittlere Steigung. Das Licht ist das des Ortes, nach dem die Zeitzone benannt ist.</translation>
    </message>
    <message>
        <source>no gpx typed pasted schematic handbook spreadsheet</source>
        <translation>kein gpx getippt eingefügt schematisch Rennheft Tabelle</translation>
    </message>
    <message>
        <source>Profile</source>
        <translation>Profil</translation>
    </message>
    <message>
        <source>Height along the course, smoothed. The colour says how steep: sky down, stone level, ochre up; the hatching gets denser where it is steeper, so that it reads in black and white too.</source>
        <translation>Höhe entlang der Strecke, geglättet. Die Farbe sagt, wie steil: Himmel abwärts, Stein eben, Ocker aufwärts; die Schraffur wird dichter, wo es steiler ist, so dass sie sich auch in Schwarz-Weiß lesen lässt.</translation>
    </message>
    <message>
        <source>Heights of the file averaged over 70 m and read every 10 m. Gradient is rise over distance, 10 % being 10 m up in 100 m.</source>
        <translation>Höhen der Datei über 70 m gemittelt und alle 10 m abgelesen. Steigung ist Höhe durch Distanz, 10 % sind 10 m hinauf auf 100 m.</translation>
    </message>
    <message>
        <source>The 70 m.</source>
        <translation>Die 70 m.</translation>
    </message>
    <message>
        <source>That height must be smoothed, and that the sum hangs on how far.</source>
        <translation>Dass die Höhe geglättet werden muss, und dass die Summe davon abhängt, wie stark.</translation>
    </message>
    <message>
        <source>elevation height gradient steep slope hachures lane</source>
        <translation>Höhe Höhenprofil Gefälle Steigung steil Hang Schraffur Spur</translation>
    </message>
    <message>
        <source>Climb and drop of the course</source>
        <translation>Aufstieg und Abstieg der Strecke</translation>
    </message>
    <message>
        <source>All metres up and all metres down from start to finish, or over one section. Two devices on the same run differ by a fifth and more, and race organisers count in their own ways, so don&apos;t be surprised by another figure.</source>
        <translation>Alle Meter hinauf und alle Meter hinunter vom Start bis zum Ziel oder über einen Abschnitt. Zwei Geräte auf demselben Lauf weichen um ein Fünftel und mehr voneinander ab, und Veranstalter zählen auf ihre Weise; wundere dich also nicht über einen anderen Wert.</translation>
    </message>
    <message>
        <source>Summed from turning point to turning point of the smoothed profile; ups and downs of less than 5 m are not counted. Summing every small rise would count the noise of the file as climb.</source>
        <translation>Summiert von Wendepunkt zu Wendepunkt des geglätteten Profils; Auf und Ab von weniger als 5 m zählt nicht. Jede kleine Erhebung zu summieren hieße, das Rauschen der Datei als Aufstieg zu zählen.</translation>
    </message>
    <message>
        <source>The 5 m.</source>
        <translation>Die 5 m.</translation>
    </message>
    <message>
        <source>ascent descent elevation gain vert metres section</source>
        <translation>Aufstieg Abstieg Höhengewinn Höhenmeter hm Abschnitt</translation>
    </message>
    <message>
        <source>Aid station</source>
        <translation>Verpflegungsstelle</translation>
    </message>
    <message>
        <source>A place on the course where you may stop, with its cutoff, your planned stop and what there is. Sections run from one to the next. Move one by typing its place, or drag it by its name.</source>
        <translation>Ein Ort an der Strecke, an dem du halten kannst, mit Zeitlimit, geplantem Halt und dem, was es dort gibt. Abschnitte gehen von einem zum nächsten. Verschiebe einen, indem du seine Stelle tippst oder ihn an seinem Namen ziehst.</translation>
    </message>
    <message>
        <source>checkpoint control station name place at</source>
        <translation>Kontrollpunkt Posten Station Name Ort bei</translation>
    </message>
    <message>
        <source>What is there</source>
        <translation>Was es dort gibt</translation>
    </message>
    <message>
        <source>Water, food, drop bag, crew, medical: what the aid station offers, from the race&apos;s handbook. Bag and crew are marked on the fuel card.</source>
        <translation>Wasser, Essen, Dropbag, Betreuung, Sanitäter: was die Verpflegungsstelle bietet, laut Rennheft. Beutel und Betreuung stehen auch auf der Verpflegungskarte.</translation>
    </message>
    <message>
        <source>offers drop bag crew water food</source>
        <translation>bietet Dropbag Betreuung Wasser Essen</translation>
    </message>
    <message>
        <source>Planned stop</source>
        <translation>Geplanter Halt</translation>
    </message>
    <message>
        <source>How long you mean to stand at an aid station. Stops are part of the finish aimed for: the longer they are, the faster you must run. Enter what you really take; ten minutes at ten stations are most of two hours.</source>
        <translation>Wie lange du an einer Verpflegungsstelle stehen willst. Halte gehören zur angestrebten Zielzeit: Je länger sie sind, desto schneller musst du laufen. Gib ein, was du wirklich brauchst; zehn Minuten an zehn Stationen sind fast zwei Stunden.</translation>
    </message>
    <message>
        <source>What you typed, added after the arrival there.</source>
        <translation>Was du getippt hast, nach der Ankunft dort dazugezählt.</translation>
    </message>
    <message>
        <source>In a 106 km race less time stopped went with a faster race (r = -0.77).</source>
        <translation>In einem Rennen über 106 km ging weniger Standzeit mit einem schnelleren Rennen einher (r = -0,77).</translation>
    </message>
    <message>
        <source>pause rest time at the station</source>
        <translation>Pause Rast Zeit an der Station</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Licht</translation>
    </message>
    <message>
        <source>Day, twilight and dark along the race, at its place and date. Twilight lasts until the sun is 6 degrees under the horizon; then you need the lamp. In a deep valley or a wood it is dark sooner.</source>
        <translation>Tag, Dämmerung und Dunkel entlang des Rennens, an seinem Ort und Datum. Die Dämmerung dauert, bis die Sonne 6 Grad unter dem Horizont steht; dann brauchst du die Lampe. In einem tiefen Tal oder im Wald ist es früher dunkel.</translation>
    </message>
    <message>
        <source>Height of the sun at the start of the course for every minute of the race; level horizon, no clouds.</source>
        <translation>Sonnenhöhe am Start der Strecke für jede Minute des Rennens; ebener Horizont, keine Wolken.</translation>
    </message>
    <message>
        <source>Position of the sun.</source>
        <translation>Stand der Sonne.</translation>
    </message>
    <message>
        <source>sunrise sunset night lamp dusk dawn lane</source>
        <translation>Sonnenaufgang Sonnenuntergang Nacht Lampe Abenddämmerung Morgendämmerung Spur</translation>
    </message>
    <message>
        <source>Section</source>
        <translation>Abschnitt</translation>
    </message>
    <message>
        <source>A stretch of the course with one target, mostly from one aid station to the next. Drag the right edge of its step to move its end, the top to make it faster or slower.</source>
        <translation>Ein Stück der Strecke mit einer Vorgabe, meist von einer Verpflegungsstelle zur nächsten. Zieh den rechten Rand seiner Stufe, um sein Ende zu verschieben, die Oberkante, um es schneller oder langsamer zu machen.</translation>
    </message>
    <message>
        <source>Length: its end minus its start along the course.</source>
        <translation>Länge: sein Ende minus sein Anfang entlang der Strecke.</translation>
    </message>
    <message>
        <source>leg split length from to</source>
        <translation>Teilstück Zwischenzeit Länge von bis</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Vorgabe</translation>
    </message>
    <message>
        <source>The pace the plan asks for in a section, stops left out; it is what the pace card prints. By default it fades half as much as the forecast: a little slower at first than most start, a little faster at the end. Higher in the lane is faster.</source>
        <translation>Das Tempo, das der Plan in einem Abschnitt verlangt, ohne Halte; es steht auf der Tempokarte. Ohne Zutun lässt es halb so stark nach wie die Prognose: am Anfang etwas langsamer, als die meisten starten, am Ende etwas schneller. Höher in der Spur ist schneller.</translation>
    </message>
    <message>
        <source>The running time of the section over its length. The curve behind it meets the finish aimed for, with what the ground costs, half of your fade, and the night.</source>
        <translation>Die Laufzeit des Abschnitts durch seine Länge. Die Kurve dahinter trifft die angestrebte Zielzeit, mit dem, was der Untergrund kostet, der Hälfte deines Nachlassens und der Nacht.</translation>
    </message>
    <message>
        <source>The pace model, fitted to real runs.</source>
        <translation>Das Tempomodell, an echte Läufe angepasst.</translation>
    </message>
    <message>
        <source>Half the fade: steadier runners do better, but nobody has tried it out on the same runners.</source>
        <translation>Das halbe Nachlassen: Gleichmäßigere Läufer sind besser, aber niemand hat es an denselben Läufern ausprobiert.</translation>
    </message>
    <message>
        <source>Over 100 km the ten fastest of 67 stayed within 15 % of their starting speed; slower ones lost more.</source>
        <translation>Über 100 km blieben die zehn schnellsten von 67 innerhalb von 15 % ihres Anfangstempos; langsamere verloren mehr.</translation>
    </message>
    <message>
        <source>pace speed section target lane</source>
        <translation>Tempo Geschwindigkeit Abschnitt Vorgabe Spur</translation>
    </message>
    <message>
        <source>Fixed target</source>
        <translation>Feste Vorgabe</translation>
    </message>
    <message>
        <source>A section whose time you set yourself keeps it. The others share what is left, so that the finish stays, unless you let it move; if all are fixed, it moves. Delete lets the section follow the curve again.</source>
        <translation>Ein Abschnitt, dessen Zeit du selbst setzt, behält sie. Die anderen teilen sich den Rest, so dass die Zielzeit bleibt, außer du lässt sie wandern; sind alle fest, wandert sie. Entf lässt den Abschnitt wieder der Kurve folgen.</translation>
    </message>
    <message>
        <source>The free sections are all run at the same share of their usual time, from half to twice of it; beyond that the program refuses.</source>
        <translation>Die freien Abschnitte werden alle mit demselben Anteil ihrer üblichen Zeit gelaufen, von der Hälfte bis zum Doppelten; darüber hinaus lehnt das Programm ab.</translation>
    </message>
    <message>
        <source>lock set own time follow the curve</source>
        <translation>sperren setzen eigene Zeit der Kurve folgen</translation>
    </message>
    <message>
        <source>Running time</source>
        <translation>Laufzeit</translation>
    </message>
    <message>
        <source>How long the section takes from leaving one place to arriving at the next, walking included and stops left out. Type one and it is fixed.</source>
        <translation>Wie lange der Abschnitt vom Verlassen eines Ortes bis zur Ankunft am nächsten dauert, mit Gehen, ohne Halte. Tippe eine Zeit, und sie ist fest.</translation>
    </message>
    <message>
        <source>Arrival minus the leaving before it, on the target curve.</source>
        <translation>Ankunft minus der Aufbruch davor, auf der Kurve der Vorgaben.</translation>
    </message>
    <message>
        <source>moving time duration of a section</source>
        <translation>Bewegungszeit Dauer eines Abschnitts</translation>
    </message>
    <message>
        <source>Forecast</source>
        <translation>Prognose</translation>
    </message>
    <message>
        <source>What runners of your finish time really do: start fast, fade. The dashed line. Windows are drawn about it, and cutoffs are judged by it wherever it comes later than the target, because that is where most people end up.</source>
        <translation>Was Läufer mit deiner Zielzeit wirklich tun: schnell starten, nachlassen. Die gestrichelte Linie. Fenster liegen um sie herum, und Zeitlimits werden nach ihr beurteilt, wo sie später kommt als die Vorgabe, denn dort landen die meisten.</translation>
    </message>
    <message>
        <source>Same ground and same finish as the target, with all of your fade. What you give after h hours is (1 + h / onset) to the power -fade, and a tenth less in the dark; onset and fade are those of most runners until your own runs tell better.</source>
        <translation>Gleicher Untergrund und gleiches Ziel wie die Vorgabe, mit deinem ganzen Nachlassen. Was du nach h Stunden gibst, ist (1 + h / Einsatz) hoch -Nachlassen, und ein Zehntel weniger im Dunkeln; Einsatz und Nachlassen sind die der meisten Läufer, bis deine eigenen Läufe es besser wissen.</translation>
    </message>
    <message>
        <source>Fitted to recordings of real runs from 21 to 158 km. On runs kept apart half of all passing times were off by less than 1 % of the finish time, nine of ten by less than 4 %.</source>
        <translation>Angepasst an Aufzeichnungen echter Läufe von 21 bis 158 km. Bei zurückgehaltenen Läufen lag die Hälfte aller Durchgangszeiten um weniger als 1 % der Zielzeit daneben, neun von zehn um weniger als 4 %.</translation>
    </message>
    <message>
        <source>Over 106 km speed fell on every gradient until near the end.</source>
        <translation>Über 106 km sank das Tempo bei jeder Steigung bis kurz vor dem Ziel.</translation>
    </message>
    <message>
        <source>prediction fade slow down positive split dashed</source>
        <translation>Prognose Vorhersage Nachlassen langsamer werden gestrichelt</translation>
    </message>
    <message>
        <source>How pace is worked out</source>
        <translation>Wie das Tempo berechnet wird</translation>
    </message>
    <message>
        <source>Each metre costs more or less by how steep it is and what is underfoot; you give less as the hours pass and in the dark. The finish aimed for is shared out so that both fit. There is no search for a magic speed in it.</source>
        <translation>Jeder Meter kostet mehr oder weniger, je nachdem, wie steil er ist und was unter den Füßen liegt; du gibst weniger, je mehr Stunden vergehen, und im Dunkeln. Die angestrebte Zielzeit wird so verteilt, dass beides passt. Eine Suche nach einem Zaubertempo steckt nicht darin.</translation>
    </message>
    <message>
        <source>Time is shared out by cost over power. Power after h hours: (1 + h / onset) to the power -fade, times 0.9 in the dark. Stops are left out of the cost but not of the hours.</source>
        <translation>Die Zeit wird nach Kosten durch Leistung verteilt. Leistung nach h Stunden: (1 + h / Einsatz) hoch -Nachlassen, im Dunkeln mal 0,9. Halte zählen nicht zu den Kosten, aber zu den Stunden.</translation>
    </message>
    <message>
        <source>Own fit to real runs. Sections come out with a scatter of 10 % and more; mud, queues and a bad day are not in it.</source>
        <translation>Eigene Anpassung an echte Läufe. Abschnitte streuen um 10 % und mehr; Matsch, Stau und ein schlechter Tag sind nicht darin.</translation>
    </message>
    <message>
        <source>model formula fade power night</source>
        <translation>Modell Formel Nachlassen Leistung Nacht</translation>
    </message>
    <message>
        <source>What a slope costs</source>
        <translation>Was ein Hang kostet</translation>
    </message>
    <message>
        <source>How much longer a metre takes uphill or downhill than on the level. Uphill follows measured energy; downhill follows what runners do, for hardly anyone takes the gift of a steep descent: at -6 % they are a tenth faster, at -22 % slower than on the level.</source>
        <translation>Wie viel länger ein Meter bergauf oder bergab dauert als in der Ebene. Bergauf folgt gemessener Energie; bergab folgt dem, was Läufer tun, denn kaum einer nimmt das Geschenk eines steilen Abstiegs an: Bei -6 % sind sie ein Zehntel schneller, bei -22 % langsamer als in der Ebene.</translation>
    </message>
    <message>
        <source>Uphill 1 plus 0.9 times the extra energy of running at that gradient over level running. Downhill a curve through 0.90 at -6 %, 0.97 at -13 %, 1.22 at -22 % and 1.85 at -38 %. Ground: gravel 1.02, smooth trail 1.05, technical trail 1.15, rock 1.40, sand 1.60 times; unknown counts as firm.</source>
        <translation>Bergauf 1 plus 0,9 mal die zusätzliche Energie des Laufens bei dieser Steigung gegenüber der Ebene. Bergab eine Kurve durch 0,90 bei -6 %, 0,97 bei -13 %, 1,22 bei -22 % und 1,85 bei -38 %. Untergrund: Schotter 1,02, glatter Trail 1,05, technischer Trail 1,15, Fels 1,40, Sand 1,60 mal; unbekannt zählt als fest.</translation>
    </message>
    <message>
        <source>Energy of running from -45 to +45 %, ten runners; the polynomial was read in public copies, not in the paper itself.</source>
        <translation>Energie des Laufens von -45 bis +45 %, zehn Läufer; das Polynom wurde in öffentlichen Abschriften gelesen, nicht im Artikel selbst.</translation>
    </message>
    <message>
        <source>The downhill curve and the 0.9, from real runs.</source>
        <translation>Die Kurve bergab und die 0,9, aus echten Läufen.</translation>
    </message>
    <message>
        <source>Sand: 1.6 times.</source>
        <translation>Sand: 1,6 mal.</translation>
    </message>
    <message>
        <source>Uneven ground: 1.05 times; the other grounds are ours.</source>
        <translation>Unebener Untergrund: 1,05 mal; die anderen Werte sind von uns.</translation>
    </message>
    <message>
        <source>uphill downhill surface terrain energy cost Minetti</source>
        <translation>bergauf bergab Untergrund Gelände Energiekosten Minetti</translation>
    </message>
    <message>
        <source>Arrive</source>
        <translation>Ankunft</translation>
    </message>
    <message>
        <source>When the target brings you to the end of the section, on the clock at the race. The planned stop comes after it.</source>
        <translation>Wann dich die Vorgabe ans Ende des Abschnitts bringt, nach der Uhr am Rennort. Der geplante Halt kommt danach.</translation>
    </message>
    <message>
        <source>Start time plus all running times and stops up to there.</source>
        <translation>Startzeit plus alle Laufzeiten und Halte bis dorthin.</translation>
    </message>
    <message>
        <source>arrival clock time split eta</source>
        <translation>Ankunft Uhrzeit Zwischenzeit eta</translation>
    </message>
    <message>
        <source>Arrival window</source>
        <translation>Ankunftsfenster</translation>
    </message>
    <message>
        <source>Where 8 of 10 arrivals fall, about the forecast: one day in ten you are earlier, one in ten later. Tell it to your crew. It takes for granted that you can run the finish you aim for.</source>
        <translation>Wohin 8 von 10 Ankünften fallen, um die Prognose herum: An einem von zehn Tagen bist du früher, an einem von zehn später. Sag es deiner Betreuung. Es setzt voraus, dass du die angestrebte Zielzeit laufen kannst.</translation>
    </message>
    <message>
        <source>From 10,000 simulated races (see Makes it). Their spread is near 0.09 x T x (s x (1 - s)) to the power 0.75 at the share s of the finish time T, joined with a finish that scatters by 4 %, or as much as its prediction says.</source>
        <translation>Aus 10.000 simulierten Rennen (siehe Schafft es). Ihre Streuung liegt nahe 0,09 x T x (s x (1 - s)) hoch 0,75 beim Anteil s der Zielzeit T, verbunden mit einer Zielzeit, die um 4 % streut oder so viel, wie ihre Vorhersage sagt.</translation>
    </message>
    <message>
        <source>Measured on real runs and one large race; the 4 % is a guess of ours.</source>
        <translation>Gemessen an echten Läufen und einem großen Rennen; die 4 % sind von uns geschätzt.</translation>
    </message>
    <message>
        <source>range spread probability chance crew</source>
        <translation>Bereich Spanne Streuung Wahrscheinlichkeit Chance Betreuung</translation>
    </message>
    <message>
        <source>Planned finish, and how likely</source>
        <translation>Zielzeit im Plan, und wie wahrscheinlich</translation>
    </message>
    <message>
        <source>Tightest cutoff</source>
        <translation>Engstes Zeitlimit</translation>
    </message>
    <message>
        <source>least in hand spare header</source>
        <translation>Reserve Luft Kopfzeile</translation>
    </message>
    <message>
        <source>The finish your targets come to, and between which times 8 of 10 days would end if you are in the shape you think. Injury, heat and bad stomachs are not in it.</source>
        <translation>Die Zielzeit, auf die deine Vorgaben kommen, und zwischen welchen Zeiten 8 von 10 Tagen enden würden, wenn du so in Form bist, wie du denkst. Verletzung, Hitze und ein schlechter Magen sind nicht darin.</translation>
    </message>
    <message>
        <source>The finish time and 1.28 times 4 % of it to both sides.</source>
        <translation>Die Zielzeit und 1,28 mal 4 % davon nach beiden Seiten.</translation>
    </message>
    <message>
        <source>The 4 %: how well runners know their finish beforehand. A guess of ours.</source>
        <translation>Die 4 %: wie gut Läufer ihre Zielzeit vorher kennen. Von uns geschätzt.</translation>
    </message>
    <message>
        <source>predicted finish time header</source>
        <translation>vorhergesagte Zielzeit Kopf</translation>
    </message>
    <message>
        <source>Cutoff</source>
        <translation>Zeitlimit</translation>
    </message>
    <message>
        <source>The latest arrival the race allows at a place, from its rules. Type it as a clock time or as race time, whichever the handbook gives. Where it counts leaving, your planned stop is taken off for you.</source>
        <translation>Die späteste Ankunft, die das Rennen an einem Ort erlaubt, laut Reglement. Tippe sie als Uhrzeit oder als Rennzeit, je nachdem, was das Rennheft angibt. Wo der Aufbruch zählt, wird dein geplanter Halt für dich abgezogen.</translation>
    </message>
    <message>
        <source>closing time limit cutoff after clock barrier</source>
        <translation>Schlusszeit Limit Zeitlimit nach Uhr Barriere</translation>
    </message>
    <message>
        <source>Time in hand</source>
        <translation>Zeitpolster</translation>
    </message>
    <message>
        <source>How much later you could arrive here and still make this and every later cutoff at planned speed. It is a step line: level up to the cutoff that binds, because a generous cutoff is worth nothing if the next is tight. Below zero one is missed.</source>
        <translation>Wie viel später du hier ankommen könntest und dieses und jedes spätere Zeitlimit bei geplantem Tempo noch schaffst. Es ist eine Stufenlinie: eben bis zum Zeitlimit, das bindet, denn ein großzügiges nützt nichts, wenn das nächste knapp ist. Unter null wird eines verpasst.</translation>
    </message>
    <message>
        <source>The least, over this and all later cutoffs, of cutoff minus arrival; the later of target and forecast counts as arrival.</source>
        <translation>Das Kleinste von Zeitlimit minus Ankunft über dieses und alle späteren Zeitlimits; als Ankunft zählt die spätere von Vorgabe und Prognose.</translation>
    </message>
    <message>
        <source>That the later of the two arrivals counts.</source>
        <translation>Dass die spätere der beiden Ankünfte zählt.</translation>
    </message>
    <message>
        <source>It holds only as long as you can keep planned speed to the finish.</source>
        <translation>Es gilt nur, solange du das geplante Tempo bis ins Ziel halten kannst.</translation>
    </message>
    <message>
        <source>buffer margin spare slack in hand lane late</source>
        <translation>Puffer Reserve Spielraum Zeitpolster Spur spät</translation>
    </message>
    <message>
        <source>To this cutoff</source>
        <translation>Zu diesem Zeitlimit</translation>
    </message>
    <message>
        <source>Time between your arrival and the cutoff of this place alone. Look at the time in hand as well: a later cutoff may be the tighter one.</source>
        <translation>Zeit zwischen deiner Ankunft und dem Zeitlimit allein dieses Ortes. Sieh auch auf das Zeitpolster: Ein späteres Zeitlimit kann das knappere sein.</translation>
    </message>
    <message>
        <source>Cutoff minus the later of the arrivals on target and forecast.</source>
        <translation>Zeitlimit minus die spätere der Ankünfte nach Vorgabe und Prognose.</translation>
    </message>
    <message>
        <source>margin</source>
        <translation>Spielraum</translation>
    </message>
    <message>
        <source>The cutoff that leaves you the least time, and how much. It is the one to plan for; if it is missed, change the finish aimed for, the stops, or the targets before it.</source>
        <translation>Das Zeitlimit, das dir am wenigsten Zeit lässt, und wie viel. Darauf solltest du planen; wird es verpasst, ändere die angestrebte Zielzeit, die Halte oder die Vorgaben davor.</translation>
    </message>
    <message>
        <source>The least of cutoff minus arrival over all cutoffs; the later of target and forecast counts.</source>
        <translation>Das Kleinste von Zeitlimit minus Ankunft über alle Zeitlimits; die spätere von Vorgabe und Prognose zählt.</translation>
    </message>
    <message>
        <source>When it gets hard here</source>
        <translation>Wenn es hier hart wird</translation>
    </message>
    <message>
        <source>Your own words for a bad patch in this section, written while you are calm: if this, then that. If the stomach turns, then walk ten minutes and sip. Try them out in rehearsal runs.</source>
        <translation>Deine eigenen Worte für ein Tief in diesem Abschnitt, in Ruhe geschrieben: wenn dies, dann das. Wenn der Magen rebelliert, dann zehn Minuten gehen und in kleinen Schlucken trinken. Probiere sie in Generalproben aus.</translation>
    </message>
    <message>
        <source>94 tests: if-then plans help people do what they meant to do.</source>
        <translation>94 Tests: Wenn-dann-Pläne helfen zu tun, was man sich vorgenommen hat.</translation>
    </message>
    <message>
        <source>29 runners over 60 miles: talking to oneself did not make them faster, but they liked it.</source>
        <translation>29 Läufer über 60 Meilen: Mit sich selbst zu reden machte sie nicht schneller, aber sie mochten es.</translation>
    </message>
    <message>
        <source>mental head if then motivation note low patch</source>
        <translation>mental Kopf wenn dann Motivation Notiz Tief</translation>
    </message>
    <message>
        <source>Shape of the target</source>
        <translation>Form der Vorgabe</translation>
    </message>
    <message>
        <source>How much of the forecast&apos;s fade the target keeps: none is even effort, half is the usual, all of it is the forecast itself, more starts faster still. It also says whether the finish stays when you change one section, or moves with it.</source>
        <translation>Wie viel vom Nachlassen der Prognose die Vorgabe behält: nichts ist gleichmäßige Anstrengung, die Hälfte ist üblich, alles ist die Prognose selbst, mehr startet noch schneller. Hier steht auch, ob die Zielzeit bleibt, wenn du einen Abschnitt änderst, oder mitwandert.</translation>
    </message>
    <message>
        <source>The fade of the pace model times that part. Ground, night and the other conditions slow every shape alike. If the finish moves, the forecast is that of the new finish.</source>
        <translation>Das Nachlassen des Tempomodells mal diesen Anteil. Untergrund, Nacht und die anderen Bedingungen bremsen jede Form gleich. Wandert die Zielzeit, ist die Prognose die der neuen Zielzeit.</translation>
    </message>
    <message>
        <source>even effort fade negative split hold move finish</source>
        <translation>gleichmäßig Anstrengung Nachlassen halten verschieben Zielzeit</translation>
    </message>
    <message>
        <source>Fade over the hours</source>
        <translation>Nachlassen über die Stunden</translation>
    </message>
    <message>
        <source>How much you slow down as the hours pass: 0 never, 8 front runners, 10 the usual, 20 strong. It is of the runner and the day, and half of what a forecast does not know; several long recordings tell it best.</source>
        <translation>Wie sehr du mit den Stunden langsamer wirst: 0 nie, 8 Spitzenläufer, 10 üblich, 20 stark. Es hängt am Läufer und am Tag und ist die Hälfte dessen, was eine Prognose nicht weiß; mehrere lange Aufzeichnungen sagen es am besten.</translation>
    </message>
    <message>
        <source>A hundred times the power of the pace model: after h hours you give (1 + h / onset) to the power -fade.</source>
        <translation>Hundertmal die Potenz des Tempomodells: Nach h Stunden gibst du (1 + h / Einsatz) hoch -Nachlassen.</translation>
    </message>
    <message>
        <source>Best per run from 0 to 30 on recordings.</source>
        <translation>Der beste Wert je Lauf lag bei Aufzeichnungen zwischen 0 und 30.</translation>
    </message>
    <message>
        <source>slow down tire fatigue endurance</source>
        <translation>langsamer werden ermüden Müdigkeit Ausdauer</translation>
    </message>
    <message>
        <source>Speed downhill</source>
        <translation>Tempo bergab</translation>
    </message>
    <message>
        <source>How fast you are on descents against what most runners of your level pace do. It shifts time between climbs and descents; the finish aimed for stays.</source>
        <translation>Wie schnell du auf Abstiegen bist, gemessen an dem, was die meisten Läufer mit deinem Tempo in der Ebene tun. Es verschiebt Zeit zwischen Anstiegen und Abstiegen; die angestrebte Zielzeit bleibt.</translation>
    </message>
    <message>
        <source>A factor on speed, in full from 5 % down, less on gentler descents.</source>
        <translation>Ein Faktor auf das Tempo, ganz ab 5 % Gefälle, weniger auf sanfteren Abstiegen.</translation>
    </message>
    <message>
        <source>descent skill technical braking</source>
        <translation>Abstieg Können technisch bremsen</translation>
    </message>
    <message>
        <source>Fit from my runs</source>
        <translation>An meine Läufe anpassen</translation>
    </message>
    <message>
        <source>What your own recordings say of how you fade, climb and descend, beside the defaults. Tick those kept with the plan or add files. The plan changes only if you use the figures; target, windows and predicted finish then do. Each run is also forecast from the others alone: where the defaults do better then, keep them.</source>
        <translation>Was deine eigenen Aufzeichnungen darüber sagen, wie du nachlässt, steigst und absteigst, neben den Standardwerten. Hake die an, die beim Plan liegen, oder füge Dateien hinzu. Der Plan ändert sich nur, wenn du die Werte übernimmst; dann ändern sich Vorgabe, Fenster und vorhergesagte Zielzeit. Jeder Lauf wird auch allein aus den anderen vorhergesagt: Wo die Standardwerte dabei besser sind, behalte sie.</translation>
    </message>
    <message>
        <source>Robust regression of pace over short pieces, drawn towards the defaults where there is little. Errors are the median over tenths of a run. Standing time is set apart.</source>
        <translation>Robuste Regression des Tempos über kurze Stücke, zu den Standardwerten gezogen, wo es wenig gibt. Fehler sind der Median über die Zehntel eines Laufs. Standzeit wird getrennt geführt.</translation>
    </message>
    <message>
        <source>How strongly the defaults draw.</source>
        <translation>Wie stark die Standardwerte ziehen.</translation>
    </message>
    <message>
        <source>recordings GPX calibrate own runs error spread</source>
        <translation>Aufzeichnungen GPX kalibrieren eigene Läufe Fehler Streuung</translation>
    </message>
    <message>
        <source>Predicted finish</source>
        <translation>Vorhergesagte Zielzeit</translation>
    </message>
    <message>
        <source>The finish to expect from what you have run, as a window of 8 in 10 days, with the reasons. Nothing changes until you press Use as goal; then the window of the finish becomes that of the prediction.</source>
        <translation>Die Zielzeit, die nach deinen Läufen zu erwarten ist, als Fenster von 8 in 10 Tagen, mit den Gründen. Nichts ändert sich, bis du Als Ziel nehmen drückst; dann wird das Fenster der Zielzeit das der Vorhersage.</translation>
    </message>
    <message>
        <source>Each run is turned into flat-equivalent distance and carried to that of the course: time grows with distance to the power 1.06 to 1.08 up to 4 h, 1.12 to 1.18 up to a day, 1.20 to 1.30 beyond. A long run counts as 10 % slower than a race.</source>
        <translation>Jeder Lauf wird flach umgerechnet und auf die Distanz der Strecke übertragen: Die Zeit wächst mit der Distanz hoch 1,06 bis 1,08 bis 4 h, 1,12 bis 1,18 bis zu einem Tag, 1,20 bis 1,30 darüber. Ein langer Lauf zählt als 10 % langsamer als ein Rennen.</translation>
    </message>
    <message>
        <source>The power law, for efforts of up to four hours.</source>
        <translation>Das Potenzgesetz, für Belastungen bis vier Stunden.</translation>
    </message>
    <message>
        <source>The powers beyond four hours, and the 10 %.</source>
        <translation>Die Potenzen über vier Stunden und die 10 %.</translation>
    </message>
    <message>
        <source>It does not know heat, mud, sleep or your stomach. From runs half as long or less the window is wide, and rightly so.</source>
        <translation>Es weiß nichts von Hitze, Matsch, Schlaf oder deinem Magen. Aus Läufen, die halb so lang oder kürzer sind, wird das Fenster weit, und das zu Recht.</translation>
    </message>
    <message>
        <source>predict prediction how long will it take estimate goal</source>
        <translation>vorhersagen Vorhersage wie lange dauert es schätzen Ziel</translation>
    </message>
    <message>
        <source>Past runs</source>
        <translation>Frühere Läufe</translation>
    </message>
    <message>
        <source>Races and long runs for the prediction: distance, climb, time without long stops, and whether it was a race. Two or three of the last year, the longer the better. Recordings can be added: their ground is measured, not guessed from the climb. They are kept with the runner.</source>
        <translation>Rennen und lange Läufe für die Vorhersage: Distanz, Anstieg, Zeit ohne lange Halte, und ob es ein Rennen war. Zwei oder drei aus dem letzten Jahr, je länger, desto besser. Aufzeichnungen lassen sich hinzufügen: Ihr Gelände wird gemessen, nicht aus dem Anstieg geschätzt. Sie bleiben beim Läufer.</translation>
    </message>
    <message>
        <source>results history races typed in</source>
        <translation>Ergebnisse Verlauf Rennen eingetippt</translation>
    </message>
    <message>
        <source>Beside other rules</source>
        <translation>Neben anderen Regeln</translation>
    </message>
    <message>
        <source>The splits of your target beside those of plain rules that all end at the same finish: even pace, climb counted as distance, hikers, constant power. The last line is the finish a hiking rule names by itself.</source>
        <translation>Die Zwischenzeiten deiner Vorgabe neben denen einfacher Regeln, die alle auf dieselbe Zielzeit kommen: gleichmäßiges Tempo, Anstieg als Distanz gezählt, Wanderer, gleichbleibende Leistung. Die letzte Zeile ist die Zielzeit, die eine Wanderregel von sich aus nennt.</translation>
    </message>
    <message>
        <source>Each rule&apos;s time for every stretch, stretched to the same running time; your stops added.</source>
        <translation>Die Zeit jeder Regel für jedes Stück, auf dieselbe Laufzeit gestreckt; deine Halte kommen dazu.</translation>
    </message>
    <message>
        <source>1 m up as 8 m along.</source>
        <translation>1 m hinauf wie 8 m in der Ebene.</translation>
    </message>
    <message>
        <source>Hiking speed by slope.</source>
        <translation>Wandertempo nach Hangneigung.</translation>
    </message>
    <message>
        <source>Median speed of hikers.</source>
        <translation>Mittleres Tempo von Wanderern (Median).</translation>
    </message>
    <message>
        <source>Cost of running uphill.</source>
        <translation>Kosten des Bergauflaufens.</translation>
    </message>
    <message>
        <source>compare Naismith Tobler Scarf even pace table</source>
        <translation>vergleichen Naismith Tobler Scarf gleichmäßiges Tempo Tabelle</translation>
    </message>
    <message>
        <source>Weather and conditions</source>
        <translation>Wetter und Bedingungen</translation>
    </message>
    <message>
        <source>What the day may take besides the ground: weather typed once for the valley, altitude, night, rough descents, and how long your lamp burns. Each effect can be switched off and says its minutes.</source>
        <translation>Was der Tag außer dem Untergrund kosten kann: das Wetter, einmal fürs Tal getippt, Höhe, Nacht, ruppige Abstiege, und wie lange deine Lampe brennt. Jede Wirkung lässt sich abschalten und nennt ihre Minuten.</translation>
    </message>
    <message>
        <source>weather altitude heat dark switch off</source>
        <translation>Wetter Höhe Hitze Dunkel abschalten</translation>
    </message>
    <message>
        <source>Forecast for the valley</source>
        <translation>Vorhersage fürs Tal</translation>
    </message>
    <message>
        <source>The coldest and the warmest of the day with their hours, humidity at the warmest, and the height of the place the forecast is for. Along the course and through the day the rest follows from it.</source>
        <translation>Das Kälteste und das Wärmste des Tages mit ihren Stunden, die Luftfeuchte beim Wärmsten und die Höhe des Ortes, für den die Vorhersage gilt. Entlang der Strecke und durch den Tag folgt der Rest daraus.</translation>
    </message>
    <message>
        <source>Between the two hours a smooth curve; 6.5 degrees colder per 1000 m up; the same moisture in the air all day.</source>
        <translation>Zwischen den beiden Stunden eine glatte Kurve; 6,5 Grad kälter je 1000 m hinauf; den ganzen Tag gleich viel Feuchte in der Luft.</translation>
    </message>
    <message>
        <source>6.5 K per km.</source>
        <translation>6,5 K je km.</translation>
    </message>
    <message>
        <source>The curve through the day.</source>
        <translation>Die Kurve durch den Tag.</translation>
    </message>
    <message>
        <source>Wind, rain and a cold front are not in it. On a ridge it can be far colder than this; pack for it.</source>
        <translation>Wind, Regen und eine Kaltfront sind nicht darin. Auf einem Grat kann es weit kälter sein; pack dafür.</translation>
    </message>
    <message>
        <source>temperature humidity weather typed lapse rate</source>
        <translation>Temperatur Luftfeuchte Wetter getippt Höhengradient</translation>
    </message>
    <message>
        <source>What altitude, heat, night and descents take</source>
        <translation>Was Höhe, Hitze, Nacht und Abstiege kosten</translation>
    </message>
    <message>
        <source>How many minutes of the finish each effect is worth at the same effort. Since the finish is held, switching one on does not make you slower in all; it moves time to where the effect bites.</source>
        <translation>Wie viele Minuten der Zielzeit jede Wirkung bei gleicher Anstrengung ausmacht. Da die Zielzeit gehalten wird, macht dich das Einschalten insgesamt nicht langsamer; es verschiebt Zeit dorthin, wo die Wirkung zubeißt.</translation>
    </message>
    <message>
        <source>Altitude: a third of 6.3 % per 1000 m above 300 m. Heat: 0.7 % per degree WBGT above 15, by day. Rough descents by the ground painted on. Minutes are shared out fairly where effects stretch each other.</source>
        <translation>Höhe: ein Drittel von 6,3 % je 1000 m über 300 m. Hitze: 0,7 % je Grad WBGT über 15, bei Tag. Ruppige Abstiege nach dem aufgemalten Untergrund. Minuten werden gerecht verteilt, wo Wirkungen einander strecken.</translation>
    </message>
    <message>
        <source>6.3 % of power per 1000 m.</source>
        <translation>6,3 % der Leistung je 1000 m.</translation>
    </message>
    <message>
        <source>0.3 to 0.4 % per degree; doubled here for slower runners.</source>
        <translation>0,3 bis 0,4 % je Grad; hier verdoppelt für langsamere Läufer.</translation>
    </message>
    <message>
        <source>The third, and the descents, are ours.</source>
        <translation>Das Drittel und die Abstiege sind von uns.</translation>
    </message>
    <message>
        <source>minutes lost altitude heat rough descent technical</source>
        <translation>verlorene Minuten Höhe Hitze ruppig Abstieg technisch</translation>
    </message>
    <message>
        <source>What the dark takes</source>
        <translation>Was das Dunkel kostet</translation>
    </message>
    <message>
        <source>The share of your speed that goes in the dark: 10 % on trails, less on roads, none where streets are lit, more if you see badly by lamp. Type your own if you know it.</source>
        <translation>Der Anteil deines Tempos, der im Dunkeln verloren geht: 10 % auf Trails, weniger auf Straßen, nichts, wo Straßen beleuchtet sind, mehr, wenn du mit Lampe schlecht siehst. Tippe deinen eigenen Wert, wenn du ihn kennst.</translation>
    </message>
    <message>
        <source>From civil dusk to civil dawn with half an hour of change about each; half as much again about three in the morning.</source>
        <translation>Von der bürgerlichen Abend- bis zur bürgerlichen Morgendämmerung, mit je einer halben Stunde Übergang; um drei Uhr morgens die Hälfte mehr.</translation>
    </message>
    <message>
        <source>Fitted to a few night runs; nothing published.</source>
        <translation>An wenige Nachtläufe angepasst; nichts veröffentlicht.</translation>
    </message>
    <message>
        <source>night darkness slower percent lit streets</source>
        <translation>Nacht Dunkelheit langsamer Prozent beleuchtet Straßen</translation>
    </message>
    <message>
        <source>Dark and the lamp</source>
        <translation>Dunkel und die Lampe</translation>
    </message>
    <message>
        <source>How long it is dark while you are out, against how long your lamp burns with all the cells you carry, at the brightness you use. It strains from 80 % of the run-time, because cold cells give less, and breaks when the dark is longer.</source>
        <translation>Wie lange es dunkel ist, während du unterwegs bist, gegen die Brenndauer deiner Lampe mit allen Akkus, die du trägst, bei der Helligkeit, die du nutzt. Ab 80 % der Brenndauer wird es knapp, weil kalte Akkus weniger geben; es bricht, wenn das Dunkel länger ist.</translation>
    </message>
    <message>
        <source>All dark spans of the light lane together, on the target.</source>
        <translation>Alle dunklen Spannen der Lichtspur zusammen, nach Vorgabe.</translation>
    </message>
    <message>
        <source>Later than planned is darker than planned. Carry a spare.</source>
        <translation>Später als geplant heißt dunkler als geplant. Nimm Ersatz mit.</translation>
    </message>
    <message>
        <source>headlamp torch battery cells dark hours run-time</source>
        <translation>Stirnlampe Taschenlampe Batterie Akku dunkle Stunden Brenndauer</translation>
    </message>
    <message>
        <source>Warmth</source>
        <translation>Wärme</translation>
    </message>
    <message>
        <source>The air where you are when you are there, as a line; over it, dashed, the WBGT estimate, which counts moisture and sun as the body feels them. Shaded where that is high. In the dark there is no estimate.</source>
        <translation>Die Luft dort, wo du bist, wenn du dort bist, als Linie; darüber, gestrichelt, die WBGT-Schätzung, die Feuchte und Sonne so zählt, wie der Körper sie spürt. Schattiert, wo sie hoch ist. Im Dunkeln gibt es keine Schätzung.</translation>
    </message>
    <message>
        <source>Temperature from the valley forecast, height and hour. WBGT is 0.567 times it plus 0.393 times the vapour pressure in hPa plus 3.94.</source>
        <translation>Temperatur aus der Talvorhersage, Höhe und Stunde. WBGT ist 0,567 mal sie plus 0,393 mal den Dampfdruck in hPa plus 3,94.</translation>
    </message>
    <message>
        <source>The short formula; read in secondary sources.</source>
        <translation>Die Kurzformel; in zweiter Hand gelesen.</translation>
    </message>
    <message>
        <source>The estimate assumes sun and a light wind: too high under cloud and in wind, too low in full sun without wind.</source>
        <translation>Die Schätzung nimmt Sonne und leichten Wind an: zu hoch bei Wolken und Wind, zu niedrig in voller Sonne ohne Wind.</translation>
    </message>
    <message>
        <source>temperature WBGT air lane hot cold</source>
        <translation>Temperatur WBGT Luft Spur heiß kalt</translation>
    </message>
    <message>
        <source>Heat</source>
        <translation>Hitze</translation>
    </message>
    <message>
        <source>The hottest the day gets on your way, in words: low, moderate from 18, high from 23, very high from 28 degrees WBGT. From moderate on slow down and cool down; at very high heat races are stopped.</source>
        <translation>Wie heiß der Tag auf deinem Weg höchstens wird, in Worten: gering, mäßig ab 18, hoch ab 23, sehr hoch ab 28 Grad WBGT. Ab mäßig lauf langsamer und kühl dich; bei sehr hoher Hitze werden Rennen abgebrochen.</translation>
    </message>
    <message>
        <source>The highest WBGT estimate along the target, by day.</source>
        <translation>Die höchste WBGT-Schätzung entlang der Vorgabe, bei Tag.</translation>
    </message>
    <message>
        <source>Bands for distance races; read in secondary sources.</source>
        <translation>Stufen für Langstreckenrennen; in zweiter Hand gelesen.</translation>
    </message>
    <message>
        <source>Confusion, staggering or hot dry skin in the heat is an emergency: stop, cool, call for help. Never start with fever.</source>
        <translation>Verwirrtheit, Taumeln oder heiße trockene Haut in der Hitze sind ein Notfall: anhalten, kühlen, Hilfe rufen. Starte nie mit Fieber.</translation>
    </message>
    <message>
        <source>hot heat stroke caution WBGT</source>
        <translation>heiß Hitzschlag Vorsicht WBGT</translation>
    </message>
    <message>
        <source>Makes it</source>
        <translation>Schafft es</translation>
    </message>
    <message>
        <source>On about how many of 20 such days you are in time here and at every cutoff before. Never 0 and never 20, because nothing is sure. From 18 on it holds, under 10 it breaks.</source>
        <translation>An etwa wie vielen von 20 solchen Tagen du hier und an jedem Zeitlimit davor rechtzeitig bist. Nie 0 und nie 20, denn nichts ist sicher. Ab 18 hält es, unter 10 bricht es.</translation>
    </message>
    <message>
        <source>10,000 simulated races about the forecast: shape of the day, fade of the day, longer and shorter stops, ups and downs that carry on from section to section. The same draws each time, so a drag moves figures and not luck.</source>
        <translation>10.000 simulierte Rennen um die Prognose: Tagesform, Nachlassen des Tages, längere und kürzere Halte, Auf und Ab, das sich von Abschnitt zu Abschnitt fortsetzt. Jedes Mal dieselben Ziehungen, so dass ein Verschieben Werte bewegt und nicht das Glück.</translation>
    </message>
    <message>
        <source>Scatter fitted to one mountain race and to recordings of real runs.</source>
        <translation>Streuung angepasst an ein Bergrennen und an Aufzeichnungen echter Läufe.</translation>
    </message>
    <message>
        <source>Injury, giving up and a closed course are not among the simulated days.</source>
        <translation>Verletzung, Aufgeben und eine gesperrte Strecke sind nicht unter den simulierten Tagen.</translation>
    </message>
    <message>
        <source>chance probability simulated races cutoff days</source>
        <translation>Chance Wahrscheinlichkeit simulierte Rennen Zeitlimit Tage</translation>
    </message>
    <message>
        <source>Leave by</source>
        <translation>Spätestens los</translation>
    </message>
    <message>
        <source>The latest you may leave the place and still make every cutoff from there on at planned speed. Where the cutoff counts leaving, it is in this too.</source>
        <translation>Wann du den Ort spätestens verlassen kannst und bei geplantem Tempo noch jedes Zeitlimit von dort an schaffst. Wo das Zeitlimit den Aufbruch zählt, ist es hier mit dabei.</translation>
    </message>
    <message>
        <source>Planned leaving plus the least time to spare over the later cutoffs; the later of target and forecast counts.</source>
        <translation>Geplanter Aufbruch plus die kleinste übrige Zeit über die späteren Zeitlimits; die spätere von Vorgabe und Prognose zählt.</translation>
    </message>
    <message>
        <source>latest departure leaving aid station</source>
        <translation>spätester Aufbruch Verlassen Verpflegungsstelle</translation>
    </message>
    <message>
        <source>Walk-in limit</source>
        <translation>Gehgrenze</translation>
    </message>
    <message>
        <source>How late you may be and still make every cutoff walking, stops included: the dashed line in the lane, and the latest leaving of each place. Below zero the rest cannot be walked in. Only if you are well.</source>
        <translation>Wie spät du dran sein darfst und gehend noch jedes Zeitlimit schaffst, Halte inbegriffen: die gestrichelte Linie in der Spur und der späteste Aufbruch an jedem Ort. Unter null lässt sich der Rest nicht mehr gehen. Nur wenn es dir gut geht.</translation>
    </message>
    <message>
        <source>Median walking speed by slope, times 0.9 for tired legs (yours to change). The first place from which it holds to the end is said in the ledger.</source>
        <translation>Mittleres Gehtempo nach Hangneigung (Median), mal 0,9 für müde Beine (von dir änderbar). Der erste Ort, ab dem es bis zum Ende hält, steht in den Angaben.</translation>
    </message>
    <message>
        <source>Speed by slope.</source>
        <translation>Tempo nach Hangneigung.</translation>
    </message>
    <message>
        <source>The 0.9.</source>
        <translation>Die 0,9.</translation>
    </message>
    <message>
        <source>An injured, cold or sick walker is slower than this. It is not a reason to go on.</source>
        <translation>Wer verletzt, durchgefroren oder krank geht, ist langsamer. Es ist kein Grund weiterzumachen.</translation>
    </message>
    <message>
        <source>walk it in reserve late hike tired</source>
        <translation>zu Ende gehen Reserve spät wandern müde</translation>
    </message>
    <message>
        <source>At walking pace</source>
        <translation>Im Gehen</translation>
    </message>
    <message>
        <source>Stretches the target takes slower than where people change from running to walking, dotted along the foot of the target lane, and how fast they go. Who runs some of such a stretch may walk the rest of it slower.</source>
        <translation>Stücke, die die Vorgabe langsamer nimmt als dort, wo man vom Laufen ins Gehen wechselt, gepunktet am Fuß der Vorgabenspur, und wie schnell sie gehen. Wer einen Teil davon läuft, darf den Rest langsamer gehen.</translation>
    </message>
    <message>
        <source>Slower than 2.0 m/s on the level, falling to 1.3 m/s where it is steep; stretches of less than 200 m are left out.</source>
        <translation>Langsamer als 2,0 m/s in der Ebene, fallend auf 1,3 m/s, wo es steil ist; Stücke unter 200 m bleiben weg.</translation>
    </message>
    <message>
        <source>The line by slope; measured on the level, about 2.1 m/s.</source>
        <translation>Die Linie nach Hangneigung; in der Ebene gemessen etwa 2,1 m/s.</translation>
    </message>
    <message>
        <source>7.5 km/h on the level.</source>
        <translation>7,5 km/h in der Ebene.</translation>
    </message>
    <message>
        <source>walk hike gait change power hike</source>
        <translation>gehen wandern Gangwechsel zügig bergauf gehen</translation>
    </message>
    <message>
        <source>Hours of one run</source>
        <translation>Stunden eines Laufs</translation>
    </message>
    <message>
        <source>A run on steeper ground may be no longer and still last much longer. So long runs are also held against the longest time on feet of the 30 days before.</source>
        <translation>Ein Lauf in steilerem Gelände muss nicht weiter sein und kann doch viel länger dauern. Darum werden lange Läufe auch an der längsten Zeit auf den Beinen der 30 Tage davor gemessen.</translation>
    </message>
    <message>
        <source>Runs of over 90 minutes; strains at over 1.2 times. It begins once your own longest time is known, or after 30 days.</source>
        <translation>Läufe über 90 Minuten; knapp wird es ab dem 1,2-Fachen. Es beginnt, sobald deine eigene längste Zeit bekannt ist, oder nach 30 Tagen.</translation>
    </message>
    <message>
        <source>The study behind the single-run rule looked at distance alone.</source>
        <translation>Die Studie hinter der Regel für den einzelnen Lauf sah nur auf die Distanz.</translation>
    </message>
    <message>
        <source>duration long check</source>
        <translation>Dauer lang Prüfung</translation>
    </message>
    <message>
        <source>Drop of one run</source>
        <translation>Abstieg eines Laufs</translation>
    </message>
    <message>
        <source>Descents are what the legs are least used to. No run should drop much more than any of the 30 days before.</source>
        <translation>Abstiege sind die Beine am wenigsten gewohnt. Kein Lauf sollte viel mehr Abstieg haben als einer der 30 Tage davor.</translation>
    </message>
    <message>
        <source>Drops of over 300 m; strains at over 1.25 times.</source>
        <translation>Abstiege über 300 m; knapp wird es ab dem 1,25-Fachen.</translation>
    </message>
    <message>
        <source>The least accustomed are damaged most.</source>
        <translation>Wer es am wenigsten gewohnt ist, trägt den größten Schaden.</translation>
    </message>
    <message>
        <source>The figures.</source>
        <translation>Die Werte.</translation>
    </message>
    <message>
        <source>descent downhill dose check</source>
        <translation>Abstieg bergab Dosis Prüfung</translation>
    </message>
    <message>
        <source>Late descent</source>
        <translation>Später Abstieg</translation>
    </message>
    <message>
        <source>For a race that drops over 1000 m one session of the last two months should drop a fair part of what the race does.</source>
        <translation>Für ein Rennen mit über 1000 m Abstieg sollte eine Einheit der letzten zwei Monate einen guten Teil davon haben.</translation>
    </message>
    <message>
        <source>Greatest drop 10 to 56 days before the race over that of the race: 25 % holds.</source>
        <translation>Größter Abstieg 10 bis 56 Tage vor dem Rennen durch den des Rennens: 25 % hält.</translation>
    </message>
    <message>
        <source>Earlier descents protect best.</source>
        <translation>Frühere Abstiege schützen am besten.</translation>
    </message>
    <message>
        <source>The share and the days.</source>
        <translation>Der Anteil und die Tage.</translation>
    </message>
    <message>
        <source>descent dose quads check</source>
        <translation>Abstieg Dosis Oberschenkel Prüfung</translation>
    </message>
    <message>
        <source>Climb per kilometre</source>
        <translation>Anstieg je Kilometer</translation>
    </message>
    <message>
        <source>How much the last loading weeks climb per kilometre against the race. No trial says how alike training must be.</source>
        <translation>Wie viel die letzten Belastungswochen je Kilometer steigen, gegen das Rennen. Kein Versuch sagt, wie ähnlich das Training sein muss.</translation>
    </message>
    <message>
        <source>Climb over distance of the last four loading weeks. Asked are 70 % of the race&apos;s for just enough, 90 % usually, all of it when ambitious; a tenth less still holds, under 40 % breaks. Races that climb under 10 m per km ask nothing.</source>
        <translation>Aufstieg durch Distanz der letzten vier Belastungswochen. Verlangt sind 70 % vom Wert des Rennens als Mindestmaß, üblich 90 %, ehrgeizig der ganze; ein Zehntel weniger hält noch, unter 40 % bricht es. Rennen mit unter 10 m Anstieg je km verlangen nichts.</translation>
    </message>
    <message>
        <source>gradient hills vertical specific check</source>
        <translation>Steigung Hügel Höhenmeter spezifisch Prüfung</translation>
    </message>
    <message>
        <source>Surfaces matched</source>
        <translation>Untergrund passt</translation>
    </message>
    <message>
        <source>How alike training and race are underfoot, where both are known: 100 % the same shares, 0 % nothing in common. It describes; no trial says what it is worth.</source>
        <translation>Wie ähnlich Training und Rennen unter den Füßen sind, wo beides bekannt ist: 100 % gleiche Anteile, 0 % nichts gemeinsam. Es beschreibt nur; kein Versuch sagt, was es wert ist.</translation>
    </message>
    <message>
        <source>1 less half the sum of the differences of the shares, over eight weeks; 60 % holds. Sessions and stretches of unknown surface are left out.</source>
        <translation>1 minus die halbe Summe der Unterschiede der Anteile, über acht Wochen; 60 % hält. Einheiten und Stücke mit unbekanntem Untergrund bleiben weg.</translation>
    </message>
    <message>
        <source>The measure and its threshold.</source>
        <translation>Das Maß und seine Schwelle.</translation>
    </message>
    <message>
        <source>trail road underfoot specific check</source>
        <translation>Trail Straße Untergrund spezifisch Prüfung</translation>
    </message>
    <message>
        <source>Dark hours practised</source>
        <translation>Dunkle Stunden geübt</translation>
    </message>
    <message>
        <source>A race with more than two hours of dark asks for two runs by lamp or more in the last ten weeks: to learn footing, pace, cold and the lamp itself.</source>
        <translation>Ein Rennen mit mehr als zwei Stunden Dunkel verlangt zwei oder mehr Läufe mit Lampe in den letzten zehn Wochen: um Tritt, Tempo, Kälte und die Lampe selbst kennenzulernen.</translation>
    </message>
    <message>
        <source>Dark hours between start and the finish of the target.</source>
        <translation>Dunkle Stunden zwischen Start und Ziel nach Vorgabe.</translation>
    </message>
    <message>
        <source>night running headlamp check</source>
        <translation>Nacht Laufen Stirnlampe Prüfung</translation>
    </message>
    <message>
        <source>Spare weeks</source>
        <translation>Wochen übrig</translation>
    </message>
    <message>
        <source>Weeks there beyond those needed. Life takes some: over a year two of three ultrarunners lose days to an injury, so a plan without any slack is not likely to be run as it stands.</source>
        <translation>Wochen, die über die nötigen hinaus da sind. Das Leben nimmt sich welche: In einem Jahr verlieren zwei von drei Ultraläufern Tage durch eine Verletzung; ein Plan ohne Spielraum wird also kaum so gelaufen, wie er steht.</translation>
    </message>
    <message>
        <source>One for every 16 weeks needed, begun ones counted.</source>
        <translation>Eine je 16 nötige Wochen, angefangene mitgezählt.</translation>
    </message>
    <message>
        <source>64.6 % lost training days, 14 of them in the middle.</source>
        <translation>64,6 % verloren Trainingstage, im Median 14.</translation>
    </message>
    <message>
        <source>How many to spare.</source>
        <translation>Wie viele übrig sein sollen.</translation>
    </message>
    <message>
        <source>slack buffer margin check</source>
        <translation>spielraum puffer reserve polster prüfung</translation>
    </message>
    <message>
        <source>Limits of fasted runs</source>
        <translation>Grenzen für Nüchternläufe</translation>
    </message>
    <message>
        <source>Fasted runs are easy, up to 90 minutes, two a week and never on days side by side, none in race week or in the heat, and only if the questions on health left nothing to ask a doctor about.</source>
        <translation>Nüchternläufe sind locker, höchstens 90 Minuten lang, zwei in der Woche und nie an Tagen nebeneinander, keiner in der Rennwoche oder in der Hitze, und nur, wenn nach den Fragen zur Gesundheit nichts mit einem Arzt zu klären ist.</translation>
    </message>
    <message>
        <source>Every session ahead that is marked fasted.</source>
        <translation>Jede kommende Einheit, die als nüchtern markiert ist.</translation>
    </message>
    <message>
        <source>All limits.</source>
        <translation>Alle Grenzen.</translation>
    </message>
    <message>
        <source>Not under 18, not when pregnant, with diabetes, fainting or an eating disorder now or before.</source>
        <translation>Nicht unter 18, nicht in der Schwangerschaft, nicht mit Diabetes, Ohnmachten oder einer Essstörung, jetzt oder früher.</translation>
    </message>
    <message>
        <source>breakfast low carbohydrate check</source>
        <translation>frühstück wenig kohlenhydrate prüfung nüchtern</translation>
    </message>
    <message>
        <source>Stand-in sessions</source>
        <translation>Ersatzeinheiten</translation>
    </message>
    <message>
        <source>A session on the ground there is that asks of the legs what a stretch of the race does: so many minutes at each gradient. A treadmill climbs but does not come down; what cannot be had is said, with slow step-downs in its place.</source>
        <translation>Eine Einheit auf dem Untergrund, den es gibt, die von den Beinen dasselbe verlangt wie ein Stück des Rennens: so viele Minuten bei jeder Steigung. Ein Laufband geht bergauf, aber nicht bergab; was nicht zu haben ist, wird gesagt, und langsames Absteigen von einer Stufe tritt an seine Stelle.</translation>
    </message>
    <message>
        <source>Time on feet by seven classes of gradient at the target&apos;s times, scaled to three hours at most. The match is the likeness of the two: 100 % the same shares of time.</source>
        <translation>Zeit auf den Beinen nach sieben Steigungsklassen bei den Zeiten der Vorgabe, auf höchstens drei Stunden verkleinert. Die Übereinstimmung ist die Ähnlichkeit der beiden: 100 % heißt gleiche Zeitanteile.</translation>
    </message>
    <message>
        <source>Classes, match and the sets of step-downs.</source>
        <translation>Klassen, Übereinstimmung und die Sätze des Absteigens von der Stufe.</translation>
    </message>
    <message>
        <source>That likeness helps: nobody has measured how much.</source>
        <translation>Dass Ähnlichkeit hilft: Niemand hat gemessen, wie viel.</translation>
    </message>
    <message>
        <source>treadmill stairs hill repeats flat town simulate</source>
        <translation>laufband treppen bergwiederholungen flach stadt nachstellen</translation>
    </message>
    <message>
        <source>What to keep</source>
        <translation>Was bleiben soll</translation>
    </message>
    <message>
        <source>Two sessions a week are marked to keep if it falls apart: the one most like the race and the next that is not beside it. Each session says what is left of it in 40 minutes. What is left out is not made up for.</source>
        <translation>Zwei Einheiten in der Woche sind markiert, damit sie bleiben, wenn alles durcheinandergerät: die dem Rennen ähnlichste und die nächste, die nicht neben ihr liegt. Jede Einheit sagt, was von ihr in 40 Minuten bleibt. Was ausfällt, wird nicht nachgeholt.</translation>
    </message>
    <message>
        <source>The talk test beside each effort.</source>
        <translation>Der Sprechtest neben jeder Anstrengung.</translation>
    </message>
    <message>
        <source>short of time busy week priority talk test why</source>
        <translation>wenig zeit volle woche vorrang sprechtest warum</translation>
    </message>
    <message>
        <source>Mental rehearsal</source>
        <translation>Üben im Kopf</translation>
    </message>
    <message>
        <source>Ten minutes on some runs of the last six weeks: plans of the form if this happens, I do that; a hard stretch pictured; goals, cutoffs and kit in the last days.</source>
        <translation>Zehn Minuten bei manchen Läufen der letzten sechs Wochen: Pläne der Form „Wenn das passiert, tue ich das“; ein schweres Stück, das du dir vorstellst; Ziele, Zeitlimits und Ausrüstung in den letzten Tagen.</translation>
    </message>
    <message>
        <source>If-then plans help people do what they meant to.</source>
        <translation>Wenn-dann-Pläne helfen, das zu tun, was man vorhatte.</translation>
    </message>
    <message>
        <source>Self-talk did not make 29 runners of 60 miles faster; they liked it.</source>
        <translation>Selbstgespräche machten 29 Läufer über 60 Meilen nicht schneller; sie mochten es.</translation>
    </message>
    <message>
        <source>When and how often.</source>
        <translation>Wann und wie oft.</translation>
    </message>
    <message>
        <source>imagery psychology if-then head</source>
        <translation>vorstellung psychologie wenn-dann kopf mental</translation>
    </message>
    <message>
        <source>Heat days</source>
        <translation>Hitzetage</translation>
    </message>
    <message>
        <source>Easy runs in the heat 24 to 10 days before a hot race and a few 6 to 3 days before. About 2.5 % of what is gained is lost a day without.</source>
        <translation>Lockere Läufe in der Hitze 24 bis 10 Tage vor einem heißen Rennen und ein paar 6 bis 3 Tage davor. Ohne Hitze geht am Tag etwa 2,5 % des Gewinns verloren.</translation>
    </message>
    <message>
        <source>The days before the race.</source>
        <translation>Die Tage vor dem Rennen.</translation>
    </message>
    <message>
        <source>hot acclimatisation summer</source>
        <translation>heiß hitzegewöhnung sommer</translation>
    </message>
    <message>
        <source>Ramp: 10 % a week</source>
        <translation>Steigerung: 10 % pro Woche</translation>
    </message>
    <message>
        <source>A loading week may be 10 % larger than the last loading week. It is a custom that keeps plans sane; that it prevents injury has not been shown.</source>
        <translation>Eine Belastungswoche darf 10 % größer sein als die letzte Belastungswoche. Es ist ein Brauch, der Pläne vernünftig hält; dass er Verletzungen verhindert, ist nicht gezeigt.</translation>
    </message>
    <message>
        <source>This week&apos;s distance against 1.10 times that of the last loading week; strains to 1.20 times, breaks beyond.</source>
        <translation>Die Distanz dieser Woche gegen das 1,10-Fache der letzten Belastungswoche; knapp bis zum 1,20-Fachen, darüber bricht es.</translation>
    </message>
    <message>
        <source>Trial in 532 beginners: 20.8 % injured with the 10 % rule, 20.3 % without.</source>
        <translation>Versuch mit 532 Anfängern: 20,8 % verletzt mit der 10-%-Regel, 20,3 % ohne.</translation>
    </message>
    <message>
        <source>5205 runners: weekly growth had nothing to do with injury.</source>
        <translation>5205 Läufer: Der wöchentliche Zuwachs hatte mit Verletzungen nichts zu tun.</translation>
    </message>
    <message>
        <source>Weakly supported custom.</source>
        <translation>Schwach belegter Brauch.</translation>
    </message>
    <message>
        <source>ten percent rule growth increase check</source>
        <translation>zehn prozent regel zuwachs steigerung prüfung</translation>
    </message>
    <message>
        <source>Single run: 10 % over your longest</source>
        <translation>Einzelner Lauf: 10 % über deinem längsten</translation>
    </message>
    <message>
        <source>No single run should be more than 10 % longer than the longest of the 30 days before it. Of all the growth rules this one is best supported, so keep to it before the others.</source>
        <translation>Kein einzelner Lauf sollte mehr als 10 % länger sein als der längste der 30 Tage davor. Von allen Regeln zum Zuwachs ist diese am besten belegt, also halte sie vor den anderen ein.</translation>
    </message>
    <message>
        <source>The run&apos;s distance against 1.10 times the longest run of the 30 calendar days before its day. Until the first 30 days are over, the longest run you gave in the form counts as well.</source>
        <translation>Die Distanz des Laufs gegen das 1,10-Fache des längsten Laufs der 30 Kalendertage vor seinem Tag. Bis die ersten 30 Tage vorbei sind, zählt auch der längste Lauf, den du im Formular angegeben hast.</translation>
    </message>
    <message>
        <source>5205 runners over 18 months: 10 to 30 % longer, 1.6 times the injuries; more than twice as long, 2.3 times. Seen, not tried out.</source>
        <translation>5205 Läufer über 18 Monate: 10 bis 30 % länger, 1,6-mal so viele Verletzungen; mehr als doppelt so lang, 2,3-mal. Beobachtet, nicht ausprobiert.</translation>
    </message>
    <message>
        <source>A race or a club run you did not plan can be the jump that hurts.</source>
        <translation>Ein Rennen oder ein Vereinslauf, den du nicht geplant hast, kann der Sprung sein, der schadet.</translation>
    </message>
    <message>
        <source>thirty days longest jump spike check</source>
        <translation>dreißig tage längster sprung spitze prüfung</translation>
    </message>
    <message>
        <source>Cutback week</source>
        <translation>Entlastungswoche</translation>
    </message>
    <message>
        <source>A planned lighter week, every fourth as a rule, to recover and to leave room for a missed day. Its bar is paler. Growth goes on from the last loading week, not from the cutback.</source>
        <translation>Eine geplante leichtere Woche, in der Regel jede vierte, zum Erholen und als Platz für einen ausgefallenen Tag. Ihr Balken ist blasser. Der Zuwachs geht von der letzten Belastungswoche weiter, nicht von der Entlastung.</translation>
    </message>
    <message>
        <source>Holds with 60 to 80 % of the last loading week, and when no more than three loading weeks follow each other. The week after a long tune-up race may be lighter still.</source>
        <translation>Hält bei 60 bis 80 % der letzten Belastungswoche und wenn höchstens drei Belastungswochen aufeinander folgen. Die Woche nach einem langen Vorbereitungsrennen darf noch leichter sein.</translation>
    </message>
    <message>
        <source>No trial in runners was found.</source>
        <translation>Kein Versuch mit Läufern wurde gefunden.</translation>
    </message>
    <message>
        <source>recovery week deload step back easy week</source>
        <translation>erholungswoche entlastung leichtere woche ruhewoche</translation>
    </message>
    <message>
        <source>Hard days apart</source>
        <translation>Harte Tage getrennt</translation>
    </message>
    <message>
        <source>Two hard sessions should not fall on one day or on days side by side. A back-to-back after a long run is meant that way; a hard day after it is not. Long, rehearsal, hill, downhill and tempo runs, intervals and tune-up races count as hard.</source>
        <translation>Zwei harte Einheiten sollten nicht auf einen Tag oder auf Tage nebeneinander fallen. Ein Doppellauf am Tag nach einem langen Lauf ist so gemeint; ein harter Tag danach nicht. Lange Läufe, Generalproben, Berg-, Bergab- und Tempoläufe, Intervalle und Vorbereitungsrennen zählen als hart.</translation>
    </message>
    <message>
        <source>Days between hard sessions that were not missed.</source>
        <translation>Tage zwischen harten Einheiten, die nicht ausfielen.</translation>
    </message>
    <message>
        <source>easy day between check rest</source>
        <translation>lockerer tag dazwischen prüfung ruhe</translation>
    </message>
    <message>
        <source>Longest, share of the week</source>
        <translation>Längster, Anteil der Woche</translation>
    </message>
    <message>
        <source>How much of the week lies in its longest run. If it is most of the week, the other days do not carry it. With three runs a week none can be much under half, so the limits are wider then.</source>
        <translation>Wie viel der Woche in ihrem längsten Lauf steckt. Ist es der größte Teil der Woche, tragen ihn die anderen Tage nicht. Mit drei Läufen pro Woche kann keiner weit unter der Hälfte liegen, also sind die Grenzen dann weiter.</translation>
    </message>
    <message>
        <source>Longest run over the distance of the week. With three runs or fewer up to 55 % holds, with four 50 %, with five 45 %, with more 40 %, and in any week what the race asks at your level: 58 % just enough, 50 % usual, 43 % ambitious. 10 % beyond strains; a rehearsal run or a tune-up race never breaks.</source>
        <translation>Längster Lauf durch die Distanz der Woche. Mit drei Läufen oder weniger hält bis 55 %, mit vier 50 %, mit fünf 45 %, mit mehr 40 %, und in jeder Woche, was das Rennen auf deiner Stufe verlangt: 58 % Minimum, 50 % üblich, 43 % ehrgeizig. 10 % darüber ist knapp; eine Generalprobe oder ein Vorbereitungsrennen bricht nie.</translation>
    </message>
    <message>
        <source>Road custom is 25 to 30 %, which nobody has tested; ultrarunners on three to five days a week run 35 to 50 %. The thresholds are our own.</source>
        <translation>Auf der Straße sind 25 bis 30 % Brauch, was niemand geprüft hat; Ultraläufer mit drei bis fünf Lauftagen pro Woche laufen 35 bis 50 %. Die Schwellen sind unsere eigenen.</translation>
    </message>
    <message>
        <source>percent of the week check</source>
        <translation>prozent der woche prüfung</translation>
    </message>
    <message>
        <source>Taper</source>
        <translation>Tapering</translation>
    </message>
    <message>
        <source>The last weeks before the race, in which you run less and keep a little speed, so that you start rested: two weeks for a race under 12 hours, three for a longer one, race week included.</source>
        <translation>Die letzten Wochen vor dem Rennen, in denen du weniger läufst und etwas Schnelles behältst, damit du ausgeruht startest: zwei Wochen für ein Rennen unter 12 Stunden, drei für ein längeres, die Rennwoche eingeschlossen.</translation>
    </message>
    <message>
        <source>The cut is one minus the daily mean of the taper days, race day left out, over that of the last loading week. 41 to 60 % holds. A built block runs 65 and 35 % of the last loading week, or 76, 46 and 28 %.</source>
        <translation>Die Kürzung ist eins minus das Tagesmittel der Taperingtage, ohne Renntag, durch das der letzten Belastungswoche. 41 bis 60 % hält. Ein gebauter Block läuft 65 und 35 % der letzten Belastungswoche, oder 76, 46 und 28 %.</translation>
    </message>
    <message>
        <source>27 studies of shorter events: two weeks, 41 to 60 % less, same speed.</source>
        <translation>27 Studien zu kürzeren Wettkämpfen: zwei Wochen, 41 bis 60 % weniger, gleiches Tempo.</translation>
    </message>
    <message>
        <source>Of 158,000 marathoners those with a strict three-week taper were 2.6 % faster; seen, not tried out.</source>
        <translation>Von 158.000 Marathonläufern waren die mit strengem Tapering von drei Wochen 2,6 % schneller; beobachtet, nicht ausprobiert.</translation>
    </message>
    <message>
        <source>That the cut is the mean over the taper, and the weekly shares. No trial of a taper for ultramarathons was found.</source>
        <translation>Dass die Kürzung das Mittel über das Tapering ist, und die Wochenanteile. Kein Versuch zum Tapering für Ultramarathons wurde gefunden.</translation>
    </message>
    <message>
        <source>rest before the race last weeks</source>
        <translation>ruhe vor dem rennen letzte wochen</translation>
    </message>
    <message>
        <source>Hardening the quads to descents</source>
        <translation>Oberschenkel an Abstiege gewöhnen</translation>
    </message>
    <message>
        <source>Running downhill wears the thighs; having done it before is the best protection. For a race that drops more than 1000 m a downhill run comes every second week or so, and the last one neither too early nor too late. A tune-up race that drops 500 m or more counts as one.</source>
        <translation>Bergablaufen ermüdet die Oberschenkel; es schon getan zu haben ist der beste Schutz. Für ein Rennen mit mehr als 1000 m Abstieg kommt etwa jede zweite Woche ein Bergablauf, der letzte weder zu früh noch zu spät. Ein Vorbereitungsrennen mit 500 m Abstieg oder mehr zählt als einer.</translation>
    </message>
    <message>
        <source>Holds when no more than 21 days lie between two downhill runs and the last is 10 to 21 days before the race. No session drops more than 1.2 times the most of the 30 days before.</source>
        <translation>Hält, wenn höchstens 21 Tage zwischen zwei Bergabläufen liegen und der letzte 10 bis 21 Tage vor dem Rennen ist. Keine Einheit hat mehr Abstieg als das 1,2-Fache des Höchsten der 30 Tage davor.</translation>
    </message>
    <message>
        <source>Earlier descents protect, and those least used to them are hurt most.</source>
        <translation>Frühere Abstiege schützen, und wer sie am wenigsten gewohnt ist, leidet am meisten.</translation>
    </message>
    <message>
        <source>A second half hour at -20 %, three weeks after the first, cost less soreness and strength (10 runners).</source>
        <translation>Eine zweite halbe Stunde bei -20 %, drei Wochen nach der ersten, kostete weniger Muskelkater und Kraft (10 Läufer).</translation>
    </message>
    <message>
        <source>After 166 km with 9500 m of climb thigh strength was 35 % lower.</source>
        <translation>Nach 166 km mit 9500 m Aufstieg war die Kraft der Oberschenkel 35 % geringer.</translation>
    </message>
    <message>
        <source>The spacing in days and the step of 1.2.</source>
        <translation>Der Abstand in Tagen und der Schritt von 1,2.</translation>
    </message>
    <message>
        <source>Expect soreness for one to three days after the first ones. Dark urine, much swelling or weakness: stop and see a doctor the same day.</source>
        <translation>Rechne nach den ersten mit Muskelkater für ein bis drei Tage. Dunkler Urin, starke Schwellung oder Schwäche: hör auf und geh am selben Tag zum Arzt.</translation>
    </message>
    <message>
        <source>quads thighs eccentric soreness descent check</source>
        <translation>oberschenkel exzentrisch muskelkater abstieg prüfung</translation>
    </message>
    <message>
        <source>What the race asks</source>
        <translation>Was das Rennen fordert</translation>
    </message>
    <message>
        <source>How large your largest week and how long your longest run should get for this race: what is asked beside what is planned. Of three levels the lowest is for finishing inside the cutoffs. Long hilly races go by hours rather than kilometres.</source>
        <translation>Wie groß deine größte Woche und wie lang dein längster Lauf für dieses Rennen werden sollten: das Verlangte neben dem Geplanten. Von drei Stufen ist die niedrigste für das Ankommen innerhalb der Zeitlimits. Lange, bergige Rennen gehen nach Stunden statt nach Kilometern.</translation>
    </message>
    <message>
        <source>Read from a table by the length of the race: for 100 km a week of 60, 90 or 130 km and a run of 35, 45 or 55 km. The hours of the same table are a second limit; beyond 36 hours, or with more than 50 m of climb to the kilometre, they count alone. Planned holds from 97 % of what is asked, strains from 80 %.</source>
        <translation>Aus einer Tabelle nach der Länge des Rennens: für 100 km eine Woche von 60, 90 oder 130 km und ein Lauf von 35, 45 oder 55 km. Die Stunden derselben Tabelle sind eine zweite Grenze; über 36 Stunden oder mit mehr als 50 m Aufstieg je Kilometer zählen sie allein. Geplantes hält ab 97 % des Verlangten, knapp ist es ab 80 %.</translation>
    </message>
    <message>
        <source>These are ranges coaches use; no trial sets them.</source>
        <translation>Das sind Spannen, die Trainer verwenden; kein Versuch legt sie fest.</translation>
    </message>
    <message>
        <source>In a 161 km race volume was not what kept people from finishing; nausea was the main reason (23 %).</source>
        <translation>In einem Rennen über 161 km war nicht der Umfang der Grund, warum Leute nicht ankamen; Übelkeit war der Hauptgrund (23 %).</translation>
    </message>
    <message>
        <source>If your body says no, a smaller plan and a shorter race are good plans.</source>
        <translation>Wenn dein Körper Nein sagt, sind ein kleinerer Plan und ein kürzeres Rennen gute Pläne.</translation>
    </message>
    <message>
        <source>peak week largest week longest run asked required</source>
        <translation>spitzenwoche größte woche längster lauf verlangt nötig</translation>
    </message>
    <message>
        <source>Missed training</source>
        <translation>Ausgefallenes Training</translation>
    </message>
    <message>
        <source>What is missed is not made up later: the sessions that follow stay as they are. A loading week that came to less than 80 % because of missed sessions sets no yardstick for the next.</source>
        <translation>Was ausfällt, wird später nicht nachgeholt: Die folgenden Einheiten bleiben, wie sie sind. Eine Belastungswoche, die wegen ausgefallener Einheiten unter 80 % blieb, setzt keinen Maßstab für die nächste.</translation>
    </message>
    <message>
        <source>Two low weeks in a row lower the yardstick for growth to 80 %, three to 65 %, four to 50 %. A long gap also empties the 30 days of the single-run rule.</source>
        <translation>Zwei schwache Wochen hintereinander senken den Maßstab für den Zuwachs auf 80 %, drei auf 65 %, vier auf 50 %. Eine lange Lücke leert auch die 30 Tage der Regel für den einzelnen Lauf.</translation>
    </message>
    <message>
        <source>Seven days or more without running in the last 16 weeks: 5 to 8 % slower in the marathon, the same runners compared.</source>
        <translation>Sieben Tage oder mehr ohne Laufen in den letzten 16 Wochen: 5 bis 8 % langsamer im Marathon, dieselben Läufer verglichen.</translation>
    </message>
    <message>
        <source>No training with fever, chest symptoms or aches all over. After an injury ask whoever treated you before you run.</source>
        <translation>Kein Training mit Fieber, Beschwerden in der Brust oder Gliederschmerzen. Frag nach einer Verletzung die, die dich behandelt haben, bevor du läufst.</translation>
    </message>
    <message>
        <source>ill illness injury holiday gap break</source>
        <translation>krank krankheit verletzung urlaub lücke pause</translation>
    </message>
    <message>
        <source>Name of the race</source>
        <translation>Name des Rennens</translation>
    </message>
    <message>
        <source>What the race is called in the header and on every card. Anything will do.</source>
        <translation>Wie das Rennen im Kopf und auf jeder Karte heißt. Alles ist erlaubt.</translation>
    </message>
    <message>
        <source>Date of the race</source>
        <translation>Datum des Rennens</translation>
    </message>
    <message>
        <source>The day of the start, where the race is. Weeks to go, taper, light and every clock time are counted from it. If you change it, the race tile moves along; build the block anew afterwards.</source>
        <translation>Der Tag des Starts, am Ort des Rennens. Wochen bis dahin, Tapering, Licht und jede Uhrzeit werden von ihm aus gezählt. Änderst du ihn, wandert die Rennkachel mit; bau den Block danach neu.</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>The time of the gun, on the clock at the race. It decides which parts you run in the dark, and so the forecast too. Waves: take your own.</source>
        <translation>Die Zeit des Startschusses, nach der Uhr am Ort des Rennens. Sie entscheidet, welche Teile du im Dunkeln läufst, und damit auch die Prognose. Startwellen: Nimm deine eigene.</translation>
    </message>
    <message>
        <source>Time zone</source>
        <translation>Zeitzone</translation>
    </message>
    <message>
        <source>The zone whose clock the race goes by. All clock times on screen and paper are in it, wherever your computer is, with the change to or from summer time included. It is proposed from where the course starts.</source>
        <translation>Die Zone, nach deren Uhr das Rennen geht. Alle Uhrzeiten auf Bildschirm und Papier stehen in ihr, wo dein Computer auch ist, die Umstellung auf oder von Sommerzeit eingeschlossen. Sie wird nach dem Startort der Strecke vorgeschlagen.</translation>
    </message>
    <message>
        <source>clock summer time daylight saving</source>
        <translation>uhr sommerzeit zeitumstellung</translation>
    </message>
    <message>
        <source>Finish aimed for</source>
        <translation>Angestrebte Zielzeit</translation>
    </message>
    <message>
        <source>The time you plan to take, stops included. Target, forecast, fuel and what the race asks all follow from it. Take a time you can finish in on a fair day rather than a dream.</source>
        <translation>Die Zeit, die du brauchen willst, Halte eingeschlossen. Vorgabe, Prognose, Verpflegung und was das Rennen verlangt folgen alle aus ihr. Nimm eine Zeit, in der du an einem guten Tag ankommen kannst, keinen Traum.</translation>
    </message>
    <message>
        <source>For a new course a first guess is put in: distance plus eight times climb, at 80 % of your easy speed on level ground.</source>
        <translation>Für eine neue Strecke wird eine erste Schätzung eingesetzt: Distanz plus achtmal Aufstieg, bei 80 % deiner lockeren Geschwindigkeit im Flachen.</translation>
    </message>
    <message>
        <source>Eight metres of level ground to one of climb.</source>
        <translation>Acht Meter in der Ebene auf einen Meter Aufstieg.</translation>
    </message>
    <message>
        <source>The 80 %: a proposal to start from, not a prediction.</source>
        <translation>Die 80 %: ein Vorschlag zum Anfangen, keine Vorhersage.</translation>
    </message>
    <message>
        <source>goal time target time</source>
        <translation>zielzeit wunschzeit vorgabe</translation>
    </message>
    <message>
        <source>Time limit</source>
        <translation>Zeitlimit</translation>
    </message>
    <message>
        <source>The latest time at the finish that still counts, from the race&apos;s rules; empty if there is none. It is the last cutoff, so it bounds your time in hand all the way.</source>
        <translation>Die späteste Zeit im Ziel, die noch zählt, nach den Regeln des Rennens; leer, wenn es keine gibt. Sie ist das letzte Zeitlimit und begrenzt so dein Zeitpolster auf dem ganzen Weg.</translation>
    </message>
    <message>
        <source>cutoff at the finish closing time</source>
        <translation>zeitlimit im ziel zielschluss</translation>
    </message>
    <message>
        <source>Week begins on</source>
        <translation>Wochenbeginn</translation>
    </message>
    <message>
        <source>The first day of every week in this project. Weekly totals and their checks hang on it, so it is kept in the project; your language only proposes it.</source>
        <translation>Der erste Tag jeder Woche in diesem Projekt. Wochensummen und ihre Prüfungen hängen daran, darum liegt er im Projekt; deine Sprache schlägt ihn nur vor.</translation>
    </message>
    <message>
        <source>A usual week now</source>
        <translation>Übliche Woche jetzt</translation>
    </message>
    <message>
        <source>What you have run in a normal week of the last month, not your best week and not what you mean to run. The first week of the block starts from it.</source>
        <translation>Was du in einer normalen Woche des letzten Monats gelaufen bist, nicht deine beste Woche und nicht, was du laufen willst. Die erste Woche des Blocks geht davon aus.</translation>
    </message>
    <message>
        <source>You say it; once training is marked done, the last loading week takes its place. Under 10 km a block is built as if it were 10.</source>
        <translation>Du gibst sie an; sobald Training als erledigt markiert ist, tritt die letzte Belastungswoche an ihre Stelle. Unter 10 km wird ein Block gebaut, als wären es 10.</translation>
    </message>
    <message>
        <source>The least of 10 km.</source>
        <translation>Das Minimum von 10 km.</translation>
    </message>
    <message>
        <source>Too high a figure here makes every later week too large.</source>
        <translation>Eine zu hohe Zahl hier macht jede spätere Woche zu groß.</translation>
    </message>
    <message>
        <source>weekly mileage current volume</source>
        <translation>wochenkilometer jetzt umfang</translation>
    </message>
    <message>
        <source>Longest run, last 30 days</source>
        <translation>Längster Lauf, letzte 30 Tage</translation>
    </message>
    <message>
        <source>The longest single run of the last 30 days. The next long run may be 10 % longer. An old marathon does not count.</source>
        <translation>Der längste einzelne Lauf der letzten 30 Tage. Der nächste lange Lauf darf 10 % länger sein. Ein alter Marathon zählt nicht.</translation>
    </message>
    <message>
        <source>You say it; after 30 days of marked training the record takes its place. Under 5 km a block is built as if it were 5.</source>
        <translation>Du gibst ihn an; nach 30 Tagen markierten Trainings tritt das Erledigte an seine Stelle. Unter 5 km wird ein Block gebaut, als wären es 5.</translation>
    </message>
    <message>
        <source>The 30 days, and the 10 %.</source>
        <translation>Die 30 Tage und die 10 %.</translation>
    </message>
    <message>
        <source>Easy pace</source>
        <translation>Lockeres Tempo</translation>
    </message>
    <message>
        <source>Your pace on level firm ground when you can talk in whole sentences. It turns distances into times: how long runs take, and what fits into the minutes you have. It is not your race pace.</source>
        <translation>Dein Tempo auf ebenem, festem Untergrund, wenn du in ganzen Sätzen reden kannst. Es macht aus Distanzen Zeiten: wie lange Läufe dauern und was in deine Minuten passt. Es ist nicht dein Renntempo.</translation>
    </message>
    <message>
        <source>Talking as the measure of easy.</source>
        <translation>Reden als Maß für locker.</translation>
    </message>
    <message>
        <source>Body mass</source>
        <translation>Körpergewicht</translation>
    </message>
    <message>
        <source>Used for the caffeine limits only, which are per kilogram. There is no target weight in this program, and carbohydrate per hour does not depend on it.</source>
        <translation>Nur für die Koffeingrenzen, die je Kilogramm gelten. In diesem Programm gibt es kein Zielgewicht, und die Kohlenhydrate je Stunde hängen nicht davon ab.</translation>
    </message>
    <message>
        <source>Advice per hour does not go by body mass.</source>
        <translation>Der Rat je Stunde geht nicht nach dem Körpergewicht.</translation>
    </message>
    <message>
        <source>Losing weight on purpose in a hard block risks bones, hormones and health; missed periods or a stress fracture: see a doctor.</source>
        <translation>Wer in einem harten Block absichtlich abnimmt, gefährdet Knochen, Hormone und Gesundheit; ausbleibende Periode oder Ermüdungsbruch: geh zum Arzt.</translation>
    </message>
    <message>
        <source>weight kilograms</source>
        <translation>gewicht kilogramm körpermasse</translation>
    </message>
    <message>
        <source>Carbs you take while running</source>
        <translation>KH, die du beim Laufen nimmst</translation>
    </message>
    <message>
        <source>What your stomach takes today while running, in grams per hour, without trouble. 30 if you don&apos;t know: a gel an hour and a few sips of sports drink. Practice starts from here, and the fuel plan is held against it.</source>
        <translation>Was dein Magen heute beim Laufen ohne Beschwerden verträgt, in Gramm je Stunde. 30, wenn du es nicht weißt: ein Gel in der Stunde und ein paar Schlucke Sportgetränk. Das Üben geht davon aus, und der Verpflegungsplan wird daran gemessen.</translation>
    </message>
    <message>
        <source>18 amateurs in a 24-hour race took 33 g/h (spread 12).</source>
        <translation>18 Amateure in einem 24-Stunden-Rennen nahmen 33 g/h (Streuung 12).</translation>
    </message>
    <message>
        <source>The 30 for those who don&apos;t know.</source>
        <translation>Die 30 für alle, die es nicht wissen.</translation>
    </message>
    <message>
        <source>stomach tolerance grams per hour now</source>
        <translation>magen verträglichkeit gramm je stunde jetzt</translation>
    </message>
    <message>
        <source>How much training</source>
        <translation>Wie viel Training</translation>
    </message>
    <message>
        <source>How much the build-up asks of you. Just enough is for finishing inside the cutoffs, usual is what most plans ask, ambitious is for those with years of running and time to recover.</source>
        <translation>Wie viel der Aufbau von dir verlangt. Das Minimum ist für das Ankommen innerhalb der Zeitlimits, üblich ist, was die meisten Pläne verlangen, ehrgeizig ist für Leute mit Jahren des Laufens und Zeit zum Erholen.</translation>
    </message>
    <message>
        <source>Three columns of one table: largest week, longest run, and 0.7, 0.9 or all of the race&apos;s climb per kilometre.</source>
        <translation>Drei Spalten einer Tabelle: größte Woche, längster Lauf und 0,7, 0,9 oder der ganze Aufstieg des Rennens je Kilometer.</translation>
    </message>
    <message>
        <source>Ranges coaches use; no trial sets them.</source>
        <translation>Bereiche aus der Trainerpraxis; keine Studie legt sie fest.</translation>
    </message>
    <message>
        <source>Long run on</source>
        <translation>Langer Lauf am</translation>
    </message>
    <message>
        <source>The weekday of the long run. It needs the most free minutes, and an easy day on both sides of it.</source>
        <translation>Der Wochentag des langen Laufs. Er braucht die meisten freien Minuten und einen lockeren Tag auf beiden Seiten.</translation>
    </message>
    <message>
        <source>Minutes free for running</source>
        <translation>Freie Minuten zum Laufen</translation>
    </message>
    <message>
        <source>How long you can run on each weekday, changing and driving left out; 0 is a day without a run. No session is built longer than its day. Six days are used at most.</source>
        <translation>Wie lange du an jedem Wochentag laufen kannst, ohne Umziehen und Fahren; 0 ist ein Tag ohne Lauf. Keine Einheit wird länger gebaut als ihr Tag. Höchstens sechs Tage werden genutzt.</translation>
    </message>
    <message>
        <source>A day with less than 20 minutes is not used. A tune-up race is excepted.</source>
        <translation>Ein Tag mit weniger als 20 Minuten wird nicht genutzt. Ein Vorbereitungsrennen ist ausgenommen.</translation>
    </message>
    <message>
        <source>The 20 minutes and the day of rest.</source>
        <translation>Die 20 Minuten und der Ruhetag.</translation>
    </message>
    <message>
        <source>available time days</source>
        <translation>verfügbare Zeit Tage</translation>
    </message>
    <message>
        <source>When to stop and get help</source>
        <translation>Wann aufhören und Hilfe holen</translation>
    </message>
    <message>
        <source>No plan is worth your health. Ask a doctor before you start with chest pain, fainting, unusual breathlessness or palpitations, with heart, kidney or metabolic disease, when pregnant, or after long inactivity. The Help menu lists what to stop for.</source>
        <translation>Kein Plan ist deine Gesundheit wert. Frag vor dem Anfang einen Arzt bei Brustschmerz, Ohnmacht, ungewöhnlicher Atemnot oder Herzstolpern, bei Herz-, Nieren- oder Stoffwechselkrankheit, in der Schwangerschaft oder nach langer Zeit ohne Bewegung. Das Menü Hilfe führt auf, wann du aufhören musst.</translation>
    </message>
    <message>
        <source>Whom to send to a doctor before hard training.</source>
        <translation>Wer vor hartem Training zum Arzt soll.</translation>
    </message>
    <message>
        <source>Cooled in cold water at once, all of 274 runners with heat stroke lived.</source>
        <translation>Sofort in kaltem Wasser gekühlt, überlebten alle 274 Läufer mit Hitzschlag.</translation>
    </message>
    <message>
        <source>Signs of eating too little for the training.</source>
        <translation>Zeichen, dass man für das Training zu wenig isst.</translation>
    </message>
    <message>
        <source>The wording; it does not replace a doctor.</source>
        <translation>Der Wortlaut; er ersetzt keinen Arzt.</translation>
    </message>
    <message>
        <source>Stop now and call for help: chest pain, fainting, confusion, a fit, severe breathlessness, hot and confused.</source>
        <translation>Hör sofort auf und ruf Hilfe: Brustschmerz, Ohnmacht, Verwirrtheit, Krampfanfall, schwere Atemnot, überhitzt und verwirrt.</translation>
    </message>
    <message>
        <source>danger doctor emergency health warning</source>
        <translation>Gefahr Arzt Notfall Gesundheit Warnung</translation>
    </message>
    <message>
        <source>Painkillers</source>
        <translation>Schmerzmittel</translation>
    </message>
    <message>
        <source>No ibuprofen or similar before or during the race. They may harm the kidneys and hide pain that is a reason to stop.</source>
        <translation>Kein Ibuprofen oder Ähnliches vor oder während des Rennens. Es kann den Nieren schaden und Schmerz verdecken, der ein Grund zum Aufhören ist.</translation>
    </message>
    <message>
        <source>Trial over 80 km: kidney trouble in 52 % with ibuprofen, in 34 % without; the difference may be chance.</source>
        <translation>Versuch über 80 km: Nierenprobleme bei 52 % mit Ibuprofen, bei 34 % ohne; der Unterschied kann Zufall sein.</translation>
    </message>
    <message>
        <source>ibuprofen nsaid drugs kidney</source>
        <translation>Ibuprofen NSAR Medikamente Niere</translation>
    </message>
    <message>
        <source>Recovery run</source>
        <translation>Erholungslauf</translation>
    </message>
    <message>
        <source>Short and slower than easy, the day after something hard: 20 to 45 minutes, effort 2 of 10. If it feels like training, walk.</source>
        <translation>Kurz und langsamer als locker, am Tag nach etwas Hartem: 20 bis 45 Minuten, Anstrengung 2 von 10. Wenn es sich nach Training anfühlt, geh.</translation>
    </message>
    <message>
        <source>Easy run</source>
        <translation>Lockerer Lauf</translation>
    </message>
    <message>
        <source>You can talk in whole sentences all the way, effort 3 of 10. Most of your running should be this. Go by breath rather than by a watch: on hills and trails pulse and pace lag behind.</source>
        <translation>Du kannst die ganze Zeit in ganzen Sätzen reden, Anstrengung 3 von 10. Das meiste deines Laufens sollte so sein. Richte dich nach dem Atem statt nach einer Uhr: An Hügeln und auf Trails hinken Puls und Tempo hinterher.</translation>
    </message>
    <message>
        <source>Speaking in comfort means below the first threshold.</source>
        <translation>Bequem sprechen können heißt unter der ersten Schwelle.</translation>
    </message>
    <message>
        <source>Junior endurance athletes spent about 75 % of it easy.</source>
        <translation>Junge Ausdauersportler machten davon etwa 75 % locker.</translation>
    </message>
    <message>
        <source>Not settled: 38 hobby runners gained as much with more in between.</source>
        <translation>Nicht geklärt: 38 Hobbyläufer gewannen mit mehr dazwischen ebenso viel.</translation>
    </message>
    <message>
        <source>Long run</source>
        <translation>Langer Lauf</translation>
    </message>
    <message>
        <source>The run the week is built around, effort 4 of 10, on ground like the race&apos;s. It grows by 10 % at most over the longest of the last 30 days; once it is really long, only every other week. Eat and drink on it as on race day.</source>
        <translation>Der Lauf, um den die Woche gebaut ist, Anstrengung 4 von 10, auf Untergrund wie im Rennen. Er wächst um höchstens 10 % über den längsten der letzten 30 Tage; ist er einmal wirklich lang, nur noch jede zweite Woche. Iss und trink dabei wie am Renntag.</translation>
    </message>
    <message>
        <source>Back-to-back</source>
        <translation>Doppeltag</translation>
    </message>
    <message>
        <source>A second long run the day after the first, to run on tired legs without one run of dangerous length. An easy day or a rest day follows. It is a wish and not a must: with just enough training there is none.</source>
        <translation>Ein zweiter langer Lauf am Tag nach dem ersten, um auf müden Beinen zu laufen, ohne einen Lauf von gefährlicher Länge. Danach folgt ein lockerer Tag oder ein Ruhetag. Er ist ein Wunsch und kein Muss: Beim Minimum gibt es keinen.</translation>
    </message>
    <message>
        <source>Rehearsal run</source>
        <translation>Generalprobe</translation>
    </message>
    <message>
        <source>A long run as a trial of race day: its kit, its food by the clock, its shoes, poles and lamp, on such ground, from its start hour if you can. Nothing that was not tried here belongs into the race.</source>
        <translation>Ein langer Lauf als Probe für den Renntag: mit dessen Ausrüstung, Essen nach der Uhr, Schuhen, Stöcken und Lampe, auf solchem Untergrund, wenn möglich ab der Startzeit. Was hier nicht erprobt wurde, gehört nicht ins Rennen.</translation>
    </message>
    <message>
        <source>Hill run</source>
        <translation>Berglauf</translation>
    </message>
    <message>
        <source>Hard uphill, easy down, effort 7 of 10: repeats, or one long climb. Practise walking fast too; in the race steep climbs are walked.</source>
        <translation>Hart bergauf, locker bergab, Anstrengung 7 von 10: Wiederholungen oder ein langer Anstieg. Übe auch schnelles Gehen; im Rennen werden steile Anstiege gegangen.</translation>
    </message>
    <message>
        <source>In a short trail race most time was lost uphill once runners tired.</source>
        <translation>In einem kurzen Trailrennen ging die meiste Zeit bergauf verloren, sobald die Läufer müde wurden.</translation>
    </message>
    <message>
        <source>Downhill run</source>
        <translation>Bergablauf</translation>
    </message>
    <message>
        <source>Descents on purpose, to harden the quads: start with 20 to 30 minutes of running down, quick and short steps, effort 5 of 10. Hard on the legs rather than on the breath, so it counts as a hard day.</source>
        <translation>Abstiege mit Absicht, um die Oberschenkel abzuhärten: Beginne mit 20 bis 30 Minuten bergab, schnelle und kurze Schritte, Anstrengung 5 von 10. Hart für die Beine, weniger für den Atem, darum zählt es als harter Tag.</translation>
    </message>
    <message>
        <source>Having run down before is the best protection.</source>
        <translation>Schon bergab gelaufen zu sein ist der beste Schutz.</translation>
    </message>
    <message>
        <source>The dose to start with.</source>
        <translation>Die Menge für den Anfang.</translation>
    </message>
    <message>
        <source>Soreness for one to three days is usual. Dark urine, much swelling or weakness: see a doctor the same day.</source>
        <translation>Muskelkater für ein bis drei Tage ist üblich. Dunkler Urin, starke Schwellung oder Schwäche: am selben Tag zum Arzt.</translation>
    </message>
    <message>
        <source>Tempo run</source>
        <translation>Tempolauf</translation>
    </message>
    <message>
        <source>Steady and brisk, effort 6 of 10: sentences get short, but you could go on for an hour. Warm up and run out easily.</source>
        <translation>Gleichmäßig und zügig, Anstrengung 6 von 10: Die Sätze werden kurz, doch du könntest eine Stunde so weiterlaufen. Lauf dich locker ein und aus.</translation>
    </message>
    <message>
        <source>Interval session</source>
        <translation>Intervalle</translation>
    </message>
    <message>
        <source>Short stretches at effort 8 of 10 with easy running between, the hardest session of a week. A little of it is enough for a long race; leave it out when you are tired.</source>
        <translation>Kurze Strecken mit Anstrengung 8 von 10, dazwischen lockeres Laufen, die härteste Einheit einer Woche. Für ein langes Rennen genügt wenig davon; lass sie weg, wenn du müde bist.</translation>
    </message>
    <message>
        <source>Tune-up race</source>
        <translation>Vorbereitungsrennen</translation>
    </message>
    <message>
        <source>A smaller race on the way, run to practise and not to empty yourself: start, crowds, aid stations, food. It stands in for a long run, and easy days follow it.</source>
        <translation>Ein kleineres Rennen auf dem Weg, gelaufen zum Üben und nicht, um alles zu geben: Start, Gedränge, Verpflegungsstellen, Essen. Es ersetzt einen langen Lauf, und lockere Tage folgen.</translation>
    </message>
    <message>
        <source>Holds at least three weeks before the race, four if it takes over six hours; at up to half of the goal time; and with easy days after it: 4 under three hours, 7 under six, 10 under twelve, 14 under a day, then 21.</source>
        <translation>Hält mindestens drei Wochen vor dem Rennen, vier, wenn es über sechs Stunden dauert; bei bis zur Hälfte der Zielzeit; und mit lockeren Tagen danach: 4 unter drei Stunden, 7 unter sechs, 10 unter zwölf, 14 unter einem Tag, dann 21.</translation>
    </message>
    <message>
        <source>After 166 km strength was back on day 16 at the latest.</source>
        <translation>Nach 166 km war die Kraft spätestens am 16. Tag zurück.</translation>
    </message>
    <message>
        <source>The single-run rule holds for it as well.</source>
        <translation>Auch dafür gilt die Regel für den einzelnen Lauf.</translation>
    </message>
    <message>
        <source>B race preparation race check</source>
        <translation>B-Rennen Vorbereitungsrennen Testrennen Prüfung</translation>
    </message>
    <message>
        <source>Strength</source>
        <translation>Kraft</translation>
    </message>
    <message>
        <source>Weights or body weight for legs, hips and trunk, once or twice a week. Counts as time and load, not as distance. Keep heavy leg work a day away from a hard run and leave it out in the last ten days.</source>
        <translation>Gewichte oder eigenes Körpergewicht für Beine, Hüfte und Rumpf, ein- oder zweimal pro Woche. Zählt als Zeit und Belastung, nicht als Distanz. Halte schweres Beintraining einen Tag von einem harten Lauf entfernt und lass es in den letzten zehn Tagen weg.</translation>
    </message>
    <message>
        <source>Two or three times a week for 8 to 12 weeks made running 2 to 8 % cheaper in most studies; none looked at ultramarathons.</source>
        <translation>Zwei- oder dreimal pro Woche über 8 bis 12 Wochen machte das Laufen in den meisten Studien um 2 bis 8 % sparsamer; keine sah auf Ultramarathons.</translation>
    </message>
    <message>
        <source>The distance from hard runs and from the race.</source>
        <translation>Der Abstand von harten Läufen und vom Rennen.</translation>
    </message>
    <message>
        <source>Cross-training</source>
        <translation>Ausgleichstraining</translation>
    </message>
    <message>
        <source>Cycling, skiing, swimming, hiking without a run: time and load without the blows. It counts in hours and load, never as kilometres of running.</source>
        <translation>Radfahren, Skilaufen, Schwimmen, Wandern ohne Lauf: Zeit und Belastung ohne die Stöße. Es zählt in Stunden und Belastung, nie als Laufkilometer.</translation>
    </message>
    <message>
        <source>The race</source>
        <translation>Das Rennen</translation>
    </message>
    <message>
        <source>The day everything is counted back from. Its tile takes distance, climb and drop from the course and its time from the finish aimed for; it is left out of every weekly total. Move it in the form, not by dragging.</source>
        <translation>Der Tag, von dem alles zurückgezählt wird. Seine Kachel nimmt Distanz, Aufstieg und Abstieg von der Strecke und die Zeit von der angestrebten Zielzeit; aus jeder Wochensumme bleibt er heraus. Verschiebe ihn im Formular, nicht durch Ziehen.</translation>
    </message>
    <message>
        <source>Kind of session</source>
        <translation>Art der Einheit</translation>
    </message>
    <message>
        <source>What the session is for. The kind decides whether it counts as hard, whether its distance counts as running, and what effort is proposed.</source>
        <translation>Wozu die Einheit da ist. Die Art entscheidet, ob sie als hart zählt, ob ihre Distanz als Laufen zählt und welche Anstrengung vorgeschlagen wird.</translation>
    </message>
    <message>
        <source>The kinds are the trade&apos;s own words.</source>
        <translation>Die Arten sind die üblichen Wörter des Fachs.</translation>
    </message>
    <message>
        <source>type workout</source>
        <translation>Art Training</translation>
    </message>
    <message>
        <source>Day of a session</source>
        <translation>Tag einer Einheit</translation>
    </message>
    <message>
        <source>The date it is on. Drag the tile, or type the date in the table; a done session stays where it was done.</source>
        <translation>Das Datum, an dem sie liegt. Zieh die Kachel oder tippe das Datum in die Tabelle; eine erledigte Einheit bleibt, wo sie gelaufen wurde.</translation>
    </message>
    <message>
        <source>date weekday</source>
        <translation>Datum Wochentag</translation>
    </message>
    <message>
        <source>Start of a session</source>
        <translation>Uhrzeit einer Einheit</translation>
    </message>
    <message>
        <source>The time of day it starts, if it matters; empty is any. It goes into the calendar you hand out.</source>
        <translation>Wann am Tag sie beginnt, wenn es darauf ankommt; leer ist beliebig. Sie kommt in den Kalender, den du ausgibst.</translation>
    </message>
    <message>
        <source>clock start morning evening</source>
        <translation>Uhrzeit Beginn Morgen Abend</translation>
    </message>
    <message>
        <source>Distance of a session</source>
        <translation>Distanz einer Einheit</translation>
    </message>
    <message>
        <source>How far the run goes. It counts toward the week&apos;s total, the ramp and the single-run rule; strength and cross-training have none.</source>
        <translation>Wie weit der Lauf geht. Sie zählt für die Wochensumme, die Steigerung und die Regel für den einzelnen Lauf; Kraft und Ausgleichstraining haben keine.</translation>
    </message>
    <message>
        <source>What you typed, or what the block needs that day, in half kilometres.</source>
        <translation>Was du eingetippt hast oder was der Block an dem Tag braucht, in halben Kilometern.</translation>
    </message>
    <message>
        <source>kilometres miles length</source>
        <translation>Kilometer Meilen Länge</translation>
    </message>
    <message>
        <source>Time of a session</source>
        <translation>Zeit einer Einheit</translation>
    </message>
    <message>
        <source>How long it takes, stops left out. On hills go by the time: where distance and time do not agree, the time is what your body gets.</source>
        <translation>Wie lange sie dauert, ohne Halte. An Hügeln richte dich nach der Zeit: Wo Distanz und Zeit nicht zusammenpassen, zählt für deinen Körper die Zeit.</translation>
    </message>
    <message>
        <source>What you typed; in a built block distance plus eight times climb at your easy pace, to five minutes.</source>
        <translation>Was du eingetippt hast; in einem gebauten Block Distanz plus achtmal Aufstieg in deinem lockeren Tempo, auf fünf Minuten.</translation>
    </message>
    <message>
        <source>duration minutes hours</source>
        <translation>Dauer Minuten Stunden</translation>
    </message>
    <message>
        <source>Climb and drop of a session</source>
        <translation>Aufstieg und Abstieg einer Einheit</translation>
    </message>
    <message>
        <source>Metres up and metres down. In a built block they grow toward the race&apos;s own climb per kilometre; the drop grows by a fifth at most over the last 30 days.</source>
        <translation>Meter bergauf und Meter bergab. In einem gebauten Block wachsen sie auf den Anstieg je Kilometer im Rennen zu; der Abstieg wächst um höchstens ein Fünftel über die letzten 30 Tage.</translation>
    </message>
    <message>
        <source>What you typed; in a built block a share of the race&apos;s climb per kilometre by kind of session, more for hill and downhill runs, less for easy ones.</source>
        <translation>Was du eingetippt hast; in einem gebauten Block je nach Art der Einheit ein Anteil vom Anstieg je Kilometer im Rennen, mehr bei Bergläufen und Bergabläufen, weniger bei lockeren.</translation>
    </message>
    <message>
        <source>The shares by kind, and the step of 1.2.</source>
        <translation>Die Anteile je Art und der Schritt von 1,2.</translation>
    </message>
    <message>
        <source>ascent descent elevation gain metres up down</source>
        <translation>Anstieg Aufstieg Abstieg Höhenmeter Meter hoch runter</translation>
    </message>
    <message>
        <source>Ground</source>
        <translation>Untergrund</translation>
    </message>
    <message>
        <source>The shape of the way: level, rolling, rising, falling, up and down, stairs. It is drawn along the foot of the tile, so that a week shows at a glance whether it looks like the race.</source>
        <translation>Die Form des Wegs: eben, wellig, steigend, fallend, auf und ab, Treppe. Sie ist am Fuß der Kachel gezeichnet, damit eine Woche auf einen Blick zeigt, ob sie aussieht wie das Rennen.</translation>
    </message>
    <message>
        <source>No trial says how like the race training has to be.</source>
        <translation>Kein Versuch sagt, wie ähnlich das Training dem Rennen sein muss.</translation>
    </message>
    <message>
        <source>terrain surface silhouette trail road</source>
        <translation>Gelände Untergrund Umriss Trail Straße</translation>
    </message>
    <message>
        <source>Fasted</source>
        <translation>Nüchtern</translation>
    </message>
    <message>
        <source>Run before breakfast, to burn more fat at easy effort. It is optional and gains nothing that is proven for the race. Easy and short only: 60 minutes in the first month, later 90 at most, with 25 g of sugar in the pocket.</source>
        <translation>Vor dem Frühstück gelaufen, um bei lockerer Anstrengung mehr Fett zu verbrennen. Es ist freiwillig und bringt nichts, was für das Rennen belegt wäre. Nur locker und kurz: 60 Minuten im ersten Monat, später höchstens 90, mit 25 g Zucker in der Tasche.</translation>
    </message>
    <message>
        <source>Six weeks fasted: more fat burnt, the same gain in the time trial (20 men on bicycles).</source>
        <translation>Sechs Wochen nüchtern: mehr Fett verbrannt, gleicher Gewinn im Zeitfahren (20 Männer auf dem Rad).</translation>
    </message>
    <message>
        <source>Performance better in 37 % of 11 studies, else equal.</source>
        <translation>Leistung in 37 % von 11 Studien besser, sonst gleich.</translation>
    </message>
    <message>
        <source>The limits on time and effort.</source>
        <translation>Die Grenzen für Zeit und Anstrengung.</translation>
    </message>
    <message>
        <source>Not under 18, not when pregnant, ill or injured, with diabetes, fainting or an eating disorder now or before: ask a doctor first.</source>
        <translation>Nicht unter 18, nicht in der Schwangerschaft, krank oder verletzt, nicht mit Diabetes, Ohnmachten oder einer Essstörung jetzt oder früher: Frag zuerst einen Arzt.</translation>
    </message>
    <message>
        <source>train low before breakfast empty stomach</source>
        <translation>nüchtern vor dem Frühstück leerer Magen</translation>
    </message>
    <message>
        <source>In the dark</source>
        <translation>Im Dunkeln</translation>
    </message>
    <message>
        <source>Run by lamp, to know lamp, battery, footing and your head at night. If the race has more than two dark hours, a built block puts two to four such runs into the last ten weeks.</source>
        <translation>Ein Lauf mit Lampe, um Lampe, Akku, Tritt und deinen Kopf bei Nacht zu kennen. Hat das Rennen mehr als zwei dunkle Stunden, legt ein gebauter Block zwei bis vier solche Läufe in die letzten zehn Wochen.</translation>
    </message>
    <message>
        <source>How many, and when.</source>
        <translation>Wie viele und wann.</translation>
    </message>
    <message>
        <source>No driving after a night without sleep.</source>
        <translation>Kein Autofahren nach einer Nacht ohne Schlaf.</translation>
    </message>
    <message>
        <source>night lamp headlamp torch</source>
        <translation>Nacht Lampe Stirnlampe Taschenlampe</translation>
    </message>
    <message>
        <source>Done or missed</source>
        <translation>Erledigt oder verpasst</translation>
    </message>
    <message>
        <source>Ahead, done with figures of its own, or missed. Done counts with what was really run; missed counts as nothing and is not made up later. D marks the selected session done as planned, M missed.</source>
        <translation>Noch vor dir, erledigt mit eigenen Zahlen oder verpasst. Erledigt zählt mit dem, was wirklich gelaufen wurde; verpasst zählt als nichts und wird später nicht nachgeholt. D setzt die gewählte Einheit auf erledigt wie geplant, M auf verpasst.</translation>
    </message>
    <message>
        <source>state record completed skipped</source>
        <translation>Zustand eintragen erledigt ausgelassen</translation>
    </message>
    <message>
        <source>Carbs eaten</source>
        <translation>KH gegessen</translation>
    </message>
    <message>
        <source>The carbohydrate you really took during the session, in grams for the whole of it. Packets say it; fibre does not count.</source>
        <translation>Die Kohlenhydrate, die du in der Einheit wirklich genommen hast, in Gramm für die ganze Einheit. Sie stehen auf den Packungen; Ballaststoffe zählen nicht.</translation>
    </message>
    <message>
        <source>Planned: grams per hour times hours. Done: what you typed.</source>
        <translation>Geplant: Gramm je Stunde mal Stunden. Erledigt: was du eingetippt hast.</translation>
    </message>
    <message>
        <source>Gut</source>
        <translation>Magen</translation>
    </message>
    <message>
        <source>How the stomach took it: fine, uneasy, bad. Note it after every session with practice carbs; it tells you whether to go up, stay or go back.</source>
        <translation>Wie der Magen es vertragen hat: gut, unruhig, schlecht. Notiere es nach jeder Einheit mit KH im Training; es sagt dir, ob du erhöhst, bleibst oder zurückgehst.</translation>
    </message>
    <message>
        <source>In a 161 km race 96 % had some gut symptom; of those who stopped, 36 % named it as a reason.</source>
        <translation>In einem Rennen über 161 km hatten 96 % Beschwerden mit Magen oder Darm; von denen, die aufgaben, nannten 36 % sie als Grund.</translation>
    </message>
    <message>
        <source>stomach nausea sick cramps</source>
        <translation>Magen Übelkeit schlecht Krämpfe</translation>
    </message>
    <message>
        <source>Note of a session</source>
        <translation>Notiz zu einer Einheit</translation>
    </message>
    <message>
        <source>Your own words: where, with whom, what to try, how it felt. It changes nothing.</source>
        <translation>Deine eigenen Worte: wo, mit wem, was zu probieren ist, wie es sich anfühlte. Sie ändert nichts.</translation>
    </message>
    <message>
        <source>Asking what something is</source>
        <translation>Fragen, was etwas ist</translation>
    </message>
    <message>
        <source>F1 explains what has the focus: what it is, where its figure comes from and on which source. Shift+F1 lets you point at anything instead. Figures in the header and in the ledger can be clicked. The field above searches every page; Esc takes you back to where you were.</source>
        <translation>F1 erklärt, was den Fokus hat: was es ist, woher die Zahl kommt und auf welcher Quelle sie ruht. Mit Umschalt+F1 kannst du stattdessen auf etwas zeigen. Zahlen im Kopf und in den Angaben lassen sich anklicken. Das Feld oben durchsucht jede Seite; Esc bringt dich dorthin zurück, wo du warst.</translation>
    </message>
    <message>
        <source>F1 explain source meaning</source>
        <translation>F1 erklären Quelle Bedeutung</translation>
    </message>
    <message>
        <source>The sheet</source>
        <translation>Das Blatt</translation>
    </message>
    <message>
        <source>One sheet, two storeys: the build-up above, race day below, both running left to right toward the finish. On the right the ledger holds the figures of what you selected. Whatever you drag shows at once what it changes.</source>
        <translation>Ein Blatt, zwei Etagen: oben der Aufbau, unten der Renntag, beide laufen von links nach rechts auf das Ziel zu. Rechts stehen die Angaben zu dem, was du gewählt hast. Was du auch ziehst, zeigt sofort, was es ändert.</translation>
    </message>
    <message>
        <source>window overview</source>
        <translation>Fenster Überblick</translation>
    </message>
    <message>
        <source>Starting a plan</source>
        <translation>Einen Plan beginnen</translation>
    </message>
    <message>
        <source>Drop the GPX file of your race on the window. One short form asks for the race and for what you run now; from that you get a build-up, section targets and a fuel plan, all of which can be changed later. The demo shows a plan that is under way.</source>
        <translation>Zieh die GPX-Datei deines Rennens auf das Fenster. Ein kurzes Formular fragt nach dem Rennen und danach, was du jetzt läufst; daraus entstehen ein Aufbau, Vorgaben für die Abschnitte und ein Verpflegungsplan, die du später alle ändern kannst. Die Demo zeigt einen Plan, der schon läuft.</translation>
    </message>
    <message>
        <source>new first start begin gpx demo</source>
        <translation>neu erster Start beginnen anfangen GPX Demo</translation>
    </message>
    <message>
        <source>The race at a glance</source>
        <translation>Das Rennen auf einen Blick</translation>
    </message>
    <message>
        <source>Date, length, climb and drop of the course, and the time limit if there is one. Length and climb are measured on the file you opened, so they may differ from what the race announces.</source>
        <translation>Datum, Länge, Aufstieg und Abstieg der Strecke und das Zeitlimit, wenn es eines gibt. Länge und Aufstieg werden an der geöffneten Datei gemessen und können darum von der Ausschreibung des Rennens abweichen.</translation>
    </message>
    <message>
        <source>header distance ascent</source>
        <translation>Kopf Distanz Aufstieg</translation>
    </message>
    <message>
        <source>Ledger</source>
        <translation>Angaben</translation>
    </message>
    <message>
        <source>The figures of what is selected: a session with its week above, a section or a fuel item below, and the checks they touch. While you drag, each figure stands before and now. With the keyboard, up and down go through its lines and F1 explains one; Enter on a check goes to the session it is about.</source>
        <translation>Die Zahlen zu dem, was gewählt ist: oben eine Einheit mit ihrer Woche, unten ein Abschnitt oder ein Stück Verpflegung, und die Prüfungen, die sie berühren. Während du ziehst, steht jede Zahl vorher und jetzt da. Mit der Tastatur gehst du mit auf und ab durch die Zeilen, und F1 erklärt eine; die Eingabetaste auf einer Prüfung geht zu der Einheit, um die es geht.</translation>
    </message>
    <message>
        <source>panel right figures</source>
        <translation>Leiste rechts Zahlen Angaben</translation>
    </message>
    <message>
        <source>What comes next</source>
        <translation>Was als Nächstes kommt</translation>
    </message>
    <message>
        <source>The steps still open in this plan, each gone once it is taken: aid stations and cutoffs as long as there are none, and after a new plan what is worth a look first. Under it stands where the build-up could not give all that was asked, and what was mended in the course file. Nothing has to be done in this order.</source>
        <translation>Die Schritte, die in diesem Plan noch offen sind; jeder verschwindet, sobald er getan ist: Verpflegungsstellen und Zeitlimits, solange es keine gibt, und nach einem neuen Plan, was zuerst einen Blick wert ist. Darunter steht, wo der Aufbau nicht alles geben konnte, was verlangt war, und was an der Streckendatei ausgebessert wurde. Nichts muss in dieser Reihenfolge geschehen.</translation>
    </message>
    <message>
        <source>first steps begin start new plan</source>
        <translation>erste Schritte Anfang beginnen neuer Plan</translation>
    </message>
    <message>
        <source>Before and now</source>
        <translation>Vorher und jetzt</translation>
    </message>
    <message>
        <source>While something is in your hand, every lane and figure shows what it would come to. Dashed outlines and the small figures are what is kept. Nothing is kept until you put it down; Esc puts it back.</source>
        <translation>Solange du etwas in der Hand hast, zeigt jede Spur und jede Zahl, worauf es hinausliefe. Gestrichelte Umrisse und die kleinen Zahlen sind, was gespeichert ist. Nichts wird gespeichert, bis du es ablegst; Esc legt es zurück.</translation>
    </message>
    <message>
        <source>drag trial preview dashed</source>
        <translation>ziehen probieren Vorschau gestrichelt</translation>
    </message>
    <message>
        <source>Holds, strains, breaks</source>
        <translation>Hält, knapp, bricht</translation>
    </message>
    <message>
        <source>How your plan stands against a rule, in words and as a cord: taut when it holds, frayed when it strains, parted when it breaks. No rule stops you from planning what you think right; each says its source, and some are no more than custom.</source>
        <translation>Wie dein Plan zu einer Regel steht, in Worten und als Schnur: gespannt, wenn sie hält, ausgefranst, wenn es knapp wird, gerissen, wenn sie bricht. Keine Regel hindert dich zu planen, was du für richtig hältst; jede nennt ihre Quelle, und manche sind nicht mehr als Brauch.</translation>
    </message>
    <message>
        <source>Where strains ends and breaks begins.</source>
        <translation>Wo knapp endet und bricht beginnt.</translation>
    </message>
    <message>
        <source>A plan in which everything holds can still hurt you. It does not examine you.</source>
        <translation>Auch ein Plan, in dem alles hält, kann dir schaden. Er untersucht dich nicht.</translation>
    </message>
    <message>
        <source>rules warnings cord strain break</source>
        <translation>Regeln Warnungen Schnur knapp bricht</translation>
    </message>
    <message>
        <source>Tables</source>
        <translation>Tabellen</translation>
    </message>
    <message>
        <source>The same plan to type instead of drag: sessions, sections, aid stations, fuel, foods. Type over a cell, copy to a spreadsheet and paste back. F1 explains the column you are in.</source>
        <translation>Derselbe Plan zum Tippen statt Ziehen: Einheiten, Abschnitte, Verpflegungsstellen, Verpflegung, Lebensmittel. Überschreib eine Zelle, kopiere in eine Tabellenkalkulation und füge wieder ein. F1 erklärt die Spalte, in der du bist.</translation>
    </message>
    <message>
        <source>spreadsheet list type rows columns</source>
        <translation>Tabelle Liste tippen Zeilen Spalten</translation>
    </message>
    <message>
        <source>Notes</source>
        <translation>Notizen</translation>
    </message>
    <message>
        <source>Room for anything about the whole plan. Kept as you type; it changes nothing.</source>
        <translation>Platz für alles zum ganzen Plan. Wird beim Tippen gespeichert; es ändert nichts.</translation>
    </message>
    <message>
        <source>Kept</source>
        <translation>Gehalten</translation>
    </message>
    <message>
        <source>When your work was last written to its file; hover over it to see where. Every change is kept at once, so there is nothing to save and nothing to lose in a power cut. If it says not kept, the sentence beside it tells why.</source>
        <translation>Wann deine Arbeit zuletzt in ihre Datei geschrieben wurde; halte die Maus darüber, um zu sehen, wohin. Jede Änderung wird sofort gespeichert, also gibt es nichts zu sichern und bei einem Stromausfall nichts zu verlieren. Steht da nicht gespeichert, sagt der Satz daneben, warum.</translation>
    </message>
    <message>
        <source>Clock time of the last change that was written, on your computer&apos;s clock.</source>
        <translation>Uhrzeit der letzten geschriebenen Änderung, nach der Uhr deines Computers.</translation>
    </message>
    <message>
        <source>save saved file header autosave undo</source>
        <translation>speichern gespeichert Datei Kopf automatisch rückgängig</translation>
    </message>
    <message>
        <source>Earlier states</source>
        <translation>Frühere Stände</translation>
    </message>
    <message>
        <source>The file keeps the plan as it was each time you opened it and before a block, a course or a mend went in: the latest 30 of these, and every state you named. Going back to one of them is a step like any other, so Undo brings today&apos;s plan back.</source>
        <translation>Die Datei bewahrt den Plan so, wie er bei jedem Öffnen war und bevor ein Block, eine Strecke oder eine Abhilfe hineinkam: die letzten 30 davon und jeden Stand, dem du einen Namen gegeben hast. Zu einem davon zurückzugehen ist ein Schritt wie jeder andere, also bringt Rückgängig den heutigen Plan zurück.</translation>
    </message>
    <message>
        <source>versions go back restore earlier opening name state undo</source>
        <translation>Versionen zurückgehen wiederherstellen früher öffnen Name Stand rückgängig</translation>
    </message>
    <message>
        <source>Published</source>
        <translation>Veröffentlicht</translation>
    </message>
    <message>
        <source>Published, quoted from memory</source>
        <translation>Veröffentlicht, aus dem Gedächtnis zitiert</translation>
    </message>
    <message>
        <source>Common practice, no source</source>
        <translation>Üblich, ohne Quelle</translation>
    </message>
    <message>
        <source>Our own choice</source>
        <translation>Unsere eigene Wahl</translation>
    </message>
    <message>
        <source>An estimate of our own</source>
        <translation>Eine eigene Schätzung</translation>
    </message>
    <message>
        <source>Arithmetic on your own plan</source>
        <translation>Rechnung mit deinem eigenen Plan</translation>
    </message>
    <message>
        <source>Build-up</source>
        <translation>Aufbau</translation>
    </message>
    <message>
        <source>Your training from now to the race, one column to a week, counted down. Behind the edge of today lies what was done, ahead of it what comes. The lanes under the days show what each week adds up to.</source>
        <translation>Dein Training von jetzt bis zum Rennen, eine Spalte je Woche, heruntergezählt. Hinter der Kante von heute liegt, was erledigt ist, davor, was kommt. Die Spuren unter den Tagen zeigen, was jede Woche zusammen ergibt.</translation>
    </message>
    <message>
        <source>training block plan upper storey</source>
        <translation>Training Block Plan obere Etage</translation>
    </message>
    <message>
        <source>Day grid</source>
        <translation>Tagesraster</translation>
    </message>
    <message>
        <source>Each tile is a session: its kind, its distance or time, and along its foot the shape of the ground it is run on; the heavier the ink, the harder the effort. Filled tiles are done, outlined ones are planned. Narrow ones have a letter for the kind: R recovery, B back-to-back, Rh rehearsal, Tu tune-up. Drag a tile to another day and every lane shows at once what the weeks would come to; with keys, Enter picks it up and the arrows move it.
A day too full for its figures has letters over their sum; the pointer on it names each session.</source>
        <translation>Jede Kachel ist eine Einheit: ihre Art, ihre Distanz oder Zeit und an ihrem Fuß die Form des Geländes, auf dem sie gelaufen wird; je kräftiger die Farbe, desto härter die Anstrengung. Gefüllte Kacheln sind erledigt, umrandete geplant. Auf schmalen stehen Buchstaben für die Art: E Erholung, D langer Lauf am Tag danach, P Probe, V Vorbereitungsrennen. Zieh eine Kachel auf einen anderen Tag, und jede Spur zeigt sofort, worauf die Wochen hinausliefen; mit der Tastatur nimmt die Eingabetaste sie auf, und die Pfeile bewegen sie.
Ein Tag, der für seine Zahlen zu voll ist, hat Buchstaben über ihrer Summe; der Zeiger darauf nennt jede Einheit.</translation>
    </message>
    <message>
        <source>tile session calendar drag move</source>
        <translation>Kachel Einheit Kalender ziehen verschieben</translation>
    </message>
    <message>
        <source>Weeks in view</source>
        <translation>Wochen im Bild</translation>
    </message>
    <message>
        <source>A small strip of the whole build-up, a bar for the distance of each week, with a frame round the weeks you see below. Drag the frame to go along, its ends for fewer or more weeks; a double click shows all.</source>
        <translation>Ein kleiner Streifen des ganzen Aufbaus, ein Balken für die Distanz jeder Woche, mit einem Rahmen um die Wochen, die du unten siehst. Zieh den Rahmen, um weiterzugehen, seine Enden für weniger oder mehr Wochen; ein Doppelklick zeigt alle.</translation>
    </message>
    <message>
        <source>zoom scroll overview far</source>
        <translation>Zoom scrollen Überblick weit</translation>
    </message>
    <message>
        <source>Weeks to go</source>
        <translation>Wochen bis dahin</translation>
    </message>
    <message>
        <source>How many weeks lie between this week and the week of the race, which is 0. A week begins on the day kept in the project, so no total changes with the language of your computer. Cutback and taper weeks are named under their number.</source>
        <translation>Wie viele Wochen zwischen dieser Woche und der Rennwoche liegen, die 0 ist. Eine Woche beginnt an dem Tag, der im Projekt festgelegt ist, also ändert sich keine Summe mit der Sprache deines Computers. Entlastungs- und Taperingwochen sind unter ihrer Zahl benannt.</translation>
    </message>
    <message>
        <source>Whole weeks from the start of this week to that of race week.</source>
        <translation>Ganze Wochen vom Beginn dieser Woche bis zu dem der Rennwoche.</translation>
    </message>
    <message>
        <source>countdown loading week role</source>
        <translation>Countdown Belastung Woche Rolle</translation>
    </message>
    <message>
        <source>Distance of a week</source>
        <translation>Distanz einer Woche</translation>
    </message>
    <message>
        <source>What the week&apos;s runs add up to: what was done where a session is done, nothing where it was missed, the plan where it still lies ahead. The race itself is left out. The tick over a loading week is its ceiling; a hatched top is above it.</source>
        <translation>Was die Läufe der Woche zusammen ergeben: das Gelaufene, wo eine Einheit erledigt ist, nichts, wo sie verpasst wurde, der Plan, wo sie noch bevorsteht. Das Rennen selbst bleibt heraus. Der Strich über einer Belastungswoche ist ihre Obergrenze; ein schraffiertes Ende liegt darüber.</translation>
    </message>
    <message>
        <source>Sum of the distances of all runs of the week. Ceiling: 1.10 times the last loading week. Strength and cross-training count no distance.</source>
        <translation>Summe der Distanzen aller Läufe der Woche. Obergrenze: das 1,10-Fache der letzten Belastungswoche. Kraft und Ausgleichstraining zählen keine Distanz.</translation>
    </message>
    <message>
        <source>Active ultrarunners run 3347 km a year, about 64 km a week (median).</source>
        <translation>Aktive Ultraläufer laufen 3347 km im Jahr, etwa 64 km pro Woche (Median).</translation>
    </message>
    <message>
        <source>Too little is a risk as well: marathoners under 30 km a week were hurt twice as often as those with 30 to 60 km.</source>
        <translation>Auch zu wenig ist ein Risiko: Marathonläufer unter 30 km pro Woche verletzten sich doppelt so oft wie solche mit 30 bis 60 km.</translation>
    </message>
    <message>
        <source>volume mileage kilometres ceiling bar</source>
        <translation>Umfang Kilometer Obergrenze Balken</translation>
    </message>
    <message>
        <source>Of last loading week</source>
        <translation>Von letzter Belastungswoche</translation>
    </message>
    <message>
        <source>This week&apos;s distance as a share of the last week that was meant to load you. Growth is counted from there and not from a cutback week: counted from the cutback, weeks of 10 % more with a quarter off every fourth would never get anywhere.</source>
        <translation>Die Distanz dieser Woche als Anteil der letzten Woche, die dich belasten sollte. Das Wachstum zählt von dort und nicht von einer Entlastungswoche: Von der Entlastung gezählt, kämen Wochen mit 10 % mehr und einem Viertel weniger in jeder vierten nie voran.</translation>
    </message>
    <message>
        <source>Distance divided by that of the last loading week; before the first one, by your usual week. A week that fell short because sessions were missed is passed over; two such weeks in a row lower the yardstick to 80 %, three to 65 %, four to 50 %.</source>
        <translation>Distanz geteilt durch die der letzten Belastungswoche; vor der ersten durch deine übliche Woche. Eine Woche, die wegen verpasster Einheiten zu kurz blieb, wird übergangen; zwei solche Wochen hintereinander senken den Maßstab auf 80 %, drei auf 65 %, vier auf 50 %.</translation>
    </message>
    <message>
        <source>Counting from the last loading week: 1.1 x 1.1 x 1.1 x 0.75 is 0.998.</source>
        <translation>Von der letzten Belastungswoche gezählt: 1,1 x 1,1 x 1,1 x 0,75 ist 0,998.</translation>
    </message>
    <message>
        <source>How far missed weeks lower the yardstick.</source>
        <translation>Wie weit verpasste Wochen den Maßstab senken.</translation>
    </message>
    <message>
        <source>percent growth yardstick</source>
        <translation>Prozent Wachstum Maßstab</translation>
    </message>
    <message>
        <source>Longest run of a week</source>
        <translation>Längster Lauf einer Woche</translation>
    </message>
    <message>
        <source>The longest single run of each week, against what the race asks as a level line. A tune-up race counts as a run here; the race itself does not.</source>
        <translation>Der längste einzelne Lauf jeder Woche, gegen das, was das Rennen verlangt, als waagerechte Linie. Ein Vorbereitungsrennen zählt hier als Lauf; das Rennen selbst nicht.</translation>
    </message>
    <message>
        <source>The greatest distance among the week&apos;s runs, done or still planned.</source>
        <translation>Die größte Distanz unter den Läufen der Woche, erledigt oder noch geplant.</translation>
    </message>
    <message>
        <source>In 63 runners of a 24-hour race the longest session went with distance more closely (r = 0.56) than the weekly distance did (0.31). No trial tells how long it should be.</source>
        <translation>Bei 63 Läufern eines 24-Stunden-Laufs hing die Strecke enger mit der längsten Einheit zusammen (r = 0,56) als mit den Wochenkilometern (0,31). Wie lang sie sein soll, sagt keine Studie.</translation>
    </message>
    <message>
        <source>long lane</source>
        <translation>länge lang spur</translation>
    </message>
    <message>
        <source>On feet</source>
        <translation>Auf den Beinen</translation>
    </message>
    <message>
        <source>How long the week&apos;s sessions take in all. On hilly ground hours say more about the week than kilometres do. Strength and cross-training count here too.</source>
        <translation>Wie lange die Einheiten der Woche zusammen dauern. In hügeligem Gelände sagen Stunden mehr über die Woche als Kilometer. Kraft und Ausgleichstraining zählen hier mit.</translation>
    </message>
    <message>
        <source>Sum of the times. A run that was planned for you takes its distance plus eight times its climb, at your easy pace on level ground.</source>
        <translation>Summe der Zeiten. Ein Lauf, der für dich geplant wurde, zählt mit seiner Strecke plus dem Achtfachen seines Anstiegs, in deinem lockeren Tempo in der Ebene.</translation>
    </message>
    <message>
        <source>One metre of climb for eight of level ground, from records of fell races (men); ten for women.</source>
        <translation>Ein Meter Anstieg für acht in der Ebene, aus Ergebnissen von Bergläufen (Männer); zehn bei Frauen.</translation>
    </message>
    <message>
        <source>hours duration time flat-equivalent</source>
        <translation>stunden dauer zeit flach umgerechnet</translation>
    </message>
    <message>
        <source>Climb and drop of a week</source>
        <translation>Auf- und Abstieg einer Woche</translation>
    </message>
    <message>
        <source>Metres up and metres down in all runs of the week, climb above the line and drop below it. Toward the race your climb per kilometre should come near the race&apos;s; drop is what makes the quads ready for long descents.</source>
        <translation>Höhenmeter hinauf und hinunter in allen Läufen der Woche, Aufstieg über der Linie, Abstieg darunter. Zum Rennen hin soll dein Anstieg je Kilometer dem des Rennens nahekommen; Abstieg macht die Oberschenkel für lange Abstiege bereit.</translation>
    </message>
    <message>
        <source>Sums over the week&apos;s runs. A block built for you grows from half of the race&apos;s climb per kilometre to 0.7 of it for just enough, 0.9 for usual, all of it for ambitious.</source>
        <translation>Summen über die Läufe der Woche. Ein für dich gebauter Block wächst von der Hälfte des Anstiegs je Kilometer im Rennen auf das 0,7-Fache beim Minimum, das 0,9-Fache bei üblich, den ganzen bei ehrgeizig.</translation>
    </message>
    <message>
        <source>The shares of the race&apos;s climb.</source>
        <translation>Die Anteile am Anstieg des Rennens.</translation>
    </message>
    <message>
        <source>In a 27 km trail race uphill economy and how the thighs tire told more than road fitness alone (9 runners).</source>
        <translation>In einem Traillauf über 27 km sagten der Aufwand bergauf und das Ermüden der Oberschenkel mehr als die Form auf der Straße allein (9 Läufer).</translation>
    </message>
    <message>
        <source>New descents make sore for one to three days: raise the drop step by step.</source>
        <translation>Ungewohnte Abstiege geben ein bis drei Tage Muskelkater: steigere den Abstieg schrittweise.</translation>
    </message>
    <message>
        <source>ascent descent elevation gain vert</source>
        <translation>aufstieg abstieg höhenmeter anstieg</translation>
    </message>
    <message>
        <source>Practice carbs</source>
        <translation>KH geübt</translation>
    </message>
    <message>
        <source>Carbohydrate taken in training to teach the gut what it must take on race day. The lane shows the highest rate practised in each week and its grams in all, against the rate of the race plan. The check asks that the last three weeks reach the race rate and that no week jumps.</source>
        <translation>Kohlenhydrate im Training, damit der Magen lernt, was er am Renntag vertragen muss. Die Spur zeigt je Woche die höchste geübte Menge pro Stunde und die Gramm insgesamt, gegen die Menge des Rennplans. Die Prüfung verlangt, dass die letzten drei Wochen die Menge des Rennens erreichen und keine Woche springt.</translation>
    </message>
    <message>
        <source>Grams per hour times hours, summed over the week. From what you take now the plan adds 10 g/h a week at most; the race rate is kept for the last six weeks where there is time.</source>
        <translation>Gramm pro Stunde mal Stunden, über die Woche summiert. Von dem aus, was du jetzt nimmst, legt der Plan höchstens 10 g/h je Woche zu; die Menge des Rennens wird die letzten sechs Wochen gehalten, wenn Zeit dafür ist.</translation>
    </message>
    <message>
        <source>Two weeks of eating 90 g/h while running cut gut symptoms by about 60 % in 25 runners.</source>
        <translation>Zwei Wochen mit 90 g/h beim Laufen senkten Magen-Darm-Beschwerden bei 25 Läufern um etwa 60 %.</translation>
    </message>
    <message>
        <source>The step of 10 g/h a week.</source>
        <translation>Der Schritt von 10 g/h je Woche.</translation>
    </message>
    <message>
        <source>Six weeks at the race rate.</source>
        <translation>Sechs Wochen mit der Menge des Rennens.</translation>
    </message>
    <message>
        <source>Stop raising the rate when you feel sick, bloated or get cramps.</source>
        <translation>Steigere nicht weiter, wenn dir übel wird, du dich aufgebläht fühlst oder Krämpfe bekommst.</translation>
    </message>
    <message>
        <source>gut training stomach gels eat while running lane</source>
        <translation>magentraining magen gels essen beim laufen spur</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>One number for how much a week asked of you: effort on ten steps times minutes, over all sessions, strength included. An hour at 4 of 10 is 240.</source>
        <translation>Eine Zahl dafür, wie viel eine Woche von dir verlangt hat: Anstrengung auf zehn Stufen mal Minuten, über alle Einheiten, Kraft eingeschlossen. Eine Stunde mit 4 von 10 ergibt 240.</translation>
    </message>
    <message>
        <source>Sum over the sessions of effort times minutes.</source>
        <translation>Summe aus Anstrengung mal Minuten über die Einheiten.</translation>
    </message>
    <message>
        <source>Coarse: the same session rated again scattered by 28 %.</source>
        <translation>Grob: dieselbe Einheit, noch einmal bewertet, streute um 28 %.</translation>
    </message>
    <message>
        <source>What is too much differs from athlete to athlete.</source>
        <translation>Was zu viel ist, ist von Sportler zu Sportler verschieden.</translation>
    </message>
    <message>
        <source>Compare only with your own earlier weeks. It does not tell your risk of injury, and there is no number that is right for everybody.</source>
        <translation>Vergleiche nur mit deinen eigenen früheren Wochen. Die Zahl sagt nichts über dein Verletzungsrisiko, und keine Zahl ist für alle richtig.</translation>
    </message>
    <message>
        <source>session load rpe training stress strain monotony</source>
        <translation>belastung einheit rpe trainingsbelastung beanspruchung eintönigkeit</translation>
    </message>
    <message>
        <source>How a block is built</source>
        <translation>Wie ein Block gebaut wird</translation>
    </message>
    <message>
        <source>Counted back from the race: taper first, then every fourth week a cutback, the loading weeks between growing to what the race asks. Sessions go on the days you have time; no two hard days meet, but for a back-to-back. What lies behind today stays as it was.</source>
        <translation>Vom Rennen zurückgezählt: zuerst das Tapering, dann jede vierte Woche eine Entlastung, die Belastungswochen dazwischen wachsen auf das, was das Rennen verlangt. Einheiten liegen auf den Tagen, an denen du Zeit hast; keine zwei harten Tage folgen aufeinander, außer beim Doppeltag. Was vor heute liegt, bleibt, wie es war.</translation>
    </message>
    <message>
        <source>By fixed rules, so the same answers give the same block. It starts from what you run now: your last loading week and the longest run of the last 30 days. Then a search goes on for one that comes nearer to what the race asks, on the same rules and days. It is offered, never put in by itself, with how much better any could still be.</source>
        <translation>Nach festen Regeln, dieselben Antworten ergeben also denselben Block. Er geht von dem aus, was du jetzt läufst: deiner letzten Belastungswoche und dem längsten Lauf der letzten 30 Tage. Danach sucht das Programm weiter nach einem, der dem näherkommt, was das Rennen verlangt, mit denselben Regeln und Tagen. Er wird angeboten, nie von selbst eingesetzt, mit der Angabe, wie viel besser einer noch sein könnte.</translation>
    </message>
    <message>
        <source>The order in which rules give way; each rule has a page.</source>
        <translation>Die Reihenfolge, in der Regeln nachgeben; jede Regel hat eine Seite.</translation>
    </message>
    <message>
        <source>The plan is arithmetic on what you typed. It does not examine you.</source>
        <translation>Der Plan ist Rechnen mit dem, was du eingetippt hast. Er untersucht dich nicht.</translation>
    </message>
    <message>
        <source>build generate make a plan automatic search best exact</source>
        <translation>bauen erzeugen plan machen automatisch suche beste genau</translation>
    </message>
    <message>
        <source>Runway</source>
        <translation>Anlauf</translation>
    </message>
    <message>
        <source>Is the race far enough away? Full weeks until race week, against the weeks it takes to grow from what you run now to what the race asks, cutbacks and taper included. If there are fewer, the sentence beside it says how far you get.</source>
        <translation>Ist das Rennen weit genug weg? Volle Wochen bis zur Rennwoche, gegen die Wochen, die es braucht, um von dem, was du jetzt läufst, auf das zu wachsen, was das Rennen verlangt, mit Entlastungen und Tapering. Sind es weniger, sagt der Satz daneben, wie weit du kommst.</translation>
    </message>
    <message>
        <source>Steps of 10 % from your week and your longest run to those asked, every fourth week a cutback, plus the taper; the longer of the two counts. Holds if at least 98 % is reached, strains from 85 %.</source>
        <translation>Schritte von 10 % von deiner Woche und deinem längsten Lauf bis zu den verlangten, jede vierte Woche eine Entlastung, dazu das Tapering; das Längere von beiden zählt. Reicht ab 98 % des Verlangten, knapp ab 85 %.</translation>
    </message>
    <message>
        <source>Steps of 10 % and a cutback every fourth week.</source>
        <translation>Schritte von 10 % und jede vierte Woche eine Entlastung.</translation>
    </message>
    <message>
        <source>enough time weeks needed header</source>
        <translation>genug zeit wochen nötig kopf anlauf</translation>
    </message>
    <message>
        <source>Effort on ten steps</source>
        <translation>Anstrengung auf zehn Stufen</translation>
    </message>
    <message>
        <source>How hard the whole session was, asked about half an hour after it:
0 rest
1-2 no effort to speak of
3 you talk in whole sentences all the way
4 you talk, and are glad to walk a climb
5-6 sentences get short
7-8 single words
9 hardly a word
10 there was nothing more in you.</source>
        <translation>Wie hart die ganze Einheit war, etwa eine halbe Stunde danach gefragt:
0 Ruhe
1-2 kaum Anstrengung
3 du redest die ganze Zeit in ganzen Sätzen
4 du redest und gehst an einem Anstieg gern
5-6 die Sätze werden kurz
7-8 einzelne Wörter
9 kaum ein Wort
10 mehr war nicht in dir.</translation>
    </message>
    <message>
        <source>You set it; a built block proposes a step for each kind of session.</source>
        <translation>Du legst sie fest; ein gebauter Block schlägt für jede Art von Einheit eine Stufe vor.</translation>
    </message>
    <message>
        <source>The words for each step, and the step for each kind.</source>
        <translation>Die Worte zu jeder Stufe und die Stufe zu jeder Art.</translation>
    </message>
    <message>
        <source>That one rating of the whole session will do.</source>
        <translation>Dass diese eine Bewertung der ganzen Einheit genügt.</translation>
    </message>
    <message>
        <source>That talking tells easy from hard about as well.</source>
        <translation>Dass Reden locker und hart etwa ebenso gut trennt.</translation>
    </message>
    <message>
        <source>Up to 4 counts as easy, 5-6 as between, from 7 as hard.</source>
        <translation>Bis 4 zählt als locker, 5-6 als dazwischen, ab 7 als hart.</translation>
    </message>
    <message>
        <source>rpe perceived exertion hard easy talk scale</source>
        <translation>rpe empfundene anstrengung hart locker reden stufen</translation>
    </message>
    <message>
        <source>For the head</source>
        <translation>Für den Kopf</translation>
    </message>
    <message>
        <source>What to picture beforehand, lines for hard hours, worries with what is done about each, and what counts on a good, a fair and a hard day. Made from the plan, taken only where you say so. There are no scores and no promises in it.</source>
        <translation>Was du dir vorab vorstellst, Sätze für schwere Stunden, Sorgen mit dem, was gegen jede getan wird, und was an einem guten, einem mittleren und einem harten Tag zählt. Aus dem Plan gemacht, übernommen nur, wo du es sagst. Es gibt darin keine Punkte und keine Versprechen.</translation>
    </message>
    <message>
        <source>mental mind nerves fear psychology</source>
        <translation>mental Kopf Nerven Angst Psychologie</translation>
    </message>
    <message>
        <source>To picture</source>
        <translation>Zum Vorstellen</translation>
    </message>
    <message>
        <source>Stretches of this race to go through beforehand: the longest one alone, the dark hours, the great climbs, the heat of the day, the last third, and until when it should feel easy. Sessions marked for it share them between them.</source>
        <translation>Strecken dieses Rennens, die man vorher durchgeht: die längste allein, die dunklen Stunden, die großen Anstiege, die Hitze des Tages, das letzte Drittel, und bis wann es leicht sein soll. Die dafür vorgesehenen Einheiten teilen sie unter sich auf.</translation>
    </message>
    <message>
        <source>Places and hours are those of the target; easy is the first third of the time, the last third is of the distance.</source>
        <translation>Orte und Stunden sind die der Zielzeit; leicht ist das erste Drittel der Zeit, das letzte Drittel gilt der Distanz.</translation>
    </message>
    <message>
        <source>Imagery that is like the real thing.</source>
        <translation>Vorstellungen, die der Wirklichkeit gleichen.</translation>
    </message>
    <message>
        <source>Talking to oneself did not make runners of 60 miles faster.</source>
        <translation>Selbstgespräche machten Läufer über 60 Meilen nicht schneller.</translation>
    </message>
    <message>
        <source>Which stretches, and the words.</source>
        <translation>Welche Stücke, und die Worte.</translation>
    </message>
    <message>
        <source>imagery visualise picture rehearsal</source>
        <translation>Vorstellung vorstellen Bild Generalprobe</translation>
    </message>
    <message>
        <source>If-then lines</source>
        <translation>Wenn-dann-Sätze</translation>
    </message>
    <message>
        <source>What you do when it gets hard, written down before: if this happens, then I do that. The plan proposes some for its climbs, heat, dark, long stops and close cutoffs. Try each in a run; five to eight are enough.</source>
        <translation>Was du tust, wenn es hart wird, vorher aufgeschrieben: Wenn das geschieht, dann tue ich jenes. Der Plan schlägt einige vor, für Anstiege, Hitze, Dunkel, lange Halte und knappe Zeitlimits. Probiere jeden in einem Lauf; fünf bis acht genügen.</translation>
    </message>
    <message>
        <source>94 tests; of all kinds of goals, few of them in long races.</source>
        <translation>94 Tests; mit Zielen aller Art, wenige davon in langen Rennen.</translation>
    </message>
    <message>
        <source>No line is for red flags: confused, faint or chest pain means stop and help.</source>
        <translation>Kein Satz ist für Warnzeichen: verwirrt, einer Ohnmacht nahe oder Brustschmerz heißt anhalten und Hilfe holen.</translation>
    </message>
    <message>
        <source>implementation intention plan hard quit</source>
        <translation>Wenn-dann Vorsatz Plan hart aufgeben</translation>
    </message>
    <message>
        <source>Worries</source>
        <translation>Sorgen</translation>
    </message>
    <message>
        <source>What goes round in the head at night, and what is done about it. One with nothing done about it strains; the check wants a thing to do, not courage.</source>
        <translation>Was nachts im Kopf kreist, und was dagegen getan wird. Eine, gegen die nichts getan wird, gilt als knapp; die Prüfung will etwas zu tun, nicht Mut.</translation>
    </message>
    <message>
        <source>That an open worry strains.</source>
        <translation>Dass eine offene Sorge als knapp gilt.</translation>
    </message>
    <message>
        <source>Anxiety or low mood that lasts, or sleepless weeks, are for a doctor or therapist.</source>
        <translation>Angst oder gedrückte Stimmung, die anhält, oder Wochen ohne Schlaf gehören zu Arzt oder Therapeut.</translation>
    </message>
    <message>
        <source>anxiety fear nerves sleep</source>
        <translation>Angst Furcht Nerven Schlaf</translation>
    </message>
    <message>
        <source>Good, fair and hard day</source>
        <translation>Guter, mittlerer und harter Tag</translation>
    </message>
    <message>
        <source>Three goals for one race, so that no day is lost: what counts if all goes well, if it goes as usual, and if it does not. Type your own, or leave what is reckoned.</source>
        <translation>Drei Ziele für ein Rennen, damit kein Tag verloren ist: was zählt, wenn alles gut geht, wenn es wie üblich geht, und wenn nicht. Tippe deine eigenen ein, oder lass die errechneten.</translation>
    </message>
    <message>
        <source>10th, 50th and 90th percentile of 10,000 simulated races about the forecast.</source>
        <translation>10., 50. und 90. Perzentil von 10.000 simulierten Rennen um die Prognose.</translation>
    </message>
    <message>
        <source>goals A B C target</source>
        <translation>Ziele A B C Zielzeit</translation>
    </message>
    <message>
        <source>Mandatory kit</source>
        <translation>Pflichtausrüstung</translation>
    </message>
    <message>
        <source>What the rules of the race ask you to have with you, ticked with where it is: on the body, in the vest, or in the bag of a station. What is not ticked in the last ten days strains.</source>
        <translation>Was du nach den Rennregeln dabeihaben musst, abgehakt mit dem Ort: am Körper, in der Laufweste oder im Beutel einer Station. Was in den letzten zehn Tagen nicht abgehakt ist, gilt als knapp.</translation>
    </message>
    <message>
        <source>The rules of the race count, in the words of its organisers.</source>
        <translation>Es gelten die Rennregeln, im Wortlaut der Veranstalter.</translation>
    </message>
    <message>
        <source>equipment gear list check packed vest bag</source>
        <translation>Ausrüstung Liste Prüfung gepackt Laufweste Beutel</translation>
    </message>
    <message>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>What holds for the program and not for one plan: language, units, colours, size of text, paper. A change is seen at once, a language from the next start on. Export takes your choices to another computer; nothing of a plan or of your health is in that file.</source>
        <translation>Was für das Programm gilt und nicht für einen Plan: Sprache, Einheiten, Farben, Schriftgröße, Papier. Eine Änderung ist sofort zu sehen, eine Sprache ab dem nächsten Start. Exportieren bringt deine Wahl auf einen anderen Rechner; nichts von einem Plan oder deiner Gesundheit steht in dieser Datei.</translation>
    </message>
    <message>
        <source>preferences options language locale theme export import</source>
        <translation>Einstellungen Optionen Sprache Region Design Export Import</translation>
    </message>
    <message>
        <source>Handbook</source>
        <translation>Handbuch</translation>
    </message>
    <message>
        <source>The job in ten steps with pictures, and every topic of this help in order: what each figure means, where it comes from, on which source. It says what is custom and what is supported, and ends with all cautions. Search it by any word; write it as a PDF to print.</source>
        <translation>Die Arbeit in zehn Schritten mit Bildern, und jedes Thema dieser Hilfe der Reihe nach: was jeder Wert bedeutet, woher er kommt, auf welcher Quelle. Es sagt, was Brauch ist und was belegt, und endet mit allen Warnhinweisen. Durchsuche es mit jedem Wort; schreib es als PDF zum Drucken.</translation>
    </message>
    <message>
        <source>manual guide documentation pdf steps</source>
        <translation>Handbuch Anleitung Dokumentation pdf Schritte</translation>
    </message>
    <message>
        <source>Copy to send</source>
        <translation>Kopie zum Senden</translation>
    </message>
    <message>
        <source>A file of the plan as it stands, without earlier states, to give to a coach or crew. Who you are, health, recordings and notes stay out unless you untick them. It may still tell where and when you race.</source>
        <translation>Eine Datei des Plans, wie er steht, ohne frühere Stände, für Trainer oder Betreuung. Wer du bist, Gesundheit, Aufzeichnungen und Notizen bleiben draußen, außer du nimmst den Haken weg. Sie kann trotzdem verraten, wo und wann du läufst.</translation>
    </message>
    <message>
        <source>mail send share privacy coach</source>
        <translation>Mail senden teilen Datenschutz Trainer</translation>
    </message>
    <message>
        <source>Several plans</source>
        <translation>Mehrere Pläne</translation>
    </message>
    <message>
        <source>Each race of each runner is a file of its own. File, Another window shows a second one beside the first; a build-up goes from one to the other as a template. Without a window, ultraplanner-gui --cards OUT FOLDER writes the cards of each file in a folder, --dump FILE prints all there is in one as lines of JSON, and --restore LINES FILE makes an equal file of them.</source>
        <translation>Jedes Rennen jedes Läufers ist eine eigene Datei. Datei, Weiteres Fenster zeigt eine zweite neben der ersten; ein Aufbau kommt als Vorlage von der einen in die andere. Ohne Fenster schreibt ultraplanner-gui --cards ZIEL ORDNER die Karten jeder Datei in einem Ordner, --dump DATEI gibt alles, was in einer steht, als Zeilen von JSON aus, und --restore ZEILEN DATEI macht daraus eine gleiche Datei.</translation>
    </message>
    <message>
        <source>coach runners side by side compare window batch folder command line json</source>
        <translation>Trainer Läufer nebeneinander vergleichen Fenster Ordner alle auf einmal Befehlszeile JSON</translation>
    </message>
    <message>
        <source>Find anything</source>
        <translation>Alles finden</translation>
    </message>
    <message>
        <source>Type words in any order: sessions, stations, sections, foods, checks, help and everything in the menus are listed. Enter goes there or does it. Figures in the list are those of the plan; ask about them where they stand.</source>
        <translation>Tippe Wörter in beliebiger Folge: Einheiten, Stationen, Abschnitte, Verpflegung, Prüfungen, Hilfe und alles aus den Menüs stehen in der Liste. Enter geht dorthin oder tut es. Zahlen in der Liste sind die des Plans; frage dort nach ihnen, wo sie stehen.</translation>
    </message>
    <message>
        <source>search look for go to command</source>
        <translation>suchen finden gehe zu Befehl</translation>
    </message>
    <message>
        <source>Filter rows</source>
        <translation>Zeilen filtern</translation>
    </message>
    <message>
        <source>Only rows that hold all these words in any of their cells stay in sight; the count says how many of how many. Nothing is removed. Esc shows all rows again.</source>
        <translation>Nur Zeilen, die alle diese Wörter in irgendeiner Zelle haben, bleiben zu sehen; die Zahl sagt, wie viele von wie vielen. Nichts wird entfernt. Esc zeigt wieder alle Zeilen.</translation>
    </message>
    <message>
        <source>search narrow hide rows</source>
        <translation>suchen eingrenzen ausblenden Zeilen</translation>
    </message>
    <message>
        <source>Typing in a table</source>
        <translation>In eine Tabelle tippen</translation>
    </message>
    <message>
        <source>Type over a cell or double-click it; Enter keeps it and goes down. A time is 1 h 30, 1:30 or 90 min, a clock time 09:30, with its day (Sat 09:30) where there are several. What cannot be read is said under the table, and nothing is changed. Cells in pale ink follow from others.</source>
        <translation>Überschreib eine Zelle oder klick sie doppelt; Enter behält sie und geht nach unten. Eine Dauer ist 1 h 30, 1:30 oder 90 min, eine Uhrzeit 09:30, mit ihrem Tag (Sa 09:30), wo es mehrere gibt. Was sich nicht lesen lässt, wird unter der Tabelle gesagt, und nichts ändert sich. Zellen in blasser Tinte folgen aus anderen.</translation>
    </message>
    <message>
        <source>edit cell enter paste format</source>
        <translation>ändern Zelle Enter einfügen Format</translation>
    </message>
    <message>
        <source>Moving things on race day</source>
        <translation>Am Renntag Dinge verschieben</translation>
    </message>
    <message>
        <source>Drag a station by its name, a stop by the end of its bar, the start by its name or by the light, a section by its right edge, food by its token. All lanes, the header and the ledger show what it would come to; let go and it is one step to undo, Esc puts it back. With the keys: choose with left and right, Enter picks up, the arrows move, Enter puts down.</source>
        <translation>Zieh eine Station an ihrem Namen, einen Halt am Ende seines Balkens, den Start an seinem Namen oder am Licht, einen Abschnitt an seinem rechten Rand, Verpflegung an ihrer Marke. Alle Spuren, der Kopf und die Angaben zeigen, was daraus würde; lass los, und es ist ein Schritt zum Rückgängigmachen, Esc stellt es zurück. Mit den Tasten: mit links und rechts wählen, Eingabe nimmt auf, die Pfeile verschieben, Eingabe legt ab.</translation>
    </message>
    <message>
        <source>A station takes the end of its section and its cutoff along; the finish aimed for stays. A longer stop leaves less time to run.</source>
        <translation>Eine Station nimmt das Ende ihres Abschnitts und ihr Zeitlimit mit; die angestrebte Zielzeit bleibt. Ein längerer Halt lässt weniger Zeit zum Laufen.</translation>
    </message>
    <message>
        <source>drag mouse keys arrows hand carry grip handle</source>
        <translation>ziehen Maus Tasten Pfeile Hand tragen Griff Anfasser</translation>
    </message>
    <message>
        <source>What things snap to</source>
        <translation>Woran Dinge einrasten</translation>
    </message>
    <message>
        <source>Places snap to feet and tops of climbs, to aid stations and to whole kilometres or miles; food to passing these; stops to whole five minutes; the start to half hours and five minutes; all of them to where they were. A light line names what it snapped to. Hold Alt while dragging and nothing snaps; zoomed in it snaps less.</source>
        <translation>Orte rasten an Fuß und Gipfel von Anstiegen ein, an Verpflegungsstellen und an ganzen Kilometern oder Meilen; Verpflegung dort, wo du diese passierst; Halte an vollen fünf Minuten; der Start an halben Stunden und fünf Minuten; alle auch dort, wo sie waren. Eine helle Linie nennt, woran es eingerastet ist. Halte beim Ziehen Alt, und nichts rastet ein; vergrößert rastet es weniger ein.</translation>
    </message>
    <message>
        <source>A named place takes hold from 6 pixels away, a round figure from 3.5. What nothing holds is rounded to 10 m or a minute, with Alt to 1 m or 10 seconds.</source>
        <translation>Ein benannter Ort greift ab 6 Pixel Abstand, ein runder Wert ab 3,5. Was nichts hält, wird auf 10 m oder eine Minute gerundet, mit Alt auf 1 m oder 10 Sekunden.</translation>
    </message>
    <message>
        <source>snap magnet round Alt free exact</source>
        <translation>einrasten Magnet rund Alt frei genau</translation>
    </message>
    <message>
        <source>Moving the start</source>
        <translation>Den Start verschieben</translation>
    </message>
    <message>
        <source>Drag the start by its name over the lanes, or drag the light along the race. Every clock time follows, cutoffs too, for they count from the start; the dark hours, the warmth and the pace in the dark are reckoned anew. It stays on its day: another day is set in Race and runner.</source>
        <translation>Zieh den Start an seinem Namen über den Spuren oder zieh das Licht am Rennen entlang. Jede Uhrzeit folgt, auch Zeitlimits, denn sie zählen ab dem Start; die dunklen Stunden, die Wärme und das Tempo im Dunkeln werden neu gerechnet. Er bleibt an seinem Tag: Einen anderen Tag setzt du unter Rennen und Läufer.</translation>
    </message>
    <message>
        <source>start time earlier later wave gun dawn</source>
        <translation>Startzeit früher später Welle Startschuss Morgengrauen</translation>
    </message>
    <message>
        <source>Folding a leg away</source>
        <translation>Ein Teilstück wegfalten</translation>
    </message>
    <message>
        <source>Under the names of the stations each leg has two tips. A click on them folds the leg to a narrow pleat through all lanes, so that the others get its room; a click on the pleat opens it. With the keys: F folds the leg ahead of the chosen station, Shift+F the one behind. Nothing in the plan changes, and one leg always stays open.</source>
        <translation>Unter den Namen der Stationen hat jedes Teilstück zwei Spitzen. Ein Klick darauf faltet das Teilstück zu einer schmalen Falte durch alle Spuren, so dass die anderen seinen Platz bekommen; ein Klick auf die Falte öffnet es. Mit den Tasten: F faltet das Teilstück, das auf die gewählte Station folgt, Umschalt+F das davor. Am Plan ändert sich nichts, und ein Teilstück bleibt immer offen.</translation>
    </message>
    <message>
        <source>The pleat says from where to where, how far and how long on the target.</source>
        <translation>Die Falte sagt, von wo bis wo, wie weit und wie lange nach Vorgabe.</translation>
    </message>
    <message>
        <source>fold unfold hide narrow pleat collapse</source>
        <translation>falten entfalten ausblenden schmal Falte einklappen</translation>
    </message>
    <message>
        <source>Lanes without room</source>
        <translation>Spuren ohne Platz</translation>
    </message>
    <message>
        <source>A low window has no room for every lane. The profile keeps a fair height; surface, warmth, glycogen and fluid make room for it. The button beside the title names them: it shows one in place of another, or race day alone with all of them. Drag the lower edge of the profile up, and they come back of themselves.</source>
        <translation>Ein niedriges Fenster hat nicht für jede Spur Platz. Das Profil behält eine gute Höhe; Untergrund, Wärme, Glykogen und Flüssigkeit machen ihm Platz. Der Knopf neben dem Titel nennt sie: Er zeigt eine statt einer anderen oder nur den Renntag mit allen. Zieh die untere Kante des Profils nach oben, und sie kommen von selbst zurück.</translation>
    </message>
    <message>
        <source>hidden missing lane height more glycogen surface</source>
        <translation>verborgen fehlt Spur Höhe mehr Glykogen Untergrund</translation>
    </message>
    <message>
        <source>The leg ahead</source>
        <translation>Das nächste Teilstück</translation>
    </message>
    <message>
        <source>From leaving an aid station to the next one, or the finish: how far, how much up and down, when and in what light, over what ground. A leg may hold several sections.</source>
        <translation>Vom Verlassen einer Verpflegungsstelle bis zur nächsten oder bis ins Ziel: wie weit, wie viel hinauf und hinunter, wann und bei welchem Licht, auf welchem Untergrund. Ein Teilstück kann mehrere Abschnitte enthalten.</translation>
    </message>
    <message>
        <source>Times are those of the target, climb and drop those of the profile.</source>
        <translation>Zeiten sind die der Vorgabe, Aufstieg und Abstieg die des Profils.</translation>
    </message>
    <message>
        <source>leg between stations ahead underfoot</source>
        <translation>Teilstück zwischen Stationen voraus Untergrund</translation>
    </message>
    <message>
        <source>Recordings</source>
        <translation>Aufzeichnungen</translation>
    </message>
    <message>
        <source>Runs and races recorded by a device, kept in the project file as they came and exported again unchanged. Distance is measured along the points, climb and drop on heights averaged as on the course. Pace on equal effort takes the gradients out.</source>
        <translation>Läufe und Rennen, von einem Gerät aufgezeichnet; sie liegen in der Projektdatei, wie sie kamen, und werden unverändert wieder ausgegeben. Die Distanz wird entlang der Punkte gemessen, Aufstieg und Abstieg an Höhen, die wie bei der Strecke gemittelt sind. Tempo bei gleicher Anstrengung rechnet die Steigungen heraus.</translation>
    </message>
    <message>
        <source>Moving time leaves out where the points stay within 6 m in 20 s for half a minute or more. Flat-equivalent distance and the pace line use the pace model with your own figures, in the table the usual ones; slower later is how much longer the second half of that distance took than the first.</source>
        <translation>Die Zeit in Bewegung lässt weg, wo die Punkte eine halbe Minute oder länger in je 20 s innerhalb von 6 m bleiben. Die flach umgerechnete Distanz und die Tempolinie nutzen das Tempomodell mit deinen eigenen Werten, in der Tabelle die üblichen; später langsamer ist, wie viel länger die zweite Hälfte dieser Distanz dauerte als die erste.</translation>
    </message>
    <message>
        <source>What climbing costs.</source>
        <translation>Was Steigen kostet.</translation>
    </message>
    <message>
        <source>When one stands, and how slopes are sorted.</source>
        <translation>Wann man steht und wie Hänge eingeteilt werden.</translation>
    </message>
    <message>
        <source>A recording says where you have been and when. Think before you send the project file to others.</source>
        <translation>Eine Aufzeichnung sagt, wo du wann warst. Denk daran, bevor du die Projektdatei an andere schickst.</translation>
    </message>
    <message>
        <source>gpx track device import moving standing drift pace</source>
        <translation>gpx track gerät import bewegung stehen drift tempo</translation>
    </message>
    <message>
        <source>What a recording is of</source>
        <translation>Wozu eine Aufzeichnung gehört</translation>
    </message>
    <message>
        <source>A recording is of the session of its day whose length is nearest, of the evening before if it began before four in the morning, or of the race if it began at its time and lies on its line. A file with the start and length of one kept is not added twice. Choose another in the table; nothing is marked done by itself.</source>
        <translation>Eine Aufzeichnung gehört zu der Einheit ihres Tages mit der nächstliegenden Länge, zum Vorabend, wenn sie vor vier Uhr morgens begann, oder zum Rennen, wenn sie zu dessen Zeit begann und auf dessen Linie liegt. Eine Datei mit Start und Länge einer vorhandenen wird nicht noch einmal hinzugefügt. Wähle in der Tabelle eine andere; nichts wird von selbst als erledigt markiert.</translation>
    </message>
    <message>
        <source>By date where the race is, and by length: 0.4 to 2.5 times. A point is on the course within 80 m of its line; each takes the nearest place ahead of the one before.</source>
        <translation>Nach dem Datum am Ort des Rennens und nach der Länge: 0,4- bis 2,5-fach. Ein Punkt ist auf der Strecke, wenn er höchstens 80 m von ihrer Linie liegt; jeder nimmt die nächste Stelle vor der des vorigen.</translation>
    </message>
    <message>
        <source>How far apart two lengths may be.</source>
        <translation>Wie weit zwei Längen auseinanderliegen dürfen.</translation>
    </message>
    <message>
        <source>match session race assign</source>
        <translation>zuordnen einheit rennen zuweisen passend</translation>
    </message>
    <message>
        <source>Looking back</source>
        <translation>Rückblick</translation>
    </message>
    <message>
        <source>A race as it was run beside the plan, section by section, also when it ended early or the recording has a hole: what there is, is used. The minutes more or less than planned are shared out among speed throughout, climbs and descents, fade, dark and stops; what is left is the rest. They add up to the difference.</source>
        <translation>Ein Rennen, wie es gelaufen wurde, neben dem Plan, Abschnitt für Abschnitt, auch wenn es früh endete oder die Aufzeichnung eine Lücke hat: Was da ist, wird genutzt. Die Minuten mehr oder weniger als geplant werden verteilt auf Tempo im Ganzen, Anstiege und Abstiege, Nachlassen, Dunkelheit und Halte; was übrig bleibt, ist der Rest. Zusammen ergeben sie die Differenz.</translation>
    </message>
    <message>
        <source>Fade, climbs, descents and dark of the day are found by regression over pieces of 200 m. Each cause gets its average effect over all orders in which the causes could be put in, so that none gains by being named first.</source>
        <translation>Nachlassen, Anstiege, Abstiege und Dunkelheit des Tages werden durch Regression über Stücke von 200 m gefunden. Jede Ursache bekommt ihre mittlere Wirkung über alle möglichen Reihenfolgen der Ursachen, sodass keine gewinnt, weil sie zuerst genannt wird.</translation>
    </message>
    <message>
        <source>How causes share.</source>
        <translation>Wie Ursachen teilen.</translation>
    </message>
    <message>
        <source>Robust regression.</source>
        <translation>Robuste Regression.</translation>
    </message>
    <message>
        <source>How far one day may differ from the plan.</source>
        <translation>Wie weit ein einzelner Tag vom Plan abweichen darf.</translation>
    </message>
    <message>
        <source>A hint, not a verdict: heat, stomach, mood and a wrong turn are not told apart. To stop in time is not a failure.</source>
        <translation>Ein Hinweis, kein Urteil: Hitze, Magen, Stimmung und ein Verlaufen werden nicht unterschieden. Rechtzeitig aufzuhören ist kein Versagen.</translation>
    </message>
    <message>
        <source>review debrief minutes lost causes planned real</source>
        <translation>rückblick auswertung minuten verloren ursachen geplant wirklich</translation>
    </message>
    <message>
        <source>Food taken</source>
        <translation>Gegessen und getrunken</translation>
    </message>
    <message>
        <source>What was really eaten beside what was planned, item by item and by the hour, as far as the run went. Type the servings; nothing is assumed until you say it.</source>
        <translation>Was wirklich gegessen wurde, neben dem Geplanten, Posten für Posten und je Stunde, so weit der Lauf ging. Gib die Portionen ein; nichts wird angenommen, bevor du es sagst.</translation>
    </message>
    <message>
        <source>Servings times what the food has, summed by the hour.</source>
        <translation>Portionen mal Gehalt des Essens, je Stunde zusammengezählt.</translation>
    </message>
    <message>
        <source>Vomiting that goes on, or weight gained in a race, is for medical staff and not for another plan.</source>
        <translation>Erbrechen, das nicht aufhört, oder Gewichtszunahme im Rennen ist Sache der Sanitäter und nicht eines anderen Plans.</translation>
    </message>
    <message>
        <source>eaten drunk intake gut</source>
        <translation>gegessen getrunken aufnahme magen darm</translation>
    </message>
    <message>
        <source>Lessons</source>
        <translation>Lehren</translation>
    </message>
    <message>
        <source>What was learnt, pinned to an hour, a climb, a food or the whole race. A new project made from this one takes them along: there they come back at their hour, climb or food, and each wants an answer, what you do about it this time, before cards are printed.</source>
        <translation>Was gelernt wurde, festgemacht an einer Stunde, einem Anstieg, einem Essen oder dem ganzen Rennen. Ein neues Projekt, das aus diesem entsteht, nimmt sie mit: Dort kommen sie bei ihrer Stunde, ihrem Anstieg oder Essen wieder, und jede will eine Antwort, was du diesmal tust, bevor Karten gedruckt werden.</translation>
    </message>
    <message>
        <source>learn remember next race answer</source>
        <translation>lernen merken nächstes rennen antwort</translation>
    </message>
</context>
<context>
    <name>HelpGiver</name>
    <message>
        <source>Help</source>
        <translation>Hilfe</translation>
    </message>
</context>
<context>
    <name>HelpPanel</name>
    <message>
        <source>Search all topics</source>
        <translation>Alle Themen durchsuchen</translation>
    </message>
    <message>
        <source>Back</source>
        <translation>Zurück</translation>
    </message>
    <message>
        <source>To the topic before (Alt+Left)</source>
        <translation>Zum Thema davor (Alt+Links)</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Close the help (Esc)</source>
        <translation>Hilfe schließen (Esc)</translation>
    </message>
    <message>
        <source>Topics found</source>
        <translation>Gefundene Themen</translation>
    </message>
    <message>
        <source>Help: {0}</source>
        <translation>Hilfe: {0}</translation>
    </message>
    <message>
        <source>Nothing fits. Try one word of it.</source>
        <translation>Nichts passt. Versuch es mit einem Wort davon.</translation>
    </message>
</context>
<context>
    <name>HourField</name>
    <message>
        <source>any</source>
        <translation>beliebig</translation>
    </message>
    <message>
        <source>A time of day from 00:00 to 23:59, or empty for any</source>
        <translation>Eine Uhrzeit von 00:00 bis 23:59, oder leer für beliebig</translation>
    </message>
</context>
<context>
    <name>ImportForm</name>
    <message>
        <source>Import sessions</source>
        <translation>Einheiten importieren</translation>
    </message>
    <message>
        <source>Changes: {0}. The same already: {1}. Left out: {2}.</source>
        <translation>Änderungen: {0}. Schon gleich: {1}. Ausgelassen: {2}.</translation>
    </message>
    <message>
        <source>What would change</source>
        <translation>Was sich ändern würde</translation>
    </message>
    <message>
        <source>Import</source>
        <translation>Einlesen</translation>
    </message>
</context>
<context>
    <name>InHandLane</name>
    <message>
        <source>Time in hand appears with a course.</source>
        <extracomment>Between a figure and the step under it. So many stations before the walk-in limit its name may stand. Left and right end, height and seconds in hand of one step.</extracomment>
        <translation>Das Zeitpolster erscheint, sobald es eine Strecke gibt.</translation>
    </message>
    <message>
        <source>No cutoffs. Type them in the table of aid stations, or a time limit.</source>
        <translation>Keine Zeitlimits. Trage sie unter Tabellen, Verpflegungsstellen ein, oder eines fürs ganze Rennen.</translation>
    </message>
    <message>
        <source>From here the rest cannot be walked in.</source>
        <translation>Ab hier ist der Rest nicht mehr im Gehen zu schaffen.</translation>
    </message>
    <message>
        <source>{0} later the rest can still be walked in, only if well.</source>
        <translation>{0} später ist der Rest noch im Gehen zu schaffen, nur wenn es dir gut geht.</translation>
    </message>
    <message>
        <source>{0} too late for a cutoff from here on</source>
        <translation>{0} zu spät für ein Zeitlimit ab hier</translation>
    </message>
    <message>
        <source>{0} in hand: later by this much, every later cutoff is still met at planned speed</source>
        <translation>{0} Zeitpolster: um so viel später wird mit geplantem Tempo noch jedes spätere Zeitlimit gehalten</translation>
    </message>
    <message>
        <source>walk-in limit, only if well</source>
        <translation>Gehgrenze, nur wenn es dir gut geht</translation>
    </message>
</context>
<context>
    <name>JobDeeds</name>
    <message>
        <source>That did not work</source>
        <translation>Das ging nicht</translation>
    </message>
</context>
<context>
    <name>Jobs</name>
    <message>
        <source>This failed through a fault in the program; nothing was changed. The log has the details.</source>
        <translation>Das ist an einem Fehler im Programm gescheitert; nichts wurde geändert. Einzelheiten stehen im Protokoll.</translation>
    </message>
    <message>
        <source>There was not enough memory for this; nothing was changed. Close other programs and try again.</source>
        <translation>Dafür reichte der Speicher nicht; nichts wurde geändert. Schließe andere Programme und versuch es noch einmal.</translation>
    </message>
</context>
<context>
    <name>KindLetters</name>
    <message>
        <source>R</source>
        <extracomment>The least there is of a kind; no two alike.</extracomment>
        <translation>E</translation>
    </message>
    <message>
        <source>E</source>
        <translation>L</translation>
    </message>
    <message>
        <source>L</source>
        <translation>La</translation>
    </message>
    <message>
        <source>B</source>
        <translation>D</translation>
    </message>
    <message>
        <source>Rh</source>
        <translation>P</translation>
    </message>
    <message>
        <source>H</source>
        <translation>B</translation>
    </message>
    <message>
        <source>D</source>
        <translation>Bb</translation>
    </message>
    <message>
        <source>T</source>
        <translation>T</translation>
    </message>
    <message>
        <source>I</source>
        <translation>I</translation>
    </message>
    <message>
        <source>Tu</source>
        <translation>V</translation>
    </message>
    <message>
        <source>S</source>
        <translation>K</translation>
    </message>
    <message>
        <source>C</source>
        <translation>Au</translation>
    </message>
</context>
<context>
    <name>Kinds</name>
    <message>
        <source>recovery run</source>
        <translation>Erholungslauf</translation>
    </message>
    <message>
        <source>easy run</source>
        <translation>lockerer Lauf</translation>
    </message>
    <message>
        <source>long run</source>
        <translation>langer Lauf</translation>
    </message>
    <message>
        <source>back-to-back</source>
        <translation>Doppeltag</translation>
    </message>
    <message>
        <source>rehearsal run</source>
        <translation>Generalprobe</translation>
    </message>
    <message>
        <source>hill run</source>
        <translation>Berglauf</translation>
    </message>
    <message>
        <source>downhill run</source>
        <translation>Bergablauf</translation>
    </message>
    <message>
        <source>tempo run</source>
        <translation>Tempolauf</translation>
    </message>
    <message>
        <source>interval session</source>
        <translation>Intervalle</translation>
    </message>
    <message>
        <source>tune-up race</source>
        <translation>Vorbereitungsrennen</translation>
    </message>
    <message>
        <source>strength</source>
        <translation>Kraft</translation>
    </message>
    <message>
        <source>cross-training</source>
        <translation>Ausgleichstraining</translation>
    </message>
    <message>
        <source>race</source>
        <translation>Rennen</translation>
    </message>
    <message>
        <source>Recovery</source>
        <translation>Erholung</translation>
    </message>
    <message>
        <source>Easy</source>
        <translation>Locker</translation>
    </message>
    <message>
        <source>Long</source>
        <translation>Lang</translation>
    </message>
    <message>
        <source>Long 2</source>
        <translation>Lang 2</translation>
    </message>
    <message>
        <source>Rehearsal</source>
        <translation>Probe</translation>
    </message>
    <message>
        <source>Hills</source>
        <translation>Berge</translation>
    </message>
    <message>
        <source>Downhill</source>
        <translation>Bergab</translation>
    </message>
    <message>
        <source>Tempo</source>
        <translation>Tempo</translation>
    </message>
    <message>
        <source>Intervals</source>
        <translation>Intervalle</translation>
    </message>
    <message>
        <source>Tune-up</source>
        <translation>Vorber.</translation>
    </message>
    <message>
        <source>Strength</source>
        <translation>Kraft</translation>
    </message>
    <message>
        <source>Cross</source>
        <translation>Ausgleich</translation>
    </message>
    <message>
        <source>RACE</source>
        <translation>RENNEN</translation>
    </message>
    <message>
        <source>Rehearse</source>
        <extracomment>Whole words for where the usual ones do not fit; fewer than four letters say too little.</extracomment>
        <translation>Probe</translation>
    </message>
    <message>
        <source>Down</source>
        <translation>Bergab</translation>
    </message>
    <message>
        <source>Reps</source>
        <translation>Wdh.</translation>
    </message>
    <message>
        <source>Rec</source>
        <extracomment>What is left of the word on a tile of two halves; the kind alone is worth more than nothing.</extracomment>
        <translation>Erh</translation>
    </message>
    <message>
        <source>Reh</source>
        <translation>Probe</translation>
    </message>
    <message>
        <source>Int</source>
        <translation>Int</translation>
    </message>
    <message>
        <source>Tune</source>
        <translation>Vorb</translation>
    </message>
    <message>
        <source>Str</source>
        <translation>Kraft</translation>
    </message>
    <message>
        <source>level</source>
        <translation>eben</translation>
    </message>
    <message>
        <source>rolling</source>
        <translation>wellig</translation>
    </message>
    <message>
        <source>rising</source>
        <translation>steigend</translation>
    </message>
    <message>
        <source>falling</source>
        <translation>fallend</translation>
    </message>
    <message>
        <source>up and down</source>
        <translation>auf und ab</translation>
    </message>
    <message>
        <source>stairs</source>
        <translation>Treppe</translation>
    </message>
    <message>
        <source>fine</source>
        <translation>gut</translation>
    </message>
    <message>
        <source>uneasy</source>
        <translation>flau</translation>
    </message>
    <message>
        <source>bad</source>
        <translation>schlecht</translation>
    </message>
    <message>
        <source>if-then plans</source>
        <translation>Wenn-dann-Sätze</translation>
    </message>
    <message>
        <source>picture the race</source>
        <translation>das Rennen vorstellen</translation>
    </message>
    <message>
        <source>goals and cutoffs</source>
        <translation>Ziele und Zeitlimits</translation>
    </message>
    <message>
        <source>cutback</source>
        <translation>Entlastung</translation>
    </message>
    <message>
        <source>taper</source>
        <translation>Tapering</translation>
    </message>
    <message>
        <source>missed</source>
        <translation>ausgefallen</translation>
    </message>
    <message>
        <source>of {0}</source>
        <translation>von {0}</translation>
    </message>
    <message>
        <source>climb {0}</source>
        <translation>Aufstieg {0}</translation>
    </message>
    <message>
        <source>drop {0}</source>
        <translation>Abstieg {0}</translation>
    </message>
    <message>
        <source>of 10</source>
        <translation>von 10</translation>
    </message>
    <message>
        <source>not marked yet</source>
        <extracomment>More of them are read as hours only.</extracomment>
        <translation>noch nicht markiert</translation>
    </message>
    <message>
        <source>{0}′</source>
        <translation>{0}′</translation>
    </message>
    <message>
        <source>{0}: {1} sessions, {2}, {3}</source>
        <translation>{0}: {1} Einheiten, {2}, {3}</translation>
    </message>
    <message>
        <source>climb {0}, drop {1}</source>
        <translation>Aufstieg {0}, Abstieg {1}</translation>
    </message>
    <message>
        <source>ground {0}</source>
        <translation>Untergrund {0}</translation>
    </message>
    <message>
        <source>effort {0}</source>
        <translation>Anstrengung {0}</translation>
    </message>
    <message>
        <source>{0} practice carbs</source>
        <translation>{0} KH geübt</translation>
    </message>
    <message>
        <source>in the dark</source>
        <translation>im Dunkeln</translation>
    </message>
    <message>
        <source>fasted</source>
        <translation>nüchtern</translation>
    </message>
    <message>
        <source>locked</source>
        <translation>gesperrt</translation>
    </message>
    <message>
        <source>{0}: {1}</source>
        <translation>{0}: {1}</translation>
    </message>
    <message>
        <source>Race week ({0})</source>
        <translation>Rennwoche ({0})</translation>
    </message>
    <message>
        <source>{0} to go, a cutback week ({1})</source>
        <translation>noch {0}, Entlastungswoche ({1})</translation>
    </message>
    <message>
        <source>{0} to go, taper ({1})</source>
        <translation>noch {0}, Tapering ({1})</translation>
    </message>
    <message>
        <source>{0} to go ({1})</source>
        <translation>noch {0} ({1})</translation>
    </message>
    <message>
        <source>one session</source>
        <translation>eine Einheit</translation>
    </message>
    <message>
        <source>{0} sessions</source>
        <translation>{0} Einheiten</translation>
    </message>
    <message>
        <source>longest run {0}</source>
        <translation>längster Lauf {0}</translation>
    </message>
    <message>
        <source>done {0}, effort {1}</source>
        <translation>gemacht {0}, Anstrengung {1}</translation>
    </message>
</context>
<context>
    <name>LaneMenus</name>
    <message>
        <source>Show as a table</source>
        <translation>Als Tabelle zeigen</translation>
    </message>
    <message>
        <source>Hide {0}</source>
        <translation>{0} ausblenden</translation>
    </message>
    <message>
        <source>Lanes</source>
        <translation>Spuren</translation>
    </message>
    <message>
        <source>{0} (no room now)</source>
        <translation>{0} (gerade kein Platz)</translation>
    </message>
    <message>
        <source>Usual lanes</source>
        <translation>Übliche Spuren</translation>
    </message>
    <message>
        <source>Move {0} up</source>
        <translation>{0} nach oben</translation>
    </message>
    <message>
        <source>Move {0} down</source>
        <translation>{0} nach unten</translation>
    </message>
    <message>
        <source>Make {0} higher</source>
        <translation>{0} höher machen</translation>
    </message>
    <message>
        <source>Make {0} lower</source>
        <translation>{0} niedriger machen</translation>
    </message>
    <message>
        <source>Usual height of {0}</source>
        <translation>Übliche Höhe von {0}</translation>
    </message>
    <message>
        <source>Show {0} as a table</source>
        <translation>{0} als Tabelle zeigen</translation>
    </message>
</context>
<context>
    <name>Ledger</name>
    <message>
        <source>Build-up figures</source>
        <extracomment>What of an outlook changes with the build-up alone. Which table a link leads to, by the kind of its rows and a column.</extracomment>
        <translation>Angaben zum Aufbau</translation>
    </message>
    <message>
        <source>Race day figures</source>
        <translation>Angaben zum Renntag</translation>
    </message>
    <message>
        <source>&amp;When it gets hard here</source>
        <translation>&amp;Wenn es hier hart wird</translation>
    </message>
    <message>
        <source>If …, then …</source>
        <translation>Wenn …, dann …</translation>
    </message>
    <message>
        <source>When it gets hard here</source>
        <translation>Wenn es hier hart wird</translation>
    </message>
    <message>
        <source>Noticed while making it</source>
        <translation>Beim Anlegen aufgefallen</translation>
    </message>
    <message>
        <source>&amp;When it gets hard on the way from here</source>
        <translation>&amp;Wenn es ab hier unterwegs hart wird</translation>
    </message>
</context>
<context>
    <name>LeftOutView</name>
    <message>
        <source>Files left out</source>
        <translation>Ausgelassene Dateien</translation>
    </message>
    <message>
        <source>File</source>
        <translation>Datei</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
</context>
<context>
    <name>Legend</name>
    <message>
        <source>Legend</source>
        <translation>Legende</translation>
    </message>
</context>
<context>
    <name>LightLane</name>
    <message>
        <source>day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>twilight</source>
        <translation>Dämmerung</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>dunkel</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Twilight</source>
        <translation>Dämmerung</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Dunkel</translation>
    </message>
    <message>
        <source>{0} from {1} to {2}</source>
        <translation>{0} von {1} bis {2}</translation>
    </message>
    <message>
        <source>Drag the light along the race to start earlier or later.</source>
        <translation>Zieh das Licht am Rennen entlang, um früher oder später zu starten.</translation>
    </message>
</context>
<context>
    <name>LineChoice</name>
    <message>
        <source>Which line is the course?</source>
        <translation>Welche Linie ist die Strecke?</translation>
    </message>
    <message>
        <source>{0} holds several lines. Which is the course?</source>
        <translation>{0} enthält mehrere Linien. Welche ist die Strecke?</translation>
    </message>
    <message>
        <source>Lines in the file</source>
        <translation>Linien in der Datei</translation>
    </message>
    <message>
        <source>&amp;Read it</source>
        <translation>&amp;Einlesen</translation>
    </message>
    <message>
        <source>track</source>
        <translation>Track</translation>
    </message>
    <message>
        <source>route</source>
        <translation>Route</translation>
    </message>
    <message>
        <source>All {0} in order</source>
        <translation>Alle {0} der Reihe nach</translation>
    </message>
    <message>
        <source>without a name</source>
        <translation>ohne Namen</translation>
    </message>
    <message>
        <source>{0} ({1}): {2}, {3} points</source>
        <translation>{0} ({1}): {2}, {3} Punkte</translation>
    </message>
    <message>
        <source>, climb {0}</source>
        <translation>, Aufstieg {0}</translation>
    </message>
</context>
<context>
    <name>LineView</name>
    <message>
        <source>Plan view of the course</source>
        <extracomment>In less room there is no line. The user is at a place of the course, metres, or at none.</extracomment>
        <translation>Strecke von oben</translation>
    </message>
    <message>
        <source>The plan of the course appears with a course.</source>
        <translation>Die Strecke von oben erscheint, sobald es eine Strecke gibt.</translation>
    </message>
</context>
<context>
    <name>LinesField</name>
    <message>
        <source>One to a line</source>
        <translation>Eine je Zeile</translation>
    </message>
</context>
<context>
    <name>LongestLane</name>
    <message>
        <source>Longest</source>
        <translation>Längster</translation>
    </message>
    <message>
        <source>{0}, asked {1}</source>
        <translation>{0}, verlangt {1}</translation>
    </message>
    <message>
        <source>longest run {0}</source>
        <translation>längster Lauf {0}</translation>
    </message>
    <message>
        <source>{0}, before {1}</source>
        <translation>{0}, vorher {1}</translation>
    </message>
    <message>
        <source>{0}; the race asks {1}</source>
        <translation>{0}; das Rennen verlangt {1}</translation>
    </message>
</context>
<context>
    <name>LookBackView</name>
    <message>
        <source>Looking back: {0}</source>
        <translation>Rückblick: {0}</translation>
    </message>
    <message>
        <source>In short</source>
        <translation>In Kürze</translation>
    </message>
    <message>
        <source>&amp;Food and drink</source>
        <translation>Essen und &amp;Trinken</translation>
    </message>
    <message>
        <source>&amp;In your words</source>
        <translation>In &amp;deinen Worten</translation>
    </message>
    <message>
        <source>Minutes lost, by section</source>
        <translation>Verlorene Minuten, nach Abschnitt</translation>
    </message>
    <message>
        <source>Planned and real, by section</source>
        <translation>Geplant und wirklich, nach Abschnitt</translation>
    </message>
    <message>
        <source>Where the minutes went, by section</source>
        <translation>Wo die Minuten blieben, nach Abschnitt</translation>
    </message>
    <message>
        <source>&amp;Where the minutes went</source>
        <translation>&amp;Wo die Minuten blieben</translation>
    </message>
    <message>
        <source>&amp;Planned and real</source>
        <translation>&amp;Geplant und wirklich</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>geplant</translation>
    </message>
    <message>
        <source>real</source>
        <translation>wirklich</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>From, to</source>
        <translation>Von, bis</translation>
    </message>
    <message>
        <source>Standing</source>
        <translation>Im Stehen</translation>
    </message>
    <message>
        <source>Minutes more than planned</source>
        <translation>Minuten mehr als geplant</translation>
    </message>
    <message>
        <source>In all</source>
        <translation>Insgesamt</translation>
    </message>
    <message>
        <source>Part of the course is recorded; only that is compared.</source>
        <translation>Nur ein Teil der Strecke ist aufgezeichnet; nur der wird verglichen.</translation>
    </message>
    <message>
        <source>The recording has a hole; times within it are a straight line.</source>
        <translation>Die Aufzeichnung hat eine Lücke; Zeiten darin sind eine gerade Linie.</translation>
    </message>
    <message>
        <source>{0} of the way was off the line of the course.</source>
        <translation>{0} des Wegs lagen neben der Linie der Strecke.</translation>
    </message>
    <message>
        <source>Causes are told apart by a model: read them as a hint, not as a verdict. Heat, stomach and mood are in speed, fade and the rest.</source>
        <translation>Die Ursachen trennt ein Modell: Lies sie als Hinweis, nicht als Urteil. Hitze, Magen und Stimmung stecken in Tempo, Nachlassen und Rest.</translation>
    </message>
    <message>
        <source>Distance</source>
        <translation>Distanz</translation>
    </message>
    <message>
        <source>Moving</source>
        <translation>Bewegt</translation>
    </message>
    <message>
        <source>Climb</source>
        <translation>Aufstieg</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>Planned
arrival</source>
        <translation>Ankunft
geplant</translation>
    </message>
    <message>
        <source>Real</source>
        <translation>Wirklich</translation>
    </message>
    <message>
        <source>Late,
min</source>
        <translation>Später,
min</translation>
    </message>
    <message>
        <source>Planned
time</source>
        <translation>Zeit
geplant</translation>
    </message>
    <message>
        <source>Planned
stop</source>
        <translation>Halt
geplant</translation>
    </message>
    <message>
        <source>Planned
pace</source>
        <translation>Tempo
geplant</translation>
    </message>
    <message>
        <source>In
hand</source>
        <translation>Zeit-
polster</translation>
    </message>
    <message>
        <source>To
cutoff</source>
        <translation>Bis
Limit</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>{0} ({1} of it)</source>
        <translation>{0} (davon {1})</translation>
    </message>
    <message>
        <source>In all, min</source>
        <translation>Gesamt, min</translation>
    </message>
</context>
<context>
    <name>MailingForm</name>
    <message>
        <source>Copy to send</source>
        <translation>Kopie zum Senden</translation>
    </message>
    <message>
        <source>Without &amp;who I am: names, medical lines, health</source>
        <translation>Ohne das, was &amp;mich angeht: Namen, medizinische Zeilen, Gesundheit</translation>
    </message>
    <message>
        <source>Without &amp;recordings: where I was and when</source>
        <translation>Ohne &amp;Aufzeichnungen: wo ich wann war</translation>
    </message>
    <message>
        <source>Without &amp;notes, worries and what was said of runs</source>
        <translation>Ohne &amp;Notizen, Sorgen und Worte zu Läufen</translation>
    </message>
    <message>
        <source>The copy has the plan as it stands and no earlier states. Yours stays whole.</source>
        <translation>Die Kopie enthält den Plan, wie er ist, und keine früheren Stände. Deiner bleibt vollständig.</translation>
    </message>
    <message>
        <source>&amp;Write…</source>
        <translation>&amp;Schreiben…</translation>
    </message>
</context>
<context>
    <name>MainWindow</name>
    <message>
        <source>Open &amp;recent</source>
        <extracomment>What a line at the foot keeps free above and below what stands in it. What is asked of the system then is in nobody&apos;s way any more.</extracomment>
        <translation>&amp;Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>Lanes of the bu&amp;ild-up</source>
        <translation>Spuren des A&amp;ufbaus</translation>
    </message>
    <message>
        <source>Lanes of race da&amp;y</source>
        <translation>Spuren des Rennta&amp;gs</translation>
    </message>
    <message>
        <source>Cancel</source>
        <extracomment>What the plan was when the message was said: the next edit takes it away.</extracomment>
        <translation>Abbrechen</translation>
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
        <source>none yet</source>
        <translation>noch keine</translation>
    </message>
</context>
<context>
    <name>Mend</name>
    <message>
        <source>Shorten it to {0}.</source>
        <translation>Kürze ihn auf {0}.</translation>
    </message>
    <message>
        <source>Take {0} off the easy runs of that week.</source>
        <translation>Nimm {0} von den lockeren Läufen dieser Woche weg.</translation>
    </message>
    <message>
        <source>Make that week a cutback, every run {0} of what it is.</source>
        <translation>Mach diese Woche zur Entlastungswoche, jeder Lauf auf {0} gekürzt.</translation>
    </message>
    <message>
        <source>Move the later session to an empty day, days later: {0}.</source>
        <translation>Verschieb die spätere Einheit auf einen leeren Tag, Tage später: {0}.</translation>
    </message>
    <message>
        <source>Move the later session to an empty day, days earlier: {0}.</source>
        <translation>Verschieb die spätere Einheit auf einen leeren Tag, Tage früher: {0}.</translation>
    </message>
    <message>
        <source>Practise {0} on the long runs.</source>
        <translation>Übe {0} auf den langen Läufen.</translation>
    </message>
    <message>
        <source>Run it after breakfast.</source>
        <translation>Lauf ihn nach dem Frühstück.</translation>
    </message>
    <message>
        <source>Run {0} of the easy runs after dark.</source>
        <translation>Lauf {0} der lockeren Läufe im Dunkeln.</translation>
    </message>
</context>
<context>
    <name>NameForm</name>
    <message>
        <source>Name this state</source>
        <translation>Diesen Stand benennen</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>before the camp</source>
        <translation>vor dem Trainingslager</translation>
    </message>
    <message>
        <source>&amp;Name, found again under “Go back to an earlier state”</source>
        <translation>&amp;Name, wiederzufinden unter „Zu einem früheren Stand zurück“</translation>
    </message>
    <message>
        <source>Type a name first.</source>
        <translation>Tippe zuerst einen Namen ein.</translation>
    </message>
</context>
<context>
    <name>OfferBar</name>
    <message>
        <source>&amp;Put it in</source>
        <extracomment>What the line at the foot leaves for it; it is higher only where its text needs that.</extracomment>
        <translation>&amp;Einsetzen</translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation>&amp;Lassen</translation>
    </message>
    <message>
        <source>The plan has changed since. Put in, it can be undone like any step.</source>
        <translation>Der Plan hat sich seither geändert. Eingesetzt lässt es sich rückgängig machen wie jeder Schritt.</translation>
    </message>
</context>
<context>
    <name>Overview</name>
    <message>
        <source>Weeks in view</source>
        <translation>Wochen im Bild</translation>
    </message>
    <message>
        <source>All {0} weeks are in view. Drag an end to see fewer.</source>
        <translation>Alle {0} Wochen sind zu sehen. Zieh an einem Ende, um weniger zu sehen.</translation>
    </message>
    <message>
        <source>{0} of {1} weeks are in view. Drag to scroll, an end for more or fewer; a double click shows all.</source>
        <translation>{0} von {1} Wochen sind zu sehen. Ziehen verschiebt, an einem Ende zeigt es mehr oder weniger; ein Doppelklick zeigt alle.</translation>
    </message>
    <message>
        <source>{0} weeks</source>
        <translation>{0} Wochen</translation>
    </message>
    <message>
        <source>{0} of {1} weeks</source>
        <translation>{0} von {1} Wochen</translation>
    </message>
</context>
<context>
    <name>OwnDaysForm</name>
    <message>
        <source>They join the table Before the start and the card of the last ten days.</source>
        <translation>Sie kommen in die Tabelle Vor dem Start und auf die Karte der letzten zehn Tage.</translation>
    </message>
    <message>
        <source>Days before</source>
        <translation>Tage davor</translation>
    </message>
    <message>
        <source>At</source>
        <translation>Bei</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Own lines</source>
        <translation>Eigene Zeilen</translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation>&amp;Behalten</translation>
    </message>
</context>
<context>
    <name>OwnWords</name>
    <message>
        <source>Add &amp;remark</source>
        <translation>Be&amp;merkung dazu</translation>
    </message>
    <message>
        <source>Add &amp;lesson</source>
        <translation>&amp;Lehre dazu</translation>
    </message>
    <message>
        <source>at, {0}</source>
        <translation>bei, {0}</translation>
    </message>
    <message>
        <source>what was there</source>
        <translation>was dort war</translation>
    </message>
    <message>
        <source>what to do, or never again</source>
        <translation>was zu tun ist, oder nie wieder</translation>
    </message>
    <message>
        <source>7 h 30, 3, or a name</source>
        <translation>7 h 30, 3 oder ein Name</translation>
    </message>
    <message>
        <source>It &amp;ended</source>
        <translation>Es &amp;endete</translation>
    </message>
    <message>
        <source>Wh&amp;y</source>
        <translation>War&amp;um</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>Remarks at places</source>
        <translation>Bemerkungen an Orten</translation>
    </message>
    <message>
        <source>Place of the remark</source>
        <translation>Ort der Bemerkung</translation>
    </message>
    <message>
        <source>Remark</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>Lessons</source>
        <translation>Lehren</translation>
    </message>
    <message>
        <source>Lesson</source>
        <translation>Lehre</translation>
    </message>
    <message>
        <source>Pinned to</source>
        <translation>Geheftet an</translation>
    </message>
    <message>
        <source>Which hour, climb or food</source>
        <translation>Welche Stunde, welcher Anstieg, welches Essen</translation>
    </message>
    <message>
        <source>Lessons; all of them stand in their table</source>
        <translation>Lehren; alle stehen in ihrer Tabelle</translation>
    </message>
    <message>
        <source>A remark needs a place, as 62.5, and its words.</source>
        <translation>Eine Bemerkung braucht einen Ort, etwa 62,5, und ihre Worte.</translation>
    </message>
    <message>
        <source>Say which: a time as 7 h 30, the number of a climb, a food.</source>
        <translation>Sag, welche: eine Zeit wie 7 h 30, die Nummer eines Anstiegs, ein Essen.</translation>
    </message>
</context>
<context>
    <name>PaceField</name>
    <message>
        <source>From {0} to {1} {2}</source>
        <translation>Von {0} bis {1} {2}</translation>
    </message>
</context>
<context>
    <name>PastePreview</name>
    <message>
        <source>What the paste changes</source>
        <translation>Was das Einfügen ändert</translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation>Abbrechen</translation>
    </message>
    <message>
        <source>The paste would change 1 cell.</source>
        <translation>Das Einfügen würde 1 Zelle ändern.</translation>
    </message>
    <message>
        <source>The paste would change {0} cells.</source>
        <translation>Das Einfügen würde {0} Zellen ändern.</translation>
    </message>
    <message>
        <source>It would add 1 row.</source>
        <translation>1 Zeile käme dazu.</translation>
    </message>
    <message>
        <source>It would add {0} rows.</source>
        <translation>{0} Zeilen kämen dazu.</translation>
    </message>
    <message>
        <source>1 entry cannot be taken and is left as it is.</source>
        <translation>1 Eintrag passt nicht und bleibt, wie er ist.</translation>
    </message>
    <message>
        <source>{0} entries cannot be taken and are left as they are.</source>
        <translation>{0} Einträge passen nicht und bleiben, wie sie sind.</translation>
    </message>
    <message>
        <source>Change 1 cell</source>
        <translation>1 Zelle ändern</translation>
    </message>
    <message>
        <source>Change {0} cells</source>
        <translation>{0} Zellen ändern</translation>
    </message>
    <message>
        <source>Add 1 row</source>
        <translation>1 Zeile dazu</translation>
    </message>
    <message>
        <source>Add {0} rows</source>
        <translation>{0} Zeilen dazu</translation>
    </message>
    <message>
        <source>{0}, add 1 row</source>
        <translation>{0}, 1 Zeile dazu</translation>
    </message>
    <message>
        <source>{0}, add {1} rows</source>
        <translation>{0}, {1} Zeilen dazu</translation>
    </message>
</context>
<context>
    <name>PhoneForm</name>
    <message>
        <source>Picture for a lock screen</source>
        <translation>Bild für den Sperrbildschirm</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>White on black</source>
        <translation>Weiß auf Schwarz</translation>
    </message>
    <message>
        <source>Leave room for the clock</source>
        <translation>Platz für die Uhr lassen</translation>
    </message>
    <message>
        <source>Own size</source>
        <translation>Eigene Größe</translation>
    </message>
    <message>
        <source> px</source>
        <translation> px</translation>
    </message>
    <message>
        <source>&amp;Card</source>
        <translation>&amp;Karte</translation>
    </message>
    <message>
        <source>&amp;Screen</source>
        <translation>&amp;Bildschirm</translation>
    </message>
</context>
<context>
    <name>Plan</name>
    <message>
        <source>{0} must lie between the start and the finish.</source>
        <translation>{0} muss zwischen Start und Ziel liegen.</translation>
    </message>
    <message>
        <source>There is no recording; read in one run or more.</source>
        <translation>Es gibt keine Aufzeichnung; lies einen Lauf oder mehr ein.</translation>
    </message>
    <message>
        <source>Only {0} of the recording can be used, too little to learn from; read in a run of {1} or more.</source>
        <translation>Nur {0} der Aufzeichnung sind brauchbar, zu wenig, um daraus zu lernen; lies einen Lauf von {1} oder mehr ein.</translation>
    </message>
    <message>
        <source>Climb {0}: {1}, {2}</source>
        <extracomment>OWN: ground that rises less than that over so long a way parts a climb in two. OWN: level ground up to here between a climb and a descent is no section of its own. OWN: a climb that begins or ends so near an aid station begins or ends there.</extracomment>
        <translation>Anstieg {0}: {1}, {2}</translation>
    </message>
    <message>
        <source>Descent {0}: {1}, {2}</source>
        <translation>Abstieg {0}: {1}, {2}</translation>
    </message>
    <message>
        <source>Even pace</source>
        <translation>Gleichmäßiges Tempo</translation>
    </message>
    <message>
        <source>1 m of climb as 8 m of distance (Scarf 2007)</source>
        <translation>1 m Anstieg wie 8 m Strecke (Scarf 2007)</translation>
    </message>
    <message>
        <source>An hour for 5 km and for 600 m of climb (Naismith)</source>
        <translation>Eine Stunde für 5 km und für 600 m Anstieg (Naismith)</translation>
    </message>
    <message>
        <source>Hiking speed by slope (Tobler 1993)</source>
        <translation>Wandertempo nach Steigung (Tobler 1993)</translation>
    </message>
    <message>
        <source>Median of hikers (Campbell 2022)</source>
        <translation>Median von Wanderern (Campbell 2022)</translation>
    </message>
    <message>
        <source>Constant power on laboratory cost (Minetti 2002)</source>
        <translation>Gleiche Leistung bei Laborkosten (Minetti 2002)</translation>
    </message>
    <message>
        <source>Estimated from temperature and humidity with sun and a light wind assumed: too high under cloud and in wind, too low in full sun without wind. Not counted in the dark.</source>
        <translation>Geschätzt aus Temperatur und Feuchte, mit Sonne und leichtem Wind angenommen: zu hoch bei Wolken und Wind, zu niedrig in voller Sonne ohne Wind. Im Dunkeln nicht gezählt.</translation>
    </message>
    <message>
        <source>There is no course yet. Open a GPX file first.</source>
        <extracomment>Share of easy speed on level ground that is kept through an ultramarathon. Own choice. Metres of level ground for a metre climbed: Scarf 2007, J Sports Sci 25:719, for men. A new race is proposed this far away, at this hour; the form asks for the real date.
----------
Less of the course than this is no race to look back on (own rule). Where the recording has no point for so far, its times are a straight line (own rule). A recording that begins no further from the start than this began with it (own rule). One who stands so near to an aid station has come to it (own rule). How far fade, uphill share, speed downhill and night of one day may lie from the plan&apos;s (OWN). A piece that took longer or shorter by more than this factor had a reason of its own.</extracomment>
        <translation>Es gibt noch keine Strecke. Öffne zuerst eine GPX-Datei.</translation>
    </message>
    <message>
        <source>about {0} of {1} days</source>
        <translation>etwa {0} von {1} Tagen</translation>
    </message>
    <message>
        <source>The stops take {0} of the {1} to the finish and leave no time to run; shorten them or allow more time.</source>
        <translation>Die Halte brauchen {0} der {1} bis ins Ziel und lassen keine Zeit zum Laufen; kürze sie oder gib mehr Zeit.</translation>
    </message>
    <message>
        <source>Nobody gets there in {0} with the stops planned before it; check place and time.</source>
        <translation>Mit den Halten davor kommt niemand in {0} dorthin; prüfe Ort und Zeit.</translation>
    </message>
    <message>
        <source>Type in a race or a long run first: distance, climb, time.</source>
        <translation>Tippe zuerst ein Rennen oder einen langen Lauf ein: Strecke, Anstieg, Zeit.</translation>
    </message>
    <message>
        <source>A result needs a distance and a time above zero and a climb of 0 up.</source>
        <translation>Ein Ergebnis braucht Strecke und Zeit über null und einen Anstieg ab 0.</translation>
    </message>
    <message>
        <source>A run of {0} says nothing about an ultra; give one of {1} or more.</source>
        <translation>Ein Lauf von {0} sagt nichts über einen Ultra; gib einen von {1} oder mehr an.</translation>
    </message>
    <message>
        <source>The course is more than {0} times as far as anything typed in; add a longer run.</source>
        <translation>Die Strecke ist mehr als {0}-mal so weit wie alles Eingetippte; gib einen längeren Lauf dazu.</translation>
    </message>
    <message>
        <source>A long run is taken as {0} slower than a race.</source>
        <translation>Ein langer Lauf gilt als {0} langsamer als ein Rennen.</translation>
    </message>
    <message>
        <source>The longer, the slower: time grows with distance to the power {0} to {1}.</source>
        <translation>Je länger, desto langsamer: Die Zeit wächst mit der Distanz hoch {0} bis {1}.</translation>
    </message>
    <message>
        <source>Nothing typed in is half as far as this course, so the window is wide.</source>
        <translation>Nichts Eingetipptes ist halb so weit wie diese Strecke, darum ist das Fenster weit.</translation>
    </message>
    <message>
        <source>{0} of planned stops are in it.</source>
        <translation>{0} geplante Halte sind darin.</translation>
    </message>
    <message>
        <source>{0} in {1}, worth {2} on the flat, comes to {3} here.</source>
        <translation>{0} in {1}, flach umgerechnet {2}, ergibt hier {3}.</translation>
    </message>
    <message>
        <source>The results lie {0} apart, which widens the window.</source>
        <translation>Die Ergebnisse liegen {0} auseinander, das macht das Fenster weiter.</translation>
    </message>
    <message>
        <source>You slow down more than most as it gets longer.</source>
        <translation>Du wirst mit der Länge stärker langsamer als die meisten.</translation>
    </message>
    <message>
        <source>You slow down less than most as it gets longer.</source>
        <translation>Du wirst mit der Länge weniger langsamer als die meisten.</translation>
    </message>
    <message>
        <source>The section to {0} takes {1}: the free sections would be run in less than half their time. Give it less, or move the finish.</source>
        <translation>Der Abschnitt bis {0} braucht {1}: Die freien Abschnitte würden in weniger als der halben Zeit gelaufen. Gib ihm weniger oder verschieb die Zielzeit.</translation>
    </message>
    <message>
        <source>The section to {0} takes only {1}: the free sections would take more than twice their time. Give it more, or move the finish.</source>
        <translation>Der Abschnitt bis {0} braucht nur {1}: Die freien Abschnitte würden mehr als doppelt so lange dauern. Gib ihm mehr oder verschieb die Zielzeit.</translation>
    </message>
    <message>
        <source>That session is no longer in the build-up.</source>
        <translation>Diese Einheit ist nicht mehr im Aufbau.</translation>
    </message>
    <message>
        <source>There is no aid station {0} on this course.</source>
        <translation>Auf dieser Strecke gibt es keine Verpflegungsstelle {0}.</translation>
    </message>
    <message>
        <source>There is no section {0} on this course.</source>
        <translation>Auf dieser Strecke gibt es keinen Abschnitt {0}.</translation>
    </message>
    <message>
        <source>The section to {0} would have no length; leave at least 100 m.</source>
        <translation>Der Abschnitt bis {0} hätte keine Länge; lass mindestens 100 m.</translation>
    </message>
    <message>
        <source>The section that ends at {0} would have no length; leave 100 m.</source>
        <translation>Der Abschnitt, der bei {0} endet, hätte keine Länge; lass 100 m.</translation>
    </message>
    <message>
        <source>There is no food {0} in this project.</source>
        <translation>In diesem Projekt gibt es kein Essen {0}.</translation>
    </message>
    <message>
        <source>That item is no longer in the fuel plan.</source>
        <translation>Dieser Posten ist nicht mehr im Verpflegungsplan.</translation>
    </message>
    <message>
        <source>Line {0}: give a distance, a climb and a time, as 50 km, 1900 m, 6 h 40.</source>
        <translation>Zeile {0}: Gib Strecke, Anstieg und Zeit an, wie 50 km, 1900 m, 6 h 40.</translation>
    </message>
    <message>
        <source>The search was stopped from outside, perhaps for want of memory; the block stays as it is. Try again.</source>
        <translation>Die Suche wurde von außen angehalten, vielleicht aus Mangel an Speicher; der Block bleibt, wie er ist. Versuch es noch einmal.</translation>
    </message>
    <message>
        <source>This recording is not of this course. Choose another, or match it to a session.</source>
        <translation>Diese Aufzeichnung ist nicht von dieser Strecke. Wähle eine andere oder ordne sie einer Einheit zu.</translation>
    </message>
    <message>
        <source>There is no build-up to keep. Build the block first.</source>
        <extracomment>A template is scaled no further than this, up or down (own choice: beyond it is another plan).</extracomment>
        <translation>Es gibt keinen Aufbau zum Behalten. Baue zuerst den Block.</translation>
    </message>
    <message>
        <source>Nothing of this template fits between today and the race.</source>
        <translation>Nichts aus dieser Vorlage passt zwischen heute und das Rennen.</translation>
    </message>
    <message>
        <source>{0} is no aid station of this course. Leave it empty for anywhere.</source>
        <translation>{0} ist keine Verpflegungsstelle dieser Strecke. Lass es leer für überall.</translation>
    </message>
    <message>
        <source>Type a finish as 20 h 16, or nothing.</source>
        <translation>Tippe die Zielzeit wie 20 h 16 ein, oder nichts.</translation>
    </message>
    <message>
        <source>Line {0}: give days before the race as 3, a time as 18:00, and what to do.</source>
        <translation>Zeile {0}: Gib Tage vor dem Rennen an wie 3, eine Uhrzeit wie 18:00 und was zu tun ist.</translation>
    </message>
    <message>
        <source>There is no GPX file in what was chosen.</source>
        <extracomment>Entries of a folder that are looked at, and folders within folders, at most. So much of a file is looked at to tell whether its points have times. Share of the work that is reading; the rest is matching.</extracomment>
        <translation>In der Auswahl ist keine GPX-Datei.</translation>
    </message>
    <message>
        <source>Type yes or no.</source>
        <translation>Tippe ja oder nein.</translation>
    </message>
    <message>
        <source>Kit is on the body, in the vest, or in the bag of a station.</source>
        <translation>Ausrüstung ist am Körper, in der Laufweste oder im Beutel einer Station.</translation>
    </message>
    <message>
        <source>A lesson is pinned to an hour, a climb, a food or the race.</source>
        <translation>Eine Lehre heftet an einer Stunde, einem Anstieg, einem Essen oder dem Rennen.</translation>
    </message>
    <message>
        <source>Type the time in the race, as 7 h 30.</source>
        <translation>Tippe die Zeit im Rennen ein, wie 7 h 30.</translation>
    </message>
    <message>
        <source>Type the number of the climb, as 3.</source>
        <translation>Tippe die Nummer des Anstiegs ein, wie 3.</translation>
    </message>
    <message>
        <source>A lesson needs its words.</source>
        <translation>Eine Lehre braucht ihren Text.</translation>
    </message>
    <message>
        <source>No session near this day is called so. Choose one of the list.</source>
        <translation>Keine Einheit um diesen Tag heißt so. Wähle eine aus der Liste.</translation>
    </message>
</context>
<context>
    <name>PlanForm</name>
    <message>
        <source>New plan</source>
        <extracomment>Of the screen, so that the window&apos;s own frame has room.</extracomment>
        <translation>Neuer Plan</translation>
    </message>
    <message>
        <source>Race and runner</source>
        <translation>Rennen und Läufer</translation>
    </message>
    <message>
        <source>Does any of this apply to you?</source>
        <translation>Trifft etwas davon auf dich zu?</translation>
    </message>
    <message>
        <source>Kept in your project file alone. PAR-Q+ asks more; search for its name.</source>
        <translation>Steht nur in deiner Projektdatei. PAR-Q+ fragt mehr; such nach dem Namen.</translation>
    </message>
    <message>
        <source>Applies to me? Later</source>
        <translation>Trifft es auf mich zu? Später</translation>
    </message>
    <message>
        <source>No, none of this</source>
        <translation>Nein, nichts davon</translation>
    </message>
    <message>
        <source>Yes: I ask a doctor first</source>
        <translation>Ja: Ich frage zuerst einen Arzt</translation>
    </message>
    <message>
        <source>Keep it &amp;elsewhere…</source>
        <translation>&amp;Anderswo ablegen…</translation>
    </message>
    <message>
        <source>&amp;Make the plan</source>
        <translation>&amp;Plan machen</translation>
    </message>
    <message>
        <source>C&amp;hange</source>
        <translation>Ä&amp;ndern</translation>
    </message>
    <message>
        <source>The race needs a name.</source>
        <translation>Das Rennen braucht einen Namen.</translation>
    </message>
    <message>
        <source>The finish aimed for reads like 20 h 16 and lies within 240 hours.</source>
        <translation>Die Zielzeit liest sich wie 20 h 16 und liegt innerhalb von 240 Stunden.</translation>
    </message>
    <message numerus="yes">
        <source>Mo&amp;ve what lies ahead %n weeks later too</source>
        <translation>
            <numerusform>Was &amp;vor dir liegt, auch %n Woche später legen</numerusform>
            <numerusform>Was &amp;vor dir liegt, auch %n Wochen später legen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Mo&amp;ve what lies ahead %n weeks earlier too</source>
        <translation>
            <numerusform>Was &amp;vor dir liegt, auch %n Woche früher legen</numerusform>
            <numerusform>Was &amp;vor dir liegt, auch %n Wochen früher legen</numerusform>
        </translation>
    </message>
    <message>
        <source>Kept in {0}</source>
        <translation>Liegt in {0}</translation>
    </message>
</context>
<context>
    <name>PlanView</name>
    <message>
        <source>N</source>
        <extracomment>Depths of each hue the gradient is drawn in. The scale bar takes at most this share of the width.</extracomment>
        <translation>N</translation>
    </message>
</context>
<context>
    <name>PlannedBox</name>
    <message>
        <source>Planned</source>
        <translation>Geplant</translation>
    </message>
    <message>
        <source>Between the years {0} and {1}</source>
        <translation>Zwischen den Jahren {0} und {1}</translation>
    </message>
    <message>
        <source>&amp;Fasted</source>
        <translation>&amp;Nüchtern</translation>
    </message>
    <message>
        <source>In the d&amp;ark</source>
        <translation>Im D&amp;unkeln</translation>
    </message>
    <message>
        <source>In the heat</source>
        <translation>In der Hitze</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Keine</translation>
    </message>
    <message>
        <source>L&amp;ocked</source>
        <translation>Ge&amp;sperrt</translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation>&amp;Art</translation>
    </message>
    <message>
        <source>Da&amp;y</source>
        <translation>&amp;Tag</translation>
    </message>
    <message>
        <source>&amp;Begins at</source>
        <translation>U&amp;hrzeit</translation>
    </message>
    <message>
        <source>D&amp;istance</source>
        <translation>&amp;Distanz</translation>
    </message>
    <message>
        <source>&amp;Time</source>
        <translation>&amp;Zeit</translation>
    </message>
    <message>
        <source>C&amp;limb</source>
        <translation>Anst&amp;ieg</translation>
    </message>
    <message>
        <source>D&amp;rop</source>
        <translation>&amp;Abstieg</translation>
    </message>
    <message>
        <source>&amp;Effort</source>
        <translation>Anst&amp;rengung</translation>
    </message>
    <message>
        <source>&amp;Ground</source>
        <translation>Unter&amp;grund</translation>
    </message>
    <message>
        <source>&amp;Practice carbs</source>
        <translation>&amp;KH üben</translation>
    </message>
    <message>
        <source>&amp;Mental rehearsal</source>
        <translation>&amp;Mentale Probe</translation>
    </message>
    <message>
        <source>What is pictured beforehand, or gone through on this run</source>
        <translation>Was vorher vorgestellt oder auf diesem Lauf durchgegangen wird</translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation>N&amp;otiz</translation>
    </message>
    <message>
        <source>Usual for this kind.</source>
        <translation>Üblich für diese Art.</translation>
    </message>
</context>
<context>
    <name>PracticeLane</name>
    <message>
        <source>Practice</source>
        <translation>Übung</translation>
    </message>
    <message>
        <source>carbs, g/h and g</source>
        <translation>KH, g/h und g</translation>
    </message>
    <message>
        <source>no practice carbs</source>
        <translation>keine KH geübt</translation>
    </message>
    <message>
        <source>practice carbs {0} at up to {1}</source>
        <translation>KH geübt {0} mit bis zu {1}</translation>
    </message>
    <message>
        <source>{0}, before {1}</source>
        <translation>{0}, vorher {1}</translation>
    </message>
    <message>
        <source>{0}; the race is planned at {1}</source>
        <translation>{0}; das Rennen ist mit {1} geplant</translation>
    </message>
</context>
<context>
    <name>PredictForm</name>
    <message>
        <source>Predict the finish</source>
        <translation>Zielzeit schätzen</translation>
    </message>
    <message>
        <source>Predicted finish</source>
        <translation>Vorhergesagte Zielzeit</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
    <message>
        <source>Add &amp;recordings…</source>
        <translation>&amp;Aufzeichnungen dazu…</translation>
    </message>
    <message>
        <source>&amp;Keep the runs</source>
        <translation>&amp;Läufe behalten</translation>
    </message>
    <message>
        <source>&amp;Use as goal</source>
        <translation>Als &amp;Ziel nehmen</translation>
    </message>
    <message>
        <source>Type in a race or a long run, or add recordings.</source>
        <translation>Tippe ein Rennen oder einen langen Lauf ein, oder nimm Aufzeichnungen dazu.</translation>
    </message>
    <message>
        <source>Left out: {0}. {1}</source>
        <translation>Ausgelassen: {0}. {1}</translation>
    </message>
    <message>
        <source>{0}, on 8 of 10 days between {1} and {2}. Aimed for now: {3}.</source>
        <translation>{0}, an 8 von 10 Tagen zwischen {1} und {2}. Zielzeit bisher: {3}.</translation>
    </message>
    <message>
        <source>What you have run lately, the longer and the more like this race the better. Nothing in the plan changes until you say so.</source>
        <translation>Was du zuletzt gelaufen bist, je länger und je ähnlicher diesem Rennen, desto besser. Am Plan ändert sich nichts, bis du es sagst.</translation>
    </message>
</context>
<context>
    <name>Preview</name>
    <message>
        <source>Preview of the cards</source>
        <translation>Vorschau der Karten</translation>
    </message>
</context>
<context>
    <name>Profile</name>
    <message>
        <source>No heights in the file: taken as level.</source>
        <translation>Keine Höhen in der Datei: als eben gerechnet.</translation>
    </message>
    <message>
        <source>Height averaged over {0}; ups and downs of less than {1} not counted.</source>
        <translation>Höhe über {0} gemittelt; Auf und Ab unter {1} nicht gezählt.</translation>
    </message>
    <message>
        <source>Height averaged over {0}; ups and downs of less than {1} not counted. Scaled to the official figures from {2} of climb and {3} of drop.</source>
        <translation>Höhe über {0} gemittelt; Auf und Ab unter {1} nicht gezählt. An die offiziellen Zahlen angepasst, von {2} Aufstieg und {3} Abstieg.</translation>
    </message>
    <message>
        <source>{0} per {1}</source>
        <translation>{0} je {1}</translation>
    </message>
</context>
<context>
    <name>ProfileLane</name>
    <message>
        <source>No course yet. Drop a GPX file on the window.</source>
        <extracomment>Each climb or descent with its names and how wide each is. Pieces a section is stretched in. How far a stretched piece may reach past the picture it is taken from. Names of climbs stand in a lane at least so many of their lines high, with room at both sides. What was painted before with head and heights that still hold. Names as they are drawn, and what for: colours, type and pixels.</extracomment>
        <translation>Noch keine Strecke. Zieh eine GPX-Datei ins Fenster.</translation>
    </message>
    <message>
        <source>The course has no heights: paced as flat.</source>
        <translation>Die Strecke hat keine Höhen: Tempo wie in der Ebene.</translation>
    </message>
    <message>
        <source>{0}, {1}, gradient {2}, {3}</source>
        <translation>{0}, {1}, Steigung {2}, {3}</translation>
    </message>
</context>
<context>
    <name>ProfilePicture</name>
    <message>
        <source>Profile</source>
        <extracomment>Pixels of a PNG for each of the sheet: sharp on paper 16 cm wide.</extracomment>
        <translation>Profil</translation>
    </message>
</context>
<context>
    <name>ProgramDeeds</name>
    <message>
        <source>Ultraplanner handbook.pdf</source>
        <translation>Ultraplanner Handbuch.pdf</translation>
    </message>
    <message>
        <source>Writing {0}</source>
        <translation>{0} wird geschrieben</translation>
    </message>
    <message>
        <source>Written: {0}</source>
        <translation>Geschrieben: {0}</translation>
    </message>
</context>
<context>
    <name>RaceColumn</name>
    <message>
        <source>What the race is called, up to {0} letters</source>
        <translation>Wie das Rennen heißt, bis zu {0} Zeichen</translation>
    </message>
    <message>
        <source>Between the years {0} and {1}</source>
        <translation>Zwischen den Jahren {0} und {1}</translation>
    </message>
    <message>
        <source>The clock at the race, proposed from where the course lies</source>
        <translation>Die Uhr am Rennort, vorgeschlagen nach der Lage der Strecke</translation>
    </message>
    <message>
        <source>Weeks are counted and summed from this day on</source>
        <translation>Ab diesem Tag werden Wochen gezählt und summiert</translation>
    </message>
    <message>
        <source>Race</source>
        <translation>Rennen</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>&amp;Date</source>
        <translation>&amp;Datum</translation>
    </message>
    <message>
        <source>Proposed: put in the day of your race.</source>
        <translation>Ein Vorschlag: trag den Tag deines Rennens ein.</translation>
    </message>
    <message>
        <source>&amp;Start</source>
        <translation>&amp;Start</translation>
    </message>
    <message>
        <source>Time &amp;zone</source>
        <translation>Zeit&amp;zone</translation>
    </message>
    <message>
        <source>&amp;Finish aimed for</source>
        <translation>Zielz&amp;eit</translation>
    </message>
    <message>
        <source>Time &amp;limit</source>
        <translation>Zeit&amp;limit</translation>
    </message>
    <message>
        <source>&amp;Week begins on</source>
        <translation>&amp;Woche beginnt am</translation>
    </message>
</context>
<context>
    <name>RaceDay</name>
    <message>
        <source>Profile</source>
        <extracomment>A step of the cursor, as a share of the view. The plan view is as wide as it is high, but takes no more than this share, and no less. Where lanes would become narrower than this beside it, the plan view stays out of sight. The user chose distance or clock. The user wants every lane, and for that the whole window. The user showed or hid the plan view.</extracomment>
        <translation>Profil</translation>
    </message>
    <message>
        <source>Surface</source>
        <translation>Untergrund</translation>
    </message>
    <message>
        <source>In hand</source>
        <translation>Polster</translation>
    </message>
    <message>
        <source>hours</source>
        <translation>Stunden</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Licht</translation>
    </message>
    <message>
        <source>Warmth</source>
        <translation>Wärme</translation>
    </message>
    <message>
        <source>Race day</source>
        <translation>Renntag</translation>
    </message>
    <message>
        <source>No room for it now: make the window wider or the text smaller.</source>
        <translation>Gerade kein Platz dafür: mach das Fenster breiter oder die Schrift kleiner.</translation>
    </message>
    <message>
        <source>New station</source>
        <translation>Neue Station</translation>
    </message>
    <message>
        <source>Open race day</source>
        <translation>Renntag öffnen</translation>
    </message>
    <message>
        <source>Unfold this leg</source>
        <translation>Dieses Teilstück aufklappen</translation>
    </message>
    <message>
        <source>Fold this leg away</source>
        <translation>Dieses Teilstück zuklappen</translation>
    </message>
    <message>
        <source>free</source>
        <translation>frei</translation>
    </message>
    <message>
        <source>Alt frees</source>
        <translation>Alt löst</translation>
    </message>
    <message>
        <source>at {0} (Alt frees)</source>
        <translation>bei {0} (Alt löst)</translation>
    </message>
</context>
<context>
    <name>RecordingDeeds</name>
    <message>
        <source>Reading recordings</source>
        <translation>Aufzeichnungen werden gelesen</translation>
    </message>
    <message>
        <source>Reading {0}</source>
        <translation>{0} wird gelesen</translation>
    </message>
    <message>
        <source>This recording is of no session; choose one for it in its table.</source>
        <translation>Diese Aufzeichnung gehört zu keiner Einheit; wähle eine in ihrer Tabelle.</translation>
    </message>
    <message>
        <source>{0} has times: keep it as a recording of a run, or open it as the course of a new plan?</source>
        <translation>{0} enthält Zeiten: als Aufzeichnung eines Laufs behalten oder als Strecke eines neuen Plans öffnen?</translation>
    </message>
    <message>
        <source>&amp;Keep as a recording</source>
        <translation>Als &amp;Aufzeichnung behalten</translation>
    </message>
    <message>
        <source>&amp;Open as a course</source>
        <translation>Als &amp;Strecke öffnen</translation>
    </message>
    <message>
        <source>Recordings added: {0}.</source>
        <translation>Neue Aufzeichnungen: {0}.</translation>
    </message>
    <message>
        <source>There already: {0}.</source>
        <translation>Schon da: {0}.</translation>
    </message>
    <message>
        <source>Files left out: {0}.</source>
        <translation>Ausgelassene Dateien: {0}.</translation>
    </message>
    <message>
        <source>A project keeps no more; the other files were left out.</source>
        <translation>Mehr behält ein Projekt nicht; die übrigen Dateien wurden ausgelassen.</translation>
    </message>
    <message>
        <source>Choose a recording in its table first.</source>
        <translation>Wähle zuerst eine Aufzeichnung in ihrer Tabelle.</translation>
    </message>
    <message>
        <source>That did not work</source>
        <translation>Das ging nicht</translation>
    </message>
    <message>
        <source>Written: {0}</source>
        <translation>Geschrieben: {0}</translation>
    </message>
</context>
<context>
    <name>RecordingView</name>
    <message>
        <source>Way by gradient, in percent; mark: the time</source>
        <translation>Weg nach Steigung, in Prozent; Marke: die Zeit</translation>
    </message>
    <message>
        <source>Pace by gradient, {0}, up is slower; line: the model</source>
        <translation>Tempo nach Steigung, {0}, oben ist langsamer; Linie: das Modell</translation>
    </message>
    <message>
        <source>Speed on equal effort by hour, first hour 100; mark: forecast</source>
        <translation>Tempo bei gleicher Anstrengung je Stunde, erste Stunde 100; Marke: Vorhersage</translation>
    </message>
    <message>
        <source>Figures of the recording</source>
        <translation>Zahlen der Aufzeichnung</translation>
    </message>
    <message>
        <source>below {0}</source>
        <translation>unter {0}</translation>
    </message>
    <message>
        <source>above {0}</source>
        <translation>über {0}</translation>
    </message>
    <message>
        <source>{0} to {1}</source>
        <translation>{0} bis {1}</translation>
    </message>
    <message>
        <source>Is of: {0}</source>
        <translation>Gehört zu: {0}</translation>
    </message>
    <message>
        <source>Distance</source>
        <translation>Distanz</translation>
    </message>
    <message>
        <source>Climb, drop</source>
        <translation>Auf, ab</translation>
    </message>
    <message>
        <source>Moving</source>
        <translation>Bewegt</translation>
    </message>
    <message>
        <source>Standing</source>
        <translation>Im Stehen</translation>
    </message>
    <message>
        <source>Stops</source>
        <translation>Halte</translation>
    </message>
    <message>
        <source>Pace, moving</source>
        <translation>Tempo in Bewegung</translation>
    </message>
    <message>
        <source>Flat-equivalent</source>
        <translation>Flach umgerechnet</translation>
    </message>
    <message>
        <source>Flat-equivalent pace</source>
        <translation>Tempo, flach umgerechnet</translation>
    </message>
    <message>
        <source>Second half slower by</source>
        <translation>Zweite Hälfte langsamer um</translation>
    </message>
    <message>
        <source>Gradient, %</source>
        <translation>Steigung, %</translation>
    </message>
    <message>
        <source>time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>way</source>
        <translation>Weg</translation>
    </message>
    <message>
        <source>Pace by gradient</source>
        <translation>Tempo nach Steigung</translation>
    </message>
    <message>
        <source>model</source>
        <translation>Modell</translation>
    </message>
    <message>
        <source>pace</source>
        <translation>Tempo</translation>
    </message>
    <message>
        <source>Hour</source>
        <translation>Stunde</translation>
    </message>
    <message>
        <source>forecast</source>
        <translation>Vorhersage</translation>
    </message>
    <message>
        <source>speed</source>
        <translation>Geschw.</translation>
    </message>
    <message>
        <source>Speed on equal effort: gradients taken out by the pace model. Heat, ground and dark are still in it.</source>
        <translation>Tempo bei gleicher Anstrengung: Steigungen mit dem Tempomodell herausgerechnet. Hitze, Untergrund und Dunkelheit stecken noch darin.</translation>
    </message>
    <message>
        <source>Longest stop</source>
        <translation>Längster Halt</translation>
    </message>
    <message>
        <source>On the course of the race</source>
        <translation>Auf der Rennstrecke</translation>
    </message>
    <message>
        <source>This run was elsewhere.</source>
        <translation>Dieser Lauf war anderswo.</translation>
    </message>
    <message>
        <source>From, to</source>
        <translation>Von, bis</translation>
    </message>
    <message>
        <source>Of the course</source>
        <translation>Von der Strecke</translation>
    </message>
    <message>
        <source>Of the run off the line</source>
        <translation>Vom Lauf neben der Linie</translation>
    </message>
</context>
<context>
    <name>Repair</name>
    <message>
        <source>The last day missed lies before the first; swap them.</source>
        <extracomment>Less than five minutes of one run: no change more or less can hide in it. The last long run is the longest of these days: every other one is a shorter one (own choice).</extracomment>
        <translation>Der letzte verpasste Tag liegt vor dem ersten; tausche sie.</translation>
    </message>
    <message>
        <source>There is no build-up yet; build one first.</source>
        <translation>Es gibt noch keinen Aufbau; baue zuerst einen.</translation>
    </message>
    <message>
        <source>The days missed must lie in the build-up, before the race.</source>
        <translation>Die verpassten Tage müssen im Aufbau liegen, vor dem Rennen.</translation>
    </message>
    <message>
        <source>Keep the plan</source>
        <translation>Den Plan behalten</translation>
    </message>
    <message>
        <source>Cutbacks stay where they are; what the missed days no longer carry gets shorter.</source>
        <translation>Entlastungswochen bleiben, wo sie sind; was die verpassten Tage nicht mehr tragen, wird kürzer.</translation>
    </message>
    <message>
        <source>The missed week is the cutback</source>
        <translation>Die verpasste Woche ist die Entlastung</translation>
    </message>
    <message>
        <source>The next cutback becomes a loading week, since the missed days were rest enough.</source>
        <translation>Die nächste Entlastungswoche wird zur Belastungswoche, denn die verpassten Tage waren Ruhe genug.</translation>
    </message>
    <message>
        <source>Come back gently</source>
        <translation>Sanft zurückkommen</translation>
    </message>
    <message>
        <source>More easy days at first, and no growth in the first loading week after them.</source>
        <translation>Zuerst mehr lockere Tage, und in der ersten Belastungswoche danach kein Zuwachs.</translation>
    </message>
    <message>
        <source>With fever, chest symptoms or aches all over: rest, and ask a doctor. Plan on once you have been free of them for one to three days.</source>
        <translation>Bei Fieber, Beschwerden in der Brust oder Gliederschmerzen: ruh dich aus und frag einen Arzt. Plane weiter, wenn du ein bis drei Tage frei davon bist.</translation>
    </message>
    <message>
        <source>No return from an injury is worked out here. Ask whoever treats it whether you may run; with their clearance the block is mended.</source>
        <translation>Eine Rückkehr nach Verletzung wird hier nicht ausgerechnet. Frag, wer dich behandelt, ob du laufen darfst; mit dieser Freigabe wird der Block umgebaut.</translation>
    </message>
    <message>
        <source>What was missed is not made up for: later weeks get no longer by it.</source>
        <translation>Verpasstes wird nicht nachgeholt: Spätere Wochen werden dadurch nicht länger.</translation>
    </message>
    <message>
        <source>The first {0} runs are easy, {1} to {2} of what was planned (common practice).</source>
        <translation>Die ersten {0} Läufe sind locker, {1} bis {2} des Geplanten (übliche Praxis).</translation>
    </message>
    <message>
        <source>Volume grows on from {0} of the last loading week (common practice, no source).</source>
        <translation>Der Umfang wächst weiter von {0} der letzten Belastungswoche (übliche Praxis, keine Quelle).</translation>
    </message>
    <message>
        <source>After an illness, start once you have been free of fever, chest symptoms and aches for one to three days; stop and ask if they come back.</source>
        <translation>Nach einer Krankheit fang an, wenn du ein bis drei Tage frei von Fieber, Brustbeschwerden und Gliederschmerzen bist; hör auf und frag nach, wenn sie wiederkommen.</translation>
    </message>
    <message>
        <source>Pain that grows while running, or is worse next morning: stop, and ask again.</source>
        <translation>Schmerz, der beim Laufen zunimmt oder am nächsten Morgen schlimmer ist: hör auf und frag noch einmal.</translation>
    </message>
    <message>
        <source>{0} days off with {1} weeks left is a lot: think of a later race, a shorter one or a slower goal.</source>
        <translation>{0} Tage Pause bei {1} Wochen bis zum Rennen sind viel: denk an ein späteres Rennen, ein kürzeres oder ein langsameres Ziel.</translation>
    </message>
    <message>
        <source>There are then {0} loading weeks in a row.</source>
        <translation>Dann folgen {0} Belastungswochen aufeinander.</translation>
    </message>
    <message>
        <source>A week stays {0} over its limit: what is locked or done already holds that much.</source>
        <translation>Eine Woche bleibt {0} über ihrer Grenze: Gesperrtes oder Gemachtes macht schon so viel aus.</translation>
    </message>
    <message>
        <source>A race or locked run of {0} stays over 10 % longer than any run of the 30 days before ({1}).</source>
        <translation>Ein Rennen oder gesperrter Lauf von {0} bleibt über 10 % länger als jeder Lauf der 30 Tage davor ({1}).</translation>
    </message>
    <message>
        <source>After so long a break no run of the last 30 days counts: long runs grow from {0}, a share of the last ones (own rule).</source>
        <translation>Nach so langer Pause zählt kein Lauf der letzten 30 Tage: Lange Läufe wachsen ab {0}, einem Anteil der letzten (eigene Regel).</translation>
    </message>
</context>
<context>
    <name>RepairForm</name>
    <message>
        <source>I missed these days</source>
        <extracomment>It takes this share of the height of the window at most.</extracomment>
        <translation>Diese Tage habe ich verpasst</translation>
    </message>
    <message>
        <source>What is missed is not made up. The rest is changed as little as the rules allow.</source>
        <translation>Verpasstes wird nicht nachgeholt. Der Rest ändert sich so wenig, wie die Regeln erlauben.</translation>
    </message>
    <message>
        <source>Life: work, family, travel</source>
        <translation>Leben: Arbeit, Familie, Reisen</translation>
    </message>
    <message>
        <source>Illness</source>
        <translation>Krankheit</translation>
    </message>
    <message>
        <source>Injury</source>
        <translation>Verletzung</translation>
    </message>
    <message>
        <source>Fe&amp;ver, chest symptoms or aches all over, not yet gone</source>
        <translation>Fie&amp;ber, Brustbeschwerden oder Gliederschmerzen, noch nicht vorbei</translation>
    </message>
    <message>
        <source>Whoever &amp;treats it allows running again</source>
        <translation>Wer mich be&amp;handelt, erlaubt das Laufen wieder</translation>
    </message>
    <message>
        <source>&amp;First day missed</source>
        <translation>&amp;Erster verpasster Tag</translation>
    </message>
    <message>
        <source>&amp;Last day missed</source>
        <translation>&amp;Letzter verpasster Tag</translation>
    </message>
    <message>
        <source>&amp;Why</source>
        <translation>&amp;Warum</translation>
    </message>
    <message>
        <source>&amp;Show the ways to mend</source>
        <translation>Wege &amp;zeigen</translation>
    </message>
    <message>
        <source>The last day missed lies before the first; swap them.</source>
        <translation>Der letzte verpasste Tag liegt vor dem ersten; tausche sie.</translation>
    </message>
</context>
<context>
    <name>RepeatForm</name>
    <message>
        <source>Repeat every week</source>
        <translation>Jede Woche wiederholen</translation>
    </message>
    <message>
        <source>Repeats stop before the race. What is done stays as it is.</source>
        <translation>Wiederholungen enden vor dem Rennen. Gemachtes bleibt, wie es ist.</translation>
    </message>
    <message>
        <source>In the &amp;weeks that follow</source>
        <translation>In den &amp;Wochen danach</translation>
    </message>
    <message>
        <source>&amp;Repeat</source>
        <translation>Wiede&amp;rholen</translation>
    </message>
    <message>
        <source>Repeat a food by rule</source>
        <translation>Lebensmittel nach Regel wiederholen</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>By the cl&amp;ock</source>
        <translation>Nach der &amp;Uhr</translation>
    </message>
    <message>
        <source>At each &amp;aid station</source>
        <translation>An jeder &amp;Verpflegungsstelle</translation>
    </message>
    <message>
        <source>At each station that &amp;has it</source>
        <translation>An jeder Station, die es &amp;hat</translation>
    </message>
    <message>
        <source>&amp;Food</source>
        <translation>&amp;Essen</translation>
    </message>
    <message>
        <source>&amp;Servings each time</source>
        <translation>&amp;Portionen je Mal</translation>
    </message>
    <message>
        <source>&amp;Every</source>
        <translation>&amp;Alle</translation>
    </message>
    <message>
        <source>F&amp;rom minute</source>
        <translation>Ab &amp;Minute</translation>
    </message>
    <message>
        <source>&amp;Until minute</source>
        <translation>&amp;Bis Minute</translation>
    </message>
    <message>
        <source>Added to what is there. At stations it keeps its place.</source>
        <translation>Kommt zu dem dazu, was da ist. An Stationen behält es seinen Ort.</translation>
    </message>
    <message>
        <source>&amp;Place it</source>
        <translation>Ein&amp;setzen</translation>
    </message>
    <message>
        <source>No such time or station; change the rule.</source>
        <translation>Keine solche Zeit oder Station; ändere die Regel.</translation>
    </message>
</context>
<context>
    <name>RunChoice</name>
    <message>
        <source>Which runs?</source>
        <extracomment>Runs shorter than this say little of a long race; they are not ticked at first (own rule).</extracomment>
        <translation>Welche Läufe?</translation>
    </message>
    <message>
        <source>Long runs and races of the last months say most. Untick what was ill or lost.</source>
        <translation>Lange Läufe und Rennen der letzten Monate sagen am meisten. Nimm das Häkchen weg, wo du krank warst oder dich verlaufen hast.</translation>
    </message>
    <message>
        <source>Recordings</source>
        <translation>Aufzeichnungen</translation>
    </message>
    <message>
        <source>&amp;Keep the files added with the plan</source>
        <translation>Dazugenommene Dateien mit dem Plan &amp;behalten</translation>
    </message>
    <message>
        <source>Add f&amp;iles…</source>
        <translation>&amp;Dateien dazu…</translation>
    </message>
    <message>
        <source>{0}  {1}, {2}, {3}</source>
        <translation>{0}  {1}, {2}, {3}</translation>
    </message>
    <message>
        <source>{0} (file)</source>
        <translation>{0} (Datei)</translation>
    </message>
</context>
<context>
    <name>RunTable</name>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Distance, {0}</source>
        <translation>Strecke, {0}</translation>
    </message>
    <message>
        <source>Climb, {0}</source>
        <translation>Anstieg, {0}</translation>
    </message>
    <message>
        <source>Running time</source>
        <translation>Laufzeit</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Past runs</source>
        <translation>Frühere Läufe</translation>
    </message>
    <message>
        <source>One run to a line: distance, climb, and time without long stops</source>
        <translation>Ein Lauf je Zeile: Strecke, Anstieg und Zeit ohne lange Halte</translation>
    </message>
    <message>
        <source>race</source>
        <translation>Rennen</translation>
    </message>
    <message>
        <source>long run</source>
        <translation>langer Lauf</translation>
    </message>
    <message>
        <source>Kind of run {0}</source>
        <translation>Art von Lauf {0}</translation>
    </message>
</context>
<context>
    <name>RunnerColumn</name>
    <message>
        <source>Runner</source>
        <translation>Läufer</translation>
    </message>
    <message>
        <source>What is pale is a careful guess of ours. Type over it what you know.</source>
        <translation>Was blass steht, ist eine vorsichtige Schätzung von uns. Schreib darüber, was du weißt.</translation>
    </message>
    <message>
        <source>just enough to finish inside the cutoffs</source>
        <translation>gerade genug, um innerhalb der Zeitlimits anzukommen</translation>
    </message>
    <message>
        <source>as much as is usual</source>
        <translation>so viel wie üblich</translation>
    </message>
    <message>
        <source>ambitious: as much as you can bear</source>
        <translation>ehrgeizig: so viel du verträgst</translation>
    </message>
    <message>
        <source>How much the build-up asks of you, week by week</source>
        <translation>Wie viel der Aufbau Woche für Woche von dir verlangt</translation>
    </message>
    <message>
        <source>The day of the longest run of the week</source>
        <translation>Der Tag des längsten Laufs der Woche</translation>
    </message>
    <message>
        <source>A &amp;usual week now</source>
        <translation>&amp;Übliche Woche jetzt</translation>
    </message>
    <message>
        <source>Lon&amp;gest run, last 30 days</source>
        <translation>Län&amp;gster Lauf, letzte 30 Tage</translation>
    </message>
    <message>
        <source>Eas&amp;y pace, {0}</source>
        <translation>&amp;Lockeres Tempo, {0}</translation>
    </message>
    <message>
        <source>&amp;Body mass</source>
        <translation>&amp;Körpergewicht</translation>
    </message>
    <message>
        <source>Carbs you ta&amp;ke running</source>
        <translation>K&amp;H beim Laufen</translation>
    </message>
    <message>
        <source>How much tra&amp;ining</source>
        <translation>Tra&amp;iningsumfang</translation>
    </message>
    <message>
        <source>Long &amp;run on</source>
        <translation>Langer Lauf a&amp;m</translation>
    </message>
    <message>
        <source>Minu&amp;tes free for running</source>
        <translation>Freie Minu&amp;ten zum Laufen</translation>
    </message>
    <message>
        <source>Minutes free on {0}</source>
        <translation>Freie Minuten am {0}</translation>
    </message>
    <message>
        <source>From 0 to {0} min; 0 is a day without a run</source>
        <translation>Von 0 bis {0} min; 0 ist ein Tag ohne Lauf</translation>
    </message>
</context>
<context>
    <name>Runway</name>
    <message>
        <source>Weeks missing for all that the race asks: {0}.</source>
        <translation>Wochen, die für alles fehlen, was das Rennen verlangt: {0}.</translation>
    </message>
    <message>
        <source>What can be reached is {0} of what this race asks: look for a race about as much shorter.</source>
        <translation>Erreichbar sind {0} von dem, was dieses Rennen verlangt: such ein Rennen, das etwa um so viel kürzer ist.</translation>
    </message>
    <message>
        <source>The longest run comes to {0}, so {1} of the race lie beyond it: plan to walk early and hold against the cutoffs.</source>
        <translation>Der längste Lauf kommt auf {0}, also liegen {1} des Rennens jenseits davon: plane, früh zu gehen, und halte dich an die Zeitlimits.</translation>
    </message>
    <message>
        <source>A target of {0} instead of {1} is more likely to hold, if the cutoffs allow it.</source>
        <translation>Eine Zielzeit von {0} statt {1} hält eher, wenn die Zeitlimits es erlauben.</translation>
    </message>
    <message>
        <source>Volume reaches {0} a week of the {1} asked, the longest run {2} of the {3} asked.</source>
        <translation>Der Umfang erreicht {0} je Woche von verlangten {1}, der längste Lauf {2} von verlangten {3}.</translation>
    </message>
    <message>
        <source>Volume reaches {0} a week of the {1} asked; the longest run gets there.</source>
        <translation>Der Umfang erreicht {0} je Woche von verlangten {1}; der längste Lauf kommt hin.</translation>
    </message>
    <message>
        <source>The longest run reaches {0} of the {1} asked; volume gets there.</source>
        <translation>Der längste Lauf erreicht {0} von verlangten {1}; der Umfang kommt hin.</translation>
    </message>
    <message>
        <source>The {0} a week and the longest run of {1} that the race asks are there already.</source>
        <translation>Die {0} je Woche und der längste Lauf von {1}, die das Rennen verlangt, sind schon da.</translation>
    </message>
    <message>
        <source>Volume decides: {0} weeks from {1} to {2} a week, cutbacks included; then the taper.</source>
        <translation>Der Umfang entscheidet: {0} Wochen von {1} auf {2} je Woche, Entlastungen eingerechnet; dann das Tapering.</translation>
    </message>
    <message>
        <source>The long run decides: {0} weeks from {1} to {2}, cutbacks included; then the taper.</source>
        <translation>Der lange Lauf entscheidet: {0} Wochen von {1} auf {2}, Entlastungen eingerechnet; dann das Tapering.</translation>
    </message>
</context>
<context>
    <name>SchematicView</name>
    <message>
        <source>Profile</source>
        <translation>Profil</translation>
    </message>
</context>
<context>
    <name>Session</name>
    <message>
        <source>To move the legs without tiring them after a hard day.</source>
        <translation>Die Beine bewegen, ohne sie nach einem harten Tag zu ermüden.</translation>
    </message>
    <message>
        <source>Most of the volume is easy: it builds endurance at little cost.</source>
        <translation>Der größte Teil des Umfangs ist locker: Das baut Ausdauer auf und kostet wenig.</translation>
    </message>
    <message>
        <source>Time on feet on the race&apos;s ground, and practice in eating and pacing.</source>
        <translation>Zeit auf den Beinen auf dem Untergrund des Rennens, und Übung in Essen und Tempo.</translation>
    </message>
    <message>
        <source>To run on tired legs without one very long run.</source>
        <translation>Auf müden Beinen laufen, ohne einen einzigen sehr langen Lauf.</translation>
    </message>
    <message>
        <source>The race in small: its kit, food, poles, ground and start hour. Change what fails here.</source>
        <translation>Das Rennen im Kleinen: mit seiner Ausrüstung, Verpflegung, Stöcken, Untergrund und Startzeit. Ändere, was hier nicht klappt.</translation>
    </message>
    <message>
        <source>Strength for the climbs, and practice in walking them.</source>
        <translation>Kraft für die Anstiege, und Übung darin, sie zu gehen.</translation>
    </message>
    <message>
        <source>Earlier descents harden the quads against those of the race.</source>
        <translation>Frühere Abstiege härten die Oberschenkel gegen die des Rennens.</translation>
    </message>
    <message>
        <source>Comfortably hard running raises the pace that can be held.</source>
        <translation>Angenehm hartes Laufen hebt das Tempo, das sich halten lässt.</translation>
    </message>
    <message>
        <source>Short hard pieces raise what heart and legs can do at most.</source>
        <translation>Kurze harte Stücke heben, was Herz und Beine höchstens können.</translation>
    </message>
    <message>
        <source>A shorter race to test pacing, food and kit among others.</source>
        <translation>Ein kürzeres Rennen, um Tempo, Essen und Ausrüstung unter anderen zu testen.</translation>
    </message>
    <message>
        <source>Strong legs run with less effort; keep it heavy, few times and well done.</source>
        <translation>Starke Beine laufen mit weniger Mühe; schwer, wenige Male und sauber.</translation>
    </message>
    <message>
        <source>Endurance without the impact of running.</source>
        <translation>Ausdauer ohne die Stöße des Laufens.</translation>
    </message>
    <message>
        <source>What all the rest is for.</source>
        <translation>Wofür alles andere da ist.</translation>
    </message>
    <message>
        <source>So easy that you could sing.</source>
        <translation>So locker, dass du singen könntest.</translation>
    </message>
    <message>
        <source>You can talk in whole sentences all the time; walk if not.</source>
        <translation>Du kannst die ganze Zeit in ganzen Sätzen reden; sonst geh.</translation>
    </message>
    <message>
        <source>You can say a sentence, but would rather not.</source>
        <translation>Du kannst einen Satz sagen, magst aber lieber nicht.</translation>
    </message>
    <message>
        <source>A few words at a time on the hard pieces.</source>
        <translation>Nur ein paar Wörter am Stück auf den harten Teilen.</translation>
    </message>
    <message>
        <source>Two or three repeats would still be left at the end of each set.</source>
        <translation>Am Ende jedes Satzes gingen noch zwei oder drei Wiederholungen.</translation>
    </message>
    <message>
        <source>You can talk in whole sentences all the time.</source>
        <translation>Du kannst die ganze Zeit in ganzen Sätzen reden.</translation>
    </message>
    <message>
        <source>It fits into 40 minutes as it is.</source>
        <translation>Passt so in 40 Minuten.</translation>
    </message>
    <message>
        <source>20 minutes, or a walk.</source>
        <translation>20 Minuten, oder ein Spaziergang.</translation>
    </message>
    <message>
        <source>40 minutes easy; nothing is made up for later.</source>
        <translation>40 Minuten locker; nichts wird später nachgeholt.</translation>
    </message>
    <message>
        <source>40 minutes on the race&apos;s ground, eating as planned; move the long run if you can.</source>
        <translation>40 Minuten auf dem Untergrund des Rennens, Essen wie geplant; verschieb den langen Lauf, wenn du kannst.</translation>
    </message>
    <message>
        <source>40 minutes easy on the tired legs.</source>
        <translation>40 Minuten locker auf den müden Beinen.</translation>
    </message>
    <message>
        <source>40 minutes with pack, shoes and the race&apos;s food, at its start hour.</source>
        <translation>40 Minuten mit Gepäck, Schuhen und Essen des Rennens, zu seiner Startzeit.</translation>
    </message>
    <message>
        <source>10 minutes easy, four climbs of three minutes, then home.</source>
        <translation>10 Minuten locker, vier Anstiege von drei Minuten, dann nach Hause.</translation>
    </message>
    <message>
        <source>10 minutes easy, then 20 minutes of descents, relaxed and quick of foot.</source>
        <translation>10 Minuten locker, dann 20 Minuten Abstiege, entspannt und mit schnellen Füßen.</translation>
    </message>
    <message>
        <source>10 minutes easy, 20 comfortably hard, 10 easy.</source>
        <translation>10 Minuten locker, 20 angenehm hart, 10 locker.</translation>
    </message>
    <message>
        <source>10 minutes easy, four times three minutes hard, then easy.</source>
        <translation>10 Minuten locker, viermal drei Minuten hart, dann locker.</translation>
    </message>
    <message>
        <source>Leave it out and run easy; there are other races.</source>
        <translation>Lass es aus und lauf locker; es gibt andere Rennen.</translation>
    </message>
    <message>
        <source>One set each of step-ups, slow step-downs, calf raises and a plank.</source>
        <translation>Je ein Satz Aufsteigen auf die Stufe, langsames Absteigen, Wadenheben und Unterarmstütz.</translation>
    </message>
    <message>
        <source>Leave it out.</source>
        <translation>Lass es aus.</translation>
    </message>
    <message>
        <source>The race is run whole or stopped in good time.</source>
        <translation>Das Rennen wird ganz gelaufen oder rechtzeitig beendet.</translation>
    </message>
    <message>
        <source>End it on the level, as the race does.</source>
        <translation>Beende ihn in der Ebene, wie das Rennen endet.</translation>
    </message>
    <message>
        <source>End it on rolling ground, as the race does.</source>
        <translation>Beende ihn in welligem Gelände, wie das Rennen endet.</translation>
    </message>
    <message>
        <source>End it with a climb, as the race does.</source>
        <translation>Beende ihn mit einem Anstieg, wie das Rennen endet.</translation>
    </message>
    <message>
        <source>End it with a descent, as the race does.</source>
        <translation>Beende ihn mit einem Abstieg, wie das Rennen endet.</translation>
    </message>
    <message>
        <source>End it up and down, as the race does.</source>
        <translation>Beende ihn im Auf und Ab, wie das Rennen endet.</translation>
    </message>
    <message>
        <source>End it on stairs, as the race does.</source>
        <translation>Beende ihn auf Treppen, wie das Rennen endet.</translation>
    </message>
    <message>
        <source>Eat {0} on the way, {1}, from what the race plan holds.</source>
        <translation>Iss unterwegs {0}, {1}, von dem, was der Rennplan enthält.</translation>
    </message>
    <message>
        <source>Ten minutes for the head: a plan of the form if this happens, I do that; try it here.</source>
        <translation>Zehn Minuten für den Kopf: ein Wenn-dann-Satz, wenn das passiert, tue ich das; probier ihn hier.</translation>
    </message>
    <message>
        <source>Ten minutes for the head: picture one hard stretch of the race at its own pace, and how you get through it.</source>
        <translation>Zehn Minuten für den Kopf: stell dir ein hartes Stück des Rennens in seinem eigenen Tempo vor, und wie du durchkommst.</translation>
    </message>
    <message>
        <source>Ten minutes for the head: goals for a good, a fair and a hard day, cutoffs and kit list.</source>
        <translation>Zehn Minuten für den Kopf: Ziele für einen guten, einen mittleren und einen harten Tag, Zeitlimits und Ausrüstungsliste.</translation>
    </message>
    <message>
        <source>Take a spare lamp, tell someone where you run, be seen on roads; no driving tired.</source>
        <translation>Nimm eine Ersatzlampe mit, sag jemandem, wo du läufst, sei auf Straßen sichtbar; fahr nicht müde Auto.</translation>
    </message>
    <message>
        <source>In the heat: easy, never alone, drink to thirst. Stop if dizzy, confused or shivering. Not with fever.</source>
        <translation>Bei Hitze: locker, nie allein, trink nach Durst. Hör auf, wenn du schwindlig oder verwirrt bist oder fröstelst. Nicht mit Fieber.</translation>
    </message>
    <message>
        <source>Before breakfast: easy only, 25 g of sugar in the pocket, eat within the hour after. Not alone in remote ground.</source>
        <translation>Vor dem Frühstück: nur locker, 25 g Zucker in der Tasche, iss in der Stunde danach. Nicht allein in abgelegenem Gelände.</translation>
    </message>
    <message>
        <source>Expect soreness for one to three days. Dark urine, severe swelling or weakness: a doctor the same day.</source>
        <translation>Rechne mit ein bis drei Tagen Muskelkater. Dunkler Urin, starke Schwellung oder Schwäche: noch am selben Tag zum Arzt.</translation>
    </message>
    <message>
        <source>{0} of {1}</source>
        <translation>{0} von {1}</translation>
    </message>
</context>
<context>
    <name>SessionEditor</name>
    <message>
        <source>{0}, {1}</source>
        <translation>{0}, {1}</translation>
    </message>
    <message>
        <source>Not under 18, not when pregnant, ill or injured, with diabetes, fainting or an eating disorder now or before: ask a doctor first.</source>
        <translation>Nicht unter 18, nicht in der Schwangerschaft, krank oder verletzt, nicht mit Diabetes, Ohnmachten oder einer Essstörung jetzt oder früher: Frag zuerst einen Arzt.</translation>
    </message>
    <message>
        <source>Too hard or too long to run fasted: easy, at most 90 min. {0}</source>
        <translation>Zu hart oder zu lang für nüchtern: locker, höchstens 90 min. {0}</translation>
    </message>
    <message>
        <source>Fasted: easy and short only, 60 min in the first month, later 90; carry 25 g of sugar. {0}</source>
        <translation>Nüchtern: nur locker und kurz, 60 min im ersten Monat, später 90; nimm 25 g Zucker mit. {0}</translation>
    </message>
</context>
<context>
    <name>Settings</name>
    <message>
        <source>As the system has it</source>
        <translation>Wie im System</translation>
    </message>
    <message>
        <source>What the program speaks; from its next start on</source>
        <translation>Was das Programm spricht; ab dem nächsten Start</translation>
    </message>
    <message>
        <source>Language</source>
        <translation>Sprache</translation>
    </message>
    <message>
        <source>How numbers and days are written, and when weeks begin</source>
        <translation>Wie Zahlen und Tage geschrieben werden und wann Wochen beginnen</translation>
    </message>
    <message>
        <source>Numbers and days</source>
        <translation>Zahlen und Tage</translation>
    </message>
    <message>
        <source>For distances, heights and paces everywhere</source>
        <translation>Für Strecken, Höhen und Tempo überall</translation>
    </message>
    <message>
        <source>Units</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>Kilometres and metres</source>
        <translation>Kilometer und Meter</translation>
    </message>
    <message>
        <source>Miles and feet</source>
        <translation>Meilen und Fuß</translation>
    </message>
    <message>
        <source>Light or dark paper</source>
        <translation>Helles oder dunkles Papier</translation>
    </message>
    <message>
        <source>Colours</source>
        <translation>Farben</translation>
    </message>
    <message>
        <source>Light</source>
        <translation>Licht</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Dunkel</translation>
    </message>
    <message>
        <source>Of all text in the window; cards have their own</source>
        <translation>Aller Schrift im Fenster; Karten haben ihre eigene</translation>
    </message>
    <message>
        <source>Size of text</source>
        <translation>Schriftgröße</translation>
    </message>
    <message>
        <source>A moved session settles, changed figures are marked for a moment; not where your system asks to keep still</source>
        <translation>Eine verschobene Einheit setzt sich, geänderte Zahlen sind kurz markiert; nicht, wenn dein System um Ruhe bittet</translation>
    </message>
    <message>
        <source>Motion</source>
        <translation>Bewegung</translation>
    </message>
    <message>
        <source>What race day runs along</source>
        <translation>Woran der Renntag entlangläuft</translation>
    </message>
    <message>
        <source>Axis of race day</source>
        <translation>Achse des Renntags</translation>
    </message>
    <message>
        <source>Distance</source>
        <translation>Distanz</translation>
    </message>
    <message>
        <source>Clock</source>
        <translation>Uhr</translation>
    </message>
    <message>
        <source>Race day shows the course from above</source>
        <translation>Der Renntag zeigt die Strecke von oben</translation>
    </message>
    <message>
        <source>Course from above</source>
        <translation>Strecke von oben</translation>
    </message>
    <message>
        <source>Each card on a page of its own, or several on a sheet</source>
        <translation>Jede Karte auf eigener Seite, oder mehrere auf einem Blatt</translation>
    </message>
    <message>
        <source>Paper for cards</source>
        <translation>Papier für Karten</translation>
    </message>
    <message>
        <source>As large as the card</source>
        <translation>So groß wie die Karte</translation>
    </message>
    <message>
        <source>Cards have a back, where they are longer than a page</source>
        <translation>Karten haben eine Rückseite, wenn sie länger als eine Seite sind</translation>
    </message>
    <message>
        <source>Cards on both sides</source>
        <translation>Karten beidseitig</translation>
    </message>
</context>
<context>
    <name>SettingsForm</name>
    <message>
        <source>Settings</source>
        <translation>Einstellungen</translation>
    </message>
    <message>
        <source>Search the settings</source>
        <translation>Einstellungen durchsuchen</translation>
    </message>
    <message>
        <source>Kept in {0}</source>
        <translation>Liegt in {0}</translation>
    </message>
    <message>
        <source>&amp;Usual values</source>
        <translation>&amp;Übliche Werte</translation>
    </message>
    <message>
        <source>&amp;Take back</source>
        <translation>&amp;Zurücknehmen</translation>
    </message>
    <message>
        <source>E&amp;xport…</source>
        <translation>&amp;Ausgeben…</translation>
    </message>
    <message>
        <source>&amp;Import…</source>
        <translation>&amp;Einlesen…</translation>
    </message>
    <message>
        <source>No setting has this in its name or text.</source>
        <translation>Keine Einstellung hat das im Namen oder Text.</translation>
    </message>
    <message>
        <source>All settings are as a new user has them.</source>
        <translation>Alle Einstellungen sind wie bei einem neuen Nutzer.</translation>
    </message>
    <message>
        <source>All settings are as they were.</source>
        <translation>Alle Einstellungen sind wie zuvor.</translation>
    </message>
    <message>
        <source>Export settings</source>
        <translation>Einstellungen exportieren</translation>
    </message>
    <message>
        <source>Import settings</source>
        <translation>Einstellungen importieren</translation>
    </message>
    <message>
        <source>Settings (*.json)</source>
        <translation>Einstellungen (*.json)</translation>
    </message>
    <message>
        <source>Written: {0}</source>
        <translation>Geschrieben: {0}</translation>
    </message>
    <message>
        <source>Taken from {0}.</source>
        <translation>Aus {0} übernommen.</translation>
    </message>
    <message>
        <source>Passed over, unknown here: {0}</source>
        <translation>Übergangen, hier unbekannt: {0}</translation>
    </message>
</context>
<context>
    <name>ShapeForm</name>
    <message>
        <source>Pace of target and runner</source>
        <translation>Tempo von Zielzeit und Läufer</translation>
    </message>
    <message>
        <source>&amp;Even effort from start to finish</source>
        <translation>&amp;Gleiche Anstrengung von Start bis Ziel</translation>
    </message>
    <message>
        <source>&amp;Half of the forecast&apos;s fade, the usual</source>
        <translation>&amp;Halbes Nachlassen der Prognose, das Übliche</translation>
    </message>
    <message>
        <source>Own amount of &amp;fade</source>
        <translation>&amp;Nachlassen selbst festlegen</translation>
    </message>
    <message>
        <source>Part of the forecast&apos;s fade kept</source>
        <translation>Behaltener Teil des Nachlassens der Prognose</translation>
    </message>
    <message>
        <source>Hold the fi&amp;nish when a section is changed</source>
        <translation>&amp;Ziel halten, wenn ein Abschnitt geändert wird</translation>
    </message>
    <message>
        <source>The target keeps</source>
        <translation>Die Zielzeit behält</translation>
    </message>
    <message>
        <source>&amp;Part of the forecast&apos;s fade</source>
        <translation>&amp;Teil des Nachlassens der Prognose</translation>
    </message>
    <message>
        <source>Cost of &amp;uphill, of the usual</source>
        <translation>A&amp;ufwand bergauf, vom üblichen</translation>
    </message>
    <message>
        <source>Tired walking, of a fresh hiker&apos;s &amp;speed</source>
        <translation>Müde&amp;s Gehen, vom Tempo eines frischen Wanderers</translation>
    </message>
    <message>
        <source>100 % is the forecast itself: start fast, slow down. The night and the ground slow every shape.</source>
        <translation>100 % ist die Prognose selbst: schnell los, dann langsamer. Nacht und Untergrund bremsen jede Form.</translation>
    </message>
    <message>
        <source>How you run</source>
        <translation>Wie du läufst</translation>
    </message>
    <message>
        <source>Fa&amp;de over the hours</source>
        <translation>Nach&amp;lassen über die Stunden</translation>
    </message>
    <message>
        <source>&amp;Downhill, of the usual speed</source>
        <translation>Berga&amp;b, vom üblichen Tempo</translation>
    </message>
    <message>
        <source>Fade: 0 never, 8 front runners, 10 the usual, 20 strong. Your own recordings tell better than a guess.</source>
        <translation>Nachlassen: 0 nie, 8 vorderes Feld, 10 üblich, 20 stark. Deine eigenen Aufzeichnungen sagen mehr als Raten.</translation>
    </message>
    <message>
        <source>Se&amp;t</source>
        <translation>&amp;Setzen</translation>
    </message>
</context>
<context>
    <name>Shelf</name>
    <message>
        <source>Kinds to put in</source>
        <translation>Arten zum Einsetzen</translation>
    </message>
    <message>
        <source>Drag into the grid, or Enter</source>
        <translation>Ins Raster ziehen oder Enter</translation>
    </message>
    <message>
        <source>{0}. Enter puts it on the day of the cursor, Esc closes.</source>
        <translation>{0}. Enter setzt es auf den Tag des Cursors, Esc schließt.</translation>
    </message>
</context>
<context>
    <name>Snap</name>
    <message>
        <source>its old place</source>
        <extracomment>How near a named place, and how near a round figure, takes hold. A press that moves less than that is a click: nothing must snap away under it. What is put down where nothing takes hold, and freely, is still rounded to. Whether something that could snap is in the hand. Whether it is held free of everything.</extracomment>
        <translation>Ausgangsort</translation>
    </message>
    <message>
        <source>its old time</source>
        <translation>Ausgangszeit</translation>
    </message>
    <message>
        <source>its old length</source>
        <translation>Ausgangsdauer</translation>
    </message>
    <message>
        <source>leaving {0}</source>
        <translation>ab {0}</translation>
    </message>
    <message>
        <source>foot of climb {0}</source>
        <translation>Fuß des Anstiegs {0}</translation>
    </message>
    <message>
        <source>top of climb {0}</source>
        <translation>Ende des Anstiegs {0}</translation>
    </message>
    <message>
        <source>top of descent {0}</source>
        <translation>Beginn des Abstiegs {0}</translation>
    </message>
    <message>
        <source>foot of descent {0}</source>
        <translation>Fuß des Abstiegs {0}</translation>
    </message>
</context>
<context>
    <name>StandIn</name>
    <message>
        <source>Nothing here goes down: {0} of the {1} of drop cannot be matched.</source>
        <extracomment>Gradient a class stands for where nothing of it is there.</extracomment>
        <translation>Hier geht nichts bergab: {0} der {1} Abstieg lassen sich nicht nachbilden.</translation>
    </message>
    <message>
        <source>{0} of the {1} of drop is left out.</source>
        <translation>{0} der {1} Abstieg fallen weg.</translation>
    </message>
    <message>
        <source>Instead, {0} sets of {1} slow step-downs a leg from a step, three seconds each: some of what descents do to the quads. Begin with two sets.</source>
        <translation>Stattdessen {0} Sätze mit {1} langsamen Abwärtsschritten je Bein von einer Stufe, je drei Sekunden: ein Teil dessen, was Abstiege mit den Oberschenkeln machen. Beginne mit zwei Sätzen.</translation>
    </message>
    <message>
        <source>{0} of the {1} of climb is left out.</source>
        <translation>{0} der {1} Aufstieg fallen weg.</translation>
    </message>
    <message>
        <source>The race climbs at {0}, here it is {1} at most: climb longer, or with steps of two.</source>
        <translation>Das Rennen steigt mit {0}, hier sind es höchstens {1}: steige länger oder nimm zwei Stufen auf einmal.</translation>
    </message>
</context>
<context>
    <name>StationFoodsForm</name>
    <message>
        <source>Food at stations</source>
        <translation>Essen an Stationen</translation>
    </message>
    <message>
        <source>Aid stations</source>
        <translation>Verpflegungsstellen</translation>
    </message>
    <message>
        <source>Foods on its table</source>
        <translation>Was auf dem Tisch steht</translation>
    </message>
    <message>
        <source>The same at e&amp;very station</source>
        <translation>An &amp;jeder Station dasselbe</translation>
    </message>
    <message>
        <source>What the organiser offers, to be eaten there or taken along.</source>
        <translation>Was der Veranstalter bietet, zum Essen dort oder zum Mitnehmen.</translation>
    </message>
    <message>
        <source>&amp;Set</source>
        <translation>&amp;Setzen</translation>
    </message>
</context>
<context>
    <name>StationForm</name>
    <message>
        <source>Aid station</source>
        <translation>Verpflegungsstelle</translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation>N&amp;otiz</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>C&amp;hange</source>
        <translation>Ä&amp;ndern</translation>
    </message>
    <message>
        <source>&amp;Pinned: the handbook says so, the ground stays</source>
        <translation>&amp;Fest: so steht es in der Ausschreibung, der Ort bleibt</translation>
    </message>
    <message>
        <source>Sat 20:30, 14 h 30, or none</source>
        <translation>Sa 20:30, 14 h 30 oder keins</translation>
    </message>
    <message>
        <source>A pace&amp;r may come along from here</source>
        <translation>Ab hier darf ein &amp;Begleitläufer mit</translation>
    </message>
    <message>
        <source>Place, cutoff and stop</source>
        <translation>Ort, Zeitlimit und Halt</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>&amp;At</source>
        <translation>&amp;Bei</translation>
    </message>
    <message>
        <source>C&amp;utoff</source>
        <translation>&amp;Zeitlimit</translation>
    </message>
    <message>
        <source>The cutoff &amp;is</source>
        <translation>Das Zeitlimit &amp;gilt für</translation>
    </message>
    <message>
        <source>S&amp;top</source>
        <translation>&amp;Halt</translation>
    </message>
    <message>
        <source>&amp;Stop to</source>
        <translation>Halt &amp;für</translation>
    </message>
    <message>
        <source>What is there</source>
        <translation>Was es dort gibt</translation>
    </message>
    <message>
        <source>Crew, kit, and if I stop here</source>
        <translation>Betreuung, Ausrüstung und falls ich hier aufhöre</translation>
    </message>
    <message>
        <source>Changed or taken up here</source>
        <translation>Hier gewechselt oder aufgenommen</translation>
    </message>
    <message>
        <source>How the cre&amp;w gets here</source>
        <translation>&amp;Wie die Betreuung hierher kommt</translation>
    </message>
    <message>
        <source>If I stop here</source>
        <translation>Falls ich hier aufhöre</translation>
    </message>
    <message>
        <source>Wa&amp;y out</source>
        <translation>We&amp;g hinaus</translation>
    </message>
    <message>
        <source>Who &amp;fetches me</source>
        <translation>Wer mich a&amp;bholt</translation>
    </message>
    <message>
        <source>How &amp;long it takes</source>
        <translation>Wie &amp;lange es dauert</translation>
    </message>
    <message>
        <source>Nu&amp;mber to call</source>
        <translation>Nu&amp;mmer zum Anrufen</translation>
    </message>
    <message>
        <source>Tell your crew when to wake you, keep warm, and do not drive afterwards without having slept. Lying down and getting going again take time too.</source>
        <translation>Sag deiner Betreuung, wann sie dich wecken soll, halte dich warm und fahre danach nicht ohne Schlaf. Hinlegen und wieder in Gang kommen kosten auch Zeit.</translation>
    </message>
</context>
<context>
    <name>StationHead</name>
    <message>
        <source>Aid stations</source>
        <extracomment>The leg that ends at this key is to be folded, or unfolded.</extracomment>
        <translation>Verpflegungsstellen</translation>
    </message>
    <message>
        <source>RACE DAY</source>
        <translation>RENNTAG</translation>
    </message>
    <message>
        <source>legs, stops</source>
        <translation>Teilstücke, Halte</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>by {0}</source>
        <translation>bis {0}</translation>
    </message>
</context>
<context>
    <name>Store</name>
    <message>
        <source>There is no room to write {0}; what was there before is untouched. Free some space or choose another place.</source>
        <translation>Für {0} ist kein Platz; was vorher da war, ist unberührt. Schaffe Platz oder wähle einen anderen Ort.</translation>
    </message>
    <message>
        <source>You are not allowed to write {0} there. Choose another place or name.</source>
        <translation>Du darfst {0} dort nicht schreiben. Wähle einen anderen Ort oder Namen.</translation>
    </message>
    <message>
        <source>The folder for {0} does not exist. Choose another place.</source>
        <translation>Den Ordner für {0} gibt es nicht. Wähle einen anderen Ort.</translation>
    </message>
    <message>
        <source>{0} could not be written ({1}); what was there before is untouched. Choose another place.</source>
        <translation>{0} ließ sich nicht schreiben ({1}); was vorher da war, ist unberührt. Wähle einen anderen Ort.</translation>
    </message>
    <message>
        <source>A part of this project is too large to keep.</source>
        <translation>Ein Teil dieses Projekts ist zu groß zum Speichern.</translation>
    </message>
    <message>
        <source>{0} is too large for a project, so it was left alone.</source>
        <translation>{0} ist zu groß für ein Projekt und blieb daher unberührt.</translation>
    </message>
    <message>
        <source>There is no file {0} any more. Was it moved or renamed?</source>
        <translation>Die Datei {0} gibt es nicht mehr. Wurde sie verschoben oder umbenannt?</translation>
    </message>
    <message>
        <source>A course has between 2 and {0} points. Thin the track and open it again.</source>
        <translation>Eine Strecke hat zwischen 2 und {0} Punkten. Dünne den Track aus und öffne ihn noch einmal.</translation>
    </message>
    <message>
        <source>{0} has a version this program never wrote.</source>
        <translation>{0} hat eine Version, die dieses Programm nie geschrieben hat.</translation>
    </message>
    <message>
        <source>There is a file {0} already. Choose another name.</source>
        <translation>Eine Datei {0} gibt es schon. Wähle einen anderen Namen.</translation>
    </message>
    <message>
        <source>{0} has no project in it. Write it anew with --dump and try again.</source>
        <translation>In {0} ist kein Projekt. Schreibe es mit --dump neu und versuche es noch einmal.</translation>
    </message>
    <message>
        <source>Line {0} of {1} is not as --dump writes it. Mend it or dump once more.</source>
        <translation>Zeile {0} von {1} ist nicht so, wie --dump sie schreibt. Bessere sie aus oder nutze --dump noch einmal.</translation>
    </message>
    <message>
        <source>{0} was made by a newer Ultraplanner. Update this one to open it.</source>
        <translation>{0} stammt von einem neueren Ultraplanner. Aktualisiere diesen, um es zu öffnen.</translation>
    </message>
    <message>
        <source>{0} is of an older version and may not be changed here. Look at it, or copy it to a folder you may write to.</source>
        <translation>{0} ist von einer älteren Version und darf hier nicht geändert werden. Sieh es dir an oder kopiere es in einen Ordner, in den du schreiben darfst.</translation>
    </message>
    <message>
        <source>There are {0} named states already; that is the most.</source>
        <translation>Es gibt schon {0} benannte Stände; mehr geht nicht.</translation>
    </message>
    <message>
        <source>That earlier state is no longer in the file.</source>
        <translation>Dieser frühere Stand ist nicht mehr in der Datei.</translation>
    </message>
    <message>
        <source>There is already a file {0}. Choose another name.</source>
        <translation>Es gibt schon eine Datei {0}. Wähle einen anderen Namen.</translation>
    </message>
    <message>
        <source>notes and settings of the plan</source>
        <translation>Notizen und Einstellungen des Plans</translation>
    </message>
    <message>
        <source>start, goal and kit of the race</source>
        <translation>Start, Ziel und Ausrüstung des Rennens</translation>
    </message>
    <message>
        <source>the runner</source>
        <translation>der Läufer</translation>
    </message>
    <message>
        <source>weeks of the block</source>
        <translation>Wochen des Blocks</translation>
    </message>
    <message>
        <source>sessions</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>fuel rates</source>
        <translation>Verpflegung je Stunde</translation>
    </message>
    <message>
        <source>foods</source>
        <translation>Lebensmittel</translation>
    </message>
    <message>
        <source>fuel items</source>
        <translation>Verpflegungsposten</translation>
    </message>
    <message>
        <source>cards</source>
        <translation>Karten</translation>
    </message>
    <message>
        <source>races to pick from</source>
        <translation>Rennen zur Auswahl</translation>
    </message>
    <message>
        <source>recordings</source>
        <translation>Aufzeichnungen</translation>
    </message>
    <message>
        <source>files of recordings</source>
        <translation>Dateien der Aufzeichnungen</translation>
    </message>
    <message>
        <source>aid stations and sections</source>
        <translation>Verpflegungsstellen und Abschnitte</translation>
    </message>
    <message>
        <source>surfaces</source>
        <translation>Untergründe</translation>
    </message>
    <message>
        <source>the line of the course (a level one stands in)</source>
        <translation>die Linie der Strecke (eine flache steht dafür)</translation>
    </message>
    <message>
        <source>the list of contents, and with it the latest changes</source>
        <translation>das Inhaltsverzeichnis und mit ihm die letzten Änderungen</translation>
    </message>
    <message>
        <source>Nothing in {0} can be read any more. Open an earlier copy of it.</source>
        <translation>In {0} lässt sich nichts mehr lesen. Öffne eine frühere Kopie.</translation>
    </message>
    <message>
        <source>Nothing that is left fits together. Open an earlier copy.</source>
        <translation>Nichts vom Rest passt zusammen. Öffne eine frühere Kopie.</translation>
    </message>
    <message>
        <source>The part {0} of this project is not as it should be. Open an earlier copy of the file.</source>
        <translation>Der Teil {0} dieses Projekts ist nicht, wie er sein soll. Öffne eine frühere Kopie der Datei.</translation>
    </message>
    <message>
        <source>The part {0} cannot be kept: too long or no sensible figure. Undo the last change.</source>
        <translation>Der Teil {0} lässt sich nicht speichern: zu lang oder keine sinnvolle Zahl. Nimm die letzte Änderung zurück.</translation>
    </message>
    <message>
        <source>{0} was not closed properly. Copy it, and {0}-journal with it, to a folder you may write to, and open it there.</source>
        <translation>{0} wurde nicht richtig geschlossen. Kopiere es und dazu {0}-journal in einen Ordner, in den du schreiben darfst, und öffne es dort.</translation>
    </message>
    <message>
        <source>{0} is not an Ultraplanner project. Choose a file that ends in .ultraplan.</source>
        <translation>{0} ist kein Ultraplanner-Projekt. Wähle eine Datei, die auf .ultraplan endet.</translation>
    </message>
    <message>
        <source>{0} is damaged and was left as it is. Open an earlier copy of it.</source>
        <translation>{0} ist beschädigt und blieb, wie es ist. Öffne eine frühere Kopie.</translation>
    </message>
    <message>
        <source>{0} is already open in another window. Go on there, or close it there first.</source>
        <translation>{0} ist schon in einem anderen Fenster offen. Mach dort weiter oder schließe es dort zuerst.</translation>
    </message>
    <message>
        <source>{0} is already open in another window: {1} on {2} since {3}. Go on there or close it.</source>
        <translation>{0} ist schon in einem anderen Fenster offen: {1} auf {2} seit {3}. Mach dort weiter oder schließe es.</translation>
    </message>
    <message>
        <source>{0} is read-only, so changes are not kept. Save a copy in another folder.</source>
        <translation>{0} ist schreibgeschützt, Änderungen bleiben nicht erhalten. Speichere eine Kopie in einem anderen Ordner.</translation>
    </message>
    <message>
        <source>{0} was moved or removed while open. Move it back, or save a copy.</source>
        <translation>{0} wurde verschoben oder entfernt, während es offen war. Verschiebe es zurück oder speichere eine Kopie.</translation>
    </message>
    <message>
        <source>The disk is full: the last change of {0} is not kept. Make room on the disk.</source>
        <translation>Der Datenträger ist voll: die letzte Änderung von {0} ist nicht gespeichert. Schaffe Platz.</translation>
    </message>
    <message>
        <source>{0} could not be written: the disk is full or away. Save a copy elsewhere.</source>
        <translation>{0} ließ sich nicht schreiben: der Datenträger ist voll oder weg. Speichere eine Kopie anderswo.</translation>
    </message>
    <message>
        <source>standard input</source>
        <translation>der Standardeingabe</translation>
    </message>
    <message>
        <source>{0} could not be read. Check that you may open it.</source>
        <translation>{0} ließ sich nicht lesen. Prüfe, ob du es öffnen darfst.</translation>
    </message>
    <message>
        <source>There is no project (.ultraplan) in {0}.</source>
        <translation>In {0} ist kein Projekt (.ultraplan).</translation>
    </message>
    <message>
        <source>{0} is no folder to write into. Name another one.</source>
        <translation>{0} ist kein Ordner zum Hineinschreiben. Nenne einen anderen.</translation>
    </message>
    <message>
        <source>Name a project file (.ultraplan), or --demo.</source>
        <translation>Nenne eine Projektdatei (.ultraplan) oder --demo.</translation>
    </message>
    <message>
        <source>{0} holds no settings. Choose a file that Export in the settings has written.</source>
        <translation>{0} enthält keine Einstellungen. Wähle eine Datei, die Exportieren in den Einstellungen geschrieben hat.</translation>
    </message>
    <message>
        <source>{0} is no template of a block. Choose a file that ends in .ultrablock.</source>
        <translation>{0} ist keine Blockvorlage. Wähle eine Datei, die auf .ultrablock endet.</translation>
    </message>
</context>
<context>
    <name>SurfaceLane</name>
    <message>
        <source>Unknown. Drag here to paint {0}; the menu has other surfaces.</source>
        <translation>Unbekannt. Ziehe hier, um {0} zu malen; das Menü hat andere Untergründe.</translation>
    </message>
    <message>
        <source>Unknown. Drag here to paint.</source>
        <translation>Unbekannt. Ziehe hier, um zu malen.</translation>
    </message>
    <message>
        <source>Unknown</source>
        <translation>Unbekannt</translation>
    </message>
    <message>
        <source>{0}. Drag to paint {1}; the menu has other surfaces.</source>
        <translation>{0}. Ziehe, um {1} zu malen; das Menü hat andere Untergründe.</translation>
    </message>
    <message>
        <source>Paint with</source>
        <translation>Malen mit</translation>
    </message>
    <message>
        <source>This section is all</source>
        <translation>Dieser Abschnitt ist ganz</translation>
    </message>
</context>
<context>
    <name>SweatForm</name>
    <message>
        <source>Sweat test</source>
        <translation>Schweißtest</translation>
    </message>
    <message>
        <source> kg</source>
        <translation> kg</translation>
    </message>
    <message>
        <source> L</source>
        <translation> L</translation>
    </message>
    <message>
        <source> h</source>
        <translation> h</translation>
    </message>
    <message>
        <source>&amp;Plan fluid by it</source>
        <translation>Flüssigkeit danach &amp;planen</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>&amp;Tag</translation>
    </message>
    <message>
        <source>Weight &amp;before, undressed and dry</source>
        <translation>Gewicht &amp;vorher, ausgezogen und trocken</translation>
    </message>
    <message>
        <source>Weight &amp;after</source>
        <translation>Gewicht &amp;nachher</translation>
    </message>
    <message>
        <source>D&amp;runk</source>
        <translation>&amp;Getrunken</translation>
    </message>
    <message>
        <source>Pass&amp;ed</source>
        <translation>&amp;Urin</translation>
    </message>
    <message>
        <source>It &amp;took</source>
        <translation>&amp;Dauer</translation>
    </message>
    <message>
        <source>&amp;Keep it</source>
        <translation>&amp;Behalten</translation>
    </message>
    <message>
        <source>Check the figures: that is no sweat at all.</source>
        <translation>Prüfe die Zahlen: danach hast du gar nicht geschwitzt.</translation>
    </message>
    <message>
        <source>You sweat about {0} an hour; {1} an hour at hand is enough.</source>
        <translation>Du schwitzt etwa {0} je Stunde; {1} je Stunde dabei genügen.</translation>
    </message>
</context>
<context>
    <name>TableCourse</name>
    <message>
        <source>Cannot open the course table</source>
        <translation>Streckentabelle lässt sich nicht öffnen</translation>
    </message>
</context>
<context>
    <name>TableList</name>
    <message>
        <source>Tables</source>
        <extracomment>Another table is wanted: its number.</extracomment>
        <translation>Tabellen</translation>
    </message>
</context>
<context>
    <name>TablePage</name>
    <message>
        <source>Filter {0}</source>
        <translation>{0} filtern</translation>
    </message>
    <message>
        <source>No row holds these words. Esc shows all.</source>
        <translation>Keine Zeile enthält diese Wörter. Esc zeigt alle.</translation>
    </message>
    <message>
        <source>Add</source>
        <translation>Neu</translation>
    </message>
    <message>
        <source>Remove what the selected rows show (Delete)</source>
        <translation>Entfernen, was die gewählten Zeilen zeigen (Entf)</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
</context>
<context>
    <name>TableView</name>
    <message>
        <source>Copy</source>
        <extracomment>What the help says of each column.</extracomment>
        <translation>Kopieren</translation>
    </message>
    <message>
        <source>Paste…</source>
        <translation>Einfügen…</translation>
    </message>
    <message>
        <source>Sort by {0}, rising</source>
        <translation>Nach {0} sortieren, aufsteigend</translation>
    </message>
    <message>
        <source>Sort by {0}, falling</source>
        <translation>Nach {0} sortieren, absteigend</translation>
    </message>
    <message>
        <source>Do not sort</source>
        <translation>Nicht sortieren</translation>
    </message>
</context>
<context>
    <name>Tables</name>
    <message>
        <source>yes</source>
        <translation>ja</translation>
    </message>
    <message>
        <source>no</source>
        <translation>nein</translation>
    </message>
    <message>
        <source>There is no text to paste. Copy cells first.</source>
        <extracomment>Units a pasted column may be in whatever the table shows: cells read them behind a figure.</extracomment>
        <translation>Es gibt keinen Text zum Einfügen. Kopiere zuerst Zellen.</translation>
    </message>
    <message>
        <source>That is too much for this table: at most {0} lines of {1} cells.</source>
        <translation>Das ist zu viel für diese Tabelle: höchstens {0} Zeilen mit {1} Zellen.</translation>
    </message>
    <message>
        <source>This is a formula. Copy what it comes to instead.</source>
        <translation>Das ist eine Formel. Kopiere stattdessen ihr Ergebnis.</translation>
    </message>
    <message>
        <source>This is longer than a cell can be, {0} characters.</source>
        <translation>Das ist länger, als eine Zelle sein kann, {0} Zeichen.</translation>
    </message>
    <message>
        <source>This holds signs that are not text.</source>
        <translation>Darin sind Zeichen, die kein Text sind.</translation>
    </message>
    <message>
        <source>The clipboard holds {0} characters, a table takes {1}. Copy fewer rows.</source>
        <translation>Die Zwischenablage enthält {0} Zeichen, eine Tabelle fasst {1}. Kopiere weniger Zeilen.</translation>
    </message>
    <message>
        <source>The clipboard holds something that is not text. Copy the cells again.</source>
        <translation>Die Zwischenablage enthält etwas, das kein Text ist. Kopiere die Zellen noch einmal.</translation>
    </message>
    <message>
        <source>Place</source>
        <extracomment>A cell to be filled is empty; a dash would say that there is none.</extracomment>
        <translation>Ort</translation>
    </message>
    <message>
        <source>An aid station, or any place with a cutoff.</source>
        <translation>Eine Verpflegungsstelle oder jeder Ort mit Zeitlimit.</translation>
    </message>
    <message>
        <source>Distance</source>
        <translation>Distanz</translation>
    </message>
    <message>
        <source>How far the place is from the start.</source>
        <translation>Wie weit der Ort vom Start entfernt ist.</translation>
    </message>
    <message>
        <source>Leg</source>
        <translation>Teilstück</translation>
    </message>
    <message>
        <source>How far it is from the place before; later places move along.</source>
        <translation>Wie weit es vom Ort davor ist; spätere Orte rücken mit.</translation>
    </message>
    <message>
        <source>Climb</source>
        <translation>Aufstieg</translation>
    </message>
    <message>
        <source>All that goes up on the leg that ends here.</source>
        <translation>Aller Aufstieg auf dem Teilstück, das hier endet.</translation>
    </message>
    <message>
        <source>Drop</source>
        <translation>Abstieg</translation>
    </message>
    <message>
        <source>All that goes down on the leg that ends here.</source>
        <translation>Aller Abstieg auf dem Teilstück, das hier endet.</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>Above the sea, where you know it. One is enough; none will do.</source>
        <translation>Höhe über dem Meer, wo du sie kennst. Eine genügt; keine geht auch.</translation>
    </message>
    <message>
        <source>Cutoff</source>
        <translation>Zeitlimit</translation>
    </message>
    <message>
        <source>Sat 20:30, or 20:30 for the next after the one before, or 14 h 30 of race time. At the start: when the race starts.</source>
        <translation>Sa 20:30, oder 20:30 für das nächste Mal nach dem Ort davor, oder 14 h 30 Rennzeit. Am Start: wann das Rennen beginnt.</translation>
    </message>
    <message>
        <source>Stop</source>
        <translation>Halt</translation>
    </message>
    <message>
        <source>min</source>
        <translation>min</translation>
    </message>
    <message>
        <source>How long you mean to stay.</source>
        <translation>Wie lange du bleiben willst.</translation>
    </message>
    <message>
        <source>What is there</source>
        <translation>Was es dort gibt</translation>
    </message>
    <message>
        <source>Water, food, drop bag, crew, medical; what else you write stays as a note.</source>
        <translation>Wasser, Essen, Dropbag, Betreuung, Sanitäter; was du sonst schreibst, bleibt als Notiz.</translation>
    </message>
    <message>
        <source>Type the distance of the place before first.</source>
        <translation>Gib zuerst die Distanz des Orts davor ein.</translation>
    </message>
    <message>
        <source>“{0}” is no cutoff. Type it as Sat 20:30, 20:30 or 14 h 30 of race time.</source>
        <translation>„{0}“ ist kein Zeitlimit. Schreibe Sa 20:30, 20:30 oder 14 h 30 Rennzeit.</translation>
    </message>
    <message>
        <source>After the race</source>
        <translation>Nach dem Rennen</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>After the finish</source>
        <translation>Nach dem Ziel</translation>
    </message>
    <message>
        <source>days</source>
        <translation>Tage</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>Counted from the planned finish. Healing has no calendar: pain goes first.</source>
        <translation>Gezählt ab dem geplanten Ziel. Heilung hat keinen Kalender: Schmerz geht vor.</translation>
    </message>
    <message>
        <source>Start</source>
        <translation>Start</translation>
    </message>
    <message>
        <source>on you</source>
        <translation>am Körper</translation>
    </message>
    <message>
        <source>drop bag</source>
        <translation>Dropbag</translation>
    </message>
    <message>
        <source>crew</source>
        <translation>Betreuung</translation>
    </message>
    <message>
        <source>table</source>
        <translation>Tisch</translation>
    </message>
    <message>
        <source>tap</source>
        <translation>Wasserhahn</translation>
    </message>
    <message>
        <source>shoes</source>
        <translation>Schuhe</translation>
    </message>
    <message>
        <source>socks</source>
        <translation>Socken</translation>
    </message>
    <message>
        <source>top</source>
        <translation>Oberteil</translation>
    </message>
    <message>
        <source>lamp</source>
        <translation>Lampe</translation>
    </message>
    <message>
        <source>poles</source>
        <translation>Stöcke</translation>
    </message>
    <message>
        <source>Nothing placed yet. Place fuel by the clock, or fill to target, in the Fuel menu.</source>
        <translation>Noch nichts geplant. Verteile Verpflegung nach der Uhr oder fülle bis zur Vorgabe auf, im Menü Verpflegung.</translation>
    </message>
    <message>
        <source>{0} days</source>
        <translation>{0} Tage</translation>
    </message>
    <message>
        <source>Bags</source>
        <translation>Beutel</translation>
    </message>
    <message>
        <source>Out of</source>
        <translation>Aus</translation>
    </message>
    <message>
        <source>At</source>
        <translation>Bei</translation>
    </message>
    <message>
        <source>There by</source>
        <translation>Dort bis</translation>
    </message>
    <message>
        <source>From</source>
        <translation>Von</translation>
    </message>
    <message>
        <source>Planned</source>
        <translation>Geplant</translation>
    </message>
    <message>
        <source>servings</source>
        <translation>Portionen</translation>
    </message>
    <message>
        <source>Spare</source>
        <translation>Reserve</translation>
    </message>
    <message>
        <source>Pack</source>
        <translation>Packen</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>g</source>
        <translation>g</translation>
    </message>
    <message>
        <source>What comes from where. Packed whole, with spare; drinks weigh as powder.</source>
        <translation>Was woher kommt. Ganz gepackt, mit Reserve; Getränke wiegen als Pulver.</translation>
    </message>
    <message>
        <source>Carried</source>
        <translation>Getragen</translation>
    </message>
    <message>
        <source>Leaving</source>
        <translation>Ab</translation>
    </message>
    <message>
        <source>Clock</source>
        <translation>Uhr</translation>
    </message>
    <message>
        <source>Carbs</source>
        <translation>KH</translation>
    </message>
    <message>
        <source>Food</source>
        <translation>Lebensmittel</translation>
    </message>
    <message>
        <source>Fluid to the next tap</source>
        <translation>Flüssigkeit bis zum nächsten Wasser</translation>
    </message>
    <message>
        <source>What is planned until then, and the spare.</source>
        <translation>Was bis dahin geplant ist, und die Reserve.</translation>
    </message>
    <message>
        <source>Bottles</source>
        <translation>Flaschen</translation>
    </message>
    <message>
        <source>Short of room</source>
        <translation>Platz fehlt</translation>
    </message>
    <message>
        <source>What is on you when you leave, food and full bottles.</source>
        <translation>Was du beim Aufbruch trägst, Essen und volle Flaschen.</translation>
    </message>
    <message>
        <source>Shopping</source>
        <translation>Einkauf</translation>
    </message>
    <message>
        <source>One serving is</source>
        <translation>Eine Portion ist</translation>
    </message>
    <message>
        <source>Servings</source>
        <translation>Portionen</translation>
    </message>
    <message>
        <source>In a pack</source>
        <translation>In einer Packung</translation>
    </message>
    <message>
        <source>Packs</source>
        <translation>Packungen</translation>
    </message>
    <message>
        <source>Left over</source>
        <translation>Übrig</translation>
    </message>
    <message>
        <source>For every bag, spare among it; whole packs are bought.</source>
        <translation>Für alle Beutel, samt Reserve; gekauft werden ganze Packungen.</translation>
    </message>
    <message>
        <source>Before the start</source>
        <translation>Vor dem Start</translation>
    </message>
    <message>
        <source>To the start</source>
        <translation>Bis zum Start</translation>
    </message>
    <message>
        <source>By body mass and start. Not for people with diabetes without their care team.</source>
        <translation>Nach Körpergewicht und Start. Nicht für Menschen mit Diabetes ohne ihr Behandlungsteam.</translation>
    </message>
    <message>
        <source>Food at stations</source>
        <translation>Essen an Stationen</translation>
    </message>
    <message>
        <source>Station</source>
        <translation>Station</translation>
    </message>
    <message>
        <source>On the table</source>
        <translation>Auf dem Tisch</translation>
    </message>
    <message>
        <source>Names of foods with semicolons between; Fuel, Food at stations ticks them.</source>
        <translation>Namen von Lebensmitteln mit Semikolon dazwischen; Verpflegung, Essen an Stationen hakt sie ab.</translation>
    </message>
    <message>
        <source>What the organiser offers; filling takes it there.</source>
        <translation>Was der Veranstalter bietet; das Auffüllen nimmt es dort.</translation>
    </message>
    <message>
        <source>Cells past the last column are left out.</source>
        <translation>Zellen hinter der letzten Spalte fallen weg.</translation>
    </message>
    <message>
        <source>The column “{0}” is not in this table and is left out.</source>
        <translation>Die Spalte „{0}“ gibt es in dieser Tabelle nicht, sie fällt weg.</translation>
    </message>
    <message>
        <source>“{0}” is in a unit this table does not read; left out.</source>
        <translation>„{0}“ hat eine Einheit, die diese Tabelle nicht liest; fällt weg.</translation>
    </message>
    <message>
        <source>leave {0}</source>
        <translation>ab {0}</translation>
    </message>
    <message>
        <source>Section to</source>
        <translation>Abschnitt bis</translation>
    </message>
    <message>
        <source>Running</source>
        <translation>Laufzeit</translation>
    </message>
    <message>
        <source>Running time of the section on the target.</source>
        <translation>Laufzeit des Abschnitts nach Zielzeit.</translation>
    </message>
    <message>
        <source>Forecast takes</source>
        <translation>Prognose braucht</translation>
    </message>
    <message>
        <source>Running time of the section on the forecast.</source>
        <translation>Laufzeit des Abschnitts nach Prognose.</translation>
    </message>
    <message>
        <source>At walking pace</source>
        <translation>Im Gehen</translation>
    </message>
    <message>
        <source>How much of the section the target takes slower than one changes to walking.</source>
        <translation>Wie viel des Abschnitts nach Zielzeit langsamer ist als das Tempo, bei dem man ins Gehen wechselt.</translation>
    </message>
    <message>
        <source>Arrive</source>
        <translation>Ankunft</translation>
    </message>
    <message>
        <source>Arrival on the target.</source>
        <translation>Ankunft nach Zielzeit.</translation>
    </message>
    <message>
        <source>Forecast</source>
        <translation>Prognose</translation>
    </message>
    <message>
        <source>Arrival on the forecast.</source>
        <translation>Ankunft nach Prognose.</translation>
    </message>
    <message>
        <source>The latest arrival, or leaving where it says so.</source>
        <translation>Die späteste Ankunft, oder der späteste Aufbruch, wo es dabeisteht.</translation>
    </message>
    <message>
        <source>To this cutoff</source>
        <translation>Zu diesem Zeitlimit</translation>
    </message>
    <message>
        <source>Cutoff minus the later of the arrivals.</source>
        <translation>Zeitlimit minus die spätere der Ankünfte.</translation>
    </message>
    <message>
        <source>Time in hand</source>
        <translation>Zeitpolster</translation>
    </message>
    <message>
        <source>How much later you could arrive here and still make every later cutoff at planned speed.</source>
        <translation>Wie viel später du hier ankommen und mit geplantem Tempo noch jedes spätere Zeitlimit schaffen könntest.</translation>
    </message>
    <message>
        <source>Makes it</source>
        <translation>Schafft es</translation>
    </message>
    <message>
        <source>Days of 20 on which this and every earlier cutoff is made.</source>
        <translation>Tage von 20, an denen dieses und jedes frühere Zeitlimit geschafft wird.</translation>
    </message>
    <message>
        <source>Leave by</source>
        <translation>Spätestens los</translation>
    </message>
    <message>
        <source>The latest leaving from which every later cutoff is met at planned speed.</source>
        <translation>Der späteste Aufbruch, mit dem bei geplantem Tempo jedes spätere Zeitlimit geschafft wird.</translation>
    </message>
    <message>
        <source>Leave by, to walk in</source>
        <translation>Gehgrenze, los bis</translation>
    </message>
    <message>
        <source>The latest leaving from which the rest can be walked in, only if well; empty where it is over when you get there as planned.</source>
        <translation>Der späteste Aufbruch, mit dem der Rest gehend zu schaffen ist, nur wenn es dir gut geht; leer, wo er bei geplanter Ankunft schon vorbei ist.</translation>
    </message>
    <message>
        <source>Cutoffs</source>
        <translation>Zeitlimits</translation>
    </message>
    <message>
        <source>Cutoffs are typed under Aid stations, targets in Sections.</source>
        <translation>Zeitlimits stehen unter Verpflegungsstellen, Vorgaben unter Abschnitte.</translation>
    </message>
    <message>
        <source>from the packet</source>
        <translation>von der Packung</translation>
    </message>
    <message>
        <source>published</source>
        <translation>veröffentlicht</translation>
    </message>
    <message>
        <source>from memory</source>
        <translation>aus dem Kopf</translation>
    </message>
    <message>
        <source>one kind</source>
        <translation>eine Art</translation>
    </message>
    <message>
        <source>mixed</source>
        <translation>gemischt</translation>
    </message>
    <message>
        <source>gel</source>
        <translation>Gel</translation>
    </message>
    <message>
        <source>drink</source>
        <translation>Getränk</translation>
    </message>
    <message>
        <source>solid</source>
        <translation>fest</translation>
    </message>
    <message>
        <source>salt</source>
        <translation>Salz</translation>
    </message>
    <message>
        <source>tolerated</source>
        <translation>vertragen</translation>
    </message>
    <message>
        <source>not tried</source>
        <translation>nicht erprobt</translation>
    </message>
    <message>
        <source>avoid</source>
        <translation>meiden</translation>
    </message>
    <message>
        <source>gluten</source>
        <translation>Gluten</translation>
    </message>
    <message>
        <source>crustaceans</source>
        <translation>Krebstiere</translation>
    </message>
    <message>
        <source>eggs</source>
        <translation>Eier</translation>
    </message>
    <message>
        <source>fish</source>
        <translation>Fisch</translation>
    </message>
    <message>
        <source>peanuts</source>
        <translation>Erdnüsse</translation>
    </message>
    <message>
        <source>soya</source>
        <translation>Soja</translation>
    </message>
    <message>
        <source>milk</source>
        <translation>Milch</translation>
    </message>
    <message>
        <source>nuts</source>
        <translation>Nüsse</translation>
    </message>
    <message>
        <source>celery</source>
        <translation>Sellerie</translation>
    </message>
    <message>
        <source>mustard</source>
        <translation>Senf</translation>
    </message>
    <message>
        <source>sesame</source>
        <translation>Sesam</translation>
    </message>
    <message>
        <source>sulphites</source>
        <translation>Sulfite</translation>
    </message>
    <message>
        <source>lupin</source>
        <translation>Lupinen</translation>
    </message>
    <message>
        <source>molluscs</source>
        <translation>Weichtiere</translation>
    </message>
    <message>
        <source>Serving</source>
        <translation>Portion</translation>
    </message>
    <message>
        <source>Energy</source>
        <translation>Energie</translation>
    </message>
    <message>
        <source>Sugars</source>
        <translation>Zucker</translation>
    </message>
    <message>
        <source>Carbohydrate of one kind, or glucose and fructose together.</source>
        <translation>Kohlenhydrate einer Art, oder Glukose und Fruktose zusammen.</translation>
    </message>
    <message>
        <source>Fructose</source>
        <translation>Fruktose</translation>
    </message>
    <message>
        <source>Where the packet says; empty: as the sugars say.</source>
        <translation>Wo die Packung es sagt; leer: wie die Zuckerarten es sagen.</translation>
    </message>
    <message>
        <source>Your gut</source>
        <translation>Dein Magen</translation>
    </message>
    <message>
        <source>What is marked to avoid is never filled in.</source>
        <translation>Was zu meiden ist, wird nie aufgefüllt.</translation>
    </message>
    <message>
        <source>Allergens</source>
        <translation>Allergene</translation>
    </message>
    <message>
        <source>With commas between; the packet goes first.</source>
        <translation>Mit Komma dazwischen; die Packung geht vor.</translation>
    </message>
    <message>
        <source>Without: eaten only where it stands on a table.</source>
        <translation>Ohne: nur gegessen, wo es auf einem Tisch steht.</translation>
    </message>
    <message>
        <source>Form</source>
        <translation>Form</translation>
    </message>
    <message>
        <source>In the plan</source>
        <translation>Im Plan</translation>
    </message>
    <message>
        <source>Figures are</source>
        <translation>Zahlen sind</translation>
    </message>
    <message>
        <source>Figures you type count as read from the packet.</source>
        <translation>Zahlen, die du eingibst, gelten als von der Packung gelesen.</translation>
    </message>
    <message>
        <source>Food of my own</source>
        <translation>Eigenes Lebensmittel</translation>
    </message>
    <message>
        <source>A new food needs its name.</source>
        <translation>Ein neues Lebensmittel braucht einen Namen.</translation>
    </message>
    <message>
        <source>1 serving</source>
        <translation>1 Portion</translation>
    </message>
    <message>
        <source>No foods yet. Add one and type in what its packet says.</source>
        <translation>Noch keine Lebensmittel. Füge eins hinzu und gib ein, was auf der Packung steht.</translation>
    </message>
    <message>
        <source>Foods</source>
        <translation>Lebensmittel</translation>
    </message>
    <message>
        <source>Figures per serving. Removing a food takes it out of the race plan as well.</source>
        <translation>Zahlen je Portion. Ein entferntes Lebensmittel fällt auch aus dem Rennplan.</translation>
    </message>
    <message>
        <source>Add a food of your own</source>
        <translation>Eigenes Lebensmittel hinzufügen</translation>
    </message>
    <message>
        <source>its time</source>
        <translation>seine Zeit</translation>
    </message>
    <message>
        <source>its place</source>
        <translation>seinen Ort</translation>
    </message>
    <message>
        <source>Race time</source>
        <translation>Rennzeit</translation>
    </message>
    <message>
        <source>Fluid</source>
        <translation>Flüssigkeit</translation>
    </message>
    <message>
        <source>Sodium</source>
        <translation>Natrium</translation>
    </message>
    <message>
        <source>Caffeine</source>
        <translation>Koffein</translation>
    </message>
    <message>
        <source>Since the start, as 1 h 30, 1:30 or 90 min.</source>
        <translation>Seit dem Start, als 1 h 30, 1:30 oder 90 min.</translation>
    </message>
    <message>
        <source>Where the target brings you by then.</source>
        <translation>Wo du nach Zielzeit dann bist.</translation>
    </message>
    <message>
        <source>Keeps</source>
        <translation>Behält</translation>
    </message>
    <message>
        <source>When the pace changes: taken at the same time, or at the same place.</source>
        <translation>Wenn sich das Tempo ändert: zur selben Zeit oder am selben Ort genommen.</translation>
    </message>
    <message>
        <source>There is no food yet. Add one under Foods.</source>
        <translation>Es gibt noch kein Lebensmittel. Füge eins unter Lebensmittel hinzu.</translation>
    </message>
    <message>
        <source>A new item needs its food and when it is taken.</source>
        <translation>Ein neuer Posten braucht sein Lebensmittel und wann es genommen wird.</translation>
    </message>
    <message>
        <source>Nothing placed yet. Add an item here, or place fuel by the clock (Ctrl+L).</source>
        <translation>Noch nichts geplant. Füge hier einen Posten hinzu oder verteile Verpflegung nach der Uhr (Strg+L).</translation>
    </message>
    <message>
        <source>Fuel</source>
        <translation>Verpflegung</translation>
    </message>
    <message>
        <source>Type a race time (1 h 30) or a clock time (Sat 09:30).</source>
        <translation>Gib eine Rennzeit (1 h 30) oder eine Uhrzeit (Sa 09:30) ein.</translation>
    </message>
    <message>
        <source>Add the same food again after the current row</source>
        <translation>Dasselbe Lebensmittel nach der aktuellen Zeile noch einmal hinzufügen</translation>
    </message>
    <message>
        <source>Finish</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>Takes</source>
        <translation>Nimmt</translation>
    </message>
    <message>
        <source>Carbs per hour</source>
        <translation>KH je Stunde</translation>
    </message>
    <message>
        <source>Fluid per hour</source>
        <translation>Flüssigkeit je Stunde</translation>
    </message>
    <message>
        <source>By the hour</source>
        <translation>Je Stunde</translation>
    </message>
    <message>
        <source>Hour</source>
        <translation>Stunde</translation>
    </message>
    <message>
        <source>What the items of the table Fuel add up to, hour by hour.</source>
        <translation>Was die Posten der Tabelle Verpflegung ergeben, Stunde für Stunde.</translation>
    </message>
    <message>
        <source>By the leg</source>
        <translation>Je Teilstück</translation>
    </message>
    <message>
        <source>Leg to</source>
        <translation>Teilstück bis</translation>
    </message>
    <message>
        <source>What to have with you from one aid station to the next.</source>
        <translation>Was du von einer Verpflegungsstelle zur nächsten dabeihaben sollst.</translation>
    </message>
    <message>
        <source>This cell cannot be typed over.</source>
        <translation>Diese Zelle lässt sich nicht überschreiben.</translation>
    </message>
    <message>
        <source>Nothing to change: the table shows what the clipboard holds.</source>
        <translation>Nichts zu ändern: die Tabelle zeigt, was in der Zwischenablage ist.</translation>
    </message>
    <message>
        <source>Empty cells leave what stands there.</source>
        <translation>Leere Zellen lassen, was dort steht.</translation>
    </message>
    <message>
        <source>Lines left out past the last row: {0}.</source>
        <translation>Zeilen hinter der letzten, weggelassen: {0}.</translation>
    </message>
    <message>
        <source>Lines left out past the last row: {0}. Clear the filter to add rows.</source>
        <translation>Zeilen hinter der letzten, weggelassen: {0}. Lösche den Filter, um Zeilen hinzuzufügen.</translation>
    </message>
    <message>
        <source>would become {0}</source>
        <translation>würde {0}</translation>
    </message>
    <message>
        <source>Nothing in these columns can be typed over.</source>
        <translation>Nichts in diesen Spalten lässt sich überschreiben.</translation>
    </message>
    <message>
        <source>new row {0}</source>
        <translation>neue Zeile {0}</translation>
    </message>
    <message>
        <source>new row</source>
        <translation>neue Zeile</translation>
    </message>
    <message>
        <source>Mark the session done first.</source>
        <extracomment>What people type for the sign of times.</extracomment>
        <translation>Markiere zuerst die Einheit als erledigt.</translation>
    </message>
    <message>
        <source>Practice</source>
        <translation>Übung</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Asked</source>
        <translation>Soll</translation>
    </message>
    <message>
        <source>g/h</source>
        <translation>g/h</translation>
    </message>
    <message>
        <source>To eat</source>
        <translation>Zu essen</translation>
    </message>
    <message>
        <source>As 2 × Gel; 1 × Banana.</source>
        <translation>Etwa 2 × Gel; 1 × Banane.</translation>
    </message>
    <message>
        <source>Gives</source>
        <translation>Ergibt</translation>
    </message>
    <message>
        <source>Eaten</source>
        <translation>Gegessen</translation>
    </message>
    <message>
        <source>What was really eaten; it sets the carbohydrate.</source>
        <translation>Was wirklich gegessen wurde; daraus folgen die Kohlenhydrate.</translation>
    </message>
    <message>
        <source>That was</source>
        <translation>Das waren</translation>
    </message>
    <message>
        <source>Gut</source>
        <translation>Magen</translation>
    </message>
    <message>
        <source>No long run and nothing to practise yet.</source>
        <translation>Noch kein langer Lauf und nichts zu üben.</translation>
    </message>
    <message>
        <source>Two runs of an hour that sat well show what your gut takes; Fuel offers it.</source>
        <translation>Zwei gut vertragene Läufe von einer Stunde zeigen, was dein Magen verträgt; Verpflegung bietet es an.</translation>
    </message>
    <message>
        <source>Propose food</source>
        <translation>Essen vorschlagen</translation>
    </message>
    <message>
        <source>Food of the race plan for what is to be practised</source>
        <translation>Essen aus dem Rennplan für das, was zu üben ist</translation>
    </message>
    <message>
        <source>Eaten as planned</source>
        <translation>Wie geplant gegessen</translation>
    </message>
    <message>
        <source>What was to be eaten was eaten</source>
        <translation>Was zu essen war, wurde gegessen</translation>
    </message>
    <message>
        <source>Row</source>
        <translation>Zeile</translation>
    </message>
    <message>
        <source>Column</source>
        <translation>Spalte</translation>
    </message>
    <message>
        <source>Now</source>
        <translation>Jetzt</translation>
    </message>
    <message>
        <source>Becomes</source>
        <translation>Wird zu</translation>
    </message>
    <message>
        <source>Not taken, because</source>
        <translation>Nicht übernommen, weil</translation>
    </message>
    <message>
        <source>water</source>
        <translation>Wasser</translation>
    </message>
    <message>
        <source>food</source>
        <translation>Essen</translation>
    </message>
    <message>
        <source>medical</source>
        <translation>Sanitäter</translation>
    </message>
    <message>
        <source>“{0}” is not a distance. Type it as {1} or {2}.</source>
        <translation>„{0}“ ist keine Distanz. Schreibe {1} oder {2}.</translation>
    </message>
    <message>
        <source>“{0}” is not a height. Type it as {1} or {2}.</source>
        <translation>„{0}“ ist keine Höhe. Schreibe {1} oder {2}.</translation>
    </message>
    <message>
        <source>“{0}” is not a duration. Type 1 h 30, 1:30 or 90 min.</source>
        <translation>„{0}“ ist keine Dauer. Schreibe 1 h 30, 1:30 oder 90 min.</translation>
    </message>
    <message>
        <source>“{0}” is not a pace. Type it as 12:51, in {1}.</source>
        <translation>„{0}“ ist kein Tempo. Schreibe 12:51, in {1}.</translation>
    </message>
    <message>
        <source>“{0}” is not a number. Type figures only.</source>
        <translation>„{0}“ ist keine Zahl. Schreibe nur Ziffern.</translation>
    </message>
    <message>
        <source>“{0}” is not a whole number. Type one without decimals.</source>
        <translation>„{0}“ ist keine ganze Zahl. Schreibe eine ohne Komma.</translation>
    </message>
    <message>
        <source>“{0}” is neither yes nor no.</source>
        <translation>„{0}“ ist weder ja noch nein.</translation>
    </message>
    <message>
        <source>“{0}” is none of the choices here: {1}.</source>
        <translation>„{0}“ steht hier nicht zur Wahl: {1}.</translation>
    </message>
    <message>
        <source>“{0}” is not a date. Type it as {1} or {2}.</source>
        <translation>„{0}“ ist kein Datum. Schreibe {1} oder {2}.</translation>
    </message>
    <message>
        <source>“{0}” is neither a clock time nor a duration. Type it as {1}, {2} or 14 h 30.</source>
        <translation>„{0}“ ist weder Uhrzeit noch Dauer. Schreibe {1}, {2} oder 14 h 30.</translation>
    </message>
    <message>
        <source>“{0}” is not known. There can be {1}.</source>
        <translation>„{0}“ ist nicht bekannt. Möglich ist {1}.</translation>
    </message>
    <message>
        <source>That is off the course, which is {0} long.</source>
        <translation>Das liegt nicht auf der Strecke, sie ist {0} lang.</translation>
    </message>
    <message>
        <source>No course yet. Drop a GPX file on the window.</source>
        <translation>Noch keine Strecke. Zieh eine GPX-Datei ins Fenster.</translation>
    </message>
    <message>
        <source>To</source>
        <translation>Bis</translation>
    </message>
    <message>
        <source>Where it ends; the aid station there moves along.</source>
        <translation>Wo er endet; die Verpflegungsstelle dort rückt mit.</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Target</source>
        <translation>Vorgabe</translation>
    </message>
    <message>
        <source>Pace while moving. Typing one fixes it; empty lets it follow the curve.</source>
        <translation>Tempo in Bewegung. Eine Eingabe macht es fest; leer folgt es der Kurve.</translation>
    </message>
    <message>
        <source>Time without stops. Typing one fixes it; empty lets it follow the curve.</source>
        <translation>Zeit ohne Halte. Eine Eingabe macht sie fest; leer folgt sie der Kurve.</translation>
    </message>
    <message>
        <source>Fixed</source>
        <translation>Fest</translation>
    </message>
    <message>
        <source>Whether you set its target yourself.</source>
        <translation>Ob du die Vorgabe selbst setzt.</translation>
    </message>
    <message>
        <source>Window</source>
        <translation>Fenster</translation>
    </message>
    <message>
        <source>Where 8 of 10 arrivals fall in 10,000 simulated races; an estimate of our own.</source>
        <translation>Hier liegen 8 von 10 Ankünften in 10.000 simulierten Rennen; eine eigene Schätzung.</translation>
    </message>
    <message>
        <source>Cutoff minus arrival.</source>
        <translation>Zeitlimit minus Ankunft.</translation>
    </message>
    <message>
        <source>When it gets hard here</source>
        <translation>Wenn es hier hart wird</translation>
    </message>
    <message>
        <source>Sections</source>
        <translation>Abschnitte</translation>
    </message>
    <message>
        <source>Each aid station ends a section; add one there to split.</source>
        <translation>Jede Verpflegungsstelle beendet einen Abschnitt; füge zum Teilen eine ein.</translation>
    </message>
    <message>
        <source>Follow the curve</source>
        <translation>Der Kurve folgen</translation>
    </message>
    <message>
        <source>Let the selected sections follow the target curve again</source>
        <translation>Die gewählten Abschnitte wieder der Zielkurve folgen lassen</translation>
    </message>
    <message>
        <source>Fix as it is</source>
        <translation>So festhalten</translation>
    </message>
    <message>
        <source>Keep the targets of the selected sections as they are</source>
        <translation>Die Vorgaben der gewählten Abschnitte behalten, wie sie sind</translation>
    </message>
    <message>
        <source>planned</source>
        <translation>geplant</translation>
    </message>
    <message>
        <source>done</source>
        <translation>erledigt</translation>
    </message>
    <message>
        <source>missed</source>
        <translation>ausgefallen</translation>
    </message>
    <message>
        <source>the race</source>
        <extracomment>Sessions so many days from a recording are offered for it.</extracomment>
        <translation>das Rennen</translation>
    </message>
    <message>
        <source>Recordings</source>
        <translation>Aufzeichnungen</translation>
    </message>
    <message>
        <source>Date</source>
        <translation>Datum</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Is of</source>
        <translation>Gehört zu</translation>
    </message>
    <message>
        <source>Elapsed</source>
        <translation>Gesamtzeit</translation>
    </message>
    <message>
        <source>Moving</source>
        <translation>Bewegt</translation>
    </message>
    <message>
        <source>Standing</source>
        <translation>Im Stehen</translation>
    </message>
    <message>
        <source>Pace</source>
        <translation>Tempo</translation>
    </message>
    <message>
        <source>Flat-equivalent pace</source>
        <translation>Tempo, flach umgerechnet</translation>
    </message>
    <message>
        <source>Slower later</source>
        <translation>Später langsamer</translation>
    </message>
    <message>
        <source>No recordings yet. Recordings menu, Add recordings, or drop files here.</source>
        <translation>Noch keine Aufzeichnungen. Menü Aufzeichnungen, Aufzeichnungen hinzufügen, oder lege Dateien hier ab.</translation>
    </message>
    <message>
        <source>Kept in the project file as they came. Choose one, then look at it, mark its session or export it by the Recordings menu.</source>
        <translation>In der Projektdatei, wie sie kamen. Wähle eine, dann sieh sie dir an, markiere ihre Einheit oder exportiere sie im Menü Aufzeichnungen.</translation>
    </message>
    <message>
        <source>Time</source>
        <translation>Zeit</translation>
    </message>
    <message>
        <source>Type what was done, or choose planned or missed under State.</source>
        <translation>Gib ein, was gelaufen wurde, oder wähle unter Stand geplant oder ausgefallen.</translation>
    </message>
    <message>
        <source>Year, month, day. 14 Feb or 14/2 will do as well.</source>
        <translation>Jahr, Monat, Tag. 14. Feb oder 14/2 geht auch.</translation>
    </message>
    <message>
        <source>To go</source>
        <translation>Noch</translation>
    </message>
    <message>
        <source>weeks</source>
        <translation>Wochen</translation>
    </message>
    <message>
        <source>Weeks to the race; 0 is the race week.</source>
        <translation>Wochen bis zum Rennen; 0 ist die Rennwoche.</translation>
    </message>
    <message>
        <source>Ground</source>
        <translation>Untergrund</translation>
    </message>
    <message>
        <source>Effort</source>
        <translation>Anstrengung</translation>
    </message>
    <message>
        <source>of 10</source>
        <translation>von 10</translation>
    </message>
    <message>
        <source>carbs g/h</source>
        <translation>KH g/h</translation>
    </message>
    <message>
        <source>Carbohydrate to be taken, to train the gut.</source>
        <translation>Kohlenhydrate, die du nehmen sollst, als Magentraining.</translation>
    </message>
    <message>
        <source>Fasted</source>
        <translation>Nüchtern</translation>
    </message>
    <message>
        <source>Run before breakfast; easy and short only.</source>
        <translation>Lauf vor dem Frühstück; nur locker und kurz.</translation>
    </message>
    <message>
        <source>Dark</source>
        <translation>Dunkel</translation>
    </message>
    <message>
        <source>Run by lamp.</source>
        <translation>Lauf mit Lampe.</translation>
    </message>
    <message>
        <source>State</source>
        <translation>Stand</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Erledigt</translation>
    </message>
    <message>
        <source>Distance really run; typing one marks it done.</source>
        <translation>Wirklich gelaufene Distanz; eingegeben gilt die Einheit als erledigt.</translation>
    </message>
    <message>
        <source>Done in</source>
        <translation>Gelaufen in</translation>
    </message>
    <message>
        <source>Time really taken; typing one marks it done.</source>
        <translation>Wirklich gebrauchte Zeit; eingegeben gilt die Einheit als erledigt.</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Notiz</translation>
    </message>
    <message>
        <source>A new session needs its date.</source>
        <translation>Eine neue Einheit braucht ihr Datum.</translation>
    </message>
    <message>
        <source>No sessions yet. Add one here, or drop a GPX file first.</source>
        <translation>Noch keine Einheiten. Füge hier eine hinzu oder lege zuerst eine GPX-Datei ab.</translation>
    </message>
    <message>
        <source>No sessions yet. Add one here, or build the block from the Build-up menu.</source>
        <translation>Noch keine Einheiten. Füge hier eine hinzu oder baue den Block im Menü Aufbau.</translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation>Einheiten</translation>
    </message>
    <message>
        <source>What stands in full ink can be typed over. Ctrl+C copies cells with their heads.</source>
        <translation>Was kräftig gedruckt ist, lässt sich überschreiben. Strg+C kopiert Zellen mit ihren Köpfen.</translation>
    </message>
    <message>
        <source>Add an easy run on the day of the current row</source>
        <translation>Am Tag der aktuellen Zeile einen lockeren Lauf hinzufügen</translation>
    </message>
    <message>
        <source>Mark the selected sessions done as planned</source>
        <translation>Die gewählten Einheiten als wie geplant erledigt markieren</translation>
    </message>
    <message>
        <source>Missed</source>
        <translation>Ausgefallen</translation>
    </message>
    <message>
        <source>Mark the selected sessions missed</source>
        <translation>Die gewählten Einheiten als ausgefallen markieren</translation>
    </message>
    <message>
        <source>Aid station</source>
        <extracomment>No station has an empty key, so that the finish can stand in the same table.</extracomment>
        <translation>Verpflegungsstelle</translation>
    </message>
    <message>
        <source>When the target brings you there.</source>
        <translation>Wann du nach Zielzeit dort bist.</translation>
    </message>
    <message>
        <source>clock</source>
        <translation>Uhr</translation>
    </message>
    <message>
        <source>Sat 20:30, or 20:30 for the first after the start, or 14 h 30 of race time; empty for none. The limit at the finish is set under Race and runner.</source>
        <translation>Sa 20:30, oder 20:30 für das erste Mal nach dem Start, oder 14 h 30 Rennzeit; leer für keins. Das Limit im Ziel steht unter Rennen und Läufer.</translation>
    </message>
    <message>
        <source>Cutoff after</source>
        <translation>Limit nach</translation>
    </message>
    <message>
        <source>race time</source>
        <translation>Rennzeit</translation>
    </message>
    <message>
        <source>The same, counted from the start.</source>
        <translation>Dasselbe, ab dem Start gezählt.</translation>
    </message>
    <message>
        <source>Planned stop</source>
        <translation>Geplanter Halt</translation>
    </message>
    <message>
        <source>Stop to</source>
        <translation>Halt für</translation>
    </message>
    <message>
        <source>What the stop is for.</source>
        <translation>Wozu der Halt dient.</translation>
    </message>
    <message>
        <source>Pacer</source>
        <translation>Begleitläufer</translation>
    </message>
    <message>
        <source>Whether a pacer may come along from here.</source>
        <translation>Ob ab hier ein Begleitläufer mitdarf.</translation>
    </message>
    <message>
        <source>Water, food, drop bag, crew, medical, with commas between.</source>
        <translation>Wasser, Essen, Dropbag, Betreuung, Sanitäter, mit Komma dazwischen.</translation>
    </message>
    <message>
        <source>New station</source>
        <translation>Neue Station</translation>
    </message>
    <message>
        <source>A new aid station needs its name and where it is.</source>
        <translation>Eine neue Verpflegungsstelle braucht ihren Namen und ihren Ort.</translation>
    </message>
    <message>
        <source>Aid stations</source>
        <translation>Verpflegungsstellen</translation>
    </message>
    <message>
        <source>A cutoff is typed as Sat 20:30, 20:30 or 14 h 30 of race time; empty for none.</source>
        <translation>Ein Zeitlimit schreibt man als Sa 20:30, 20:30 oder 14 h 30 Rennzeit; leer für keins.</translation>
    </message>
    <message>
        <source>Add an aid station after the current one</source>
        <translation>Nach der aktuellen eine Verpflegungsstelle hinzufügen</translation>
    </message>
    <message>
        <source>Surface</source>
        <translation>Untergrund</translation>
    </message>
    <message>
        <source>The surface is known to the finish. Change a row instead.</source>
        <translation>Der Untergrund ist bis ins Ziel bekannt. Ändere stattdessen eine Zeile.</translation>
    </message>
    <message>
        <source>A stretch needs where it begins, where it ends and on what.</source>
        <translation>Ein Stück braucht Anfang, Ende und Untergrund.</translation>
    </message>
    <message>
        <source>No surface is known yet. Add a stretch, or paste a table.</source>
        <translation>Noch kein Untergrund bekannt. Füge ein Stück hinzu oder füge eine Tabelle ein.</translation>
    </message>
    <message>
        <source>Surfaces</source>
        <translation>Untergründe</translation>
    </message>
    <message>
        <source>Unknown ground costs what firm ground does.</source>
        <translation>Unbekannter Untergrund zählt wie fester.</translation>
    </message>
    <message>
        <source>Add a stretch of surface after the current one</source>
        <translation>Nach dem aktuellen ein Stück Untergrund hinzufügen</translation>
    </message>
    <message>
        <source>loading</source>
        <translation>Belastung</translation>
    </message>
    <message>
        <source>cutback</source>
        <translation>Entlastung</translation>
    </message>
    <message>
        <source>taper</source>
        <translation>Tapering</translation>
    </message>
    <message>
        <source>race</source>
        <translation>Rennen</translation>
    </message>
    <message>
        <source>Begins</source>
        <translation>Beginnt</translation>
    </message>
    <message>
        <source>Week</source>
        <translation>Woche</translation>
    </message>
    <message>
        <source>Of last loading week</source>
        <translation>Von letzter Belastungswoche</translation>
    </message>
    <message>
        <source>On feet</source>
        <translation>Auf den Beinen</translation>
    </message>
    <message>
        <source>Longest</source>
        <translation>Längster</translation>
    </message>
    <message>
        <source>30 days before it</source>
        <translation>30 Tage davor</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Last</translation>
    </message>
    <message>
        <source>effort × min</source>
        <translation>Anstrengung × min</translation>
    </message>
    <message>
        <source>No weeks yet. Build the block from the Build-up menu.</source>
        <translation>Noch keine Wochen. Baue den Block im Menü Aufbau.</translation>
    </message>
    <message>
        <source>Weeks</source>
        <translation>Wochen</translation>
    </message>
    <message>
        <source>What was done counts, else what is planned; missed sessions count nothing.</source>
        <translation>Es zählt, was erledigt ist, sonst was geplant ist; Ausgefallenes zählt nichts.</translation>
    </message>
    <message>
        <source>Build-up</source>
        <translation>Aufbau</translation>
    </message>
    <message>
        <source>Race day</source>
        <translation>Renntag</translation>
    </message>
    <message>
        <source>Looking back</source>
        <translation>Rückblick</translation>
    </message>
    <message>
        <source>A good day</source>
        <translation>Ein guter Tag</translation>
    </message>
    <message>
        <source>A fair day</source>
        <translation>Ein normaler Tag</translation>
    </message>
    <message>
        <source>A hard day</source>
        <translation>Ein harter Tag</translation>
    </message>
    <message>
        <source>speed throughout</source>
        <translation>Tempo insgesamt</translation>
    </message>
    <message>
        <source>climbs and descents</source>
        <translation>Anstiege und Abstiege</translation>
    </message>
    <message>
        <source>fade</source>
        <translation>Nachlassen</translation>
    </message>
    <message>
        <source>dark</source>
        <translation>dunkel</translation>
    </message>
    <message>
        <source>stops</source>
        <translation>Halte</translation>
    </message>
    <message>
        <source>the rest</source>
        <translation>der Rest</translation>
    </message>
    <message>
        <source>finished</source>
        <translation>im Ziel</translation>
    </message>
    <message>
        <source>stopped by my own choice</source>
        <translation>selbst aufgehört</translation>
    </message>
    <message>
        <source>past a cutoff</source>
        <translation>nach dem Zeitlimit</translation>
    </message>
    <message>
        <source>taken out by the race or its doctors</source>
        <translation>vom Rennen oder seinen Ärzten herausgenommen</translation>
    </message>
    <message>
        <source>on the body</source>
        <translation>am Körper</translation>
    </message>
    <message>
        <source>in the vest</source>
        <translation>in der Laufweste</translation>
    </message>
    <message>
        <source>in a drop bag</source>
        <translation>in einem Dropbag</translation>
    </message>
    <message>
        <source>Mandatory kit</source>
        <translation>Pflichtausrüstung</translation>
    </message>
    <message>
        <source>Kit</source>
        <translation>Ausrüstung</translation>
    </message>
    <message>
        <source>Packed</source>
        <translation>Gepackt</translation>
    </message>
    <message>
        <source>Where it is</source>
        <translation>Wo es ist</translation>
    </message>
    <message>
        <source>No kit is on the list. Edit menu, Crew and lists, Kit and lists.</source>
        <translation>Keine Ausrüstung auf der Liste. Menü Bearbeiten, Betreuung und Listen, Ausrüstung und Listen.</translation>
    </message>
    <message>
        <source>Tick what is packed and say where it is. The rules of the race count, not this list.</source>
        <translation>Hake ab, was gepackt ist, und sage, wo es ist. Es gelten die Regeln des Rennens, nicht diese Liste.</translation>
    </message>
    <message>
        <source>the whole race</source>
        <translation>das ganze Rennen</translation>
    </message>
    <message>
        <source>an hour</source>
        <translation>eine Stunde</translation>
    </message>
    <message>
        <source>a climb</source>
        <translation>ein Anstieg</translation>
    </message>
    <message>
        <source>a food</source>
        <translation>ein Lebensmittel</translation>
    </message>
    <message>
        <source>Lesson</source>
        <translation>Lehre</translation>
    </message>
    <message>
        <source>Lessons</source>
        <translation>Lehren</translation>
    </message>
    <message>
        <source>Pinned to</source>
        <translation>Geheftet an</translation>
    </message>
    <message>
        <source>Which</source>
        <translation>Welche</translation>
    </message>
    <message>
        <source>Learnt at</source>
        <translation>Gelernt bei</translation>
    </message>
    <message>
        <source>Answer</source>
        <translation>Antwort</translation>
    </message>
    <message>
        <source>No lessons yet. Add one, or look back on a race and write it down there.</source>
        <translation>Noch keine Lehren. Füge eine hinzu oder schreibe sie im Rückblick auf ein Rennen auf.</translation>
    </message>
    <message>
        <source>Lessons of an earlier race come back where they belong and ask for an answer before the cards are printed: what do you do about it this time?</source>
        <translation>Lehren aus einem früheren Rennen kommen dort wieder, wo sie hingehören, und fragen nach einer Antwort, bevor die Karten gedruckt werden: was tust du diesmal?</translation>
    </message>
    <message>
        <source>What was learnt</source>
        <translation>Was gelernt wurde</translation>
    </message>
    <message>
        <source>Write a lesson down</source>
        <translation>Eine Lehre aufschreiben</translation>
    </message>
</context>
<context>
    <name>TargetLane</name>
    <message>
        <source>Target</source>
        <extracomment>No more of a low lane than this is kept for the pace of the slowest section. Steps to the right and up.</extracomment>
        <translation>Vorgabe</translation>
    </message>
    <message>
        <source>{0}
faster up
dots: walking</source>
        <translation>{0}
schneller oben
Punkte: Gehen</translation>
    </message>
    <message>
        <source>Targets appear with a course.</source>
        <extracomment>Where the mouse was pressed, None once it has moved further than a click does.</extracomment>
        <translation>Vorgaben erscheinen mit einer Strecke.</translation>
    </message>
    <message>
        <source>{0}. Drag the top to change it, the right edge to move the end.</source>
        <translation>{0}. Ziehe die Oberkante, um sie zu ändern, den rechten Rand, um das Ende zu verschieben.</translation>
    </message>
    <message>
        <source>At walking pace here: {0} at {1} {2}, {3} up.</source>
        <translation>Hier im Gehtempo: {0} bei {1} {2}, {3} Aufstieg.</translation>
    </message>
    <message>
        <source>Move with the arrow keys</source>
        <translation>Mit den Pfeiltasten bewegen</translation>
    </message>
    <message>
        <source>Let the section follow the curve</source>
        <translation>Den Abschnitt der Kurve folgen lassen</translation>
    </message>
    <message>
        <source>the finish</source>
        <translation>das Ziel</translation>
    </message>
    <message>
        <source>To {0}: {1} {2}, {3} running</source>
        <translation>Bis {0}: {1} {2}, {3} Laufzeit</translation>
    </message>
    <message>
        <source>forecast</source>
        <translation>Vorhersage</translation>
    </message>
</context>
<context>
    <name>TemplateDeeds</name>
    <message>
        <source>Kept as a template: {0}</source>
        <translation>Als Vorlage behalten: {0}</translation>
    </message>
    <message>
        <source>A template needs a plan</source>
        <translation>Eine Vorlage braucht einen Plan</translation>
    </message>
    <message>
        <source>Open the plan it is for, or start one, and drop the template then.</source>
        <translation>Öffne den Plan, für den sie ist, oder beginne einen, und lege die Vorlage dann hinein.</translation>
    </message>
    <message>
        <source>That did not work</source>
        <translation>Das ging nicht</translation>
    </message>
</context>
<context>
    <name>TemplateForm</name>
    <message>
        <source>Distances</source>
        <translation>Distanzen</translation>
    </message>
    <message>
        <source>Distances as they are in the template</source>
        <translation>Distanzen wie in der Vorlage</translation>
    </message>
    <message>
        <source>Distances times {0}, to begin at this runner&apos;s usual week</source>
        <translation>Distanzen mal {0}, damit es bei der üblichen Woche dieses Läufers beginnt</translation>
    </message>
    <message>
        <source>&amp;Put it in</source>
        <translation>&amp;Einsetzen</translation>
    </message>
    <message>
        <source>{0} to go</source>
        <translation>noch {0}</translation>
    </message>
    <message numerus="yes">
        <source>%n weeks ahead, the largest {0}.</source>
        <translation>
            <numerusform>%n Woche voraus, die größte {0}.</numerusform>
            <numerusform>%n Wochen voraus, die größte {0}.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sessions are left out: they fall before today, or on what stays.</source>
        <translation>
            <numerusform>%n Einheit entfällt: Sie läge vor heute oder auf dem, was bleibt.</numerusform>
            <numerusform>%n Einheiten entfallen: Sie lägen vor heute oder auf dem, was bleibt.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n rules break</source>
        <translation>
            <numerusform>%n Regel bricht</numerusform>
            <numerusform>%n Regeln brechen</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n rules strain</source>
        <translation>
            <numerusform>%n Regel ist gespannt</numerusform>
            <numerusform>%n Regeln sind gespannt</numerusform>
        </translation>
    </message>
    <message>
        <source>Rules it would strain or break</source>
        <translation>Regeln, die sie dehnen oder brechen würde</translation>
    </message>
    <message>
        <source>A template knows neither this runner&apos;s health nor their days. The rules are checked again below; what breaks them should be changed before it is run.</source>
        <translation>Eine Vorlage kennt weder die Gesundheit dieses Läufers noch seine Tage. Die Regeln werden unten neu geprüft; was sie bricht, sollte vor dem Laufen geändert werden.</translation>
    </message>
    <message>
        <source>Every rule holds.</source>
        <translation>Alle Regeln sind eingehalten.</translation>
    </message>
</context>
<context>
    <name>TitleRow</name>
    <message>
        <source>RACE DAY</source>
        <extracomment>The user wants the plan view shown or hidden. Every leg is to be unfolded. A lane without room is to have some, by its name; or race day the whole window, by none.</extracomment>
        <translation>RENNTAG</translation>
    </message>
    <message>
        <source>by distance</source>
        <translation>nach Distanz</translation>
    </message>
    <message>
        <source>by clock</source>
        <translation>nach Uhrzeit</translation>
    </message>
    <message>
        <source>plan view</source>
        <translation>Planansicht</translation>
    </message>
    <message>
        <source>unfold all</source>
        <translation>alles aufklappen</translation>
    </message>
    <message>
        <source>unfold the leg</source>
        <translation>Teilstück aufklappen</translation>
    </message>
    <message>
        <source>1 more lane</source>
        <translation>1 Spur mehr</translation>
    </message>
    <message>
        <source>{0} more lanes</source>
        <translation>{0} Spuren mehr</translation>
    </message>
    <message>
        <source>No room now for: {0}</source>
        <translation>Gerade kein Platz für: {0}</translation>
    </message>
    <message>
        <source>Show {0}</source>
        <translation>{0} zeigen</translation>
    </message>
    <message>
        <source>Race day alone, with all lanes</source>
        <translation>Nur Renntag, mit allen Spuren</translation>
    </message>
</context>
<context>
    <name>TrustDeeds</name>
    <message>
        <source>{0} is read-only: changes are not kept. Save a copy to keep them.</source>
        <translation>{0} ist schreibgeschützt: Änderungen bleiben nicht erhalten. Speichere eine Kopie, um sie zu behalten.</translation>
    </message>
    <message>
        <source>This is only a look at {0}. Save a copy to keep changes.</source>
        <translation>Das ist nur ein Blick auf {0}. Speichere eine Kopie, um Änderungen zu behalten.</translation>
    </message>
    <message>
        <source>Nothing was rescued</source>
        <translation>Nichts wurde gerettet</translation>
    </message>
    <message>
        <source>What was rescued</source>
        <translation>Was gerettet wurde</translation>
    </message>
    <message>
        <source>Not as it was kept, look at it before you go on: {0}.</source>
        <translation>Nicht wie gespeichert, sieh es dir an, bevor du weitermachst: {0}.</translation>
    </message>
    <message>
        <source>Everything kept last could be read. Only the history may have gaps.</source>
        <translation>Alles zuletzt Gespeicherte ließ sich lesen. Nur der Verlauf kann Lücken haben.</translation>
    </message>
    <message>
        <source>The copy was not written</source>
        <translation>Die Kopie wurde nicht geschrieben</translation>
    </message>
    <message>
        <source>Written: {0}</source>
        <translation>Geschrieben: {0}</translation>
    </message>
    <message>
        <source>Ultraplanner did not end by itself last time. This is the plan as it was kept. A report, if there is one, is in {0} and stays on this computer.</source>
        <translation>Ultraplanner wurde letztes Mal nicht von selbst beendet. Das ist der Plan, wie er gespeichert war. Ein Bericht, falls es einen gibt, liegt in {0} und bleibt auf diesem Computer.</translation>
    </message>
    <message>
        <source>Cannot open the project</source>
        <translation>Projekt lässt sich nicht öffnen</translation>
    </message>
    <message>
        <source>&amp;Look at it without changing it</source>
        <translation>&amp;Ansehen, ohne es zu ändern</translation>
    </message>
    <message>
        <source>&amp;Rescue what can be read…</source>
        <translation>&amp;Retten, was lesbar ist…</translation>
    </message>
    <message>
        <source>This state is named “{0}”.</source>
        <translation>Dieser Stand heißt „{0}“.</translation>
    </message>
</context>
<context>
    <name>TuneUp</name>
    <message>
        <source>A tune-up race comes before the race; set an earlier day.</source>
        <translation>Ein Vorbereitungsrennen liegt vor dem Rennen; wähle einen früheren Tag.</translation>
    </message>
</context>
<context>
    <name>TuneUpForm</name>
    <message>
        <source>At least three weeks before the race, four if it is long; up to half its time.</source>
        <extracomment>From here on, as climb over distance, the ground goes up and down; our own choice.</extracomment>
        <translation>Mindestens drei Wochen vor dem Rennen, vier, wenn es lang ist; bis zur halben Zeit des Rennens.</translation>
    </message>
    <message>
        <source>What it is called; kept as the note of the session</source>
        <translation>Wie es heißt; bleibt als Notiz der Einheit</translation>
    </message>
    <message>
        <source>likely</source>
        <translation>wahrscheinlich</translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation>&amp;Name</translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation>&amp;Tag</translation>
    </message>
    <message>
        <source>D&amp;istance</source>
        <translation>&amp;Distanz</translation>
    </message>
    <message>
        <source>&amp;Climb</source>
        <translation>A&amp;ufstieg</translation>
    </message>
    <message>
        <source>D&amp;rop</source>
        <translation>&amp;Abstieg</translation>
    </message>
    <message>
        <source>&amp;Time, if you know</source>
        <translation>&amp;Zeit, falls bekannt</translation>
    </message>
    <message>
        <source>&amp;Put it in</source>
        <translation>&amp;Einsetzen</translation>
    </message>
</context>
<context>
    <name>TypeBack</name>
    <message>
        <source>Type a week back in</source>
        <extracomment>What the help says of each column.</extracomment>
        <translation>Eine Woche wieder eintragen</translation>
    </message>
    <message>
        <source>Week</source>
        <translation>Woche</translation>
    </message>
    <message>
        <source>{0} cannot be read here: {1}</source>
        <translation>{0} lässt sich hier nicht lesen: {1}</translation>
    </message>
    <message>
        <source>{0} to go, from {1}</source>
        <translation>noch {0}, ab {1}</translation>
    </message>
</context>
<context>
    <name>TypeIn</name>
    <message>
        <source>{0}, new figure</source>
        <extracomment>As `Words.duration` writes them.</extracomment>
        <translation>{0}, neue Zahl</translation>
    </message>
    <message>
        <source>A distance, a time such as 1 h 30, or a kind and one of them</source>
        <translation>Eine Distanz, eine Zeit wie 1 h 30, oder eine Art und eines davon</translation>
    </message>
</context>
<context>
    <name>UndoList</name>
    <message>
        <source>Steps of this sitting</source>
        <translation>Schritte dieser Sitzung</translation>
    </message>
    <message>
        <source>Click one, or press Enter on it: the plan becomes what it was after it.</source>
        <translation>Klicke einen an oder drücke darauf Enter: der Plan wird, wie er danach war.</translation>
    </message>
    <message>
        <source>As it was opened</source>
        <translation>Wie geöffnet</translation>
    </message>
    <message>
        <source>{0} taken back. Until you change something you can go over them again.</source>
        <translation>{0} zurückgenommen. Bis du etwas änderst, kannst du sie wiederholen.</translation>
    </message>
    <message>
        <source>Nothing was changed yet.</source>
        <translation>Noch nichts geändert.</translation>
    </message>
    <message>
        <source>The plan is as after the last step.</source>
        <translation>Der Plan ist wie nach dem letzten Schritt.</translation>
    </message>
    <message>
        <source>{0}, here the plan stands</source>
        <translation>{0}, hier steht der Plan</translation>
    </message>
    <message>
        <source>{0}, taken back</source>
        <translation>{0}, zurückgenommen</translation>
    </message>
</context>
<context>
    <name>ViewDeeds</name>
    <message>
        <source>Choose an aid station or a section, or point at the leg to fold.</source>
        <translation>Wähle eine Verpflegungsstelle oder einen Abschnitt, oder zeige auf das Teilstück, das du falten willst.</translation>
    </message>
    <message>
        <source>Click what is to be explained; Esc leaves it.</source>
        <translation>Klicke an, was erklärt werden soll; Esc bricht ab.</translation>
    </message>
</context>
<context>
    <name>WarmthLane</name>
    <message>
        <source>No weather yet: Race day, Weather and conditions.</source>
        <translation>Noch kein Wetter: Renntag, Wetter und Bedingungen.</translation>
    </message>
    <message>
        <source>{0} when you pass, in the dark</source>
        <translation>{0}, wenn du vorbeikommst, im Dunkeln</translation>
    </message>
    <message>
        <source>{0} when you pass; WBGT about {1}, {2}.</source>
        <translation>{0}, wenn du vorbeikommst; WBGT etwa {1}, {2}.</translation>
    </message>
    <message>
        <source>air</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>heat (WBGT), estimate</source>
        <translation>Hitze (WBGT), geschätzt</translation>
    </message>
    <message>
        <source>low heat</source>
        <translation>wenig Hitze</translation>
    </message>
    <message>
        <source>moderate heat</source>
        <translation>mäßige Hitze</translation>
    </message>
    <message>
        <source>high heat</source>
        <translation>große Hitze</translation>
    </message>
    <message>
        <source>very high heat</source>
        <translation>sehr große Hitze</translation>
    </message>
</context>
<context>
    <name>Week</name>
    <message>
        <source>Own rule</source>
        <extracomment>As long as this takes a night with it whatever the start (own rule).</extracomment>
        <translation>Eigene Regel</translation>
    </message>
    <message>
        <source>Common practice, no source</source>
        <translation>Üblich, ohne Quelle</translation>
    </message>
    <message>
        <source>Your plan</source>
        <translation>Dein Plan</translation>
    </message>
    <message>
        <source>Your own line</source>
        <translation>Deine eigene Zeile</translation>
    </message>
    <message>
        <source>Own words; medical review advised</source>
        <translation>Eigene Worte; ärztliche Durchsicht empfohlen</translation>
    </message>
    <message>
        <source>{0}</source>
        <translation>{0}</translation>
    </message>
    <message>
        <source>Run {0} in {1}, as planned and no more.</source>
        <translation>Lauf {0} in {1}, wie geplant und nicht mehr.</translation>
    </message>
    <message>
        <source>Travel: tickets, room, car and the way to the start; who goes when.</source>
        <translation>Anreise: Fahrkarten, Zimmer, Auto und Weg zum Start; wer wann fährt.</translation>
    </message>
    <message>
        <source>Sleep: go to bed half an hour to an hour earlier from tonight. The last night is often poor; these nights count more.</source>
        <translation>Schlaf: geh ab heute eine halbe bis ganze Stunde früher ins Bett. Die letzte Nacht ist oft schlecht; diese Nächte zählen mehr.</translation>
    </message>
    <message>
        <source>Feet: cut nails straight, file hard skin thin, do not cut it. Tape and socks as in your long runs, nothing new.</source>
        <translation>Füße: Nägel gerade schneiden, Hornhaut dünn feilen, nicht schneiden. Tape und Socken wie bei deinen langen Läufen, nichts Neues.</translation>
    </message>
    <message>
        <source>Head: read your hard stretches once, then put them away. What is not trained by now is left; nerves are not a sign of form.</source>
        <translation>Kopf: Lies deine schweren Strecken einmal, dann leg sie weg. Was jetzt nicht trainiert ist, bleibt; Nervosität sagt nichts über die Form.</translation>
    </message>
    <message>
        <source>Collect the number, hear the briefing; ask what changed of course, kit and cutoffs.</source>
        <translation>Startnummer holen, Besprechung hören; fragen, was sich an Strecke, Ausrüstung und Zeitlimits geändert hat.</translation>
    </message>
    <message>
        <source>Lay out what you wear, pin the number, charge watch, phone and lamps.</source>
        <translation>Leg bereit, was du trägst, befestige die Startnummer, lade Uhr, Handy und Lampen.</translation>
    </message>
    <message>
        <source>To bed, two alarms set. Lying still is rest too if sleep does not come.</source>
        <translation>Ins Bett, zwei Wecker gestellt. Still liegen ist auch Ruhe, wenn der Schlaf nicht kommt.</translation>
    </message>
    <message>
        <source>Kit: no mandatory list is in the plan; read the rules.</source>
        <translation>Ausrüstung: keine Pflichtliste im Plan; lies die Regeln.</translation>
    </message>
    <message>
        <source>Mandatory kit: all of it is ticked; carry it on a run.</source>
        <translation>Pflichtausrüstung: alles abgehakt; trage sie bei einem Lauf.</translation>
    </message>
    <message>
        <source>Mandatory kit, tick it and note where it goes (body, vest, bag): {0}.</source>
        <translation>Pflichtausrüstung, hake sie ab und notiere, wohin sie kommt (Körper, Laufweste, Beutel): {0}.</translation>
    </message>
    <message>
        <source>Bag for {0}: pack {1}, close and label it.</source>
        <translation>Beutel für {0}: {1} packen, schließen und beschriften.</translation>
    </message>
    <message>
        <source>Bags: food as in the table of bags; a name on each.</source>
        <translation>Beutel: Essen wie in der Tabelle der Beutel; auf jeden ein Name.</translation>
    </message>
    <message>
        <source>Way home: {0} drives, and has slept. Ask once more; you do not drive.</source>
        <translation>Heimweg: {0} fährt und hat geschlafen. Frag noch einmal nach; du fährst nicht.</translation>
    </message>
    <message>
        <source>Way home: nobody is named yet. Find who drives; you do not, without sleep.</source>
        <translation>Heimweg: noch niemand genannt. Finde jemanden, der fährt; du nicht, ohne Schlaf.</translation>
    </message>
    <message>
        <source>Chafing: grease feet, groin, underarms, chest and under the vest&apos;s straps.</source>
        <translation>Wundreiben: Füße, Leiste, Achseln, Brust und unter den Gurten der Laufweste einfetten.</translation>
    </message>
    <message>
        <source>At the start: toilet, bag handed in, lamp and phone on you.</source>
        <translation>Am Start: Toilette, Beutel abgegeben, Lampe und Handy bei dir.</translation>
    </message>
    <message>
        <source>{0}: {1} weeks from rest to its start; {2} after this race.</source>
        <translation>{0}: {1} Wochen von der Ruhe bis zum Start; {2} nach diesem Rennen.</translation>
    </message>
    <message>
        <source>{0} is too soon: {2} weeks after this race; {1} weeks from rest to it.</source>
        <translation>{0} ist zu früh: {2} Wochen nach diesem Rennen; {1} Wochen von der Ruhe bis dahin.</translation>
    </message>
    <message>
        <source>Dry clothes, sit, eat, drink to thirst. No ibuprofen or the like: the kidneys have enough to do.</source>
        <translation>Trockene Kleidung, sitzen, essen, nach Durst trinken. Kein Ibuprofen oder Ähnliches: die Nieren haben genug zu tun.</translation>
    </message>
    <message>
        <source>Do not drive: you have been up all night. Sleep first.</source>
        <translation>Fahre nicht: du warst die ganze Nacht wach. Schlafe zuerst.</translation>
    </message>
    <message>
        <source>No running for {0} days; walk a little, sleep a lot.</source>
        <translation>Kein Laufen für {0} Tage; geh ein wenig, schlafe viel.</translation>
    </message>
    <message>
        <source>First easy run if walking and stairs do not hurt; easy only to day {0}.</source>
        <translation>Erster lockerer Lauf, wenn Gehen und Treppen nicht wehtun; nur locker bis Tag {0}.</translation>
    </message>
    <message>
        <source>First hard session not before day {0}, and only if fresh.</source>
        <translation>Erste harte Einheit nicht vor Tag {0}, und nur wenn du frisch bist.</translation>
    </message>
    <message>
        <source>The next race of this size: after {0} weeks at the soonest.</source>
        <translation>Das nächste Rennen dieser Größe: frühestens nach {0} Wochen.</translation>
    </message>
    <message>
        <source>Emergency call at any time: chest pain, fainting, confusion, a fit, severe breathlessness.</source>
        <translation>Notruf, jederzeit: Brustschmerz, Ohnmacht, Verwirrtheit, Krampfanfall, schwere Atemnot.</translation>
    </message>
    <message>
        <source>A doctor the same day: dark or no urine, vomiting that goes on, puffy hands with headache, black stool, a hot or swollen calf, fever.</source>
        <translation>Am selben Tag zum Arzt: dunkler oder kein Urin, anhaltendes Erbrechen, geschwollene Hände mit Kopfschmerz, schwarzer Stuhl, heiße oder geschwollene Wade, Fieber.</translation>
    </message>
    <message>
        <source>Still pain on one spot of bone, at night, or in groin, hip or sacrum: no running until it has been seen.</source>
        <translation>Noch Schmerz an einer Stelle am Knochen, nachts, oder in Leiste, Hüfte oder Kreuzbein: nicht laufen, bis es untersucht ist.</translation>
    </message>
    <message>
        <source>Low for more than two weeks, sleepless, ill again and again: talk to a doctor.</source>
        <translation>Mehr als zwei Wochen niedergeschlagen, schlaflos, immer wieder krank: sprich mit einem Arzt.</translation>
    </message>
</context>
<context>
    <name>WeekHead</name>
    <message>
        <source>Weeks to go</source>
        <translation>Wochen bis dahin</translation>
    </message>
    <message numerus="yes">
        <source>%n weeks are out of view here</source>
        <translation>
            <numerusform>%n Woche ist hier nicht im Bild</numerusform>
            <numerusform>%n Wochen sind hier nicht im Bild</numerusform>
        </translation>
    </message>
    <message>
        <source>BUILD-UP</source>
        <translation>AUFBAU</translation>
    </message>
    <message>
        <source>weeks to go</source>
        <translation>Wochen noch</translation>
    </message>
    <message>
        <source>today</source>
        <translation>heute</translation>
    </message>
</context>
<context>
    <name>WeekPanel</name>
    <message>
        <source>Week of {0}</source>
        <translation>Woche vom {0}</translation>
    </message>
    <message>
        <source>★ the two to keep if the week falls apart (common practice, no source). Keys: D done as planned, C changed, M missed, U neither.</source>
        <translation>★ die zwei, die bleiben sollen, wenn die Woche zerfällt (übliche Praxis, keine Quelle). Tasten: D wie geplant erledigt, C geändert, M ausgefallen, U keins davon.</translation>
    </message>
    <message>
        <source>{0}, today</source>
        <translation>{0}, heute</translation>
    </message>
    <message>
        <source>no session</source>
        <translation>keine Einheit</translation>
    </message>
    <message>
        <source>{0}, effort {1}</source>
        <translation>{0}, Anstrengung {1}</translation>
    </message>
    <message>
        <source>Week &amp;before</source>
        <translation>Woche da&amp;vor</translation>
    </message>
    <message>
        <source>Week &amp;after</source>
        <translation>Woche da&amp;nach</translation>
    </message>
    <message>
        <source>Close</source>
        <translation>Schließen</translation>
    </message>
    <message>
        <source>Day</source>
        <translation>Tag</translation>
    </message>
    <message>
        <source>Session</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>Planned</source>
        <translation>Geplant</translation>
    </message>
    <message>
        <source>Done</source>
        <translation>Erledigt</translation>
    </message>
    <message>
        <source>Load</source>
        <translation>Last</translation>
    </message>
</context>
<context>
    <name>Welcome</name>
    <message>
        <source>Drop a course here</source>
        <translation>Strecke hier ablegen</translation>
    </message>
    <message>
        <source>A GPX file of the race, with or without heights. You get its profile, a build-up counted back from race day, section targets, fuel and cards to print.</source>
        <translation>Eine GPX-Datei des Rennens, mit oder ohne Höhen. Du bekommst ihr Profil, einen vom Renntag zurückgezählten Aufbau, Vorgaben je Abschnitt, Verpflegung und Karten zum Drucken.</translation>
    </message>
    <message>
        <source>New from a &amp;course…</source>
        <translation>Neu aus einer &amp;Strecke…</translation>
    </message>
    <message>
        <source>No file? &amp;Type the course…</source>
        <translation>Keine Datei? Strecke &amp;tippen…</translation>
    </message>
    <message>
        <source>&amp;Open project…</source>
        <translation>Projekt ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>Open the &amp;demo</source>
        <translation>&amp;Demo öffnen</translation>
    </message>
    <message>
        <source>Open {0}</source>
        <translation>{0} öffnen</translation>
    </message>
</context>
<context>
    <name>WholeField</name>
    <message>
        <source>From {0} to {1}</source>
        <translation>Von {0} bis {1}</translation>
    </message>
</context>
<context>
    <name>WishesForm</name>
    <message>
        <source>Wishes and days away</source>
        <translation>Wünsche und freie Tage</translation>
    </message>
    <message>
        <source>C&amp;hange</source>
        <translation>Ä&amp;ndern</translation>
    </message>
</context>
<context>
    <name>_AwayRow</name>
    <message>
        <source>Why, if you like</source>
        <translation>Warum, wenn du magst</translation>
    </message>
    <message>
        <source>Remove</source>
        <translation>Entfernen</translation>
    </message>
    <message>
        <source>First day away</source>
        <translation>Erster Tag weg</translation>
    </message>
    <message>
        <source>Last day away</source>
        <translation>Letzter Tag weg</translation>
    </message>
    <message>
        <source>Minutes free on each day</source>
        <translation>Freie Minuten an jedem Tag</translation>
    </message>
    <message>
        <source>Why</source>
        <translation>Warum</translation>
    </message>
</context>
<context>
    <name>_BankCard</name>
    <message>
        <source>Outline as large as a bank card should be</source>
        <translation>Umriss so groß, wie eine Bankkarte sein soll</translation>
    </message>
</context>
<context>
    <name>_CrewPage</name>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Nummer</translation>
    </message>
    <message>
        <source>What they do</source>
        <translation>Was sie tun</translation>
    </message>
    <message>
        <source>who has slept</source>
        <translation>wer geschlafen hat</translation>
    </message>
    <message>
        <source>&amp;Crew</source>
        <translation>&amp;Betreuung</translation>
    </message>
    <message>
        <source>&amp;Drives home</source>
        <translation>&amp;Fährt heim</translation>
    </message>
    <message>
        <source>&amp;Ask everywhere</source>
        <translation>Überall fr&amp;agen</translation>
    </message>
</context>
<context>
    <name>_Days</name>
    <message>
        <source>Finish</source>
        <translation>Ziel</translation>
    </message>
    <message>
        <source>What counts</source>
        <translation>Was zählt</translation>
    </message>
    <message>
        <source>{0}: finish</source>
        <translation>{0}: Ziel</translation>
    </message>
    <message>
        <source>{0}: what counts</source>
        <translation>{0}: was zählt</translation>
    </message>
    <message>
        <source>Reckoned: of 10,000 simulated races a tenth is faster than the good day, half than the fair one, nine tenths than the hard one. No promise: whatever the day, to stop in time counts too.</source>
        <translation>Gerechnet: Von 10.000 simulierten Rennen ist ein Zehntel schneller als der gute Tag, die Hälfte schneller als der normale, neun Zehntel schneller als der harte. Kein Versprechen: An jedem Tag zählt auch, rechtzeitig aufzuhören.</translation>
    </message>
</context>
<context>
    <name>_Figures</name>
    <message>
        <source>What is run now</source>
        <translation>Was jetzt gelaufen wird</translation>
    </message>
    <message>
        <source>Empty or 0: unknown. Distances stand in Race and runner.</source>
        <translation>Leer oder 0: unbekannt. Distanzen stehen unter Rennen und Läufer.</translation>
    </message>
    <message>
        <source>On fee&amp;t in a usual week</source>
        <translation>Auf den &amp;Beinen in üblicher Woche</translation>
    </message>
    <message>
        <source>Lon&amp;gest run lasted</source>
        <translation>Dauer des längsten &amp;Laufs</translation>
    </message>
    <message>
        <source>Its &amp;drop</source>
        <translation>Sein A&amp;bstieg</translation>
    </message>
    <message>
        <source>Easy effort clim&amp;bs</source>
        <translation>Locker steigt &amp;man</translation>
    </message>
    <message>
        <source>what suits the race</source>
        <translation>was zum Rennen passt</translation>
    </message>
    <message>
        <source>distance</source>
        <translation>Distanz</translation>
    </message>
    <message>
        <source>time on feet</source>
        <translation>Zeit auf den Beinen</translation>
    </message>
    <message>
        <source>flat-equivalent distance</source>
        <translation>flach umgerechnete Distanz</translation>
    </message>
    <message>
        <source>&amp;Volume counted by</source>
        <translation>&amp;Umfang gezählt nach</translation>
    </message>
    <message>
        <source>Runs start, &amp;Mon to Fri</source>
        <translation>Läufe beginnen, M&amp;o bis Fr</translation>
    </message>
    <message>
        <source>R&amp;uns start, Sat and Sun</source>
        <translation>Läufe beginnen, &amp;Sa und So</translation>
    </message>
</context>
<context>
    <name>_HardPage</name>
    <message>
        <source>If</source>
        <translation>Wenn</translation>
    </message>
    <message>
        <source>then</source>
        <translation>dann</translation>
    </message>
    <message>
        <source>on the way to</source>
        <translation>auf dem Weg nach</translation>
    </message>
    <message>
        <source>&amp;If … then</source>
        <translation>&amp;Wenn … dann</translation>
    </message>
    <message>
        <source>&amp;Words to myself</source>
        <translation>&amp;Worte an mich</translation>
    </message>
</context>
<context>
    <name>_Lines</name>
    <message>
        <source>If</source>
        <translation>Wenn</translation>
    </message>
    <message>
        <source>then</source>
        <translation>dann</translation>
    </message>
    <message>
        <source>on the way to</source>
        <translation>auf dem Weg nach</translation>
    </message>
    <message>
        <source>Lines for hard hours</source>
        <translation>Sätze für harte Stunden</translation>
    </message>
    <message>
        <source>Proposed by the plan</source>
        <translation>Vom Plan vorgeschlagen</translation>
    </message>
    <message>
        <source>Take the &amp;ticked</source>
        <translation>An&amp;gehakte nehmen</translation>
    </message>
    <message>
        <source>Sessions it was tried in</source>
        <translation>Einheiten, in denen er probiert wurde</translation>
    </message>
    <message>
        <source>The chosen line was tried in</source>
        <translation>Der gewählte Satz wurde erprobt in</translation>
    </message>
    <message>
        <source>The plan proposes; tick what is yours</source>
        <translation>Der Plan schlägt vor; hake an, was zu dir passt</translation>
    </message>
    <message>
        <source>If {0}, then {1}</source>
        <translation>Wenn {0}, dann {1}</translation>
    </message>
    <message>
        <source>not tried yet</source>
        <translation>noch nicht erprobt</translation>
    </message>
</context>
<context>
    <name>_ListsPage</name>
    <message>
        <source>what the race rules ask for, one to a line</source>
        <translation>was die Regeln des Rennens verlangen, eins je Zeile</translation>
    </message>
    <message>
        <source>&amp;Mandatory kit</source>
        <translation>&amp;Pflichtausrüstung</translation>
    </message>
    <message>
        <source>To &amp;pack besides</source>
        <translation>Sonst noch pa&amp;cken</translation>
    </message>
    <message>
        <source>To &amp;buy besides food</source>
        <translation>&amp;Kaufen außer Essen</translation>
    </message>
    <message>
        <source>Bag at the &amp;finish</source>
        <translation>Beutel im &amp;Ziel</translation>
    </message>
</context>
<context>
    <name>_Pictures</name>
    <message>
        <source>To picture, from the plan</source>
        <translation>Zum Vorstellen, aus dem Plan</translation>
    </message>
    <message>
        <source>To picture, in your words</source>
        <translation>Zum Vorstellen, in deinen Worten</translation>
    </message>
    <message>
        <source>Ten minutes, quiet, at the pace it will have: where you are, what you see, what you do. On days marked for it in the build-up.</source>
        <translation>Zehn Minuten, ruhig, in dem Tempo, das es haben wird: wo du bist, was du siehst, was du tust. An den Tagen, die im Aufbau dafür markiert sind.</translation>
    </message>
    <message>
        <source>In your words, one to a line</source>
        <translation>In deinen Worten, eins je Zeile</translation>
    </message>
</context>
<context>
    <name>_PlacesPage</name>
    <message>
        <source>&amp;Station</source>
        <translation>&amp;Station</translation>
    </message>
    <message>
        <source>&amp;Way there</source>
        <translation>&amp;Weg dorthin</translation>
    </message>
    <message>
        <source>Wh&amp;o comes</source>
        <translation>Wer k&amp;ommt</translation>
    </message>
    <message>
        <source>&amp;Hand over</source>
        <translation>Ü&amp;bergeben</translation>
    </message>
    <message>
        <source>&amp;Ask here</source>
        <translation>Hier fr&amp;agen</translation>
    </message>
    <message>
        <source>In the &amp;bag</source>
        <translation>Im Beu&amp;tel</translation>
    </message>
    <message>
        <source>If I stop: wa&amp;y out</source>
        <translation>Falls ich aufhöre: We&amp;g hinaus</translation>
    </message>
    <message>
        <source>&amp;Fetched by</source>
        <translation>Abge&amp;holt von</translation>
    </message>
    <message>
        <source>&amp;Takes</source>
        <translation>&amp;Dauert</translation>
    </message>
    <message>
        <source>&amp;Number</source>
        <translation>&amp;Nummer</translation>
    </message>
</context>
<context>
    <name>_SettingRow</name>
    <message>
        <source>on</source>
        <translation>an</translation>
    </message>
</context>
<context>
    <name>_Table</name>
    <message>
        <source>Sessions of the week</source>
        <translation>Einheiten der Woche</translation>
    </message>
</context>
<context>
    <name>_WhoPage</name>
    <message>
        <source>name and number of someone at home</source>
        <translation>Name und Nummer von jemandem daheim</translation>
    </message>
    <message>
        <source>allergies, medicines, blood group, one to a line</source>
        <translation>Allergien, Medikamente, Blutgruppe, eins je Zeile</translation>
    </message>
    <message>
        <source>&amp;Full name</source>
        <translation>&amp;Voller Name</translation>
    </message>
    <message>
        <source>Race &amp;number</source>
        <translation>Start&amp;nummer</translation>
    </message>
    <message>
        <source>&amp;Born</source>
        <translation>&amp;Geboren</translation>
    </message>
    <message>
        <source>&amp;Call</source>
        <translation>&amp;Anrufen</translation>
    </message>
    <message>
        <source>Race &amp;emergency</source>
        <translation>N&amp;otruf des Rennens</translation>
    </message>
    <message>
        <source>&amp;Medical</source>
        <translation>&amp;Medizinisches</translation>
    </message>
</context>
<context>
    <name>_WishFields</name>
    <message>
        <source>Wishes</source>
        <translation>Wünsche</translation>
    </message>
    <message>
        <source>every 4th week</source>
        <translation>jede 4. Woche</translation>
    </message>
    <message>
        <source>every 3rd week</source>
        <translation>jede 3. Woche</translation>
    </message>
    <message>
        <source>on from the last loading week</source>
        <translation>von der letzten Belastungswoche weiter</translation>
    </message>
    <message>
        <source>back to it first, the gentler one</source>
        <translation>erst zu ihr zurück, die sanftere Art</translation>
    </message>
    <message>
        <source>where the race asks for them</source>
        <translation>wo das Rennen sie verlangt</translation>
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
        <source>a week</source>
        <translation>je Woche</translation>
    </message>
    <message>
        <source>&amp;Cutback</source>
        <translation>&amp;Entlastung</translation>
    </message>
    <message>
        <source>Weeks &amp;after it grow</source>
        <translation>Wochen d&amp;anach wachsen</translation>
    </message>
    <message>
        <source>Downhi&amp;ll runs</source>
        <translation>Bergab&amp;läufe</translation>
    </message>
    <message>
        <source>&amp;Strength</source>
        <translation>K&amp;raft</translation>
    </message>
    <message>
        <source>Cr&amp;oss-training</source>
        <translation>Ausgleichs&amp;training</translation>
    </message>
    <message>
        <source>&amp;Fasted easy runs</source>
        <translation>Lockere Läufe n&amp;üchtern</translation>
    </message>
    <message>
        <source>H&amp;eat days</source>
        <translation>&amp;Hitzetage</translation>
    </message>
    <message>
        <source>Fasted runs and heat days: only after the questions on health came to no. Not under 18, pregnant, ill, injured, with diabetes, fainting or an eating disorder.</source>
        <translation>Nüchternläufe und Hitzetage: nur wenn alle Gesundheitsfragen mit Nein beantwortet sind. Nicht unter 18, schwanger, krank, verletzt, mit Diabetes, Ohnmachten oder einer Essstörung.</translation>
    </message>
    <message>
        <source>Back-to-bac&amp;ks</source>
        <translation>&amp;Doppeltage</translation>
    </message>
    <message>
        <source>&amp;Night runs</source>
        <translation>&amp;Nachtläufe</translation>
    </message>
    <message>
        <source>Mental &amp;rehearsal</source>
        <translation>&amp;Im Kopf durchgehen</translation>
    </message>
</context>
<context>
    <name>_Worries</name>
    <message>
        <source>I worry about</source>
        <translation>Ich sorge mich um</translation>
    </message>
    <message>
        <source>and this is done about it</source>
        <translation>und das wird dagegen getan</translation>
    </message>
    <message>
        <source>Worries and what is done about them</source>
        <translation>Sorgen und was dagegen getan wird</translation>
    </message>
    <message>
        <source>Written down, a worry is a thing to do: a call, a run in the dark, a spare lamp. What cannot be changed gets a line of what you do if it comes.</source>
        <translation>Aufgeschrieben wird eine Sorge zu etwas, das man tun kann: ein Anruf, ein Lauf im Dunkeln, eine Ersatzlampe. Was sich nicht ändern lässt, bekommt einen Satz, was du tust, wenn es kommt.</translation>
    </message>
    <message>
        <source>Fear that stays, nights without sleep for weeks, no joy in anything: that is for a doctor or therapist, not for a plan.</source>
        <translation>Angst, die bleibt, Wochen ohne Schlaf, an nichts Freude: das gehört zu einem Arzt oder Therapeuten, nicht in einen Plan.</translation>
    </message>
</context>
</TS>
