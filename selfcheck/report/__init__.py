"""What is handed to a person: verdict words, summary JSON, page, sheet, note, calendar, table."""
