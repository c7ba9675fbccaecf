"""`python -m tests.benchmarks [NAME…]`: medians and ratios of this machine, in this run. No test depends on them."""

from __future__ import annotations

import sys

from tests.benchmarks import judge, start, talking

PARTS = {
    "start": ("The first question, painted", start.run),
    "judge": ("The judge command", judge.run),
    "talking": ("Keys and answers", talking.run),
}

if __name__ == "__main__":
    for name in sys.argv[1:] or PARTS:
        if name not in PARTS:
            sys.exit(f"There is no {name}. Name some of: {', '.join(PARTS)}.")
        title, run = PARTS[name]
        print(title, flush=True)
        run()
