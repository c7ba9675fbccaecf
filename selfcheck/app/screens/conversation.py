"""The page on which the talking is done."""

from __future__ import annotations

from collections.abc import Sequence
from time import monotonic
from typing import TYPE_CHECKING, ClassVar, Literal

from textual import on
from textual.app import ComposeResult
from textual.binding import Binding, BindingType
from textual.containers import Horizontal
from textual.widgets import Input

from selfcheck.app.screens.choosing import ChoosingScreen
from selfcheck.app.screens.hints import hints_for
from selfcheck.app.widgets.answer import AnswerInput
from selfcheck.app.widgets.choices import Choices, Option
from selfcheck.app.widgets.drawn import DrawnPanel
from selfcheck.app.widgets.keys import KeyHint, KeyRow
from selfcheck.app.widgets.lines import Across, Mark
from selfcheck.app.widgets.log import MessageLog, Own, Said
from selfcheck.app.widgets.stage import StageLine
from selfcheck.app.widgets.tank import TankLine, TankPanel
from selfcheck.app.words import FaceWords
from selfcheck.errors import SelfcheckError

if TYPE_CHECKING:
    from selfcheck.app.at_desk import Origin
    from selfcheck.interview.dialogue import Conversation

Command = Literal["why", "how", "back", "change", "repeat", "unknown", "skip", "leave", "trouble", "help", "quit"]
#: kinds of question whose answer is one of the numbered choices, so that a number key alone is the answer
PICKED_BY_KEY = ("choose", "confirm", "say")
#: the kind where number keys mark choices, and enter sends those that are marked
SEVERAL = "choose_several"


class ConversationScreen(ChoosingScreen):
    """Shows a conversation and passes on what a person says. It decides nothing itself."""

    CSS_PATH = "conversation.tcss"
    #: seconds a question stands before a number key alone answers it, so that a key held down or hit twice does not
    #: answer what nobody has read; our choice
    BREATH: ClassVar[float] = 0.25
    BINDINGS: ClassVar[list[BindingType]] = [
        Binding("f2", "tell('why')", show=False),
        Binding("f3", "tell('how')", show=False),
        Binding("f4", "tell('back')", show=False),
        Binding("f5", "tell('change')", show=False),
        Binding("f6", "tell('unknown')", show=False),
        Binding("f8", "tell('trouble')", show=False),
        Binding("f9", "tell('repeat')", show=False),
        Binding("f10", "tell('leave')", show=False),
        Binding("f12", "sheet", show=False),
        Binding("pageup", "scroll(-1)", show=False),
        Binding("pagedown", "scroll(1)", show=False),
        Binding("escape", "empty", show=False),
    ]

    def __init__(
        self,
        conversation: Conversation,
        title: str,
        words: FaceWords,
        first: Sequence[Said],
        play: Sequence[str] = (),
        origin: Origin | None = None,
    ) -> None:
        """`first`: what it began with. `play`: prepared lines; each enter on an empty line gives the next.

        `origin`: the page that began it, to which it goes back.
        """
        super().__init__()
        self.conversation = conversation
        self.heading = title
        self._words = words
        self._first = tuple(first)
        self._leaving = False
        self._script = list(play)
        self._origin = origin
        self.drawn = origin.talk.beside if origin is not None else None
        self._trouble = ""
        self._concluded = False
        self._asked = ""
        self._shown_at = 0.0

    def compose(self) -> ComposeResult:
        words = self._words
        yield StageLine(words("lid_open"), id="stage")
        if self.drawn is None:
            yield TankLine(id="tank-line")
        with Horizontal(id="body"):
            yield MessageLog(more=words("more"), id="log")
            yield DrawnPanel(id="tank") if self.drawn is not None else TankPanel(id="tank")
        yield Across(id="rule")
        yield Choices(more=words("more"), id="choices")
        with Horizontal(id="line"):
            yield Mark(id="mark")
            yield AnswerInput(id="answer")
        yield KeyRow((), id="keys")

    def on_mount(self) -> None:
        """Show how it began; what was said before a break steps back."""
        self.set_class(self.drawn is not None, "-drawn")
        playing = [Own("note", self._words("playing"))] if self._script else []
        before = _before_the_break(self._first)
        if before:
            self.query_one(MessageLog).add(self._first[:before])
        self._show([*playing, *self._first[before:]])

    def hear(self, line: str) -> None:
        """Pass a line on. What cannot be kept is said, and the line stays to be sent again."""
        answer = self.query_one(AnswerInput)
        if self._asks_for_sheet(line):
            self.action_sheet()
            return
        if line.strip().casefold() == self._words("quit"):
            self._leaving = True
        try:
            messages = self.conversation.hear(line)
        except SelfcheckError as error:
            self._refused(line, error)
            return
        self._show(messages)
        if any(message.kind == "trouble" for message in messages) and line.strip():
            answer.value = line
            answer.action_select_all()

    def leave(self) -> None:
        """The way out by ctrl+c: first a word or the question about the lid, then out."""
        prompt = self.conversation.prompt
        if self.conversation.ending is not None or self._leaving:
            self.app.exit(0)
            return
        self._leaving = True
        if prompt is not None and prompt.may_stand_open:
            self._show([*self.conversation.do("leave"), Own(kind="note", text=self._words("lid_first"))])
        else:
            self.query_one(MessageLog).add([Own(kind="note", text=self._words("ready_to_leave"))])

    def action_tell(self, command: Command) -> None:
        """A command by key."""
        if self.conversation.ending is None:
            try:
                self._show(self.conversation.do(command))
            except SelfcheckError as error:
                self._refused("", error)

    def _asks_for_sheet(self, line: str) -> bool:
        from selfcheck.sitting.paper_pages import asks_for_sheet

        sitting = self.selfcheck.sitting
        return sitting is not None and asks_for_sheet(sitting, line)

    def action_sheet(self) -> None:
        """Make the paper sheet as a file, and say where it is."""
        from selfcheck.sitting.paper_pages import sheet_made

        sitting = self.selfcheck.sitting
        if sitting is not None:
            self.query_one(MessageLog).add([Own("help", sheet_made(sitting))])

    def action_scroll(self, pages: int) -> None:
        """Read back, or come forward again."""
        self.query_one(MessageLog).turn_page(pages)

    def action_empty(self) -> None:
        """Empty the line one types on, and take back a first step out."""
        self.query_one(AnswerInput).value = ""
        self._leaving = False
        choices = self.query_one(Choices)
        for number in list(choices.marked):
            choices.mark(number)

    def _refused(self, line: str, error: SelfcheckError) -> None:
        self.query_one(MessageLog).add([Own(kind="trouble", text=f"{error.what} {error.mend}")])
        self.query_one(AnswerInput).value = line

    def _show(self, messages: Sequence[Said]) -> None:
        sitting = self.selfcheck.sitting
        trouble = sitting.trouble if sitting is not None else ""
        if trouble and trouble != self._trouble:
            messages = [Own("trouble", self._words("not_saved", trouble=trouble)), *messages]
        self._trouble = trouble
        if self.drawn is not None and self.conversation.state.answered.danger:
            self.query_one(DrawnPanel).display = False  # what to do in danger needs the room
        self.query_one(MessageLog).add(messages)
        self._show_prompt()
        if self.conversation.ending is not None:
            self._ended()

    def _show_prompt(self) -> None:
        prompt, words = self.conversation.prompt, self._words
        answer, choices = self.query_one(AnswerInput), self.query_one(Choices)
        if prompt is None:
            choices.set(())
            answer.picks, answer.placeholder = False, ""
            return
        self.query_one(StageLine).set(self.heading, prompt.stages, prompt.may_stand_open)
        several = prompt.kind == SEVERAL
        if prompt.question != self._asked or not several:
            self._asked, self._shown_at = prompt.question, monotonic()
        choices.set([Option(choice.number, choice.label) for choice in prompt.choices], several)
        answer.picks = (several or prompt.kind in PICKED_BY_KEY) and 0 < len(prompt.choices) <= 9
        answer.placeholder = prompt.hint or words("answer_here")
        self.query_one(KeyRow).set(hints_for(prompt, self.drawn is not None, words))
        self._show_tank()

    def _show_tank(self) -> None:
        if self.drawn is not None:
            self.query_one(DrawnPanel).set(self.drawn)
            return
        picture, units = self.selfcheck.picture_of(self.conversation)
        self.query_one(TankPanel).set(picture, units)
        self.query_one(TankLine).set(picture, units)

    def _ended(self) -> None:
        ending = self.conversation.ending
        assert ending is not None
        self.query_one(KeyRow).set([KeyHint("enter", self._words("next"), "app.after_ending")])
        if ending.left and self._leaving:
            self.app.exit(0)
        elif self._origin is not None and self.selfcheck.at_desk.ended(self._origin, self.conversation):
            pass
        elif not ending.left:
            if not self._concluded:
                self._concluded = True
                self.selfcheck.at_talk.conclude(self.conversation, self._origin)
        else:
            self.selfcheck.go_home()

    def heeds(self, key: AnswerInput.Number) -> bool:
        return key.pressed - self._shown_at >= self.BREATH

    def pick(self, number: int) -> None:
        choices = self.query_one(Choices)
        if not choices.has(number):
            return
        if choices.several:
            choices.mark(number)
        else:
            self.hear(str(number))

    @on(Input.Submitted)
    def _submitted(self, event: Input.Submitted) -> None:
        event.stop()
        choices = self.query_one(Choices)
        line = ", ".join(map(str, sorted(choices.marked))) + event.value
        highlighted = choices.highlighted
        if line.strip():
            self.hear(line)
        elif self.conversation.ending is not None:
            self.selfcheck.at_talk.go_on()
        elif highlighted is not None:
            self.pick(highlighted)
        elif self._script:
            self._play_next()
        elif self.conversation.prompt is not None and self.conversation.prompt.kind == "say":
            self.hear("")

    def _play_next(self) -> None:
        self.hear(self._script.pop(0))
        if not self._script and self.conversation.ending is None:
            self.query_one(MessageLog).add([Own(kind="note", text=self._words("played"))])


def _before_the_break(messages: Sequence[Said]) -> int:
    """How many of the first messages tell what was said before a break; none where there was no break."""
    said = [place for place, message in enumerate(messages, 1) if message.kind in ("said", "echo")]
    return said[-1] if said else 0
