#include "app/window/file_session.h"

#include "app/resource/built_in_recipes.h"

#include <QCoreApplication>
#include <QFileInfo>

namespace warmbench::app {
namespace {

constexpr int catchUpMilliseconds = 3000;

} // namespace

FileSession::FileSession(std::unique_ptr<BookFile> file) : m_file(std::move(file)) {
    m_file->onChange([this](const Change& change) { Q_EMIT changed(change); });
    m_catchUp.setInterval(catchUpMilliseconds);
    // A file that cannot be read just now is tried again; a change that needs it is refused with the reason.
    connect(&m_catchUp, &QTimer::timeout, this, [this] { (void)m_file->catchUp(); });
    m_catchUp.start();
}

QString FileSession::name() const {
    return QFileInfo(QString::fromStdString(m_file->path())).fileName();
}

Result<std::unique_ptr<ui::BookSession>> FileOpener::open(const QString& name) {
    auto file = BookFile::open(name.toStdString(), OpenMode::Write);
    if (!file) return file.refusal();
    return std::unique_ptr<ui::BookSession>(std::make_unique<FileSession>(std::move(*file)));
}

Result<std::unique_ptr<ui::BookSession>> FileOpener::create(const QString& name) {
    if (auto refusal = BookFile::create(name.toStdString(), HouseBook())) return *refusal;
    return open(name);
}

const RecipeLibrary& FileOpener::recipes() {
    return builtInRecipes();
}

QString FileOpener::fileFilter() const {
    return QCoreApplication::translate("FileOpener", "House books (*.warmbench);;All files (*)");
}

} // namespace warmbench::app
