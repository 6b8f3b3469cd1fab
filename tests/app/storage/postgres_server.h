#pragma once

#include <string>

#include <sys/types.h>

namespace warmbench::tests {

/// A PostgreSQL server for the tests of one process: its data in a folder of its own, reached by a socket in
/// that folder alone, run as an ordinary user, stopped and removed when the process ends, however it ends.
/// Where PostgreSQL is not installed or does not start, `shared` throws, and with it every test that needs
/// it: none passes unseen.
class PostgresServer {
public:
    /// The one of this process, started when it is first asked for.
    static PostgresServer& shared();

    struct Options {
        bool asksPassword = false; ///< of all but its administrator
        bool syncs = false;        ///< to the disk, as a server at work does
        bool onPort = false; ///< of this machine alone, as well as on the socket; asks for passwords there
        bool speaksTls =
            false; ///< on the port, and there nothing else, with a certificate made for `localhost`
    };

    explicit PostgresServer(Options options);
    PostgresServer() : PostgresServer(Options()) {}
    PostgresServer(const PostgresServer&) = delete;
    PostgresServer& operator=(const PostgresServer&) = delete;
    ~PostgresServer();

    /// Makes an empty database and tells its address, for the server's own administrator.
    [[nodiscard]] std::string newDatabase();
    /// The address of a database for a user.
    [[nodiscard]] std::string address(const std::string& database, const std::string& user = "keeper") const;
    /// The address of a database for a user by the port, without any settings.
    [[nodiscard]] std::string portAddress(const std::string& host, const std::string& database,
                                          const std::string& user) const;
    /// The file of the certificate that it shows.
    [[nodiscard]] std::string certificate() const { return m_folder + "/server.crt"; }
    /// What it has written down: every statement, where it was told to log those.
    [[nodiscard]] std::string log() const;
    /// The database of an address.
    [[nodiscard]] static std::string databaseOf(const std::string& address);
    /// Plain SQL of a user in the schema of the book: what the database says against it, and the first value
    /// that it answers. Without a user it is the administrator's, whom no trigger hinders.
    std::string ask(const std::string& database, const std::string& user, const std::string& statement,
                    std::string& answer) const;
    [[nodiscard]] std::string saidTo(const std::string& database, const std::string& user,
                                     const std::string& statement) const;
    /// Runs SQL in a database as its administrator, behind the program's back; throws where it fails.
    void run(const std::string& database, const std::string& statement) const;

    /// Stops it as a power cut would, and starts it again on the same data.
    void stop();
    void start();

private:
    void make();
    void makeCertificate();

    Options m_options;
    pid_t m_owner; ///< the process that stops it; children of that one leave it alone
    std::string m_folder;
    std::string m_programs;
    std::string m_user; ///< whom it runs as; empty: as this process does
    pid_t m_server = 0;
    int m_port = 0;
    int m_databases = 0;
};

} // namespace warmbench::tests
