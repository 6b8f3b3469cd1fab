-- Version 3: what loggers measured, a row a channel and month in a zone or a house, as in the SQLite files.

CREATE TABLE reading_months (
    id bigint PRIMARY KEY,
    zone bigint REFERENCES zones DEFERRABLE INITIALLY DEFERRED,
    house bigint REFERENCES houses DEFERRABLE INITIALLY DEFERRED,
    channel text NOT NULL,
    month text NOT NULL,
    packed text NOT NULL
);
