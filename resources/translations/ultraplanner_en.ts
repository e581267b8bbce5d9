<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>DayGrid</name>
    <message numerus="yes">
        <source>{0}; and %n more selected</source>
        <translation>
            <numerusform>{0}; and %n more selected</numerusform>
            <numerusform>{0}; and %n more selected</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Finder</name>
    <message numerus="yes">
        <source>%n found. Enter does it or goes there, Esc closes.</source>
        <translation>
            <numerusform>%n found. Enter does it or goes there, Esc closes.</numerusform>
            <numerusform>%n found. Enter does it or goes there, Esc closes.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PlanForm</name>
    <message numerus="yes">
        <source>Mo&amp;ve what lies ahead %n weeks later too</source>
        <translation>
            <numerusform>Mo&amp;ve what lies ahead %n week later too</numerusform>
            <numerusform>Mo&amp;ve what lies ahead %n weeks later too</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>Mo&amp;ve what lies ahead %n weeks earlier too</source>
        <translation>
            <numerusform>Mo&amp;ve what lies ahead %n week earlier too</numerusform>
            <numerusform>Mo&amp;ve what lies ahead %n weeks earlier too</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>TemplateForm</name>
    <message numerus="yes">
        <source>%n weeks ahead, the largest {0}.</source>
        <translation>
            <numerusform>%n week ahead, the largest {0}.</numerusform>
            <numerusform>%n weeks ahead, the largest {0}.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n sessions are left out: they fall before today, or on what stays.</source>
        <translation>
            <numerusform>%n session is left out: it falls before today, or on what stays.</numerusform>
            <numerusform>%n sessions are left out: they fall before today, or on what stays.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n rules break</source>
        <translation>
            <numerusform>%n rule breaks</numerusform>
            <numerusform>%n rules break</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n rules strain</source>
        <translation>
            <numerusform>%n rule strains</numerusform>
            <numerusform>%n rules strain</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>WeekHead</name>
    <message numerus="yes">
        <source>%n weeks are out of view here</source>
        <translation>
            <numerusform>%n week is out of view here</numerusform>
            <numerusform>%n weeks are out of view here</numerusform>
        </translation>
    </message>
</context>
</TS>
