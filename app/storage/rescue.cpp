#include "app/storage/rescue.h"

#include "app/storage/book_file.h"
#include "app/storage/file_head.h"
#include "app/storage/rows.h"
#include "core/exchange/book/book_json.h"

#include <QSqlQuery>
#include <QTemporaryDir>
#include <QUuid>
#include <QVariant>

#include <filesystem>

/// Two tellings of a book are read, each as far as it can be: its tables row by row, from both ends, and its
/// journal from the first entry on. Where the journal is whole it is the book. Else the tables are, and what
/// damaged ones lack is taken from the journal; what then breaks a rule for want of something else is
/// dropped.
namespace warmbench::app {
namespace {

namespace fs = std::filesystem;

/// What the journal tells, up to where it breaks off.
struct Told {
    HouseBook book;
    int entries = 0;
    bool whole = false;
};

Told retell(const QSqlDatabase& database) {
    Told told;
    std::string chain;
    QSqlQuery query(database);
    query.setForwardOnly(true);
    if (!query.exec(QStringLiteral("SELECT seq, at, who, words, change, chain FROM journal ORDER BY seq")))
        return told;
    while (query.next()) {
        const auto text = [&](int column) { return query.value(column).toString().toStdString(); };
        const JournalRow row{query.value(0).toLongLong(), text(1), text(2), text(3), text(4)};
        chain = chained(chain, row);
        const auto change = readChange(row.change);
        if (row.seq != told.entries + 1 || chain != text(5) || !change || told.book.apply(*change))
            return told;
        ++told.entries;
    }
    // An end that can't be read looks like the end: it is looked for from the other side.
    const bool read = !query.lastError().isValid();
    QSqlQuery last(database);
    told.whole = read && told.entries > 0 && last.exec(QStringLiteral("SELECT max(seq) FROM journal")) &&
                 last.next() && last.value(0).toInt() == told.entries;
    return told;
}

/// Takes out what breaks a rule until no rule is broken.
HouseBook prune(Things things, Rescue& rescue) {
    for (;;) {
        auto made = HouseBook::make(things);
        if (auto* book = std::get_if<HouseBook>(&made)) return std::move(*book);
        std::size_t place = 0;
        bool taken = false;
        forEachKind([&]<class E>() {
            auto& all = std::get<std::map<IdOf<E>, E>>(things);
            for (const BrokenRule& broken : std::get<std::vector<BrokenRule>>(made))
                if (broken.kind == std::string(kindName<E>.many) && all.erase({broken.number}) > 0) {
                    ++rescue.kinds[place].dropped;
                    taken = true;
                }
            ++place;
        });
        // A book without its nursery has default settings.
        auto& nursery = std::get<std::map<IdOf<Nursery>, Nursery>>(things);
        if (nursery.empty())
            nursery = HouseBook().all<Nursery>();
        else if (!taken)
            return HouseBook();
    }
}

/// Takes what would run statements of its own out of the copy; false where that can't be done.
bool dropForeignParts(const QSqlDatabase& database) {
    for (std::string before, part; !(part = foreignPart(database)).empty(); before = part)
        if (part == before || run(database, QStringLiteral("DROP %1").arg(QString::fromStdString(part))))
            return false;
    return !run(database, QStringLiteral("PRAGMA trusted_schema = OFF"));
}

Outcome save(const QSqlDatabase& database, const std::string& damaged, const std::string& newBook,
             Rescue& rescue) {
    const Told told = retell(database);
    rescue.entries = told.entries;
    rescue.journalWhole = told.whole;
    HouseBook book;
    if (told.whole) {
        book = told.book;
        forEachKind([&]<class E>() { rescue.kinds.push_back({kindName<E>.several}); });
    } else {
        SalvagedRows rows = salvageRows(database);
        Things& things = rows.things;
        forEachKind([&]<class E>() {
            RescuedKind kind{kindName<E>.several};
            kind.damaged = rows.damaged[rescue.kinds.size()];
            if (kind.damaged)
                for (const auto& [id, thing] : told.book.all<E>())
                    kind.fromJournal +=
                        std::get<std::map<IdOf<E>, E>>(things).emplace(id, thing).second ? 1 : 0;
            rescue.kinds.push_back(kind);
        });
        auto& nursery = std::get<std::map<IdOf<Nursery>, Nursery>>(things);
        if (nursery.empty()) nursery = HouseBook().all<Nursery>();
        book = prune(std::move(things), rescue);
    }
    std::size_t place = 0;
    forEachKind([&]<class E>() { rescue.kinds[place++].saved = static_cast<int>(book.all<E>().size()); });
    return BookFile::create(newBook, book,
                            "Rescue what could be read of " + fs::path(damaged).filename().string());
}

} // namespace

Result<Rescue> rescueBook(const std::string& damaged, const std::string& newBook) {
    const auto head = readHead(damaged);
    if (!head) return head.refusal();
    if (head->application != applicationId)
        return Refusal{damaged, phrase("this is no house book (found another program's database)")};
    std::error_code failed;
    if (fs::exists(newBook, failed))
        return Refusal{newBook, phrase("there is a file of this name already; choose another")};
    // Even opening a database may change it and its log: only a copy of both is opened.
    const QTemporaryDir folder;
    const std::string copy = folder.filePath(QStringLiteral("copy")).toStdString();
    fs::copy_file(damaged, copy, failed);
    if (failed) return Refusal{damaged, phrase("it can't be read: %1", failed.message())};
    if (fs::exists(damaged + "-wal", failed)) fs::copy_file(damaged + "-wal", copy + "-wal", failed);
    const QString connection = QUuid::createUuid().toString();
    Rescue rescue;
    Outcome refusal;
    {
        QSqlDatabase database = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), connection);
        database.setDatabaseName(QString::fromStdString(copy));
        if (database.open() && dropForeignParts(database))
            refusal = save(database, damaged, newBook, rescue);
        else if (database.isOpen())
            refusal = Refusal{damaged, phrase("something stands in it that no house book has")};
        else
            refusal =
                Refusal{damaged, phrase("it can't be opened at all: %1", wordsOf(database.lastError()))};
        database.close();
    }
    QSqlDatabase::removeDatabase(connection);
    if (refusal) return *refusal;
    return rescue;
}

} // namespace warmbench::app
