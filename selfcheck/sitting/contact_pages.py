"""Whom to call: who is on record, with name and number."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from selfcheck.domain.household import Contact
from selfcheck.sitting.steps import Back, Go, Page, Part, Stay, Step, Way

if TYPE_CHECKING:
    from selfcheck.sitting.record_pages import RecordPages

#: contacts shown, so that each has a number key
MOST = 6
CAP = 80  # signs of a name or a number


class ContactPages:
    """The contacts of one household. One that was taken off can be put back as long as these pages are open."""

    def __init__(self, record: RecordPages) -> None:
        self._record = record
        self._sitting = record.sitting
        self._words = record.words
        self._taken_off: Contact | None = None

    def root(self) -> Page:
        """Everybody on record."""
        words = self._words
        contacts = self._sitting.household.contacts
        ways = [Way(self._line(one), partial(Go, partial(self._one, at))) for at, one in enumerate(contacts[:MOST])]
        if len(contacts) < MOST:
            ways.append(Way(words("contacts", "add"), lambda: Go(self._add), ("add",)))
        taken_off = self._taken_off
        if taken_off is not None:
            label = words("contacts", "put_back", role=taken_off.role)
            ways.append(Way(label, lambda: self._put_back(taken_off), ("undo", "put back")))
        parts = () if contacts else (Part((words("contacts", "none"),)),)
        return Page(words("contacts", "title"), parts, tuple(ways))

    def _line(self, one: Contact) -> str:
        words = self._words
        name = one.name or words("contacts", "not_named")
        return words("contacts", "row", role=one.role, name=name, phone=one.phone).strip()

    def _one(self, at: int) -> Page:
        words = self._words
        one = self._sitting.household.contacts[at]
        none = words("contacts", "none_yet")
        told = " ".join(part for part in (one.name or words("contacts", "not_named"), one.phone) if part)
        ways = (
            Way(
                words("contacts", "name", name=one.name or none), lambda: Go(partial(self._type, at, "name")), ("name",)
            ),
            Way(
                words("contacts", "phone", phone=one.phone or none),
                lambda: Go(partial(self._type, at, "phone")),
                ("number",),
            ),
            Way(words("contacts", "take_off"), lambda: self._take_off(at), ("delete", "remove")),
        )
        return Page(one.role, (Part((told,), kind="strong"),), ways)

    def _type(self, at: int, field: str) -> Page:
        def hear(line: str) -> Step:
            wrong = self._wrong(field, line)
            if wrong:
                return Stay(wrong, "trouble")
            contacts = list(self._sitting.household.contacts)
            contacts[at] = contacts[at].model_copy(update={field: line})
            return self._keep(contacts, Back(1, self._words("contacts", "kept")))

        ask = self._words("contacts", f"ask_{field}")
        return Page(self._sitting.household.contacts[at].role, hear=hear, ask=ask)

    def _wrong(self, field: str, line: str) -> str:
        if len(line) > CAP:
            return self._words("contacts", "too_long", most=str(CAP))
        if field == "phone" and not any(sign.isdecimal() for sign in line):
            return self._words("contacts", "phone_odd")
        return ""

    def _add(self) -> Page:
        words = self._words

        def add(role: str) -> Step:
            if len(role) > CAP:
                return Stay(words("contacts", "too_long", most=str(CAP)), "trouble")
            contacts = [*self._sitting.household.contacts, Contact(role=role)]
            return self._keep(contacts, Go(partial(self._one, len(contacts) - 1), replace=True))

        roles = tuple(words.of("roles").values())
        ways = tuple(Way(role, partial(add, role)) for role in roles)

        return Page(
            words("contacts", "add"),
            ways=ways,
            hear=add,
            hint=words("contacts", "hint_role"),
            ask=words("contacts", "ask_role"),
        )

    def _take_off(self, at: int) -> Step:
        contacts = list(self._sitting.household.contacts)
        self._taken_off = contacts.pop(at)
        said = self._words("contacts", "taken_off", role=self._taken_off.role)
        return self._keep(contacts, Back(1, said))

    def _put_back(self, one: Contact) -> Step:
        self._taken_off = None
        return self._keep([*self._sitting.household.contacts, one], Stay(self._words("contacts", "kept")))

    def _keep(self, contacts: list[Contact], then: Step) -> Step:
        whole = self._sitting.household.model_dump(mode="json", by_alias=True)
        self._sitting.keep_household({**whole, "contacts": [one.model_dump(mode="json") for one in contacts]})
        trouble = self._sitting.trouble
        return Stay(trouble, "trouble") if trouble else then
