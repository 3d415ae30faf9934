SET statement_timeout = 0;
SET lock_timeout = 0;
SET idle_in_transaction_session_timeout = 0;
SET client_encoding = 'UTF8';
SET standard_conforming_strings = on;
SELECT pg_catalog.set_config('search_path', '', false);
SET check_function_bodies = false;
SET xmloption = content;
SET client_min_messages = warning;
SET row_security = off;
SET default_tablespace = '';
SET default_table_access_method = heap;
CREATE TABLE public.company_log (
    company uuid NOT NULL,
    last bigint NOT NULL,
    lamport bigint NOT NULL,
    epoch text NOT NULL COLLATE pg_catalog."C",
    device uuid NOT NULL,
    waiting bigint NOT NULL
);
CREATE TABLE public.entry (
    company uuid NOT NULL,
    "position" bigint NOT NULL,
    id uuid NOT NULL,
    stream uuid NOT NULL,
    device uuid NOT NULL,
    seq bigint NOT NULL,
    lamport bigint NOT NULL,
    kind text NOT NULL COLLATE pg_catalog."C",
    hash text NOT NULL COLLATE pg_catalog."C",
    body text NOT NULL COLLATE pg_catalog."C",
    pusher text NOT NULL COLLATE pg_catalog."C",
    received text NOT NULL COLLATE pg_catalog."C",
    redacts uuid
);
CREATE TABLE public.kysely_migration (
    name character varying(255) NOT NULL,
    "timestamp" character varying(255) NOT NULL
);
CREATE TABLE public.kysely_migration_lock (
    id character varying(255) NOT NULL,
    is_locked integer DEFAULT 0 NOT NULL
);
CREATE TABLE public.own_device (
    company uuid NOT NULL,
    device uuid NOT NULL,
    since text NOT NULL COLLATE pg_catalog."C"
);
CREATE TABLE public.paired_device (
    company uuid NOT NULL,
    id uuid NOT NULL,
    name text NOT NULL COLLATE pg_catalog."C",
    key_hash text NOT NULL COLLATE pg_catalog."C",
    paired_at text NOT NULL COLLATE pg_catalog."C",
    seen_at text COLLATE pg_catalog."C",
    revoked_at text COLLATE pg_catalog."C"
);
CREATE TABLE public.workshop (
    company uuid NOT NULL,
    author text NOT NULL COLLATE pg_catalog."C",
    begun_at text NOT NULL COLLATE pg_catalog."C"
);
INSERT INTO public.company_log VALUES ('00000000-0000-7000-8000-0000000000c0', 5, 5, '00000000-0000-7000-8000-000000000e02', '00000000-0000-7000-8000-000000000e01', 1);
INSERT INTO public.entry VALUES ('00000000-0000-7000-8000-0000000000c0', 1, '00000000-0000-7000-8000-000000000101', '00000000-0000-7000-8000-000000000051', '00000000-0000-7000-8000-0000000000d1', 1, 1, 'visit-noted/1', 'dddef6123f45511ebfb0dfe1374f1e86b742a0cfc64b372ad308a778f15a1dff', '{"about":{},"app":"sample","author":"Sample Hand","company":"00000000-0000-7000-8000-0000000000c0","device":"00000000-0000-7000-8000-0000000000d1","id":"00000000-0000-7000-8000-000000000101","kind":"visit-noted/1","lamport":1,"payload":{"text":"It''s hard water: 25 gpg, ñ, \u0000 and 🧂"},"seen":{},"seq":1,"stream":"00000000-0000-7000-8000-000000000051","wall":"2026-11-25T08:00:00.000Z","zone":"America/Chicago"}', '00000000-0000-7000-8000-0000000000f1', '2026-11-25T09:00:00.000Z', NULL);
INSERT INTO public.entry VALUES ('00000000-0000-7000-8000-0000000000c0', 2, '00000000-0000-7000-8000-000000000102', '00000000-0000-7000-8000-000000000051', '00000000-0000-7000-8000-0000000000d1', 2, 2, 'visit-noted/1', 'ed68b3a1f3c972b6a30507dd77d9cf6717b91ebd598beadf921edbd62b87fbf8', '{"about":{},"app":"sample","author":"Sample Hand","company":"00000000-0000-7000-8000-0000000000c0","device":"00000000-0000-7000-8000-0000000000d1","id":"00000000-0000-7000-8000-000000000102","kind":"visit-noted/1","lamport":2,"payload":{"redacted":"00000000-0000-7000-8000-000000000103"},"seen":{},"seq":2,"stream":"00000000-0000-7000-8000-000000000051","wall":"2026-11-25T08:00:00.000Z","zone":"America/Chicago"}', '00000000-0000-7000-8000-0000000000f1', '2026-11-25T09:00:00.000Z', NULL);
INSERT INTO public.entry VALUES ('00000000-0000-7000-8000-0000000000c0', 3, '00000000-0000-7000-8000-000000000103', '00000000-0000-7000-8000-000000000051', '00000000-0000-7000-8000-0000000000d1', 3, 3, 'redacted/1', '7bf349e58226fcbf5e420aa1359ceac16cf8a6bfca8077e67852e684de8d9eb9', '{"about":{},"app":"sample","author":"Sample Hand","company":"00000000-0000-7000-8000-0000000000c0","device":"00000000-0000-7000-8000-0000000000d1","id":"00000000-0000-7000-8000-000000000103","kind":"redacted/1","lamport":3,"payload":{"reason":"asked for","target":"00000000-0000-7000-8000-000000000102"},"seen":{},"seq":3,"stream":"00000000-0000-7000-8000-000000000051","wall":"2026-11-25T08:00:00.000Z","zone":"America/Chicago"}', '00000000-0000-7000-8000-0000000000f1', '2026-11-25T09:00:00.000Z', '00000000-0000-7000-8000-000000000102');
INSERT INTO public.entry VALUES ('00000000-0000-7000-8000-0000000000c0', 4, '00000000-0000-7000-8000-000000000104', '00000000-0000-7000-8000-000000000051', '00000000-0000-7000-8000-0000000000d1', 4, 4, 'something-later/7', 'c5b697a857bd386d0dd1e16e2076351a06c184375c3c26c3b1f1e679d7a584de', '{"about":{},"app":"sample","author":"Sample Hand","company":"00000000-0000-7000-8000-0000000000c0","device":"00000000-0000-7000-8000-0000000000d1","id":"00000000-0000-7000-8000-000000000104","kind":"something-later/7","lamport":4,"payload":{"more":[1,null,true],"text":"from a later version"},"seen":{},"seq":4,"stream":"00000000-0000-7000-8000-000000000051","wall":"2026-11-25T08:00:00.000Z","zone":"America/Chicago"}', '00000000-0000-7000-8000-0000000000f1', '2026-11-25T09:00:00.000Z', NULL);
INSERT INTO public.entry VALUES ('00000000-0000-7000-8000-0000000000c0', 5, '00000000-0000-7000-8000-000000000105', '00000000-0000-7000-8000-000000000051', '00000000-0000-7000-8000-0000000000d1', 5, 5, 'redacted/1', 'dff66036c69e802b98a68945bfd6e198d92c8a8e2226cbf7d1dd340c515bf1fd', '{"about":{},"app":"sample","author":"Sample Hand","company":"00000000-0000-7000-8000-0000000000c0","device":"00000000-0000-7000-8000-0000000000d1","id":"00000000-0000-7000-8000-000000000105","kind":"redacted/1","lamport":5,"payload":{"reason":"asked for","target":"00000000-0000-7000-8000-000000000106"},"seen":{},"seq":5,"stream":"00000000-0000-7000-8000-000000000051","wall":"2026-11-25T08:00:00.000Z","zone":"America/Chicago"}', '00000000-0000-7000-8000-0000000000f1', '2026-11-25T09:00:00.000Z', '00000000-0000-7000-8000-000000000106');
INSERT INTO public.kysely_migration VALUES ('001-journal', '2026-11-25T20:18:45.190Z');
INSERT INTO public.kysely_migration_lock VALUES ('migration_lock', 0);
INSERT INTO public.own_device VALUES ('00000000-0000-7000-8000-0000000000c0', '00000000-0000-7000-8000-000000000e01', '2026-11-25T09:00:00.000Z');
INSERT INTO public.paired_device VALUES ('00000000-0000-7000-8000-0000000000c0', '00000000-0000-7000-8000-0000000000f1', 'van phone', 'a1a1a1a1a1a1a1a1a1a1a1a1a1a1a1a1a1a1a1a1a1a1a1a1a1a1a1a1a1a1a1a1', '2026-11-25T09:00:00.000Z', '2026-11-25T09:00:00.000Z', NULL);
INSERT INTO public.paired_device VALUES ('00000000-0000-7000-8000-0000000000c0', '00000000-0000-7000-8000-0000000000f2', 'lost phone', 'b2b2b2b2b2b2b2b2b2b2b2b2b2b2b2b2b2b2b2b2b2b2b2b2b2b2b2b2b2b2b2b2', '2026-11-25T09:00:00.000Z', NULL, '2026-11-25T09:00:00.000Z');
INSERT INTO public.workshop VALUES ('00000000-0000-7000-8000-0000000000c0', 'Ana', '2026-11-25T09:00:00.000Z');
ALTER TABLE ONLY public.company_log
    ADD CONSTRAINT company_log_pkey PRIMARY KEY (company);
ALTER TABLE ONLY public.entry
    ADD CONSTRAINT entry_id UNIQUE (company, id);
ALTER TABLE ONLY public.entry
    ADD CONSTRAINT entry_number UNIQUE (company, stream, device, seq);
ALTER TABLE ONLY public.entry
    ADD CONSTRAINT entry_place PRIMARY KEY (company, "position");
ALTER TABLE ONLY public.kysely_migration_lock
    ADD CONSTRAINT kysely_migration_lock_pkey PRIMARY KEY (id);
ALTER TABLE ONLY public.kysely_migration
    ADD CONSTRAINT kysely_migration_pkey PRIMARY KEY (name);
ALTER TABLE ONLY public.own_device
    ADD CONSTRAINT own_device_key PRIMARY KEY (company, device);
ALTER TABLE ONLY public.paired_device
    ADD CONSTRAINT paired_device_id PRIMARY KEY (company, id);
ALTER TABLE ONLY public.paired_device
    ADD CONSTRAINT paired_device_key UNIQUE (key_hash);
ALTER TABLE ONLY public.workshop
    ADD CONSTRAINT workshop_pkey PRIMARY KEY (company);
CREATE INDEX entry_redacts ON public.entry USING btree (company, redacts) WHERE (redacts IS NOT NULL);
CREATE INDEX entry_stream ON public.entry USING btree (company, stream, "position");
ALTER TABLE ONLY public.workshop
    ADD CONSTRAINT workshop_company_fkey FOREIGN KEY (company) REFERENCES public.company_log(company);
