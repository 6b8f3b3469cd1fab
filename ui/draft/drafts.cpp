#include "ui/draft/drafts.h"

#include "core/exchange/file/file.h"

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QJsonArray>
#include <QJsonDocument>

namespace warmbench::ui {
namespace {

constexpr int mostPrograms = 20;
constexpr int soonMilliseconds = 100;
constexpr std::size_t mostBytes = std::size_t{64} << 20;

QString numbered(const QString& name, int number) {
    return number == 1 ? name : name + u'-' + QString::number(number);
}

} // namespace

Drafts::Drafts(QString file, QObject* parent) : QObject(parent), m_name(std::move(file)) {
    m_soon.setSingleShot(true);
    m_soon.setInterval(soonMilliseconds);
    connect(&m_soon, &QTimer::timeout, this, &Drafts::write);
    if (m_name.isEmpty()) return;
    for (int number = 1; m_file.isEmpty() && number <= mostPrograms; ++number)
        if (const QString one = numbered(m_name, number); QFile::exists(one) && lock(one)) read();
}

Drafts::~Drafts() {
    if (m_soon.isActive()) write();
}

/// Makes a file this program's own, unless another that runs has it.
bool Drafts::lock(const QString& file) {
    auto lock = std::make_unique<QLockFile>(file + QStringLiteral(".lock"));
    lock->setStaleLockTime(0); // one is old once its program is gone, whatever the clock says
    if (!lock->tryLock()) return false;
    m_lock = std::move(lock);
    m_file = file;
    return true;
}

void Drafts::read() {
    const auto content = exchange::readFile(m_file.toStdString(), mostBytes);
    if (!content) return;
    const QJsonDocument document = QJsonDocument::fromJson(QByteArray::fromStdString(*content));
    for (const QJsonValue& value : document.object()[QStringLiteral("drafts")].toArray()) {
        const QJsonObject one = value.toObject();
        const auto text = [&](const char* name) { return one[QLatin1String(name)].toString(); };
        const Draft draft{text("place"),
                          text("key"),
                          text("words"),
                          text("day"),
                          one[QStringLiteral("fields")].toObject(),
                          true,
                          false,
                          text("told"),
                          one[QStringLiteral("before")].toObject()};
        if (!draft.place.isEmpty() && !draft.fields.isEmpty()) m_drafts += draft;
    }
}

void Drafts::write() {
    m_soon.stop();
    if (m_name.isEmpty()) return;
    if (m_drafts.isEmpty()) {
        if (!m_file.isEmpty()) QFile::remove(m_file);
        return;
    }
    if (m_file.isEmpty()) QDir().mkpath(QFileInfo(m_name).absolutePath());
    for (int number = 1; m_file.isEmpty() && number <= mostPrograms; ++number)
        if (const QString one = numbered(m_name, number); !QFile::exists(one)) lock(one);
    if (m_file.isEmpty()) return;
    QJsonArray drafts;
    for (const Draft& one : m_drafts)
        drafts += QJsonObject{{QStringLiteral("place"), one.place},   {QStringLiteral("key"), one.key},
                              {QStringLiteral("words"), one.words},   {QStringLiteral("day"), one.day},
                              {QStringLiteral("fields"), one.fields}, {QStringLiteral("told"), one.told},
                              {QStringLiteral("before"), one.before}};
    const QJsonDocument document(QJsonObject{{QStringLiteral("drafts"), drafts}});
    [[maybe_unused]] const Outcome written =
        exchange::replaceFile(m_file.toStdString(), document.toJson().toStdString());
}

qsizetype Drafts::indexOf(const QString& place, const QString& key, bool left) const {
    for (qsizetype i = 0; i < m_drafts.size(); ++i)
        if (m_drafts[i].place == place && m_drafts[i].key == key && m_drafts[i].left == left) return i;
    return -1;
}

void Drafts::soon() {
    if (!m_soon.isActive()) m_soon.start();
    Q_EMIT changed();
}

const Draft* Drafts::find(const QString& place, const QString& key) const {
    const qsizetype index = indexOf(place, key);
    return index < 0 ? nullptr : &m_drafts[index];
}

void Drafts::keep(const Draft& draft) {
    const qsizetype index = indexOf(draft.place, draft.key);
    if (index < 0)
        m_drafts += draft;
    else
        m_drafts[index] = draft;
    soon();
}

void Drafts::drop(const QString& place, const QString& key) {
    const qsizetype index = indexOf(place, key);
    if (index < 0) return;
    m_drafts.removeAt(index);
    soon();
}

void Drafts::take(const Draft& left) {
    drop(left.place, left.key);
    if (const qsizetype index = indexOf(left.place, left.key, true); index >= 0) m_drafts[index].left = false;
    soon();
}

void Drafts::giveBack(const Draft& left) {
    if (const qsizetype index = indexOf(left.place, left.key); index >= 0) m_drafts[index].left = true;
    soon();
}

void Drafts::setGone(const Draft& left) {
    if (const qsizetype index = indexOf(left.place, left.key, true); index >= 0) m_drafts[index].gone = true;
    soon();
}

void Drafts::dropLeft(const Draft& left) {
    if (const qsizetype index = indexOf(left.place, left.key, true); index >= 0) m_drafts.removeAt(index);
    soon();
}

void Drafts::flush() {
    Q_EMIT toldNow();
    write();
}

} // namespace warmbench::ui
