#include "ui/wants/stocks_place.h"

#include "core/season/stock_yield.h"
#include "ui/wants/stock_dialog.h"

#include <QTreeWidget>

namespace warmbench::ui {
namespace {

enum StockColumn : int {
    StockNameColumn,
    StockTaxonColumn,
    PlantsColumn,
    PlaceColumn,
    YearColumn,
    FlushColumn
};

constexpr int firstPlants = 10;
constexpr int daysOfYear = 365;

} // namespace

StocksPlace::StocksPlace(QWidget* parent)
    : TablePlace(QStringLiteral("stocks"), tr("Stocks"),
                 {tr("Stock"), tr("Taxon"), tr("Plants"), tr("Where"), tr("Still to take, a year"),
                  tr("Wood, season, cuttings from a plant")},
                 parent) {
    addListButton(season::ListKind::Stocks);
}

QString StocksPlace::hint() const {
    return tr(
        "No stock plants are in the book yet. Cuttings are taken from them: put in the first with New.");
}

void StocksPlace::fill(QTreeWidget& table, const BookView& view) {
    for (const auto& [id, stock] : view.book.all<Stock>()) {
        auto* item = new QTreeWidgetItem(&table);
        item->setData(0, idNumber, QVariant::fromValue<qlonglong>(id.number));
        item->setText(StockNameColumn, text(stock.name));
        item->setText(StockTaxonColumn, text(view.book.get<Taxon>(stock.taxon).name));
        setNumber(*item, PlantsColumn, wording().number(stock.plants));
        item->setText(PlaceColumn, text(stock.place));
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
        setNumber(*item, YearColumn, wording().locale().toString(static_cast<qlonglong>(year)));
        item->setText(FlushColumn, flushes.join(QStringLiteral("; ")));
        item->setToolTip(FlushColumn, flushes.join(QStringLiteral("\n")));
    }
}

void StocksPlace::ask(const Stock& stock) {
    StockDialog dialog(
        book(), recipes(), stock, wording(), [this](const Command& command) { return perform(command); },
        this);
    dialog.exec();
}

void StocksPlace::putIn() {
    Stock stock;
    stock.plants = firstPlants;
    ask(stock);
}

void StocksPlace::change(std::int64_t number) {
    ask(book().get<Stock>({number}));
}

Command StocksPlace::removal(std::int64_t number) const {
    return {Remove<Stock>{{number}}};
}

} // namespace warmbench::ui
