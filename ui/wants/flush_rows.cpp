#include "ui/wants/flush_rows.h"

#include <QComboBox>
#include <QDateEdit>
#include <QGridLayout>
#include <QLabel>
#include <QPushButton>
#include <QSpinBox>

namespace warmbench::ui {
namespace {

constexpr int leapYear = 2024; // has every day that a season can name

MonthDay monthDayOf(const QDate& date) {
    return {static_cast<unsigned>(date.month()), static_cast<unsigned>(date.day())};
}

} // namespace

FlushRows::FlushRows(const std::vector<Flush>& flushes, const Wording& wording, QWidget* parent)
    : QWidget(parent), m_wording(wording), m_grid(new QGridLayout) {
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(0, 0, 0, 0);
    column->addLayout(m_grid);
    auto* more = new QPushButton(tr("Another &flush"), this);
    more->setObjectName(QStringLiteral("addFlush"));
    column->addWidget(more, 0, Qt::AlignLeft);
    const QStringList heads{tr("Wood"), tr("from"), tr("to"), tr("from a plant"), tr("grows again in")};
    for (int place = 0; place < heads.size(); ++place) {
        auto* head = new QLabel(heads[place], this);
        head->setProperty("rank", QStringLiteral("quiet"));
        m_grid->addWidget(head, 0, place);
    }
    for (const Flush& flush : flushes) add(flush);
    const Flush first{Wood::Softwood, {{5, 1}, {6, 30}}, 0, 35};
    if (flushes.empty()) add(first);
    connect(more, &QPushButton::clicked, this, [this, first] { add(first); });
}

void FlushRows::add(const Flush& flush) {
    const auto number = static_cast<int>(m_rows.size()) + 1;
    Row row{new QComboBox(this), new QDateEdit(this), new QDateEdit(this), new QSpinBox(this),
            new QSpinBox(this)};
    for (std::size_t wood = 0; wood < woodNames.size(); ++wood)
        row.wood->addItem(m_wording.wood(static_cast<Wood>(wood)));
    row.wood->setCurrentIndex(static_cast<int>(flush.wood));
    row.wood->setAccessibleName(tr("Wood of flush %1").arg(number));
    row.from->setAccessibleName(tr("First day of flush %1").arg(number));
    row.to->setAccessibleName(tr("Last day of flush %1").arg(number));
    row.from->setDate(qDate(flush.season.from.in(leapYear)));
    row.to->setDate(qDate(flush.season.to.in(leapYear)));
    for (QDateEdit* day : {row.from, row.to}) day->setDisplayFormat(QStringLiteral("d MMM"));
    row.wood->setObjectName(QStringLiteral("flushWood%1").arg(number));
    row.from->setObjectName(QStringLiteral("flushFrom%1").arg(number));
    row.to->setObjectName(QStringLiteral("flushTo%1").arg(number));
    row.each->setRange(0, 10'000);
    row.each->setValue(flush.cuttingsPerPlant);
    row.each->setObjectName(QStringLiteral("flushCuttings%1").arg(number));
    row.each->setAccessibleName(tr("Cuttings from a plant at flush %1").arg(number));
    row.regrowth->setRange(0, 3650);
    row.regrowth->setValue(flush.regrowthDays);
    row.regrowth->setObjectName(QStringLiteral("flushRegrowth%1").arg(number));
    const auto suffix = [box = row.regrowth](int days) {
        box->setSuffix(days == 1 ? tr(" day") : tr(" days"));
    };
    suffix(flush.regrowthDays);
    QObject::connect(row.regrowth, &QSpinBox::valueChanged, row.regrowth, suffix);
    row.regrowth->setAccessibleName(tr("Days until flush %1 has grown again").arg(number));
    m_grid->addWidget(row.wood, number, 0);
    m_grid->addWidget(row.from, number, 1);
    m_grid->addWidget(row.to, number, 2);
    m_grid->addWidget(row.each, number, 3);
    m_grid->addWidget(row.regrowth, number, 4);
    m_rows.push_back(row);
}

std::vector<Flush> FlushRows::flushes() const {
    std::vector<Flush> found;
    for (const Row& row : m_rows)
        if (row.each->value() > 0)
            found.push_back({static_cast<Wood>(row.wood->currentIndex()),
                             {monthDayOf(row.from->date()), monthDayOf(row.to->date())},
                             row.each->value(),
                             row.regrowth->value()});
    return found;
}

} // namespace warmbench::ui
