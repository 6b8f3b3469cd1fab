#include "ui/round/check_card.h"

#include "core/book/progress.h"
#include "core/book/query.h"
#include "core/round/entry.h"
#include "ui/form/labels.h"
#include "ui/round/number_field.h"
#include "ui/words/phrase_words.h"
#include "ui/words/taxon_text.h"

#include <QFormLayout>
#include <QGridLayout>
#include <QKeyEvent>
#include <QLabel>
#include <QPushButton>
#include <QVBoxLayout>

namespace warmbench::ui {
namespace {

constexpr int mostCuttings = 99'999;
constexpr int highestGrade = 5;

/// What the latest check before a day found, in words; empty where there was none.
QString beforeWords(const HouseBook& book, const round::Stop& stop, Day day, const Wording& wording) {
    const RootCheck* before = latestCheck(book, stop.batch, stop.container, day - 1);
    if (!before) return CheckCard::tr("This container was not looked at before.");
    QString words = CheckCard::tr("Last on %1: %2 of %3 rooted, %4 callused, %5 dead")
                        .arg(wording.shortDate(before->day), wording.number(before->rooted),
                             wording.number(before->examined), wording.number(before->callused),
                             wording.number(before->dead));
    if (before->grade) words += CheckCard::tr(", grade %1").arg(*before->grade);
    if (!before->note.empty()) words += QStringLiteral(". ") + text(before->note);
    return words;
}

} // namespace

CheckCard::CheckCard(QWidget* parent)
    : QWidget(parent), m_code(new QLabel(this)), m_taxon(wrappedLabel(this)),
      m_where(wrappedLabel(this, "quiet")), m_why(wrappedLabel(this)), m_before(wrappedLabel(this, "quiet")),
      m_words(new TroubleLabel(QStringLiteral("checkWords"), this)),
      m_enter(new QPushButton(tr("Write down"), this)), m_later(new QPushButton(tr("Later"), this)),
      m_discard(new QPushButton(tr("Discard container"), this)) {
    setObjectName(QStringLiteral("checkCard"));
    m_code->setObjectName(QStringLiteral("checkContainer"));
    m_enter->setObjectName(QStringLiteral("checkEnter"));
    m_later->setObjectName(QStringLiteral("checkLater"));
    m_discard->setObjectName(QStringLiteral("checkDiscard"));
    m_enter->setProperty("primary", true);
    m_enter->setToolTip(tr("+ from any field"));
    m_later->setToolTip(tr("- from any field"));
    m_discard->setToolTip(tr("Throws the whole container away; the reason is what stands in the note"));

    auto* fields = new QFormLayout;
    const std::array<std::pair<const char*, QString>, FieldCount> named{
        {{"checkExamined", tr("Examined")},
         {"checkRooted", tr("Rooted")},
         {"checkCallused", tr("Callused")},
         {"checkAlive", tr("Alive, no roots")},
         {"checkDead", tr("Dead")},
         {"checkGrade", tr("Root grade, 0 to 5")},
         {"checkNote", tr("Note")}}};
    for (int field = 0; field < FieldCount; ++field) {
        const auto& [name, title] = named[static_cast<std::size_t>(field)];
        QLineEdit* made = nullptr;
        if (field == Note) {
            made = new QLineEdit(this);
            made->setObjectName(QLatin1String(name));
            made->setAccessibleName(title);
        } else {
            made =
                numberField(QLatin1String(name), title, field == Grade ? highestGrade : mostCuttings, this);
            made->setFixedWidth(96);
        }
        made->installEventFilter(this);
        connect(made, &QLineEdit::returnPressed, this, [this, field] { next(field); });
        connect(made, &QLineEdit::textEdited, this, &CheckCard::showLeft);
        fields->addRow(title, made);
        m_fields[static_cast<std::size_t>(field)] = made;
    }
    connect(m_enter, &QPushButton::clicked, this, &CheckCard::enter);
    connect(m_later, &QPushButton::clicked, this, &CheckCard::leftForLater);
    connect(m_discard, &QPushButton::clicked, this, &CheckCard::discard);

    auto* buttons = new QHBoxLayout;
    buttons->addWidget(m_enter);
    buttons->addWidget(m_later);
    buttons->addStretch();
    buttons->addWidget(m_discard);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(16, 12, 16, 12);
    column->addWidget(m_code);
    column->addWidget(m_taxon);
    column->addWidget(m_where);
    column->addSpacing(6);
    column->addWidget(m_why);
    column->addWidget(m_before);
    column->addSpacing(6);
    column->addLayout(fields);
    column->addWidget(m_words);
    column->addLayout(buttons);
    auto* keys = wrappedLabel(this, "quiet");
    keys->setText(tr("Enter: next field. +: write down, -: later, Up and Down: along the walk, "
                     "Ctrl Z: take back."));
    column->addWidget(keys);
    column->addStretch();
    setFocusProxy(m_fields[Examined]);
}

void CheckCard::setTitleFont(const QFont& font) {
    m_code->setFont(font);
}

void CheckCard::showStop(const HouseBook& book, const round::Stop& stop, Day day, Day today,
                         const Wording& wording) {
    m_book = &book;
    m_stop = stop;
    m_day = day;
    m_today = today;
    m_asked.reset();
    const Batch& batch = book.get<Batch>(stop.batch);
    m_code->setText(text(containerCode(batch.code, stop.container)));
    m_taxon->setText(taxonHtml(book.get<Taxon>(batch.taxon).name));
    m_where->setText(tr("%1, row %2, column %3 · %4 stand in it")
                         .arg(text(zoneTitle(book, stop.zone)))
                         .arg(stop.slots.row + 1)
                         .arg(stop.slots.col + 1)
                         .arg(wording.cuttings(stop.standing)));
    m_why->setText(told(stop.why, wording));
    m_before->setText(beforeWords(book, stop, day, wording));
    // Unlike `clear` that leaves the field nothing to take back, so that Ctrl+Z is the book's.
    for (QLineEdit* field : m_fields) field->setText({});
    m_fields[Examined]->setPlaceholderText(QString::number(stop.examine));
    if (const RootCheck* found = stop.found ? book.find<RootCheck>(*stop.found) : nullptr) {
        const std::array<int, 5> counts{found->examined, found->rooted, found->callused, found->alive,
                                        found->dead};
        for (std::size_t i = 0; i < counts.size(); ++i) m_fields[i]->setText(QString::number(counts[i]));
        if (found->grade) m_fields[Grade]->setText(QString::number(*found->grade));
        m_fields[Note]->setText(text(found->note));
    }
    showLeft();
}

void CheckCard::tell(const QString& words) {
    m_words->tell(words);
}

void CheckCard::begin() {
    m_fields[Examined]->setFocus();
    m_fields[Examined]->selectAll();
}

RootCheck CheckCard::check() const {
    RootCheck check;
    check.batch = m_stop.batch;
    check.container = m_stop.container;
    check.day = m_day;
    check.examined = countIn(*m_fields[Examined]).value_or(m_stop.examine);
    check.rooted = countIn(*m_fields[Rooted]).value_or(0);
    check.callused = countIn(*m_fields[Callused]).value_or(0);
    check.dead = countIn(*m_fields[Dead]).value_or(0);
    const int left = std::max(0, check.examined - check.rooted - check.callused - check.dead);
    check.alive = countIn(*m_fields[Alive]).value_or(left);
    check.grade = countIn(*m_fields[Grade]);
    check.note = m_fields[Note]->text().trimmed().toStdString();
    return check;
}

void CheckCard::showLeft() {
    m_asked.reset();
    const RootCheck now = check();
    m_fields[Alive]->setPlaceholderText(QString::number(now.alive));
    const int told = now.rooted + now.callused + now.dead;
    if (told > now.examined)
        tell(tr("%1 are told of, but only %2 were examined").arg(told).arg(now.examined));
    else
        tell({});
}

void CheckCard::next(int field) {
    const RootCheck now = check();
    if (field != Note && now.rooted + now.callused + now.dead > now.examined) {
        showLeft();
        m_fields[static_cast<std::size_t>(field)]->selectAll();
        return;
    }
    if (field == Note) {
        enter();
        return;
    }
    QLineEdit* following = m_fields[static_cast<std::size_t>(field) + 1];
    following->setFocus();
    following->selectAll();
}

void CheckCard::enter() {
    const RootCheck now = check();
    if (const auto wrong = round::wrongWith(*m_book, now, m_today)) {
        tell(told(*wrong));
        return;
    }
    // One that is mended was asked about before.
    const auto question = m_stop.found ? std::nullopt : round::questionAbout(*m_book, now);
    if (question && m_asked != now) {
        m_asked = now;
        tell(told(*question) + u'\n' + tr("Write it down once more if it is so."));
        return;
    }
    Q_EMIT entered(now);
}

void CheckCard::discard() {
    const QString reason = m_fields[Note]->text().trimmed();
    if (!reason.isEmpty()) {
        Q_EMIT discardWanted(reason);
        return;
    }
    tell(tr("To throw it away, give the reason in the note first."));
    m_fields[Note]->setFocus();
}

bool CheckCard::keyOf(int field, int key) {
    if (key == Qt::Key_Up || key == Qt::Key_Down) {
        Q_EMIT stepped(key == Qt::Key_Up ? -1 : 1);
        return true;
    }
    if (field == Note || (key != Qt::Key_Plus && key != Qt::Key_Minus)) return false;
    if (key == Qt::Key_Plus)
        enter();
    else
        Q_EMIT leftForLater();
    return true;
}

bool CheckCard::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::KeyPress)
        for (int field = 0; field < FieldCount; ++field)
            if (watched == m_fields[static_cast<std::size_t>(field)] &&
                keyOf(field, static_cast<QKeyEvent*>(event)->key()))
                return true;
    return QWidget::eventFilter(watched, event);
}

} // namespace warmbench::ui
