#include "ui/paper/round_sheet.h"

#include "core/book/query.h"
#include "core/round/round.h"
#include "ui/paper/cautions.h"
#include "ui/paper/html_table.h"
#include "ui/words/phrase_words.h"
#include "ui/words/say.h"
#include "ui/words/taxon_text.h"

namespace warmbench::ui {

QString roundSheetHtml(const HouseBook& book, const forecast::BookForecast& forecast,
                       const Wording& wording) {
    const std::vector<round::Stop> stops = round::roundOn(book, forecast);
    if (stops.empty()) return paragraph(say("No container is worth a look on this day."));
    HtmlTable table({say("Container"), say("Taxon"), say("Place"), say("Why"), say("Stand"), say("Look at"),
                     say("Rooted"), say("Callused"), say("Alive"), say("Dead"), say("Grade"), say("Note")});
    const QString box = QStringLiteral("<span style='color:#777777'>____</span>");
    std::vector<Cover> covers;
    bool heated = false;
    for (const round::Stop& stop : stops) {
        const Batch& batch = book.get<Batch>(stop.batch);
        const Zone& zone = book.get<Zone>(stop.zone);
        covers.push_back(zone.cover);
        heated = heated || zone.mat.has_value();
        table.add({text(containerCode(batch.code, stop.container)).toHtmlEscaped(),
                   taxonHtml(book.get<Taxon>(batch.taxon).name),
                   say("%1, row %2, column %3")
                       .arg(text(zoneTitle(book, stop.zone)), wording.number(stop.slots.row + 1),
                            wording.number(stop.slots.col + 1))
                       .toHtmlEscaped(),
                   told(stop.why, wording).toHtmlEscaped(), wording.number(stop.standing),
                   wording.number(stop.examine), box, box, box, box, box, box + box});
    }
    std::set<Hazard> hazards;
    for (const Hazard hazard : hazardsOfRound(covers, heated)) hazards.insert(hazard);
    return table.html() +
           paragraph(
               say("Grade: the roots of the rooted ones, 0 to 5. Leave it empty where none was given.")) +
           cautionsHtml(hazards);
}

} // namespace warmbench::ui
