#include "ui/shell/batch_life.h"

#include "core/book/query.h"
#include "core/forecast/batch_forecast.h"
#include "core/season/heat_choice.h"
#include "ui/paper/label_content.h"
#include "ui/words/number_ranges.h"
#include "ui/words/say.h"

#include <algorithm>
#include <cmath>

namespace warmbench::ui {
namespace {

constexpr double lifeLevel = 0.9; ///< of the intervals told
constexpr std::size_t checksTold = 6;

QString stageLabel(const Stay& stay) {
    switch (stay.stage) {
    case Stage::Rooting:
        return say("Roots in");
    case Stage::Weaning:
        return stay.weanedOn ? say("Weaned in") : say("To be weaned in");
    case Stage::GrowingOn:
        return say("Grows on in");
    }
    return {};
}

/// Whether some of its containers stand elsewhere during a stay.
bool standsApart(const std::vector<const Stay*>& stays, const Stay& stay) {
    return std::any_of(stays.begin(), stays.end(), [&](const Stay* other) {
        return other != &stay && other->from < stay.to && stay.from < other->to;
    });
}

QString containersOf(const Stay& stay, const Wording& wording) {
    std::vector<int> numbers;
    for (const Place& place : stay.places) numbers.push_back(place.container);
    const QString ranges = numberRanges(numbers, wording);
    return numbers.size() == 1 ? say("container %1").arg(ranges) : say("containers %1").arg(ranges);
}

QString foundIn(const RootCheck& check, const Wording& wording) {
    QString words = say("%1, container %2: %3 of %4 rooted")
                        .arg(wording.shortDate(check.day), wording.number(check.container),
                             wording.number(check.rooted), wording.number(check.examined));
    if (check.callused > 0) words += say(", %1 callused").arg(wording.number(check.callused));
    if (check.dead > 0) words += say(", %1 dead").arg(wording.number(check.dead));
    if (check.grade) words += say(", grade %1").arg(wording.number(*check.grade));
    if (!check.note.empty()) words += QStringLiteral(", ") + text(check.note);
    return words.toHtmlEscaped();
}

const Stay* rootingStayOf(const HouseBook& book, BatchId batch) {
    for (const Stay* stay : staysInOrder(book, batch))
        if (stay->stage == Stage::Rooting) return stay;
    return nullptr;
}

QString settingWords(const HouseBook& book, const season::HeatChoice& choice, const Wording& wording) {
    const QString setting = choice.setPoint ? wording.temperature(*choice.setPoint) : say("off");
    QString words = choice.days ? say("%1: %2, %3")
                                      .arg(setting, wording.days(*choice.days),
                                           wording.money(choice.cost, book.nursery().currency))
                                : say("%1: not rooted within a year").arg(setting);
    if (!choice.suits) words += say(" (outside its recipe)");
    return words.toHtmlEscaped();
}

} // namespace

QList<Fact> stayFacts(const HouseBook& book, BatchId batch, const Wording& wording) {
    const auto stays = staysInOrder(book, batch);
    if (stays.empty()) return {{say("Place"), say("none yet", "place")}};
    QList<Fact> facts;
    for (const Stay* stay : stays) {
        const Zone& zone = book.get<Zone>(stay->zone);
        QString words =
            say("zone %1, %2<br>%3 to %4")
                .arg(text(zone.name).toHtmlEscaped(), text(book.get<Bench>(zone.bench).name).toHtmlEscaped(),
                     wording.shortDate(stay->from), wording.shortDate(stay->to));
        if (standsApart(stays, *stay)) words += QStringLiteral("<br>") + containersOf(*stay, wording);
        facts.append({stageLabel(*stay), words});
    }
    return facts;
}

QList<Fact> checkFacts(const HouseBook& book, const Batch& batch, Day day, const Wording& wording) {
    QList<Fact> facts;
    std::vector<const RootCheck*> checks;
    for (const RootCheckId id : book.checksOf(batch.id))
        if (const RootCheck& check = book.get<RootCheck>(id); check.day <= day) checks.push_back(&check);
    std::sort(checks.begin(), checks.end(), [](const RootCheck* a, const RootCheck* b) {
        return std::tie(b->day, a->container) < std::tie(a->day, b->container);
    });
    QStringList told;
    for (std::size_t i = 0; i < std::min(checks.size(), checksTold); ++i)
        told += foundIn(*checks[i], wording);
    if (checks.size() > checksTold)
        told += say("and %1 before").arg(wording.number(static_cast<int>(checks.size() - checksTold)));
    facts.append({say("Checks"), told.isEmpty() ? say("none yet") : told.join(QStringLiteral("<br>"))});
    int lost = 0;
    for (const LossId id : book.lossesOf(batch.id))
        if (const Loss& loss = book.get<Loss>(id); loss.day <= day) lost += loss.cuttings;
    if (lost > 0) facts.append({say("Lost"), wording.cuttings(lost)});
    if (const int plants = pottedOn(book, batch.id); plants > 0)
        facts.append({say("Potted on"), wording.number(plants)});
    return facts;
}

QList<Fact> forecastFacts(const HouseBook& book, const Batch& batch, Day day, const Wording& wording) {
    const auto forecast = forecast::BatchForecast::make(book, batch, std::max(day, batch.strikeDay));
    if (!forecast) return {};
    const double sure = book.nursery().surenessPermille / 1000.0;
    QList<Fact> facts;
    const auto likely = forecast->readyDay(0.5);
    const auto surely = forecast->readyDay(sure);
    if (likely && surely)
        facts.append(
            {say("Ready to wean"),
             say("likely %1, surely by %2").arg(wording.shortDate(*likely), wording.shortDate(*surely))});
    else
        facts.append({say("Ready to wean"), say("not within two years of striking")});
    const auto plants = forecast->plants(1, lifeLevel);
    facts.append(
        {say("Plants"), say("about %1, likely %2 to %3")
                            .arg(wording.number(static_cast<int>(std::lround(plants.expected))),
                                 wording.number(static_cast<int>(std::floor(plants.interval.low))),
                                 wording.number(static_cast<int>(std::ceil(plants.interval.high))))});
    return facts;
}

QList<Fact> settingFacts(const HouseBook& book, const Batch& batch, Day day, const Wording& wording) {
    const Stay* stay = rootingStayOf(book, batch.id);
    if (!stay || batch.state == BatchState::Ended || day >= stay->to) return {};
    const auto choices = season::heatChoices(book, book.get<Zone>(stay->zone), batch, day);
    QStringList told;
    for (const season::HeatChoice& choice : choices) told += settingWords(book, choice, wording);
    if (told.isEmpty()) return {};
    return {{day > batch.strikeDay ? say("Days still to root and heating, by setting")
                                   : say("Days to root and heating, by setting"),
             told.join(QStringLiteral("<br>"))}};
}

Fact labelFact(const HouseBook& book, const Batch& batch, const Wording& wording) {
    const LabelContent label = labelOf(book, batch, batch.containers.front().number, wording);
    QString title = label.title;
    if (batch.containers.size() > 1)
        title = say("%1 to %2").arg(title, text(containerCode(batch.code, batch.containers.back().number)));
    return {say("Label"), QStringLiteral("<b>%1</b><br>%2<br>%3<br>%4")
                              .arg(title.toHtmlEscaped(), label.taxonHtml, label.struck.toHtmlEscaped(),
                                   label.recipe.toHtmlEscaped())};
}

} // namespace warmbench::ui
