#include "app/command/plan_words.h"

#include "app/command/book_words.h"
#include "core/book/query.h"
#include "core/crop/recipe_figures.h"
#include "core/crop/safety.h"
#include "core/quantity/decimal.h"
#include "core/season/dip.h"
#include "core/season/target_answer.h"

#include <nlohmann/json.hpp>

#include <sstream>

namespace warmbench::app {
namespace {

/// `rows 1 to 3, columns 4 to 9`, counted from 1 at the back left: the rectangle that holds all containers.
std::string slotWords(const Stay& stay) {
    int top = stay.places.front().slots.row;
    int left = stay.places.front().slots.col;
    int bottom = 0;
    int right = 0;
    for (const Place& place : stay.places) {
        top = std::min(top, place.slots.row);
        left = std::min(left, place.slots.col);
        bottom = std::max(bottom, place.slots.row + place.slots.height);
        right = std::max(right, place.slots.col + place.slots.width);
    }
    const auto span = [](int from, int to) {
        return to - from == 1 ? " " + std::to_string(from + 1)
                              : "s " + std::to_string(from + 1) + " to " + std::to_string(to);
    };
    return "row" + span(top, bottom) + ", column" + span(left, right);
}

std::string heatWords(const std::optional<Celsius>& setPoint) {
    return setPoint ? "mat at " + decimal(*setPoint) + " °C" : "no mat running";
}

/// What is different from how a batch was planned before.
std::string movedWords(const HouseBook& book, const season::StrikeLine& line, Day from) {
    const Batch& before = book.get<Batch>(line.batch.id);
    const bool slipped = before.strikeDay < from;
    // What should have been struck before the days planned moves in any case.
    std::string words = "moved";
    if (slipped)
        words = "not struck on " + before.strikeDay.iso();
    else if (before.strikeDay != line.batch.strikeDay)
        words += " from " + before.strikeDay.iso();
    const std::vector<const Stay*> stays = staysInOrder(book, before.id);
    if (stays.empty()) return words + ": it had no place";
    if (stays.front()->zone != line.stays.front().zone)
        words += ", before in " + placeWords(book, stays.front()->zone);
    if (!line.moved.empty()) words += ", as " + line.moved.text();
    return words;
}

void sayLine(std::ostream& out, const HouseBook& book, const season::StrikeLine& line, Day from) {
    const Batch& batch = line.batch;
    const Recipe& recipe = batch.recipe;
    const Stay& rooting = line.stays.front();
    const std::size_t containers = batch.containers.size();
    out << "  " << line.id << "  " << book.get<Taxon>(batch.taxon).name << ", "
        << woodNames[static_cast<std::size_t>(recipe.wood)] << ": "
        << counted(static_cast<std::size_t>(batch.cuttings()), "cutting", "cuttings")
        << (batch.stock ? " from " + book.get<Stock>(*batch.stock).name : std::string()) << ", in "
        << containers << " × " << book.get<ContainerType>(batch.containerType).name << "\n      "
        << hormoneText(recipe) << "; " << valueText(recipe.medium.value) << "\n      "
        << placeWords(book, rooting.zone) << ", " << slotWords(rooting) << ", "
        << coverNames[static_cast<std::size_t>(book.get<Zone>(rooting.zone).cover)] << ", "
        << heatWords(line.setPoint) << "; roots by " << rooting.to.iso();
    if (line.stays.size() > 1)
        out << ", then " << placeWords(book, line.stays[1].zone) << " to " << line.stays[1].to.iso();
    if (batch.target) out << "; for " << book.get<Target>(*batch.target).name;
    if (line.late) out << ", late: wanted by " << book.get<Target>(*batch.target).due.iso();
    if (line.change == season::LineChange::Moved) out << "; " << movedWords(book, line, from);
    if (line.change == season::LineChange::Kept) out << "; as planned before";
    out << '\n';
    for (const std::string& why : line.why) out << "      " << why << '\n';
}

void sayMats(std::ostream& out, const HouseBook& book, const season::Proposal& proposal) {
    out << "\nMats\n";
    for (const auto& [zone, runs] : proposal.mats) {
        out << "  " << placeWords(book, zone) << ": ";
        if (runs.empty()) out << "off";
        for (std::size_t i = 0; i < runs.size(); ++i)
            out << (i ? ", " : "") << decimal(runs[i].setPoint) << " °C from " << runs[i].from.iso() << " to "
                << (runs[i].to - 1).iso();
        out << '\n';
    }
}

void sayMaterials(std::ostream& out, const season::Materials& materials) {
    out << "\nTo have ready\n";
    for (const auto& [name, count] : materials.containers) out << "  " << count << " × " << name << '\n';
    for (const auto& [name, millilitres] : materials.componentMillilitres)
        out << "  " << decimalText((millilitres + 99) / 100, 1) << " l of " << name << '\n';
    for (const auto& [name, cuttings] : materials.cuttingsByHormone) {
        if (isWithoutHormone(name)) continue;
        out << "  hormone for " << counted(static_cast<std::size_t>(cuttings), "cutting", "cuttings") << ": "
            << name;
        if (const auto dip = season::dipStrength(name)) {
            out << "; for 100 ml of dip " << season::concentrateMillilitres(dip->lowPpm);
            if (dip->highPpm > dip->lowPpm) out << " to " << season::concentrateMillilitres(dip->highPpm);
            out << " ml of a concentrate of " << season::concentratePpm << " ppm, made up as its label says";
        }
        out << '\n';
    }
}

void sayCautions(std::ostream& out, const HouseBook& book, const season::Proposal& proposal,
                 const RecipeLibrary& library) {
    std::set<Hazard> hazards{Hazard::Blades};
    std::map<std::string, std::set<std::string>> byPlant;
    for (const season::StrikeLine& line : proposal.lines) {
        for (const Hazard hazard : hazardsOfStriking(line.batch.recipe)) hazards.insert(hazard);
        if (line.setPoint) hazards.insert(Hazard::ElectricHeat);
        const std::string& name = book.get<Taxon>(line.batch.taxon).name;
        for (const Caution* caution : library.cautionsOf(name))
            byPlant[name].insert(caution->hazard + " (" + library.sourceText(caution->source) + ")");
    }
    out << "\nMind\n  " << safetyDeference << '\n';
    for (const Hazard hazard : hazards) {
        const SafetyNote& first = safetyNotes(hazard).front();
        out << "  " << hazardNames[static_cast<std::size_t>(hazard)] << ": " << first.text << " ("
            << library.sourceText(first.source) << ")\n";
    }
    for (const auto& [plant, cautions] : byPlant)
        for (const std::string& caution : cautions) out << "  " << plant << ": " << caution << '\n';
    out << "  " << cautionIsNoPromise << '\n';
}

std::string shareWords(std::int64_t part, std::int64_t whole) {
    return whole == 0 ? "100" : decimalText(part * 1000 / whole, 1);
}

void sayWaiting(std::ostream& out, const HouseBook& book, const season::Proposal& proposal) {
    if (proposal.waiting.empty()) return;
    out << "\nWanted, and not to be struck in these days\n";
    for (const season::TargetNeed& need : proposal.waiting) {
        const Target& target = book.get<Target>(need.target);
        out << "  " << target.name << ", " << book.get<Taxon>(target.taxon).name << ": ";
        if (need.state != season::NeedState::Later) out << need.why << (need.ahead ? "; " : "");
        if (need.ahead) {
            const std::string wood = woodNames[static_cast<std::size_t>(need.ahead->recipe.wood)];
            out << counted(static_cast<std::size_t>(need.ahead->cuttings), wood + " cutting",
                           wood + " cuttings")
                << " from " << need.ahead->whole.first.iso() << " to " << need.ahead->whole.last.iso();
        }
        const auto answer = season::answerFor(book, need);
        if (answer)
            for (const Phrase& words : answer->inTheWay) out << "; in the way: " << words;
        out << '\n';
    }
}

} // namespace

std::string planWords(const HouseBook& book, const season::Proposal& proposal, const RecipeLibrary& library) {
    std::ostringstream out;
    out << "Plan from " << dayWords(proposal.from) << " to "
        << dayWords(proposal.from + (proposal.strikeDays - 1)) << '\n'
        << proposal.cuttingsPlaced << " of " << proposal.cuttingsWanted << " cuttings wanted have a place ("
        << shareWords(proposal.cuttingsPlaced, proposal.cuttingsWanted) << " %)";
    if (const Phrase quality = proposal.quality(); !quality.empty()) out << "; the plan is " << quality;
    out << '\n';
    std::optional<Day> day;
    for (const season::StrikeLine& line : proposal.lines) {
        if (line.batch.strikeDay != day) {
            day = line.batch.strikeDay;
            int cuttings = 0;
            for (const season::StrikeLine& other : proposal.lines)
                if (other.batch.strikeDay == *day) cuttings += other.batch.cuttings();
            out << '\n'
                << dayWords(*day) << ": "
                << counted(static_cast<std::size_t>(cuttings), "cutting", "cuttings") << "\n";
        }
        sayLine(out, book, line, proposal.from);
    }
    sayMats(out, book, proposal);
    out << "\nNot in the plan\n";
    if (proposal.notPlaced.empty()) out << "  nothing that can be struck in these days is left out\n";
    for (const season::NotPlaced& one : proposal.notPlaced) {
        out << "  " << season::title(book, one) << ": "
            << counted(static_cast<std::size_t>(one.cuttings), "cutting", "cuttings") << ": " << one.why;
        if (!one.hint.empty()) out << "; " << one.hint;
        if (one.planned) out << "; it stays planned, without a place";
        out << '\n';
    }
    sayWaiting(out, book, proposal);
    sayMaterials(out, proposal.materials);
    sayCautions(out, book, proposal, library);
    return out.str();
}

std::string planJson(const HouseBook& book, const season::Proposal& proposal) {
    using nlohmann::json;
    json plan{{"from", proposal.from.iso()},
              {"days", proposal.strikeDays},
              {"cuttings_wanted", proposal.cuttingsWanted},
              {"cuttings_placed", proposal.cuttingsPlaced},
              {"quality", proposal.quality().text()},
              {"strikes", json::array()},
              {"mats", json::array()},
              {"not_placed", json::array()},
              {"waiting", json::array()}};
    for (const season::StrikeLine& line : proposal.lines) {
        const Batch& batch = line.batch;
        json stays = json::array();
        for (const Stay& stay : line.stays)
            stays.push_back(
                {{"zone", placeWords(book, stay.zone)}, {"from", stay.from.iso()}, {"to", stay.to.iso()}});
        plan["strikes"].push_back(
            {{"id", line.id},
             {"day", batch.strikeDay.iso()},
             {"taxon", book.get<Taxon>(batch.taxon).name},
             {"wood", woodNames[static_cast<std::size_t>(batch.recipe.wood)]},
             {"cuttings", batch.cuttings()},
             {"containers", batch.containers.size()},
             {"container", book.get<ContainerType>(batch.containerType).name},
             {"stock", batch.stock ? json(book.get<Stock>(*batch.stock).name) : json()},
             {"target", batch.target ? json(book.get<Target>(*batch.target).name) : json()},
             {"change", season::lineChangeNames[static_cast<std::size_t>(line.change)]},
             {"hormone", batch.recipe.hormone.value},
             {"medium", valueText(batch.recipe.medium.value)},
             {"set_point_c", line.setPoint ? json(line.setPoint->units()) : json()},
             {"late", line.late},
             {"why", line.why},
             {"stays", stays}});
    }
    for (const auto& [zone, runs] : proposal.mats)
        for (const MatRun& run : runs)
            plan["mats"].push_back({{"zone", placeWords(book, zone)},
                                    {"from", run.from.iso()},
                                    {"to", run.to.iso()},
                                    {"set_point_c", run.setPoint.units()}});
    for (const season::NotPlaced& one : proposal.notPlaced)
        plan["not_placed"].push_back(
            {{"target", one.target ? json(book.get<Target>(*one.target).name) : json()},
             {"batch", one.planned ? json(one.planned->code) : json()},
             {"cuttings", one.cuttings},
             {"why", one.why.text()},
             {"hint", one.hint.text()}});
    for (const season::TargetNeed& need : proposal.waiting) {
        json one{{"target", book.get<Target>(need.target).name},
                 {"missing", need.missing},
                 {"why", need.why.text()}};
        if (const auto answer = season::answerFor(book, need)) {
            one["wood"] = woodNames[static_cast<std::size_t>(answer->recipe.wood)];
            one["from"] = answer->window.first.iso();
            one["to"] = answer->window.last.iso();
            one["cuttings"] = answer->cuttings;
            one["containers"] = answer->containers;
            one["slots"] = answer->slots;
            one["in_the_way"] = json::array();
            for (const Phrase& words : answer->inTheWay) one["in_the_way"].push_back(words.text());
        }
        plan["waiting"].push_back(std::move(one));
    }
    for (const auto& [name, count] : proposal.materials.containers) plan["containers"][name] = count;
    for (const auto& [name, millilitres] : proposal.materials.componentMillilitres)
        plan["medium_litres"][name] = static_cast<double>(millilitres) / 1000.0;
    return plan.dump(2) + "\n";
}

} // namespace warmbench::app
