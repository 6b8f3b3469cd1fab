#include "ui/setup/setup_place.h"

/// What was typed into a form of the nursery and is not kept yet, found again.
namespace warmbench::ui {

QString SetupPlace::keyOf(const Thing& thing) {
    return std::visit(
        [&](const auto id) {
            return QStringLiteral("%1 %2").arg(thing.index()).arg(static_cast<qlonglong>(id.number));
        },
        thing);
}

QString SetupPlace::newKey(const char* kind, std::int64_t in) {
    return QStringLiteral("new %1 %2").arg(QLatin1String(kind)).arg(static_cast<qlonglong>(in));
}

bool SetupPlace::resume(const Draft& draft) {
    if (draft.key == newKey("house", 0)) {
        startHouse();
        return true;
    }
    if (draft.key == newKey("container", 0)) {
        startContainer();
        return true;
    }
    const std::vector<Thing> rows = m_rows; // the list is filled anew on the way
    for (const Thing& thing : rows)
        if (resumeWith(thing, draft)) return true;
    return false;
}

/// Whether the draft is of this thing, or of something new in it.
bool SetupPlace::resumeWith(const Thing& thing, const Draft& draft) {
    const auto* house = std::get_if<HouseId>(&thing);
    const auto* bench = std::get_if<BenchId>(&thing);
    const bool newBench = house && draft.key == newKey("bench", house->number);
    const bool newZone = bench && draft.key == newKey("zone", bench->number);
    if (!newBench && !newZone && draft.key != keyOf(thing)) return false;
    choose(thing);
    if (newBench) startBench();
    if (newZone) startZone();
    return true;
}

} // namespace warmbench::ui
