#include "app/window/file_session.h"

#include "app/resource/built_in_recipes.h"
#include "app/storage/backups.h"
#include "app/storage/shared_address.h"
#include "app/window/open_shared.h"

#include <QCoreApplication>
#include <QCryptographicHash>
#include <QFileInfo>
#include <QStandardPaths>

namespace warmbench::app {
namespace {

constexpr int lookMilliseconds = 1000;

} // namespace

ui::JournalStep stepOf(const JournalLine& line) {
    return {line.seq, QDateTime::fromString(QString::fromStdString(line.at), Qt::ISODateWithMs),
            QString::fromStdString(line.who), QString::fromStdString(line.words)};
}

FileSession::FileSession(std::unique_ptr<BookFile> file, QString onlyLookWhy)
    : m_file(std::move(file)), m_onlyReadWhy(std::move(onlyLookWhy)), m_onlyLook(!m_onlyReadWhy.isEmpty()) {
    if (m_onlyLook) return; // nobody changes it, and it is not waited for
    m_file->onChange([this](const Change& change) { Q_EMIT changed(change); });
    m_file->listen([this] { catchUp(); });
    m_look.setInterval(lookMilliseconds);
    connect(&m_look, &QTimer::timeout, this, [this] { m_onlyReadWhy.isEmpty() ? catchUp() : seek(); });
    m_look.start();
}

FileSession::~FileSession() {
    if (m_seeker.joinable()) m_seeker.join();
}

QString FileSession::name() const {
    if (!isShared(m_file->path())) return QFileInfo(QString::fromStdString(m_file->path())).fileName();
    const auto address = SharedAddress::read(m_file->path());
    if (!address) return QString::fromStdString(m_file->path());
    QString database = QString::fromStdString(address->database);
    if (address->host.empty() || address->host.front() == '/') return database;
    return tr("%1 on %2").arg(database, QString::fromStdString(address->host));
}

QString FileSession::fileName() const {
    return m_onlyLook || isShared(m_file->path()) ? QString() : QString::fromStdString(m_file->path());
}

/// Beside a file; of a shared book in the user's own folder, under a name that tells no address.
QString FileSession::draftFile() const {
    if (m_onlyLook) return {};
    const QString name = QString::fromStdString(m_file->path());
    if (!isShared(m_file->path())) return name + QStringLiteral(".unsaved");
    const QByteArray hash = QCryptographicHash::hash(shownName(name).toUtf8(), QCryptographicHash::Sha256);
    return QStandardPaths::writableLocation(QStandardPaths::AppLocalDataLocation) +
           QStringLiteral("/unsaved/") + QString::fromLatin1(hash.toHex().left(24));
}

QString FileSession::backupTrouble() const {
    const Outcome& trouble = m_file->lastBackupTrouble();
    if (!trouble) return {};
    return tr("Your changes are kept, but today's backup could not be made: %1. It is tried again with "
              "tomorrow's first change.")
        .arg(QString::fromStdString(trouble->text()));
}

void FileSession::setOnlyRead(const QString& why) {
    if (m_onlyReadWhy == why) return;
    m_onlyReadWhy = why;
    Q_EMIT standingChanged();
}

void FileSession::catchUp() {
    if (!m_onlyReadWhy.isEmpty()) return;
    const auto taken = m_file->catchUp();
    if (taken && m_file->isReachable()) return;
    if (m_file->isReachable()) return setOnlyRead(QString::fromStdString(taken.refusal().text()));
    setOnlyRead(
        isShared(m_file->path())
            ? tr("The connection to the shared book is lost. You can read the book as it was; it can be "
                 "changed again as soon as the connection is back.")
            : tr("The book's file has been moved, removed or replaced. You can read the book as it was; "
                 "it can be changed again when the file is back in its place."));
}

/// Others wait for an answer in a thread of their own, as a server that is gone may take its time.
void FileSession::seek() {
    if (m_seeking) return;
    if (m_seeker.joinable()) m_seeker.join();
    m_seeking = true;
    m_seeker = std::thread([this, probe = m_file->prober()] {
        const bool there = probe();
        m_answer.post([this, there] { found(there); });
    });
}

void FileSession::found(bool again) {
    m_seeking = false;
    if (again && !m_file->reopen()) setOnlyRead({});
}

Outcome FileSession::change(const std::function<Outcome()>& act) {
    if (!m_onlyReadWhy.isEmpty()) return Refusal{{}, m_onlyReadWhy.toStdString()};
    Outcome refusal = act();
    if (!refusal || m_file->isReachable()) return refusal;
    catchUp();
    // The answer to the commit may be what was lost.
    return Refusal{{},
                   tr("The connection was lost in the middle of this. Whether it was kept shows when the "
                      "connection is back.")
                       .toStdString()};
}

Outcome FileSession::perform(const Command& command) {
    return change([&] { return m_file->perform(command); });
}

Outcome FileSession::undo() {
    return change([&] { return m_file->undo(); });
}

Outcome FileSession::redo() {
    return change([&] { return m_file->redo(); });
}

QString shownName(const QString& name) {
    if (!isShared(name.toStdString())) return name;
    const auto address = SharedAddress::read(name.toStdString());
    return address ? QString::fromStdString(address->shown()) : QString();
}

Result<std::vector<ui::JournalStep>> FileSession::journal() {
    const auto lines = m_file->journalLines();
    if (!lines) return lines.refusal();
    std::vector<ui::JournalStep> steps;
    steps.reserve(lines->size());
    for (const JournalLine& line : *lines) steps.push_back(stepOf(line));
    return steps;
}

Result<std::unique_ptr<ui::BookSession>> FileOpener::open(const QString& name) {
    auto file = openBookWith(m_keys, name.toStdString(), OpenMode::Write);
    if (!file) return file.refusal();
    return std::unique_ptr<ui::BookSession>(std::make_unique<FileSession>(std::move(*file)));
}

Result<std::unique_ptr<ui::BookSession>> FileOpener::create(const QString& name) {
    if (auto refusal = BookFile::create(name.toStdString(), HouseBook())) return *refusal;
    return open(name);
}

Result<std::unique_ptr<ui::BookSession>> FileOpener::openToLook(const QString& backup, const QString& why) {
    auto file = BookFile::open(backup.toStdString(), OpenMode::Read);
    if (!file) return file.refusal();
    return std::unique_ptr<ui::BookSession>(std::make_unique<FileSession>(std::move(*file), why));
}

std::vector<ui::KeptBackup> FileOpener::backupsOf(const QString& book) {
    std::vector<ui::KeptBackup> kept;
    for (const Backup& one : app::backupsOf(book.toStdString()))
        kept.push_back({one.day, QString::fromStdString(one.path)});
    return kept;
}

Result<ui::BackupContent> FileOpener::lookInto(const QString& backup) {
    const auto file = BookFile::open(backup.toStdString(), OpenMode::Read);
    if (!file) return file.refusal();
    if (const auto wrong = (*file)->check(); !wrong.empty()) return wrong.front();
    const auto lines = (*file)->journalLines();
    if (!lines) return lines.refusal();
    return ui::BackupContent{(*file)->book(),
                             lines->empty() ? std::nullopt : std::optional(stepOf(lines->back()))};
}

Outcome FileOpener::copyTo(const QString& backup, const QString& newBook) {
    return copyBackup(backup.toStdString(), newBook.toStdString());
}

Result<QString> FileOpener::putInPlaceOf(const QString& backup, const QString& book) {
    const auto kept = restoreBackup(backup.toStdString(), book.toStdString());
    if (!kept) return kept.refusal();
    return QString::fromStdString(*kept);
}

const RecipeLibrary& FileOpener::recipes() {
    return builtInRecipes();
}

QString FileOpener::fileFilter() const {
    return QCoreApplication::translate("FileOpener", "House books (*.warmbench);;All files (*)");
}

} // namespace warmbench::app
