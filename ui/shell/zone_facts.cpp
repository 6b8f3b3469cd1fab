#include "ui/shell/facts.h"

#include "core/book/load.h"
#include "core/book/query.h"
#include "core/book/readings.h"
#include "core/crop/safety.h"
#include "ui/shell/zone_choices.h"
#include "ui/words/phrase_words.h"
#include "ui/words/say.h"
#include "ui/words/taxon_text.h"

#include <array>
#include <cmath>

namespace warmbench::ui {
namespace {

/// Of each hazard the weightiest notes, for a panel; the rest stand in the strike list.
constexpr std::size_t notesShown = 2;

void addHeat(Facts& facts, const HouseBook& book, const Zone& zone, Day day, const Wording& wording) {
    const auto setPoint = setPointOn(book, zone.id, day);
    if (!zone.mat) {
        facts.facts.append({say("Mat"), say("none")});
    } else if (!zone.matOn(day)) {
        facts.facts.append({say("Mat"), say("%1, out of order since %2")
                                            .arg(text(zone.mat->name).toHtmlEscaped(),
                                                 wording.shortDate(*zone.mat->outOfOrderFrom))});
    } else {
        facts.facts.append(
            {say("Mat"), say("%1, %2 W")
                             .arg(text(zone.mat->name).toHtmlEscaped(),
                                  wording.number(static_cast<int>(std::lround(zone.mat->rated.units()))))});
        facts.facts.append({say("Set to"), setPoint ? wording.temperature(*setPoint) : say("off")});
    }
    if (const auto measured = measuredRootZone(book, zone.id, day))
        facts.facts.append({say("Root zone measured"), wording.temperature(*measured)});
    facts.facts.append({say("Root zone expected"), wording.temperature(expectedRootZone(book, zone, day))});
    facts.facts.append({say("Air"), wording.temperature(onDay(houseOf(book, zone).air, day))});
}

QString occupant(const HouseBook& book, const Stay& stay, Progress progress, const Letters& letters,
                 const Wording& wording) {
    const Batch& batch = book.get<Batch>(stay.batch);
    const QString pots = wording.containers(static_cast<int>(stay.places.size()),
                                            book.get<ContainerType>(batch.containerType));
    return say("%1, %2, %3, until %4")
        .arg(taxonHtml(book.get<Taxon>(batch.taxon).name), pots, wording.progress(progress),
             wording.shortDate(stay.to))
        .prepend(QStringLiteral("<b>") + letters.of(batch.id) + QStringLiteral("</b> "));
}

} // namespace

Facts zoneFacts(const HouseBook& book, ZoneId id, Day day, const Letters& letters, const Wording& wording,
                std::optional<Day> today) {
    const Zone& zone = book.get<Zone>(id);
    Facts facts;
    facts.above = text(houseOf(book, zone).name);
    facts.titleHtml = say("Zone %1").arg(text(zone.name)).toHtmlEscaped();
    facts.subtitle =
        text(book.get<Bench>(zone.bench).name) + QStringLiteral(" · ") + wording.cover(zone.cover);
    const int taken = slotsTaken(book, id, day);
    facts.facts.append(
        {say("Slots taken"), say("%1 of %2").arg(wording.number(taken), wording.number(zone.usableSlots()))});
    if (const auto next = nextSlotsFree(book, id, day))
        facts.facts.append({say("Next slots free"), wording.shortDate(*next)});
    addHeat(facts, book, zone, day, wording);
    QStringList here;
    for (const StayId stayId : book.staysIn(id)) {
        const Stay& stay = book.get<Stay>(stayId);
        if (stay.from > day || day >= stay.to) continue;
        here += occupant(book, stay, progressOn(book, stay, day, today), letters, wording);
        for (const Trouble& trouble : troublesOn(book, stay, day))
            facts.troubles += letters.of(stay.batch) + QStringLiteral(": ") + wording.trouble(trouble);
    }
    facts.facts.append({say("Stands here"),
                        here.isEmpty() ? say("nothing on this day") : here.join(QStringLiteral("<br>"))});
    facts.facts += runningCostFacts(book, zone, day, wording);
    facts.facts += suitedFacts(book, zone, day, wording);
    const std::array cover{zone.cover};
    for (const Hazard hazard : hazardsOfRound(cover, zone.mat.has_value()))
        if (hazard == Hazard::ElectricHeat || hazard == Hazard::Mist)
            for (const SafetyNote& note : safetyNotes(hazard).first(notesShown))
                facts.care += told(note.text);
    if (!facts.care.isEmpty()) facts.care += told(safetyDeference);
    return facts;
}

} // namespace warmbench::ui
