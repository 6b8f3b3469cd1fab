#include "core/exchange/table/sightings.h"

#include "core/exchange/csv/csv_reader.h"
#include "core/quantity/number.h"

#include <optional>
#include <unordered_map>
#include <utility>

namespace warmbench::exchange {
namespace {

using rooting::Outcome;
using rooting::Sighting;

enum SightingColumn : std::size_t { groupColumn, fromColumn, toColumn, countColumn, outcomeColumn };

std::optional<Outcome> outcomeFromName(std::string_view name) {
    if (name == "rooted") return Outcome::Rooted;
    if (name == "unrooted") return Outcome::Unrooted;
    if (name == "never") return Outcome::Never;
    return std::nullopt;
}

/// Degree-days of a cell: a number of at least 0.
std::optional<double> timeOf(std::string_view cell) {
    const auto time = numberFromText(cell);
    return time && *time >= 0 ? time : std::nullopt;
}

Result<Sighting> rootedSighting(const CsvReader& reader) {
    const auto from = timeOf(reader.cell(fromColumn));
    if (!from) return reader.refusal(fromColumn, "degree-days of at least 0");
    const auto to = timeOf(reader.cell(toColumn));
    if (!to) return reader.refusal(toColumn, "degree-days, as the cuttings had rooted by then");
    if (*to <= *from) return reader.refusal(toColumn, "more than the " + numberText(*from) + " of from");
    return Sighting{Outcome::Rooted, *from, *to};
}

Result<Sighting> unrootedSighting(const CsvReader& reader) {
    const auto from = timeOf(reader.cell(fromColumn));
    if (!from) return reader.refusal(fromColumn, "degree-days of at least 0");
    if (!reader.cell(toColumn).empty())
        return reader.refusal(toColumn, "an empty cell, as the cuttings had not rooted");
    return Sighting{Outcome::Unrooted, *from};
}

/// Its times are not used, but what stands there must make sense.
Result<Sighting> neverSighting(const CsvReader& reader) {
    for (const SightingColumn column : {fromColumn, toColumn})
        if (!reader.cell(column).empty() && !timeOf(reader.cell(column)))
            return reader.refusal(column, "an empty cell, or degree-days of at least 0");
    const auto from = timeOf(reader.cell(fromColumn));
    const auto to = timeOf(reader.cell(toColumn));
    if (from && to && *to < *from)
        return reader.refusal(toColumn, "not less than the " + numberText(*from) + " of from");
    return Sighting{Outcome::Never};
}

Result<Sighting> sightingOf(const CsvReader& reader, bool allRoot) {
    const auto outcome = outcomeFromName(reader.cell(outcomeColumn));
    if (!outcome) return reader.refusal(outcomeColumn, "rooted, unrooted or never");
    const auto count = wholeNumberFromText(reader.cell(countColumn));
    if (!count || *count < 0) return reader.refusal(countColumn, "a whole number of cuttings, at least 0");
    if (*outcome == Outcome::Never && allRoot && *count > 0)
        return reader.refusal(outcomeColumn, "rooted or unrooted, as all are taken to root");
    auto sighting = *outcome == Outcome::Rooted     ? rootedSighting(reader)
                    : *outcome == Outcome::Unrooted ? unrootedSighting(reader)
                                                    : neverSighting(reader);
    if (sighting) sighting->count = static_cast<double>(*count);
    return sighting;
}

} // namespace

Result<std::vector<SightingGroup>> readSightings(const std::string& name, std::string text, bool allRoot) {
    auto opened =
        CsvReader::open(name, std::move(text), {{"group"}, {"from"}, {"to"}, {"count"}, {"outcome"}});
    if (!opened) return opened.refusal();
    CsvReader& reader = *opened;
    std::vector<SightingGroup> groups;
    std::unordered_map<std::string, std::size_t> places;
    while (true) {
        const auto more = reader.next();
        if (!more) return more.refusal();
        if (!*more) break;
        if (reader.cell(groupColumn).empty()) return reader.refusal(groupColumn, "the name of a group");
        const auto sighting = sightingOf(reader, allRoot);
        if (!sighting) return sighting.refusal();
        std::string group{reader.cell(groupColumn)};
        const auto [place, isNew] = places.try_emplace(group, groups.size());
        if (isNew) groups.push_back({std::move(group), {}});
        groups[place->second].sightings.push_back(*sighting);
    }
    if (groups.empty()) return Refusal{name, phrase("found no cuttings, expected a line for each interval")};
    return groups;
}

} // namespace warmbench::exchange
