"""The named conditions and fills of the septic conversations, by subject.

Importing this module registers them all. They look at the record and at the answers that count so far, and decide only
whether a question is worth asking.
"""

from selfcheck.interview import septic_ahead as septic_ahead  # dates, rules, what-if
from selfcheck.interview import septic_find as septic_find  # where the tank is
from selfcheck.interview import septic_known as septic_known  # what is on record, and what is still wanted
from selfcheck.interview import septic_lid as septic_lid  # the weight of the lid
from selfcheck.interview import septic_marks as septic_marks  # the marks on the pole
from selfcheck.interview import septic_odd as septic_odd  # what does not fit together
from selfcheck.interview import septic_readings as septic_readings  # the readings, and which more are worth taking
from selfcheck.interview import septic_way as septic_way  # the way in, and how far the tank was opened
