#include "ui/shell/zone_choices.h"

#include "core/book/query.h"
#include "core/season/month_problem.h"
#include "ui/words/say.h"
#include "ui/words/taxon_text.h"

#include <algorithm>
#include <map>

namespace warmbench::ui {
namespace {

/// As many taxa are named in a line; the rest are counted.
constexpr qsizetype taxaNamed = 8;

QString costAt(const HouseBook& book, const Zone& zone, Celsius setPoint, Day day, const Wording& wording) {
    const Celsius air = onDay(houseOf(book, zone).air, day);
    const auto cost = season::matCostPerDay(book, zone, setPoint, air);
    if (!cost) return say("%1: too much for its power").arg(wording.temperature(setPoint));
    return say("%1: %2 a day")
        .arg(wording.temperature(setPoint), wording.money(*cost, book.nursery().currency));
}

bool suits(const Recipe& recipe, const Zone& zone, Celsius rootZone) {
    const auto& covers = recipe.covers.value;
    return std::find(covers.begin(), covers.end(), zone.cover) != covers.end() &&
           rootZone >= recipe.rootZoneLow.value && rootZone <= recipe.rootZoneHigh.value;
}

/// The taxa of the book with a recipe that suits, by name.
QStringList suitedAt(const HouseBook& book, const Zone& zone, Celsius rootZone) {
    std::map<std::string, QString> byName;
    for (const auto& [id, recipe] : book.all<Recipe>())
        if (suits(recipe, zone, rootZone)) {
            const std::string& name = book.get<Taxon>(recipe.taxon).name;
            byName.emplace(name, taxonHtml(name));
        }
    QStringList names;
    for (const auto& [name, html] : byName) names += html;
    return names;
}

QString listed(QStringList names, const Wording& wording) {
    if (names.isEmpty()) return say("none of your recipes");
    const qsizetype more = names.size() - taxaNamed;
    if (more > 0) names = names.first(taxaNamed);
    QString words = names.join(QStringLiteral(", "));
    if (more > 0) words += say(" and %1 more").arg(wording.number(static_cast<int>(more)));
    return words;
}

} // namespace

QList<Fact> runningCostFacts(const HouseBook& book, const Zone& zone, Day day, const Wording& wording) {
    const Mat* mat = zone.matOn(day);
    if (!mat) return {};
    const auto set = setPointOn(book, zone.id, day);
    QStringList lines;
    for (const Celsius setPoint : mat->setPoints) {
        QString line = costAt(book, zone, setPoint, day, wording).toHtmlEscaped();
        if (set == setPoint) line = QStringLiteral("<b>") + line + say(" (set)") + QStringLiteral("</b>");
        lines += line;
    }
    return {{say("Heating at each setting"), lines.join(QStringLiteral("<br>"))}};
}

QList<Fact> suitedFacts(const HouseBook& book, const Zone& zone, Day day, const Wording& wording) {
    if (book.all<Recipe>().empty()) return {};
    const Celsius unheated = onDay(houseOf(book, zone).unheatedRootZone, day);
    const auto set = setPointOn(book, zone.id, day);
    QList<Fact> facts{
        {say("Suits as it is"), listed(suitedAt(book, zone, expectedRootZone(book, zone, day)), wording)}};
    const Mat* mat = zone.matOn(day);
    if (!mat) return facts;
    for (const Celsius setPoint : mat->setPoints) {
        if (set == setPoint) continue;
        const QStringList names = suitedAt(book, zone, std::max(unheated, setPoint));
        if (!names.isEmpty())
            facts.append({say("Suits at %1").arg(wording.temperature(setPoint)), listed(names, wording)});
    }
    return facts;
}

} // namespace warmbench::ui
