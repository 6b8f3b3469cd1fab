#include "ui/paper/strike_list.h"

#include "core/book/query.h"
#include "core/crop/recipe_figures.h"
#include "core/crop/safety.h"
#include "core/season/dip.h"
#include "ui/paper/cautions.h"
#include "ui/paper/html_table.h"
#include "ui/words/say.h"
#include "ui/words/taxon_text.h"

#include <algorithm>
#include <map>
#include <set>

namespace warmbench::ui {
namespace {

QString escaped(const std::string& words) {
    return text(words).toHtmlEscaped();
}

QStringList rowOf(const HouseBook& book, const Batch& batch, const Letters& letters, const Wording& wording) {
    const std::vector<const Stay*> stays = staysInOrder(book, batch.id);
    const Recipe& recipe = batch.recipe;
    const QString hormone = isWithoutHormone(recipe.hormone.value) ? say("no hormone").toHtmlEscaped()
                                                                   : escaped(hormoneText(recipe));
    QString place = stays.empty() ? say("no place yet") : placeText(book, *stays.front(), wording);
    if (!stays.empty()) {
        const auto setPoint = setPointOn(book, stays.front()->zone, batch.strikeDay);
        place += QStringLiteral(", ") + wording.cover(book.get<Zone>(stays.front()->zone).cover) +
                 QStringLiteral(", ") +
                 (setPoint ? say("mat at %1").arg(wording.temperature(*setPoint)) : say("mat off"));
    }
    const QString room(2, QChar::Nbsp); // a name without it would be broken in a narrow column
    return {tickBox(),
            QStringLiteral("<b>") + letters.of(batch.id) + QStringLiteral("</b> ") + escaped(batch.code),
            taxonHtml(book.get<Taxon>(batch.taxon).name) + QStringLiteral(", ") + wording.wood(recipe.wood),
            wording.cuttings(batch.cuttings()) + QStringLiteral(", ") +
                wording.containers(static_cast<int>(batch.containers.size()),
                                   book.get<ContainerType>(batch.containerType)),
            batch.stock ? escaped(book.get<Stock>(*batch.stock).name) : QStringLiteral("–"),
            hormone + QStringLiteral("; ") + wording.medium(recipe.medium.value).toHtmlEscaped(),
            place.toHtmlEscaped(),
            batch.target ? escaped(book.get<Target>(*batch.target).name) + room : QStringLiteral("–")};
}

/// The slots of a stay as few rectangles, none of which holds a slot of anybody else: stretches of columns
/// that are the same in rows one after the other are one.
std::vector<SlotRect> blocksOf(const Stay& stay) {
    std::map<int, std::set<int>> columnsOfRow;
    for (const Place& place : stay.places)
        for (int row = place.slots.row; row < place.slots.row + place.slots.height; ++row)
            for (int col = place.slots.col; col < place.slots.col + place.slots.width; ++col)
                columnsOfRow[row].insert(col);
    std::vector<SlotRect> blocks;
    for (const auto& [row, columns] : columnsOfRow)
        for (auto col = columns.begin(); col != columns.end();) {
            SlotRect stretch{row, *col, 1, 0};
            for (; col != columns.end() && *col == stretch.col + stretch.width; ++col) ++stretch.width;
            const auto above = std::find_if(blocks.begin(), blocks.end(), [&](const SlotRect& block) {
                return block.row + block.height == stretch.row && block.col == stretch.col &&
                       block.width == stretch.width;
            });
            if (above == blocks.end())
                blocks.push_back(stretch);
            else
                ++above->height;
        }
    return blocks;
}

/// Litres from millilitres, rounded up to a tenth: too little medium is worse than a cup too much.
QString litres(std::int64_t millilitres, const Wording& wording) {
    const std::int64_t tenths = (millilitres + 99) / 100;
    return wording.locale().toString(static_cast<double>(tenths) / 10, 'f', 1);
}

/// How a dip is made from a concentrate; empty of what is no dip.
QString dipWords(const std::string& hormone, const Wording& wording) {
    const auto dip = season::dipStrength(hormone);
    if (!dip) return {};
    const auto millilitres = [&](int ppm) {
        return wording.locale().toString(season::concentrateMillilitres(ppm), 'g', 4);
    };
    const QString from = millilitres(dip->lowPpm);
    const QString amount =
        dip->lowPpm == dip->highPpm ? from : say("%1 to %2").arg(from, millilitres(dip->highPpm));
    return say("; for 100 ml of dip %1 ml of a concentrate of %2 ppm, made up as its label says")
        .arg(amount, wording.number(season::concentratePpm));
}

} // namespace

QString materialsHtml(const season::Materials& materials, const Wording& wording) {
    QString list = heading(say("To have ready")) + QStringLiteral("<ul>");
    const auto item = [&](const QString& words) {
        list += QStringLiteral("<li>") + words.toHtmlEscaped() + QStringLiteral("</li>");
    };
    for (const auto& [name, count] : materials.containers)
        item(say("%1 × %2").arg(wording.number(count), text(name)));
    for (const auto& [name, millilitres] : materials.componentMillilitres)
        item(say("%1 l of %2").arg(litres(millilitres, wording), text(name)));
    for (const auto& [name, cuttings] : materials.cuttingsByHormone)
        if (!isWithoutHormone(name))
            item(say("hormone for %1: %2").arg(wording.cuttings(static_cast<int>(cuttings)), text(name)) +
                 dipWords(name, wording));
    return list + QStringLiteral("</ul>");
}

QString placeText(const HouseBook& book, const Stay& stay, const Wording& wording) {
    const auto span = [&](int from, int to, const QString& one, const QString& several) {
        return to - from == 1 ? one.arg(wording.number(from + 1))
                              : several.arg(wording.number(from + 1), wording.number(to));
    };
    QStringList blocks;
    for (const SlotRect& block : blocksOf(stay))
        blocks += span(block.row, block.row + block.height, say("row %1"), say("rows %1 to %2")) +
                  QStringLiteral(", ") +
                  span(block.col, block.col + block.width, say("column %1"), say("columns %1 to %2"));
    const Zone& zone = book.get<Zone>(stay.zone);
    return text(houseOf(book, zone).name) + QStringLiteral(" · ") + text(zoneTitle(book, stay.zone)) +
           QStringLiteral(", ") + blocks.join(QStringLiteral("; "));
}

QString strikeListHtml(const HouseBook& book, const std::optional<DaySpan>& span, const Letters& letters,
                       const Wording& wording) {
    std::map<Day, std::vector<const Batch*>> byDay;
    std::set<Hazard> hazards;
    std::set<QString> ofPlants; // cautions of the very plants on the list
    season::Materials materials;
    for (const auto& [id, batch] : book.all<Batch>()) {
        if (batch.state != BatchState::Planned || (span && !span->holds(batch.strikeDay))) continue;
        byDay[batch.strikeDay].push_back(&batch);
        materials.add(book, batch);
        for (const Hazard hazard : hazardsOfStriking(batch.recipe)) hazards.insert(hazard);
        const Taxon& taxon = book.get<Taxon>(batch.taxon);
        for (const std::string& caution : {taxon.caution, batch.recipe.caution.value})
            if (!caution.empty())
                ofPlants.insert(QStringLiteral("<p><b>") + taxonHtml(taxon.name) + QStringLiteral("</b>: ") +
                                text(caution).toHtmlEscaped() + QStringLiteral("</p>"));
    }
    if (byDay.empty())
        return heading(say("Nothing is planned to be struck")) +
               paragraph(say(
                   "Batches that are planned stand here, day by day, with what is needed to strike them."));
    QString page;
    for (const auto& [day, batches] : byDay) {
        int cuttings = 0;
        for (const Batch* batch : batches) cuttings += batch->cuttings();
        page += heading(wording.longDate(day) + QStringLiteral(" · ") + wording.cuttings(cuttings));
        HtmlTable table({QString(), say("Batch"), say("Taxon"), say("Strike"), say("From"),
                         say("Hormone; medium, parts"), say("Place"), say("For")});
        for (const Batch* batch : batches) table.add(rowOf(book, *batch, letters, wording));
        page += table.html();
    }
    page += materialsHtml(materials, wording) + cautionsHtml(hazards);
    for (const QString& caution : ofPlants) page += caution;
    return page;
}

} // namespace warmbench::ui
