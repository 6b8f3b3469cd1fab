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

} // namespace

HandsDialog::HandsDialog(const HouseBook& book, Day day, const Wording& /*wording*/, Performer performer,
                         QWidget* parent)
    : ThingDialog(tr("Hands of a day"), std::move(performer), parent), m_book(book),
      m_day(addDay(fields(), "handsDay", tr("&Day"), day)),
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
    const Day day = dayOf(m_day->date());
    if (m_kind->currentIndex() == UsualHands) {
        if (!season::handsOn(m_book, day).special)
            return Refusal{day.iso(), "it has its weekday's hands already; choose another kind of day"};
        return season::setHands(m_book, day, std::nullopt, {});
    }
    return season::setHands(m_book, day, m_hands->value(), said(*m_note));
}

} // namespace warmbench::ui
