"""The paper sheet as a page that prints on one side of Letter or A4: up to the opening on the left, then the rest."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Literal

from selfcheck.report.markup import Html, document, join, tag, text
from selfcheck.report.sheet import Box, Item, Mark, Sheet

Paper = Literal["letter", "a4"]
SIZES: dict[Paper, str] = {"letter": "8.5in 11in", "a4": "210mm 297mm"}

_STYLE = """
@page { size: SIZE; margin: 8mm }
* { box-sizing: border-box }
html { color: #000; background: #fff; font: 8.6pt/1.22 Arial, Helvetica, 'Liberation Sans', sans-serif;
  -webkit-print-color-adjust: exact; print-color-adjust: exact }
body { margin: 0 auto; max-width: 200mm }
h1 { font-size: 13pt; margin: 0; overflow: hidden; text-overflow: ellipsis; white-space: nowrap }
header span { flex: none }
h2 { font-size: 10.5pt; margin: 0 0 1mm; border-bottom: .5pt solid #000 }
h2 .n { display: inline-block; width: 4.6mm; height: 4.6mm; border-radius: 50%; background: #000; color: #fff;
  text-align: center; font-size: 9pt; line-height: 4.6mm; margin-right: 1.5mm }
p, ul { margin: 0 0 1mm }
ul { padding: 0; list-style: none }
header { display: flex; justify-content: space-between; align-items: baseline; gap: 5mm }
.fill { white-space: nowrap; font-weight: bold }
.fill i { display: inline-block; width: 26mm; border-bottom: .7pt solid #000 }
.danger { border: 1.6pt solid #000; padding: 1mm 2mm; margin: 1.2mm 0 1.6mm }
.danger b { font-size: 11pt }
.sides { display: grid; grid-template-columns: 1fr 1.06fr; gap: 5mm }
section { margin-bottom: 1.4mm; break-inside: avoid }
.tick { display: flex; gap: 1.9mm; align-items: flex-start; font-weight: bold }
.tick::before { content: ''; flex: none; width: 3.9mm; height: 3.9mm; border: 1pt solid #000 }
.circle b { margin-right: 1mm }
.circle span { display: inline-block; padding: 0 1.5mm; margin: .25mm 0; border: .5pt solid #aaa; border-radius: 2.4mm }
.only { font-style: italic; color: #333; font-weight: normal }
.circle .only { border: 0; padding: 0; margin-right: 1mm }
.stop { border: 1.6pt solid #000; padding: 1mm 2mm; font-weight: bold; font-size: 10pt; text-align: center }
.marks { border: .7pt solid #000; padding: .6mm 1.5mm; margin-bottom: 1mm; display: grid;
  grid-template-columns: 1fr 1fr; gap: 0 2mm }
.marks > :first-child { grid-column: 1 / -1; font-weight: bold }
.mark { display: grid; grid-template-columns: auto 1fr; gap: 2mm; align-items: center; font-size: 7.8pt;
  line-height: 1.12 }
.mark strong { font-size: 18pt; line-height: 1.2; white-space: nowrap }
.boxes { display: grid; grid-template-columns: repeat(3, 1fr); gap: 1.4mm 2mm; margin-bottom: 1.4mm }
.box { display: flex; flex-direction: column; justify-content: flex-end }
.box i { border: 1pt solid #000; height: 8.8mm; display: flex; justify-content: flex-end; align-items: flex-end;
  padding: .4mm 1mm; font-style: normal; color: #333 }
table { border-collapse: collapse; margin: .5mm 0 1mm }
td, th { border: .5pt solid #000; padding: .2mm 1.4mm; text-align: center; font-weight: normal }
th { text-align: left } td { font-weight: bold }
.notes { border-bottom: .7pt solid #000; min-height: 6mm }
footer { font-size: 7.4pt; color: #333 }
@media screen { body { padding: 4mm } }
@media screen and (max-width: 640px) { html { font-size: 13px } .sides { grid-template-columns: 1fr }
  header { flex-wrap: wrap } }
"""


def sheet_page(sheet: Sheet, paper: Paper = "letter") -> str:
    """The sheet as one HTML file for printing on `paper`."""
    left = tag(
        "div",
        _part(
            1,
            sheet.before_title,
            tag("p", tag("b", f"{sheet.lid[0]}: "), f"{sheet.lid[1]}."),
            tag("p", sheet.people),
            *(_circle(item) for item in sheet.early_signs),
            tag("p", tag("b", f"{sheet.bring[0]}: "), sheet.bring[1]),
            _marks(*sheet.pole),
            _marks(*sheet.stick),
        ),
        _part(2, sheet.gate_title, tag("p", sheet.gate_say), *(tag("p", one, class_="tick") for one in sheet.gate)),
        tag("p", sheet.gate_stop, class_="stop"),
        _part(3, sheet.open_title, tag("p", sheet.lid_off)),
    )
    right = tag(
        "div",
        _part(4, sheet.look[0], tag("p", sheet.look[1]), *(_circle(item) for item in sheet.look[2])),
        _part(5, sheet.crust[0], tag("p", f"{sheet.crust[1]} {sheet.crust[2]}"), _boxes(sheet.crust[3], sheet.unit)),
        _part(6, sheet.pole_title, tag("p", sheet.pole_do), _boxes(sheet.boxes, sheet.unit), _by_crust(sheet)),
        _part(
            7,
            sheet.close[0],
            tag("p", sheet.close[1]),
            *(tag("p", one, class_="tick") for one in sheet.close[2]),
            tag("p", sheet.close[3]),
            tag("p", sheet.notes, class_="notes"),
        ),
        tag("footer", f"{sheet.made} {sheet.always}"),
    )
    return document(
        sheet.title,
        _STYLE.replace("SIZE", SIZES[paper]),
        tag("header", tag("h1", sheet.title), _fill(sheet.day), _fill(sheet.who)),
        tag("p", sheet.shut, class_="stop") if sheet.shut else None,
        _danger(sheet),
        tag("main", left, right, class_="sides"),
    )


def _danger(sheet: Sheet) -> Html:
    signal, when, what = sheet.danger
    calls = f" {' · '.join(sheet.contacts)}" if sheet.contacts else ""
    return tag("div", tag("b", f"{signal}. {when}: "), what, text(calls), class_="danger")


def _fill(name: str) -> Html:
    return tag("span", f"{name} ", tag("i"), class_="fill")


def _part(number: int, title: str, *inside: Html | None) -> Html:
    return tag("section", tag("h2", tag("span", str(number), class_="n"), title), *inside)


def _circle(item: Item) -> Html:
    only = tag("span", f"({item.only})", class_="only") if item.only else None
    name = tag("b", item.name)
    return tag("p", name, only, *(join(" ", tag("span", one)) for one in item.choices), class_="circle")


def _marks(name: str, marks: Iterable[Mark]) -> Html:
    return tag("div", tag("div", name), *(_mark(one) for one in marks), class_="marks")


def _mark(mark: Mark) -> Html:
    said = f"{mark.name}: {mark.about}" if mark.about else mark.name
    return tag("div", tag("strong", mark.figure), tag("span", said), class_="mark")


def _boxes(boxes: Iterable[Box], unit: str) -> Html:
    return tag("div", *(_box(one, unit) for one in boxes), class_="boxes")


def _box(box: Box, unit: str) -> Html:
    only = join(" ", tag("span", f"({box.only})", class_="only")) if box.only else None
    return tag("div", tag("span", box.name, only), tag("i", unit), class_="box")


def _by_crust(sheet: Sheet) -> Html | None:
    lead, crust, rows = sheet.by_crust
    if not rows:
        return None
    first = tag("tr", tag("th", crust, scope="row"), *(tag("td", one) for one, _ in rows))
    second = tag("tr", tag("th", sheet.pole[1][0].name, scope="row"), *(tag("td", mark) for _, mark in rows))
    return join(tag("p", lead), tag("table", first, second))
