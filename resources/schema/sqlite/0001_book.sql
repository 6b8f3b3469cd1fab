-- A house book, version 1: one table a kind of thing, its scalar fields as columns, its lists and nested things
-- as JSON. Amounts are whole numbers of their smallest part: tenths of a degree, hundredths of money, millilitres,
-- millimetres, tenths of a watt. Days are ISO 8601. References that may wait for their target until the transaction
-- ends are deferred.

CREATE TABLE nursery (
    id INTEGER PRIMARY KEY CHECK (id = 1),
    name TEXT NOT NULL,
    latitude INTEGER NOT NULL,
    season_shift_days INTEGER NOT NULL,
    currency TEXT NOT NULL,
    price_per_kilowatt_hour INTEGER NOT NULL,
    strikes_by_weekday TEXT NOT NULL,
    sureness_permille INTEGER NOT NULL,
    scatter_cost INTEGER NOT NULL,
    move_cost INTEGER NOT NULL,
    off_ideal_cost INTEGER NOT NULL,
    late_cost_permille INTEGER NOT NULL
) STRICT;

CREATE TABLE hand_days (
    id INTEGER PRIMARY KEY,
    day TEXT NOT NULL,
    cuttings INTEGER NOT NULL,
    note TEXT NOT NULL
) STRICT;

CREATE TABLE houses (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL,
    kind TEXT NOT NULL,
    length_mm INTEGER NOT NULL,
    width_mm INTEGER NOT NULL,
    air_c TEXT NOT NULL,
    unheated_root_zone_c TEXT NOT NULL
) STRICT;

CREATE TABLE benches (
    id INTEGER PRIMARY KEY,
    house INTEGER NOT NULL REFERENCES houses DEFERRABLE INITIALLY DEFERRED,
    name TEXT NOT NULL,
    x_mm INTEGER NOT NULL,
    y_mm INTEGER NOT NULL,
    rows INTEGER NOT NULL,
    cols INTEGER NOT NULL,
    slot_mm INTEGER NOT NULL
) STRICT;

CREATE TABLE zones (
    id INTEGER PRIMARY KEY,
    bench INTEGER NOT NULL REFERENCES benches DEFERRABLE INITIALLY DEFERRED,
    name TEXT NOT NULL,
    row INTEGER NOT NULL,
    col INTEGER NOT NULL,
    rows INTEGER NOT NULL,
    cols INTEGER NOT NULL,
    cover TEXT NOT NULL,
    blocked TEXT NOT NULL,
    mat TEXT
) STRICT;

CREATE TABLE mat_runs (
    id INTEGER PRIMARY KEY,
    zone INTEGER NOT NULL REFERENCES zones DEFERRABLE INITIALLY DEFERRED,
    "from" TEXT NOT NULL,
    "to" TEXT NOT NULL,
    set_point_c INTEGER NOT NULL
) STRICT;

CREATE TABLE container_types (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL,
    footprint TEXT NOT NULL,
    turnable INTEGER NOT NULL,
    volume_l INTEGER NOT NULL,
    cuttings INTEGER NOT NULL
) STRICT;

CREATE TABLE media (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL,
    components TEXT NOT NULL
) STRICT;

CREATE TABLE taxa (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL,
    synonyms TEXT NOT NULL,
    common_names TEXT NOT NULL,
    caution TEXT NOT NULL
) STRICT;

-- Each figure of a recipe is a JSON object of its value and its source.
CREATE TABLE recipes (
    id INTEGER PRIMARY KEY,
    taxon INTEGER NOT NULL REFERENCES taxa DEFERRABLE INITIALLY DEFERRED,
    wood TEXT NOT NULL,
    name TEXT NOT NULL,
    origin TEXT NOT NULL,
    season TEXT NOT NULL,
    cutting_length_mm TEXT NOT NULL,
    nodes TEXT NOT NULL,
    nodes_buried TEXT NOT NULL,
    wound TEXT NOT NULL,
    tip_removed TEXT NOT NULL,
    leaf_trim TEXT NOT NULL,
    root_zone_low_c TEXT NOT NULL,
    root_zone_ideal_c TEXT NOT NULL,
    root_zone_high_c TEXT NOT NULL,
    air_c TEXT NOT NULL,
    days_to_root TEXT NOT NULL,
    base_c TEXT NOT NULL,
    take_percent TEXT NOT NULL,
    hormone TEXT NOT NULL,
    hormone_form TEXT NOT NULL,
    covers TEXT NOT NULL,
    medium TEXT NOT NULL,
    container TEXT NOT NULL,
    cuttings_per_container TEXT NOT NULL,
    wean_days TEXT NOT NULL,
    grow_on_days TEXT NOT NULL,
    aftercare TEXT NOT NULL,
    caution TEXT NOT NULL
) STRICT;

CREATE TABLE stocks (
    id INTEGER PRIMARY KEY,
    taxon INTEGER NOT NULL REFERENCES taxa DEFERRABLE INITIALLY DEFERRED,
    name TEXT NOT NULL,
    place TEXT NOT NULL,
    plants INTEGER NOT NULL,
    flushes TEXT NOT NULL,
    health TEXT NOT NULL
) STRICT;

CREATE TABLE targets (
    id INTEGER PRIMARY KEY,
    name TEXT NOT NULL,
    taxon INTEGER NOT NULL REFERENCES taxa DEFERRABLE INITIALLY DEFERRED,
    plants INTEGER NOT NULL,
    due TEXT NOT NULL,
    worth INTEGER NOT NULL,
    wood TEXT,
    note TEXT NOT NULL
) STRICT;

-- `recipe` is the recipe as it was when the batch was planned or struck.
CREATE TABLE batches (
    id INTEGER PRIMARY KEY,
    code TEXT NOT NULL,
    taxon INTEGER NOT NULL REFERENCES taxa DEFERRABLE INITIALLY DEFERRED,
    recipe TEXT NOT NULL,
    stock INTEGER REFERENCES stocks DEFERRABLE INITIALLY DEFERRED,
    target INTEGER REFERENCES targets DEFERRABLE INITIALLY DEFERRED,
    strike_day TEXT NOT NULL,
    container_type INTEGER NOT NULL REFERENCES container_types DEFERRABLE INITIALLY DEFERRED,
    containers TEXT NOT NULL,
    state TEXT NOT NULL,
    note TEXT NOT NULL
) STRICT;

CREATE TABLE stays (
    id INTEGER PRIMARY KEY,
    batch INTEGER NOT NULL REFERENCES batches DEFERRABLE INITIALLY DEFERRED,
    stage TEXT NOT NULL,
    zone INTEGER NOT NULL REFERENCES zones DEFERRABLE INITIALLY DEFERRED,
    "from" TEXT NOT NULL,
    "to" TEXT NOT NULL,
    places TEXT NOT NULL
) STRICT;

CREATE TABLE root_checks (
    id INTEGER PRIMARY KEY,
    batch INTEGER NOT NULL REFERENCES batches DEFERRABLE INITIALLY DEFERRED,
    container INTEGER NOT NULL,
    day TEXT NOT NULL,
    examined INTEGER NOT NULL,
    rooted INTEGER NOT NULL,
    callused INTEGER NOT NULL,
    alive INTEGER NOT NULL,
    dead INTEGER NOT NULL,
    grade INTEGER,
    note TEXT NOT NULL
) STRICT;

CREATE TABLE pottings (
    id INTEGER PRIMARY KEY,
    batch INTEGER NOT NULL REFERENCES batches DEFERRABLE INITIALLY DEFERRED,
    container INTEGER NOT NULL,
    day TEXT NOT NULL,
    plants INTEGER NOT NULL,
    lost INTEGER NOT NULL,
    note TEXT NOT NULL
) STRICT;

CREATE TABLE losses (
    id INTEGER PRIMARY KEY,
    batch INTEGER NOT NULL REFERENCES batches DEFERRABLE INITIALLY DEFERRED,
    container INTEGER NOT NULL,
    day TEXT NOT NULL,
    cuttings INTEGER NOT NULL,
    reason TEXT NOT NULL
) STRICT;

-- Who did what when; `change` holds the things before and after, as JSON.
CREATE TABLE journal (
    seq INTEGER PRIMARY KEY,
    at TEXT NOT NULL,
    who TEXT NOT NULL,
    words TEXT NOT NULL,
    change TEXT NOT NULL
) STRICT;
