#include "ui/setup/container_form.h"

#include "ui/form/fields.h"

#include <QCheckBox>
#include <QDoubleSpinBox>
#include <QLineEdit>
#include <QSpinBox>

namespace warmbench::ui {

ContainerForm::ContainerForm(const ContainerType& type, QWidget* parent)
    : ThingForm(parent), m_type(type),
      m_name(addText(fields(), "containerName", tr("&Name, as recipes say it"), type.name)),
      m_height(
          addCount(fields(), "containerHeight", tr("Covers &rows of slots"), type.footprint.height, 1, 100)),
      m_width(addCount(fields(), "containerWidth", tr("and &columns"), type.footprint.width, 1, 100)),
      m_turnable(addTick(fields(), "containerTurnable", tr("It may be &turned"), type.turnable)),
      m_volume(addNumber(fields(), "containerVolume", tr("&Medium in one"), type.volume.units(), 0.001,
                         10'000, 3, tr("litres"))),
      m_cuttings(addCount(fields(), "containerCuttings", tr("&Cuttings in one"), type.cuttings, 1, 100'000)) {
}

Result<Command> ContainerForm::command() const {
    ContainerType type = m_type;
    type.name = said(*m_name);
    type.footprint = {m_height->value(), m_width->value()};
    type.turnable = m_turnable->isChecked();
    type.volume = Litres::fromUnits(m_volume->value());
    type.cuttings = m_cuttings->value();
    return Command{Put<ContainerType>{type}};
}

} // namespace warmbench::ui
