<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name></name>
    <message>
        <source>Start and finish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Finish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Build-up</source>
        <extracomment>Targets of links: the mend of a check, by its place, and a day for a session.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No sessions yet. Build-up menu, Build the block.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the race asks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>asked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Largest week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Longest run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ranges coaches use; no trial sets them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This plan is arithmetic on what you typed. It does not examine you.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} to go, {1} week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Race week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Distance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clay: over 10 % above the last loading week. A custom, weakly supported.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of last loading week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Longest, share</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>30 days before it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On feet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Climb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Practice carbs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Effort times minutes (Foster 1998). Compare only with your own weeks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>race week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} to go</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from {0}, to {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Practice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Missed. What is missed is not made up later.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Effort</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Climb, drop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carbs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every check holds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Checks that do not hold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} And once more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} And {1} times more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Checks it touches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} of {1} to go would hold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} of the race week would hold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}; H puts it there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Section</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arrive</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Window</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where 8 of 10 arrivals fall in 10,000 simulated races; an estimate of our own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} to {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} at {1}, {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Servings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fluid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sodium</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caffeine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Race day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No course yet. Drop a GPX file on the window.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Running time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Target, fixed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Target</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To this cutoff, leaving</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To this cutoff</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time in hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>So much later, every later cutoff is still met at planned speed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Forecast takes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At walking pace</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Makes it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave later, and a cutoff is missed even at planned speed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave by then and the rest can be walked in, only if you are well.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not from here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave by, to walk in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rest can be walked in from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air on your way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carry out of {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carbs, 15 % spare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fluid, 15 % spare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned per hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Glycogen at least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the gut at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fuel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Per hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the body at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sodium a litre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Energy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This week</source>
        <extracomment>Target of a link that starts an action, by its name in the action table.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark the sessions of this week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Locked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stays as it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it is for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Questions on health, before the first hard weeks</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Actions</name>
    <message>
        <source>I&amp;mport sessions from a calendar…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export course with tar&amp;gets as GPX…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export sessions for &amp;a calendar…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export all ta&amp;bles as CSV…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export pro&amp;file as PNG…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export profile as S&amp;VG…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Change session…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move with the arrow &amp;keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>T&amp;his week…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ho&amp;w it went…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark &amp;done as planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark &amp;missed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Neither done nor missed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Add a session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add from the shel&amp;f of kinds…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Remove session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>T&amp;ype a week back in…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cu&amp;t</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>C&amp;opy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Paste</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Repeat e&amp;very week…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lock or &amp;unlock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Swap the two selected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Swap w&amp;eek with the one before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Swap week with the ne&amp;xt one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Se&amp;lect all ahead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;I missed these days…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Build the block anew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Build-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Race day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Course</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>F&amp;uel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New from a &amp;course…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Type a course table…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Open project…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the &amp;demo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Save a copy…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Name this state…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go back to an &amp;earlier state…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write cards as &amp;PDF…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pr&amp;int cards…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Card for a loc&amp;k screen…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>C&amp;lose project</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Steps of this sitting…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Find anything…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ra&amp;ce and runner…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cre&amp;w and lists…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wishes and days &amp;away…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a &amp;tune-up race…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Races to &amp;pick from…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Ground at hand…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Health…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Notes…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open another &amp;course…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add an &amp;aid station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let the section follow the cur&amp;ve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let all &amp;sections follow the curve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Lock the section at its time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pace of &amp;target and runner…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Predict the &amp;finish…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit from my &amp;runs…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Weather and conditions…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Beside other rules…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shape of the &amp;course…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was &amp;mended…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change &amp;aid station…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut sections by aid &amp;stations</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut sections by climbs and &amp;descents</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut sections &amp;every so far…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;plit the section at the cursor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Join the section with the next</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Name the section…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What surfaces c&amp;ost…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fuel per &amp;hour…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Bottles, caffeine, allergies…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Food at &amp;stations…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;weat test…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Place fuel by the clock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Fill to target…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Repeat a food b&amp;y rule…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a fuel &amp;item</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Remove fuel item</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove &amp;all items</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Items keep their &amp;time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Items &amp;keep their place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When it goes wrong, and &amp;cautions…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put practice food on sessi&amp;ons</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What your &amp;gut has tolerated…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Tables</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ca&amp;rds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Both storeys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Build-&amp;up alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Race day &amp;alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Race by &amp;distance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Race by clo&amp;ck</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan view of t&amp;he course</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fewer &amp;weeks, larger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More weeks o&amp;ver the same width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All weeks i&amp;n view</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Col&amp;ours of the system</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dar&amp;k</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Text lar&amp;ger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Text s&amp;maller</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sto&amp;p or allow motion</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kilom&amp;etres and metres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Miles and &amp;feet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;What is this?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Point at what to explain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Search the &amp;help…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When to &amp;stop and get help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;About Ultraplanner</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Ask</name>
    <message>
        <source>Open a course</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>GPX courses (*.gpx *.gpx.gz);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>GPX recordings (*.gpx *.gpx.gz);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit from recorded runs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a project</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ultraplanner projects (*.ultraplan);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the project in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the cards to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the picture to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Calendars (*.ics);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Import sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export to</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>AtCursor</name>
    <message>
        <source>longest {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>climb {0}, drop {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} practice carbs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>twilight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dark</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>AwayRows</name>
    <message>
        <source>Days away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Travel, holidays, shifts: first and last day, minutes free on each, why.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add da&amp;ys away</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BesideTable</name>
    <message>
        <source>Beside other rules</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Target and forecast by race time; the others earlier (-) or later (+) than the target, all made to finish with it. Last line: the finish a rule names by itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Section to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Target</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Forecast</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Finish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Finish by itself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Splits beside other rules</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Block</name>
    <message>
        <source>Too little running is entered to grow from; the build-up starts at {0} a week and a run of {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The race is too near to build anything; these weeks only ease into it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Volume stops at {0} a week of the {1} asked: the days given hold no more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The build-up starts at {0} a week, under the {1} run now: the free time and the longest run allow no more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Volume reaches {0} a week of the {1} asked: the ramp allows no more by the race.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The longest run stops at {0} of the {1} asked: it grows by 10 % at a time and the long runs before it keep to about half of their week.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The longest run stops at {0} of the {1} asked: its day has {2} free.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no rehearsal run: no long run fits three to five weeks before the race.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no downhill run: no day lies far enough from the long run. Seek descents on that one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The long runs climb as the race does and nothing at hand gives that: travel for the longest ones, use stand-in sessions for the others.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A long flat race wears out the quads in its last third too; downhill runs can be wished for (common practice, no source).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The taper cuts the daily mean by {0}, outside 41 to 60 %: the days allow no other.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The gut needs {0} weeks of practice to take {1}; there are fewer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A tune-up race was left out: it lies outside the build-up, in the week before the race or within two weeks of another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A tune-up race of {0} is over 10 % longer than the longest run before it ({1}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A week of {0} is nearly all tune-up race ({1}); the ramp gives way to it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} of the {1} days with time to run hold one: weeks of this size are shared by fewer, longer runs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A cutback comes to {0} of the last loading week, outside 60 to 80 %: its days allow no other.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A locked run of {0} is over 10 % longer than the longest run before it ({1}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A locked session makes two hard days meet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A week comes to {0} by a locked session; the ramp allows 10 % over {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} of {1} strength sessions found a day: the others would lie beside hard or very long runs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} of {1} sessions of cross-training found a day: the others are run on or kept free.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The race needs a distance and a finish time above zero.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The race lies before the first day of the build-up; set a later race date.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The runner needs an easy pace before a build-up is made.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No day has 20 minutes free for running; give the runner at least one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A cutback comes every 3rd or every 4th week.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the race asks needs {0} on Mondays; {1} are free.</source>
        <extracomment>Monday to Sunday.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the race asks needs {0} on Tuesdays; {1} are free.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the race asks needs {0} on Wednesdays; {1} are free.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the race asks needs {0} on Thursdays; {1} are free.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the race asks needs {0} on Fridays; {1} are free.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the race asks needs {0} on Saturdays; {1} are free.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the race asks needs {0} on Sundays; {1} are free.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BlockDeeds</name>
    <message>
        <source>Building the block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The new block is ready.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looking for a better block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A better block is there: greatest week {0}, longest run {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The search was stopped by its time limit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By what the search counts, none is better by more than {0}.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BuildUp</name>
    <message>
        <source>Build-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the build-up</source>
        <extracomment>The actions a context menu offers, by its name: the window puts them in.</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>BuildUpDeeds</name>
    <message>
        <source>Tiles settle and changed figures are marked.</source>
        <extracomment>So many points of a loop are kept.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing moves by itself any more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Select two sessions first: click one, Ctrl and click one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looking for ways to mend the build-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The plan has changed meanwhile; ask again for ways to mend it.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Calibration</name>
    <message>
        <source>Match the screen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay a bank card on the outline and move the slider, or use the arrow keys, until both are the same size. Cards are then shown as large as they are printed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Size of the outline</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CandidateForm</name>
    <message>
        <source>&amp;Keep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the race is called</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One cutoff a line: distance, race time, climb until there if known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>30 km; 6 h; 1200 m</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Anything worth remembering</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>D&amp;istance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Climb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>D&amp;rop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Time limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut&amp;offs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not&amp;e</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Candidates</name>
    <message>
        <source>This race lies in the past.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weeks to spare: {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weeks too few for all it asks: {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No cutoffs are entered.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The tightest cutoff is at {0}, with {1} in hand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cutoff at {0} is likely to be missed by {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From {0} to {1} the cutoffs ask {2} of level ground; {3} is likely. Time in hand from before must last.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The race needs a name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” cannot be read; a cutoff is typed as 30 km; 6 h; 1200 m.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CandidatesPage</name>
    <message>
        <source>Races to pick from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No race yet. Add those you think of: day, distance, climb, drop and cutoffs are enough to see whether there is time, and what they ask.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Add a race…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove {0}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CardChoice</name>
    <message>
        <source>Add a card</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CardNames</name>
    <message>
        <source>Pace card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fuel card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Crew sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bag labels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To buy and to pack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hard stretches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who I am</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wall plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Week sheets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flat card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wrist strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Folded once, pace and fuel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Concertina, a leg to each fold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As in the window</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kilometres and metres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Miles and feet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Profile and light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Climb and drop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pace</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stops</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time in hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>30 min late</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last arrival</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to do there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fluid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sodium</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caffeine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carbs to carry or practise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When it goes wrong</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Way there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to hand over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to ask</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When to worry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Red flags</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Way home</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Words to myself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Medical lines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If I stop at …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lines to write on</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CardRow</name>
    <message>
        <source>Width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Own size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As in the window</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How often it is printed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Units of the card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Language of its numbers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Form of the card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Size of the card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copies, units, language, what is on it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} upright, {1} × {2} mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} lying, {1} × {2} mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Units</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Numbers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On it</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Cards</name>
    <message>
        <source>Finish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no course yet. Open a GPX file, then make the cards.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} of {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>continued on {0} of {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}, packs: {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whoever was up all night does not drive.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Crew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No aid station lets a crew in. Mark those that do.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>emergency</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who is who</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} – {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>way there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>who</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hand over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ask</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stop {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leave by {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cutoff {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before {0} no news is good news; after {1} ask the race office.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before {0} no news is good news; after {1} ask the station.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} drives.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody is named yet who drives.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The way home</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fuel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>eat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No food is placed yet. Place some on the race day lanes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sick: walk, cool down, sip, then 20 g/h. Hot: wet head and arms. Empty: two sweets, water, walk. Puffy, headache: stop drinking, salt. Nothing stays down, confused: get help.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start → {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>→ {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} sodium</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} caffeine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>carry out {0} of carbs, {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>take {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>BAG</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>CREW</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} at {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 × {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whole race</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A card of {0} x {1} mm is larger than the paper. Choose larger or turned paper, or a smaller card.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A card of {0} x {1} mm is too small to be legible. Choose a larger one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No card is chosen. Add a card, then print.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>start {0} · target {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leave by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>last</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cutoff</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>30 late</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>climb · drop&#xa0;{0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This plan misses the cutoff at {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>30 min late misses the cutoff at {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The course has no heights: paced as level ground.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>last: every cutoff from here on is still met at planned speed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No aid station takes a drop bag. Mark those that do.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To do there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In this bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>number {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mandatory kit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To pack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On me at the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To buy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To buy and to pack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No mandatory kit is put down yet. Look into the race rules.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bag for {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bag for the finish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Anywhere</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To say to myself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When it gets hard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is put down yet. Write in the ledger or under Crew and lists what will help.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>then {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} → {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Medical</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>born {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who I am</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name and whom to call are not put down yet: fill in Crew and lists.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>race emergency</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>my people</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Call</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If I stop at {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>way out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fetched by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>takes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>call</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The printer takes no job. Choose another, or write a PDF.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The printer stopped taking the job. See that it is there, or write a PDF.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shoes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>socks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lamp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>poles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sleep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>crew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>change {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pacer from here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drink</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>food</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>salt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fasted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>heat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>missed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>uneasy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bad</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cutback</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>taper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>race</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no build-up yet. Build the block, then print it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to go</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heavy edge: hard day. Tick what is done. Distances of a week are without the race.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} to go</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Race week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to eat: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in the head: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>effort {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>climb {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drop {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>effort</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>carbs g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CardsDesk</name>
    <message>
        <source>Not written.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} cards.pdf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print cards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a card to print.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}: the smallest legible type.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}: {1} pages.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write cards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} lock screen.png</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write a picture</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Caution</name>
    <message>
        <source>Amounts are a starting point to practise in training. Drink to thirst. Stop and get help if you are confused, faint, swollen, or keep vomiting. Race rules and medical staff go first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drinking more than you sweat can kill. Weight gain, puffy hands, headache or vomiting: no more plain water, go to medical staff at once.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No ibuprofen or similar painkillers before or during the race: they may harm the kidneys. Pain that needs them is a reason to stop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caffeine limits are for healthy adults. Pregnant, under 18, with heart trouble, high blood pressure, anxiety or stimulant medicines: ask a doctor first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dizzy, confused, unsteady or shivering in the heat: stop, call for help and get into cold water first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With diabetes, kidney, heart or blood pressure trouble, or on regular medicines, agree the plan with your doctor before you use it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The table of foods cannot know every packet: read the label. Some foods set off an allergy only when one runs after them; carry what you were prescribed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Many guts take fructose badly in large amounts. With hereditary fructose intolerance: no fructose, table sugar, honey or fruit at all.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sick: slow down, cool down, small sips. Half an hour of nothing but mouthfuls, then 15 to 30 g/h of what you like, liquid or sweets. No fat, no big drinks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hot: walk the climbs, wet head and arms at every stream, ice if there is any, eat less at a time. Confused or unsteady: stop, call help, cold water first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Empty: walk, take two sweets or half a gel and water now, again in ten minutes, then back to the plan. It passes in twenty to thirty minutes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Puffy hands, headache, gaining weight, clear urine: stop drinking. Something salty if awake. Confused or vomiting: medical staff at once, no water.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ask a doctor first with chest pain, fainting, unusual breathlessness or palpitations, with heart, kidney or metabolic disease, when pregnant, or after long inactivity.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop now and call for help: chest pain, fainting, confusion, a fit, severe breathlessness, hot and confused, froth when coughing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>See a doctor the same day: dark urine, vomiting while gaining weight, puffy hands, headache after much drinking, black stool, a swollen calf.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pain on one spot of bone, worse with load or at night, or in groin, hip or sacrum: no running until it has been seen.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No training with fever, chest symptoms or aches all over. No driving after a night without sleep.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Checks</name>
    <message>
        <source>Custom, weakly supported: a trial in 532 beginners found no benefit of the 10 % limit (Buist et al. 2008, Am J Sports Med 36:33).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supported by observation of 5205 runners, no trial: Frandsen et al. 2025, Br J Sports Med 59:1203.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supported in shorter events: Bosquet et al. 2007, Med Sci Sports Exerc 39:1358; here the mean over the taper days, race day left out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That earlier descents protect is supported (Bontemps et al. 2020, Sports Med 50:2083); the spacing is our own choice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Supported over two weeks in runners (Costa et al. 2017, Appl Physiol Nutr Metab 42:547); the limit is our own choice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Muscle changes are shown, faster running is not (Van Proeyen et al. 2011, J Appl Physiol 110:236; Impey et al. 2018, Sports Med 48:1031); the limits are our own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Common practice, no source.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>climb match</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>surface match</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dark hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spare weeks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fasted runs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last {0} loading weeks climb {1}, the race {2}; {3} of that is meant.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where it is known, the ground of the last {0} weeks matches the race&apos;s by {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Runs in the dark: {0}, {1} in all, for {2} of dark in the race; {3} or more are meant. Take a spare lamp, tell someone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weeks to spare for illness and life: {0}; {1} or more are meant.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No week to spare. Weeks missing for all that is asked: {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fasted runs are only for those with nothing to ask a doctor about.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fasted runs that are not easy, over 90 minutes, in the heat, in race week or on two days running: {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fasted runs, all easy: {0}. Carry 25 g of sugar and eat within the hour after.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>single run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hard days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>downhill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tune-up race</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hours of one run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drop of one run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>late descent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is within 10 % of the longest run of the 30 days before, {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is {2} longer than any run of the 30 days before ({1}); the limit is 10 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} on feet is over 20 % more than any long run of the 30 days before ({1}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A drop of {0} is over a quarter more than any of the 30 days before ({1}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The greatest late drop is {0}, {1} of the race&apos;s {2}; one session of {3} or more is meant.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two hard sessions fall on one day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two hard days meet; put an easy day between them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No two hard days meet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The race drops {0} and there is no downhill run to harden the quads.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} days lie between two downhill runs; up to 21 keep the legs used to them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last downhill run is {0} days before the race; 10 to 21 are meant.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The tune-up race is {0} days before the race; at least {1} are meant.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The tune-up race of {0} is {1} of the goal time; up to half is meant.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing hard comes in the {0} days after the tune-up race.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A hard day comes {0} days after the tune-up race; {1} easy days are meant.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ramp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cutback</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>long-run share</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>taper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>practice carbs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what the race asks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is within 10 % of the last loading week&apos;s {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is {1} above the last loading week&apos;s {2}; the ramp allows 10 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} on feet against the last loading week&apos;s {2}: {1}; the ramp allows 10 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} flat-equivalent against the last loading week&apos;s {2}: {1}; the ramp allows 10 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is {1} above the last loading week&apos;s {2}; right after a cutback no growth is wished.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is {1} of the last loading week&apos;s {2}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is {1} of the last loading week&apos;s {2}; a cutback takes 60 to 80 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} loading weeks in a row: a cutback is due every {1} weeks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The longest run of {0} is {1} of the week&apos;s {2}; with {4} runs at this level up to {3} is meant.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The {0} days before the race cut the daily mean by {1} against a week of {2}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Practice goes up to {0} from {1}; the gut is given 10 g/h more a week at most.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last weeks practise up to {0}; the race plan takes {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The greatest week is {0}; the race asks for {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The longest run is {0}; the race asks for {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Our own choice.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>10,000 simulated races about the forecast; an estimate of our own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bands for distance races: American College of Sports Medicine 2007, Med Sci Sports Exerc 39:556 (read in secondary sources). The value is an estimate that assumes sun and a light wind.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is made in time on about {1} of {2} days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The forecast misses the cutoff at {0} by {1}; the target is earlier.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The target misses the cutoff at {0} by {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tightest cutoff, by the forecast: {0}, {1} to spare.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tightest cutoff, by the target: {0}, {1} to spare.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dark for {0}, and the lamp burns {1}: carry cells or a second lamp.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dark for {0} of the {1} the lamp burns: little is left for cold or delay.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dark for {0}, the lamp burns {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Very high heat near {0}, WBGT about {1}: at this races are stopped; ask whether to start.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>High heat near {0}, WBGT about {1}: slow down, cool down, and do not start if you are not well.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moderate heat near {0}, WBGT about {1}: slower if you take heat badly.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ChoicesForm</name>
    <message>
        <source>Ways to mend the build-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When to &amp;stop and get help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Put it in</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ClimbLane</name>
    <message>
        <source>Climb, drop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} a week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>climb {0}, drop {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}, before {1} and {2}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ClockField</name>
    <message>
        <source>From 00:00 to 23:59, on the clock at the race</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ConditionsForm</name>
    <message>
        <source>Weather and conditions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coldest on your way: {0} at {1}, {2}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hottest: {0} at {1}, {2}; WBGT about {3}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weather of the day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is a &amp;forecast</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Coldest in the valley</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>W&amp;armest in the valley</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Humidity at the warmest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>H&amp;eight of that place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coldest in the valley</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warmest in the valley</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hour of the coldest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hour of the warmest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reckon with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>takes in all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A&amp;ltitude</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heat, b&amp;y day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Night</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Rough descents</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The dark ta&amp;kes, an estimate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lam&amp;p burns, all cells</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} dark</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Course</name>
    <message>
        <source>The file has no heights: climb and drop are unknown, all counts as level.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file has no heights but 0: climb and drop are unknown, all counts as level.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height missing at {0} of {1} points: taken from the points about them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height 0 put in for want of one at {0} of {1} points: taken from those about them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heights that jump up or down and back were left out, at {0} of {1} points.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The heights look like feet, up to {0}: they were taken as such and made metres.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The points lie {0} apart on average: distance, climb and drop come out short.</source>
        <extracomment>A point is astray if the line jumps so far to it and back, and so much further than usual. At the very start or end, where there is no way back, it is so far.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Points far off the line were left out: {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Between pieces that do not quite meet, {0} in all were bridged straight.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The line is broken: {0} in all are missing and not counted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} no longer holds the line that was chosen. Open it anew.</source>
        <extracomment>A line is there twice if so much of one lies so near the other and goes the same way. Of a track and a route the track is followed, unless it is less than so much of the route. Races of one event from one place share so much of their ground; loops from a base do not.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file holds a route as well; the course follows the track.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file holds a short track as well; the course follows the route.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lines over ground another line already covers were left out: {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shorter ways from the same start to the same finish were left out: {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pieces were put in the order in which they meet, not the file&apos;s.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} routes were joined in the order of the file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} tracks were joined in the order of the file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} tracks were joined.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} holds no track and no route to run along. Export it with its track.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row {0}: the cutoff would come {1} after the one before or the start. Check it, its weekday and the start.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row {0}: the cutoff comes before an earlier one. Check both.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row {0}: a cutoff lies after the start and within 240 hours. Mend it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The course needs its finish: type a row with the whole distance.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The table has more than {0} rows. Keep the aid stations alone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row {0} has no distance. Type how far it is from the start.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row {0} lies no further than the row before it. Distances count from the start.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row {0} lies less than {1} after the row before it. Join the two.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row {0} lies {1} from the start, further than any race. Check its unit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row {0}: climb and drop are metres or feet, none below 0. Mend it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row {0}: no path lies at a height of {1}. Check its unit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row {0}: a stop takes 0 to 24 hours. Mend it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The table has no climb and no drop: all counts as level.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row {0}: {1} of climb and drop on {2} is steeper than any path. Check the units and the distance.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The table has no drop: each leg goes down as far as it goes up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The table has no climb: each leg goes up as far as it goes down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Climb and drop are taken from the heights of the places alone: what goes up and down between them is not in it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Legs without climb and drop count as level: {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The heights of the places do not fit climb and drop, by up to {0}: climb and drop are kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Climb and drop add up to a height of {0}, where no path is. Check both, in metres or feet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The course is drawn from a table: its hills are schematic and its place is not known. Light is that of the equator.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The course is drawn from a table: its line and hills are schematic. Light is computed for {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start</source>
        <extracomment>Races are described in these as well as in the user&apos;s language and in English.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No column of distances is found. Give the columns heads: name, distance, climb, drop, cutoff.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are heads but no rows. Paste the rows as well.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last row, {0}, is taken for the finish.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line {0} has more cells than there are heads. Part cells with tabs or semicolons, not with the decimal sign.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line {0}: “{1}” is not a distance. Type it as {2}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line {0}: “{1}” is not a height. Type it as {2}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The distances do not rise, so each is taken for one leg.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line {0}: “{1}” is no cutoff. Type it as Sat 20:30, 20:30 or 14 h 30 of race time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line {0}: “{1}” is not a stop. Type minutes, or 1 h 30.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The line in {0} leads nowhere. Export the whole course.</source>
        <extracomment>How much of the time to read a course goes into parsing its file. What programs call a course nobody named, with a number or not.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The line in {0} is {1} long, more than any race. Export only the course.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is written in an encoding that cannot be read. Export it as UTF-8.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is damaged or cut off at line {1}. Export or download it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is not a GPX file. Export the course as GPX.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} has a point without latitude or longitude at line {1}. Export it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} has a point that is nowhere on the globe at line {1}. Mend or remove that point.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} has a comma in the number {2} at line {1}; GPX wants a point. Export it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} has “{2}” at line {1} where a number belongs. Export it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is built as no GPX file needs to be (line {1}), so it is not read. Export the course again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} holds more than 1,000,000 points. Export it with fewer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} declares a document type or entities, which GPX never needs and which can do harm. Export the course again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} has no times, so nobody can tell how it was run. Export the recording.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The times in {0} come of drawing the line, not of running it. Open it as a course, or export the recording.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is not a name a file can have. Choose another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is larger than 256 MB. Export the course again with fewer points.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is empty. Export or download it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} cannot be found. Look where it lies and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is not a file. Choose a GPX file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You are not allowed to read {0}. Change its permissions or copy it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} cannot be read ({1}). Copy it elsewhere and try again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is packed and damaged. Export or download it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is too large for the table of a course. Keep its rows alone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is not a text file. Save the table as CSV.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The table is empty. Paste it with its heads.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is too large for the table of a course. Paste only its rows and heads.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} waypoints are too many for aid stations: none was taken over.</source>
        <extracomment>What the type of a waypoint says that is no aid station.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waypoints more than {1} off the line were left out: {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Waypoints less than {1} after another were left out: {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mended in the file: {0}. Each can be undone in Course, What was mended.</source>
        <extracomment>Takes a course that was read, with its profile.</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Course words</name>
    <message>
        <source>unknown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>road</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gravel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>smooth trail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>grass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>technical trail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>snow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>food</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drop bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>crew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>medical</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pass through</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>eat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sleep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>out by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shoes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>socks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lamp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>poles</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CourseDeeds</name>
    <message>
        <source>There is no aid station yet. Add one first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looking through {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The course is read the other way.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CourseForm</name>
    <message>
        <source>Shape of the course</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Official distance, climb and drop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trim start and finish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run it the other way round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run it in laps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go out and back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put another file behind it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to do</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lap {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take asks for the file of the next leg.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not so.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Then {0} with climb {1} and drop {2}; now {3}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured on the line: {0}; climb {1}, drop {2} as they count now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Official &amp;distance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Official &amp;climb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Official d&amp;rop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cutoffs are dropped: they belong to the way it was.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Laps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Aid stations come again in every lap.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back the same way from the finish to the start.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The next leg begins where this course ends.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Take it</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CourseTableForm</name>
    <message>
        <source>Course from a table</source>
        <extracomment>What the help says of each column.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the race is called</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Places of the course</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Finish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The profile appears here as you type.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No course yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>climb {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drop {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 aid station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} aid stations</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hills and line are schematic: as long and as high as typed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One row to each place with its distance from the start; the last is the finish. Type it, or paste a table from a spreadsheet or a web page, heads and all.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+V</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl+Z</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Add a row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a row under this one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove the selected rows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Paste</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paste a table or cells</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take back the last change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Go on…</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Crash</name>
    <message>
        <source>A fault in the program stopped this; your work is kept. The details are in {0}.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>CrewForm</name>
    <message>
        <source>Crew and lists</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who I am</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Crew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the stations</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kit and lists</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hard stretches</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DayGrid</name>
    <message>
        <source>Day grid</source>
        <extracomment>The shelf of kinds is asked for.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>{0}; and %n more selected</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Picked up. {0}. Enter puts it down, Esc puts it back.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Deeds</name>
    <message>
        <source>The copy was not written</source>
        <extracomment>Files that hold a table and no line.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}, {1} aid stations proposed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, climb {0}, drop {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, no heights: paced as flat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The other course is read.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DeskPanel</name>
    <message>
        <source>Backs behind fronts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Match…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write PDF…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For a lock screen…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cancel writing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Writing, {0} %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each card by itself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Several on {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In grey</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Under a red lamp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay a bank card on the screen so that true size is true</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>True size</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DistanceField</name>
    <message>
        <source>From {0} to {1}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DistanceLane</name>
    <message>
        <source>Distance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} a week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}, before {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}, planned {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}; {1} of the last loading week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} + race</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DoneBox</name>
    <message>
        <source>What was done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not marked yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Missed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not noted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How it &amp;went</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Distance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Climb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Effort</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carbs eaten</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>G&amp;ut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As planned.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DoneForm</name>
    <message>
        <source>{0}, {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keep</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>DurationField</name>
    <message>
        <source>none</source>
        <extracomment>The day of the month, after the weekday.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From {0} to {1}, as 20 h 16 or 20:16</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Edge</name>
    <message>
        <source>Drag to size the lane above; a double click undoes it</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Edit</name>
    <message>
        <source>Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the better block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The build-up has changed since the search began; build it again to search anew.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This session is done; it stays on the day it was run.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The race itself cannot be removed from the build-up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark session done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark session missed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Build the block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A session&apos;s distance lies between 0 and 1,000 km.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A session&apos;s time lies between 0 and 240 hours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A session&apos;s climb and drop lie between 0 and 50,000 m.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Effort lies between 0 and 10.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Practice carbohydrate lies between 0 and 120 g/h.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A session starts between 00:00 and 23:59.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Servings lie above 0 and at most 50.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carbohydrate eaten lies between 0 and 20,000 g.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A part is run 1 to 500 times, its gradient lies within 100 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A session lies between the years {0} and {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The race stays on its day; change the race date instead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A project has one race; others in it are tune-up races.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This session is locked; unlock it first to move it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paste sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Repeat weekly</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A session is repeated 1 to 52 times.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The race comes before the next week; repeat none.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lengthen session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The race is as long as its course; change that instead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only a session that lies ahead can be drawn longer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A session is longer than nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Swap sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Swap weeks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The race week stays the last one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A week that is done in part stays in its place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lock or unlock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move race and build-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mend after missed days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is more than ten years away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose cards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are at most {0} cards.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A card measures between {0} and {1} mm a side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A card is printed between 1 and {0} times.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only a pace card can be worn or folded.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That does not stand on this card.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change several things</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paste into a table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Import sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set official figures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Describe section</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set what surfaces cost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move surface</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pin aid station or let it go</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no course yet. Open a GPX file first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move section end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A section ends between the start and the finish.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The finish stays where the course ends.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set section target</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Free all section targets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write section note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change aid station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add aid station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove aid station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open course</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The places of this course are not in order; open its file again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A surface costs between {0} and {1} times firm ground.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Speed downhill lies between {0} and {1} times that on firm ground.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The official distance is the length of the course or none.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Official climb and drop lie between 0 and 100,000 m.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A section takes between 1 second and 240 hours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An aid station needs a name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A stop takes between 0 and 24 hours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A cutoff lies after the start and within 240 hours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The stop is longer than the cutoff to leave allows. Shorten the stop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} (lap {1})</source>
        <extracomment>OWN: stretched or squeezed further than that, a figure is mistyped or the line another one. OWN: as far off as heights in feet that nobody noticed, and a little more.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} (way back)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trim course</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trim the course between its start and its finish.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave at least 1 km of the course.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reverse course, cutoffs dropped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run course in laps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A course has between 1 and 100 laps.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The line ends {0} from its start, so it is no lap. Go out and back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go out and back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put another leg behind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set official distance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A course is at most 2,000 km long.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set official climb and drop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take heights as feet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The line has no heights to be in feet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The heights were made metres already when it was read.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pin aid station to its distance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read course another way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That makes more than 2,000 km or 1,000,000 points. Make it shorter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is too far from the {1} of the line. Check the figure and its unit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Between {0} and {1} the line would be stretched or squeezed more than threefold. Check the distances.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move fuel item</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change fuel item</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add fuel item</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove fuel item</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy fuel item</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place fuel by the clock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One item cannot stand at two times; place them anew.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Repeat a food by rule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fill fuel to target</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep clock or place of fuel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove all fuel items</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set fuel per hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carbohydrate lies between 0 and 120 g/h; more than that has not been studied.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sodium lies between 0 and 2000 mg/h.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The first item comes within 6 hours, then one every 5 minutes to 3 hours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change food</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A food needs a name and figures between 0 and 5000.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There cannot be more fructose than carbohydrate in it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A pack holds more than no servings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove food</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fluid lies between 0 and 1000 mL/h, more only after a sweat test that shows it; more than you sweat is dangerous.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A fuel item lies between the start and 240 hours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A fuel item is taken on the course.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set foods at a station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no course and so no aid station.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set bottles and spare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Up to 8 bottles, each of 100 to 3000 mL, can be carried.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is spare lies between 0 and 100 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set caffeine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set glycogen at the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>VO2max lies between 20 and 95 mL/kg/min.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leg muscle is 14 to 27 % of the body and holds 5 to 36 g of glycogen per kg.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The liver holds up to 160 g of glycogen.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the days before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loading takes up to 4 days of 5 to 12 g/kg each.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last meal is one to four hours before the start.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More than 200 mg of caffeine at once is not safe.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set allergies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set sweat tests</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A hundred sweat tests are enough.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set fuel habits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set food at stations</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put practice food on sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Body mass lies between 30 and 250 kg.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Up to 10 L are drunk and up to 5 L passed on one run.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A sweat test lasts a quarter of an hour to six hours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That would be a sweat rate outside 0.1 to 3.5 L/h; check the figures.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change crew and lists</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type a week back in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A line has at most {0} letters. Make two of it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A list has at most {0} lines.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shape the target</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The target keeps between {0} and {1} of the forecast&apos;s fade.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set conditions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type in past runs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use predicted finish as goal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take fitted pace</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set pace</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A lamp burns between 0 and {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coldest hour cannot be warmer than the warmest; give both between {0} and {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Humidity lies between {0} and {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The place of the forecast lies between {0} and {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coldest and the warmest hour are hours of one day, 0 to 24, and lie apart.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set first day of the week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A week begins on one of seven days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go back to an earlier state</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change race</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change race and runner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Body weight lies between {0} and {1} kg.</source>
        <extracomment>Lowest and highest value of each figure of a runner; those of the pacing model as wide as it can be computed.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A usual week lies between {0} and {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The longest recent run lies between {0} and {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Easy pace lies between {1} and {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the gut takes lies between {0} and {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The fade lies between {0} and {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The fade sets in between {0} and {1} hours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The uphill share lies between {0} and {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The loss by night lies between {0} and {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hours of a usual week lie between {0} and {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The longest run takes between {0} and {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The longest run drops between {0} and {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Easy climbing lies between {0} and {1} an hour.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Speed downhill lies between {0} and {1} of the usual.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The finish scatters by {0} to {1} of its time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Walking tired is done at {0} to {1} of the speed of a fresh hiker.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The race lies between the years {0} and {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The finish time lies between 10 minutes and 240 hours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The time limit lies between 10 minutes and 240 hours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The long run lies on one of seven days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The time free for running lies between 0 and 24 hours a day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At most {0} past runs are kept; take the latest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A past run needs a distance above zero, a climb from 0 up and a time of a minute or more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut sections anew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sections are cut every 0.5 to 500 km. Choose between.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That makes more than 500 sections. Cut them longer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Split section</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Split a section at least 100 m from where it begins and ends.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Join sections</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last section has none after it to be joined with.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A section ends where there is a cutoff. Take the cutoff at {0} away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rename section</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The name of a section has at most 60 letters.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paint surface</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A surface lies between the start and the finish.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A stretch of surface is 10 m or longer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set surface factors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give both factors of a surface, or neither.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Answer on health</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change wishes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change days away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add ground at hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change ground at hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove ground at hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add candidate race</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change candidate race</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove candidate race</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mend the build-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A mend changes open sessions only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A cutback comes every 3rd or every 4th week.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strength comes up to 4 times a week, cross-training up to 5 times.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strength takes 10 minutes to 2 hours, cross-training up to 4 hours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are two fasted runs a week at most.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A candidate race lies between the years {0} and {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A race is between 1 and 1,000 km long.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A race&apos;s climb and drop lie between 0 and 50,000 m.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A race&apos;s limit lies between 10 minutes and 240 hours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A place lies within 90 degrees of latitude and 180 of longitude.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no time zone {0}; choose one from the list.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That ground is no longer in this project.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That candidate race is no longer in this project.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Easy climbing is at least 100 m an hour; 0 if unknown.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A time of day lies between 00:00 and 23:59.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is room for {0} of these; remove one first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days away end on or after their first day and leave 0 to 24 hours a day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fasted runs and heat days are for those with nothing to ask a doctor about; answer the questions on health first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A treadmill&apos;s gradients lie between -30 and 60 %, the least one first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Climb and drop of a place lie between 0 and 5,000 m.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A place to train is up to 100 km long.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A hill, stairs or a ramp needs a length and a height, the height the smaller one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A recorded loop needs as many heights as distances, the distances rising.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cutoffs rise with their places, which lie between start and finish, and end by the limit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New project</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Export</name>
    <message>
        <source>{0} is no calendar that can be read. Export it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} has too many events. Export fewer months.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left out: {0}. {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is done or locked and stays.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move {0} from {1} to {2}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add {0} on {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It repeats; enter its days one by one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It has no day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It names no kind of session, such as “long run”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned: {0}, effort {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Climb {0}, drop {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Practise {0} of carbohydrate.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done: {0} in {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start {0} where the race is, target {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Target arrival {0}, {1} after the start.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Finish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End of section {0}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ExportDeeds</name>
    <message>
        <source>{0} race.gpx</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} sessions.ics</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} tables.zip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} profile.png</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} profile.svg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That did not work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Writing {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written: {0}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FigureBox</name>
    <message>
        <source>Anything worth remembering</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FillForm</name>
    <message>
        <source>Fill fuel to target</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ca&amp;ffeine may be used, late in the race</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Foods to fill with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Work it out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Replaces all items by a choice that keeps {0}, {1} of fluid and {2} of sodium an hour, changes the taste with the hours and carries little far. Food on a table is taken there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With these foods</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Take it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on a table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on no table yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} items: {1}, {2} of fluid and {3} of sodium an hour.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every band is met on every leg.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>And {0} more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A good choice; whether the best was not settled in time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tick foods you may eat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Working it out…</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FilterField</name>
    <message>
        <source>Filter rows (Ctrl+F)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show all rows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the rows that hold these words in any cell; Esc shows all again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} of {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} rows are shown</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Finder</name>
    <message>
        <source>Find anything</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find anything: type words of it in any order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Found</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n found. Enter does it or goes there, Esc closes.</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing holds all these words. Take one away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not now: {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Setting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Section</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Aid station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fuel item</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Food</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Project</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open a project first</source>
        <extracomment>When an action can be used that acts on a session. Why an action cannot be done, by when it can.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>needs a course</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose a session first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose a session that is not done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose a session that was not missed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose a session that was done or missed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose a session; the race stays</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose a fuel item first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose a section first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Colours: {0}</source>
        <extracomment>Actions that set something: what, and the setting and value that make one the present one.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Size of all text: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Units: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Race axis: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>strains</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>breaks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Redo {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no such step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>race week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} to go</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Finish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} to {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}, after {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} carbs, {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>missed</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FitDeeds</name>
    <message>
        <source>Reading recordings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fitting from my runs</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FitForm</name>
    <message>
        <source>Fit from my runs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fitted figures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Runs fitted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left out: {0}. {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Use these figures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Figure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Default</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From my runs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give or take</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fade over the hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Uphill, of the published surcharge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Downhill, of the usual speed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too little to tell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These figures could not be tried on a run left out: the other runs are too few. Choose several long runs of different days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On runs left out of the fit the fitted figures miss a tenth of the run by {0} of its time, the defaults by {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The defaults do better; keep them unless you know why.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Distance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Climb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moving</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Standing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Error left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Error of defaults</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FluidLane</name>
    <message>
        <source>Fluid, sodium</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mL/h, mg/h</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fluid appears with a course.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} of fluid and {1} of sodium in the hour around</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; about {0} of caffeine in the body</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Food table</name>
    <message>
        <source>The food table has no column {0}; add it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line {0} of the food table repeats the key {1}; choose another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line {0} of the food table: {1} cannot be read; figures lie between 0 and 5000.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FootLane</name>
    <message>
        <source>clock</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Forms</name>
    <message>
        <source>A tune-up race</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A race to pick from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A place to train</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Fuel</name>
    <message>
        <source>Own rule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Common practice, no source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Buy what the shopping list says; weigh and label nothing you have not tried.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Eat as usual. No new foods from now on, and no new supplements.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carbohydrate loading: {0} through the day, about {1} at each of {2} meals; what you know, little fibre. A heavier body is stored water, and normal.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drink with meals and to thirst; pale urine is enough.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last supper: rice, pasta or potatoes you know, little fat and fibre, no alcohol.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mix nothing yet; put breakfast, bottles and the first hours of food ready.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If you are up: drink {0} to {1} in sips by {2} before the start.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last meal: {0} of carbohydrate you have practised, little fat and fibre.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caffeine: {0}; it counts toward the {1} of the day, no more than {2} at once.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A mouthful of drink or a sweet if you like, no more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start. The first food comes after {0}, by the clock.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Own rule, after Costa et al. 2017, Appl Physiol Nutr Metab 42:547-557</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The items give {0}, inside the target of {1} to {2}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The items give {0}, below the target of {1} to {2}; add some or ask for less.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The items give {0}, above the target of {1} to {2}; take some out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is near the {1} your gut is known to take.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is well above the {1} your gut is known to take; practise for about {2} weeks first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} in one hour is more than has been studied ({1}); spread it or take less.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is more than most guts take even when trained; above {1} expect trouble.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} of it is glucose, more than is absorbed ({1}); swap some for a mix with fructose.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} takes a trained gut, and glucose with fructose; take less if you feel sick.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} can be absorbed from any kind of sugar.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For {0} the advice is {1} to {2}; the plan has {3}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For {0} the advice is {1} to {2}; the plan has only {3}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The first carbohydrate comes after {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The first carbohydrate comes only after {0}; start within 30 to 45 minutes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} holds what you said you must not eat; take it out of the plan.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is marked to avoid and stands in the plan.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} of fluid an hour at some time, but you sweat only {1}; drink less.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At most {0} of fluid an hour to have at hand; drink to thirst.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} of fluid an hour at some time; drink to thirst and never more than you sweat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} of sodium an hour at some time is much; it need not all be replaced.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At most {0} of sodium an hour.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At most {0} of sodium an hour, {1} mmol a litre; it is no shield against over-drinking.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At most {0} of caffeine within an hour; the limit is {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} of caffeine within an hour; above {1} at once is not held to be safe.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} of caffeine within 24 hours; the limit is {1}, your morning coffee included.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} of caffeine within 24 hours, coffee aside; above {1} is not held to be safe.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Items after the finish: {0}; take them out or place the fuel again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The race is over before the first item would be taken.</source>
        <extracomment>Shorter pieces are looked at with their neighbours.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None of these foods has carbohydrate you can take; choose others or change marks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No filling was found in time; choose fewer foods.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} an hour are asked, but never more than {1} are planned: you sweat less.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From {0} on: {1} of {2} to {3}; no more fits with these foods. Add one with more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From {0} on: {1}, asked {2} to {3}; the portions are too large. Add a smaller food.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From {0} on: {1} an hour of {2} to {3}; add water or a drink to the foods.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From {0} on: {1} an hour, asked {2} to {3}; the drink gives the carbohydrate. Add solids.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From {0} on: {1} an hour of {2} to {3}; the bottles hold no more. Carry another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From {0} on: {1} an hour of {2} to {3}; add salt capsules or salty food.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From {0} on: {1} an hour, asked {2} to {3}; swap salty food for something else.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no food with carbohydrate and without caffeine in this project; add one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Own model, a trend only: 30 % off either way is usual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The liver falls to about {0}: low blood sugar is likely; eat more or earlier.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About {0} wait in the gut at {1}: more than the body can use at this pace; take less.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The legs are empty from about {0} on; eat more or go slower before it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only {0} to {1} of glycogen are left of {2}; eat more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The legs may be empty from about {0} on if you burn fast; eat more before it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the lowest {0} to {1} of glycogen are left of {2}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no aid station yet; add one first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No session to come has carbohydrate to practise that lacks food.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not enough yet: two runs of an hour or more, eaten on, that sat well.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FuelCautions</name>
    <message>
        <source>When it goes wrong</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cautions for this plan</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FuelDeeds</name>
    <message>
        <source>Filling fuel to target</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} sat well on {1}; you have {2}. Take it as what your gut is known to?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The filling is ready.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>FuelLane</name>
    <message>
        <source>Fuel</source>
        <extracomment>Between the line at nothing and the tokens. Row each shape stands in, from the bottom.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>carbs g/h</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fuel appears with a course.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing placed. Fuel, Place fuel by the clock; or right-click here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} {1}, {2} of carbs, at {3} ({4}), keeps its place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} {1}, {2} of carbs, at {3} ({4})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy to one interval later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}, {1}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>GlycogenLane</name>
    <message>
        <source>Glycogen</source>
        <extracomment>Points drawn at most: a band as smooth as the eye sees it.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>g, about</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Glycogen appears with a course.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About {0} to {1} of glycogen left of {2}; {3} waits in the gut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>legs empty from {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>perhaps empty from {0}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>GridPicture</name>
    <message>
        <source>No sessions yet.</source>
        <extracomment>The kind of selection that is a week; its key is the first day.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Build the block from the Build-up menu, or press N to add a run.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Ground</name>
    <message>
        <source>treadmill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stairs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>car-park ramp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flat path</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>loop</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>GroundForm</name>
    <message>
        <source>What you call it</source>
        <extracomment>Length and height to begin with; our own choice.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Len&amp;gth, one way or round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Climb over it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>D&amp;rop over it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Least gradient</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Most gradient</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>K&amp;eep</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>GroundPage</name>
    <message>
        <source>Ground at hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What there is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grounds at hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Add…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a &amp;loop…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>C&amp;hange…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stretch and day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the whole race</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;tretch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At &amp;most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no course yet, so no stretch to match.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The stretch: {0}, {1} on feet, climb {2}, drop {3}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say on the left what there is where you live.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing of it can be matched here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}: {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put it on {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run the {0} of {1} so</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>GuessField</name>
    <message>
        <source>our guess</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>don&apos;t know</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put back what was there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put a careful guess in: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I don&apos;t know: {0}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Guesses</name>
    <message>
        <source>an estimate of our own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the least of the 30 to 50 g/h of Tiller et al. 2019, J Int Soc Sports Nutr 16:50</source>
        <extracomment>Round figures in each unit, on the low side: all our own choice.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the low side, so that the build-up begins gently.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rather short: long runs grow from it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slow enough to talk; too slow only plans more time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It only scales the energy you burn.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The least that is advised; most beginners manage that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More than just enough, less than all you could bear.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The day with most time free.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A working week with one day of rest and a long Saturday.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Most races start early.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cutoffs on the way still count.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Likely at your easy pace.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HabitsForm</name>
    <message>
        <source>Fuel habits</source>
        <extracomment>One below what is taken for a VO2max: not known.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Set</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mL</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Bottles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Eac&amp;h holds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;pare packed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What you carry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filling may use ca&amp;ffeine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>400 mg a day, healthy adults</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>200 mg a day, as in pregnancy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>3 mg/kg a day, as under 18</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Limit that counts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caffeine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>g/kg a day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> h before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>L&amp;oading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of carbohydrate, &amp;each</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last &amp;meal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caffeine bef&amp;ore the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mL/kg/min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>easy, half of your best</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>steady, 60 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hard, 70 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>g/kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;VO2max</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If not known, the race &amp;is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leg muscle, of the bod&amp;y</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Glycogen in it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the live&amp;r</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Glycogen at the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>20 g/kg is usual, 36 fully loaded; liver 90 g after breakfast.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What you must not eat</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Header</name>
    <message>
        <source>Runway</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Finish, and 8 of 10 days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Least in hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unnamed race</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>climb {0}, drop {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no heights: paced as flat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>limit {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the finish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} to {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cutoff that leaves the least time, with the later of target and forecast</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} full weeks, {1} needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}   {1} – {2}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HealthForm</name>
    <message>
        <source>Health, before the first block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go through the published questionnaire PAR-Q+ (seven questions; search the web for its name) whole and as it stands. It is not repeated here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Does any of this, or any answer there, apply to you? Only yes or no is kept, in this project file. A yes stops nothing; fasted runs and heat days stay off.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When to &amp;stop and get help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Yes: I ask a doctor first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;No</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not answered yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Answered so far: no.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Answered so far: yes, a doctor is asked first.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HeightField</name>
    <message>
        <source>From {0} to {1}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Help</name>
    <message>
        <source>Where the figure comes from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caution</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>See also</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What you carry, hang up or hand out. Choose cards, sizes and what is on them on the left; the desk shows them as they will be. All that says something is black, so that it reads in grey and under a red lamp. Print at 100 %, not fitted to the page.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>print pdf preview paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Size of a card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The finished size in millimetres, flat where it is folded. Print grows and shrinks with it within what can be read; what does not fit goes on to a second page, and the desk says so. Nothing is ever cut.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Small letters are at least 1.9 mm high on the wrist and 1.5 mm elsewhere.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A6 A5 A4 letter width height mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pace card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One row to each place: how far, climb and drop since the last, pace, when you are there on plan, your stop, time in hand, when you would be there half an hour late, the last arrival that still makes every cutoff, and the cutoff itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>print on plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>30 min late</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The clock if you come through half an hour behind plan. Two columns beside each other are easier to read on a bad day than a sum.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arrival on plan plus 30 minutes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>half an hour behind column</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last arrival</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The latest you may arrive and still make this and every later cutoff at planned speed. Later than that, only going faster helps.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arrival on plan plus time in hand, rounded down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>latest column</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fuel card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One row to each leg between aid stations: how long it takes, what to eat and drink on it, carbohydrate in all and per hour, fluid, and whether a bag or your crew waits at its end. Items with caffeine carry the clock time they are meant for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why it says to drink to thirst.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>print leg food</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Crew sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the crew needs at every station they may come to: how to get there, when you are likely to come, what to hand over and what to ask, and who drives home. Fill in the rest under Edit, Crew and lists.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whoever was up all night does not drive. The red flags on the sheet are reasons to stop you.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>print crew support station driver</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No news is good news</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two times for those who wait. Before the first, not having seen you says nothing. After the second they ask the station whether you have been through.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The first is the end of your arrival window, which one day in ten runs past. The second is as much later again as from the middle of the window to its end, half an hour at least, and no later than a cutoff in between.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If someone is known to be hurt or lost, call the race emergency line at once.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>worry late search missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bag labels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One label for each drop bag: the station in large letters, your name and number, what is inside and what to do there. Foods are those of the plan up to the next bag.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>print drop bag contents</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To buy and to pack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Boxes to tick: the kit the race rules ask for, what you pack besides, what goes into each bag, and what to buy. Foods are counted over the whole race plan.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read the race rules yourself: kit lists change, and a missing piece can end a race.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>print list mandatory kit shop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hard stretches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your own words for when it gets hard, put down while you can think: what may come, what you will do then, and short words to yourself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If-then plans are carried out more often than good intentions.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>if then mental cues low point print</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who I am</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For a stranger who finds you: your name, whom to call, the race emergency line, what a doctor should know, and how you get away from each station if you stop there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It stays on your computer and on the paper you print. Print it only if you want others to read it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>emergency contact medical identity print</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wall plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The whole build-up on one large sheet: a row to each week counted down to the race, a box to each session, hard days with a heavy edge, room to tick. Where the printer takes smaller paper it comes in parts to be glued, each a centimetre over the last.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>print poster block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Week sheets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A sheet to each week from this one on: what is planned, and boxes and lines for what was done. Type it back in from the Build-up menu, in the same order.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>print log diary</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Typing a week back in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One row to each session of a week in the order of the week sheet. Enter goes to the next field, and at the end sends the week as one step that can be undone. A field left empty is taken as planned; a row nobody touched stays as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>log done enter keyboard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Crew and lists</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everything beside running: who you are, the crew and who drives home, what happens at each station, the kit the rules ask for, lists, and your own words for hard stretches. It stands on the cards and changes no figure of the plan.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>form contact emergency kit bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is on a card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How often it is printed, in which units, in which language numbers and days are written, and which columns or lines stand on it. What you leave out makes room for larger print.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>copies units language columns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each card can be a page of its own, or several lie on one sheet with lines to cut along. With backs behind fronts the second page of a card lies behind its first; turn the paper on its long edge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>several sheet duplex both sides cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Light on the cards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shows the cards by day, as a grey printer gives them, or as a red lamp shows them. Only the picture on the screen changes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>red lamp night grey preview</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>True size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shows cards on the screen as large as they are printed. Screens often say wrongly how large they are: lay a bank card on the outline once and match it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A bank card measures 85.60 by 53.98 mm. What you set is kept for each screen.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>calibrate scale bank card millimetre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A card for a lock screen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A card as a picture of exactly the pixels of your telephone, with room for its clock. White on black spares your eyes and the battery at night.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>png image phone wallpaper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was mended in the file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Files come broken in known ways: tracks in pieces or out of order, the same line twice, points far off, heights missing, jumping or in feet. What was done about it is said in one line each. A line that can be undone is: the file is read again and that is left as it was. The file itself is never changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A way of up to 2 km between two pieces is run straight, a longer one is missing and counts for nothing. A point is far off where the line jumps 500 m or more to it and back. A height is a spike where it jumps by more than 30 m, steeper than 45 degrees, and back within 500 m. Heights are taken for feet where 8 % of the way would be steeper than 45 %, where half the course would lie above 5,900 m, or where they are whole metres only once taken as feet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gentle ground in feet looks like hilly ground in metres and is not noticed. Compare the climb with what the race says.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>repair gap spike feet filler broken import GPX undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which line of the file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A file may hold several tracks and routes. The most likely reading is taken: tracks rather than routes, joined in order, and a line that goes over the ground of another one only once. Any single one, or all joined, can be chosen instead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A line is there twice if 95 % of it lies within 75 m of another one and goes the same way. Tracks are put in another order than the file&apos;s only if each then begins within 2 km of where the one before ends.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>track route several choose join</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Changing the line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A course can be trimmed at both ends, turned round, run in laps, gone out and back, or continued by another leg. Stations, surfaces, pins and sections go with their ground; stations come by again in every lap.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cutoffs stay when you trim, for they are times of the race. They are dropped when you turn the course round, and in laps, on the way back and on another leg: nobody knows them but the race. A target you have fixed stays only where its section is what it was.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter the cutoffs of later laps yourself; without them nothing warns you.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trim reverse laps out and back join leg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Official distance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How long the race says the course is. With it the line is stretched to that length, evenly, and all places on it with it; both figures are shown. Without it the line counts as measured.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One factor on all distances between two pins. More than threefold is taken for a slip of the keys.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>length scale stretch announced</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Official climb and drop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the race says about metres up and down. With it the heights are scaled so that they come to these figures, slopes get steeper or gentler by as much, and section figures add up to them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All that counts as climb is multiplied by one factor, all that counts as drop by another; waves too small to count stay as they are. If you give one figure alone, the other follows so that start and finish keep their heights.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Climb hangs on how heights are smoothed: no two methods agree.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How the heights are scaled.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ascent descent elevation gain announced scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pinned station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A station whose distance you take from the handbook while it stays where it is on the ground. The line before and after it is stretched to fit, so that all stations stand at the handbook&apos;s distances. Moving a pinned station takes its pin away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Between two pins distances are multiplied by one factor.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pin handbook distance place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is underfoot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paint a stretch as road, gravel, smooth trail, grass, technical trail, rock, sand or snow. What you do not know stays unknown and counts as firm ground.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each surface has a cost (energy over that on firm ground) and a factor on speed downhill. Usual costs: gravel 1.02, smooth trail 1.05, grass 1.08, technical trail 1.15, rock 1.40, snow 1.45, sand 1.60. You can set both for this course.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Running on dry sand: 1.6.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An uneven treadmill: 1.05.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Runners differ most downhill. No factor is given.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All other factors.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mud, wet rock or a path in the dark can cost far more than any of these.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>terrain road gravel trail grass rock sand snow factor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cutting the course into sections</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By aid stations, by climbs and descents, every so many kilometres, or by hand: split a section at a place, join it with the next, give it a name. A section always ends where there is a cutoff.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A section that stays what it was keeps its target, name and words. Words for when it gets hard are never lost: they go to the section with the middle of the old one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>split merge join rename divide leg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan view of the course</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The line from above, north up, in the colours of the profile: ochre climbs, sky descents. Arrows say which way; a lap or a way back runs beside the way before. Dashes along the line are surfaces. The place is the one in the lanes; arrow keys walk it, Enter or a click selects.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the plane that touches the ellipsoid of the Earth in the middle of the line.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>map track route from above laps north</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Climbs and descents</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The long slopes of the course, found in its profile and numbered in course order, with length and height. Small ups and downs within one belong to it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The profile is parted where it goes back by a 25th of the climb of the course, at least 30 m and at most 150 m. Of each part counts what rises more than 2 % of its way; 2 km that rise less than 1 % part two climbs. Level ground of less than 1 km between two slopes goes to them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Racing by climbs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The limits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hill slope ascent descent steepest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A stop to sleep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A planned stop can be to pass, to eat, to change, or to sleep. Time asleep is part of the stop: add what it takes to lie down, to wake up and to get going again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who sees things that are not there, cannot walk straight or falls asleep walking must stop where people are, whatever the plan says. Tell somebody to wake you. Do not drive home without having slept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nap rest night tired</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fuel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What you eat and drink along the race, each item a token on the clock: drag it to another time. The line above shows carbohydrate per hour, the band what you asked for. Amounts are a starting point to practise in training.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The line is the carbohydrate taken in the hour around each moment; the band is 10 % below and above the rate you set.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hour the line looks over, and the 10 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>food nutrition eating lane tokens band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carbs per hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much carbohydrate you take in an hour of racing, on average. The first 30 g/h matter most; more helps only if your gut takes it. Most runners of long races manage 25 to 60.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All carbohydrate of the items over the hours of the race, or over those of one leg. Fibre is not counted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Up to 60 g/h of any sugar, up to 90 of glucose with fructose; the same for light and heavy people.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>30 to 50 g/h in ultramarathons run in one go.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>51 cyclists gained 2.0 % at 19 g/h, 3.0 at 31, 4.0 at 48 and 4.7 at 78.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>18 amateurs took 33 g/h (spread 12) over 24 hours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Figures above 60 g/h were studied for three hours and need practice. Feel sick or bloated: slow down and take less.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>carbohydrate grams rate energy gels total</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carbs in all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All carbohydrate of the items up to the finish, in grams. What lies beyond the finish is not counted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Servings times carbohydrate per serving, summed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>total grams carbohydrate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fluid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What you have with you to drink, not what you must drink. Drink to thirst. Water in gels and food counts in a little.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sum of the fluid in the items. The check takes the most within two hours: up to 800 mL an hour holds, up to 1000 strains, beyond it breaks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>450 to 750 mL an hour as a start.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>383 starters in up to 39 degrees lost 2 to 3 % of their weight whichever way they drank; most drank to thirst.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A runner of 69 kg has to lose 1.9 to 5.0 % over 161 km only to keep the water in the body level.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The limits of 800 and 1000 mL.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drinking more than you sweat can kill. Weight gain, puffy hands, headache, vomiting or confusion: no more plain water, go to medical staff at once.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water drink drinking hydration hyponatraemia sweat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sodium</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sodium in milligrams, from food, drink and capsules together; a gram of table salt holds 388. It makes food and drink go down better. It need not all be replaced, and it does not protect you if you drink too much.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sum over the items; the check takes the most within two hours and strains above 1000 mg an hour. One mmol is 22.99 mg.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>15 % of 669 finishers had low blood sodium, many of them after losing weight.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sodium pills are not needed to keep enough water.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More than 575 mg to the litre may be called for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The 1000 mg, and 400 mg an hour to start from.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>High blood pressure, heart or kidney disease: ask your doctor first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>salt electrolytes capsules</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caffeine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caffeine in milligrams from all items. Small doses late, when the night gets long, do more than one large one early. Half of it is still in you after about five hours. Food placed by the clock holds none unless you add it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At most the lower of 3 mg per kg and 200 mg within an hour, and the lower of 6 mg per kg and 400 mg within 24 hours; the coffee before the start counts in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>200 mg at once and 400 mg a day for healthy adults.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>3 to 6 mg per kg help performance.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Half-life about 5 hours, 1.5 to 9.5 between people.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taking the lower of the two limits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For healthy adults only. Pregnant, under 18, with heart trouble, high blood pressure, anxiety or stimulant medicines: ask a doctor first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>coffee cola stimulant dose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Training the gut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Eating in training what you mean to eat in the race, a little more each week, until it goes down without trouble. It is the best known cure for the stomach problems that end long races.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weeks needed: one for each 10 g/h between what you take now and the race rate, and two more at the race rate. From 40 to 80 g/h that is six.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two weeks: symptoms down by about 60 %, distance in a test up 4 to 5 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two weeks of 90 g/h in a daily hour: better absorbed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>10 g/h a week, and two weeks at the race rate.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stomach practise eating adaptation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carry, 15 % spare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to carry out of an aid station so that it lasts to the next, with a seventh to spare for a slower leg or a dropped gel. Carry no less than the race&apos;s rules say.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rate times the time to the next station times 1.15; of the rate you asked for and the one your items give the higher counts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The 15 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bottles pack spare leg drop bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Items against what was asked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whether the items on the clock come to the carbohydrate per hour you set.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Holds within 10 % of the rate, else it strains.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>band check too little too much</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Race rate against what your gut is known to take</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A race is no place for a first try. If the race plan takes more than 10 g/h above what you take without trouble, practise first; the sentence says for how many weeks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carbs per hour of the race minus the rate in the form for race and runner.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The 10 g/h.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>check practised tolerated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much can be absorbed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One kind of sugar gets through the gut at about 60 g/h, glucose with fructose at about 90 in a trained gut. More than that lies in the stomach.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strains above 60 g/h, of glucose alone or in all; breaks above 90 on average or above 120 in any one hour. Of a mixed food two thirds count as glucose.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>60 and 90 g/h.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>120 g/h is the most that was tried: 20 elite runners, trained for it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The mixture of two to one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>0.8 of fructose to 1 may be better still.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With hereditary fructose intolerance no fructose, no table sugar.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>glucose fructose limit maximum check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Advice for a race of this length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the advice for so long a race is, and whether the plan reaches its lower end: 30 to 90 g/h from three hours on, 45 to 60 from two, 30 to 45 from 75 minutes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read from a table by the finish time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Some of the rows under three hours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>check duration recommendation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First bite</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When you first take something. Start early, while the stomach is willing: within 30 to 45 minutes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The time of the first item with carbohydrate.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>start eating check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Items after the finish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Items whose time is later than the finish, mostly because the finish was moved. They count for nothing; take them out or place the fuel again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Item time against the finish of the target.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fuel item</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something you take at one moment of the race: a food, how many servings, and when. Race time counts from the gun; the place is where the target brings you by then.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Servings times what one serving holds.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>token race time clock gel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Servings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many of the food: 2 gels, half a sandwich, a quarter of a bottle. One serving is what the table of foods says it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Placing fuel by the clock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Puts items on the clock for you: a first bite, then one every so many minutes, none in the last 15 minutes. Gels and sweet things at first, from four hours on savoury ones too, broth from ten. What one time gives too much, the next gives less.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each time owes the rate times the minutes since the one before, in carbohydrate, fluid and sodium.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The whole rule.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In long races taste turns from sweet to savoury.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>every minutes interval automatic slots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Food</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something you can take in the race, with what one serving holds. Type what your own packets say over the figures; they then count as read from the packet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plain foods.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gels, sports drinks and capsules: typical packets, from memory.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Allergies: the program does not know what is in your food. Read the packet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>foods serving one serving is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carbs of a serving</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carbohydrate your gut can take up, in grams: fibre is left out, because it feeds nobody within a race.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carbohydrate minus fibre, per serving.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>carbohydrate fibre grams</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugars</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One kind is glucose, maltodextrin or starch; mixed is glucose and fructose together, as in fruit, honey, table sugar and mixed gels. They take two ways through the gut, so mixed foods allow more per hour.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of a mixed food two thirds count as glucose.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Many people take fructose badly; find out in training.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>glucose fructose mixed single</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Energy of a serving</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kilocalories of a serving. Nothing is planned by it: in a race carbohydrate is what counts, and nobody eats as much as they burn.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About 4 kcal for a gram of carbohydrate or protein and 9 for one of fat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kcal calories</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weight of a serving</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What a serving weighs, in grams: what you have to carry.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Form of a food</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gel, drink, solid or salt: how it is carried and taken, and the shape of its token. Drinks count toward fluid first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shape gel drink solid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where a food&apos;s figures are from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Published: a food table, named beside it. From memory: a typical packet, to be typed over. From the packet: you typed it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>source mark packet published memory</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Glycogen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much carbohydrate liver and legs still hold along the course, as a band. The upper edge burns as most people do, the lower one a tenth of all energy more. What is eaten spares it. A trend, not a prediction: 30 % off either way is usual.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Minute by minute: body mass, distance and slope give the energy, how hard that is for you the share from carbohydrate; what you eat is absorbed with a delay of half an hour and never faster than the gut can.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About 10, 50 and 75 % of energy from carbohydrate at 25, 65 and 85 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is eaten is burnt at a steady rate after 90 min.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Legs are a fifth of the body; stores per kg.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Low below 40 % of the start, empty below 20 %; downhill, heat and altitude are left out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not valid with diabetes: make your own plan with your care team.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tank wall bonk stores empty liver legs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gut load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What has been eaten and not yet been absorbed or used. Above 60 g it is much, above 100 g more than the body can use at this pace: take less there, or slow down less.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Out of the glycogen ledger: no more than 60 g/h of glucose is absorbed, 90 of a mixture, and no more is burnt than three quarters of the energy spent.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A simple model; guts differ more than it knows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stomach bloating nausea absorption ceiling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Glycogen at the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the ledger starts from: leg muscle as a share of the body, glycogen in a kilogram of it, and the liver. 20 g/kg after usual food, up to 36 loaded; the liver 90 g after breakfast, 45 without.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the VO2max each section has its own effort; else choose how hard the race is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vo2max loading liver muscle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fluid and sodium</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fluid in the hour around each moment, as an area, and sodium as a line. Both are what to have with you, never what to force down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The items of that hour; water in food counts. The band is a quarter either way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>450 to 750 mL an hour in ultramarathons.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water drink lane</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caffeine in the body</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is left of all caffeine taken by then: half of it is gone after about five hours, in some people after two, in others after nine.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every dose counts in full when taken and halves every five hours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Half-life 5 h on average, 1.5 to 9.5 h.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sleep half-life</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keeps its time or its place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What happens to an item when the pace changes: one that keeps its time is taken at the same race time, one that keeps its place where it was put, such as soup at a station.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clock distance anchor pace</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fill to target</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chooses from the foods you tick how much of each to take when, so that carbohydrate, fluid, sodium and caffeine stay in their bands, sweet gives way to savoury, and little is carried far. Where a band cannot be met it says why.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An exact choice in whole portions, an hour at a time. Foods marked to avoid and those with your allergens are never used, caffeine only if you allow it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bands of 10 % for carbohydrate, 25 % for fluid, a third for sodium.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In long races savoury food is liked more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A proposal to read item by item and to practise in training.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>optimise automatic menu</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bags</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where each item of the plan comes from: on you from the start, out of a drop bag, from your crew, or off a table. Packed whole, with what is spare. Nothing perishable where a bag waits for hours in the warm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last bag or crew before an item holds it, unless the station there offers it. Bags and tables together are the timeline.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>15 % spare, unless you set another.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drop bag crew pack label kit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carried</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is on you when you leave a station: all food until it is eaten, and drink until the next tap, with the spare. Short of room means that your bottles do not hold it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bottles weight capacity pack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shopping</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What all bags take, spare among it, in whole packs, and what is left in the end if the race goes as planned.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>buy packs list left over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Food at stations</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which foods stand on the table of an aid station, as the organiser says. Filling takes them there, bags leave them out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tables run empty for late runners: carry what you cannot do without.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>table aid station offers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One countdown from ten days before to the gun: runs, kit, feet, bags, sleep and the way home; loading, meals, drink and caffeine by body mass and start time. Loading binds water, so a kilogram or two more is usual.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>10 to 12 g/kg a day for 36 to 48 hours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 to 4 g/kg one to four hours before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>5 to 7 mL/kg four hours before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loading is not for people with diabetes without their care team.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>countdown loading breakfast meal week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sweat test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A run of one to two hours, weighed undressed and dry before and after. It gives what you sweat an hour; no more than that is ever planned, and 70 % of it is enough to have.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weight lost, plus drunk, less passed, over the hours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The least of several tests counts, to be careful.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sweat rate weigh hydration</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your gut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your own mark for a food: tolerated, not tried, or to avoid. Two runs on which it sat well are a good reason for the first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tolerated avoid stomach mark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Allergens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What of the fourteen that must be named on a packet a food holds. Say under Fuel habits what you must not eat: such foods are then never filled in, and the checks say if one stands in the plan.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>allergy gluten nuts milk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In a pack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many servings are bought at once; the shopping list counts whole packs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Can be carried</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whether a food can go in a bag or a pocket. Soup and cups of cola cannot: they are eaten where they stand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After the race</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How long to leave running alone, to run easy only, and to wait with hard sessions and the next race, by how long the race takes; and signs not to wait with.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The days are our own, on the careful side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>9 to 16 days until strength was back after 166 km.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days on a calendar heal nothing: pain, fever or odd urine go first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>recovery rest return running red flags</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export to other programs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the File menu: the course with stations, section ends and target arrivals as GPX 1.1; sessions and race as a calendar; every table as CSV with units in the heads; the profile with targets as a picture, PNG or SVG. A calendar can be read back: what would change is shown first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A calendar that takes a second file changes what it has. Under another name of the race all entries are new, and what you removed from the plan stays until you delete it there. A text in a CSV that a spreadsheet could take for a formula has an apostrophe before it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A watch shows the waypoints, not your cutoffs: carry a card as well.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gpx ics icalendar csv svg png spreadsheet watch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seven days with what was planned and what was done side by side. D marks a session done as planned, C opens a short form with the plan already in it, M marks it missed, U takes the mark back. A star marks the two sessions to keep if the week falls apart: the long run, then what is most specific to the race.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load is effort times minutes, of what was done or else of the plan.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which two to keep is a rule of the trade.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>today glance log diary</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days missed, and mending</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Say which days you missed and why. Two or three ways to mend the build-up come side by side, each with the sessions it changes and what it costs; the one you look at is shown in the grid. Nothing that was missed is made up later.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As few sessions as possible are changed so that the rules hold again. Proven means that a search found no way with fewer. A cost with a minus is distance lost.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How to take up running again after a break has no trial.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What a break of some weeks takes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With fever, chest symptoms or aches all over nothing is planned: rest and ask. After an injury whoever treats it decides when running is allowed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ill injured holiday repair mend break return</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Questions on health</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before the first block: does anything speak for asking a doctor first? The published questionnaire PAR-Q+ asks it best; it must be used whole and is not repeated here. Only yes or no is kept, in the project file and nowhere else.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wording is ours and wants medical review.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This plan is arithmetic on what you typed. It does not examine you.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>doctor heart screening questionnaire</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wishes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the build-up is to hold besides running, how often a week is cut back and how the weeks after it grow. A builder keeps to it as far as the rules allow and names what gives way. Strength lies on days with time to run, beyond it where that is full.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fasted runs are easy and short only, and not for everybody; heat days never alone. Both stay off until the questions on health are answered with no.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>strength cross-training back-to-back night heat fasted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hours, drop and climbing speed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time on feet of a usual week, how long your longest run of the last 30 days took and what it dropped, and how many metres you climb in an hour at easy effort. Left empty, distance and easy pace stand in for them. Unless you choose, the ramp counts hours where the race climbs over 30 m per km and your hours are given, else distance.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>volume hours vertical speed flat-equivalent yardstick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days on which no run fits, or less of one than usual: travel, holidays, shifts. What is built anew keeps to them; what stands already is left alone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>travel holiday no-run dates availability</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hands on sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag a tile to move it, with Ctrl to copy it, its right edge to make it longer; draw a box over empty days to select. Ctrl and click adds one, Shift and click all between. Ctrl+arrows move, Alt+left and right shorten and lengthen, Shift+arrows select on. Type 12, 1 h 30 or long 28 over a tile. S swaps two, L locks, K opens the shelf of kinds, Ctrl+X, C and V cut, copy and paste.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Made longer, a session keeps its pace and its climb per kilometre. Each deed is one step that can be undone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drag copy paste repeat swap lock select keys shelf kinds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mends</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A line underlined beneath a check says what would put it right; a click, or Enter on it, does that as one step. Where a dragged session breaks a rule and the hand rests, the nearest day that would hold is looked for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That day breaks no rule for the session and leaves no other rule worse than before the drag; it has time free and no other run.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>repair fix suggestion nearest day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Longest run, and the 30 days before it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The longest run of the week, planned or done, and the longest of the 30 days before it: the first should exceed the second by 10 % at most. Before 30 days lie behind, the longest run you entered counts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Observed in 5205 runners; no trial.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reference 30-day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Races to pick from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Several races side by side: the weeks there are against the weeks needed, what can be reached by then of what each asks, climb per km, hours in the dark, and between cutoffs the pace of level ground they ask against the one you are likely to run.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The likely finish keeps four fifths of your easy speed, with a metre of climb as eight along; between cutoffs your speed fades as on race day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A metre of climb as eight along.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That four fifths of easy speed are kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>candidate choose compare race date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ground at hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What there is to train on where you live, and sessions on it that stand in for a stretch of the race: how often, at what gradient, how long, climb and drop in all. What cannot be matched is said, with what to do instead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Match compares the time on feet by class of gradient: 100 % is the same shares, 0 nothing in common. Of the stretch says how much of it one session stands for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No trial says how alike training must be.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin with few descents and few step-downs: the quads need days to get over it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>treadmill stairs hill ramp flat stand-in similar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Race day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The race from start to finish on one axis, by distance or by clock. Aid stations are lines through all lanes. Ctrl and the wheel zoom in, the wheel alone moves along, 0 shows the whole race again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lower storey race plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By distance or by clock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the lanes of race day run along. By distance a climb is as wide as it is long; by clock it is as wide as the time it takes you, which is the better view for food and for the night.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Between the two the target tells where you are when.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>scale foot axis</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The course</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The line of the race from a GPX file, with or without heights. Aid stations are proposed from its waypoints. What had to be mended in the file is said in the ledger. Nothing in the file itself is changed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length is measured point to point over the ellipsoid of the Earth. It seldom equals the distance the race announces: a line with few points is shorter, a shaky one longer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Distance on the ellipsoid.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gpx track length distance of the race</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A course from a table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where there is no GPX file, the race&apos;s own table will do: each place with its distance, the climb and drop of the leg that ends there, its cutoff and what is there. Distances, climb and drop are kept as typed; the hills between are made up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A leg gets a hill to each 5 km at most, all of one height, up first; its climbs and drops have one mean gradient. Light is that of the place the time zone is named after.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no gpx typed pasted schematic handbook spreadsheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Profile</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height along the course, smoothed. The colour says how steep: sky down, stone level, ochre up; the hatching gets denser where it is steeper, so that it reads in black and white too.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heights of the file averaged over 70 m and read every 10 m. Gradient is rise over distance, 10 % being 10 m up in 100 m.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The 70 m.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That height must be smoothed, and that the sum hangs on how far.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>elevation height gradient steep slope hachures lane</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Climb and drop of the course</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All metres up and all metres down from start to finish, or over one section. Two devices on the same run differ by a fifth and more, and race organisers count in their own ways, so don&apos;t be surprised by another figure.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Summed from turning point to turning point of the smoothed profile; ups and downs of less than 5 m are not counted. Summing every small rise would count the noise of the file as climb.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The 5 m.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ascent descent elevation gain vert metres section</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Aid station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A place on the course where you may stop, with its cutoff, your planned stop and what there is. Sections run from one to the next. Move one by typing its place, or by dragging the end of its section.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>checkpoint control station name place at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water, food, drop bag, crew, medical: what the aid station offers, from the race&apos;s handbook. Bag and crew are marked on the fuel card.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>offers drop bag crew water food</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How long you mean to stand at an aid station. Stops are part of the finish aimed for: the longer they are, the faster you must run. Enter what you really take; ten minutes at ten stations are most of two hours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What you typed, added after the arrival there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In a 106 km race less time stopped went with a faster race (r = -0.77).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pause rest time at the station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day, twilight and dark along the race, at its place and date. Twilight lasts until the sun is 6 degrees under the horizon; then you need the lamp. In a deep valley or a wood it is dark sooner.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height of the sun at the start of the course for every minute of the race; level horizon, no clouds.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Position of the sun.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sunrise sunset night lamp dusk dawn lane</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Section</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A stretch of the course with one target, mostly from one aid station to the next. Drag the right edge of its step to move its end, the top to make it faster or slower.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length: its end minus its start along the course.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leg split length from to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Target</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pace the plan asks for in a section, stops left out; it is what the pace card prints. By default it fades half as much as the forecast: a little slower at first than most start, a little faster at the end. Higher in the lane is faster.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The running time of the section over its length. The curve behind it meets the finish aimed for, with what the ground costs, half of your fade, and the night.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pace model, fitted to real runs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Half the fade: steadier runners do better, but nobody has tried it out on the same runners.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Over 100 km the ten fastest of 67 stayed within 15 % of their starting speed; slower ones lost more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pace speed section target lane</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fixed target</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A section whose time you set yourself keeps it. The others share what is left, so that the finish stays, unless you let it move; if all are fixed, it moves. Delete lets the section follow the curve again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The free sections are all run at the same share of their usual time, from half to twice of it; beyond that the program refuses.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lock set own time follow the curve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Running time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How long the section takes from leaving one place to arriving at the next, walking included and stops left out. Type one and it is fixed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arrival minus the leaving before it, on the target curve.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moving time duration of a section</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Forecast</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What runners of your finish time really do: start fast, fade. The dashed line. Windows are drawn about it, and cutoffs are judged by it wherever it comes later than the target, because that is where most people end up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Same ground and same finish as the target, with all of your fade. What you give after h hours is (1 + h / onset) to the power -fade, and a tenth less in the dark; onset and fade are those of most runners until your own runs tell better.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fitted to recordings of real runs from 21 to 158 km. On runs kept apart half of all passing times were off by less than 1 % of the finish time, nine of ten by less than 4 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Over 106 km speed fell on every gradient until near the end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>prediction fade slow down positive split dashed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How pace is worked out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each metre costs more or less by how steep it is and what is underfoot; you give less as the hours pass and in the dark. The finish aimed for is shared out so that both fit. There is no search for a magic speed in it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time is shared out by cost over power. Power after h hours: (1 + h / onset) to the power -fade, times 0.9 in the dark. Stops are left out of the cost but not of the hours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Own fit to real runs. Sections come out with a scatter of 10 % and more; mud, queues and a bad day are not in it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>model formula fade power night</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What a slope costs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much longer a metre takes uphill or downhill than on the level. Uphill follows measured energy; downhill follows what runners do, for hardly anyone takes the gift of a steep descent: at -6 % they are a tenth faster, at -22 % slower than on the level.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Uphill 1 plus 0.9 times the extra energy of running at that gradient over level running. Downhill a curve through 0.90 at -6 %, 0.97 at -13 %, 1.22 at -22 % and 1.85 at -38 %. Ground: gravel 1.02, smooth trail 1.05, technical trail 1.15, rock 1.40, sand 1.60 times; unknown counts as firm.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Energy of running from -45 to +45 %, ten runners; the polynomial was read in public copies, not in the paper itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The downhill curve and the 0.9, from real runs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sand: 1.6 times.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Uneven ground: 1.05 times; the other grounds are ours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>uphill downhill surface terrain energy cost Minetti</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arrive</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When the target brings you to the end of the section, on the clock at the race. The planned stop comes after it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start time plus all running times and stops up to there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>arrival clock time split eta</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arrival window</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where 8 of 10 arrivals fall, about the forecast: one day in ten you are earlier, one in ten later. Tell it to your crew. It takes for granted that you can run the finish you aim for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From 10,000 simulated races (see Makes it). Their spread is near 0.09 x T x (s x (1 - s)) to the power 0.75 at the share s of the finish time T, joined with a finish that scatters by 4 %, or as much as its prediction says.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured on real runs and one large race; the 4 % is a guess of ours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>range spread probability chance crew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Finish, and 8 of 10 days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The finish your targets come to, and between which times 8 of 10 days would end if you are in the shape you think. Injury, heat and bad stomachs are not in it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The finish time and 1.28 times 4 % of it to both sides.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The 4 %: how well runners know their finish beforehand. A guess of ours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>predicted finish time header</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cutoff</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The latest arrival the race allows at a place, from its rules. Type it as a clock time or as race time, whichever the handbook gives. Where it counts leaving, your planned stop is taken off for you.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closing time limit cutoff after clock barrier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time in hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much later you could arrive here and still make this and every later cutoff at planned speed. It is a step line: level up to the cutoff that binds, because a generous cutoff is worth nothing if the next is tight. Below zero one is missed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The least, over this and all later cutoffs, of cutoff minus arrival; the later of target and forecast counts as arrival.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That the later of the two arrivals counts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It holds only as long as you can keep planned speed to the finish.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>buffer margin spare slack in hand lane late</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To this cutoff</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time between your arrival and the cutoff of this place alone. Look at the time in hand as well: a later cutoff may be the tighter one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cutoff minus the later of the arrivals on target and forecast.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>margin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Least in hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cutoff that leaves you the least time, and how much. It is the one to plan for; if it is missed, change the finish aimed for, the stops, or the targets before it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The least of cutoff minus arrival over all cutoffs; the later of target and forecast counts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tightest cutoff header</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When it gets hard here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your own words for a bad patch in this section, written while you are calm: if this, then that. If the stomach turns, then walk ten minutes and sip. Try them out in rehearsal runs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>94 tests: if-then plans help people do what they meant to do.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>29 runners over 60 miles: talking to oneself did not make them faster, but they liked it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mental head if then motivation note low patch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shape of the target</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much of the forecast&apos;s fade the target keeps: none is even effort, half is the usual, all of it is the forecast itself, more starts faster still. It also says whether the finish stays when you change one section, or moves with it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The fade of the pace model times that part. Ground, night and the other conditions slow every shape alike. If the finish moves, the forecast is that of the new finish.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>even effort fade negative split hold move finish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fade over the hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much you slow down as the hours pass: 0 never, 8 front runners, 10 the usual, 20 strong. It is of the runner and the day, and half of what a forecast does not know; several long recordings tell it best.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A hundred times the power of the pace model: after h hours you give (1 + h / onset) to the power -fade.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Best per run from 0 to 30 on recordings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>slow down tire fatigue endurance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Speed downhill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How fast you are on descents against what most runners of your level pace do. It shifts time between climbs and descents; the finish aimed for stays.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A factor on speed, in full from 5 % down, less on gentler descents.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>descent skill technical braking</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit from my runs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What your own recordings say of how you fade, climb and descend, beside the defaults. The plan changes only if you use the figures. Each run is also forecast from the others alone: where the defaults do better then, keep them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Robust regression of pace over short pieces, drawn towards the defaults where there is little. Errors are the median over tenths of a run. Standing time is set apart.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How strongly the defaults draw.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>recordings GPX calibrate own runs error spread</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Predicted finish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The finish to expect from what you have run, as a window of 8 in 10 days, with the reasons. Nothing changes until you press Use as goal; then the window of the finish becomes that of the prediction.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each run is turned into flat-equivalent distance and carried to that of the course: time grows with distance to the power 1.06 to 1.08 up to 4 h, 1.12 to 1.18 up to a day, 1.20 to 1.30 beyond. A long run counts as 10 % slower than a race.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The power law, for efforts of up to four hours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The powers beyond four hours, and the 10 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It does not know heat, mud, sleep or your stomach. From runs half as long or less the window is wide, and rightly so.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>predict prediction how long will it take estimate goal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Past runs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Races and long runs for the prediction: distance, climb, time without long stops, and whether it was a race. Two or three of the last year, the longer the better. Recordings can be added: their ground is measured, not guessed from the climb. They are kept with the runner.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>results history races typed in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Beside other rules</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The splits of your target beside those of plain rules that all end at the same finish: even pace, climb counted as distance, hikers, constant power. The last line is the finish a hiking rule names by itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each rule&apos;s time for every stretch, stretched to the same running time; your stops added.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 m up as 8 m along.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hiking speed by slope.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Median speed of hikers.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cost of running uphill.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>compare Naismith Tobler Scarf even pace table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weather and conditions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the day may take besides the ground: weather typed once for the valley, altitude, night, rough descents, and how long your lamp burns. Each effect can be switched off and says its minutes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weather altitude heat dark switch off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Forecast for the valley</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The coldest and the warmest of the day with their hours, humidity at the warmest, and the height of the place the forecast is for. Along the course and through the day the rest follows from it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Between the two hours a smooth curve; 6.5 degrees colder per 1000 m up; the same moisture in the air all day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>6.5 K per km.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The curve through the day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wind, rain and a cold front are not in it. On a ridge it can be far colder than this; pack for it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>temperature humidity weather typed lapse rate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What altitude, heat, night and descents take</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many minutes of the finish each effect is worth at the same effort. Since the finish is held, switching one on does not make you slower in all; it moves time to where the effect bites.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Altitude: a third of 6.3 % per 1000 m above 300 m. Heat: 0.7 % per degree WBGT above 15, by day. Rough descents by the ground painted on. Minutes are shared out fairly where effects stretch each other.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>6.3 % of power per 1000 m.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>0.3 to 0.4 % per degree; doubled here for slower runners.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The third, and the descents, are ours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>minutes lost altitude heat rough descent technical</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the dark takes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The share of your speed that goes in the dark: 10 % on trails, less on roads, none where streets are lit, more if you see badly by lamp. Type your own if you know it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From civil dusk to civil dawn with half an hour of change about each; half as much again about three in the morning.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fitted to a few night runs; nothing published.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>night darkness slower percent lit streets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dark and the lamp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How long it is dark while you are out, against how long your lamp burns with all the cells you carry, at the brightness you use. It strains from 80 % of the run-time, because cold cells give less, and breaks when the dark is longer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All dark spans of the light lane together, on the target.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Later than planned is darker than planned. Carry a spare.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>headlamp torch battery cells dark hours run-time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warmth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The air where you are when you are there, as a line; over it, dashed, the WBGT estimate, which counts moisture and sun as the body feels them. Shaded where that is high. In the dark there is no estimate.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Temperature from the valley forecast, height and hour. WBGT is 0.567 times it plus 0.393 times the vapour pressure in hPa plus 3.94.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The short formula; read in secondary sources.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The estimate assumes sun and a light wind: too high under cloud and in wind, too low in full sun without wind.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>temperature WBGT air lane hot cold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hottest the day gets on your way, in words: low, moderate from 18, high from 23, very high from 28 degrees WBGT. From moderate on slow down and cool down; at very high heat races are stopped.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The highest WBGT estimate along the target, by day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bands for distance races; read in secondary sources.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Confusion, staggering or hot dry skin in the heat is an emergency: stop, cool, call for help. Never start with fever.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hot heat stroke caution WBGT</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Makes it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On about how many of 20 such days you are in time here and at every cutoff before. Never 0 and never 20, because nothing is sure. From 18 on it holds, under 10 it breaks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>10,000 simulated races about the forecast: shape of the day, fade of the day, longer and shorter stops, ups and downs that carry on from section to section. The same draws each time, so a drag moves figures and not luck.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scatter fitted to one mountain race and to recordings of real runs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Injury, giving up and a closed course are not among the simulated days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>chance probability simulated races cutoff days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The latest you may leave the place and still make every cutoff from there on at planned speed. Where the cutoff counts leaving, it is in this too.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned leaving plus the least time to spare over the later cutoffs; the later of target and forecast counts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>latest departure leaving aid station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Walk-in limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How late you may be and still make every cutoff walking, stops included: the dashed line in the lane, and the latest leaving of each place. Below zero the rest cannot be walked in. Only if you are well.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Median walking speed by slope, times 0.9 for tired legs (yours to change). The first place from which it holds to the end is said in the ledger.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Speed by slope.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The 0.9.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An injured, cold or sick walker is slower than this. It is not a reason to go on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>walk it in reserve late hike tired</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At walking pace</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stretches the target takes slower than where people change from running to walking, dotted along the foot of the target lane, and how fast they go. Who runs some of such a stretch may walk the rest of it slower.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Slower than 2.0 m/s on the level, falling to 1.3 m/s where it is steep; stretches of less than 200 m are left out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The line by slope; measured on the level, about 2.1 m/s.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>7.5 km/h on the level.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>walk hike gait change power hike</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hours of one run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A run on steeper ground may be no longer and still last much longer. So long runs are also held against the longest time on feet of the 30 days before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Runs of over 90 minutes; strains at over 1.2 times. It begins once your own longest time is known, or after 30 days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The study behind the single-run rule looked at distance alone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>duration long check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drop of one run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Descents are what the legs are least used to. No run should drop much more than any of the 30 days before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drops of over 300 m; strains at over 1.25 times.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The least accustomed are damaged most.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The figures.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>descent downhill dose check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Late descent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For a race that drops over 1000 m one session of the last two months should drop a fair part of what the race does.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Greatest drop 10 to 56 days before the race over that of the race: 25 % holds.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Earlier descents protect best.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The share and the days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>descent dose quads check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Climb per kilometre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much the last loading weeks climb per kilometre against the race. No trial says how alike training must be.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Climb over distance of the last four loading weeks. Asked are 70 % of the race&apos;s at the floor, 90 % usually, all of it when ambitious; a tenth less still holds, under 40 % breaks. Races that climb under 10 m per km ask nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gradient hills vertical specific check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Surfaces matched</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How alike training and race are underfoot, where both are known: 100 % the same shares, 0 % nothing in common. It describes; no trial says what it is worth.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 less half the sum of the differences of the shares, over eight weeks; 60 % holds. Sessions and stretches of unknown surface are left out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The measure and its threshold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trail road underfoot specific check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dark hours practised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A race with more than two hours of dark asks for two runs by lamp or more in the last ten weeks: to learn footing, pace, cold and the lamp itself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dark hours between start and the finish of the target.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>night running headlamp check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spare weeks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weeks there beyond those needed. Life takes some: over a year two of three ultrarunners lose days to an injury, so a plan without any slack is not likely to be run as it stands.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One for every 16 weeks needed, begun ones counted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>64.6 % lost training days, 14 of them in the middle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many to spare.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>slack buffer margin check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limits of fasted runs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fasted runs are easy, up to 90 minutes, two a week and never on days side by side, none in race week or in the heat, and only if the questions on health left nothing to ask a doctor about.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every session ahead that is marked fasted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All limits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not under 18, not when pregnant, with diabetes, fainting or an eating disorder now or before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>breakfast low carbohydrate check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stand-in sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A session on the ground there is that asks of the legs what a stretch of the race does: so many minutes at each gradient. A treadmill climbs but does not come down; what cannot be had is said, with slow step-downs in its place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time on feet by seven classes of gradient at the target&apos;s times, scaled to three hours at most. The match is the likeness of the two: 100 % the same shares of time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Classes, match and the sets of step-downs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That likeness helps: nobody has measured how much.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>treadmill stairs hill repeats flat town simulate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to keep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two sessions a week are marked to keep if it falls apart: the one most like the race and the next that is not beside it. Each session says what is left of it in 40 minutes. What is left out is not made up for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The talk test beside each effort.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>short of time busy week priority talk test why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mental rehearsal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ten minutes on some runs of the last six weeks: plans of the form if this happens, I do that; a hard stretch pictured; goals, cutoffs and kit in the last days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If-then plans help people do what they meant to.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Self-talk did not make 29 runners of 60 miles faster; they liked it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When and how often.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>imagery psychology if-then head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heat days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Easy runs in the heat 24 to 10 days before a hot race and a few 6 to 3 days before. About 2.5 % of what is gained is lost a day without.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The days before the race.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hot acclimatisation summer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ramp: 10 % a week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A loading week may be 10 % larger than the last loading week. It is a custom that keeps plans sane; that it prevents injury has not been shown.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This week&apos;s distance against 1.10 times that of the last loading week; strains to 1.20 times, breaks beyond.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trial in 532 beginners: 20.8 % injured with the 10 % rule, 20.3 % without.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>5205 runners: weekly growth had nothing to do with injury.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weakly supported custom.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ten percent rule growth increase check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Single run: 10 % over your longest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No single run should be more than 10 % longer than the longest of the 30 days before it. Of all the growth rules this one is best supported, so keep to it before the others.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The run&apos;s distance against 1.10 times the longest run of the 30 calendar days before its day. Until the first 30 days are over, the longest run you gave in the form counts as well.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>5205 runners over 18 months: 10 to 30 % longer, 1.6 times the injuries; more than twice as long, 2.3 times. Seen, not tried out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A race or a club run you did not plan can be the jump that hurts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thirty days longest jump spike check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cutback week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A planned lighter week, every fourth as a rule, to recover and to leave room for a missed day. Its bar is paler. Growth goes on from the last loading week, not from the cutback.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Holds with 60 to 80 % of the last loading week, and when no more than three loading weeks follow each other. The week after a long tune-up race may be lighter still.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No trial in runners was found.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>recovery week deload step back easy week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hard days apart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two hard sessions should not fall on one day or on days side by side. A back-to-back after a long run is meant that way; a hard day after it is not. Long, rehearsal, hill, downhill and tempo runs, intervals and tune-up races count as hard.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days between hard sessions that were not missed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>easy day between check rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Longest, share of the week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much of the week lies in its longest run. If it is most of the week, the other days do not carry it. With three runs a week none can be much under half, so the limits are wider then.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Longest run over the distance of the week. With three runs or fewer up to 55 % holds, with four 50 %, with five 45 %, with more 40 %, and in any week what the race asks at your level: 58 % floor, 50 % usual, 43 % ambitious. 10 % beyond strains; a rehearsal run or a tune-up race never breaks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Road custom is 25 to 30 %, which nobody has tested; ultrarunners on three to five days a week run 35 to 50 %. The thresholds are our own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>percent of the week check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Taper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last weeks before the race, in which you run less and keep a little speed, so that you start rested: two weeks for a race under 12 hours, three for a longer one, race week included.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cut is one minus the daily mean of the taper days, race day left out, over that of the last loading week. 41 to 60 % holds. A built block runs 65 and 35 % of the last loading week, or 76, 46 and 28 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>27 studies of shorter events: two weeks, 41 to 60 % less, same speed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of 158,000 marathoners those with a strict three-week taper were 2.6 % faster; seen, not tried out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That the cut is the mean over the taper, and the weekly shares. No trial of a taper for ultramarathons was found.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rest before the race last weeks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hardening the quads to descents</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Running downhill wears the thighs; having done it before is the best protection. For a race that drops more than 1000 m a downhill run comes every second week or so, and the last one neither too early nor too late. A tune-up race that drops 500 m or more counts as one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Holds when no more than 21 days lie between two downhill runs and the last is 10 to 21 days before the race. No session drops more than 1.2 times the most of the 30 days before.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Earlier descents protect, and those least used to them are hurt most.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A second half hour at -20 %, three weeks after the first, cost less soreness and strength (10 runners).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After 166 km with 9500 m of climb thigh strength was 35 % lower.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The spacing in days and the step of 1.2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Expect soreness for one to three days after the first ones. Dark urine, much swelling or weakness: stop and see a doctor the same day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>quads thighs eccentric soreness descent check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the race asks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How large your largest week and how long your longest run should get for this race: what is asked beside what is planned. There are three levels; the floor is for finishing inside the cutoffs. Long hilly races go by hours rather than kilometres.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Read from a table by the length of the race: for 100 km a week of 60, 90 or 130 km and a run of 35, 45 or 55 km. The hours of the same table are a second limit; beyond 36 hours, or with more than 50 m of climb to the kilometre, they count alone. Planned holds from 97 % of what is asked, strains from 80 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These are ranges coaches use; no trial sets them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In a 161 km race volume was not what kept people from finishing; nausea was the main reason (23 %).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If your body says no, a smaller plan and a shorter race are good plans.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>peak week largest week longest run asked required</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Missed training</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is missed is not made up later: the sessions that follow stay as they are. A loading week that came to less than 80 % because of missed sessions sets no yardstick for the next.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two low weeks in a row lower the yardstick for growth to 80 %, three to 65 %, four to 50 %. A long gap also empties the 30 days of the single-run rule.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seven days or more without running in the last 16 weeks: 5 to 8 % slower in the marathon, the same runners compared.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No training with fever, chest symptoms or aches all over. After an injury ask whoever treated you before you run.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ill illness injury holiday gap break</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of the race</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the race is called in the header and on every card. Anything will do.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date of the race</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The day of the start, where the race is. Weeks to go, taper, light and every clock time are counted from it. If you change it, the race tile moves along; build the block anew afterwards.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The time of the gun, on the clock at the race. It decides which parts you run in the dark, and so the forecast too. Waves: take your own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time zone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The zone whose clock the race goes by. All clock times on screen and paper are in it, wherever your computer is, with the change to or from summer time included. It is proposed from where the course starts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clock summer time daylight saving</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Finish aimed for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The time you plan to take, stops included. Target, forecast, fuel and what the race asks all follow from it. Take a time you can finish in on a fair day rather than a dream.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For a new course a first guess is put in: distance plus eight times climb, at 80 % of your easy speed on level ground.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Eight metres of level ground to one of climb.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The 80 %: a proposal to start from, not a prediction.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>goal time target time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The latest time at the finish that still counts, from the race&apos;s rules; empty if there is none. It is the last cutoff, so it bounds your time in hand all the way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cutoff at the finish closing time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Week begins on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The first day of every week in this project. Weekly totals and their checks hang on it, so it is kept in the project; your language only proposes it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A usual week now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What you have run in a normal week of the last month, not your best week and not what you mean to run. The first week of the block starts from it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You say it; once training is marked done, the last loading week takes its place. Under 10 km a block is built as if it were 10.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The least of 10 km.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too high a figure here makes every later week too large.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weekly mileage current volume</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Longest run, last 30 days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The longest single run of the last 30 days. The next long run may be 10 % longer. An old marathon does not count.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You say it; after 30 days of marked training the record takes its place. Under 5 km a block is built as if it were 5.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The 30 days, and the 10 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Easy pace</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your pace on level firm ground when you can talk in whole sentences. It turns distances into times: how long runs take, and what fits into the minutes you have. It is not your race pace.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Talking as the measure of easy.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Body mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Used for the caffeine limits only, which are per kilogram. There is no target weight in this program, and carbohydrate per hour does not depend on it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Advice per hour does not go by body mass.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Losing weight on purpose in a hard block risks bones, hormones and health; missed periods or a stress fracture: see a doctor.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weight kilograms</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carbs you take while running</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What your stomach takes today while running, in grams per hour, without trouble. 30 if you don&apos;t know: a gel an hour and a few sips of sports drink. Practice starts from here, and the fuel plan is held against it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>18 amateurs in a 24-hour race took 33 g/h (spread 12).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The 30 for those who don&apos;t know.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stomach tolerance grams per hour now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Build-up: floor, usual, ambitious</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much the build-up asks of you. The floor is for finishing inside the cutoffs, usual is what most plans ask, ambitious is for those with years of running and time to recover.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Three columns of one table: largest week, longest run, and 0.7, 0.9 or all of the race&apos;s climb per kilometre.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ranges coaches use; no trial sets them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Long run on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The weekday of the long run. It needs the most free minutes, and an easy day on both sides of it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Minutes free for running</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How long you can run on each weekday, changing and driving left out; 0 is a day without a run. No session is built longer than its day. Six days are used at most.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A day with less than 20 minutes is not used. A tune-up race is excepted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The 20 minutes and the day of rest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>available time days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When to stop and get help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No plan is worth your health. Ask a doctor before you start with chest pain, fainting, unusual breathlessness or palpitations, with heart, kidney or metabolic disease, when pregnant, or after long inactivity. The Help menu lists what to stop for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whom to send to a doctor before hard training.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cooled in cold water at once, all of 274 runners with heat stroke lived.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Signs of eating too little for the training.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wording; it does not replace a doctor.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop now and call for help: chest pain, fainting, confusion, a fit, severe breathlessness, hot and confused.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>danger doctor emergency health warning</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Painkillers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No ibuprofen or similar before or during the race. They may harm the kidneys and hide pain that is a reason to stop.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Trial over 80 km: kidney trouble in 52 % with ibuprofen, in 34 % without; the difference may be chance.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ibuprofen nsaid drugs kidney</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recovery run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Short and slower than easy, the day after something hard: 20 to 45 minutes, effort 2 of 10. If it feels like training, walk.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Easy run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You can talk in whole sentences all the way, effort 3 of 10. Most of your running should be this. Go by breath rather than by a watch: on hills and trails pulse and pace lag behind.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Speaking in comfort means below the first threshold.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Junior endurance athletes spent about 75 % of it easy.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not settled: 38 hobby runners gained as much with more in between.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Long run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The run the week is built around, effort 4 of 10, on ground like the race&apos;s. It grows by 10 % at most over the longest of the last 30 days; once it is really long, only every other week. Eat and drink on it as on race day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back-to-back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A second long run the day after the first, to run on tired legs without one run of dangerous length. An easy day or a rest day follows. It is a wish and not a must: the floor does without it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rehearsal run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A long run as a trial of race day: its kit, its food by the clock, its shoes, poles and lamp, on such ground, from its start hour if you can. Nothing that was not tried here belongs into the race.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hill run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hard uphill, easy down, effort 7 of 10: repeats, or one long climb. Practise walking fast too; in the race steep climbs are walked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In a short trail race most time was lost uphill once runners tired.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Downhill run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Descents on purpose, to harden the quads: start with 20 to 30 minutes of running down, quick and short steps, effort 5 of 10. Hard on the legs rather than on the breath, so it counts as a hard day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Having run down before is the best protection.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The dose to start with.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Soreness for one to three days is usual. Dark urine, much swelling or weakness: see a doctor the same day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tempo run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steady and brisk, effort 6 of 10: sentences get short, but you could go on for an hour. Warm up and run out easily.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Interval session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Short stretches at effort 8 of 10 with easy running between, the hardest session of a week. A little of it is enough for a long race; leave it out when you are tired.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tune-up race</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A smaller race on the way, run to practise and not to empty yourself: start, crowds, aid stations, food. It stands in for a long run, and easy days follow it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Holds at least three weeks before the race, four if it takes over six hours; at up to half of the goal time; and with easy days after it: 4 under three hours, 7 under six, 10 under twelve, 14 under a day, then 21.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After 166 km strength was back on day 16 at the latest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The single-run rule holds for it as well.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>B race preparation race check</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strength</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weights or body weight for legs, hips and trunk, once or twice a week. Counts as time and load, not as distance. Keep heavy leg work a day away from a hard run and leave it out in the last ten days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two or three times a week for 8 to 12 weeks made running 2 to 8 % cheaper in most studies; none looked at ultramarathons.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The distance from hard runs and from the race.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cross-training</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cycling, skiing, swimming, hiking without a run: time and load without the blows. It counts in hours and load, never as kilometres of running.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The race</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The day everything is counted back from. Its tile takes distance, climb and drop from the course and its time from the finish aimed for; it is left out of every weekly total. Move it in the form, not by dragging.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind of session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the session is for. The kind decides whether it counts as hard, whether its distance counts as running, and what effort is proposed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The kinds are the trade&apos;s own words.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>type workout</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day of a session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The date it is on. Drag the tile, or type the date in the table; a done session stays where it was done.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>date weekday</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Distance of a session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far the run goes. It counts toward the week&apos;s total, the ramp and the single-run rule; strength and cross-training have none.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What you typed, or what the block needs that day, in half kilometres.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kilometres miles length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time of a session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How long it takes, stops left out. On hills go by the time: where distance and time do not agree, the time is what your body gets.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What you typed; in a built block distance plus eight times climb at your easy pace, to five minutes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>duration minutes hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Climb and drop of a session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Metres up and metres down. In a built block they grow toward the race&apos;s own climb per kilometre; the drop grows by a fifth at most over the last 30 days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What you typed; in a built block a share of the race&apos;s climb per kilometre by kind of session, more for hill and downhill runs, less for easy ones.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The shares by kind, and the step of 1.2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ascent descent elevation gain metres up down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The shape of the way: level, rolling, rising, falling, up and down, stairs. It is drawn along the foot of the tile, so that a week shows at a glance whether it looks like the race.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No trial says how like the race training has to be.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>terrain surface silhouette trail road</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fasted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run before breakfast, to burn more fat at easy effort. It is optional and gains nothing that is proven for the race. Easy and short only: 60 minutes in the first month, later 90 at most, with 25 g of sugar in the pocket.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Six weeks fasted: more fat burnt, the same gain in the time trial (20 men on bicycles).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Performance better in 37 % of 11 studies, else equal.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The limits on time and effort.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not under 18, not when pregnant, ill or injured, with diabetes, fainting or an eating disorder now or before: ask a doctor first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>train low before breakfast empty stomach</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the dark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run by lamp, to know lamp, battery, footing and your head at night. If the race has more than two dark hours, a built block puts two to four such runs into the last ten weeks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many, and when.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No driving after a night without sleep.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>night lamp headlamp torch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done or missed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ahead, done with figures of its own, or missed. Done counts with what was really run; missed counts as nothing and is not made up later. D marks the selected session done as planned, M missed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>state record completed skipped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carbs eaten</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The carbohydrate you really took during the session, in grams for the whole of it. Packets say it; fibre does not count.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned: grams per hour times hours. Done: what you typed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How the stomach took it: fine, uneasy, bad. Note it after every session with practice carbs; it tells you whether to go up, stay or go back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In a 161 km race 96 % had some gut symptom; of those who stopped, 36 % named it as a reason.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stomach nausea sick cramps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note of a session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your own words: where, with whom, what to try, how it felt. It changes nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Asking what something is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>F1 explains what has the focus: what it is, where its figure comes from and on which source. Shift+F1 lets you point at anything instead. Figures in the header and in the ledger can be clicked. The field above searches every page; Esc takes you back to where you were.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>F1 explain source meaning</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One sheet, two storeys: the build-up above, race day below, both running left to right toward the finish. On the right the ledger holds the figures of what you selected. Whatever you drag shows at once what it changes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>window overview</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Starting a plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drop the GPX file of your race on the window. One short form asks for the race and for what you run now; from that you get a build-up, section targets and a fuel plan, all of which can be changed later. The demo shows a plan that is under way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new first start begin gpx demo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The race at a glance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date, length, climb and drop of the course, and the time limit if there is one. Length and climb are measured on the file you opened, so they may differ from what the race announces.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>header distance ascent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ledger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The figures of what is selected: a session with its week above, a section or a fuel item below, and the checks they touch. While you drag, each figure stands before and now. With the keyboard, up and down go through its lines and F1 explains one; Enter on a check goes to the session it is about.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>panel right figures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before and now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>While something is in your hand, every lane and figure shows what it would come to. Dashed outlines and the small figures are what is kept. Nothing is kept until you put it down; Esc puts it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drag trial preview dashed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Holds, strains, breaks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How your plan stands against a rule, in words and as a cord: taut when it holds, frayed when it strains, parted when it breaks. No rule stops you from planning what you think right; each says its source, and some are no more than custom.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where strains ends and breaks begins.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A plan in which everything holds can still hurt you. It does not examine you.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rules warnings cord strain break</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tables</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same plan to type instead of drag: sessions, sections, aid stations, fuel, foods. Type over a cell, copy to a spreadsheet and paste back. F1 explains the column you are in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spreadsheet list type rows columns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Room for anything about the whole plan. Kept as you type; it changes nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When your work was last written to its file; hover over it to see where. Every change is kept at once, so there is nothing to save and nothing to lose in a power cut. If it says not kept, the sentence beside it tells why.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clock time of the last change that was written, on your computer&apos;s clock.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>save saved file header autosave undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Earlier states</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file keeps the plan as it was each time you opened it and before a block, a course or a mend went in: the latest 30 of these, and every state you named. Going back to one of them is a step like any other, so Undo brings today&apos;s plan back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>versions go back restore earlier opening name state undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Published</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Published, quoted from memory</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Common practice, no source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Our own choice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An estimate of our own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arithmetic on your own plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Build-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your training from now to the race, one column to a week, counted down. Behind the edge of today lies what was done, ahead of it what comes. The lanes under the days show what each week adds up to.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>training block plan upper storey</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day grid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each tile is a session: its kind, its distance or time, and along its foot the shape of the ground it is run on; the heavier the ink, the harder the effort. Filled tiles are done, outlined ones are planned. Drag a tile to another day and every lane shows at once what the weeks would come to; with keys, Enter picks it up and the arrows move it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tile session calendar drag move</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weeks in view</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A small strip of the whole build-up, a bar for the distance of each week, with a frame round the weeks you see below. Drag the frame to go along, its ends for fewer or more weeks; a double click shows all.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>zoom scroll overview far</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weeks to go</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many weeks lie between this week and the week of the race, which is 0. A week begins on the day kept in the project, so no total changes with the language of your computer. Cutback and taper weeks are named under their number.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whole weeks from the start of this week to that of race week.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>countdown loading week role</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Distance of a week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the week&apos;s runs add up to: what was done where a session is done, nothing where it was missed, the plan where it still lies ahead. The race itself is left out. The tick over a loading week is its ceiling; a hatched top is above it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sum of the distances of all runs of the week. Ceiling: 1.10 times the last loading week. Strength and cross-training count no distance.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Active ultrarunners run 3347 km a year, about 64 km a week (median).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too little is a risk as well: marathoners under 30 km a week were hurt twice as often as those with 30 to 60 km.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>volume mileage kilometres ceiling bar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of last loading week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This week&apos;s distance as a share of the last week that was meant to load you. Growth is counted from there and not from a cutback week: counted from the cutback, weeks of 10 % more with a quarter off every fourth would never get anywhere.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Distance divided by that of the last loading week; before the first one, by your usual week. A week that fell short because sessions were missed is passed over; two such weeks in a row lower the yardstick to 80 %, three to 65 %, four to 50 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counting from the last loading week: 1.1 x 1.1 x 1.1 x 0.75 is 0.998.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far missed weeks lower the yardstick.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>percent growth yardstick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Longest run of a week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The longest single run of each week, against what the race asks as a level line. A tune-up race counts as a run here; the race itself does not.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The greatest distance among the week&apos;s runs, done or still planned.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In 63 runners of a 24-hour race the longest session went with distance more closely (r = 0.56) than the weekly distance did (0.31). No trial tells how long it should be.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>long lane</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On feet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How long the week&apos;s sessions take in all. On hilly ground hours say more about the week than kilometres do. Strength and cross-training count here too.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sum of the times. A run that was planned for you takes its distance plus eight times its climb, at your easy pace on level ground.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One metre of climb for eight of level ground, from records of fell races (men); ten for women.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hours duration time flat-equivalent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Climb and drop of a week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Metres up and metres down in all runs of the week, climb above the line and drop below it. Toward the race your climb per kilometre should come near the race&apos;s; drop is what makes the quads ready for long descents.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sums over the week&apos;s runs. A block built for you grows from half of the race&apos;s climb per kilometre to 0.7 of it for the floor, 0.9 for usual, all of it for ambitious.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The shares of the race&apos;s climb.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In a 27 km trail race uphill economy and how the thighs tire told more than road fitness alone (9 runners).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New descents make sore for one to three days: raise the drop step by step.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ascent descent elevation gain vert</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Practice carbs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carbohydrate taken in training to teach the gut what it must take on race day. The lane shows the highest rate practised in each week and its grams in all, against the rate of the race plan. The check asks that the last three weeks reach the race rate and that no week jumps.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grams per hour times hours, summed over the week. From what you take now the plan adds 10 g/h a week at most; the race rate is kept for the last six weeks where there is time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two weeks of eating 90 g/h while running cut gut symptoms by about 60 % in 25 runners.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The step of 10 g/h a week.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Six weeks at the race rate.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop raising the rate when you feel sick, bloated or get cramps.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gut training stomach gels eat while running lane</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One number for how much a week asked of you: effort on ten steps times minutes, over all sessions, strength included. An hour at 4 of 10 is 240.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sum over the sessions of effort times minutes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coarse: the same session rated again scattered by 28 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is too much differs from athlete to athlete.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Compare only with your own earlier weeks. It does not tell your risk of injury, and there is no number that is right for everybody.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>session load rpe training stress strain monotony</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How a block is built</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counted back from the race: taper first, then every fourth week a cutback, the loading weeks between growing to what the race asks. Sessions go on the days you have time; no two hard days meet, but for a back-to-back. What lies behind today stays as it was.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By fixed rules, so the same answers give the same block. It starts from what you run now: your last loading week and the longest run of the last 30 days. Then a search goes on for one that comes nearer to what the race asks, on the same rules and days. It is offered, never put in by itself, with how much better any could still be.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The order in which rules give way; each rule has a page.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The plan is arithmetic on what you typed. It does not examine you.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>build generate make a plan automatic search best exact</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Runway</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Is the race far enough away? Full weeks until race week, against the weeks it takes to grow from what you run now to what the race asks, cutbacks and taper included. If there are fewer, the sentence beside it says how far you get.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steps of 10 % from your week and your longest run to those asked, every fourth week a cutback, plus the taper; the longer of the two counts. Holds if at least 98 % is reached, strains from 85 %.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steps of 10 % and a cutback every fourth week.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>enough time weeks needed header</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Effort on ten steps</source>
        <translation type="unfinished"></translation>
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
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You set it; a built block proposes a step for each kind of session.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The words for each step, and the step for each kind.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That one rating of the whole session will do.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That talking tells easy from hard about as well.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Up to 4 counts as easy, 5-6 as between, from 7 as hard.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rpe perceived exertion hard easy talk scale</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HelpGiver</name>
    <message>
        <source>Help</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>HelpPanel</name>
    <message>
        <source>Search all topics</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To the topic before (Alt+Left)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close the help (Esc)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Topics found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Help: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing fits. Try one word of it.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ImportForm</name>
    <message>
        <source>Import sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Changes: {0}. Left out: {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What would change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Import</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>InHandLane</name>
    <message>
        <source>Time in hand appears with a course.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No cutoffs. Type them in Tables, Aid stations, or a time limit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From here the rest cannot be walked in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} later the rest can still be walked in, only if well.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} too late for a cutoff from here on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} in hand: later by this much, every later cutoff is still met at planned speed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>walk-in limit, only if well</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>JobDeeds</name>
    <message>
        <source>That did not work</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Jobs</name>
    <message>
        <source>This failed through a fault in the program; nothing was changed. The log has the details.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Kinds</name>
    <message>
        <source>recovery run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>easy run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>long run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>back-to-back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rehearsal run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hill run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>downhill run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tempo run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>interval session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tune-up race</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>strength</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cross-training</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>race</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recovery</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Easy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Long</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Long 2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rehearsal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hills</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Downhill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tempo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Intervals</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tune-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strength</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cross</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>RACE</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Down</source>
        <extracomment>Whole words for where the usual ones do not fit; fewer than four letters say too little.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>level</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rolling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rising</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>falling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>up and down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stairs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>uneasy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bad</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cutback</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>taper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>missed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of 10</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not marked yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>climb {0}, drop {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ground {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>effort {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} practice carbs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in the dark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fasted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>locked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}: {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Race week ({0})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} to go, a cutback week ({1})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} to go, taper ({1})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} to go ({1})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>longest run {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done {0}, effort {1}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LaneMenus</name>
    <message>
        <source>Show as a table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hide {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lanes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} (no room now)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Usual lanes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move {0} up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move {0} down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make {0} higher</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make {0} lower</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Usual height of {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show {0} as a table</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Ledger</name>
    <message>
        <source>Build-up figures</source>
        <extracomment>What of an outlook changes with the build-up alone.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Race day figures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;When it gets hard here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If …, then …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When it gets hard here</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LightLane</name>
    <message>
        <source>day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>twilight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Twilight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} from {1} to {2}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LineChoice</name>
    <message>
        <source>Which line is the course?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} holds several lines. Which is the course?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lines in the file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Read it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>track</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>route</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All {0} in order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>without a name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} ({1}): {2}, {3} points</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, climb {0}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LineView</name>
    <message>
        <source>Plan view of the course</source>
        <extracomment>The user is at a place of the course, metres, or at none.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The plan of the course appears with a course.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LinesField</name>
    <message>
        <source>One to a line</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>LongestLane</name>
    <message>
        <source>Longest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}, asked {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>longest run {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}, before {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}; the race asks {1}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>MainWindow</name>
    <message>
        <source>Open &amp;recent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lanes of the bu&amp;ild-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lanes of race da&amp;y</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none yet</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Mend</name>
    <message>
        <source>Shorten it to {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take {0} off the easy runs of that week.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make that week a cutback, every run {0} of what it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the later session to an empty day, days later: {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the later session to an empty day, days earlier: {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Practise {0} on the long runs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run it after breakfast.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run {0} of the easy runs after dark.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>NameForm</name>
    <message>
        <source>Name this state</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>before the camp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Name, found again under “Go back to an earlier state”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type a name first.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>OfferBar</name>
    <message>
        <source>&amp;Put it in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Leave it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The plan has changed since. Put in, it can be undone like any step.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Overview</name>
    <message>
        <source>Weeks in view</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All {0} weeks are in view. Drag an end to see fewer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} of {1} weeks are in view. Drag to scroll, an end for more or fewer; a double click shows all.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} weeks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} of {1} weeks</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PaceField</name>
    <message>
        <source>From {0} to {1} {2}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PastePreview</name>
    <message>
        <source>What the paste changes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The paste would change 1 cell.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The paste would change {0} cells.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It would add 1 row.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It would add {0} rows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 entry cannot be taken and is left as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} entries cannot be taken and are left as they are.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change 1 cell</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change {0} cells</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add 1 row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add {0} rows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}, add 1 row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}, add {1} rows</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PhoneForm</name>
    <message>
        <source>Picture for a lock screen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>White on black</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave room for the clock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Own size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> px</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Screen</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Plan</name>
    <message>
        <source>{0} must lie between the start and the finish.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no recording; read in one run or more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only {0} of the recording can be used, too little to learn from; read in a run of {1} or more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Climb {0}: {1}, {2}</source>
        <extracomment>OWN: ground that rises less than that over so long a way parts a climb in two. OWN: level ground up to here between a climb and a descent is no section of its own. OWN: a climb that begins or ends so near an aid station begins or ends there.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Descent {0}: {1}, {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Even pace</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 m of climb as 8 m of distance (Scarf 2007)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An hour for 5 km and for 600 m of climb (Naismith)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hiking speed by slope (Tobler 1993)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Median of hikers (Campbell 2022)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Constant power on laboratory cost (Minetti 2002)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Estimated from temperature and humidity with sun and a light wind assumed: too high under cloud and in wind, too low in full sun without wind. Not counted in the dark.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no course yet. Open a GPX file first.</source>
        <extracomment>Share of easy speed on level ground that is kept through an ultramarathon. Own choice. Metres of level ground for a metre climbed: Scarf 2007, J Sports Sci 25:719, for men. A new race is proposed this far away, at this hour; the form asks for the real date.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>about {0} of {1} days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The stops take {0} of the {1} to the finish and leave no time to run; shorten them or allow more time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody gets there in {0} with the stops planned before it; check place and time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type in a race or a long run first: distance, climb, time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A result needs a distance and a time above zero and a climb of 0 up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A run of {0} says nothing about an ultra; give one of {1} or more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The course is more than {0} times as far as anything typed in; add a longer run.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A long run is taken as {0} slower than a race.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At this length time grows with distance to the power {0} to {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing typed in is half as far as this course, so the window is wide.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} of planned stops are in it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} in {1}, worth {2} on the flat, comes to {3} here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The results lie {0} apart, which widens the window.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You slow down more than most as it gets longer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You slow down less than most as it gets longer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The section to {0} takes {1}: the free sections would be run in less than half their time. Give it less, or move the finish.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The section to {0} takes only {1}: the free sections would take more than twice their time. Give it more, or move the finish.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That session is no longer in the build-up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no aid station {0} on this course.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no section {0} on this course.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The section to {0} would have no length; leave at least 100 m.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The section that ends at {0} would have no length; leave 100 m.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no food {0} in this project.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That item is no longer in the fuel plan.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Line {0}: give a distance, a climb and a time, as 50 km, 1900 m, 6 h 40.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Up to {0} recordings are read at once; choose fewer.</source>
        <extracomment>Files that could not be used, and why.</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PlanForm</name>
    <message>
        <source>New plan</source>
        <extracomment>Of the screen, so that the window&apos;s own frame has room.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Race and runner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Does any of this apply to you?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kept in your project file alone. PAR-Q+ asks more; search for its name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Applies to me? Later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No, none of this</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yes: I ask a doctor first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep it &amp;elsewhere…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Make the plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>C&amp;hange</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The race needs a name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The finish aimed for reads like 20 h 16 and lies within 240 hours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>Mo&amp;ve what lies ahead %n weeks later too</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Mo&amp;ve what lies ahead %n weeks earlier too</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Kept in {0}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PlanView</name>
    <message>
        <source>N</source>
        <extracomment>Depths of each hue the gradient is drawn in. The scale bar takes at most this share of the width.</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PlannedBox</name>
    <message>
        <source>Planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Between the years {0} and {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Fasted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the d&amp;ark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>L&amp;ocked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Da&amp;y</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>D&amp;istance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>C&amp;limb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>D&amp;rop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Effort</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Practice carbs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Usual for this kind.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PracticeLane</name>
    <message>
        <source>Practice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>carbs, g/h and g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no practice carbs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>practice carbs {0} at up to {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}, before {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}; the race is planned at {1}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>PredictForm</name>
    <message>
        <source>Predict the finish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Predicted finish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add &amp;recordings…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keep the runs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Use as goal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type in a race or a long run, or add recordings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left out: {0}. {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}, on 8 of 10 days between {1} and {2}. Aimed for now: {3}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What you have run lately, the longer and the more like this race the better. Nothing in the plan changes until you say so.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Preview</name>
    <message>
        <source>Preview of the cards</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Profile</name>
    <message>
        <source>No heights in the file: taken as level.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height averaged over {0}; ups and downs of less than {1} not counted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height averaged over {0}; ups and downs of less than {1} not counted. Scaled to the official figures from {2} of climb and {3} of drop.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ProfileLane</name>
    <message>
        <source>No course yet. Drop a GPX file on the window.</source>
        <extracomment>Each climb or descent with its names and how wide each is. Pieces a section is stretched in. How far a stretched piece may reach past the picture it is taken from. Names of climbs stand in a lane at least so many of their lines high, with room at both sides.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The course has no heights: paced as flat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}, {1}, gradient {2}, {3}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ProfilePicture</name>
    <message>
        <source>Profile</source>
        <extracomment>Pixels of a PNG for each of the sheet: sharp on paper 16 cm wide.</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RaceColumn</name>
    <message>
        <source>What the race is called, up to {0} letters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Between the years {0} and {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The clock at the race, proposed from where the course lies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weeks are counted and summed from this day on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Race</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time &amp;zone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Finish aimed for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time &amp;limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Week begins on</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RaceDay</name>
    <message>
        <source>Profile</source>
        <extracomment>A step of the cursor, as a share of the view. The plan view is as wide as it is high, but takes no more than this share, and no less. Where lanes would become narrower than this beside it, the plan view stays out of sight. The user chose distance or clock. The user showed or hid the plan view.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Surface</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Warmth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Race day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No room for it now: make the window wider or the text smaller.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open race day</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Repair</name>
    <message>
        <source>The last day missed lies before the first; swap them.</source>
        <extracomment>Less than five minutes of one run: no change more or less can hide in it. The last long run is the longest of these days: every other one is a shorter one (own choice).</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no build-up yet; build one first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The days missed must lie in the build-up, before the race.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cutbacks stay where they are; what the missed days no longer carry gets shorter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The missed week is the cutback</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The next cutback becomes a loading week, since the missed days were rest enough.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Come back gently</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>More easy days at first, and no growth in the first loading week after them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With fever, chest symptoms or aches all over: rest, and ask a doctor. Plan on once you have been free of them for one to three days.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No return from an injury is worked out here. Ask whoever treats it whether you may run; with their clearance the block is mended.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was missed is not made up for: later weeks get no longer by it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The first {0} runs are easy, {1} to {2} of what was planned (common practice).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Volume grows on from {0} of the last loading week (common practice, no source).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After an illness, start once you have been free of fever, chest symptoms and aches for one to three days; stop and ask if they come back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pain that grows while running, or is worse next morning: stop, and ask again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} days off with {1} weeks left is a lot: think of a later race, a shorter one or a slower goal.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are then {0} loading weeks in a row.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A week stays {0} over its limit: what is locked or done already holds that much.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A race or locked run of {0} stays over 10 % longer than any run of the 30 days before ({1}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After so long a break no run of the last 30 days counts: long runs grow from {0}, a share of the last ones (own rule).</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RepairForm</name>
    <message>
        <source>I missed these days</source>
        <extracomment>It takes this share of the height of the window at most.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is missed is not made up. The rest is changed as little as the rules allow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Life: work, family, travel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Illness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Injury</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fe&amp;ver, chest symptoms or aches all over, not yet gone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whoever &amp;treats it allows running again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;First day missed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Last day missed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Show the ways to mend</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The last day missed lies before the first; swap them.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RepeatForm</name>
    <message>
        <source>Repeat every week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Repeats stop before the race. What is done stays as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the &amp;weeks that follow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Repeat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Repeat a food by rule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By the cl&amp;ock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At each &amp;aid station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At each station that &amp;has it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Food</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Servings each time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Every</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>F&amp;rom minute</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Until minute</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Added to what is there. At stations it keeps its place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Place it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No such time or station; change the rule.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RunTable</name>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Distance, {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Climb, {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Running time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Past runs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One run to a line: distance, climb, and time without long stops</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>race</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>long run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind of run {0}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>RunnerColumn</name>
    <message>
        <source>Runner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pale figures are careful guesses of ours. Type over what you know.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the floor, to finish inside the cutoffs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>usual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ambitious</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much the build-up asks: the floor, usual or ambitious</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The day of the longest run of the week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A &amp;usual week now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lon&amp;gest run, last 30 days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Eas&amp;y pace, {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Body mass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carbs you ta&amp;ke running</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bu&amp;ild-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Long &amp;run on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Minu&amp;tes free for running</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Minutes free on {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From 0 to {0} min; 0 is a day without a run</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Runway</name>
    <message>
        <source>Weeks by which a race would have to be later for all that is asked: {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What can be reached is {0} of what this race asks: look for a race about as much shorter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The longest run comes to {0}, so {1} of the race lie beyond it: plan to walk early and hold against the cutoffs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A target of {0} instead of {1} is more likely to hold, if the cutoffs allow it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Volume reaches {0} a week of the {1} asked, the longest run {2} of the {3} asked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Volume reaches {0} a week of the {1} asked; the longest run gets there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The longest run reaches {0} of the {1} asked; volume gets there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The {0} a week and the longest run of {1} that the race asks are there already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Volume binds: {0} weeks from {1} to {2} a week, cutbacks included; then the taper.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The long run binds: {0} weeks from {1} to {2}, cutbacks included; then the taper.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SchematicView</name>
    <message>
        <source>Profile</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Session</name>
    <message>
        <source>To move the legs without tiring them after a hard day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Most of the volume is easy: it builds endurance at little cost.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time on feet on the race&apos;s ground, and practice in eating and pacing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To run on tired legs without one very long run.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The race in small: its kit, food, poles, ground and start hour. Change what fails here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strength for the climbs, and practice in walking them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Earlier descents harden the quads against those of the race.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Comfortably hard running raises the pace that can be held.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Short hard pieces raise what heart and legs can do at most.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A shorter race to test pacing, food and kit among others.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Strong legs run with less effort; keep it heavy, few times and well done.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Endurance without the impact of running.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What all the rest is for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>So easy that you could sing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You can talk in whole sentences all the time; walk if not.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You can say a sentence, but would rather not.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A few words at a time on the hard pieces.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two or three repeats would still be left at the end of each set.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You can talk in whole sentences all the time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It fits into 40 minutes as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>20 minutes, or a walk.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>40 minutes easy; nothing is made up for later.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>40 minutes on the race&apos;s ground, eating as planned; move the long run if you can.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>40 minutes easy on the tired legs.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>40 minutes with pack, shoes and the race&apos;s food, at its start hour.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>10 minutes easy, four climbs of three minutes, then home.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>10 minutes easy, then 20 minutes of descents, relaxed and quick of foot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>10 minutes easy, 20 comfortably hard, 10 easy.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>10 minutes easy, four times three minutes hard, then easy.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it out and run easy; there are other races.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One set each of step-ups, slow step-downs, calf raises and a plank.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave it out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The race is run whole or stopped in good time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End it on the level, as the race does.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End it on rolling ground, as the race does.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End it with a climb, as the race does.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End it with a descent, as the race does.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End it up and down, as the race does.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End it on stairs, as the race does.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Eat {0} on the way, {1}, from what the race plan holds.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ten minutes for the head: a plan of the form if this happens, I do that; try it here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ten minutes for the head: picture one hard stretch of the race at its own pace, and how you get through it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ten minutes for the head: goals for a good, a fair and a hard day, cutoffs and kit list.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take a spare lamp, tell someone where you run, be seen on roads; no driving tired.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the heat: easy, never alone, drink to thirst. Stop if dizzy, confused or shivering. Not with fever.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before breakfast: easy only, 25 g of sugar in the pocket, eat within the hour after. Not alone in remote ground.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Expect soreness for one to three days. Dark urine, severe swelling or weakness: a doctor the same day.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SessionEditor</name>
    <message>
        <source>{0}, {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not under 18, not when pregnant, ill or injured, with diabetes, fainting or an eating disorder now or before: ask a doctor first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Too hard or too long to run fasted: easy, at most 90 min. {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fasted: easy and short only, 60 min in the first month, later 90; carry 25 g of sugar. {0}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Settings</name>
    <message>
        <source>As the system has it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the program speaks; from its next start on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Language</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How numbers and days are written, and when weeks begin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Numbers and days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For distances, heights and paces everywhere</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Units</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kilometres and metres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Miles and feet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Light or dark paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Colours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of all text in the window; cards have their own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Size of text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A moved session settles, changed figures are marked for a moment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Motion</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What race day runs along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Axis of race day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Distance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Race day shows the course from above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Course from above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each card on a page of its own, or several on a sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paper for cards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As large as the card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cards have a back, where they are longer than a page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cards on both sides</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ShapeForm</name>
    <message>
        <source>Pace of target and runner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Even effort from start to finish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Half of the forecast&apos;s fade, the usual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Own amount of &amp;fade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part of the forecast&apos;s fade kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold the fi&amp;nish when a section is changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The target keeps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the forecast&apos;s fade, &amp;part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>100 % is the forecast itself: start fast, slow down. The night and the ground slow every shape.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How you run</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fa&amp;de over the hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Uphill, of the published surcharge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Downhill, of the usual speed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Walking tired, of a fresh &amp;speed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fade: 0 never, 8 front runners, 10 the usual, 20 strong. Your own recordings tell better than a guess.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Se&amp;t</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Shelf</name>
    <message>
        <source>Kinds to put in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag into the grid, or Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}. Enter puts it on the day of the cursor, Esc closes.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StandIn</name>
    <message>
        <source>Nothing here goes down: {0} of the {1} of drop cannot be matched.</source>
        <extracomment>Gradient a class stands for where nothing of it is there.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} of the {1} of drop is left out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Instead, {0} sets of {1} slow step-downs a leg from a step, three seconds each: some of what descents do to the quads. Begin with two sets.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} of the {1} of climb is left out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The race climbs at {0}, here it is {1} at most: climb longer, or with steps of two.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StationFoodsForm</name>
    <message>
        <source>Food at stations</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Aid stations</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Foods on its table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same at e&amp;very station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the organiser offers, to be eaten there or taken along.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Set</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StationForm</name>
    <message>
        <source>Aid station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>N&amp;ote</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>C&amp;hange</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Pinned: the handbook says so, the ground stays</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sat 20:30, 14 h 30, or none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A pace&amp;r may come along from here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place, cutoff and stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;At</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>C&amp;utoff</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The cutoff &amp;is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Stop to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Crew, kit, and if I stop here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Changed or taken up here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How the cre&amp;w gets here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If I stop here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wa&amp;y out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Who &amp;fetches me</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How &amp;long it takes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nu&amp;mber to call</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tell your crew when to wake you, keep warm, and do not drive afterwards without having slept. Lying down and getting going again take time too.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>StationHead</name>
    <message>
        <source>Aid stations</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>RACE DAY</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Finish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by {0}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Store</name>
    <message>
        <source>There is no room to write {0}; what was there before is untouched. Free some space or choose another place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You are not allowed to write {0} there. Choose another place or name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The folder for {0} does not exist. Choose another place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} could not be written ({1}); what was there before is untouched. Choose another place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A part of this project is too large to keep.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is too large for a project, so it was left alone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no file {0} any more. Was it moved or renamed?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A course has between 2 and {0} points. Thin the track and open it again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} has a version this program never wrote.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} was made by a newer Ultraplanner. Update this one to open it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is of an older version. Copy it to a folder you may write to.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are {0} named states already; that is the most.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That earlier state is no longer in the file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is already a file {0}. Choose another name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>notes and settings of the plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>start, goal and kit of the race</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the runner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weeks of the block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fuel rates</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>foods</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fuel items</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>races to pick from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>recordings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>files of recordings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>aid stations and sections</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>surfaces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the line of the course (a level one stands in)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the list of contents, and with it the latest changes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing in {0} can be read any more. Open an earlier copy of it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing that is left fits together. Open an earlier copy.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The part {0} of this project is not as it should be. Open an earlier copy of the file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The part {0} cannot be kept: too long or no sensible figure. Undo the last change.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} was not closed properly. Copy it, and {0}-journal with it, to a folder you may write to, and open it there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is not an Ultraplanner project. Choose a file that ends in .ultraplan.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is damaged and was left as it is. Open an earlier copy of it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is already open in another window. Go on there, or close it there first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is already open in another window: {1} on {2} since {3}. Go on there or close it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is read-only, so changes are not kept. Save a copy in another folder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} was moved or removed while open. Move it back, or save a copy.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The disk is full: the last change of {0} is not kept. Make room on the disk.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} could not be written: the disk is full or away. Save a copy elsewhere.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} could not be read. Check that you may open it.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SurfaceLane</name>
    <message>
        <source>Unknown. Drag here to paint {0}; the menu has other surfaces.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unknown. Drag here to paint.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unknown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}. Drag to paint {1}; the menu has other surfaces.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paint with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This section is all</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>SweatForm</name>
    <message>
        <source>Sweat test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> kg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> h</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Plan fluid by it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weight &amp;before, undressed and dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weight &amp;after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>D&amp;runk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pass&amp;ed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It &amp;took</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keep it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Check the figures: that is no sweat at all.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>You sweat about {0} an hour; {1} an hour at hand is enough.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TableCourse</name>
    <message>
        <source>Cannot open the course table</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TableList</name>
    <message>
        <source>Tables</source>
        <extracomment>Another table is wanted: its number.</extracomment>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TablePage</name>
    <message>
        <source>Filter {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No row holds these words. Esc shows all.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove what the selected rows show (Delete)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TableView</name>
    <message>
        <source>Copy</source>
        <extracomment>What the help says of each column.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paste…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sort by {0}, rising</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sort by {0}, falling</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do not sort</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Tables</name>
    <message>
        <source>yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no text to paste. Copy cells first.</source>
        <extracomment>Units a pasted column may be in whatever the table shows: cells read them behind a figure.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is too much for this table: at most {0} lines of {1} cells.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is a formula. Copy what it comes to instead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is longer than a cell can be, {0} characters.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This holds signs that are not text.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The clipboard holds {0} characters, a table takes {1}. Copy fewer rows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The clipboard holds something that is not text. Copy the cells again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place</source>
        <extracomment>A cell to be filled is empty; a dash would say that there is none.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An aid station, or any place with a cutoff.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Distance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far the place is from the start.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far it is from the place before; later places move along.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Climb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All that goes up on the leg that ends here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All that goes down on the leg that ends here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Above the sea, where you know it. One is enough; none will do.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cutoff</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sat 20:30, or 20:30 for the next after the one before, or 14 h 30 of race time. At the start: when the race starts.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How long you mean to stay.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water, food, drop bag, crew, medical; what else you write stays as a note.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type the distance of the place before first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” is no cutoff. Type it as Sat 20:30, 20:30 or 14 h 30 of race time.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After the race</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>After the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counted from the planned finish. Healing has no calendar: pain goes first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on you</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drop bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>crew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shoes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>socks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lamp</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>poles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing placed yet. Place fuel by the clock, or fill to target, in the Fuel menu.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bags</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Out of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>servings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What comes from where. Packed whole, with spare; drinks weigh as powder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carried</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leaving</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carbs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Food</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fluid to the next tap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is planned until then, and the spare.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Short of room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is on you when you leave, food and full bottles.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shopping</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One serving is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Servings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In a pack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Packs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For every bag, spare among it; whole packs are bought.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By body mass and start. Not for people with diabetes without their care team.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Food at stations</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On the table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Names of foods with semicolons between; Fuel, Food at stations ticks them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the organiser offers; filling takes it there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cells past the last column are left out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The column “{0}” is not in this table and is left out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” is in a unit this table does not read; left out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leave {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Section to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Running</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Running time of the section on the target.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Forecast takes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Running time of the section on the forecast.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At walking pace</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much of the section the target takes slower than one changes to walking.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arrive</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arrival on the target.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Forecast</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arrival on the forecast.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The latest arrival, or leaving where it says so.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To this cutoff</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cutoff minus the later of the arrivals.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time in hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much later you could arrive here and still make every later cutoff at planned speed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Makes it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days of 20 on which this and every earlier cutoff is made.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The latest leaving from which every later cutoff is met at planned speed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave by, to walk in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The latest leaving from which the rest can be walked in, only if well; empty where it is over when you get there as planned.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cutoffs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cutoffs are typed under Aid stations, targets in Sections.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the packet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>published</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from memory</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mixed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drink</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>solid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>salt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tolerated</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not tried</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>avoid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gluten</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>crustaceans</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>eggs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>peanuts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>soya</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>milk</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nuts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>celery</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mustard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sesame</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sulphites</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lupin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>molluscs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Serving</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Energy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugars</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carbohydrate of one kind, or glucose and fructose together.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fructose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the packet says; empty: as the sugars say.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your gut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is marked to avoid is never filled in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Allergens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With commas between; the packet goes first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without: eaten only where it stands on a table.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Form</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Figures are</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Figures you type count as read from the packet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Food of my own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A new food needs its name.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 serving</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No foods yet. Add one and type in what its packet says.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Foods</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Figures per serving. Removing a food takes it out of the race plan as well.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a food of your own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Race time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fluid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sodium</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Caffeine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Since the start, as 1 h 30, 1:30 or 90 min.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the target brings you by then.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keeps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When the pace changes: taken at the same time, or at the same place.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no food yet. Add one under Foods.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A new item needs its food and when it is taken.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing placed yet. Add an item here, or place fuel by the clock (Ctrl+L).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fuel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type a race time (1 h 30) or a clock time (Sat 09:30).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add the same food again after the current row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Finish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Takes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carbs per hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fluid per hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By the hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the items of the table Fuel add up to, hour by hour.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By the leg</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leg to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to have with you from one aid station to the next.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This cell cannot be typed over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing to change: the table shows what the clipboard holds.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Empty cells leave what stands there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lines left out past the last row: {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lines left out past the last row: {0}. Clear the filter to add rows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>would become {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing in these columns can be typed over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new row {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>new row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark the session done first.</source>
        <extracomment>What people type for the sign of times.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Practice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Asked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>g/h</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To eat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As 2 × Gel; 1 × Banana.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gives</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Eaten</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was really eaten; it sets the carbohydrate.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That was</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No long run and nothing to practise yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two runs of an hour that sat well show what your gut takes; Fuel offers it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Propose food</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Food of the race plan for what is to be practised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Eaten as planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was to be eaten was eaten</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Column</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Becomes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not taken, because</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>food</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>medical</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” is not a distance. Type it as {1} or {2}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” is not a height. Type it as {1} or {2}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” is not a duration. Type 1 h 30, 1:30 or 90 min.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” is not a pace. Type it as 12:51, in {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” is not a number. Type figures only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” is not a whole number. Type one without decimals.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” is neither yes nor no.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” is none of the choices here: {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” is not a date. Type it as {1} or {2}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” is neither a clock time nor a duration. Type it as {1}, {2} or 14 h 30.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>“{0}” is not known. There can be {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is off the course, which is {0} long.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No course yet. Drop a GPX file on the window.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where it ends; the aid station there moves along.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Target</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pace while moving. Typing one fixes it; empty lets it follow the curve.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time without stops. Typing one fixes it; empty lets it follow the curve.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fixed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whether you set its target yourself.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Window</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where 8 of 10 arrivals fall in 10,000 simulated races; an estimate of our own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cutoff minus arrival.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When it gets hard here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sections</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each aid station ends a section; add one there to split.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Follow the curve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let the selected sections follow the target curve again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fix as it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the targets of the selected sections as they are</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>missed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type what was done, or choose planned or missed under State.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Year, month, day. 14 Feb or 14/2 will do as well.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To go</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weeks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weeks to the race; 0 is the race week.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Effort</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of 10</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>carbs g/h</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carbohydrate to be taken, to train the gut.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fasted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run before breakfast; easy and short only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run by lamp.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>State</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Distance really run; typing one marks it done.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time really taken; typing one marks it done.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A new session needs its date.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No sessions yet. Add one here, or drop a GPX file first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No sessions yet. Add one here, or build the block from the Build-up menu.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sessions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What stands in full ink can be typed over. Ctrl+C copies cells with their heads.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add an easy run on the day of the current row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark the selected sessions done as planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Missed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark the selected sessions missed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Aid station</source>
        <extracomment>No station has an empty key, so that the finish can stand in the same table.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When the target brings you there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sat 20:30, or 20:30 for the first after the start, or 14 h 30 of race time; empty for none. The limit at the finish is set under Race and runner.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cutoff after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>race time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same, counted from the start.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the stop is for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pacer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whether a pacer may come along from here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Water, food, drop bag, crew, medical, with commas between.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A new aid station needs its name and where it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Aid stations</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A cutoff is typed as Sat 20:30, 20:30 or 14 h 30 of race time; empty for none.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add an aid station after the current one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Surface</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The surface is known to the finish. Change a row instead.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A stretch needs where it begins, where it ends and on what.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No surface is known yet. Add a stretch, or paste a table.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Surfaces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unknown ground costs what firm ground does.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a stretch of surface after the current one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>loading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cutback</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>taper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>race</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begins</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of last loading week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On feet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Longest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>30 days before it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>effort × min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No weeks yet. Build the block from the Build-up menu.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weeks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was done counts, else what is planned; missed sessions count nothing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Build-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Race day</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TargetLane</name>
    <message>
        <source>Target</source>
        <extracomment>Steps to the right and up.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}
faster up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Targets appear with a course.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}. Drag the top to change it, the right edge to move the end.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At walking pace here: {0} at {1} {2}, {3} up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move with the arrow keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let the section follow the curve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the finish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To {0}: {1} {2}, {3} running</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>forecast</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TitleRow</name>
    <message>
        <source>RACE DAY</source>
        <extracomment>The user wants the plan view shown or hidden.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by distance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by clock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plan view</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TrustDeeds</name>
    <message>
        <source>{0} is read-only: changes are not kept. Save a copy to keep them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is only a look at {0}. Save a copy to keep changes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was rescued</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was rescued</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not as it was kept, look at it before you go on: {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everything kept last could be read. Only the history may have gaps.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cannot open the project</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Look at it without changing it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Rescue what can be read…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This state is named “{0}”.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TuneUp</name>
    <message>
        <source>A tune-up race comes before the race; set an earlier day.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TuneUpForm</name>
    <message>
        <source>At least three weeks before the race, four if it is long; up to half its time.</source>
        <extracomment>From here on, as climb over distance, the ground goes up and down; our own choice.</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What it is called; kept as the note of the session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>likely</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>D&amp;istance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Climb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>D&amp;rop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Time, if you know</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Put it in</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TypeBack</name>
    <message>
        <source>Type a week back in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} cannot be read here: {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} to go, from {1}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>TypeIn</name>
    <message>
        <source>{0}, new figure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A distance, a time such as 1 h 30, or a kind and one of them</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>UndoList</name>
    <message>
        <source>Steps of this sitting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click one, or press Enter on it: the plan becomes what it was after it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As it was opened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} taken back. Until you change something you can go over them again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was changed yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The plan is as after the last step.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}, here the plan stands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}, taken back</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>ViewDeeds</name>
    <message>
        <source>Click what is to be explained; Esc leaves it.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WarmthLane</name>
    <message>
        <source>No weather yet: Race day, Weather and conditions.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} when you pass, in the dark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} when you pass; WBGT about {1}, {2}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>WBGT estimate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>low heat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moderate heat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>high heat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>very high heat</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Week</name>
    <message>
        <source>Own rule</source>
        <extracomment>As long as this takes a night with it whatever the start (own rule).</extracomment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Common practice, no source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Own words; medical review advised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Run {0} in {1}, as planned and no more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Travel: tickets, room, car and the way to the start; who goes when.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sleep: go to bed half an hour to an hour earlier from tonight. The last night is often poor; these nights count more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Feet: cut nails straight, file hard skin thin, do not cut it. Tape and socks as in your long runs, nothing new.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay out what you wear, pin the number, charge watch, phone and lamps.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To bed, two alarms set. Lying still is rest too if sleep does not come.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kit: no mandatory list is in the plan; read the rules.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mandatory kit, tick it and note where it goes (body, vest, bag): {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bag for {0}: pack {1}, close and label it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bags: food as in the table of bags; a name on each.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Way home: {0} drives, and has slept. Ask once more; you do not drive.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Way home: nobody is named yet. Find who drives; you do not, without sleep.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chafing: grease feet, groin, underarms, chest and under the vest&apos;s straps.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the start: toilet, bag handed in, lamp and phone on you.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry clothes, sit, eat, drink to thirst. No ibuprofen or the like: the kidneys have enough to do.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do not drive: you have been up all night. Sleep first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No running for {0} days; walk a little, sleep a lot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First easy run if walking and stairs do not hurt; easy only to day {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First hard session not before day {0}, and only if fresh.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The next race of this size: after {0} weeks at the soonest.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Emergency call at any time: chest pain, fainting, confusion, a fit, severe breathlessness.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A doctor the same day: dark or no urine, vomiting that goes on, puffy hands with headache, black stool, a hot or swollen calf, fever.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Still pain on one spot of bone, at night, or in groin, hip or sacrum: no running until it has been seen.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Low for more than two weeks, sleepless, ill again and again: talk to a doctor.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WeekHead</name>
    <message>
        <source>Weeks to go</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n weeks are out of view here</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>BUILD-UP</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weeks to go</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>today</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WeekPanel</name>
    <message>
        <source>Week of {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>★ the two to keep if the week falls apart (common practice, no source). Keys: D done as planned, C changed, M missed, U neither.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}, today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}, effort {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Week &amp;before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Week &amp;after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Session</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>Welcome</name>
    <message>
        <source>Drop a course here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A GPX file of the race, with or without heights. You get its profile, a build-up counted back from race day, section targets, fuel and cards to print.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New from a &amp;course…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Type a course table…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Open project…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the &amp;demo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open {0}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WholeField</name>
    <message>
        <source>From {0} to {1}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WishesForm</name>
    <message>
        <source>Wishes and days away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>C&amp;hange</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>_AwayRow</name>
    <message>
        <source>Why, if you like</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First day away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last day away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Minutes free on each day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>_BankCard</name>
    <message>
        <source>Outline as large as a bank card should be</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>_CrewPage</name>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What they do</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>who has slept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Crew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Drives home</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Ask everywhere</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>_Figures</name>
    <message>
        <source>What is run now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Empty or 0: unknown. Distances stand in Race and runner.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On fee&amp;t in a usual week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lon&amp;gest run lasted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its &amp;drop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Easy effort clim&amp;bs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what suits the race</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>distance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>time on feet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flat-equivalent distance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Volume counted by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Runs start, &amp;Mon to Fri</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>R&amp;uns start, Sat and Sun</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>_HardPage</name>
    <message>
        <source>If</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>then</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on the way to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;If … then</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Words to myself</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>_ListsPage</name>
    <message>
        <source>what the race rules ask for, one to a line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Mandatory kit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To &amp;pack besides</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To &amp;buy besides food</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bag at the &amp;finish</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>_PlacesPage</name>
    <message>
        <source>&amp;Station</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Way there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wh&amp;o comes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Hand over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Ask here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the &amp;bag</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>If I stop: wa&amp;y out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Fetched by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Takes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Number</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>_Table</name>
    <message>
        <source>Sessions of the week</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>_WhoPage</name>
    <message>
        <source>name and number of someone at home</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>allergies, medicines, blood group, one to a line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Full name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Race &amp;number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Born</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Call</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Race &amp;emergency</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Medical</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>_WishFields</name>
    <message>
        <source>Wishes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>every 4th week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>every 3rd week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on from the last loading week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>back to it first, the gentler one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>where the race asks for them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Cutback</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weeks &amp;after it grow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Downhi&amp;ll runs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Strength</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cr&amp;oss-training</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Fasted easy runs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>H&amp;eat days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fasted runs and heat days: only after the questions on health came to no. Not under 18, pregnant, ill, injured, with diabetes, fainting or an eating disorder.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back-to-bac&amp;ks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Night runs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mental &amp;rehearsal</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
