#include "app/storage/store.h"

#include "app/storage/file_store.h"
#include "app/storage/rows.h"
#include "app/storage/shared_store.h"

#include <QUuid>

namespace warmbench::app {

Store::Store(std::string name, OpenMode mode)
    : m_name(std::move(name)), m_mode(mode), m_connection(QUuid::createUuid().toString()) {}

Store::~Store() {
    disconnect();
}

QSqlDatabase Store::connection(const char* driver) {
    disconnect();
    return QSqlDatabase::addDatabase(QString::fromLatin1(driver), m_connection);
}

void Store::disconnect() {
    if (!QSqlDatabase::contains(m_connection)) return;
    {
        QSqlDatabase open = database();
        if (open.isOpen()) open.close();
    }
    QSqlDatabase::removeDatabase(m_connection);
}

Outcome Store::commit() {
    return run(database(), QStringLiteral("COMMIT"));
}

void Store::rollBack() {
    [[maybe_unused]] const Outcome back = run(database(), QStringLiteral("ROLLBACK"));
}

Refusal Store::newerProgram(int version) const {
    return refusal(
        phrase("it was written by a newer Warmbench (found version %1, expected at most %2); use that one",
               version, currentSchema));
}

bool isShared(const std::string& name) {
    return name.starts_with("postgresql://") || name.starts_with("postgres://");
}

Result<std::unique_ptr<Store>> storeOf(const std::string& name, OpenMode mode) {
    if (!isShared(name)) return std::unique_ptr<Store>(std::make_unique<FileStore>(name, mode));
    const auto address = SharedAddress::read(name);
    if (!address) return address.refusal();
    return std::unique_ptr<Store>(std::make_unique<SharedStore>(*address, mode));
}

} // namespace warmbench::app
