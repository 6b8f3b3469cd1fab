#include "app/window/password_keeper.h"

#include <QCoreApplication>
#include <QEventLoop>
#include <QTimer>

#include <memory>

#include <qt6keychain/keychain.h>

namespace warmbench::app {
namespace {

QString service() {
    return QStringLiteral("Warmbench");
}

/// A key store that asks its owner for leave may take that long.
constexpr int longestWait = 60'000;

/// Runs a job of the key store to its end. Without an application there is none to wait in: then one is made
/// for as long as it takes.
void finish(QKeychain::Job& job) {
    int count = 1;
    char name[] = "warmbench";
    char* words[] = {name, nullptr};
    std::unique_ptr<QCoreApplication> application;
    if (!QCoreApplication::instance()) application = std::make_unique<QCoreApplication>(count, words);
    job.setAutoDelete(false);
    // Its other way out would be a file that anybody can read.
    job.setInsecureFallback(false);
    QEventLoop loop;
    QObject::connect(&job, &QKeychain::Job::finished, &loop, &QEventLoop::quit);
    QTimer::singleShot(longestWait, &loop, &QEventLoop::quit);
    job.start();
    loop.exec();
}

} // namespace

std::string SystemKeys::find(const std::string& address) {
    QKeychain::ReadPasswordJob job(service());
    job.setKey(QString::fromStdString(address));
    finish(job);
    return job.error() == QKeychain::NoError ? job.textData().toStdString() : std::string{};
}

Outcome SystemKeys::keep(const std::string& address, const std::string& password) {
    QKeychain::WritePasswordJob job(service());
    job.setKey(QString::fromStdString(address));
    job.setTextData(QString::fromStdString(password));
    finish(job);
    if (job.error() == QKeychain::NoError) return std::nullopt;
    return Refusal{address, phrase("its password can't be kept, as this system has no key store that is open "
                                   "(%1); it is asked for again next time",
                                   job.errorString().toStdString())};
}

} // namespace warmbench::app
