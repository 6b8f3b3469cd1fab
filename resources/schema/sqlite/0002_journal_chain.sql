-- Version 2: every journal entry carries a hash of itself and of the entry before, so that an entry changed, added
-- or taken out behind the program's back shows. The entries that are there are chained when this step is made.

ALTER TABLE journal ADD COLUMN chain TEXT NOT NULL DEFAULT '';
