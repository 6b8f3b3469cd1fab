#include "ui/month/hands_dialog.h"

#include "core/season/month_plan.h"
#include "ui/form/fields.h"

#include <QComboBox>
#include <QDateEdit>
#include <QLineEdit>
#include <QSpinBox>

namespace warmbench::ui {
namespace {

enum HandsKind : int { UsualHands, NoHands, HalfHands, OtherHands };

constexpr int mostHands = 100000;
constexpr int mostDaysInRow = 60;

} // namespace

HandsDialog::HandsDialog(const HouseBook& book, Day day, const Wording& /*wording*/, Performer performer,
                         QWidget* parent)
    : ThingDialog(tr("Hands of a day"), std::move(performer), parent), m_book(book),
      m_day(addDay(fields(), "handsDay", tr("&Day"), day)),
      m_days(addCount(fields(), "handsDays", tr("&For"), 1, 1, mostDaysInRow, tr("days in a row"))),
      m_kind(addChoice(fields(), "handsKind", tr("&What kind of day"),
                       {tr("as its weekday says"), tr("a holiday: nobody strikes"), tr("half a day"),
                        tr("another number of cuttings")},
                       UsualHands)),
      m_hands(addCount(fields(), "handsCount", tr("&Cuttings that can be struck"), 0, 0, mostHands)),
      m_note(addText(fields(), "handsNote", tr("&Note"), {})) {
    setObjectName(QStringLiteral("handsDialog"));
    readDay();
    connect(m_day, &QDateEdit::dateChanged, this, &HandsDialog::readDay);
    connect(m_kind, &QComboBox::activated, this, &HandsDialog::choose);
    connect(m_hands, &QSpinBox::valueChanged, this, [this] {
        if (m_hands->hasFocus()) m_kind->setCurrentIndex(OtherHands);
    });
}

void HandsDialog::readDay() {
    const season::DayHands hands = season::handsOn(m_book, dayOf(m_day->date()));
    m_hands->setValue(hands.hands);
    m_kind->setCurrentIndex(!hands.special ? UsualHands : hands.hands == 0 ? NoHands : OtherHands);
    m_note->setText(text(hands.note));
}

void HandsDialog::choose(int kind) {
    const Day day = dayOf(m_day->date());
    const int usual = m_book.nursery().strikesByWeekday[static_cast<std::size_t>(day.weekday())];
    if (kind == UsualHands) m_hands->setValue(usual);
    if (kind == NoHands) m_hands->setValue(0);
    if (kind == HalfHands) m_hands->setValue(usual / 2);
    if (kind == NoHands && m_note->text().isEmpty()) m_note->setText(tr("holiday"));
    if (kind == HalfHands && m_note->text().isEmpty()) m_note->setText(tr("half a day"));
    if (kind == UsualHands) m_note->clear();
}

Result<Command> HandsDialog::command() const {
    const Day from = dayOf(m_day->date());
    const std::string note = said(*m_note);
    Group group{phrase("Set the hands of days").text(), {}};
    for (int i = 0; i < m_days->value(); ++i) {
        const Day day = from + i;
        const season::DayHands hands = season::handsOn(m_book, day);
        const int usual = m_book.nursery().strikesByWeekday[static_cast<std::size_t>(day.weekday())];
        const int kind = m_kind->currentIndex();
        if (kind == UsualHands) {
            if (hands.special) group.commands.push_back(season::setHands(m_book, day, std::nullopt, {}));
            continue;
        }
        const int cuttings = kind == NoHands ? 0 : kind == HalfHands ? usual / 2 : m_hands->value();
        // Of several days those on which nobody strikes anyway stay as they are.
        if (m_days->value() > 1 && usual == 0 && !hands.special) continue;
        group.commands.push_back(season::setHands(m_book, day, cuttings, note));
    }
    if (group.commands.empty())
        return Refusal{from.iso(), phrase("it has its weekday's hands already; choose another kind of day")};
    return Command{group};
}

} // namespace warmbench::ui
