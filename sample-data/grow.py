#!/usr/bin/env python3
"""Grows the invented sample nursery: nursery.json (a house book), CSV lists, logger files of two mats.

  python3 sample-data/grow.py        from the top of the tree; the same files every time (fixed seed)

Everything in it is invented but the recipes, which are rows of resources/recipe/recipes_memory.csv, marked
`from memory`. The season that is past is simulated: each cutting roots or not, at a thermal time of its own, and
root checks look at some of them.
"""
import csv
import datetime
import json
import math
import random
from pathlib import Path

TOP = Path(__file__).resolve().parent.parent
OUT = Path(__file__).resolve().parent
TODAY = datetime.date(2026, 11, 30)
LEFT_OUT = {"Salvia", "Verbena", "Cornus", "Lavandula", "Vaccinium"}
WOODS = ["softwood", "semi-ripe", "hardwood", "evergreen hardwood", "basal", "leaf-bud"]
rng = random.Random(2027)


def day(text_or_date):
    return text_or_date.isoformat() if isinstance(text_or_date, datetime.date) else text_or_date


def add(date, days):
    return date + datetime.timedelta(days=days)


# ------------------------------------------------------------------ the houses
SLOT = 130
AIR = {"Glasshouse": [10, 10, 12, 14, 17, 20, 22, 22, 18, 15, 12, 10],
       "Cool house": [4, 4.5, 6.5, 9, 13, 16.5, 18.5, 18, 15, 11, 7, 5]}
ROOTS = {"Glasshouse": [9, 9.5, 11, 13, 16, 19, 21, 21, 17, 14, 11, 9.5],
         "Cool house": [4.5, 5, 6.5, 9, 12.5, 16, 18, 17.5, 14.5, 11, 7.5, 5.5]}
houses = [
    {"id": 1, "name": "Glasshouse", "kind": "glass", "length_mm": 13600, "width_mm": 6400},
    {"id": 2, "name": "Cool house", "kind": "tunnel", "length_mm": 14000, "width_mm": 8600},
]
for house in houses:
    house["air_c"] = AIR[house["name"]]
    house["unheated_root_zone_c"] = ROOTS[house["name"]]
benches, zones = [], []


def bench(house, name, x, y, rows, cols):
    benches.append({"id": len(benches) + 1, "house": house, "name": name, "x_mm": x, "y_mm": y, "rows": rows,
                    "cols": cols, "slot_mm": SLOT})
    return benches[-1]["id"]


def zone(on, name, col, cols, cover, mat=None, blocked=()):
    rows = benches[on - 1]["rows"]
    made = {"id": len(zones) + 1, "bench": on, "name": name, "row": 0, "col": col, "rows": rows, "cols": cols,
            "cover": cover, "blocked": [{"row": r, "col": c} for r, c in blocked]}
    if mat:
        made["mat"] = {"name": mat, "rated_w": 280, "loss_w_per_m2_k": 6.5, "set_points_c": [12, 15, 18, 20, 22]}
    zones.append(made)


COVERS = {"1": ["mist", "mist", "tent"], "2": ["tent", "tent", "tent"], "3": ["tent", "tent", "bag"],
          "4": ["mist", "fog", "tent"], "5": ["tent", "open", "open"], "6": ["tent", "open", "open"]}
letters = iter([chr(65 + i) if i < 26 else "A" + chr(39 + i) for i in range(40)])  # A to Z, AA, AB, ...
mats = 0
for number in range(1, 7):
    left = number % 2 == 1
    on = bench(1, f"Bench {number}", 300 if left else 7000, 500 + (number - 1) // 2 * 2000, 8, 48)
    for part, cover in enumerate(COVERS[str(number)]):
        heated = not (number == 6 and part > 0)
        mats += heated
        # A water pipe comes up through the back of bench 2.
        zone(on, next(letters), part * 16, 16, cover, f"Mat {mats}" if heated else None,
             [(0, 15)] if number == 2 and part == 1 else ())
for number in range(7, 12):
    on = bench(2, f"Bench {number}", 500, 400 + (number - 7) * 1640, 8, 96)
    for part in range(2):
        zone(on, next(letters), part * 48, 48, "open")

container_types = [
    {"name": "1-litre pot", "footprint": (1, 1), "turnable": False, "volume_l": 1.0, "cuttings": 5},
    {"name": "deep pot", "footprint": (1, 1), "turnable": False, "volume_l": 1.8, "cuttings": 6},
    {"name": "tray 24", "footprint": (2, 4), "turnable": True, "volume_l": 4.3, "cuttings": 24},
    {"name": "tray 40", "footprint": (2, 4), "turnable": True, "volume_l": 3.8, "cuttings": 40},
    {"name": "tray 84", "footprint": (2, 4), "turnable": True, "volume_l": 3.4, "cuttings": 84},
    {"name": "cold frame bed", "footprint": (8, 8), "turnable": False, "volume_l": 150.0, "cuttings": 150},
]
for number, kind in enumerate(container_types, 1):
    kind["id"] = number
    height, width = kind["footprint"]
    kind["footprint"] = {"height": height, "width": width}


# ------------------------------------------------------------------ recipes
def parse_medium(text):
    parts = []
    for piece in text.split(":"):
        name, amount = piece.strip().rsplit(" ", 1)
        parts.append({"name": name, "parts": int(amount)})
    return parts


def figure(value):
    return {"value": value, "source": "from memory"}


def recipe_of(row, taxon):
    number = lambda name: int(row[name]) if row[name] else None
    return {
        "taxon": taxon, "wood": row["wood_type"], "name": "", "origin": "",
        "season": figure({"from": row["strike_from"], "to": row["strike_to"]}),
        "cutting_length_mm": figure(round(float(row["cutting_length_cm"]) * 10)),
        "nodes": figure(number("nodes_min")), "nodes_buried": figure(number("nodes_buried")),
        "wound": figure(row["wound"] == "yes"), "tip_removed": figure(row["tip_removed"] == "yes"),
        "leaf_trim": figure(row["leaf_trim"]),
        "root_zone_low_c": figure(float(row["root_zone_low_c"])),
        "root_zone_ideal_c": figure(float(row["root_zone_ideal_c"])),
        "root_zone_high_c": figure(float(row["root_zone_high_c"])), "air_c": figure(float(row["air_c"])),
        "days_to_root": figure({"low": number("days_to_root_min"), "high": number("days_to_root_max")}),
        "base_c": figure(float(row["base_c"])),
        "take_percent": figure({"low": number("take_low_pct"), "high": number("take_high_pct")}),
        "hormone": figure(row["hormone"]), "hormone_form": figure(row["hormone_form"]),
        "covers": figure(row["cover"].split("/")), "medium": figure(parse_medium(row["medium"])),
        "container": figure(row["container"]), "cuttings_per_container": figure(number("cuttings_per_container")),
        "wean_days": figure(number("wean_days")), "grow_on_days": figure(number("grow_on_days_to_pot")),
        "aftercare": figure(row["aftercare"]), "caution": figure(row["caution"]),
    }


rows = list(csv.DictReader(open(TOP / "resources/recipe/recipes_memory.csv", encoding="utf-8")))
rows = [row for row in rows if row["taxon"].split()[0] not in LEFT_OUT]
by_wood = {wood: [row for row in rows if row["wood_type"] == wood] for wood in WOODS}
chosen = []
for wood, count in {"softwood": 21, "semi-ripe": 19, "hardwood": 7, "evergreen hardwood": 7, "basal": 4,
                    "leaf-bud": 2}.items():
    chosen += rng.sample(by_wood[wood], count)
chosen.sort(key=lambda row: (row["taxon"], WOODS.index(row["wood_type"])))
taxa, recipes = [], []
for row in chosen:
    if not taxa or taxa[-1]["name"] != row["taxon"]:
        split = lambda text: [part.strip() for part in text.split(";") if part.strip()]
        taxa.append({"id": len(taxa) + 1, "name": row["taxon"], "synonyms": split(row["synonyms"]),
                     "common_names": split(row["common_name"]), "caution": ""})
    recipes.append({"id": len(recipes) + 1} | recipe_of(row, len(taxa)))

media, seen = [], set()
for recipe in recipes:
    text = " : ".join(f"{part['name']} {part['parts']}" for part in recipe["medium"]["value"])
    if text not in seen:
        seen.add(text)
        media.append({"id": len(media) + 1, "name": text, "components": recipe["medium"]["value"]})

# ------------------------------------------------------------------ stocks
YIELD = {"softwood": (20, 35), "semi-ripe": (22, 60), "hardwood": (16, 250), "evergreen hardwood": (18, 250),
         "basal": (9, 28), "leaf-bud": (24, 45)}
PLACES = ["stock field, east rows", "stock field, west rows", "stock tunnel", "walled garden", "south border"]
stocks = []
for taxon in taxa[:40] if len(taxa) >= 40 else taxa:
    flushes = []
    for recipe in recipes:
        if recipe["taxon"] == taxon["id"]:
            per_plant, regrowth = YIELD[recipe["wood"]]
            flushes.append({"wood": recipe["wood"], "season": recipe["season"]["value"],
                            "cuttings_per_plant": per_plant + rng.randint(-3, 6), "regrowth_days": regrowth})
    place = rng.choice(PLACES)
    stocks.append({"id": len(stocks) + 1, "taxon": taxon["id"], "name": f"{taxon['name'].split()[0]} row {len(stocks) + 1}",
                   "place": place, "plants": rng.choice([24, 30, 36, 48, 60]), "flushes": flushes, "health": ""})
stock_of = {stock["taxon"]: stock for stock in stocks}


# ------------------------------------------------------------------ thermal time and the law of rooting
def value(recipe, name):
    return recipe[name]["value"]


def law(recipe):
    """mu and sigma of ln(degree-days): days to root, low to high, are the 10 % and 90 % points."""
    over = value(recipe, "root_zone_ideal_c") - value(recipe, "base_c")
    low, high = value(recipe, "days_to_root")["low"] * over, value(recipe, "days_to_root")["high"] * over
    return (math.log(low) + math.log(high)) / 2, (math.log(high) - math.log(low)) / (2 * math.log(9))


def floor_on(house, date):
    """The straight line between mid-month values."""
    year, month = date.year, date.month
    if date < datetime.date(year, month, 15):
        year, month = (year - 1, 12) if month == 1 else (year, month - 1)
    start = datetime.date(year, month, 15)
    end = datetime.date(year + (month == 12), month % 12 + 1, 15)
    table = ROOTS[house]
    share = (date - start) / (end - start)
    return table[month - 1] + (table[month % 12] - table[month - 1]) * share


def house_of(zone_):
    return houses[benches[zone_["bench"] - 1]["house"] - 1]["name"]


# Each heated zone keeps one set-point through the cool half of the past year.
SET = {z["id"]: [15, 18, 20, 18, 20, 18, 22, 15, 18, 20, 18, 20, 15, 18, 22, 18][i % 16]
       for i, z in enumerate([z for z in zones if "mat" in z])}
HEATED = [(datetime.date(2025, 11, 15), datetime.date(2026, 6, 10)), (datetime.date(2026, 9, 10), datetime.date(2026, 12, 31))]


def root_zone(zone_, date):
    floor = floor_on(house_of(zone_), date)
    if zone_["id"] in SET and any(a <= date < b for a, b in HEATED):
        return max(SET[zone_["id"]], floor)
    return floor


def days_until(recipe, zone_, start, degree_days):
    got, days = 0.0, 0
    while got < degree_days and days < 300:
        got += max(0.0, min(root_zone(zone_, add(start, days)), value(recipe, "root_zone_high_c")) - value(recipe, "base_c"))
        days += 1
    return days


# ------------------------------------------------------------------ slots
busy = {z["id"]: [] for z in zones}  # (from, to, row, col, height, width)


def free(zone_, start, end, row, col, height, width):
    if row + height > zone_["rows"] or col + width > zone_["cols"]:
        return False
    for blocked in zone_["blocked"]:
        if row <= blocked["row"] < row + height and col <= blocked["col"] < col + width:
            return False
    return not any(a < end and start < b and r < row + height and row < r + h and c < col + width and col < c + w
                   for a, b, r, c, h, w in busy[zone_["id"]])


def find_places(zone_, start, end, count, kind):
    height, width = kind["footprint"]["height"], kind["footprint"]["width"]
    found = []
    for col in range(0, zone_["cols"], width):
        for row in range(0, zone_["rows"], height):
            if free(zone_, start, end, row, col, height, width):
                found.append((row, col, height, width))
                if len(found) == count:
                    return found
    return None


def occupy(zone_, start, end, places):
    busy[zone_["id"]] += [(start, end) + place for place in places]


# ------------------------------------------------------------------ the season that is past
batches, stays, checks, pottings, losses, targets = [], [], [], [], [], []
codes = {}


def code_of(date):
    letter = codes.get(date, 0)
    codes[date] = letter + 1
    return f"{date.year % 100:02d}-{date.timetuple().tm_yday:03d}-{chr(65 + letter)}"


def season_days(recipe, first, last):
    season = value(recipe, "season")
    date = first
    while date <= last:
        text = date.strftime("%m-%d")
        a, b = season["from"], season["to"]
        if (a <= text <= b if a <= b else text >= a or text <= b) and date.weekday() < 5:
            yield date
        date = add(date, 1)


def stay(batch, stage, zone_, start, end, places):
    stays.append({"id": len(stays) + 1, "batch": batch["id"], "stage": stage, "zone": zone_["id"], "from": day(start),
                  "to": day(end), "places": [{"container": i + 1, "slots": dict(zip(("row", "col", "height", "width"), place))}
                                             for i, place in enumerate(places)]})
    if stage == "weaning" and start < TODAY:
        stays[-1]["weaned_on"] = day(start)
    occupy(zone_, start, end, places)


def simulate(batch, recipe, zone_, strike, potted):
    """Root checks, losses and potting on, from a fate for every cutting."""
    mu, sigma = law(recipe)
    low, high = value(recipe, "take_percent")["low"], value(recipe, "take_percent")["high"]
    share = min(0.99, max(0.03, rng.gauss((low + high) / 200, (high - low) / 250)))
    shift = rng.gauss(0, 0.08)  # of the whole batch: its weather, its wood
    fate = {}
    for box in batch["containers"]:
        cuttings = []
        for _ in range(box["cuttings"]):
            u = rng.random()
            thermal = math.exp(mu + shift + sigma * math.log(u / (1 - u)))
            roots = rng.random() < share
            rooted = days_until(recipe, zone_, strike, thermal) if roots else None
            callused = max(3, round(0.55 * (rooted or days_until(recipe, zone_, strike, thermal))))
            dies = None if roots and rng.random() > 0.03 else rng.randint(12, 90) if rng.random() < 0.7 else None
            cuttings.append((rooted, callused, dies))
        fate[box["number"]] = cuttings
    typical = days_until(recipe, zone_, strike, math.exp(mu))
    for part in (0.5, 0.65, 0.8, 0.9, 1.0, 1.15, 1.3, 1.5):
        date = add(strike, round(typical * part))
        if date >= min(potted, TODAY):
            break
        for box in batch["containers"]:
            if rng.random() > 0.85:
                continue
            looked = min(box["cuttings"], rng.choice([6, 8, 10, 12]))
            age = (date - strike).days
            seen = rng.sample(fate[box["number"]], looked)
            count = {"rooted": 0, "callused": 0, "alive": 0, "dead": 0}
            for rooted, callused, dies in seen:
                if dies is not None and dies <= age: count["dead"] += 1
                elif rooted is not None and rooted <= age: count["rooted"] += 1
                elif callused <= age: count["callused"] += 1
                else: count["alive"] += 1
            made = {"id": len(checks) + 1, "batch": batch["id"], "container": box["number"], "day": day(date), "examined": looked}
            made |= count
            if count["rooted"]:
                made["grade"] = min(5, 2 + round(3 * max(0, age / typical - 0.8)))
            checks.append(made | {"note": ""})
    if potted > TODAY:
        return
    for box in batch["containers"]:
        age = (potted - strike).days
        plants = sum(1 for rooted, _, dies in fate[box["number"]] if rooted is not None and rooted <= age and (dies is None or dies > age))
        early = 0
        if rng.random() < 0.25:
            half = age // 2
            early = min(box["cuttings"] - plants, sum(1 for _, _, dies in fate[box["number"]] if dies is not None and dies <= half))
            if early:
                losses.append({"id": len(losses) + 1, "batch": batch["id"], "container": box["number"],
                               "day": day(potted), "cuttings": early, "reason": rng.choice(["rot at the base", "grey mould", "dried out"])})
        pottings.append({"id": len(pottings) + 1, "batch": batch["id"], "container": box["number"], "day": day(potted),
                         "plants": plants, "lost": box["cuttings"] - plants - early, "note": ""})


def raise_batch(recipe, strike, count_containers):
    kind = next(k for k in container_types if k["name"] == value(recipe, "container"))
    each = value(recipe, "cuttings_per_container")
    stock = stock_of.get(recipe["taxon"])
    if not stock:
        return False
    mu, sigma = law(recipe)
    options = [z for z in zones if z["cover"] in value(recipe, "covers")]
    rng.shuffle(options)
    for zone_ in options:
        warm = root_zone(zone_, strike)
        if not value(recipe, "root_zone_low_c") <= warm <= value(recipe, "root_zone_high_c"):
            continue
        rooting = days_until(recipe, zone_, strike, math.exp(mu + sigma * math.log(9)))
        if rooting >= 300:
            continue
        end = add(strike, rooting)
        places = find_places(zone_, strike, end, count_containers, kind)
        if not places:
            continue
        open_days = value(recipe, "wean_days") + value(recipe, "grow_on_days")
        ready = add(end, open_days)
        cool = second = None
        if open_days:
            for cool in [z for z in zones if z["cover"] == "open" and house_of(z) == "Cool house"]:
                second = find_places(cool, end, ready, count_containers, kind)
                if second:
                    break
            if not second:
                return False
        state = "struck" if ready > TODAY else "ended"
        batch = {"id": len(batches) + 1, "code": code_of(strike), "taxon": recipe["taxon"], "recipe": recipe,
                 "stock": stock["id"], "strike_day": day(strike), "container_type": kind["id"],
                 "containers": [{"number": i + 1, "cuttings": each} for i in range(count_containers)], "state": state, "note": ""}
        batches.append(batch)
        stay(batch, "rooting", zone_, strike, end, places)
        if second:
            stay(batch, "weaning" if value(recipe, "wean_days") else "growing on", cool, end, ready, second)
        simulate(batch, recipe, zone_, strike, ready)
        return True
    return False


season = []
for recipe in recipes:
    dates = list(season_days(recipe, datetime.date(2025, 12, 1), add(TODAY, -4)))
    for _ in range(4):
        if dates:
            season.append((rng.choice(dates), recipe))
season.sort(key=lambda item: (item[0], item[1]["id"]))
order = list(range(len(season)))
rng.shuffle(order)
for index in order:
    if len(batches) == 120:
        break
    strike, recipe = season[index]
    each = value(recipe, "cuttings_per_container")
    raise_batch(recipe, strike, rng.randint(1, 2) if each >= 100 else rng.randint(1, 4) if each >= 24 else rng.randint(6, 16))

# ------------------------------------------------------------------ targets of the coming year
candidates = [recipe for recipe in recipes if recipe["taxon"] in stock_of]
number = 0
attempts = 0
while len(targets) < 60 and attempts < 5000:
    attempts += 1
    recipe = rng.choice(candidates)
    dates = list(season_days(recipe, datetime.date(2026, 12, 1), datetime.date(2027, 11, 15)))
    if not dates:
        continue
    over = value(recipe, "root_zone_ideal_c") - value(recipe, "base_c")
    mu, sigma = law(recipe)
    needed = math.ceil(math.exp(mu + sigma * math.log(9)) / over) + value(recipe, "wean_days") + value(recipe, "grow_on_days")
    due = add(rng.choice(dates), needed + rng.randint(12, 40))
    if due > datetime.date(2028, 3, 31) or sum(t["taxon"] == recipe["taxon"] for t in targets) >= 2:
        continue
    stock = stock_of[recipe["taxon"]]
    picking = next(f["cuttings_per_plant"] for f in stock["flushes"] if f["wood"] == recipe["wood"]) * stock["plants"]
    most = int(picking * 0.25 * value(recipe, "take_percent")["low"] / 100)
    if most < 20:
        continue
    plants = min(most, rng.choice([40, 60, 80, 100, 120, 150, 200]))
    number += 1
    targets.append({"id": number, "name": f"T{number:02d}", "taxon": recipe["taxon"], "plants": plants, "due": day(due),
                    "worth": rng.choice([1.2, 1.5, 1.8, 2.2, 2.6, 3.0]), "wood": recipe["wood"], "note": ""})

mat_runs = []
for zone_id, set_point in SET.items():
    for start, end in HEATED:
        mat_runs.append({"id": len(mat_runs) + 1, "zone": zone_id, "from": day(start), "to": day(end), "set_point_c": set_point})

book = {
    "format": "warmbench-house-book", "version": 1,
    "nursery": {"id": 1, "name": "Sample nursery", "latitude": 51.5, "season_shift_days": 0, "currency": "€",
                "price_per_kilowatt_hour": 0.3, "strikes_by_weekday": [600, 600, 600, 600, 500, 0, 0],
                "sureness_permille": 900, "scatter_cost": 0.5, "move_cost": 0.1, "off_ideal_cost": 0.01,
                "late_cost_permille": 20},
    "hand_days": [{"id": 1, "day": "2026-12-25", "cuttings": 0, "note": "holiday"},
                  {"id": 2, "day": "2026-12-28", "cuttings": 0, "note": "holiday"},
                  {"id": 3, "day": "2027-01-01", "cuttings": 0, "note": "holiday"},
                  {"id": 4, "day": "2026-12-24", "cuttings": 250, "note": "half a day"}],
    "houses": houses, "benches": benches, "zones": zones, "mat_runs": mat_runs, "container_types": container_types,
    "media": media, "taxa": taxa, "recipes": recipes, "stocks": stocks, "targets": targets, "batches": batches,
    "stays": stays, "root_checks": checks, "pottings": pottings, "losses": losses,
}
with open(OUT / "nursery.json", "w", encoding="utf-8") as file:
    json.dump(book, file, ensure_ascii=False, indent=1)
    file.write("\n")

# ------------------------------------------------------------------ lists and logger files
names = {taxon["id"]: taxon["name"] for taxon in taxa}


def table(name, columns, lines):
    with open(OUT / name, "w", encoding="utf-8", newline="") as file:
        writer = csv.writer(file)
        writer.writerow(columns)
        writer.writerows(lines)


table("targets.csv", ["target", "taxon", "plants", "due", "worth", "wood"],
      [[t["name"], names[t["taxon"]], t["plants"], t["due"], t["worth"], t["wood"]] for t in targets])
table("stocks.csv", ["stock", "taxon", "place", "plants", "wood", "season_from", "season_to", "cuttings_per_plant", "regrowth_days"],
      [[s["name"], names[s["taxon"]], s["place"], s["plants"], f["wood"], f["season"]["from"], f["season"]["to"],
        f["cuttings_per_plant"], f["regrowth_days"]] for s in stocks for f in s["flushes"]])
batch_code = {batch["id"]: batch["code"] for batch in batches}
table("root_checks.csv", ["batch", "container", "day", "examined", "rooted", "callused", "alive", "dead", "grade"],
      [[batch_code[c["batch"]], c["container"], c["day"], c["examined"], c["rooted"], c["callused"], c["alive"], c["dead"],
        c.get("grade", "")] for c in checks])


def logger(name, zone_id, style):
    """Hourly readings from mid September: a thermostat that swings, a cold night, a gap, a repeated reading."""
    zone_ = zones[zone_id - 1]
    wobble = random.Random(zone_id)
    with open(OUT / name, "w", encoding="utf-8", newline="") as file:
        file.write("time,celsius\n" if style == "plain" else "Zeit;Wurzelzone °C\n")
        moment = datetime.datetime(2026, 9, 15)
        while moment < datetime.datetime(2026, 11, 30):
            aim = root_zone(zone_, moment.date())
            hour = moment.hour
            celsius = aim + 0.5 * math.sin(hour / 24 * 2 * math.pi - 2.2) + wobble.gauss(0, 0.25)
            if datetime.datetime(2026, 11, 8, 20) <= moment < datetime.datetime(2026, 11, 9, 8):
                celsius -= 3.5
            lost = datetime.datetime(2026, 10, 20, 5) <= moment < datetime.datetime(2026, 10, 20, 11)
            if not lost:
                if style == "plain":
                    file.write(f"{moment.isoformat(timespec='minutes')},{celsius:.1f}\n")
                else:
                    file.write(f"{moment.strftime('%d.%m.%Y %H:%M')};{celsius:.1f}\n".replace(".", ",", 0).replace(f"{celsius:.1f}", f"{celsius:.1f}".replace(".", ",")))
            moment += datetime.timedelta(hours=1)


logger("logger-mat-1.csv", 1, "plain")
logger("logger-mat-8.csv", 8, "decimal comma")
print(f"{len(zones)} zones, {mats} mats, {len(recipes)} recipes, {len(stocks)} stocks, {len(targets)} targets, "
      f"{len(batches)} batches ({sum(b['state'] == 'struck' for b in batches)} standing), {len(checks)} root checks, "
      f"{len(pottings)} pottings")
