"""What is true of a tank: pure computation, no files, no clock, no words for people."""
