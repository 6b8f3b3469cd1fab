#include "ui/setup/house_form.h"

#include "ui/form/celsius_box.h"
#include "ui/form/fields.h"

#include <QComboBox>
#include <QGridLayout>
#include <QLabel>
#include <QLineEdit>

namespace warmbench::ui {
namespace {

constexpr int monthsInARow = 4;
constexpr double longestHouse = 1000; // metres, as the book's rule says

double metresOf(Millimetres length) {
    return static_cast<double>(length.parts) / 1000;
}

} // namespace

HouseForm::HouseForm(const House& house, const Wording& wording, QWidget* parent)
    : ThingForm(parent), m_house(house), m_name(addText(fields(), "houseName", tr("&Name"), house.name)),
      m_kind(addChoice(fields(), "houseKind", tr("&Kind"), {tr("glass"), tr("tunnel"), tr("room")},
                       static_cast<int>(house.kind))),
      m_length(addNumber(fields(), "houseLength", tr("&Length"), metresOf(house.length), 0.5, longestHouse, 3,
                         QStringLiteral("m"))),
      m_width(addNumber(fields(), "houseWidth", tr("&Width"), metresOf(house.width), 0.5, longestHouse, 3,
                        QStringLiteral("m"))) {
    m_air = addMonths(tr("Air, by month"), "air", house.air, wording);
    m_rootZone = addMonths(tr("Root zone with no mat on"), "rootZone", house.unheatedRootZone, wording);
}

HouseForm::MonthBoxes HouseForm::addMonths(const QString& label, const char* name,
                                           const MonthlyCelsius& values, const Wording& wording) {
    MonthBoxes boxes{};
    auto* grid = new QGridLayout;
    for (int month = 0; month < 12; ++month) {
        const auto index = static_cast<std::size_t>(month);
        const QString monthName = wording.locale().standaloneMonthName(month + 1, QLocale::ShortFormat);
        auto* box = new CelsiusBox(wording, values[index], this);
        box->setObjectName(QString::fromLatin1(name) + QString::number(month + 1));
        box->setAccessibleName(label + QStringLiteral(", ") + monthName);
        auto* title = new QLabel(monthName, this);
        title->setProperty("rank", QStringLiteral("quiet"));
        const int column = month % monthsInARow * 2;
        grid->addWidget(title, month / monthsInARow, column);
        grid->addWidget(box, month / monthsInARow, column + 1);
        boxes[index] = box;
    }
    fields().addRow(label, grid);
    return boxes;
}

Result<Command> HouseForm::command() const {
    House house = m_house;
    house.name = said(*m_name);
    house.kind = static_cast<HouseKind>(m_kind->currentIndex());
    house.length = Millimetres::fromUnits(m_length->value() * 1000);
    house.width = Millimetres::fromUnits(m_width->value() * 1000);
    for (std::size_t month = 0; month < 12; ++month) {
        house.air[month] = m_air[month]->celsius();
        house.unheatedRootZone[month] = m_rootZone[month]->celsius();
    }
    return Command{Put<House>{house}};
}

} // namespace warmbench::ui
