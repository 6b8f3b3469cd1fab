-- A shared house book, version 2: the tables of the SQLite files (resources/schema/sqlite) in the schema `warmbench`,
-- with the same columns holding the same values, so that a book moves between both as it is.

CREATE TABLE about (
    version bigint NOT NULL
);

INSERT INTO about VALUES (0);

CREATE TABLE nursery (
    id bigint PRIMARY KEY CHECK (id = 1),
    name text NOT NULL,
    latitude bigint NOT NULL,
    season_shift_days bigint NOT NULL,
    currency text NOT NULL,
    price_per_kilowatt_hour bigint NOT NULL,
    strikes_by_weekday text NOT NULL,
    sureness_permille bigint NOT NULL,
    scatter_cost bigint NOT NULL,
    move_cost bigint NOT NULL,
    off_ideal_cost bigint NOT NULL,
    late_cost_permille bigint NOT NULL
);

CREATE TABLE hand_days (
    id bigint PRIMARY KEY,
    day text NOT NULL,
    cuttings bigint NOT NULL,
    note text NOT NULL
);

CREATE TABLE houses (
    id bigint PRIMARY KEY,
    name text NOT NULL,
    kind text NOT NULL,
    length_mm bigint NOT NULL,
    width_mm bigint NOT NULL,
    air_c text NOT NULL,
    unheated_root_zone_c text NOT NULL
);

CREATE TABLE benches (
    id bigint PRIMARY KEY,
    house bigint NOT NULL REFERENCES houses DEFERRABLE INITIALLY DEFERRED,
    name text NOT NULL,
    x_mm bigint NOT NULL,
    y_mm bigint NOT NULL,
    rows bigint NOT NULL,
    cols bigint NOT NULL,
    slot_mm bigint NOT NULL
);

CREATE TABLE zones (
    id bigint PRIMARY KEY,
    bench bigint NOT NULL REFERENCES benches DEFERRABLE INITIALLY DEFERRED,
    name text NOT NULL,
    row bigint NOT NULL,
    col bigint NOT NULL,
    rows bigint NOT NULL,
    cols bigint NOT NULL,
    cover text NOT NULL,
    blocked text NOT NULL,
    mat text
);

CREATE TABLE mat_runs (
    id bigint PRIMARY KEY,
    zone bigint NOT NULL REFERENCES zones DEFERRABLE INITIALLY DEFERRED,
    "from" text NOT NULL,
    "to" text NOT NULL,
    set_point_c bigint NOT NULL
);

CREATE TABLE container_types (
    id bigint PRIMARY KEY,
    name text NOT NULL,
    footprint text NOT NULL,
    turnable bigint NOT NULL,
    volume_l bigint NOT NULL,
    cuttings bigint NOT NULL
);

CREATE TABLE media (
    id bigint PRIMARY KEY,
    name text NOT NULL,
    components text NOT NULL
);

CREATE TABLE taxa (
    id bigint PRIMARY KEY,
    name text NOT NULL,
    synonyms text NOT NULL,
    common_names text NOT NULL,
    caution text NOT NULL
);

-- Each figure of a recipe is a JSON object of its value and its source.
CREATE TABLE recipes (
    id bigint PRIMARY KEY,
    taxon bigint NOT NULL REFERENCES taxa DEFERRABLE INITIALLY DEFERRED,
    wood text NOT NULL,
    name text NOT NULL,
    origin text NOT NULL,
    season text NOT NULL,
    cutting_length_mm text NOT NULL,
    nodes text NOT NULL,
    nodes_buried text NOT NULL,
    wound text NOT NULL,
    tip_removed text NOT NULL,
    leaf_trim text NOT NULL,
    root_zone_low_c text NOT NULL,
    root_zone_ideal_c text NOT NULL,
    root_zone_high_c text NOT NULL,
    air_c text NOT NULL,
    days_to_root text NOT NULL,
    base_c text NOT NULL,
    take_percent text NOT NULL,
    hormone text NOT NULL,
    hormone_form text NOT NULL,
    covers text NOT NULL,
    medium text NOT NULL,
    container text NOT NULL,
    cuttings_per_container text NOT NULL,
    wean_days text NOT NULL,
    grow_on_days text NOT NULL,
    aftercare text NOT NULL,
    caution text NOT NULL
);

CREATE TABLE stocks (
    id bigint PRIMARY KEY,
    taxon bigint NOT NULL REFERENCES taxa DEFERRABLE INITIALLY DEFERRED,
    name text NOT NULL,
    place text NOT NULL,
    plants bigint NOT NULL,
    flushes text NOT NULL,
    health text NOT NULL
);

CREATE TABLE targets (
    id bigint PRIMARY KEY,
    name text NOT NULL,
    taxon bigint NOT NULL REFERENCES taxa DEFERRABLE INITIALLY DEFERRED,
    plants bigint NOT NULL,
    due text NOT NULL,
    worth bigint NOT NULL,
    wood text,
    note text NOT NULL
);

-- `recipe` is the recipe as it was when the batch was planned or struck.
CREATE TABLE batches (
    id bigint PRIMARY KEY,
    code text NOT NULL,
    taxon bigint NOT NULL REFERENCES taxa DEFERRABLE INITIALLY DEFERRED,
    recipe text NOT NULL,
    stock bigint REFERENCES stocks DEFERRABLE INITIALLY DEFERRED,
    target bigint REFERENCES targets DEFERRABLE INITIALLY DEFERRED,
    strike_day text NOT NULL,
    container_type bigint NOT NULL REFERENCES container_types DEFERRABLE INITIALLY DEFERRED,
    containers text NOT NULL,
    state text NOT NULL,
    note text NOT NULL
);

CREATE TABLE stays (
    id bigint PRIMARY KEY,
    batch bigint NOT NULL REFERENCES batches DEFERRABLE INITIALLY DEFERRED,
    stage text NOT NULL,
    zone bigint NOT NULL REFERENCES zones DEFERRABLE INITIALLY DEFERRED,
    "from" text NOT NULL,
    "to" text NOT NULL,
    places text NOT NULL
);

CREATE TABLE root_checks (
    id bigint PRIMARY KEY,
    batch bigint NOT NULL REFERENCES batches DEFERRABLE INITIALLY DEFERRED,
    container bigint NOT NULL,
    day text NOT NULL,
    examined bigint NOT NULL,
    rooted bigint NOT NULL,
    callused bigint NOT NULL,
    alive bigint NOT NULL,
    dead bigint NOT NULL,
    grade bigint,
    note text NOT NULL
);

CREATE TABLE pottings (
    id bigint PRIMARY KEY,
    batch bigint NOT NULL REFERENCES batches DEFERRABLE INITIALLY DEFERRED,
    container bigint NOT NULL,
    day text NOT NULL,
    plants bigint NOT NULL,
    lost bigint NOT NULL,
    note text NOT NULL
);

CREATE TABLE losses (
    id bigint PRIMARY KEY,
    batch bigint NOT NULL REFERENCES batches DEFERRABLE INITIALLY DEFERRED,
    container bigint NOT NULL,
    day text NOT NULL,
    cuttings bigint NOT NULL,
    reason text NOT NULL
);

-- Who did what when; `change` holds the things before and after, as JSON; `chain` a hash of the entry and of the one
-- before it.
CREATE TABLE journal (
    seq bigint PRIMARY KEY,
    at text NOT NULL,
    who text NOT NULL,
    words text NOT NULL,
    change text NOT NULL,
    chain text NOT NULL
);

-- Everybody who has the book open hears of a new entry when it is committed.
CREATE FUNCTION tell_of_entry() RETURNS trigger LANGUAGE plpgsql SET search_path = warmbench, pg_temp AS $$
BEGIN
    PERFORM pg_notify('warmbench_journal', NEW.seq::text);
    RETURN NULL;
END
$$;

CREATE TRIGGER tell_of_entry AFTER INSERT ON journal FOR EACH ROW EXECUTE FUNCTION tell_of_entry();
