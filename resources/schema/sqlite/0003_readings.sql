-- Version 3: what loggers measured, a row a channel and month in a zone or a house. The readings are packed as
-- core/climate/packed_readings.h tells.

CREATE TABLE reading_months (
    id INTEGER PRIMARY KEY,
    zone INTEGER REFERENCES zones DEFERRABLE INITIALLY DEFERRED,
    house INTEGER REFERENCES houses DEFERRABLE INITIALLY DEFERRED,
    channel TEXT NOT NULL,
    month TEXT NOT NULL,
    packed TEXT NOT NULL
) STRICT;
