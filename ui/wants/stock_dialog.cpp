#include "ui/wants/stock_dialog.h"

#include "ui/form/fields.h"
#include "ui/form/taxon_field.h"
#include "ui/wants/flush_rows.h"

#include <QFormLayout>
#include <QLineEdit>
#include <QSpinBox>

namespace warmbench::ui {

StockDialog::StockDialog(const HouseBook& book, const RecipeLibrary& library, const Stock& stock,
                         const Wording& wording, Performer performer, QWidget* parent)
    : ThingDialog(stock.id.number == 0 ? tr("New stock") : tr("Change a stock"), std::move(performer),
                  parent),
      m_stock(stock) {
    setObjectName(QStringLiteral("stockDialog"));
    m_taxon = new TaxonField(book, library, stock.taxon, this);
    fields().addRow(tr("&Taxon"), m_taxon);
    m_name = addText(fields(), "stockName", tr("&Name"), stock.name);
    m_plants = addCount(fields(), "stockPlants", tr("&Plants"), stock.plants, 0, 1'000'000);
    m_place = addText(fields(), "stockPlace", tr("They &stand"), stock.place);
    m_flushes = new FlushRows(stock.flushes, wording, this);
    fields().addRow(tr("Cuttings"), m_flushes);
    m_health = addText(fields(), "stockHealth", tr("&Health"), stock.health);
    m_taxon->setFocus();
}

Result<Command> StockDialog::command() const {
    const auto choice = m_taxon->choice();
    if (!choice) return choice.refusal();
    Stock stock = m_stock;
    stock.taxon = choice->taxon.id;
    stock.name = said(*m_name);
    if (stock.name.empty()) stock.name = choice->taxon.name;
    stock.plants = m_plants->value();
    stock.place = said(*m_place);
    stock.flushes = m_flushes->flushes();
    stock.health = said(*m_health);
    return season::withTaxon(*choice, {Put<Stock>{stock}}, phrase("Put in stock %1", stock.name).text());
}

} // namespace warmbench::ui
