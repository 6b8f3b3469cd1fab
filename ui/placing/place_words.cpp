#include "ui/placing/place_words.h"

#include "core/book/container_numbers.h"
#include "core/book/query.h"
#include "ui/words/say.h"

namespace warmbench::ui {
namespace {

using placing::Hindrance;
using placing::ZoneVerdict;

QString coversWanted(const Recipe& recipe, Stage stage, const Wording& wording) {
    if (stage != Stage::Rooting) return wording.cover(Cover::Open);
    QStringList covers;
    for (const Cover cover : recipe.covers.value) covers += wording.cover(cover);
    return covers.join(say(" or "));
}

QString codeWords(const HouseBook& book, std::optional<BatchId> batch) {
    return batch ? text(book.get<Batch>(*batch).code) : QString();
}

QString whyNot(const HouseBook& book, const placing::Carried& carried, const ZoneVerdict& verdict,
               Hindrance hindrance, const Wording& wording) {
    const placing::HeatThere& heat = verdict.heat;
    const Recipe& recipe = book.get<Batch>(carried.batch).recipe;
    const QString found = wording.temperature(heat.rootZone);
    const QString limit = wording.temperature(heat.limit);
    switch (hindrance) {
    case Hindrance::Cover:
        return say("It is %1; they need %2.")
            .arg(wording.cover(book.get<Zone>(verdict.zone).cover),
                 coversWanted(recipe, carried.stage, wording));
    case Hindrance::TooCold:
        return heat.rootZone < heat.limit
                   ? say("Too cold: the root zone goes down to %1, they need %2 at least.").arg(found, limit)
                   : say("Too cold: they would not root there within a year.");
    case Hindrance::TooWarm:
        return say("Too warm: the root zone goes up to %1, they bear %2 at most.").arg(found, limit);
    case Hindrance::Others:
        return say("They would need the mat at %1, which %2 there does not bear.")
            .arg(heat.setPoint ? wording.temperature(*heat.setPoint) : say("off"),
                 codeWords(book, heat.others));
    case Hindrance::NoRoom:
        return verdict.freeSlots >= verdict.wantedSlots
                   ? (verdict.freeSlots == 1
                          ? say("No room: %1 slot is free, but not so that these containers fit.")
                          : say("No room: %1 slots are free, but not so that these containers fit."))
                         .arg(wording.number(verdict.freeSlots))
                   : (verdict.freeSlots == 1 ? say("No room: %1 slot is free, they take %2.")
                                             : say("No room: %1 slots are free, they take %2."))
                         .arg(wording.number(verdict.freeSlots), wording.number(verdict.wantedSlots));
    case Hindrance::NotSoLong:
        return say("Room only until %1; they would stand there until %2.")
            .arg(wording.shortDate(verdict.freeUntil), wording.shortDate(heat.to));
    case Hindrance::Following:
        return say("Where they go afterwards %1 stands when they would come.")
            .arg(codeWords(book, verdict.follower));
    }
    return {};
}

QString heatWords(const placing::HeatThere& heat, const Wording& wording) {
    if (!heat.changes) return {};
    return heat.setPoint ? say("Its mat has to be set to %1.").arg(wording.temperature(*heat.setPoint))
                         : say("Its mat has to be off.");
}

QString costWords(const HouseBook& book, const placing::CostChange& cost, const Wording& wording) {
    const std::string& currency = book.nursery().currency;
    const auto money = [&](std::int64_t thousandths) {
        return wording.money(Money{(thousandths + (thousandths < 0 ? -5 : 5)) / 10}, currency);
    };
    const std::int64_t difference = cost.difference();
    const QString change = difference / 10 == 0 ? say("the same")
                           : difference > 0     ? say("%1 more").arg(money(difference))
                                                : say("%1 less").arg(money(-difference));
    return say("Cost by the planner: %1 now, %2 there, %3.")
        .arg(money(cost.now.total()), money(cost.after.total()), change);
}

} // namespace

QString carriedWords(const HouseBook& book, const placing::Carried& carried, const Wording& wording) {
    const Batch& batch = book.get<Batch>(carried.batch);
    const QString name = text(batch.code) + QStringLiteral(", ") + text(book.get<Taxon>(batch.taxon).name);
    const QString pots = wording.containers(static_cast<int>(carried.containers.size()),
                                            book.get<ContainerType>(batch.containerType));
    if (carried.whole) return say("%1: all %2").arg(name, pots);
    return say("%1: %2, number %3").arg(name, pots, text(containerNumbers(carried.containers)));
}

QStringList verdictWords(const HouseBook& book, const placing::Carried& carried, const ZoneVerdict& verdict,
                         const Wording& wording) {
    const QString title = text(zoneTitle(book, verdict.zone));
    QStringList lines{verdict.suits() ? say("%1 suits.").arg(title) : say("%1 does not suit.").arg(title)};
    for (const Hindrance hindrance : verdict.hindrances)
        lines += whyNot(book, carried, verdict, hindrance, wording);
    if (!verdict.suits()) return lines;
    const placing::HeatThere& heat = verdict.heat;
    if (const QString words = heatWords(heat, wording); !words.isEmpty()) lines += words;
    lines += heat.ready ? say("Ready on %1; it stands there from %2 to %3.")
                              .arg(wording.shortDate(*heat.ready), wording.shortDate(carried.day),
                                   wording.shortDate(heat.to))
                        : say("It stands there from %1 to %2.")
                              .arg(wording.shortDate(carried.day), wording.shortDate(heat.to));
    if (verdict.cost) lines += costWords(book, *verdict.cost, wording);
    return lines;
}

} // namespace warmbench::ui
