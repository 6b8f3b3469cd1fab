#include "ui/shell/facts.h"

#include "core/book/load.h"
#include "core/book/query.h"
#include "core/book/whereabouts.h"
#include "core/crop/recipe_figures.h"
#include "core/crop/safety.h"
#include "ui/shell/batch_life.h"
#include "ui/words/phrase_words.h"
#include "ui/words/say.h"
#include "ui/words/taxon_text.h"

#include <algorithm>
#include <tuple>

namespace warmbench::ui {
namespace {

/// A figure of a recipe with the source or mark that it stands under.
template <class T>
QString sourced(const QString& words, const Figure<T>& figure) {
    if (figure.source.empty()) return words.toHtmlEscaped();
    return words.toHtmlEscaped() + QStringLiteral(" <small>(") + text(figure.source).toHtmlEscaped() +
           QStringLiteral(")</small>");
}

QString recipeWords(const Recipe& recipe, const Wording& wording) {
    QStringList words{sourced(wording.temperature(recipe.rootZoneIdeal.value), recipe.rootZoneIdeal)};
    if (!recipe.covers.value.empty())
        words += sourced(wording.cover(recipe.covers.value.front()), recipe.covers);
    if (isWithoutHormone(recipe.hormone.value))
        words += sourced(say("no hormone"), recipe.hormone);
    else if (!recipe.hormone.value.empty())
        words += sourced((text(recipe.hormone.value) + u' ' + text(recipe.hormoneForm.value)).trimmed(),
                         recipe.hormone);
    if (!recipe.medium.value.empty()) words += sourced(wording.medium(recipe.medium.value), recipe.medium);
    if (recipe.daysToRoot.value.high > 0)
        words += sourced(say("roots in %1")
                             .arg(text(withUnit(FigureKind::DaysToRoot, valueText(recipe.daysToRoot.value)))),
                         recipe.daysToRoot);
    if (recipe.takePercent.value.high > 0)
        words += sourced(
            say("take %1").arg(text(withUnit(FigureKind::TakePercent, valueText(recipe.takePercent.value)))),
            recipe.takePercent);
    return words.join(QStringLiteral("<br>"));
}

QString strikeWords(const Batch& batch, Day day, const Wording& wording) {
    QString date = wording.shortDate(batch.strikeDay);
    const int ago = day - batch.strikeDay;
    if (batch.state == BatchState::Planned || ago < 0) return date;
    return say("%1, %2 before this day").arg(date, wording.days(ago));
}

} // namespace

Facts batchFacts(const HouseBook& book, BatchId id, Day day, const Wording& wording,
                 std::optional<Day> today) {
    const Batch& batch = book.get<Batch>(id);
    const ContainerType& type = book.get<ContainerType>(batch.containerType);
    const Stay* stay = stayOn(book, id, day);
    Facts facts;
    facts.above = text(batch.code);
    facts.titleHtml = taxonHtml(book.get<Taxon>(batch.taxon).name);
    QStringList subtitle{wording.wood(batch.recipe.wood)};
    subtitle += say("%1 in %2")
                    .arg(wording.cuttings(batch.cuttings()),
                         wording.containers(static_cast<int>(batch.containers.size()), type));
    if (stay)
        subtitle += wording.progress(progressOn(book, *stay, day, today));
    else if (batch.state == BatchState::Planned)
        subtitle += wording.progress(Progress::Planned);
    facts.subtitle = subtitle.join(QStringLiteral(" · "));
    for (const Stay* one : staysOn(book, id, day))
        for (const Trouble& trouble : troublesOn(book, *one, day)) facts.troubles += wording.trouble(trouble);
    facts.troubles.removeDuplicates();
    const bool planned = batch.state == BatchState::Planned;
    if (planned) facts.strikes = id;
    facts.facts.append({planned ? say("To strike") : say("Struck"), strikeWords(batch, day, wording)});
    if (!planned)
        facts.facts.append({say("Standing"), say("%1 of %2")
                                                 .arg(wording.number(standing(book, batch, day)),
                                                      wording.cuttings(batch.cuttings()))});
    // What has been struck has a card of its own for that.
    if (planned || day < batch.strikeDay) facts.facts += forecastFacts(book, batch, day, wording);
    facts.facts += stayFacts(book, id, wording);
    if (!planned) facts.facts += checkFacts(book, batch, day, wording);
    if (batch.target) {
        const Target& target = book.get<Target>(*batch.target);
        facts.facts.append({say("Target %1").arg(text(target.name).toHtmlEscaped()),
                            (target.plants == 1 ? say("%1 plant by %2") : say("%1 plants by %2"))
                                .arg(wording.number(target.plants), wording.shortDate(target.due))});
    }
    if (batch.stock)
        facts.facts.append({say("Stock"), text(book.get<Stock>(*batch.stock).name).toHtmlEscaped()});
    facts.facts.append(
        {planned ? say("Recipe") : say("Recipe as it was then"), recipeWords(batch.recipe, wording)});
    facts.facts += settingFacts(book, batch, day, wording);
    facts.facts.append(labelFact(book, batch, wording));
    if (!batch.note.empty()) facts.facts.append({say("Note"), text(batch.note).toHtmlEscaped()});
    if (const Taxon& taxon = book.get<Taxon>(batch.taxon); !taxon.caution.empty())
        facts.care += text(taxon.caution);
    if (!batch.recipe.caution.value.empty()) facts.care += text(batch.recipe.caution.value);
    if (planned)
        for (const Hazard hazard : hazardsOfStriking(batch.recipe))
            if (hazard == Hazard::Blades || hazard == Hazard::Hormone)
                facts.care += told(safetyNotes(hazard).front().text);
    return facts;
}

QList<Fact> firstSteps(const HouseBook& book) {
    const std::tuple<bool, QString, QString> steps[] = {
        {book.all<Zone>().empty(), say("Nursery"), say("put in a house, its benches, and their zones")},
        {book.all<ContainerType>().empty(), say("Nursery"), say("add the pots and trays that you strike in")},
        {book.all<Target>().empty(), say("Targets"), say("say which plants are wanted, how many, by when")},
        {book.all<Stock>().empty(), say("Stocks"), say("say what cuttings are taken from")},
        {book.all<Batch>().empty(), say("Plan"),
         say("let the striking be planned (Ctrl L), look at it, accept it")}};
    QList<Fact> facts;
    int number = 0;
    for (const auto& [open, where, what] : steps) {
        ++number;
        if (open) facts.append({say("%1. %2").arg(number).arg(where), what});
    }
    if (!facts.isEmpty()) facts.prepend({say("First"), say("what is still to do before the first strike")});
    return facts;
}

Facts bookFacts(const HouseBook& book, Day day, const Wording& wording) {
    Facts facts;
    const std::string& name = book.nursery().name;
    facts.titleHtml = name.empty() ? say("This day") : text(name).toHtmlEscaped();
    facts.subtitle = wording.longDate(day);
    facts.facts += firstSteps(book);
    if (book.all<House>().empty()) return facts;
    const SlotLoad load = slotLoad(book, day, day + 1);
    int standingBatches = 0;
    int waiting = 0;
    int troubled = 0;
    for (const auto& [id, batch] : book.all<Batch>()) {
        if (batch.state == BatchState::Planned) ++waiting;
        const auto stays = staysOn(book, id, day);
        if (stays.empty()) continue;
        ++standingBatches;
        if (std::any_of(stays.begin(), stays.end(),
                        [&](const Stay* stay) { return !troublesOn(book, *stay, day).empty(); }))
            ++troubled;
    }
    facts.facts.append({say("Slots taken"),
                        say("%1 of %2").arg(wording.number(load.taken(day)), wording.number(load.usable))});
    facts.facts.append({say("Batches on the benches"), wording.number(standingBatches)});
    facts.facts.append({say("Planned"), wording.number(waiting)});
    if (troubled > 0)
        facts.troubles += troubled == 1 ? say("1 batch needs a look")
                                        : say("%1 batches need a look").arg(wording.number(troubled));
    return facts;
}

} // namespace warmbench::ui
