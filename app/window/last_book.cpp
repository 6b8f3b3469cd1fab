#include "app/window/last_book.h"

#include <QFileInfo>
#include <QSettings>

namespace warmbench::app {
namespace {

QSettings keptSettings() {
    return QSettings(QStringLiteral("Warmbench"), QStringLiteral("Warmbench"));
}

QString lastBookKey() {
    return QStringLiteral("lastBook");
}

} // namespace

Result<std::unique_ptr<ui::BookSession>> LastBookOpener::open(const QString& name) {
    auto session = FileOpener::open(name);
    if (session) {
        const bool isFile = QFileInfo::exists(name);
        keptSettings().setValue(lastBookKey(), isFile ? QFileInfo(name).absoluteFilePath() : shownName(name));
    }
    return session;
}

QString lastBook() {
    return keptSettings().value(lastBookKey()).toString();
}

} // namespace warmbench::app
