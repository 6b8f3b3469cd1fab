#include "ui/backups/backups_dialog.h"

#include "core/book/query.h"
#include "ui/form/labels.h"
#include "ui/form/table.h"
#include "ui/words/phrase_words.h"

#include <QFileInfo>
#include <QHBoxLayout>
#include <QPushButton>
#include <QVBoxLayout>

namespace warmbench::ui {
namespace {

enum Column { DayColumn, BatchesColumn, TargetsColumn, ChecksColumn, StateColumn, LastColumn };

constexpr int rowsInSight = 8;

} // namespace

BackupsDialog::BackupsDialog(BackupShelf& shelf, const QString& book, const Wording& wording, QWidget* parent)
    : QDialog(parent), m_shelf(shelf), m_book(book), m_wording(wording), m_backups(shelf.backupsOf(book)),
      m_looks(m_backups.size()),
      m_list(makeTable(QStringLiteral("backupList"), tr("Backups of the book, the newest first"),
                       {tr("At the beginning of"), tr("Batches"), tr("Targets"), tr("Root checks"),
                        tr("Opens"), tr("Last step in it")},
                       this)),
      m_inside(wrappedLabel(this)) {
    setObjectName(QStringLiteral("backupsDialog"));
    setWindowTitle(tr("Backups of %1").arg(QFileInfo(book).fileName()));
    auto* intro = wrappedLabel(this, "quiet");
    intro->setText(m_backups.empty()
                       ? tr("There is no backup of this book yet. It makes one by itself before each "
                            "day's first change, in a folder beside it.")
                       : tr("The book made these by itself, each before that day's first change. Look into "
                            "one first. Whatever you do here, nothing is thrown away."));
    m_inside->setObjectName(QStringLiteral("backupInside"));
    m_inside->setAlignment(Qt::AlignTop | Qt::AlignLeft);
    m_inside->setMinimumHeight(m_inside->fontMetrics().lineSpacing() * 4);
    m_look = button("backupLook", tr("&Look inside"), &BackupsDialog::lookWanted);
    m_copy = button("backupCopy", tr("Put it into a &new file…"), &BackupsDialog::copyWanted);
    m_place = button("backupPlace", tr("Put it in the book's &place…"), &BackupsDialog::placeWanted);
    auto* close = new QPushButton(tr("Close"), this);
    connect(close, &QPushButton::clicked, this, &QDialog::close);
    for (const KeptBackup& backup : m_backups) {
        auto* item = new QTreeWidgetItem(m_list, {m_wording.longDate(backup.day)});
        item->setText(StateColumn, tr("is being looked at"));
        for (const int column : {BatchesColumn, TargetsColumn, ChecksColumn})
            item->setTextAlignment(column, Qt::AlignRight | Qt::AlignVCenter);
        item->setTextAlignment(StateColumn, Qt::AlignCenter);
    }
    fitColumns(*m_list);
    connect(m_list, &QTreeWidget::currentItemChanged, this, &BackupsDialog::showChosen);
    connect(m_list, &QTreeWidget::itemActivated, m_look, &QPushButton::click);
    m_list->setMinimumHeight(m_list->fontMetrics().lineSpacing() * 2 * rowsInSight);
    m_list->setVisible(!m_backups.empty());
    auto* buttons = new QHBoxLayout;
    buttons->addWidget(m_look);
    buttons->addWidget(m_copy);
    buttons->addWidget(m_place);
    buttons->addStretch(1);
    buttons->addWidget(close);
    auto* column = new QVBoxLayout(this);
    column->setContentsMargins(20, 16, 20, 16);
    column->addWidget(intro);
    column->addWidget(m_list, 1);
    column->addWidget(m_inside);
    column->addLayout(buttons);
    resize(860, 520);
    if (!m_backups.empty()) m_list->setCurrentItem(m_list->topLevelItem(0));
    showChosen();
    m_list->setFocus();
    m_thread = std::jthread([this](const std::stop_token& stop) { lookIntoAll(stop); });
}

BackupsDialog::~BackupsDialog() = default;

QPushButton* BackupsDialog::button(const char* name, const QString& words,
                                   void (BackupsDialog::*wanted)(const KeptBackup&)) {
    auto* made = new QPushButton(words, this);
    made->setObjectName(QLatin1String(name));
    made->setAutoDefault(false);
    connect(made, &QPushButton::clicked, this, [this, wanted] {
        if (chosen() >= 0) Q_EMIT(this->*wanted)(m_backups[static_cast<std::size_t>(chosen())]);
    });
    return made;
}

/// In a thread of its own: each may take seconds. The newest is asked for most.
void BackupsDialog::lookIntoAll(const std::stop_token& stop) {
    for (std::size_t i = 0; i < m_backups.size() && !stop.stop_requested(); ++i) {
        const Look look = lookOf(m_shelf.lookInto(m_backups[i].name), m_backups[i].day);
        m_looked.post([this, i, look] { tell(i, look); });
    }
}

BackupsDialog::Look BackupsDialog::lookOf(const Result<BackupContent>& content, Day day) const {
    Look look;
    if (!content) {
        look.inside = tr("It does not open: %1").arg(told(content.refusal()));
        return look;
    }
    const HouseBook& book = content->book;
    const auto count = [this](std::size_t number) { return m_wording.number(static_cast<int>(number)); };
    int standing = 0;
    int taken = 0;
    for (const auto& [id, batch] : book.all<Batch>()) standing += stayOn(book, id, day) ? 1 : 0;
    for (const auto& [id, zone] : book.all<Zone>()) taken += slotsTaken(book, id, day);
    look.sound = true;
    look.batches = count(book.all<Batch>().size());
    look.targets = count(book.all<Target>().size());
    look.checks = count(book.all<RootCheck>().size());
    if (content->last) look.last = told(content->last->words.toStdString(), m_wording);
    QStringList lines;
    lines << tr("House: benches %1, zones %2. Slots taken on that day: %3, by batches: %4.")
                 .arg(count(book.all<Bench>().size()), count(book.all<Zone>().size()),
                      m_wording.number(taken), m_wording.number(standing));
    lines << tr("Targets: %1. Stocks: %2. Recipes of your own: %3.")
                 .arg(look.targets, count(book.all<Stock>().size()), count(book.all<Recipe>().size()));
    lines << tr("Round: batches in all %1, root checks %2.").arg(look.batches, look.checks);
    if (content->last)
        lines << tr("Steps in the journal: %1; the last by %2 on %3: %4")
                     .arg(m_wording.number(static_cast<int>(content->last->number)), content->last->who,
                          m_wording.longDate(dayOf(content->last->at.toLocalTime().date())), look.last);
    look.inside = lines.join(u'\n');
    return look;
}

void BackupsDialog::tell(std::size_t index, const Look& look) {
    QTreeWidgetItem* item = m_list->topLevelItem(static_cast<int>(index));
    item->setText(BatchesColumn, look.batches);
    item->setText(TargetsColumn, look.targets);
    item->setText(ChecksColumn, look.checks);
    item->setText(StateColumn, look.sound ? tr("sound") : tr("damaged"));
    item->setText(LastColumn, look.last);
    item->setToolTip(LastColumn, look.last);
    m_looks[index] = look;
    fitColumns(*m_list);
    showChosen();
}

int BackupsDialog::chosen() const {
    return m_list->indexOfTopLevelItem(m_list->currentItem());
}

void BackupsDialog::showChosen() {
    const int index = chosen();
    const std::optional<Look> look = index < 0 ? std::nullopt : m_looks[static_cast<std::size_t>(index)];
    for (QPushButton* one : {m_look, m_copy, m_place}) one->setEnabled(look && look->sound);
    m_inside->setText(look ? look->inside : QString());
}

} // namespace warmbench::ui
