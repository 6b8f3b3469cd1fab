#include "ui/paper/season_sheet.h"

#include "core/season/report/advice.h"
#include "ui/paper/html_table.h"
#include "ui/paper/row_plot.h"
#include "ui/words/phrase_words.h"
#include "ui/words/say.h"
#include "ui/words/taxon_text.h"

#include <QDate>

#include <algorithm>

namespace warmbench::ui {
namespace {

using season::GroupResult;
using season::SeasonReport;
using season::TargetResult;

/// A taxon's name with its quotes turned, where there are no italics.
QString plainTaxon(const std::string& name) {
    QString plain;
    for (const TaxonRun& run : taxonRuns(name)) plain += run.text;
    return plain;
}

/// Writes one report; the sheet grows as it goes.
class SeasonWriter {
public:
    SeasonWriter(const HouseBook& book, const SeasonReport& report, const Wording& wording)
        : m_book(book), m_report(report), m_wording(wording) {}

    SeasonSheet write() {
        glance();
        targets();
        takes();
        costs();
        stocks();
        advice();
        return std::move(m_sheet);
    }

private:
    [[nodiscard]] QString number(double value, int decimals = 0) const {
        return m_wording.locale().toString(value, 'f', decimals);
    }
    [[nodiscard]] QString count(std::int64_t value) const { return number(static_cast<double>(value)); }
    [[nodiscard]] QString cost(double kilowattHours) const {
        const Nursery& nursery = m_book.nursery();
        return m_wording.money(Money::fromUnits(kilowattHours * nursery.pricePerKilowattHour.units()),
                               nursery.currency);
    }
    [[nodiscard]] QString date(Day day) const {
        return m_wording.locale().toString(qDate(day), QLocale::ShortFormat);
    }
    [[nodiscard]] QString groupName(const GroupResult& group) const {
        return taxonHtml(m_book.get<Taxon>(group.taxon).name) + QStringLiteral(", ") +
               m_wording.wood(group.wood);
    }
    [[nodiscard]] QString percents(const rooting::Interval& interval) const {
        return say("%1 to %2 %").arg(number(100 * interval.low), number(100 * interval.high));
    }
    [[nodiscard]] QString takeWords(const season::Evidence& take) const {
        if (take.batches.empty()) return QStringLiteral("–");
        const QString words = say("%1 % (%2)").arg(number(100 * take.take.share()), percents(take.wilson));
        return take.thin() ? words + QStringLiteral(" *") : words;
    }

    void addPlots(const std::vector<PlotRow>& rows, const PlotAxis& axis) {
        for (Plot& plot : rowPlots(rows, axis)) {
            m_sheet.html += plotMark(static_cast<int>(m_sheet.plots.size()));
            m_sheet.plots.push_back(std::move(plot));
        }
    }

    void glance() {
        const auto met = std::count_if(m_report.targets.begin(), m_report.targets.end(),
                                       [](const TargetResult& result) { return result.met(); });
        m_sheet.html += paragraph(
            say("Batches struck from %1 to %2, as known on %3.")
                .arg(date(m_report.span.from), date(m_report.span.to - 1), date(m_report.span.seen)));
        HtmlTable table({say("Cuttings struck"), say("Plants potted on"), say("Lost"), say("Still standing"),
                         say("Targets met"), say("Slot-days for a plant"), say("Heat of all mats"),
                         say("Heat for a plant")});
        const auto plants = static_cast<double>(m_report.pottedOfEnded);
        table.add(
            {count(m_report.struck), count(m_report.potted), count(m_report.lost), count(m_report.standing),
             say("%1 of %2").arg(count(met), count(static_cast<std::int64_t>(m_report.targets.size()))),
             plants > 0 ? number(static_cast<double>(m_report.slotDays) / plants, 1) : QStringLiteral("–"),
             say("%1 kWh, %2").arg(number(m_report.heat.kilowattHours), cost(m_report.heat.kilowattHours)),
             plants > 0 ? cost(m_report.kilowattHoursOfEnded / plants) : QStringLiteral("–")});
        m_sheet.html += table.html();
    }

    void targets() {
        m_sheet.html += heading(say("What was wanted and made"));
        if (m_report.targets.empty()) {
            m_sheet.html += paragraph(say("No target was due and no batch was struck for one."));
            return;
        }
        m_sheet.html += paragraph(say("Empty box: plants wanted. Filled: plants potted on."));
        std::vector<PlotRow> rows;
        double most = 1;
        HtmlTable table({say("Target"), say("Taxon"), say("Wanted"), say("By"), say("Struck"),
                         say("Potted on"), say("In time"), say("Standing"), say("Came to")});
        for (const TargetResult& result : m_report.targets) {
            const Target& target = m_book.get<Target>(result.target);
            const QString taxon = plainTaxon(m_book.get<Taxon>(target.taxon).name);
            PlotRow row;
            row.label = text(target.name) + QStringLiteral("  ") + taxon;
            row.value = say("%1 of %2").arg(count(result.potted), count(result.wanted));
            row.wanted = result.wanted;
            row.made = result.potted;
            rows.push_back(row);
            most = std::max({most, static_cast<double>(result.wanted), static_cast<double>(result.potted)});
            const QString state = result.met() && *result.metOn <= target.due ? say("met")
                                  : result.met() ? say("met on %1, late").arg(date(*result.metOn))
                                  : result.standing > 0
                                      ? say("%1 missing so far").arg(count(result.missing()))
                                      : say("%1 missing").arg(count(result.missing()));
            table.add({text(target.name).toHtmlEscaped(), taxonHtml(m_book.get<Taxon>(target.taxon).name),
                       count(result.wanted), date(target.due), count(result.struck), count(result.potted),
                       count(result.inTime), count(result.standing), state.toHtmlEscaped()});
        }
        addPlots(rows, {most, 1, say("plants")});
        m_sheet.html += table.html();
    }

    void takes() {
        m_sheet.html += heading(say("Take and losses"));
        std::vector<PlotRow> rows;
        HtmlTable table({say("Taxon and wood"), say("Batches"), say("Struck"), say("Potted on"),
                         say("Take (95 %)"), say("Recipe's take"), say("Lost")});
        for (const GroupResult& group : m_report.groups) {
            QStringList lost;
            for (const auto& [reason, cuttings] : group.lost)
                lost += told(reason, m_wording).toHtmlEscaped() + u' ' + count(cuttings);
            const bool ended = !group.take.batches.empty();
            table.add({groupName(group), count(group.batches), count(group.struck), count(group.potted),
                       takeWords(group.take),
                       ended ? percents({group.recipeLow, group.recipeHigh}) : QStringLiteral("–"),
                       lost.isEmpty() ? QStringLiteral("–") : lost.join(QStringLiteral("; "))});
            if (!ended) continue;
            PlotRow row;
            row.label = plainTaxon(m_book.get<Taxon>(group.taxon).name) + QStringLiteral(", ") +
                        m_wording.wood(group.wood);
            row.value = say("%1 of %2").arg(count(group.take.take.rooted), count(group.take.take.struck));
            row.range = {group.recipeLow, group.recipeHigh};
            row.interval = {group.take.wilson.low, group.take.wilson.high};
            row.point = group.take.take.share();
            row.open = group.take.thin();
            rows.push_back(row);
        }
        if (m_report.groups.empty()) {
            m_sheet.html += paragraph(say("Nothing was struck on these days."));
            return;
        }
        m_sheet.html += paragraph(
            say("Batches that have ended. Hatched: what the recipe promises. Dot and line: plants potted on "
                "of cuttings struck, with Wilson's interval at 95 %, as in Results. What to change rests on "
                "wider ones, as batches differ. A ring, and * in the table: fewer than 3 batches."));
        if (!rows.empty()) addPlots(rows, {1, 100, QStringLiteral("%")});
        m_sheet.html += table.html();
    }

    void costs() {
        if (m_report.groups.empty()) return;
        m_sheet.html += heading(say("Bench and heat for each plant"));
        m_sheet.html += paragraph(
            say("Of batches that have ended. A slot-day is one slot for one day. Heat is reckoned from "
                "set-points and the houses' air, not metered, and shared by slots; %1 kWh (%2) ran under "
                "nothing.")
                .arg(number(m_report.heat.idle), cost(m_report.heat.idle)));
        HtmlTable table({say("Taxon and wood"), say("Plants"), say("Slot-days"), say("Slot-days a plant"),
                         say("Heat, kWh"), say("Heat a plant, kWh"), say("Heat a plant")});
        for (const GroupResult& group : m_report.groups) {
            const auto slots = group.slotDaysEach();
            const auto heat = group.kilowattHoursEach();
            if (group.take.batches.empty()) continue;
            table.add({groupName(group), count(group.take.take.rooted), count(group.slotDays),
                       slots ? number(*slots, 1) : QStringLiteral("–"), number(group.kilowattHours, 1),
                       heat ? number(*heat, 2) : QStringLiteral("–"),
                       heat ? cost(*heat) : QStringLiteral("–")});
        }
        m_sheet.html += table.html();
    }

    void stocks() {
        if (m_report.stocks.empty()) return;
        m_sheet.html += heading(say("What the stock plants gave"));
        HtmlTable table({say("Stock"), say("Taxon"), say("Wood"), say("Cuttings taken"), say("Could give"),
                         say("Plants potted on"), say("Take (95 %)")});
        for (const season::StockResult& result : m_report.stocks) {
            if (result.taken == 0) continue;
            const Stock& stock = m_book.get<Stock>(result.stock);
            table.add({text(stock.name).toHtmlEscaped(), taxonHtml(m_book.get<Taxon>(stock.taxon).name),
                       m_wording.wood(result.wood), count(result.taken), count(result.couldGive),
                       count(result.potted), takeWords(result.take)});
        }
        m_sheet.html += table.isEmpty() ? paragraph(say("Nothing was taken from them.")) : table.html();
    }

    void advice() {
        m_sheet.html += heading(say("What to change next year, and on what evidence"));
        HtmlTable firm({say("Where"), say("What to do"), say("Evidence")});
        HtmlTable thin({say("Where"), say("What to do meanwhile"), say("What there is")});
        for (const season::Advice& one : season::adviceOf(m_book, m_report))
            (one.thin ? thin : firm)
                .add({told(one.subject, m_wording).toHtmlEscaped(), told(one.what, m_wording).toHtmlEscaped(),
                      told(one.evidence, m_wording).toHtmlEscaped()});
        m_sheet.html += firm.isEmpty() ? paragraph(say("Nothing that rests on enough.")) : firm.html();
        if (thin.isEmpty()) return;
        m_sheet.html += heading(say("Too little to go by yet")) + thin.html();
    }

    const HouseBook& m_book;
    const SeasonReport& m_report;
    const Wording& m_wording;
    SeasonSheet m_sheet;
};

} // namespace

SeasonSheet seasonSheet(const HouseBook& book, const season::ReportSpan& span, const Wording& wording) {
    const SeasonReport report = season::seasonReport(book, span);
    return SeasonWriter(book, report, wording).write();
}

} // namespace warmbench::ui
