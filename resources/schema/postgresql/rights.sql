-- Who may do what in a shared book; run again after every step of the schema. Four roles, named after the database
-- (`nursery_read`, `nursery_rounds`, `nursery_plan`, `nursery_house`), each of which may do what those before it may:
-- read; enter what rounds find; plan and work the batches; keep the house. A user is given one with
-- `GRANT nursery_rounds TO anna`. They are rights of PostgreSQL itself, so no other program gets round them.

-- Writers take turns: who has called this is the only one who adds to the journal until the transaction ends. Tells the
-- server's time, which is the one that the entry gets.
CREATE OR REPLACE FUNCTION take_turn() RETURNS text LANGUAGE plpgsql SECURITY DEFINER SET search_path = warmbench, pg_temp AS $$
BEGIN
    LOCK TABLE warmbench.journal IN EXCLUSIVE MODE;
    RETURN to_char(clock_timestamp() AT TIME ZONE 'UTC', 'YYYY-MM-DD"T"HH24:MI:SS.MS"Z"');
END
$$;

-- The only way to add to the journal: at its end, at this time, under one's own name, with the hash that follows from
-- the entry before.
CREATE OR REPLACE FUNCTION add_entry(seq bigint, at text, who text, words text, change text, chain text) RETURNS void
    LANGUAGE plpgsql SECURITY DEFINER SET search_path = warmbench, pg_temp AS $$
DECLARE
    last record;
    told bytea := '';
    part text;
BEGIN
    LOCK TABLE warmbench.journal IN EXCLUSIVE MODE;
    SELECT journal.seq, journal.chain INTO last FROM journal ORDER BY journal.seq DESC LIMIT 1;
    IF add_entry.seq IS DISTINCT FROM coalesce(last.seq, 0) + 1 THEN
        RAISE 'found journal entry %, expected the one after %', add_entry.seq, coalesce(last.seq, 0);
    END IF;
    IF add_entry.who IS DISTINCT FROM session_user::text THEN
        RAISE 'found an entry of %, expected one of %', add_entry.who, session_user;
    END IF;
    IF add_entry.at IS NULL OR add_entry.at !~ '^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z$' OR add_entry.at::timestamptz
        NOT BETWEEN transaction_timestamp() - interval '1 second' AND clock_timestamp() + interval '1 second' THEN
        RAISE 'found an entry of another time than now';
    END IF;
    FOREACH part IN ARRAY ARRAY[coalesce(last.chain, ''), add_entry.seq::text, add_entry.at, add_entry.who,
                                add_entry.words, add_entry.change] LOOP
        told := told || convert_to(octet_length(part) || ':' || part, 'UTF8');
    END LOOP;
    IF add_entry.chain IS DISTINCT FROM encode(sha256(told), 'hex') THEN
        RAISE 'found an entry whose hash does not follow from it and the one before';
    END IF;
    INSERT INTO journal VALUES (add_entry.seq, add_entry.at, add_entry.who, add_entry.words, add_entry.change,
                                add_entry.chain);
END
$$;

CREATE OR REPLACE FUNCTION keep_journal() RETURNS trigger LANGUAGE plpgsql SET search_path = warmbench, pg_temp AS $$
BEGIN
    RAISE 'the journal can be added to and never changed';
END
$$;

CREATE OR REPLACE TRIGGER keep_journal BEFORE UPDATE OR DELETE OR TRUNCATE ON journal
    FOR EACH STATEMENT EXECUTE FUNCTION keep_journal();

-- Rows change only together with a journal entry, in one transaction.
CREATE OR REPLACE FUNCTION must_be_journaled() RETURNS trigger LANGUAGE plpgsql SET search_path = warmbench, pg_temp AS $$
BEGIN
    IF (SELECT xmin FROM journal ORDER BY seq DESC LIMIT 1) IS DISTINCT FROM pg_current_xact_id()::xid THEN
        RAISE 'a change of % without an entry in the journal', TG_TABLE_NAME;
    END IF;
    RETURN NULL;
END
$$;

CREATE OR REPLACE FUNCTION never_emptied() RETURNS trigger LANGUAGE plpgsql SET search_path = warmbench, pg_temp AS $$
BEGIN
    RAISE 'a table of the book is never emptied';
END
$$;

DO $$
DECLARE
    book text := left(current_database(), 50);
    kinds text[] := ARRAY['read', 'rounds', 'plan', 'house'];
    name text;
    place int;
    may_make bool := (SELECT rolsuper OR rolcreaterole FROM pg_roles WHERE rolname = current_user);
BEGIN
    FOR place IN 1..4 LOOP
        name := book || '_' || kinds[place];
        IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = name) THEN
            IF NOT may_make THEN
                RAISE 'its roles % must be there first, or you must have the right to make roles (CREATEROLE)',
                    book || '_read, _rounds, _plan, _house';
            END IF;
            EXECUTE format('CREATE ROLE %I NOLOGIN', name);
        END IF;
        IF place > 1 THEN
            EXECUTE format('GRANT %I TO %I', book || '_' || kinds[place - 1], name);
        END IF;
    END LOOP;
    FOR name IN SELECT relname FROM pg_class WHERE relnamespace = 'warmbench'::regnamespace AND relkind = 'r'
                AND relname NOT IN ('about', 'journal') LOOP
        IF NOT EXISTS (SELECT FROM pg_trigger WHERE tgrelid = name::regclass AND tgname = 'must_be_journaled') THEN
            EXECUTE format('CREATE CONSTRAINT TRIGGER must_be_journaled AFTER INSERT OR UPDATE OR DELETE ON %I '
                'DEFERRABLE INITIALLY DEFERRED FOR EACH ROW EXECUTE FUNCTION must_be_journaled()', name);
            EXECUTE format('CREATE TRIGGER never_emptied BEFORE TRUNCATE ON %I '
                'FOR EACH STATEMENT EXECUTE FUNCTION never_emptied()', name);
        END IF;
    END LOOP;
    EXECUTE format('REVOKE ALL ON DATABASE %I FROM PUBLIC', current_database());
    REVOKE ALL ON SCHEMA warmbench FROM PUBLIC;
    REVOKE ALL ON ALL FUNCTIONS IN SCHEMA warmbench FROM PUBLIC;
    EXECUTE format('GRANT CONNECT ON DATABASE %I TO %I', current_database(), book || '_read');
    EXECUTE format('GRANT USAGE ON SCHEMA warmbench TO %I', book || '_read');
    EXECUTE format('GRANT SELECT ON ALL TABLES IN SCHEMA warmbench TO %I', book || '_read');
    EXECUTE format('GRANT EXECUTE ON FUNCTION take_turn(), add_entry(bigint, text, text, text, text, text) TO %I',
        book || '_rounds');
    EXECUTE format('GRANT INSERT, UPDATE, DELETE ON root_checks, losses, reading_months TO %I', book || '_rounds');
    EXECUTE format('GRANT INSERT, UPDATE, DELETE ON batches, stays, mat_runs, pottings, targets, hand_days, stocks, '
        'taxa, recipes, container_types, media TO %I', book || '_plan');
    EXECUTE format('GRANT INSERT, UPDATE, DELETE ON nursery, houses, benches, zones TO %I', book || '_house');
END
$$;
