#include "app/command/round_words.h"

#include "app/command/book_words.h"
#include "core/book/query.h"
#include "core/crop/safety.h"

#include <nlohmann/json.hpp>

#include <array>
#include <sstream>

namespace warmbench::app {
namespace {

std::string containerWords(const HouseBook& book, BatchId batch, int container) {
    return containerCode(book.get<Batch>(batch).code, container);
}

const std::string& taxonOf(const HouseBook& book, BatchId batch) {
    return book.get<Taxon>(book.get<Batch>(batch).taxon).name;
}

/// `row 1, column 4`, counted from 1 at the back left.
std::string slotWords(const SlotRect& slots) {
    return "row " + std::to_string(slots.row + 1) + ", column " + std::to_string(slots.col + 1);
}

/// Blanks to write into, or what was found on that day already: rooted, callused, alive, dead, grade.
std::array<std::string, 5> foundWords(const HouseBook& book, const round::Stop& stop) {
    if (!stop.found) return {"____", "____", "____", "____", "__"};
    const RootCheck& check = book.get<RootCheck>(*stop.found);
    return {std::to_string(check.rooted), std::to_string(check.callused), std::to_string(check.alive),
            std::to_string(check.dead), check.grade ? std::to_string(*check.grade) : ""};
}

void sayStops(std::ostream& out, const HouseBook& book, const std::vector<round::Stop>& stops) {
    std::optional<ZoneId> zone;
    int number = 0;
    for (std::size_t first = 0; first < stops.size();) {
        TextTable table({"", "container", "taxon", "where", "stand", "pick", "rooted", "callused", "alive",
                         "dead", "grade", "why"},
                        4);
        zone = stops[first].zone;
        for (; first < stops.size() && stops[first].zone == *zone; ++first) {
            const round::Stop& stop = stops[first];
            const auto found = foundWords(book, stop);
            table.add({std::to_string(++number), containerWords(book, stop.batch, stop.container),
                       taxonOf(book, stop.batch), slotWords(stop.slots), std::to_string(stop.standing),
                       std::to_string(stop.examine), found[0], found[1], found[2], found[3], found[4],
                       stop.why.text()});
        }
        out << '\n' << placeWords(book, *zone) << '\n' << table.text();
    }
}

} // namespace

std::string roundWords(const HouseBook& book, Day day, const std::vector<round::Stop>& stops,
                       const std::vector<round::Due>& due) {
    std::ostringstream out;
    out << "Round on " << dayWords(day) << ": ";
    if (stops.empty())
        out << "no container is worth a look\n";
    else
        out << counted(stops.size(), "container", "containers") << " worth a look, in walking order\n";
    sayStops(out, book, stops);
    if (!due.empty()) {
        TextTable table({"batch", "taxon", "do", "since", "where", "plants", "why"}, 5);
        for (const round::Due& one : due) {
            table.add({book.get<Batch>(one.batch).code, taxonOf(book, one.batch),
                       round::taskNames[static_cast<std::size_t>(one.task)], one.since.iso(),
                       placesWords(book, one.batch, day), std::to_string(one.plants), one.why.text()});
        }
        out << "\nDue\n" << table.text();
    }
    if (!stops.empty())
        out << "\nPick by a rule fixed beforehand (edges, corners, middle), tug lightly, lift one in three; "
               "leave "
               "brittle kinds alone.\n"
            << safetyDeference << '\n'
            << safetyNotes(Hazard::Mist).front().text << '\n';
    return out.str();
}

std::string roundJson(const HouseBook& book, Day day, const std::vector<round::Stop>& stops,
                      const std::vector<round::Due>& due) {
    using nlohmann::ordered_json;
    ordered_json told{{"day", day.iso()}, {"stops", ordered_json::array()}, {"due", ordered_json::array()}};
    for (const round::Stop& stop : stops) {
        ordered_json reasons = ordered_json::array();
        for (const round::Reason reason : stop.reasons)
            reasons.push_back(round::reasonNames[static_cast<std::size_t>(reason)]);
        told["stops"].push_back({{"batch", book.get<Batch>(stop.batch).code},
                                 {"container", stop.container},
                                 {"taxon", taxonOf(book, stop.batch)},
                                 {"zone", placeWords(book, stop.zone)},
                                 {"row", stop.slots.row},
                                 {"col", stop.slots.col},
                                 {"standing", stop.standing},
                                 {"examine", stop.examine},
                                 {"reasons", reasons},
                                 {"why", stop.why.text()}});
    }
    for (const round::Due& one : due)
        told["due"].push_back({{"batch", book.get<Batch>(one.batch).code},
                               {"task", round::taskNames[static_cast<std::size_t>(one.task)]},
                               {"since", one.since.iso()},
                               {"plants", one.plants},
                               {"why", one.why.text()}});
    return told.dump(2) + "\n";
}

std::string roundTable(const HouseBook& book, Day day, const std::vector<round::Stop>& stops) {
    std::string text = "batch,container,day,examined,rooted,callused,alive,dead,grade,note\n";
    for (const round::Stop& stop : stops) {
        if (stop.found) continue;
        text += book.get<Batch>(stop.batch).code + "," + std::to_string(stop.container) + "," + day.iso() +
                ",,,,,,,\n";
    }
    return text;
}

} // namespace warmbench::app
