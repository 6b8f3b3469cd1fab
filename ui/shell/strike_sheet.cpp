#include "ui/shell/facts.h"

#include "core/book/query.h"
#include "core/crop/safety.h"
#include "ui/words/say.h"
#include "ui/words/taxon_text.h"

#include <map>
#include <set>

namespace warmbench::ui {
namespace {

QString cell(const QString& html) {
    return QStringLiteral("<td style='padding:4px 16px 4px 0'>") + html + QStringLiteral("</td>");
}

QString head(const QString& words, int percent) {
    return QStringLiteral("<td width='%1%'><small>%2</small></td>").arg(percent).arg(words);
}

QString row(const HouseBook& book, const Batch& batch, const Letters& letters, const Wording& wording) {
    const std::vector<const Stay*> stays = staysInOrder(book, batch.id);
    const QString place =
        stays.empty() ? say("no place yet") : text(zoneTitle(book, stays.front()->zone)).toHtmlEscaped();
    const QString hormone =
        isWithoutHormone(batch.recipe.hormone.value)
            ? say("none")
            : (text(batch.recipe.hormone.value) + u' ' + text(batch.recipe.hormoneForm.value))
                  .toHtmlEscaped();
    return QStringLiteral("<tr>") +
           cell(QStringLiteral("<b>") + letters.of(batch.id) + QStringLiteral("</b>")) +
           cell(taxonHtml(book.get<Taxon>(batch.taxon).name) + QStringLiteral("<br>") +
                wording.wood(batch.recipe.wood)) +
           cell(wording.cuttings(batch.cuttings()) + QStringLiteral("<br>") +
                wording.containers(static_cast<int>(batch.containers.size()),
                                   book.get<ContainerType>(batch.containerType))) +
           cell(wording.medium(batch.recipe.medium.value).toHtmlEscaped()) + cell(hormone) + cell(place) +
           QStringLiteral("</tr>");
}

} // namespace

QString strikeSheet(const HouseBook& book, const Letters& letters, const Wording& wording) {
    std::map<Day, std::vector<const Batch*>> byDay;
    std::set<Hazard> hazards;
    for (const auto& [id, batch] : book.all<Batch>()) {
        if (batch.state != BatchState::Planned) continue;
        byDay[batch.strikeDay].push_back(&batch);
        for (const Hazard hazard : hazardsOfStriking(batch.recipe)) hazards.insert(hazard);
    }
    if (byDay.empty())
        return QStringLiteral("<h2>") + say("Nothing is planned to be struck") + QStringLiteral("</h2><p>") +
               say("Batches that are planned stand here, day by day, with what is needed to strike them.") +
               QStringLiteral("</p>");
    QString page = QStringLiteral("<table width='97%'>");
    for (const auto& [day, batches] : byDay) {
        page += QStringLiteral("<tr><td colspan='6' style='padding-top:20px'><h3>") + wording.longDate(day) +
                QStringLiteral("</h3></td></tr><tr>");
        page += head(QString(), 5) + head(say("Taxon"), 25) + head(say("Strike"), 15) +
                head(say("Medium, parts"), 20) + head(say("Hormone"), 18) + head(say("Place"), 17) +
                QStringLiteral("</tr>");
        for (const Batch* batch : batches) page += row(book, *batch, letters, wording);
    }
    page += QStringLiteral("</table>");
    page += QStringLiteral("<h3>") + say("Care") + QStringLiteral("</h3>");
    for (const Hazard hazard : hazards)
        for (const SafetyNote& note : safetyNotes(hazard))
            page +=
                QStringLiteral("<p>") + QString::fromUtf8(note.text).toHtmlEscaped() + QStringLiteral("</p>");
    return page + QStringLiteral("<p>") + QString::fromUtf8(safetyDeference).toHtmlEscaped() +
           QStringLiteral("</p>");
}

} // namespace warmbench::ui
