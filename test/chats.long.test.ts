import { playChats } from './written-chats.ts';

playChats(true);
