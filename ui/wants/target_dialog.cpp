#include "ui/wants/target_dialog.h"

#include "ui/form/fields.h"
#include "ui/form/taxon_field.h"

#include <QComboBox>
#include <QDateEdit>
#include <QDoubleSpinBox>
#include <QFormLayout>
#include <QLineEdit>
#include <QSpinBox>

namespace warmbench::ui {

TargetDialog::TargetDialog(const HouseBook& book, const RecipeLibrary& library, const Target& target,
                           const Wording& wording, Performer performer, QWidget* parent)
    : ThingDialog(target.id.number == 0 ? tr("New target") : tr("Change a target"), std::move(performer),
                  parent),
      m_target(target), m_taxon(new TaxonField(book, library, target.taxon, this)) {
    setObjectName(QStringLiteral("targetDialog"));
    fields().addRow(tr("&Taxon"), m_taxon);
    m_plants =
        addCount(fields(), "targetPlants", tr("&Plants wanted, potted on"), target.plants, 1, 1'000'000);
    m_due = addDay(fields(), "targetDue", tr("&By", "date"), target.due);
    m_worth = addNumber(fields(), "targetWorth", tr("One is &worth"), target.worth.units(), 0, 1'000'000, 2,
                        text(book.nursery().currency));
    QStringList woods{tr("any that meets the date")};
    for (std::size_t wood = 0; wood < woodNames.size(); ++wood)
        woods += wording.wood(static_cast<Wood>(wood));
    m_wood = addChoice(fields(), "targetWood", tr("W&ood"), woods,
                       target.wood ? static_cast<int>(*target.wood) + 1 : 0);
    m_name = addText(fields(), "targetName", tr("&Name"), target.name);
    m_note = addText(fields(), "targetNote", tr("N&ote"), target.note);
    m_taxon->setFocus();
}

Result<Command> TargetDialog::command() const {
    const auto choice = m_taxon->choice();
    if (!choice) return choice.refusal();
    Target target = m_target;
    target.taxon = choice->taxon.id;
    target.plants = m_plants->value();
    target.due = dayOf(m_due->date());
    target.worth = Money::fromUnits(m_worth->value());
    target.wood.reset();
    if (m_wood->currentIndex() > 0) target.wood = static_cast<Wood>(m_wood->currentIndex() - 1);
    target.name = said(*m_name);
    target.note = said(*m_note);
    return season::withTaxon(*choice, {Put<Target>{target}}, phrase("Put in target %1", target.name).text());
}

} // namespace warmbench::ui
