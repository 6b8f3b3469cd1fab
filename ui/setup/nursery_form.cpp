#include "ui/setup/nursery_form.h"

#include "ui/form/fields.h"

#include <QDoubleSpinBox>
#include <QLineEdit>
#include <QSpinBox>

namespace warmbench::ui {

NurseryForm::NurseryForm(const Nursery& nursery, const Wording& wording, QWidget* parent)
    : ThingForm(parent), m_nursery(nursery),
      m_name(addText(fields(), "nurseryName", tr("&Name"), nursery.name)),
      m_latitude(addNumber(fields(), "latitude", tr("&Latitude, north positive"), nursery.latitude.units(),
                           -90, 90, 1, QStringLiteral("°"))),
      m_shift(addCount(fields(), "seasonShift", tr("Seasons come &later by"), nursery.seasonShiftDays, -90,
                       90, tr("days"))),
      m_sureness(addCount(fields(), "sureness", tr("&Sureness to meet a target"),
                          nursery.surenessPermille / 10, 50, 99, QStringLiteral("%"))),
      m_currency(addText(fields(), "currency", tr("&Currency"), nursery.currency)),
      m_price(addNumber(fields(), "heatPrice", tr("&Price of heat"), nursery.pricePerKilowattHour.units(), 0,
                        100, 2, tr("a kilowatt-hour"))) {
    for (int day = 0; day < 7; ++day) {
        const auto index = static_cast<std::size_t>(day);
        const QString label =
            tr("Cuttings on a %1").arg(wording.locale().standaloneDayName(day + 1, QLocale::LongFormat));
        m_hands[index] = addCount(fields(), qPrintable(QStringLiteral("hands%1").arg(day)), label,
                                  nursery.strikesByWeekday[index], 0, 1'000'000);
    }
}

Result<Command> NurseryForm::command() const {
    Nursery nursery = m_nursery;
    nursery.name = said(*m_name);
    nursery.latitude = Latitude::fromUnits(m_latitude->value());
    nursery.seasonShiftDays = m_shift->value();
    // A sureness in tenths of a per cent that nobody touched is kept as it was.
    if (m_sureness->value() != nursery.surenessPermille / 10)
        nursery.surenessPermille = m_sureness->value() * 10;
    nursery.currency = said(*m_currency);
    nursery.pricePerKilowattHour = Money::fromUnits(m_price->value());
    for (std::size_t day = 0; day < m_hands.size(); ++day)
        nursery.strikesByWeekday[day] = m_hands[day]->value();
    return Command{Put<Nursery>{nursery}};
}

} // namespace warmbench::ui
