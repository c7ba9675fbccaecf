"""The words of the face itself. Another language brings a table with the same keys."""

from __future__ import annotations

from collections.abc import Mapping


class FaceWords:
    """Names of keys, titles of pages, and the few lines that no conversation says. A plain class: it is quick to load."""

    opening: str = "Opening the record."
    working: str = "Working it out."
    answer_here: str = "type here"
    lid_open: str = "lid open"
    why: str = "why"
    how: str = "how"
    back: str = "back"
    change: str = "change"
    unknown: str = "not sure"
    tank: str = "tank"
    trouble: str = "trouble"
    help: str = "help"
    leave: str = "save and leave"
    close: str = "close this page"
    next: str = "go on"
    more: str = "more below"
    earlier: str = "earlier words"
    home: str = "home"
    quit: str = "quit"
    repeat: str = "say it again"
    dark_page: str = "Dark page"
    light_page: str = "Light page"
    plain_page: str = "Plain page"
    page_colours: str = "Colours of the page"
    tank_title: str = "The tank"
    tank_last: str = "The tank as last seen"
    help_title: str = "What you can do here"
    help_typing: str = (
        "Type an answer in your own words and press enter. "
        "A number picks one of the choices. You may also type a question about the job."
    )
    help_keys: str = "Each of these works as a key and as words you type:"
    help_saved: str = "Every answer is saved before the next question comes. You can stop at any time and go on later."
    record_title: str = "Your record"
    record_empty: str = "There is no check on record yet."
    record_check: str = "check"
    record_pump_out: str = "pump-out"
    record_replaces: str = "corrects"
    look_again: str = "Look again by"
    last_seen: str = "Last check"
    never_seen: str = "No check on record yet."
    half_done: str = "Half done"
    go_on: str = "Go on where you stopped"
    start_again: str = "Start afresh"
    not_now: str = "Not now"
    half_done_ask: str = "One is half done, with {count} answers since {day}. What would you like?"
    half_done_line: str = "{title}, with {count} answers since {day}"
    because: str = "Because"
    seen: str = "What was seen"
    not_checked: str = "What was not checked"
    would_change: str = "What would change this"
    whose_rule: str = "By whose rule"
    when_next: str = "When next"
    how_sure: str = "How sure"
    by_when: str = "By"
    first_note: str = "This is not an inspection. Local code and licensed practice come first."
    ready_to_leave: str = "Press ctrl+c again to leave. Everything is saved."
    answer_lid_first: str = (
        "One question about the lid first. Press ctrl+c again to stop at once. Your answers are kept."
    )
    demonstration: str = "An invented household. What you type goes into a copy."
    playing: str = "A prepared conversation. Press enter for the next answer."
    played: str = "The prepared conversation has ended. You may go on yourself."

    @classmethod
    def from_table(cls, table: Mapping[str, object]) -> FaceWords:
        """The words of another language; a key it does not have keeps its English."""
        words = cls()
        for key, value in table.items():
            if key in cls.__annotations__ and isinstance(value, str):
                setattr(words, key, value)
        return words
