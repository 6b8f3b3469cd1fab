-- Version 4: the day on which somebody weaned the containers of a stay, as in the SQLite files.

ALTER TABLE stays ADD COLUMN weaned_on text;
