-- Version 4: the day on which somebody weaned the containers of a stay. Stays of before are without: who works
-- with the book is asked for it.

ALTER TABLE stays ADD COLUMN weaned_on TEXT;
