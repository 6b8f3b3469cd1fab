#include "ui/paper/day_sheet.h"

#include "core/book/query.h"
#include "core/book/whereabouts.h"
#include "ui/paper/cautions.h"
#include "ui/paper/html_table.h"
#include "ui/paper/slot_map.h"
#include "ui/paper/strike_list.h"
#include "ui/words/phrase_words.h"
#include "ui/words/say.h"
#include "ui/words/taxon_text.h"

namespace warmbench::ui {
namespace {

QString setPointText(const std::optional<Celsius>& setPoint, const Wording& wording) {
    return setPoint ? wording.temperature(*setPoint) : say("off");
}

/// A stock's name and place, and what ails it.
QString stockHtml(const Stock& stock) {
    QString words = text(stock.name);
    if (!stock.place.empty()) words += QStringLiteral(", ") + text(stock.place);
    if (!stock.health.empty()) words += say("; mind: %1").arg(text(stock.health));
    return words.toHtmlEscaped();
}

QString takingsHtml(const HouseBook& book, const season::DayWork& work, const Wording& wording) {
    if (work.takings.empty()) return {};
    HtmlTable table({say("Take", "cuttings"), say("From"), say("Wood"), say("Look for")});
    for (const season::Taking& one : work.takings)
        table.add({wording.cuttings(one.cuttings) + QStringLiteral(", ") +
                       taxonHtml(book.get<Taxon>(one.taxon).name),
                   one.stock ? stockHtml(book.get<Stock>(*one.stock)) : QStringLiteral("–"),
                   wording.wood(one.wood), told(one.lookFor, wording).toHtmlEscaped()});
    return heading(say("To take")) + table.html();
}

QString matsHtml(const HouseBook& book, const season::DayWork& work, const Wording& wording) {
    if (work.mats.empty()) return {};
    HtmlTable table({say("Mat of"), say("Was"), say("Set to")});
    for (const season::MatChange& one : work.mats)
        table.add({text(zoneTitle(book, one.zone)).toHtmlEscaped(), setPointText(one.before, wording),
                   QStringLiteral("<b>") + setPointText(one.now, wording) + QStringLiteral("</b>")});
    return heading(say("Mats to set")) + table.html();
}

QString behindHtml(const HouseBook& book, const season::DayWork& work) {
    if (work.behind.empty()) return {};
    QStringList codes;
    for (const BatchId id : work.behind) codes << text(book.get<Batch>(id).code);
    return heading(say("Behind the plan")) +
           paragraph(say("%1: planning again can move what was to follow them.")
                         .arg(codes.join(QStringLiteral(", "))));
}

QString troublesHtml(const HouseBook& book, const season::DayWork& work, const Wording& wording) {
    if (work.troubles.empty()) return {};
    HtmlTable table({say("Look at"), say("Where"), say("What is amiss")});
    for (const season::DayTrouble& one : work.troubles) {
        const Stay& stay = book.get<Stay>(one.stay);
        const Batch& batch = book.get<Batch>(stay.batch);
        table.add({text(batch.code).toHtmlEscaped() + u' ' + taxonHtml(book.get<Taxon>(batch.taxon).name),
                   text(zoneTitle(book, stay.zone)).toHtmlEscaped(),
                   wording.trouble(one.trouble).toHtmlEscaped()});
    }
    return heading(say("Amiss where they stand")) + table.html();
}

QString strikesHtml(const HouseBook& book, const season::DayWork& work, const Wording& wording) {
    if (work.strikes.empty()) return {};
    HtmlTable table({QString(), say("Strike"), say("Taxon"), say("How many"), say("Place")});
    for (const BatchId id : work.strikes) {
        const Batch& batch = book.get<Batch>(id);
        const std::vector<const Stay*> stays = staysInOrder(book, id);
        table.add({tickBox(), text(batch.code).toHtmlEscaped(), taxonHtml(book.get<Taxon>(batch.taxon).name),
                   wording.cuttings(batch.cuttings()) + QStringLiteral(", ") +
                       wording.containers(static_cast<int>(batch.containers.size()),
                                          book.get<ContainerType>(batch.containerType)),
                   (stays.empty() ? say("no place yet") : placeText(book, *stays.front(), wording))
                       .toHtmlEscaped()});
    }
    return heading(say("To strike")) + table.html();
}

QString dueHtml(const HouseBook& book, const season::DayWork& work, const Wording& wording) {
    if (work.due.empty()) return {};
    HtmlTable table({QString(), say("Batch"), say("Taxon"), say("Do"), say("Where and why")});
    for (const round::Due& due : work.due) {
        const Batch& batch = book.get<Batch>(due.batch);
        table.add({tickBox(), text(batch.code).toHtmlEscaped(), taxonHtml(book.get<Taxon>(batch.taxon).name),
                   due.task == round::Task::Wean ? say("wean")
                                                 : say("pot on, about %1").arg(wording.number(due.plants)),
                   (told(whereOn(book, due.batch, work.day), wording) + QStringLiteral(": ") +
                    told(due.why, wording))
                       .toHtmlEscaped()});
    }
    return heading(say("To wean and pot on")) + table.html();
}

QString stopsHtml(const season::DayWork& work, const Wording& wording) {
    if (work.stops.empty()) return {};
    return heading(say("To check")) +
           paragraph(say("Containers worth a look: %1. The round sheet has them in the order of the walk.")
                         .arg(wording.number(static_cast<int>(work.stops.size()))));
}

} // namespace

QString dayNotesHtml(const HouseBook& book, const season::DayWork& work, const Wording& wording) {
    QString html = takingsHtml(book, work, wording);
    if (!work.strikes.empty()) html += materialsHtml(work.materials, wording);
    html += matsHtml(book, work, wording) + behindHtml(book, work) + troublesHtml(book, work, wording);
    if (!work.hazards.empty()) html += cautionsHtml(work.hazards);
    return html.isEmpty() ? paragraph(say("Nothing is to be taken, prepared or set.")) : html;
}

DaySheet daySheet(const HouseBook& book, const season::DayWork& work, const Wording& wording) {
    DaySheet sheet;
    sheet.html = strikesHtml(book, work, wording);
    std::map<ZoneId, std::vector<BatchId>> byZone;
    for (const BatchId id : work.strikes)
        if (const auto zone = firstZoneOf(book, id)) byZone[*zone].push_back(id);
    const Letters letters(book);
    for (const auto& [zone, batches] : byZone) {
        sheet.html += plotMark(static_cast<int>(sheet.plots.size()));
        sheet.plots.push_back(slotMap(book, zone, work.day, batches, letters, wording));
    }
    sheet.html += dueHtml(book, work, wording) + stopsHtml(work, wording) + dayNotesHtml(book, work, wording);
    return sheet;
}

} // namespace warmbench::ui
