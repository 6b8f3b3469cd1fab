#include "app/storage/book_file.h"

#include "app/storage/rows.h"
#include "app/storage/whole_book.h"
#include "core/exchange/book/book_json.h"

#include <QSqlError>
#include <QSqlQuery>
#include <QSqlRecord>
#include <QVariant>

namespace warmbench::app {
namespace {

std::string wordsOfFirst(const std::vector<BrokenRule>& broken) {
    return broken.front().refusal.text() +
           (broken.size() > 1 ? " (and " + std::to_string(broken.size() - 1) + " more)" : "");
}

} // namespace

BookFile::BookFile(std::unique_ptr<Store> store) : m_store(std::move(store)) {}

BookFile::~BookFile() = default;

Outcome BookFile::create(const std::string& path, const HouseBook& book, const std::string& said) {
    auto store = storeOf(path, OpenMode::Write);
    if (!store) return store.refusal();
    BookFile file(std::move(*store));
    return file.m_store->make([&] { return file.keep(changeTo(book), said); });
}

Result<std::unique_ptr<BookFile>> BookFile::open(const std::string& path, OpenMode mode) {
    auto store = storeOf(path, mode);
    if (!store) return store.refusal();
    std::unique_ptr<BookFile> file(new BookFile(std::move(*store)));
    if (auto refusal = file->m_store->open()) return *refusal;
    if (auto refusal = file->load()) return *refusal;
    return file;
}

Outcome BookFile::load() {
    const QSqlDatabase database = m_store->database();
    if (auto refusal = m_store->beginToRead()) return refusal;
    auto things = readRows(database);
    QSqlQuery last(database);
    last.exec(QStringLiteral("SELECT * FROM journal ORDER BY seq DESC LIMIT 1"));
    if (last.next()) {
        m_seq = last.value(QStringLiteral("seq")).toLongLong();
        // A book of version 1 that is only read has no chain.
        if (last.record().contains(QStringLiteral("chain")))
            m_chain = last.value(QStringLiteral("chain")).toString().toStdString();
    }
    last.finish();
    [[maybe_unused]] const Outcome ended = m_store->commit();
    const char* const damaged =
        isShared(path()) ? pattern("the shared book is damaged: %1") : pattern("the file is damaged: %1");
    if (!things) return Refusal{path(), phrase(damaged, wordsOf(things.refusal()))};
    auto made = HouseBook::make(std::move(*things));
    if (const auto* broken = std::get_if<std::vector<BrokenRule>>(&made))
        return Refusal{path(), phrase(damaged, wordsOfFirst(*broken))};
    m_book = std::move(std::get<HouseBook>(made));
    return m_store->mode() == OpenMode::Read ? std::nullopt : m_steps.read(*m_store);
}

Outcome BookFile::keep(const Change& change, const std::string& words) {
    const QSqlDatabase database = m_store->database();
    const JournalRow entry{m_seq + 1, m_store->now(), m_store->who(), words, writeChange(change)};
    const std::string chain = chained(m_chain, entry);
    Outcome refusal = writeRows(database, change);
    if (!refusal) refusal = m_store->addToJournal(entry, chain);
    if (refusal) return Refusal{path(), phrase("it could not be kept: %1", wordsOf(*refusal))};
    m_seq = entry.seq;
    m_chain = chain;
    return std::nullopt;
}

} // namespace warmbench::app
