"""Reads an iCalendar file with a reader that is not libical, warnings as errors, and prints `UID DTSTART SUMMARY` a
line: read_calendar.py FILE."""
import sys
import warnings

warnings.simplefilter("error")
import icalendar  # noqa: E402

with open(sys.argv[1], "rb") as file:
    calendar = icalendar.Calendar.from_ical(file.read())
if calendar.errors or not calendar.get("prodid") or calendar.get("version") != "2.0":
    sys.exit(f"the calendar itself is not in order: {calendar.errors}")
for event in calendar.walk("vevent"):
    if event.errors:
        sys.exit(f"{event.get('uid')}: {event.errors}")
    print(event["uid"], event.decoded("dtstart").isoformat(), event["summary"])
