#include "app/storage/copy_told.h"
#include "app/storage/shared_address.h"
#include "app/window/file_session.h"

#include <QDir>
#include <QFileInfo>

/// Copies of the open book that are taken along on a round, and what was found with them.
namespace warmbench::app {
namespace {

/// What a shared book is called, as a part of a file's name.
QString fileNameOf(const std::string& address) {
    const auto read = SharedAddress::read(address);
    QString name = read ? QString::fromStdString(read->database) : QString();
    for (QChar& letter : name)
        if (!letter.isLetterOrNumber() && letter != u'-' && letter != u'_') letter = u'-';
    return name.isEmpty() ? QStringLiteral("nursery") : name;
}

} // namespace

QString FileSession::proposedName(Day day) const {
    const std::string& path = m_file->path();
    const QFileInfo file(QString::fromStdString(path));
    const QDir folder = isShared(path) ? QDir::home() : file.absoluteDir();
    const QString name = tr("%1-copy-%2")
                             .arg(isShared(path) ? fileNameOf(path) : file.completeBaseName(),
                                  QString::fromStdString(day.iso()));
    QString proposed = name;
    for (int i = 2; folder.exists(proposed + QStringLiteral(".warmbench")); ++i)
        proposed = QStringLiteral("%1-%2").arg(name).arg(i);
    return folder.filePath(proposed + QStringLiteral(".warmbench"));
}

Outcome FileSession::take(const QString& file) {
    if (!m_onlyReadWhy.isEmpty()) return Refusal{{}, m_onlyReadWhy.toStdString()};
    // What others have written just now belongs into it, too.
    if (const auto taken = m_file->catchUp(); !taken) return taken.refusal();
    return m_file->backup(file.toStdString());
}

Result<ui::AwayContent> FileSession::lookInto(const QString& file) {
    const std::string name = file.toStdString();
    if (!isShared(m_file->path()) &&
        QFileInfo(file).canonicalFilePath() ==
            QFileInfo(QString::fromStdString(m_file->path())).canonicalFilePath())
        return Refusal{name,
                       phrase("this is the book that is open here; choose the copy that was taken along")};
    const auto copy = BookFile::open(name, OpenMode::Read);
    if (!copy) return copy.refusal();
    const auto told = toldByCopy(*m_file, **copy);
    if (!told) return told.refusal();
    if (!told->isCopy)
        return Refusal{name,
                       phrase("this is a book of its own and no copy of %1, as the first steps of their "
                              "journals tell; choose the copy that was taken along",
                              this->name().toStdString())};
    ui::AwayContent content{(*copy)->book(), {}};
    for (const JournalLine& line : told->own) content.steps.push_back(stepOf(line));
    return content;
}

} // namespace warmbench::app
