#include "ui/wants/stocks_place.h"

#include "core/season/stock_yield.h"
#include "ui/form/labels.h"
#include "ui/wants/stock_chart.h"
#include "ui/wants/stock_dialog.h"
#include "ui/wants/target_dialog.h"

#include <QPushButton>
#include <QTreeWidget>

#include <algorithm>

namespace warmbench::ui {
namespace {

enum StockColumn : int {
    StockNameColumn,
    StockTaxonColumn,
    PlantsColumn,
    PlaceColumn,
    NowColumn,
    YearColumn,
    HealthColumn,
    FlushColumn
};

constexpr int firstPlants = 10;
constexpr int daysOfYear = 365;

/// Of the field for the wood of a flush, counted from 1.
QString flushName(int flush) {
    return QStringLiteral("flushWood%1").arg(flush);
}

} // namespace

StocksPlace::StocksPlace(QWidget* parent)
    : TablePlace(QStringLiteral("stocks"), tr("Stocks"),
                 {tr("Stock"), tr("Taxon"), tr("Plants"), tr("Where"), tr("Stand now"),
                  tr("Still to take, a year"), tr("Health"), tr("Wood, season, cuttings from a plant")},
                 parent),
      m_chart(new StockChart(this)), m_words(wrappedLabel(this)),
      m_renew(addButton(QStringLiteral("stocksRenew"), tr("R&enew from its own cuttings…"))) {
    addListButton(season::ListKind::Stocks);
    m_words->setObjectName(QStringLiteral("stocksYear"));
    m_chart->setAccessibleName(tr("What can be cut in the year to come"));
    addUnderTable(m_words);
    addUnderTable(m_chart);
    connect(m_renew, &QPushButton::clicked, this, &StocksPlace::renew);
}

QString StocksPlace::hint() const {
    return tr(
        "No stock plants are in the book yet. Cuttings are taken from them: put in the first with New.");
}

void StocksPlace::fill(QTreeWidget& table, const BookView& view) {
    m_chart->setLook(look(), type(), wording());
    const auto count = [this](std::int64_t number) {
        return wording().locale().toString(static_cast<qlonglong>(number));
    };
    for (const auto& [id, stock] : view.book.all<Stock>()) {
        auto* item = new QTreeWidgetItem(&table);
        item->setData(0, idNumber, QVariant::fromValue<qlonglong>(id.number));
        item->setText(StockNameColumn, text(stock.name));
        item->setText(StockTaxonColumn, text(view.book.get<Taxon>(stock.taxon).name));
        setNumber(*item, PlantsColumn, wording().number(stock.plants));
        item->setText(PlaceColumn, text(stock.place));
        std::int64_t now = 0;
        for (const season::WoodCalendar& calendar : season::stockCalendar(view.book, stock, view.today, 1))
            now = std::max(now, calendar.shoots.front());
        setNumber(*item, NowColumn, count(now));
        QStringList flushes;
        std::int64_t year = 0;
        for (const Flush& flush : stock.flushes) {
            flushes += tr("%1, %2 to %3, %4")
                           .arg(wording().wood(flush.wood),
                                wording().shortDate(flush.season.from.in(view.today.year())),
                                wording().shortDate(flush.season.to.in(view.today.year())),
                                wording().number(flush.cuttingsPerPlant));
            const auto steps = season::stockSteps(view.book, stock, flush.wood, view.today, daysOfYear);
            if (!steps.empty()) year = std::max(year, steps.back().total);
        }
        setNumber(*item, YearColumn, count(year));
        item->setText(HealthColumn, text(stock.health));
        item->setToolTip(HealthColumn, text(stock.health));
        item->setText(FlushColumn, flushes.join(QStringLiteral("; ")));
        item->setToolTip(FlushColumn, flushes.join(QStringLiteral("\n")));
    }
    QStringList over;
    for (const season::Overcut& one : season::overcuts(view.book, view.today))
        over += tr("%1 on %2, by %3")
                    .arg(text(view.book.get<Stock>(one.stock).name), wording().shortDate(one.day),
                         count(one.over()));
    m_summary = over.isEmpty() ? QString() : tr("▲ Cut too hard: %1.").arg(over.join(QStringLiteral("; ")));
    if (chosen() == 0 && table.topLevelItemCount() > 0) table.setCurrentItem(table.topLevelItem(0));
}

QString StocksPlace::wordsOf(const Stock& stock, const std::vector<season::WoodCalendar>& calendars) const {
    const auto count = [this](std::int64_t number) {
        return wording().locale().toString(static_cast<qlonglong>(number));
    };
    QStringList parts;
    for (const season::WoodCalendar& calendar : calendars) {
        const QString wood = wording().wood(calendar.wood);
        std::int64_t taken = 0;
        for (const std::int64_t cuttings : calendar.taken) taken += cuttings;
        const auto first = std::find_if(calendar.shoots.begin(), calendar.shoots.end(),
                                        [](std::int64_t shoots) { return shoots > 0; });
        QString words;
        if (first == calendar.shoots.end())
            words = tr("%1: nothing to cut in the year to come").arg(wood);
        else if (first == calendar.shoots.begin())
            words =
                (*first == 1 ? tr("%1: %2 cutting stands on it now") : tr("%1: %2 cuttings stand on it now"))
                    .arg(wood, count(*first));
        else
            words =
                (*first == 1 ? tr("%1: %2 cutting from %3 on") : tr("%1: %2 cuttings from %3 on"))
                    .arg(wood, count(*first),
                         wording().shortDate(today() + static_cast<int>(first - calendar.shoots.begin())));
        if (taken > 0)
            words += (taken == 1 ? tr(", %1 is to be taken") : tr(", %1 are to be taken")).arg(count(taken));
        parts += words;
    }
    const std::int64_t before = season::takenFrom(book(), stock.id, today() - daysOfYear, today());
    if (before > 0)
        parts +=
            (before == 1 ? tr("%1 was taken in the year before") : tr("%1 were taken in the year before"))
                .arg(count(before));
    for (const season::Overcut& one : season::overcuts(book(), stock, today()))
        parts += tr("▲ on %1 %2 are to be taken and %3 stand")
                     .arg(wording().shortDate(one.day), count(one.taken), count(one.stands));
    if (!stock.health.empty()) parts += tr("health: %1").arg(text(stock.health));
    return parts.isEmpty() ? tr("Nothing is known of what it yields.") : parts.join(QStringLiteral("; "));
}

void StocksPlace::showChosen(std::int64_t number) {
    const Stock* stock = book().find<Stock>({number});
    m_renew->setEnabled(stock);
    m_words->setVisible(stock);
    if (!stock) return m_chart->showStock(today(), {});
    auto calendars = season::stockCalendar(book(), *stock, today(), daysOfYear);
    const QString words = wordsOf(*stock, calendars);
    m_words->setText(QStringLiteral("<b>") + text(stock->name).toHtmlEscaped() + QStringLiteral("</b> · ") +
                     words.toHtmlEscaped());
    m_chart->setAccessibleDescription(words);
    m_chart->showStock(today(), std::move(calendars));
}

void StocksPlace::renew() {
    const Stock* stock = book().find<Stock>({chosen()});
    if (!stock) return;
    TargetDialog dialog(
        book(), recipes(), season::renewalOf(book(), *stock, today()), wording(),
        [this](const Command& command) { return perform(command); }, this);
    dialog.exec();
}

void StocksPlace::askFor(const Stock& stock) {
    StockDialog dialog(
        book(), recipes(), stock, wording(), [this](const Command& command) { return perform(command); },
        this);
    // A form of as many flushes as were typed.
    const QJsonObject typed = typedFor(stock.id.number);
    auto* more = dialog.findChild<QPushButton*>(QStringLiteral("addFlush"));
    for (int flush = 1; typed.contains(flushName(flush)); ++flush)
        if (!dialog.findChild<QWidget*>(flushName(flush))) more->click();
    ask(dialog, stock.id.number,
        stock.id.number == 0 ? tr("a new stock") : tr("stock %1").arg(text(stock.name)));
}

void StocksPlace::putIn() {
    Stock stock;
    stock.plants = firstPlants;
    askFor(stock);
}

void StocksPlace::change(std::int64_t number) {
    askFor(book().get<Stock>({number}));
}

Command StocksPlace::removal(std::int64_t number) const {
    return {Remove<Stock>{{number}}};
}

} // namespace warmbench::ui
